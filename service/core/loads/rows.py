"""The worst case of a check, with its limit, margin and scale, as a result."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from service.core.loads.shapes import Result
from service.core.loads.standard import SCALE, Numbers
from service.core.loads.validity import Array, Num

FLOOR = 1e-9


class About(NamedTuple):
    """Words of a check: id, what it looks at, unit, formula and source."""

    id: str
    title: str
    unit: str
    formula: str
    source: str
    binds: bool = True


def at_most(about: About, values: Array, limit: Num, cases: tuple[str, ...], numbers: Numbers) -> Result:
    """Return the case with the greatest value against a limit that it must not pass; values (K, ...), K = m · cases.

    `limit` broadcasts to one case's shape; where several shares of one case stand behind each other, the case is k mod C.
    """
    worst = np.asarray(values.argmax(axis=0))
    value = np.asarray(values.max(axis=0))
    top = np.empty(value.shape)
    top[...] = limit
    return _result(about, value, top, np.asarray(top - value), worst % len(cases), cases, numbers)


def at_least(about: About, value: Array, limit: Array, cases: tuple[str, ...], numbers: Numbers) -> Result:
    """Return a value that must not fall below its limit; one case."""
    value, limit = np.broadcast_arrays(value, limit)
    return _result(about, value, limit, np.asarray(value - limit), np.zeros(value.shape, dtype=int), cases, numbers)


def _result(
    about: About, value: Array, limit: Array, margin: Array, case: Array, cases: tuple[str, ...], numbers: Numbers
) -> Result:
    return Result(
        id=about.id, title=about.title, value=value, limit=limit, margin=margin,
        scale=np.maximum(numbers.scale_share * limit, FLOOR), unit=about.unit, case=case, cases=cases,
        formula=about.formula, source=f"{about.source}; scale {SCALE}", binds=about.binds,
    )  # fmt: skip
