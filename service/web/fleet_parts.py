"""Which parts of the desk the fleet is made of, in the order in which their addresses are looked through."""

from __future__ import annotations

from service.web import amend, fleet, installed, record

PARTS = (fleet, record, amend, installed)
