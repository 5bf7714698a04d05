"""Views of any fit, to stand within a page."""

from __future__ import annotations

from dataclasses import dataclass, replace

from service.core.answer import Answer
from service.core.boat import BoatForm
from service.core.catalogue import Catalogue
from service.core.drawing.lengths import in_inches
from service.core.drawing.scene import scene
from service.core.drawing.side import side
from service.core.drawing.stern import stern
from service.core.fit import Fit
from service.files.write.svg import Inline, inline_view
from service.store.unit import UnitOfWork


@dataclass(frozen=True)
class FitViews:
    """A fit seen from aft and from starboard."""

    stern: Inline
    side: Inline


def catalogue_of(uow: UnitOfWork, answer: Answer) -> Catalogue | None:
    """Return the catalogue that an answer was made with, without loading anything else; None where it is not kept here."""
    version = answer.provenance.catalogue
    return uow.kept.get(f"catalogue {version}", uow.stamps.fleet(), lambda: uow.catalogues.get(version))


def draw_fit(form: BoatForm, fit: Fit, catalogue: Catalogue) -> FitViews | None:
    """Return both views, None where nothing was placed."""
    if fit.placement is None:
        return None
    shown, inches = scene(form, fit, catalogue), in_inches(form.enquiry.country)
    return FitViews(
        inline_view(stern(shown, inches=inches), "The stern from aft"),
        inline_view(side(shown, inches=inches), "The gear from starboard"),
    )


def draw_stern(form: BoatForm, fit: Fit, catalogue: Catalogue) -> Inline | None:
    """Return the view from aft alone, without figures and words: to be looked at small."""
    if fit.placement is None:
        return None
    bare = replace(stern(scene(form, fit, catalogue), inches=False), dimensions=(), notes=(), remarks=())
    return inline_view(bare, "The stern from aft")
