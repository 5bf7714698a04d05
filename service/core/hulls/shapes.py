"""What a resolved name looks like: the decision, the models it could be, and what was seen of each."""

from __future__ import annotations

from typing import Literal

from service.core.boat import Shape
from service.core.record import HullModel

About = Literal["alias", "number", "generation", "suffix", "words", "builder", "length", "beam", "year"]
Status = Literal["matched", "several", "unknown"]


class Evidence(Shape):
    """One thing seen: what about, how it weighs (log odds; below 0 speaks against) and why, in words."""

    about: About
    score: float
    why: str


class HullCandidate(Shape):
    """A hull model the name could mean, its probability and all that was seen."""

    model: HullModel
    probability: float
    saw: tuple[Evidence, ...]


class HullDecision(Shape):
    """What a name was taken for.

    `matched` gives `model` with its `probability` and what was seen in `saw`; `several` gives no model, up to three
    alternatives to ask about and the probability of the first; `unknown` means no known model answers to the name.
    """

    status: Status
    model: HullModel | None
    probability: float
    alternatives: tuple[HullCandidate, ...]
    saw: tuple[Evidence, ...] = ()
    why: str
