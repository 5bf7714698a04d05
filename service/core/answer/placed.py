"""A configuration where somebody put it: every check as it comes out there, nothing sought."""

from __future__ import annotations

import numpy as np

from service.core.catalogue import Configuration
from service.core.fit import Fit
from service.core.fit.boats import Boats
from service.core.fit.describe import Placed, describe, with_loads
from service.core.fit.kit import build
from service.core.fit.shapes import Placement, Verdict
from service.core.fit.strength import strength


def placed(boats: Boats, configuration: Configuration, at: Placement) -> Fit:
    """Return the fit at a given placement on the nominal boat: checks, pads, bolts and loads, without a probability.

    `shaft_top_mm` is worked out anew: the shaft is as long as it is. KeyError names a code the catalogue lacks.
    """
    kit = build(boats.catalogue, [configuration])
    spot = np.array([at.offset_mm, at.shaft_aft_mm, at.lower_height_mm, at.upper_height_mm, at.shaft_bottom_mm])
    fit = describe(boats.form, boats.catalogue, configuration, boats.unknown, Placed(boats.nominal, kit, spot))
    loads = strength(boats.catalogue, configuration, boats.nominal, kit, spot[None], boats.skins[0], plates=False)
    fit = with_loads(fit, loads)
    return fit.model_copy(update={"verdict": verdict(fit), "filled": boats.filled})


def verdict(fit: Fit) -> Verdict:
    """Return what the checks say with the boat exactly as stated: nothing is said of how sure that is."""
    binding = [check.status for check in fit.checks if check.binds]
    return "does_not_fit" if "fail" in binding else "undecided" if "unknown" in binding else "fits"
