"""Values far from those of sister ships.

Robust: d = |x - median of her sisters| / s, where s^2 = (1.4826 MAD of her sisters)^2 + u^2, u the standard uncertainty
of the way x was got, and s is never under FLOOR. A record is told where d > THRESHOLD and at least FEWEST sisters say
the same thing; her own value is left out of the median. 1.4826 makes the MAD a standard deviation for a normal spread
(P. J. Rousseeuw and C. Croux, Journal of the American Statistical Association 88, 1993). Boats of one model differ by
more than their measuring: hence a threshold well above the 3 to 3.5 that is common for repeated measurements.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence

import numpy as np

from service.core.boat import get, title
from service.core.catalogue import Method
from service.core.measurement import fields
from service.core.quality.shapes import Finding
from service.core.quality.slips import meant
from service.core.record import Record

THRESHOLD = 5.0
FEWEST = 5
NORMAL = 1.4826
FLOOR = {"mm": 15.0, "deg": 1.5}
SHARE = {
    "boat.displacement_kg": 0.05,
    "boat.loa_mm": 0.01,
    "boat.lwl_mm": 0.01,
    "boat.beam_mm": 0.01,
    "boat.draft_mm": 0.05,
}
"""The least spread as a share of the median: a displacement is known to a twentieth at best, lengths as published and as
measured differ by over 4 % on one boat in twenty, drafts by keel."""


def outliers(records: Sequence[Record], methods: Mapping[str, Method]) -> Iterator[Finding]:
    """Give a finding for every measured value far from those of the record's sister ships."""
    sisters = defaultdict[str, list[Record]](list)
    for record in records:
        if record.hull is not None:
            sisters[record.hull].append(record)
    for group in sisters.values():
        for path in fields():
            yield from _of_field(path, group, methods)


def _of_field(path: str, group: Iterable[Record], methods: Mapping[str, Method]) -> Iterator[Finding]:
    said = [(record, float(value)) for record in group if (value := get(record.form, path)) is not None]
    if len(said) <= FEWEST:
        return
    values = np.array([value for _, value in said])
    for place, (record, value) in enumerate(said):
        others = np.delete(values, place)
        middle = float(np.median(others))
        spread = NORMAL * float(np.median(np.abs(others - middle)))
        scale = max(float(np.hypot(spread, _uncertainty(record, path, methods))), _floor(path, middle))
        far = abs(value - middle) / scale
        if far > THRESHOLD:
            yield _finding(record, path, value, middle, scale, len(others))


def _uncertainty(record: Record, path: str, methods: Mapping[str, Method]) -> float:
    """Return the standard uncertainty of a value: a half-range as said counts as even, else what its method has."""
    form, unit = record.form, path.rpartition("_")[2]
    half = form.uncertainties.get(path, form.uncertainties.get("*"))
    if half is not None:
        return half / 3**0.5
    method = methods.get(form.methods.get(path, form.methods.get("*", "unsaid")))
    return float(getattr(method, unit)) if method is not None else 0.0


def _floor(path: str, middle: float) -> float:
    return max(FLOOR.get(path.rpartition("_")[2], 0.0), SHARE.get(path, 0.0) * abs(middle))


def _finding(record: Record, path: str, value: float, middle: float, scale: float, count: int) -> Finding:
    unit = path.rpartition("_")[2]
    guess = meant(path, value, middle - THRESHOLD * scale, middle + THRESHOLD * scale)
    mend, command = f"measure it anew, then `records measure {record.reference} FORM`", None
    if guess is not None:
        mend = f"perhaps {guess[0]:g} {unit}, {guess[1]}; look at the papers, then"
        command = f"transom records correct {record.reference} {path}={guess[0]:g} --why 'was {guess[1]}'"
    far = abs(value - middle) / scale
    return Finding(
        kind="outlier",
        record=record.reference,
        field=path,
        value=value,
        expected=f"about {middle:.0f} {unit}",
        why=f"{title(path)}: {far:.1f} spreads ({scale:.3g} {unit}) from the median of {count} sister ships",
        mend=mend,
        command=command,
        grade=round(far, 2),
    )
