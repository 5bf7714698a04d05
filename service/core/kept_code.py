"""Machine code on disk: it is loaded without what compiling needs, which takes longer to load than an answer to make.

numba has no public place for any of this, so what it calls its own is used here, and nowhere else. What is on disk and was
written otherwise is loaded as numba would.
"""

from __future__ import annotations

import sys
from collections.abc import Sequence
from importlib import import_module
from typing import Any

import llvmlite.binding as llvm
from numba.core import environment
from numba.core.caching import FunctionCache
from numba.core.codegen import JITCodeLibrary
from numba.core.environment import Environment
from numba.core.runtime.nrt import rtsys
from numba.core.typing.templates import Signature

_NAMED = "object with names"


class _Library(JITCodeLibrary):
    """Machine code, kept with the names it defines: what it was compiled from is read only where other code calls it.

    numba reads that whenever it loads machine code, which takes ten times as long as loading it.
    """

    _unread: bytes | None = None

    @classmethod
    def _unserialize(cls, maker: Any, state: tuple[str, str, tuple[Any, ...]]) -> Any:  # noqa: ANN401 - numba's own
        name, kind, data = state
        if kind != _NAMED:
            return super()._unserialize(maker, state)
        library = maker.create_library(name)
        machine_code, library._unread, names = data  # noqa: SLF001 - of this class
        library.enable_object_caching()
        library._set_compiled_object(machine_code)  # noqa: SLF001 - as numba does
        library._finalize_final_module()  # noqa: SLF001 - the same
        maker._engine._defined_symbols |= names  # noqa: SLF001 - the same, but by names that were written down
        return library

    def _get_module_for_linking(self) -> Any:  # noqa: ANN401 - numba's own
        if self._unread is not None:
            self._shared_module, self._unread = llvm.parse_bitcode(self._unread), None
        return super()._get_module_for_linking()

    def serialize_using_object_code(self) -> tuple[str, str, tuple[Any, ...]]:
        name, _, (machine_code, source) = super().serialize_using_object_code()
        module = self._get_module_for_linking()
        every = (*module.functions, *module.global_variables)
        return name, _NAMED, (machine_code, source, {one.name for one in every if not one.is_declaration})


class KeptCode(FunctionCache):
    """Machine code on disk, loaded without what compiling needs, which takes longer to load than an answer to make."""

    def load_overload(self, sig: Signature, target_context: Any) -> object:  # noqa: ANN401 - numba's own
        """Return the code for arguments of these types; None where there is none, so that it is compiled."""
        rtsys.initialize(target_context)
        target_context.codegen()._library_class = _Library  # noqa: SLF001 - there is no other place to say it
        with self._guard_against_spurious_io_errors():
            found: object = self._load_overload(sig, target_context)
            return found
        return None  # it could not be read


def _environment(module: str, constants: Sequence[object], name: str) -> Environment:
    """Return what machine code finds its constants in; of numba's own functions without loading the modules they stand in.

    Those modules are what compiling needs; machine code takes nothing from them.
    """
    known: Environment | None = environment.lookup_environment(name)
    if known is not None:
        return known
    needless = module.startswith("numba.") and module not in sys.modules
    made = Environment({} if needless else import_module(module).__dict__)
    made.consts[:] = constants
    made.env_name = name
    Environment._memo[name] = made  # noqa: SLF001 - as numba does
    return made


environment._rebuild_env = _environment  # noqa: SLF001 - what is on disk is made again by this name
