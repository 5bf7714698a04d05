"""Reading a long table in a process of its own, while this one writes what was read before.

The process is given the file by its standard input and gives back rows, many at a time: those that are records with what
is to be written of them already worked out. It ends with this one: whoever writes into a pipe that nobody reads stops.
"""

from __future__ import annotations

import os
import pickle  # what comes is of our own process
import subprocess
import sys
from collections.abc import Iterator, Mapping, Sequence
from contextlib import suppress
from dataclasses import replace
from pathlib import Path
from threading import Thread
from typing import IO

import service
from service.files.read.records_file import RecordsFile
from service.flow.reader import Read

LEAST = 5_000
"""Rows for which it is worth starting a process."""
_PIPE = 1 << 20
_PROGRAM = "from service.flow.reader import serve; serve()"


def worth_it(file: RecordsFile, skip: int) -> bool:
    """Say whether reading in a process of its own is quicker: a long table, and more than one core to work on."""
    return file.table is not None and file.count - skip >= LEAST and (os.cpu_count() or 1) > 1


def read_aside(
    file: RecordsFile, chunk: int, *, skip: int = 0, earlier: Mapping[str, str] | None = None
) -> Iterator[Sequence[Read]]:
    """Yield the rows after the `skip`-th, `chunk` at a time, as `file.rows` would give them, read elsewhere.

    ChildProcessError where that process ends before its work is done.
    """
    environment = {**os.environ, "PYTHONPATH": str(Path(service.__file__).parent.parent)}
    command = [sys.executable, "-c", _PROGRAM]
    with subprocess.Popen(  # noqa: S603 - our own interpreter and a fixed text
        command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, env=environment
    ) as child:
        if child.stdin is None or child.stdout is None:
            raise ChildProcessError("the process that reads the file has no pipes")
        _widen(child.stdout)
        task = (_without_data(file), skip, dict(earlier or {}))
        feeder = Thread(target=_feed, args=(child.stdin, task, file.data), daemon=True)
        feeder.start()
        try:
            yield from _gathered(_received(child.stdout), chunk)
        finally:
            child.kill()
            feeder.join()


def _widen(stream: IO[bytes]) -> None:
    """Let the reader be some rows ahead: a pipe that holds more, where the system has such (Linux)."""
    with suppress(ImportError, AttributeError, OSError):
        import fcntl  # noqa: PLC0415 - not there on every system

        fcntl.fcntl(stream.fileno(), fcntl.F_SETPIPE_SZ, _PIPE)


def _gathered(pieces: Iterator[Sequence[Read]], chunk: int) -> Iterator[Sequence[Read]]:
    held: list[Read] = []
    for piece in pieces:
        held += piece
        if len(held) >= chunk:
            yield held
            held = []
    if held:
        yield held


def _without_data(file: RecordsFile) -> RecordsFile:
    table = None if file.table is None else replace(file.table, data=b"")
    return replace(file, data=b"", table=table)


def _feed(stream: IO[bytes], task: object, data: bytes) -> None:
    with suppress(BrokenPipeError), stream:
        pickle.dump(task, stream)
        stream.write(data)


def _received(stream: IO[bytes]) -> Iterator[Sequence[Read]]:
    while True:
        try:
            some = pickle.load(stream)  # noqa: S301 - of our own process
        except (EOFError, pickle.UnpicklingError):
            raise ChildProcessError("the process that reads the file ended before its work was done") from None
        if not some:
            return
        yield some
