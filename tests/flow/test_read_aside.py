"""Reading in a process of its own gives what reading here gives, and ends with whoever wanted it."""

from __future__ import annotations

import os
import signal
import time
from pathlib import Path

import pytest

from service.files.read.mapping_file import read_mapping
from service.files.read.record_rows import RecordRow, Rejected
from service.files.read.records_file import RecordsFile, open_records
from service.flow.export_records import export_records
from service.flow.import_records import import_records
from service.flow.read_aside import read_aside, worth_it
from service.flow.reader import Ready
from service.store.unit import Store
from tests.flow.test_import_batches import HEAD, fleet, row

TEXT = (
    HEAD + "".join(row(f"R-{n}", owner="Ada Holm" if n % 3 else "") for n in range(40)) + row("R-1") + row("R-x", "95")
)
MAP = b"".join(f'[[column]]\nheading = "{name}"\nto = "{name}"\n'.encode() for name in HEAD.strip().split(","))


def readers() -> list[int]:
    """Return the processes that read for this one."""
    mine = []
    for place in Path("/proc").glob("[0-9]*"):
        try:
            parent = int((place / "stat").read_text().rpartition(")")[2].split()[1])
            if parent == os.getpid() and b"flow.reader" in (place / "cmdline").read_bytes():
                mine.append(int(place.name))
        except OSError:  # gone meanwhile
            continue
    return mine


def found(file: RecordsFile, *, skip: int = 0) -> list[RecordRow | Rejected]:
    rows = [one for some in read_aside(file, 7, skip=skip) for one in some]
    return [one.as_record() if isinstance(one, Ready) else one for one in rows]


@pytest.mark.parametrize("mapped", [False, True])
def test_the_same_rows_come_from_elsewhere(mapped: bool) -> None:  # noqa: FBT001 - a parameter of the test
    file = open_records(TEXT.encode(), "fleet.csv", read_mapping(MAP, "map.toml") if mapped else None)
    assert found(file) == list(file.rows())
    assert found(file, skip=5) == list(file.rows(skip=5))


def test_only_long_tables_are_worth_a_process() -> None:
    file = open_records(TEXT.encode(), "fleet.csv")
    assert not worth_it(file, 0)
    lines = open_records(b'{"a": 1}\n' * 6_000, "fleet.jsonl")
    assert (lines.count, worth_it(lines, 0)) == (6_000, False)


@pytest.fixture
def aside(monkeypatch: pytest.MonkeyPatch) -> None:
    """Read every table elsewhere."""
    monkeypatch.setattr("service.flow.read_aside.LEAST", 1)
    monkeypatch.setattr("service.flow.read_aside.os.cpu_count", lambda: 2)


@pytest.mark.usefixtures("aside")
def test_an_import_read_elsewhere_is_the_same(store: Store, monkeypatch: pytest.MonkeyPatch) -> None:
    there = import_records(store.writing(), TEXT.encode(), "fleet.csv")
    kept, table = fleet(store), export_records(store.reading(), "csv")
    again = import_records(store.writing(), TEXT.encode(), "fleet.csv")
    changed = import_records(store.writing(), TEXT.replace(",12,", ",13,").encode(), "fleet.csv", preview=True)
    assert (len(there.created), len(again.unchanged), len(changed.updated)) == (40, 40, 40)
    assert changed.changes["R-1"] == ("transom.rake_deg",)
    monkeypatch.setattr("service.flow.read_aside.LEAST", 10**9)
    here = import_records(store.writing(), TEXT.encode(), "fleet.csv")
    assert (here.unchanged, here.rejected) == (again.unchanged, there.rejected)
    assert len(kept) == 40
    assert export_records(store.reading(), "csv") == table


@pytest.mark.usefixtures("aside")
def test_a_reading_process_that_dies_is_said_and_what_came_is_kept(
    store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("service.flow.import_records.CHUNK", 250)
    text = HEAD + "".join(row(f"R-{n}") for n in range(20_000))

    def kill(_done: int) -> None:
        for reader in readers():
            os.kill(reader, signal.SIGKILL)

    says = r"ended before its work was done; \d+ of 20000 rows are in; go on with `transom imports resume import-"
    with pytest.raises(ChildProcessError, match=says):
        import_records(store.writing(), text.encode(), "fleet.csv", progress=kill)
    with store.reading() as uow:
        (batch,) = uow.imports.all()
    assert 0 < batch.done == len(fleet(store)) < 20_000


@pytest.mark.usefixtures("aside")
def test_nobody_is_left_behind() -> None:
    rows = read_aside(open_records((HEAD + "".join(row(f"R-{n}") for n in range(5_000))).encode(), "x"), 10)
    next(rows)
    assert len(readers()) == 1
    rows.close()  # type: ignore[attr-defined] # it is a generator
    time.sleep(0.1)
    assert readers() == []
