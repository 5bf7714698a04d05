"""Names -> hull models: fold, parse, find candidates, weigh the evidence, decide."""

from service.core.hulls.decide import resolve
from service.core.hulls.index import HullIndex
from service.core.hulls.parse import ParsedName, fold, parse_name
from service.core.hulls.shapes import Evidence, HullCandidate, HullDecision

__all__ = ["Evidence", "HullCandidate", "HullDecision", "HullIndex", "ParsedName", "fold", "parse_name", "resolve"]
