"""The fit: is this configuration right for this boat, where does it sit, and how sure is that.

`boats` one boat made ready, from `factors` (what is not known exactly) and `assemble` · `site` the boat as arrays and its
skin (`wall`) · `kit` the metal as arrays · `solids` distances · `checks` every check of a placement (`mounts`, `hullside`,
`clear` the main rudder, `things` obstacles) · `place` the best placement (`starts`, `search`, `pieces`, `simplex`; `evolve`
where none passes) · `survey` what of a catalogue is worth placing (`screen`) · `settle` probability · `strength` loads ·
`engine` one fit, from placement to verdict · `cures` · `outcome` a check in numbers, `describe`, `wording`,
`fasteners` the fit as published.
Lengths in mm, angles in degrees.
"""

from service.core.fit.shapes import Check, Fit, Placement

__all__ = ["Check", "Fit", "Placement"]
