"""Every view there is of a placed configuration."""

from __future__ import annotations

from service.core.boat import BoatForm
from service.core.catalogue import Catalogue
from service.core.drawing.plan import plan
from service.core.drawing.plates import plate
from service.core.drawing.scene import Scene, scene
from service.core.drawing.shapes import View
from service.core.drawing.side import side
from service.core.drawing.stern import stern
from service.core.fit import Fit


def views(form: BoatForm, fit: Fit, catalogue: Catalogue, *, inches: bool = False) -> tuple[View, ...]:
    """Return the views from starboard, from aft and from above, then both plates; none where nothing was placed.

    `inches`: write inches beside the millimetres.
    """
    if fit.placement is None:
        return ()
    return views_of(scene(form, fit, catalogue), inches=inches)


def views_of(shown: Scene, *, inches: bool = False) -> tuple[View, ...]:
    """Return all views of a scene."""
    plates = tuple(plate(shown, mounted, inches=inches) for mounted in shown.mounts)
    return side(shown, inches=inches), stern(shown, inches=inches), plan(shown, inches=inches), *plates
