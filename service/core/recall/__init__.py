"""Boats -> precedents: exact likeness over the fleet, votes for configurations, values for what is missing."""

from service.core.recall.features import FEATURES
from service.core.recall.filling import fills
from service.core.recall.fleet import Fleet
from service.core.recall.precedents import recall
from service.core.recall.shapes import Difference, Fill, Precedent, Recall, Vote
from service.core.recall.weights import WEIGHTS, Weights

__all__ = [
    "FEATURES",
    "WEIGHTS",
    "Difference",
    "Fill",
    "Fleet",
    "Precedent",
    "Recall",
    "Vote",
    "Weights",
    "fills",
    "recall",
]
