"""What would make a miss pass: found by trying it, never from a list of advice."""

from __future__ import annotations

from collections.abc import Sequence

from service.core.catalogue import Configuration
from service.core.fit.describe import obstacle_names
from service.core.fit.engine import Boats, allowed_lies, nominal_of, without_obstacle
from service.core.fit.kit import build
from service.core.fit.place import place
from service.core.fit.shapes import Fit
from service.core.fit.site import S, Site

PASSES = 0.0


def cures(boats: Boats, fit: Fit) -> tuple[str, ...]:
    """Return what was tried and passes: an obstacle taken away, another shaft, another bracket in one role."""
    found = []
    names = obstacle_names(boats.form)
    for index, obstacle in enumerate(boats.form.obstacles):
        if obstacle.keep or obstacle.present is False:
            continue
        site = nominal_of(boats, without_obstacle(boats.form, index))
        if _passes(boats, site, [fit.configuration])[0]:
            found.append(f"without the {names[f'obstacle[{index}]']} it would pass")
    others = _neighbours(boats, fit.configuration)
    for other, good in zip(others, _passes(boats, boats.nominal, [c for _, c in others]), strict=True):
        if good:
            found.append(other[0])
    return tuple(found)


def _passes(boats: Boats, site: Site, configurations: Sequence[Configuration]) -> list[bool]:
    if not configurations:
        return []
    best = place(site, build(boats.catalogue, configurations), boats.catalogue.rules, lies=allowed_lies(boats.form))
    limits = [boats.catalogue.gear(c.gear).max_displacement_kg for c in configurations]
    return [
        bool(aims.max() >= PASSES and limit >= float(site.values[0, S.DISPLACEMENT]))
        for aims, limit in zip(best.aims, limits, strict=True)
    ]


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
