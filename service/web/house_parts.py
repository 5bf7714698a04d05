"""The house's parts of the desk. Where two paths could be meant by one address the narrower part stands first."""

from __future__ import annotations

from service.web import catalogue, house, hull_pairs, hulls, imports, keys, people, reports, users

PARTS = (hull_pairs, hulls, catalogue, reports, imports, people, house, users, keys)
