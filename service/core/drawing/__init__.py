"""Views of a placed configuration, in mm and without a file format: writers turn them into SVG, DXF, PDF.

`scene` the boat and the gear as solids · `side`, `stern`, `plan` three views of it, `plates` what is drilled and cut ·
`things` obstacles and what they sweep · `clashes` what does not pass, in place · `shapes` what a view is made of ·
`lay` a view laid out at a scale: dimensions stacked, notes placed by `place`, letters measured by `letters` ·
`lengths` both units. A view's own x runs to the right and y up.
"""

from __future__ import annotations

from service.core.boat import BoatForm
from service.core.catalogue import Catalogue
from service.core.drawing.plan import plan
from service.core.drawing.plates import plate
from service.core.drawing.scene import Scene, scene
from service.core.drawing.shapes import Dimension, Disc, Key, Layer, Note, Outline, Point, View
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


__all__ = [
    "Dimension", "Disc", "Key", "Layer", "Note", "Outline", "Point", "Scene", "View", "scene", "views", "views_of",
]  # fmt: skip
