"""What would make a miss pass: found by trying it, never from a list of advice."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from service.core.catalogue import Configuration
from service.core.fit.boats import Boats, allowed_lies, variant, without_obstacles
from service.core.fit.engine import set_many
from service.core.fit.kit import build
from service.core.fit.names import obstacle_names
from service.core.fit.screen import better
from service.core.fit.shapes import Fit
from service.core.fit.side_by_side import side_by_side


def cures(boats: Boats, fit: Fit) -> tuple[str, ...]:
    """Return what was tried and passes every check: an obstacle taken away, another shaft, another bracket in one role."""
    names = obstacle_names(boats.form)
    loose = [n for n, one in enumerate(boats.form.obstacles) if not one.keep and one.present is not False]
    in_the_way = _in_the_way(boats, fit.configuration, loose)
    found = [f"without the {names[f'obstacle[{index}]']} it would pass" for index in in_the_way]
    others = _neighbours(boats, fit.configuration)
    good = _passes(boats, [c for _, c in others])
    return (*found, *(text for (text, _), passes in zip(others, good, strict=True) if passes))


def _in_the_way(boats: Boats, configuration: Configuration, loose: Sequence[int]) -> list[int]:
    """Return those obstacles of which each alone, taken away, lets it pass.

    Where it does not pass without all of them, it does so without none: they are asked together, then by halves.
    """
    if not loose or not _passes(variant(boats, without_obstacles(boats.form, loose)), [configuration])[0]:
        return []
    if len(loose) == 1:
        return list(loose)
    half = len(loose) // 2
    return [n for some in (loose[:half], loose[half:]) for n in _in_the_way(boats, configuration, some)]


def _passes(boats: Boats, configurations: Sequence[Configuration]) -> list[bool]:
    """Say of each whether it passes: those alone are placed whole that a quick look gives hope for."""
    kit, rules, lies = build(boats.catalogue, configurations), boats.catalogue.rules, allowed_lies(boats.form)

    def hope(places: Sequence[int]) -> NDArray[np.bool_]:
        aims, _ = better(boats.nominal, kit, rules, lies, np.array(places, dtype=np.intp), 0.0)
        return aims >= 0.0

    every = range(len(configurations))
    passes = np.empty(len(configurations), dtype=bool)
    passes[0::2], passes[1::2] = side_by_side(hope, (every[0::2], every[1::2]))
    hopeful = [int(n) for n in np.flatnonzero(passes)]
    for n, one in zip(hopeful, set_many(boats, [configurations[n] for n in hopeful]), strict=True):
        passes[n] = one.fit.verdict != "does_not_fit"
    return [bool(one) for one in passes]


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
