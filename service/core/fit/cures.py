"""What would make a miss pass: found by trying it, never from a list of advice."""

from __future__ import annotations

from collections.abc import Sequence

from service.core.catalogue import Configuration
from service.core.fit.boats import Boats, variant, without_obstacle
from service.core.fit.describe import obstacle_names
from service.core.fit.engine import set_many
from service.core.fit.shapes import Fit


def cures(boats: Boats, fit: Fit) -> tuple[str, ...]:
    """Return what was tried and passes every check: an obstacle taken away, another shaft, another bracket in one role."""
    found = []
    names = obstacle_names(boats.form)
    for index, obstacle in enumerate(boats.form.obstacles):
        if obstacle.keep or obstacle.present is False:
            continue
        if _passes(variant(boats, without_obstacle(boats.form, index)), [fit.configuration])[0]:
            found.append(f"without the {names[f'obstacle[{index}]']} it would pass")
    others = _neighbours(boats, fit.configuration)
    good = _passes(boats, [c for _, c in others])
    return (*found, *(text for (text, _), passes in zip(others, good, strict=True) if passes))


def _passes(boats: Boats, configurations: Sequence[Configuration]) -> list[bool]:
    return [one.fit.verdict != "does_not_fit" for one in set_many(boats, configurations)]


def _neighbours(boats: Boats, own: Configuration) -> list[tuple[str, Configuration]]:
    """Return configurations that differ in one part only, with what changes."""
    catalogue = boats.catalogue
    tried = [
        (f"with shaft {s.code} it would pass", own.model_copy(update={"shaft": s.code}))
        for s in catalogue.shafts
        if s.code != own.shaft
    ]
    for role, now in (("lower", own.lower), ("upper", own.upper)):
        tried += [
            (f"with {role} bracket {b.code} it would pass", own.model_copy(update={role: b.code}))
            for b in catalogue.brackets
            if b.code != now
        ]
    return [(text, c) for text, c in tried if catalogue.misfit(c) is None]
