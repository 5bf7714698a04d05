"""Boats -> precedents: exact likeness over the fleet, votes for configurations, values for what is missing."""

from service.core.recall.features import FEATURES
from service.core.recall.shapes import Difference, Fill, Precedent, Recall, Vote
from service.core.recall.weights import WEIGHTS, Weights

__all__ = [
    "FEATURES",
    "WEIGHTS",
    "Difference",
    "Fill",
    "Precedent",
    "Recall",
    "Vote",
    "Weights",
]
