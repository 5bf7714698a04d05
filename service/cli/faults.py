"""What went wrong -> an exit status and a message that says what, where and how to mend it."""

from __future__ import annotations

import errno
import os
import sys
import traceback
from collections.abc import Iterator
from contextlib import contextmanager

from service.cli.plain import plain
from service.core.form import FormError
from service.files.read.errors import Unreadable
from service.flow.refusal import Refused
from service.store.errors import BadAddress, Conflict, StoreError

DONE, NO, BAD_INPUT, CANNOT_WORK = 0, 1, 2, 3
_MOST_DEFECTS = 50


class BadInput(Exception):  # noqa: N818 - named by what it is about
    """Input or usage that cannot be worked with; its text says what, where and how to mend it."""


@contextmanager
def reading(name: str, schema: str) -> Iterator[None]:
    """Turn the defects found in a document into one message that names the file and where its shape is described."""
    try:
        yield
    except FormError as error:
        lines = [f"  {defect}" for defect in error.defects[:_MOST_DEFECTS]]
        if len(error.defects) > _MOST_DEFECTS:
            lines.append(f"  and {len(error.defects) - _MOST_DEFECTS} more")
        count = "one fault" if len(error.defects) == 1 else f"{len(error.defects)} faults"
        mend = f"Mend what is named and try again; `transom schema {schema}` shows the shape."
        raise BadInput("\n".join([f"{name}: {count}", *lines, mend])) from error


def tell(error: Exception) -> int:
    """Print the error for people on stderr and return the exit status it stands for.

    With TRANSOM_DEBUG=1 in the environment the trace is printed before it.
    """
    if os.environ.get("TRANSOM_DEBUG", "") not in ("", "0"):
        traceback.print_exception(error, file=sys.stderr)
    status, message = explain(error)
    sys.stderr.write(f"transom: {plain(message)}\n")
    return status


def explain(error: Exception) -> tuple[int, str]:
    """Return the exit status and the message for an error."""
    from service.flow.fit import NotInCatalogueError  # noqa: PLC0415 - large, and loaded only where something went wrong
    from service.flow.known import NoCatalogueError  # noqa: PLC0415 - the same

    if isinstance(error, (BadInput, Refused, Unreadable, FormError, NotInCatalogueError, BadAddress, Conflict)):
        return BAD_INPUT, str(error)
    if isinstance(error, (StoreError, NoCatalogueError)):
        return CANNOT_WORK, str(error)
    if isinstance(error, OSError):
        return CANNOT_WORK, _of_the_system(error)
    if isinstance(error, MemoryError):
        return CANNOT_WORK, "there is not enough memory for this; give it less at once"
    kind = type(error).__name__
    mend = "Set TRANSOM_DEBUG=1 to see where, and send that with your report"
    return CANNOT_WORK, f"a fault of the program itself ({kind}: {error}). {mend}"


def _of_the_system(error: OSError) -> str:
    where = f": {error.filename}" if error.filename else ""
    if error.errno in (errno.ENOSPC, errno.EDQUOT):
        return f"the disk is full{where}. Make room and try again"
    if error.errno in (errno.EACCES, errno.EPERM, errno.EROFS):
        return f"this may not be written{where}. Allow writing there, or name another place"
    return f"{(error.strerror or str(error)).lower()}{where}"
