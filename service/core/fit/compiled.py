"""Compiling the inner loops: the checks are made hundreds of thousands of times for one answer.

numba turns these functions into machine code on first use and keeps it on disk (where is set in `service`), so they
are written plainly, one boat and one placement at a time, and read like the formulas they are.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Any, TypeVar, cast

import numba
from numba.core.types import Type, unliteral

F = TypeVar("F", bound=Callable[..., object])


def compiled(function: F) -> F:
    """Return the function as machine code. Division by zero gives inf or nan, as in numpy; other threads go on."""
    made: Any = numba.njit(cache=True, error_model="numpy", nogil=True)(function)
    template = made.get_call_template

    def of_kinds(args: Sequence[Type], kws: Mapping[str, Type]) -> object:
        of_kind: Callable[[Type], Type] = unliteral
        return template(tuple(map(of_kind, args)), {name: of_kind(one) for name, one in kws.items()})

    # numba would compile a call with the constant 0 and one with a variable apart, and all that is called from there
    made.get_call_template = of_kinds
    return cast("F", made)


def inlined(function: F) -> F:
    """Return the function as machine code that is written out where it is called, so that a whole site is not handed on."""
    return cast("F", numba.njit(cache=True, error_model="numpy", nogil=True, inline="always")(function))
