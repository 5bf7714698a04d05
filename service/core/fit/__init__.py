"""The fit: is this configuration right for this boat, where does it sit, and how sure is that.

`boats` one boat made ready, from `factors` (what is not known exactly) and `assemble` · `site` the boat as arrays and its
skin (`wall`) · `kit` the metal as arrays · `solids` distances · `checks` every check of a placement (`mounts`, `hullside`,
`clear` the main rudder, `things` obstacles) · `place` the best placement (`starts`, `search`, `pieces`, `simplex`; `evolve`
where none passes) · `survey` what of a catalogue is worth placing (`screen`) · `settle` probability · `strength` loads ·
`engine` one fit, from placement to verdict · `cures` · `outcome` a check in numbers, `describe`, `wording`,
`fasteners` the fit as published.
Lengths in mm, angles in degrees.
"""

from service.core.fit.boats import Boats, prepare
from service.core.fit.cures import cures
from service.core.fit.describe import obstacle_names
from service.core.fit.engine import Fitted, Judged, Set, assured, assured_many, fit_configuration, judged, set_many
from service.core.fit.shapes import Check, Fit, Placement

__all__ = [
    "Boats", "Check", "Fit", "Fitted", "Judged", "Placement", "Set", "assured", "assured_many", "cures",
    "fit_configuration", "judged", "obstacle_names", "prepare", "set_many",
]  # fmt: skip
