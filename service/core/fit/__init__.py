"""The fit: is this configuration right for this boat, where does it sit, and how sure is that.

`site` the boat as arrays and its skin · `kit` the metal as arrays · `solids` distances · `checks` every check of a
placement (`mounts`, `rudder`, `obstacles`) · `place` the best placement · `survey` what of a catalogue is worth
placing · `factors` and `assemble` what is not known exactly · `settle` probability · `engine` one fit, from form to
verdict · `describe`, `wording`, `fasteners` the fit as published. Lengths in mm, angles in degrees.
"""

from service.core.fit.cures import cures
from service.core.fit.describe import obstacle_names
from service.core.fit.engine import Boats, Fitted, Set, assured, fit_configuration, prepare, set_many
from service.core.fit.shapes import Check, Fit, Placement

__all__ = [
    "Boats", "Check", "Fit", "Fitted", "Placement", "Set", "assured", "cures", "fit_configuration",
    "obstacle_names", "prepare", "set_many",
]  # fmt: skip
