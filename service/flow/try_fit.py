"""One configuration tried with other measurements, or put somewhere else: checked, shown, and nothing kept."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from service.core.answer import Answer, Suggestion
from service.core.answer.compose import prepared
from service.core.answer.placed import placed
from service.core.boat import BoatForm
from service.core.fit import Fit, Placement
from service.core.fit.boats import DRAWS
from service.core.fit.engine import fit_configuration
from service.core.form import with_values
from service.flow.known import gather
from service.flow.refusal import Refused
from service.store.unit import UnitOfWork

FAR_MM = 20_000.0
"""Further from the boat than this (mm) nothing is tried."""


@dataclass(frozen=True)
class Tried:
    """The boat as tried, the fit as it was suggested, and the fit as tried."""

    form: BoatForm
    before: Fit
    after: Fit


def try_fit(uow: UnitOfWork, answer: Answer, suggestion: Suggestion, changes: Mapping[str, object]) -> Tried:
    """Return the same configuration on the boat with other measurements, at the best place there; how sure is worked out.

    FormError names each value that cannot be.
    """
    form = with_values(answer.form, changes) if changes else answer.form
    boats = prepared(form, gather(uow), _hull(answer), answer.provenance.seed, DRAWS)
    return Tried(form, suggestion.fit, fit_configuration(boats, suggestion.configuration))


def place_fit(
    uow: UnitOfWork, answer: Answer, suggestion: Suggestion, changes: Mapping[str, object], at: Placement
) -> Tried:
    """Return the configuration as it comes out exactly at `at`, on the boat with other measurements where any are given.

    FormError as above; Refused for a place that is nowhere near the boat.
    """
    if any(abs(value) > FAR_MM for value in at.model_dump().values()):
        raise Refused("that place is nowhere near the boat: lengths here are mm from her transom and from the water")
    form = with_values(answer.form, changes) if changes else answer.form
    boats = prepared(form, gather(uow), _hull(answer), answer.provenance.seed, draws=1)
    return Tried(form, suggestion.fit, placed(boats, suggestion.configuration, at))


def _hull(answer: Answer) -> str | None:
    return answer.hull.model.id if answer.hull and answer.hull.model else None
