"""Compiling the inner loops: they are run hundreds of thousands of times for one answer.

numba turns these functions into machine code on first use and keeps it on disk (where is set in `service`), so they
are written plainly, one boat and one placement at a time, and read like the formulas they are.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Any, TypeVar, cast

import numba
from numba.core.base import BaseContext
from numba.core.caching import FunctionCache
from numba.core.runtime.nrt import rtsys
from numba.core.types import Type, unliteral
from numba.core.typing.templates import Signature

F = TypeVar("F", bound=Callable[..., object])


class _Kept(FunctionCache):
    """Machine code on disk, loaded without what compiling needs, which takes longer to load than an answer to make."""

    def load_overload(self, sig: Signature, target_context: BaseContext) -> object:
        """Return the code for arguments of these types; None where there is none, so that it is compiled."""
        rtsys.initialize(target_context)
        with self._guard_against_spurious_io_errors():
            load: Callable[..., object] = self._load_overload
            return load(sig, target_context)
        return None  # it could not be read


def _made(function: Callable[..., object], **how: Any) -> Any:  # noqa: ANN401 - numba's options, and what it makes
    made: Any = numba.njit(cache=True, error_model="numpy", nogil=True, **how)(function)
    kept: Callable[..., FunctionCache] = _Kept
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
