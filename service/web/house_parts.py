"""The house's parts of the desk. Where two paths could be meant by one address the narrower part stands first."""

from __future__ import annotations

from service.web import house, hull_pairs, hulls, keys, users

PARTS = (hull_pairs, hulls, house, users, keys)
