"""An import as a batch: broken off and gone on with exactly once, undone, mended and imported again. On each database."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterator
from typing import Any, get_args

import pytest
import sqlalchemy as sa

from service.core.batch import RowOutcome
from service.core.measurement import Measurement
from service.core.record import Record
from service.files.read.records_file import read_records
from service.files.write.tables import Format, put_records
from service.flow.edit_record import correct_record
from service.flow.export_records import export_records
from service.flow.fault_sheet import kept_fault_sheet
from service.flow.import_records import MappingFile, import_records
from service.flow.import_report import ImportReport
from service.flow.resume_import import resume_import
from service.flow.undo_import import undo_import
from service.store import schema
from service.store.errors import Conflict, StoreAway
from service.store.unit import Store
from tests.support.databases import Databases, Served

HEAD = (
    "record.reference,record.status,configuration.gear,configuration.lower,configuration.upper,configuration.shaft,"
    "boat.model,transom.rake_deg,contact.name\n"
)


def row(reference: str, rake: str = "12", owner: str = "") -> str:
    return f"{reference},installed,Gear 60,Hinge 200,Arm 400,Shaft 1800,Tern 31,{rake},{owner}\n"


def taken(store: Store, text: str, **more: Any) -> ImportReport:  # noqa: ANN401 - options of the use case
    return import_records(store.writing(), text.encode(), "fleet.csv", **more)


def batch_of(report: ImportReport) -> str:
    assert report.batch is not None
    return report.batch.id


def fleet(store: Store) -> dict[str, Record]:
    with store.reading() as uow:
        return {record.reference: record for record in uow.records.all()}


def outcomes(store: Store, batch: str) -> list[RowOutcome]:
    with store.reading() as uow:
        return list(uow.imports.outcomes(batch))


def count(store: Store, table: sa.Table) -> int:
    with store._engine.connect() as connection:
        return int(connection.execute(sa.select(sa.func.count()).select_from(table)).scalar_one())


@pytest.fixture
def breaks(monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    """Take three rows at a time, and break off after the second three."""
    monkeypatch.setattr("service.flow.import_records.CHUNK", 3)
    seen = []
    with monkeypatch.context() as patch:
        from service.store.imports import Imports  # noqa: PLC0415 - to be put in front of

        whole = Imports.acknowledge

        def acknowledge(self: Imports, *said: Any) -> Any:  # noqa: ANN401 - as the method's own
            seen.append(1)
            if len(seen) == 3:
                raise RuntimeError("pulled the plug")
            return whole(self, *said)

        patch.setattr(Imports, "acknowledge", acknowledge)
        yield


ROWS = [row(f"R-{n}") for n in range(8)] + [row("R-1"), row("R-9", rake="95"), row("R-8")]


@pytest.mark.usefixtures("breaks")
def test_what_broke_off_is_gone_on_with_exactly_once(store: Store) -> None:
    text = HEAD + "".join(ROWS)
    with pytest.raises(RuntimeError):
        taken(store, text)
    with store.reading() as uow:
        (broken,) = uow.imports.all()
    assert (broken.state, broken.done, broken.rows) == ("running", 6, 11)
    assert sorted(fleet(store)) == [f"R-{n}" for n in range(6)]  # whole threes, and nothing of the third
    told: list[int] = []
    report = resume_import(store.writing(), broken.id, progress=told.append)
    assert told == [6, 3, 2]
    assert [one.number for one in report.rows] == list(range(1, 12))
    assert report.created == tuple(f"R-{n}" for n in range(9))
    assert [(e.row, e.column) for e in report.rejected] == [(10, "record.reference"), (11, "transom.rake_deg")]
    assert report.rejected[0].expected.startswith("row 3 has this reference too")  # which was read before the break
    with store.reading() as uow:
        assert all(len(steps) == 1 for steps in uow.records.histories().values())
        after = uow.imports.get(broken.id)
    assert (after.state, after.done, dict(after.counts)) == (
        "done", 11, {"created": 9, "updated": 0, "unchanged": 0, "rejected": 2},
    )  # fmt: skip
    assert resume_import(store.writing(), broken.id).rows == report.rows  # nothing is left to do


@pytest.mark.usefixtures("breaks")
def test_two_that_go_on_with_it_do_nothing_twice(store: Store) -> None:
    with pytest.raises(RuntimeError):
        taken(store, HEAD + "".join(ROWS))
    with store.reading() as uow:
        (stale,) = uow.imports.all()
    resume_import(store.writing(), stale.id)
    with store.writing() as uow, pytest.raises(Conflict, match="somebody else goes on with this import"):
        uow.imports.acknowledge(stale, [RowOutcome(7, None, 8, "created", "R-6", 0, 1)])
    assert len(outcomes(store, stale.id)) == 11


def test_the_same_file_again_changes_nothing_and_is_kept_once(store: Store) -> None:
    text = HEAD + row("R-1") + row("R-2")
    first, second = taken(store, text), taken(store, text)
    assert (first.created, second.created, second.unchanged) == (("R-1", "R-2"), (), ("R-1", "R-2"))
    assert count(store, schema.kept_files) == 1
    with store.reading() as uow:
        assert uow.imports.files.get(first.batch.sha256 if first.batch else "") == text.encode()
        assert [one.state for one in uow.imports.all()] == ["done", "done"]


def test_a_preview_says_of_each_row_what_then_happens(store: Store) -> None:
    taken(store, HEAD + row("R-1") + row("R-2"))
    text = (HEAD + row("R-1") + row("R-2", rake="13") + row("R-3") + row("R-4", rake="95")).encode()
    preview = import_records(store.reading(), text, "fleet.csv", preview=True)
    assert [one.outcome for one in preview.rows] == ["unchanged", "updated", "created", "rejected"]
    assert (preview.batch, count(store, schema.imports)) == (None, 1)
    done = import_records(store.writing(), text, "fleet.csv")
    assert done.rows == preview.rows


def test_undoing_takes_away_what_came_and_changes_back_what_changed(store: Store) -> None:
    taken(store, HEAD + row("R-1", rake="10", owner="Ada Holm"))
    before = fleet(store)
    report = taken(store, HEAD + row("R-1", rake="11", owner="Ada Holm") + row("R-2", owner="Bo Lind") + row("R-3"))
    done = undo_import(store.writing(), batch_of(report), who="ada")
    assert done.whole
    assert [(one.reference, one.undo) for one in done.rows] == [("R-1", "undone"), ("R-2", "undone"), ("R-3", "undone")]
    assert fleet(store) == before
    with store.reading() as uow:
        steps = uow.records.history("R-1")
        assert [step.record.form.transom.rake_deg for step in steps] == [10, 11, 10]
        assert (steps[-1].who, steps[-1].why) == ("ada", "undo of the import of fleet.csv")
        assert uow.imports.get(batch_of(report)).state == "undone"
    assert (count(store, schema.boats), count(store, schema.contacts)) == (1, 1)  # nobody is remembered for nothing
    with pytest.raises(Conflict, match="was undone"):
        resume_import(store.writing(), batch_of(report))
    assert undo_import(store.writing(), batch_of(report)).rows == done.rows
    assert taken(store, HEAD + row("R-2")).created == ("R-2",)


def test_undoing_keeps_what_was_touched_since_and_says_why(store: Store) -> None:
    report = taken(store, HEAD + "".join(row(f"R-{n}") for n in range(5)))
    other = taken(store, HEAD + row("R-4", rake="14"))
    correct_record(store.writing(), "R-1", {"boat.name": "Teal"}, who="ada", why="the owner said")
    with store.writing() as uow:
        measured = Measurement(field="transom.rake_deg", text="13", unit="deg", value=13, who="bo", at=uow.now())
        uow.records.measurements.add({"R-2": [measured]})
        uow.commit()
    undo_import(store.writing(), batch_of(taken(store, HEAD + row("R-3", rake="15"))))  # there and back: revision 3
    done = undo_import(store.writing(), batch_of(report))
    told = {one.reference: (one.undo, one.why) for one in done.rows}
    assert not done.whole
    assert told["R-0"] == ("undone", None)
    assert told["R-1"] == ("kept", "it was edited since: revision 2")
    assert told["R-2"] == ("kept", "it was measured since")
    assert told["R-3"] == ("kept", "it was edited since: revision 3")
    assert told["R-4"] == ("kept", "it was edited since: revision 2")
    assert sorted(fleet(store)) == ["R-1", "R-2", "R-3", "R-4"]
    assert undo_import(store.writing(), batch_of(other)).whole


def test_undoing_says_where_there_is_nothing_left(store: Store) -> None:
    report = taken(store, HEAD + row("R-1"))
    with store.writing() as uow:
        uow.removals.remove(["R-1"])
        uow.commit()
    (one,) = undo_import(store.writing(), batch_of(report)).rows
    assert (one.undo, one.why) == ("failed", "the record is not there any more")


@pytest.mark.usefixtures("breaks")
def test_what_broke_off_can_be_undone(store: Store) -> None:
    with pytest.raises(RuntimeError):
        taken(store, HEAD + "".join(ROWS))
    with store.reading() as uow:
        (broken,) = uow.imports.all()
    assert len(undo_import(store.writing(), broken.id).rows) == 6
    assert fleet(store) == {}


@pytest.mark.parametrize("format_", get_args(Format))
def test_rows_not_taken_come_back_mended(store: Store, format_: Format) -> None:
    good = read_records((HEAD + row("R-1") + row("R-2") + row("R-3") + row("R-4")).encode(), "x").rows
    out = io.BytesIO()
    if format_ == "jsonl":
        seeded = import_records(store.writing(), (HEAD + "".join(row(f"R-{n}") for n in (1, 2, 3, 4))).encode(), "x")
        data = export_records(store.reading(), "jsonl")
        undo_import(store.writing(), batch_of(seeded))
        wrong = data.replace(b'"transom.rake_deg": 12.0', b'"transom.rake_deg": 95.0')
        data = b"".join(
            w if n in (1, 3) else d
            for n, (w, d) in enumerate(
                zip(wrong.splitlines(keepends=True), data.splitlines(keepends=True), strict=True)
            )
        )
    else:
        put_records(out, [one.record for one in good], format_)
        data = _spoilt(out.getvalue(), format_)
    report = import_records(store.writing(), data, f"fleet.{format_}")
    assert report.created == ("R-1", "R-3")
    sheet = kept_fault_sheet(store.reading(), batch_of(report))
    assert (sheet.ending, sheet.rows) == (format_, 2)
    again = import_records(store.writing(), sheet.data, "again")
    assert (again.created, len({(e.sheet, e.row) for e in again.rejected})) == ((), 2)  # as wrong as before
    mended = import_records(store.writing(), _mended(sheet.data, format_), "mended")
    assert mended.rejected == ()
    assert mended.created == ("R-2", "R-4")
    assert {name: one.form.transom.rake_deg for name, one in fleet(store).items()} == dict.fromkeys(fleet(store), 12)


def _spoilt(data: bytes, format_: Format) -> bytes:
    return _rewritten(data, format_, {"R-2": "95", "R-4": "steep"})


def _mended(data: bytes, format_: Format) -> bytes:
    if format_ == "jsonl":
        return data.replace(b'"transom.rake_deg": 95.0', b'"transom.rake_deg": 12.0')
    return _rewritten(data, format_, {"R-2": "12", "R-4": "12"})


def _rewritten(data: bytes, format_: Format, rakes: dict[str, str]) -> bytes:
    """Return the table with other cells under rake, in its own format, every cell as text."""
    from service.files.read.grid import open_table  # noqa: PLC0415 - for this helper alone
    from service.files.write.columnar import put_parquet  # noqa: PLC0415 - the same
    from service.files.write.grids import Sheet, put_raw, put_xlsx  # noqa: PLC0415 - the same
    from service.files.write.opendocument import put_ods  # noqa: PLC0415 - the same

    grid = next(open_table(data, "x").grids())
    who, rake = grid.headings.index("record.reference"), grid.headings.index("transom.rake_deg")
    rows = []
    for _, cells in grid.rows:
        cells[rake] = rakes.get(cells[who], cells[rake])
        rows.append([cell or None for cell in cells])
    sheet, out = Sheet(grid.sheet or "x", grid.headings, rows), io.BytesIO()
    writers = {"csv": lambda: put_raw(out, sheet, ","), "tsv": lambda: put_raw(out, sheet, "\t"),
               "xlsx": lambda: put_xlsx(out, [sheet]), "ods": lambda: put_ods(out, [sheet]),
               "parquet": lambda: put_parquet(out, sheet)}  # fmt: skip
    writers[format_]()
    return out.getvalue()


def test_the_sheet_of_faults_keeps_the_mapping_and_the_rows_own_numbers(store: Store) -> None:
    mapping = MappingFile(
        b'heading_row = 2\nnumber_rows = "old-"\n[always]\n"record.status" = "installed"\n'
        + b"".join(
            f'[[column]]\nheading = "{heading}"\nto = "{to}"\n'.encode()
            for heading, to in (
                ("Rake", "transom.rake_deg"), ("G", "configuration.gear"), ("L", "configuration.lower"),
                ("U", "configuration.upper"), ("S", "configuration.shaft"),
            )
        ),
        "map.toml",
    )  # fmt: skip
    data = b"Our boats;;;;\nRake;G;L;U;S\n12;g;l;u;s\nsteep;g;l;u;s;=surplus\n14;g;l;u;s\n"
    report = import_records(store.writing(), data, "old.csv", mapping=mapping)
    assert report.created == ("old-3", "old-5")
    sheet = kept_fault_sheet(store.reading(), batch_of(report))
    rows = list(csv.reader(io.StringIO(sheet.data.decode("utf-8-sig"), newline=""), delimiter=";"))
    assert rows[1] == ["error.row", "error.column", "error.expected", "Rake", "G", "L", "U", "S"]
    assert (rows[2][0], rows[2][1], rows[2][-1]) == ("4", "the row; Rake", "'=surplus")
    mended = sheet.data.replace(b"steep;", b"13;").replace(b";'=surplus", b"")
    assert import_records(store.writing(), mended, "old.csv", mapping=mapping).created == ("old-4",)


def test_a_database_that_goes_away_says_how_to_go_on(
    store: Store, databases: Databases, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("service.flow.import_records.CHUNK", 3)
    whole = store._engine.connect

    def away(_done: int) -> None:
        if isinstance(databases, Served):
            databases.run("SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE application_name = 'transom'")
            monkeypatch.setattr(store._engine.pool, "_pre_ping", False)  # it is noticed in the middle of the work
        else:
            monkeypatch.setattr(store._engine, "connect", _fail)

    def _fail() -> None:
        raise sa.exc.OperationalError("BEGIN", None, Exception("disk I/O error"))

    with pytest.raises(StoreAway, match=r"3 of 8 rows are in; go on with `transom imports resume import-\d+`"):
        taken(store, HEAD + "".join(ROWS[:8]), progress=away)
    monkeypatch.setattr(store._engine, "connect", whole)
    monkeypatch.setattr(store._engine.pool, "_pre_ping", True)
    with store.reading() as uow:
        (broken,) = uow.imports.all()
    assert len(resume_import(store.writing(), broken.id).created) == 8
