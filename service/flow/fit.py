"""Place and check one configuration on one boat."""

from __future__ import annotations

from service.core.answer.compose import ready
from service.core.boat import BoatForm
from service.core.catalogue import Configuration
from service.core.fit import Fit
from service.core.fit.cures import cures
from service.core.fit.engine import fit_configuration
from service.flow.hull_index import hull_index
from service.flow.known import gather
from service.flow.resolve import hull_of
from service.store.unit import UnitOfWork


class NotInCatalogueError(LookupError):
    """A configuration that the catalogue cannot make; the message says why and names the nearest code."""


def fit_form(uow: UnitOfWork, form: BoatForm, configuration: Configuration, *, seed: int = 1) -> Fit:
    """Return the fit, with cures where it fails. NotInCatalogueError where the codes do not go together."""
    known = gather(uow)
    misfit = known.catalogue.misfit(configuration)
    if misfit:
        raise NotInCatalogueError(misfit)
    boats = ready(form, known, hull_of(hull_index(uow), form), seed)
    fit = fit_configuration(boats, configuration)
    return fit if fit.verdict != "does_not_fit" else fit.model_copy(update={"cures": cures(boats, fit)})
