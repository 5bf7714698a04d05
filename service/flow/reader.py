"""The process that reads a long table for another one. It loads as little as reading needs."""

from __future__ import annotations

import gc
import os
import pickle  # what comes is of the process that started this one
import sys
from contextlib import suppress
from dataclasses import replace
from itertools import islice
from typing import NamedTuple

from service.files.read.record_rows import RecordRow, Rejected
from service.store.written import Written, written

PIECE = 250
"""Rows given back at once."""


class Ready(NamedTuple):
    """A row of which what is to be written was worked out where it was read."""

    sheet: str | None
    row: int
    what: Written

    def as_record(self) -> RecordRow:
        """Return the row with its record."""
        return RecordRow(self.sheet, self.row, self.what.record)


Read = RecordRow | Rejected | Ready


def serve() -> None:
    """Be that process: read the task and the file from standard input, and write rows to standard output."""
    given, taken = sys.stdin.buffer, sys.stdout.buffer
    file, skip, earlier = pickle.load(given)  # noqa: S301 - of the process that started this one
    streams = file.table is not None and file.table.kind == "csv"  # the others are read from their ends
    data = b"" if streams else given.read()
    table = None if file.table is None else replace(file.table, data=data, stream=given if streams else None)
    rows = replace(file, data=data, table=table).rows(skip=skip, earlier=earlier)
    gc.disable()  # the collector would walk over what is long sent
    with suppress(BrokenPipeError):
        while some := [_ready(row) for row in islice(rows, PIECE)]:
            pickle.dump(some, taken, protocol=pickle.HIGHEST_PROTOCOL)
            taken.flush()
            gc.collect(0)
        pickle.dump([], taken)
        taken.flush()
    os._exit(0)  # nothing is left to be put in order, and whoever waits need not wait for it


def _ready(row: RecordRow | Rejected) -> Read:
    if isinstance(row, Rejected) or row.revisions or row.measurements or row.merged:
        return row
    return Ready(row.sheet, row.row, written(row.record))
