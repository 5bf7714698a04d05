"""A formula with its source and the range in which it holds: outside it a result carries a finding.

A formula is a pure function; `Formula` keeps beside it where it comes from and what its inputs may be. Calling it
gives the bare number, `checked` the number with its findings.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from functools import update_wrapper
from typing import Any, Generic, ParamSpec, TypeVar

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]
Num = Array | float
P = ParamSpec("P")
R = TypeVar("R")


@dataclass(frozen=True)
class Valid:
    """What an input may be, ends included."""

    least: float = -math.inf
    most: float = math.inf
    unit: str = "1"


@dataclass(frozen=True)
class Finding:
    """Something a reader of the result must know: which formula, which input, in words."""

    formula: str
    input: str
    text: str


@dataclass(frozen=True)
class Checked(Generic[R]):
    """A result with what was found about it."""

    value: R
    findings: tuple[Finding, ...]


class Formula(Generic[P, R]):
    """A pure function that knows its source and its range of validity."""

    def __init__(self, function: Callable[P, R], source: str, valid: dict[str, Valid]) -> None:
        self._function = function
        self.source = source
        self.valid = valid
        self.name = function.__name__
        update_wrapper(self, function)

    def __call__(self, *args: P.args, **kwargs: P.kwargs) -> R:
        """Return the function's own result."""
        return self._function(*args, **kwargs)

    def findings(self, **inputs: Any) -> tuple[Finding, ...]:  # noqa: ANN401 - arrays, numbers and flags alike
        """Return one finding for each input that is somewhere outside its range; NaN is outside."""
        said = []
        for name, valid in self.valid.items():
            if name in inputs:
                text = outside(name, inputs[name], valid)
                said += [Finding(self.name, name, text)] if text else []
        return tuple(said)

    def checked(self, *args: P.args, **kwargs: P.kwargs) -> Checked[R]:
        """Return the result with its findings; inputs that have a range must be given by name."""
        return Checked(self._function(*args, **kwargs), self.findings(**kwargs))


def formula(source: str, **valid: Valid) -> Callable[[Callable[P, R]], Formula[P, R]]:
    """Mark a function as a formula with its source and the ranges of its inputs."""

    def mark(function: Callable[P, R]) -> Formula[P, R]:
        return Formula(function, source, valid)

    return mark


def outside(name: str, values: Num, valid: Valid) -> str:
    """Say by how much values leave a range, "" where they stay inside.

    >>> outside("aspect", 8.0, Valid(0.5, 6.0))
    'aspect 8 is outside 0.5 to 6'
    >>> outside("aspect", np.array([1.0, 2.0]), Valid(0.5, 6.0))
    ''
    """
    array = np.asarray(values, dtype=float)
    if array.size == 1 and valid.least <= array.item() <= valid.most:
        return ""
    inside = (array >= valid.least) & (array <= valid.most)
    if inside.all():
        return ""
    wrong = np.atleast_1d(array)[~np.atleast_1d(inside)]
    worst = wrong[np.argmax(np.maximum(valid.least - wrong, wrong - valid.most))]
    unit = "" if valid.unit == "1" else f" {valid.unit}"
    ends = f"{valid.least:g} to {valid.most:g}{unit}"
    if math.isinf(valid.most):
        ends = f"{valid.least:g}{unit} and more"
    if math.isinf(valid.least):
        ends = f"up to {valid.most:g}{unit}"
    many = f" in {wrong.size} of {array.size}" if array.size > 1 else ""
    return f"{name} {worst:g}{unit} is outside {ends}{many}"


def length_of(vectors: Array) -> Array:
    """Return the length of vectors (..., 3), written out as `cross` is.

    >>> float(length_of(np.array([2.0, 3.0, 6.0])))
    7.0
    """
    x, y, z = vectors[..., 0], vectors[..., 1], vectors[..., 2]
    return np.sqrt(x * x + y * y + z * z)


def cross(one: Array, other: Array) -> Array:
    """Return the vector product of (..., 3) and (..., 3), written out: numpy's own spends its time on moving axes.

    >>> cross(np.array([1.0, 0.0, 0.0]), np.array([0.0, 1.0, 0.0])).tolist()
    [0.0, 0.0, 1.0]
    """
    a, b, c = one[..., 0], one[..., 1], one[..., 2]
    x, y, z = other[..., 0], other[..., 1], other[..., 2]
    found = np.empty((*np.broadcast(a, x).shape, 3))
    found[..., 0], found[..., 1], found[..., 2] = b * z - c * y, c * x - a * z, a * y - b * x
    return found
