"""How far experience backs an answer: said where the fleet has nothing like this boat, or nothing of it fits."""

from __future__ import annotations

from collections.abc import Sequence

from service.core.answer.shapes import Suggestion
from service.core.answer.speech import Said, said, share
from service.core.hulls import HullDecision
from service.core.recall import Recall

UNLIKE = 0.75
"""Below this likeness even the nearest boat is a different boat."""
FEW = 3
NOTHING = said("backing-nothing")


def backing(
    hull: HullDecision | None, remembered: Recall, suggestions: Sequence[Suggestion], *, records: int
) -> tuple[Said, ...]:
    """Return on how little the chances of being installed rest; nothing where they rest on enough."""
    if records == 0:
        return (NOTHING,)
    return (*_of_hull(hull, remembered), *_of_stern(remembered), *_of_fit(remembered, suggestions))


def _of_hull(hull: HullDecision | None, remembered: Recall) -> list[Said]:
    if remembered.sisters:
        return []
    if not remembered.precedents:
        return [said("backing-no-like")]
    model = hull.model if hull else None
    nearest = max(p.likeness for p in remembered.precedents)
    id_ = "backing-unlike" if nearest < UNLIKE else "backing-nearest"
    return [said(id_, known="yes" if model else "no", model=str(model or ""), like=share(nearest))]


def _of_stern(remembered: Recall) -> list[Said]:
    stern, count = remembered.stern, remembered.same_stern
    if stern is None or count is None or count >= FEW:
        return []
    return [said("backing-stern", count=count, stern=said(f"stern-{stern}"))]


def _of_fit(remembered: Recall, suggestions: Sequence[Suggestion]) -> list[Said]:
    able = [s for s in suggestions if s.fit.verdict != "does_not_fit"]
    if not able or not remembered.votes or any(s.origin == "precedent" for s in able):
        return []
    return [said("backing-tried")]
