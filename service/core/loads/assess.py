"""All load checks of a placed configuration, for one boat, many draws or a fleet at once."""

from __future__ import annotations

import numpy as np

from service.core.loads.forces import all_cases
from service.core.loads.galvanic import TABLE, widest_gap
from service.core.loads.mount import carried
from service.core.loads.on_bracket import bracket_results
from service.core.loads.on_shaft import shaft_results
from service.core.loads.on_skin import skin_results
from service.core.loads.rows import About, at_most
from service.core.loads.shapes import Assessment, Inputs, Result, Role
from service.core.loads.standard import Numbers
from service.core.loads.validity import Array, Finding

BOLT_METAL = "316 passive"


def assess(inputs: Inputs, numbers: Numbers, *, plates: bool = True) -> Assessment:
    """Return every load check with its governing case, the cases themselves and what the reader must know.

    The batch shape (...) is what all inputs broadcast to. `plates`: look for the backing plates that would do, which takes
    as long as all checks together and is of no use for draws. What is not known leaves its checks out, and a finding says
    so. KeyError names a bolt size that has no table; ValueError a tube without a bore.
    """
    load, forces, found = all_cases(inputs, numbers)
    findings = list(found)
    results, seen = shaft_results(inputs, load, forces, numbers)
    rows = list(results)
    backing: dict[Role, Array] = {}
    findings += seen
    for (role, mount), collar in zip(inputs.mounts(), (forces.lower, forces.upper), strict=True):
        on = carried(mount, collar, forces.down_g)
        metal, seen = bracket_results(role, mount, collar, on, load.names, numbers)
        under, more, overlap = skin_results(role, mount, inputs.hull, on, load.names, numbers, plates=plates)
        rows += [*metal, *under]
        findings += [*seen, *more]
        if overlap is not None:
            backing[role] = overlap
    pair, note = _galvanic(inputs, numbers, load.side_n.shape[1:])
    return Assessment((*rows, *pair), load, tuple(dict.fromkeys((*findings, *note))), backing)


def _galvanic(
    inputs: Inputs, numbers: Numbers, shape: tuple[int, ...]
) -> tuple[tuple[Result, ...], tuple[Finding, ...]]:
    """Return the pair of hull and stainless bolts as advice, with a finding where the hull would corrode."""
    gap = widest_gap(inputs.hull.material or "", BOLT_METAL)
    if gap == 0:
        return (), ()
    about = About(
        "load.galvanic", "hull metal against stainless steel in sea water", "V", "widest difference of potentials",
        f"{TABLE}; {numbers.source('galvanic_gap')}", binds=False,
    )  # fmt: skip
    row = at_most(about, np.full((1, *shape), gap), numbers["galvanic_gap"], ("in sea water",), numbers)
    if gap <= numbers["galvanic_gap"]:
        return (row,), ()
    text = (
        f"{inputs.hull.material} against stainless steel: up to {gap:.2f} V; the hull corrodes at the bolts. "
        "Part them with sleeves, washers and a sealed pad"
    )
    return (row,), (Finding("galvanic", "boat.hull_material", text),)
