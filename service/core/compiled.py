"""Compiling the inner loops: they are run hundreds of thousands of times for one answer.

numba turns these functions into machine code on first use and keeps it on disk (where is set in `service`), so they
are written plainly, one boat and one placement at a time, and read like the formulas they are.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Any, TypeVar, cast

import numba
from numba.core.types import Type, unliteral

from service.core.kept_code import KeptCode

F = TypeVar("F", bound=Callable[..., object])


def _made(function: Callable[..., object], **how: Any) -> Any:  # noqa: ANN401 - numba's options, and what it makes
    made: Any = numba.njit(error_model="numpy", nogil=True, **how)(function)
    kept: Callable[..., object] = KeptCode
    made._cache = kept(function)  # noqa: SLF001 - there is no other place to say how it is loaded
    return made


def compiled(function: F) -> F:
    """Return the function as machine code. Division by zero gives inf or nan, as in numpy; other threads go on."""
    made = _made(function)
    template = made.get_call_template

    def of_kinds(args: Sequence[Type], kws: Mapping[str, Type]) -> object:
        of_kind: Callable[[Type], Type] = unliteral
        return template(tuple(map(of_kind, args)), {name: of_kind(one) for name, one in kws.items()})

    # numba would compile a call with the constant 0 and one with a variable apart, and all that is called from there
    made.get_call_template = of_kinds
    return cast("F", made)


def inlined(function: F) -> F:
    """Return the function as machine code that is written out where it is called, so that a whole site is not handed on."""
    return cast("F", _made(function, inline="always"))


def regrouped(function: F) -> F:
    """Return the function as machine code whose sums may be taken in another order, the same one every time.

    So they are taken several at once.
    """
    return cast("F", _made(function, fastmath={"reassoc"}))
