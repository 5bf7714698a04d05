"""How far experience backs an answer: said where the fleet has nothing like this boat, or nothing of it fits."""

from __future__ import annotations

from collections.abc import Sequence

from service.core.answer.shapes import Suggestion
from service.core.hulls import HullDecision
from service.core.recall import Recall

UNLIKE = 0.75
"""Below this likeness even the nearest boat is a different boat."""
FEW = 3
NOTHING = (
    "No installation is on record yet: the suggestions rest on geometry and loads alone, and nothing is known of what "
    "fitters would choose."
)
STERNS = {
    "plumb": "a plumb transom", "raked": "a raked transom", "reverse": "a reverse transom", "scoop": "a scoop",
    "open": "an open stern", "double_ended": "a double-ended stern",
}  # fmt: skip


def backing(
    hull: HullDecision | None, remembered: Recall, suggestions: Sequence[Suggestion], *, records: int
) -> tuple[str, ...]:
    """Return, in words, on how little the chances of being installed rest; nothing where they rest on enough."""
    if records == 0:
        return (NOTHING,)
    return (*_of_hull(hull, remembered), *_of_stern(remembered), *_of_fit(remembered, suggestions))


def _of_hull(hull: HullDecision | None, remembered: Recall) -> list[str]:
    if remembered.sisters:
        return []
    model = hull.model if hull else None
    if not remembered.precedents:
        return [
            "No boat on record shares enough with this one to be compared: the chances are how often each was installed on any boat."
        ]
    nearest = max(p.likeness for p in remembered.precedents)
    whose = f"No {model} is on record" if model else "The hull model is not known, so no sister ship speaks"
    like = f"the nearest is {100 * nearest:.0f} % alike"
    doubt = " and even that is a rather different boat" if nearest < UNLIKE else ""
    return [f"{whose}: what fitters would install is judged by other boats, of which {like}{doubt}."]


def _of_stern(remembered: Recall) -> list[str]:
    stern, count = remembered.stern, remembered.same_stern
    if stern is None or count is None or count >= FEW:
        return []
    many = ("No boat", "Only one boat")[count] if count <= 1 else f"Only {count} boats"
    are = "is" if count <= 1 else "are"
    return [
        f"{many} with {STERNS[stern]} {are} on record: what others carry says little here, the suggestions rest on geometry."
    ]


def _of_fit(remembered: Recall, suggestions: Sequence[Suggestion]) -> list[str]:
    able = [s for s in suggestions if s.fit.verdict != "does_not_fit"]
    if not able or not remembered.votes or any(s.origin == "precedent" for s in able):
        return []
    return [
        "Nothing that boats like this one carry passes here: what is suggested was found by trying the catalogue on the measurements."
    ]
