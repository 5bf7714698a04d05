"""Fits to draw, many and quickly: random boats with a gear set near their sterns, whatever does not pass there."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from service.core.boat import BoatForm
from service.core.catalogue import Catalogue
from service.core.drawing import View
from service.core.drawing.views import views
from service.core.fit import Fit
from tests.referee.boats import random_boat
from tests.support.boats import at, demo

LOWER = {
    "scoop": "stand-90-190", "double_ended": "cheek-180-420", "raked": "strut-600-860", "open": "hinge-150-290",
}  # fmt: skip
UPPER = {"open": "riser-190-380", "double_ended": "cheek-390-720"}


class Case(NamedTuple):
    """A form with a fit that was checked but not searched for."""

    form: BoatForm
    fit: Fit
    catalogue: Catalogue

    def views(self, *, inches: bool = False) -> tuple[View, ...]:
        """Return its drawings."""
        return views(self.form, self.fit, self.catalogue, inches=inches)


def rng(seed: int) -> np.random.Generator:
    """Return a source of numbers that are the same each time."""
    return np.random.default_rng(seed)


def set_near(form: BoatForm, draws: np.random.Generator) -> Case:
    """Set a gear near the stern: where the form says there is skin, and seldom where everything passes."""
    catalogue = demo()
    stern = form.boat.stern or "plumb"
    names = {"lower": LOWER.get(stern, "hinge-150-290"), "upper": UPPER.get(stern, "outrigger-400-560")}
    gear = catalogue.gears[int(draws.integers(len(catalogue.gears)))]
    shafts = [s for s in catalogue.shafts if gear.code in s.gears]
    shaft = shafts[int(draws.integers(len(shafts)))]
    top = form.transom.top_height_mm or 900.0
    y = 0.0 if stern == "double_ended" or draws.random() < 0.4 else float(draws.uniform(-500, 500))
    lower = float(draws.uniform(80, 0.5 * top))
    fit = at(
        form, catalogue.configurations()[0].model_copy(update={**names, "gear": gear.code, "shaft": shaft.code}),
        y=y, x=float(draws.uniform(50, 800)), lower=lower, upper=lower + float(draws.uniform(200, 0.6 * top)),
        bottom=float(draws.uniform(-220, 60)), catalogue=catalogue,
    )  # fmt: skip
    return Case(form, fit.model_copy(update={"verdict": "does_not_fit"}), catalogue)


def random_case(seed: int, *, things: int = 6) -> Case:
    """Return a random boat with up to so many obstacles, and a gear set near its stern."""
    draws = rng(seed)
    return set_near(random_boat(draws, things=things), draws)
