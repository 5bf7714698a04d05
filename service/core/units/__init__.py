"""Quantities as people write them -> SI (mm, deg, kg, m/s), and back.

The grammar is the trade's own: 5'2", 5 ft 2 1/2 in, 4' 3½", 1,27 m, 1 m 05, 12°30', 16,000 lb, 7 tonnes. What has two
plausible readings comes back as ambiguous with both, never as one of them; what has none says how to mend it.
"""

from __future__ import annotations

from service.core.units.lexicon import BY_SYMBOL, SI_UNIT, UNITS, Dimension, Unit
from service.core.units.reader import Found, Quantity, Unread, parse, scan
from service.core.units.writers import System, format_angle, format_length, format_mass

__all__ = [
    "BY_SYMBOL",
    "SI_UNIT",
    "UNITS",
    "Dimension",
    "Found",
    "Quantity",
    "System",
    "Unit",
    "Unread",
    "format_angle",
    "format_length",
    "format_mass",
    "parse",
    "scan",
]
