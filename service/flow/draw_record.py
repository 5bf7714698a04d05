"""Draw a record's configuration on its boat where the record says it sits, and check it there by the rules."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from service.core.catalogue import Catalogue
from service.core.drawing.lengths import in_inches
from service.core.drawing.scene import scene
from service.core.drawing.views import views_of
from service.core.fit import Fit
from service.core.fit.boats import Boats, prepare
from service.core.fit.describe import Placed, describe
from service.core.fit.engine import set_many
from service.core.fit.kit import build
from service.core.record import Record
from service.files.write.svg import write_svg
from service.store.unit import UnitOfWork


@dataclass(frozen=True)
class Checked:
    """A record's configuration on its boat. `recorded`: it was set where the record says, else where the rules would.

    `fit` is None where it cannot be set at all; `why` then says so. `catalogue` is the version it was checked by.
    """

    record: Record
    fit: Fit | None
    recorded: bool
    catalogue: Catalogue | None
    why: str = ""

    @property
    def fails(self) -> bool:
        """Say whether something that can refuse a placement does not pass."""
        return self.fit is not None and any(one.binds and one.status == "fail" for one in self.fit.checks)


def check_record(uow: UnitOfWork, record: Record) -> Checked:
    """Return how a record's configuration stands by the catalogue it was made with, else the newest, at nominal.

    What the record does not say of the boat is the catalogue's usual value: so this rests on nothing but the record, its
    hull model's length and its catalogue.
    """
    with uow:
        kept = uow.catalogues.get(record.catalogue) if record.catalogue else None
        catalogue = kept or uow.catalogues.latest()
        hull = uow.hulls.get(record.hull) if record.hull else None
    if catalogue is None:
        return Checked(record, None, recorded=False, catalogue=None, why="no catalogue is loaded")
    misfit = catalogue.misfit(record.configuration)
    if misfit:
        return Checked(record, None, recorded=False, catalogue=catalogue, why=misfit)
    boats = prepare(record.form, catalogue, loa_mm=hull.loa_mm if hull else None, draws=1)
    spot = record.placement
    said = (spot.offset_mm, spot.shaft_aft_mm, spot.lower_height_mm, spot.upper_height_mm, spot.shaft_bottom_mm)
    if all(value is not None for value in said):
        return Checked(record, _there(boats, record, said), recorded=True, catalogue=catalogue)
    return Checked(record, set_many(boats, [record.configuration])[0].fit, recorded=False, catalogue=catalogue)


def draw_record(uow: UnitOfWork, record: Record, heading: str) -> str | None:
    """Return an SVG sheet of the record, None where nothing can be set."""
    found = check_record(uow, record)
    if found.fit is None or found.catalogue is None:
        return None
    shown = views_of(scene(record.form, found.fit, found.catalogue), inches=in_inches(record.form.enquiry.country))
    where = "as the record says" if found.recorded else "where the rules would set it: the record does not say"
    lines = [
        f"Set {where}. What the record does not say of the boat is the usual value of catalogue {found.catalogue.version}.",
        *(view.says for view in shown[:3]),
        "Advice to be confirmed on the boat before anything is drilled.",
    ]
    return write_svg(shown, heading, lines)


def _there(boats: Boats, record: Record, said: tuple[float | None, ...]) -> Fit:
    kit = build(boats.catalogue, [record.configuration])
    placed = Placed(boats.nominal, kit, np.array(said, dtype=float))
    fit = describe(boats.form, boats.catalogue, record.configuration, boats.unknown, placed)
    return fit.model_copy(update={"filled": boats.filled})
