"""Foreign tables: what their headings mean, and the mapping a person confirms."""

from service.core.mapping.guess import Guess, Seen, Target, guess
from service.core.mapping.shapes import IGNORE, KEEP, ColumnRule, Mapping

__all__ = ["IGNORE", "KEEP", "ColumnRule", "Guess", "Mapping", "Seen", "Target", "guess"]
