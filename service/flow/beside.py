"""Work done in a copy of this process, while this one does other work: for a command that makes much in plain Python at once."""

from __future__ import annotations

import os
import pickle  # what comes is of a copy of this process
import sys
import warnings
from collections.abc import Callable
from typing import TypeVar

Made = TypeVar("Made")


def beside(work: Callable[[], Made]) -> Callable[[], Made]:
    """Begin the work in a copy of this process; return what waits for it and gives what was made.

    `work` must not use what a copy cannot share, a database among it. Where there is one core, or the system makes no such
    copies, or the copy ends without a result, the work is done here, when it is asked for.
    """
    if sys.platform != "linux" or (os.cpu_count() or 1) < 2:  # noqa: PLR2004 - elsewhere a copy may not be safe
        return work
    read, write = os.pipe()
    with warnings.catch_warnings():  # from 3.12 on; of what other threads may hold, the work needs nothing
        warnings.simplefilter("ignore", DeprecationWarning)
        child = os.fork()
    if child == 0:
        os.close(read)
        _send(write, work)
    os.close(write)

    def wait() -> Made:
        with os.fdopen(read, "rb") as stream:
            data = stream.read()
        _, ended = os.waitpid(child, 0)
        if ended != 0:
            return work()
        made: Made = pickle.loads(data)  # noqa: S301 - of a copy of this process
        return made

    return wait


def _send(write: int, work: Callable[[], object]) -> None:
    """Do the work, write what was made, and end without putting in order what is the first process's own."""
    status = 1
    try:
        with os.fdopen(write, "wb") as stream:
            pickle.dump(work(), stream)
        status = 0
    finally:
        os._exit(status)
