"""Every record against a catalogue: whose configuration would no longer be right."""

from __future__ import annotations

import os
from collections import Counter
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace

from service.core.answer.compose import Known
from service.core.answer.recheck import Change, Recheck, Rechecked, recheck
from service.core.record import Record
from service.files.read.catalogue_file import read_catalogue
from service.flow.known import gather
from service.store.unit import UnitOfWork


def recheck_fleet(
    uow: UnitOfWork, data: bytes | None, name: str, *, progress: Callable[[int], None] = lambda _done: None
) -> Recheck:
    """Return how the loaded catalogue judges every record that was not withdrawn; with `data`, a catalogue file, too.

    `changes` are the records that the two judge differently. Raises as `gather` and `read_catalogue` do.
    """
    known = gather(uow)
    records = [r for r in known.fleet.records if r.status != "withdrawn"]
    before = _all(records, known, progress)
    if data is None:
        return compared(known.catalogue.version, before)
    other = read_catalogue(data, name)
    after = _all(records, replace(known, catalogue=other), progress)
    return compared(known.catalogue.version, before, other.version, after)


def compared(
    catalogue: str,
    before: tuple[Rechecked, ...],
    against: str | None = None,
    after: tuple[Rechecked, ...] | None = None,
) -> Recheck:
    """Return what one catalogue, or two of them, said of the same records in the same order."""
    rows = before if after is None else after
    changes = tuple(
        Change(record=a.record, before=b, after=a) for b, a in zip(before, rows, strict=True) if a.found != b.found
    )
    return Recheck(catalogue=catalogue, against=against, counts=_counts(rows), rows=rows, changes=changes)


def hands() -> int:
    """Return how many records are judged at a time: one a processor, for more of them wait for each other."""
    return os.cpu_count() or 1


def _all(records: list[Record], known: Known, progress: Callable[[int], None]) -> tuple[Rechecked, ...]:
    found = []
    with ThreadPoolExecutor(hands()) as threads:
        for one in threads.map(lambda record: recheck(record, known), records):
            found.append(one)
            progress(1)
    return tuple(found)


def _counts(rows: tuple[Rechecked, ...]) -> dict[str, int]:
    return dict(Counter(row.found for row in rows))
