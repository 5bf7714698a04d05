"""Work done in a copy of this process, while this one does other work: for a command that does much in plain Python at once.

Copies are made where there is a second core to work on them, and on Linux alone: elsewhere a copy may not be safe.
"""

from __future__ import annotations

import os
import pickle  # what comes is of a copy of this process
import signal
import sys
import warnings
from collections.abc import Callable
from contextlib import AbstractContextManager, nullcontext, suppress
from typing import TypeVar, cast

Made = TypeVar("Made")


class CopyEndedError(ChildProcessError):
    """The copy has ended without an answer."""


class Copy:
    """A copy of this process: it makes something ready, and then does with it what it is asked, in that order.

    Neither `ready` nor what is asked may use what a copy cannot share, an open database among it. Where anything goes
    wrong in the copy it ends without a word, and whoever waits for it can do the work himself. `meanwhile` is done here,
    once, while the copy is at what it was asked first.
    """

    def __init__(
        self, ready: Callable[[], AbstractContextManager[object]], meanwhile: Callable[[], object] | None = None
    ) -> None:
        self._meanwhile = meanwhile
        (asked, ask), (answer, answered) = os.pipe(), os.pipe()
        self._process = _copied()
        here, there = ((answer, ask), (asked, answered)) if self._process else ((asked, answered), (answer, ask))
        for end in there:
            os.close(end)
        self._come, self._go = os.fdopen(here[0], "rb"), os.fdopen(here[1], "wb")
        if self._process == 0:
            self._serve(ready)

    def ask(self, name: str, *given: object) -> None:
        """Have the method of that name be called with what is given; both go through a pipe."""
        with suppress(OSError):  # it has ended, as `answer` says
            self._say((name, given))

    def answer(self) -> object:
        """Wait for what was asked and return what came of it. CopyEndedError where nothing will."""
        try:
            made: object = pickle.load(self._come)  # noqa: S301 - of a copy of this process
        except (EOFError, OSError, pickle.UnpicklingError) as none:
            raise CopyEndedError("a copy of this process has ended") from none
        return made

    def do(self, name: str, *given: object) -> object:
        """Ask, and return what came of it. CopyEndedError where nothing will."""
        self.ask(name, *given)
        meanwhile, self._meanwhile = self._meanwhile, None
        if meanwhile is not None:
            meanwhile()
        return self.answer()

    def end(self) -> None:
        """Have it end, whatever it is doing."""
        os.kill(self._process, signal.SIGKILL)
        os.waitpid(self._process, 0)
        for stream in (self._come, self._go):
            with suppress(OSError):  # what could not be sent
                stream.close()

    def _say(self, what: object) -> None:
        pickle.dump(what, self._go)
        self._go.flush()

    def _serve(self, ready: Callable[[], AbstractContextManager[object]]) -> None:
        """Do what is asked until nobody asks any more, and end without putting in order what is the first process's own."""
        try:
            with ready() as worker:
                while True:
                    name, given = pickle.load(self._come)  # noqa: S301 - of the process this is a copy of
                    self._say(getattr(worker, name)(*given))
        finally:
            os._exit(1)


def can_copy() -> bool:
    """Say whether a copy can be made that this machine has a core for."""
    return sys.platform == "linux" and (os.cpu_count() or 1) > 1


def worth_a_copy(module: str) -> bool:
    """Say whether a copy that loads the module would be ready sooner than this process: where it has not loaded it itself."""
    return can_copy() and module not in sys.modules


def beside(work: Callable[[], Made]) -> Callable[[], Made]:
    """Begin the work in a copy of this process; return what waits for it and gives what was made.

    Where no copy can be made, or it ends without a result, the work is done here, when it is asked for.
    """
    if not can_copy():
        return work
    copy = Copy(lambda: nullcontext(work))
    copy.ask("__call__")

    def wait() -> Made:
        try:
            return cast("Made", copy.answer())
        except CopyEndedError:
            return work()
        finally:
            copy.end()

    return wait


def _copied() -> int:
    """Copy this process and return the copy's number; 0 in the copy."""
    with warnings.catch_warnings():  # from 3.12 on; of what other threads may hold, the work needs nothing
        warnings.simplefilter("ignore", DeprecationWarning)
        return os.fork()
