"""Compiling the inner loops: the checks are made hundreds of thousands of times for one answer.

numba turns these functions into machine code on first use and keeps it on disk (where is set in `service`), so they
are written plainly, one boat and one placement at a time, and read like the formulas they are.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeVar, cast

import numba

F = TypeVar("F", bound=Callable[..., object])


def compiled(function: F) -> F:
    """Return the function as machine code. Division by zero gives inf or nan, as in numpy; other threads go on."""
    return cast("F", numba.njit(cache=True, error_model="numpy", nogil=True)(function))


def inlined(function: F) -> F:
    """Return the function as machine code that is written out where it is called, so that a whole site is not handed on."""
    return cast("F", numba.njit(cache=True, error_model="numpy", nogil=True, inline="always")(function))
