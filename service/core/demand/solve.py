"""A boat against metal there is and metal there might be: what passes, what misses by least and why."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from service.core.answer.compose import Known, candidates_of, prepared
from service.core.boat import BoatForm
from service.core.catalogue import Catalogue, Configuration
from service.core.demand.metal import new_in
from service.core.fit import Fit
from service.core.fit.boats import Boats, allowed_lies
from service.core.fit.engine import set_many
from service.core.fit.survey import Survey, growing, makeable

TRIED = 3
"""Configurations placed in full, loads and all, to find one that passes."""


@dataclass(frozen=True)
class Case:
    """A boat that is asked about: a record's or an enquiry's, by its own reference."""

    reference: str
    form: BoatForm
    hull: str | None


def ready(case: Case, known: Known, seed: int = 1) -> Boats:
    """Return the boat ready for fitting at nominal, gaps filled as for an enquiry."""
    return prepared(case.form, known, case.hull, seed, draws=1)


def best(case: Case, known: Known) -> Fit | None:
    """Return the best fit an answer would put first: one that passes, else the least miss. None where nothing can be made."""
    if not makeable(ready(case, known).nominal, known.catalogue).every:
        return None
    _, found = candidates_of(case.form, case.hull, known)
    fits = [one.fit for one in found]
    return max(fits, key=lambda fit: (passes(fit), fit.smallest_margin or -np.inf), default=None)


def passes(fit: Fit) -> bool:
    """Say whether nothing that was checked refuses a fit."""
    return fit.verdict != "does_not_fit"


def quick(boats: Boats, catalogue: Catalogue) -> list[Configuration]:
    """Return every configuration that passes a quick look, the simplest first; loads are not looked at."""
    able = makeable(boats.nominal, catalogue)
    if not able.every:
        return []
    survey = Survey(boats.nominal, catalogue, allowed_lies(boats.form), able)
    known: dict[tuple[str, str, str], bool] = {}
    for places in growing(len(survey.every)):
        survey.beating(places, 0.0, known)
    return [survey.every[int(n)] for n in np.flatnonzero(survey.rough >= 0)]


def served(boats: Boats, catalogue: Catalogue, some: Sequence[Configuration]) -> Fit | None:
    """Return the first of some configurations that passes every check, loads among them; None where none of the first few.

    What a new bracket itself has to bear refuses nothing: it is made for that, and `bears` says how much it is.
    """
    tried = list(some[:TRIED])
    if not tried:
        return None
    whole = boats if boats.catalogue is catalogue else replace(boats, catalogue=catalogue)
    return next((one.fit for one in set_many(whole, tried) if not refusing(one.fit)), None)


def refusing(fit: Fit) -> tuple[str, ...]:
    """Return the ids of the checks that refuse a fit."""
    own = _own(fit)
    return tuple(
        check.id for check in fit.checks if check.binds and check.status == "fail" and not check.id.startswith(own)
    )


def room(fit: Fit) -> float:
    """Return the smallest scaled margin of the checks that can refuse a fit."""
    own = _own(fit)
    margins = [
        check.margin / check.scale
        for check in fit.checks
        if check.binds and check.margin is not None and check.scale and not check.id.startswith(own)
    ]
    return min(margins, default=-np.inf)


def bears(fit: Fit) -> float:
    """Return the greatest moment (N m) that a new bracket of the fit has to bear; 0 where there is none."""
    own = _own(fit)
    values = [check.value or 0.0 for check in fit.checks if check.id.startswith(own) and check.id.endswith(".moment")]
    return max(values, default=0.0)


def _own(fit: Fit) -> tuple[str, ...]:
    """Return how the ids of checks begin that ask what new brackets bear themselves."""
    roles = {"lower": fit.configuration.lower, "upper": fit.configuration.upper}
    return tuple(f"load.{role}." for role, code in roles.items() if new_in((code,)))
