"""Names -> hull models: fold, parse, find candidates, weigh the evidence, decide."""

from service.core.hulls.decide import resolve
from service.core.hulls.fold import fold
from service.core.hulls.index import HullIndex
from service.core.hulls.parse import ParsedName, parse_name
from service.core.hulls.shapes import Evidence, HullCandidate, HullDecision
from service.core.hulls.surface import Candidates, Surface, surfaces_of

__all__ = [
    "Candidates", "Evidence", "HullCandidate", "HullDecision", "HullIndex", "ParsedName", "Surface", "fold",
    "parse_name", "resolve", "surfaces_of",
]  # fmt: skip
