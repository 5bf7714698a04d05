"""Give records out, one after the other: nothing holds all of them at once."""

from __future__ import annotations

import io
from collections import defaultdict
from collections.abc import Iterator
from itertools import islice
from typing import IO, TypeVar

from service.files.write.tables import Format, Told, put_lines, put_records
from service.flow.import_report import Advance, silent
from service.store.unit import UnitOfWork

T = TypeVar("T")
CHUNK = 500


def export_records(uow: UnitOfWork, format_: Format) -> bytes:
    """Return every record as it stands; as JSON lines also every state it was in, all measurements and merged ones.

    Unwritable names what a workbook cannot hold.
    """
    out = io.BytesIO()
    export_to(out, uow, format_)
    return out.getvalue()


def export_to(stream: IO[bytes], uow: UnitOfWork, format_: Format, *, progress: Advance = silent) -> int:
    """Write the same to a stream as it is read, and return how many records there were."""
    counted = _Counted(progress)
    with uow:
        if format_ == "jsonl":
            put_lines(stream, counted.each(_told(uow)))
        else:
            put_records(stream, counted.each(uow.records.each()), format_)
    return counted.count


class _Counted:
    """Counts what passes, and tells how many more at every hundredth."""

    def __init__(self, progress: Advance) -> None:
        self.count, self._progress = 0, progress

    def each(self, things: Iterator[T]) -> Iterator[T]:
        for thing in things:
            yield thing
            self.count += 1
            if self.count % 100 == 0:
                self._progress(100)


def _told(uow: UnitOfWork) -> Iterator[Told]:
    merged = {name: (one.into, one.number) for name, one in uow.records.merges.all().items()}
    histories = uow.records.each_history()
    while some := list(islice(histories, CHUNK)):
        names = [history[-1].record.reference for history in some]
        measured = uow.records.measurements.among(names)
        files = defaultdict[str, list[dict[str, object]]](list)
        for one in uow.records.attachments.of(names):
            files[one.reference].append({"sha256": one.sha256, "name": one.name, "type": one.type, "bytes": one.bytes})
        for name, history in zip(names, some, strict=True):
            yield Told(history, measured.get(name, ()), merged.get(name), files.get(name, ()))
