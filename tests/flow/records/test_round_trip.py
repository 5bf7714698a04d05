"""Whatever happens to records, JSON lines carry all of it elsewhere, on each kind of database."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

import pytest
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st

from service.core.record import HullModel
from service.files.read.installed_file import FromSite, read_installed
from service.flow.edit_record import correct_record
from service.flow.export_records import export_records
from service.flow.import_records import import_records
from service.flow.measure_record import measure_record
from service.flow.merge_records import merge_records, unmerge_records
from service.flow.refusal import Refused
from service.flow.restore_revision import restore_revision
from service.flow.step_record import Told, step_record
from service.store.ids import random_id
from service.store.unit import Store
from tests.flow.records.conftest import record
from tests.support.databases import Databases

NAMES = [f"P-{n}" for n in range(4)]
LENGTHS = st.floats(-500, 800, allow_nan=False).map(lambda mm: round(mm, 3))
METHODS = st.sampled_from(["tape", "brochure", "photo", "guess", None])
DAYS = st.one_of(st.none(), st.dates())


def said(mm: float, method: str | None) -> FromSite:
    methods = f'[methods]\n"transom.bottom_height_mm" = "{method}"\n' if method else ""
    form = f"[transom]\nbottom_height_mm = '{mm / 1000:.6f} m'\n{methods}"
    return read_installed(form.encode(), "form.toml")


Deed = Callable[[Store, str, str], object]
DEEDS: st.SearchStrategy[Deed] = st.one_of(
    st.builds(
        lambda mm, how, day: lambda s, a, _b: measure_record(s.writing(), a, said(mm, how), who="bo", day=day),
        LENGTHS, METHODS, DAYS,
    ),
    st.builds(
        lambda to, why: lambda s, a, _b: step_record(s.writing(), a, to, Told(why=why), who="cy"),
        st.sampled_from(["proposed", "shipped", "installed", "withdrawn"]), st.text("aé=' \"", min_size=1, max_size=5),
    ),
    st.builds(
        lambda name: lambda s, a, _b: correct_record(s.writing(), a, {"boat.name": name}, who="bo", why="x"),
        st.text("abö,;=\n'", max_size=6),
    ),
    st.builds(
        lambda n: lambda s, a, _b: restore_revision(s.writing(), a, n, who="ada", why="back"), st.integers(1, 3)
    ),
    st.just(lambda s, a, b: merge_records(s.writing(), a, b, who="bo", why="same")),
    st.just(lambda s, a, b: unmerge_records(s.writing(), a, b, who="bo", why="not the same")),
)  # fmt: skip


def everything(store: Store) -> tuple[object, ...]:
    with store.reading() as uow:
        return uow.records.histories(), uow.records.measurements.all(), uow.records.merges.all(), uow.records.all()


def new_store(databases: Databases) -> Store:
    made = Store(databases.migrated(), now=lambda: datetime(2026, 1, 1, tzinfo=UTC), new_id=random_id)
    with made.writing() as uow:
        uow.hulls.put([HullModel(id="tern-31", model="Tern 31")], who="test", why="test")
        uow.commit()
    return made


@settings(
    deadline=None,
    derandomize=True,
    max_examples=8,
    phases=[Phase.generate],  # shrinking would take hundreds of databases
    suppress_health_check=[HealthCheck.function_scoped_fixture],
)
@given(deeds=st.lists(st.tuples(DEEDS, st.sampled_from(NAMES), st.sampled_from(NAMES)), max_size=12))
def test_all_that_happened_comes_elsewhere_as_it_was(databases: Databases, deeds: list[tuple[Deed, str, str]]) -> None:
    here, there = new_store(databases), new_store(databases)
    try:
        with here.writing() as uow:
            uow.records.add_many([record(name) for name in NAMES], who="ada", why="order")
            uow.commit()
        for deed, one, other in deeds:
            try:
                deed(here, one, other)
            except Refused:
                continue
        data = export_records(here.reading(), "jsonl")
        report = import_records(there.writing(), data, "ledger.jsonl")
        assert report.rejected == ()
        assert everything(there) == everything(here)
        assert export_records(there.reading(), "jsonl") == data
        again = import_records(there.writing(), data, "ledger.jsonl")
        assert (again.created, again.updated, again.rejected) == ((), (), ())
        assert everything(there) == everything(here)
    finally:
        here.close()
        there.close()


def test_what_came_later_is_brought_after(databases: Databases) -> None:
    here, there = new_store(databases), new_store(databases)
    try:
        with here.writing() as uow:
            uow.records.add(record("P-1"), who="ada", why="order")
            uow.commit()
        measure_record(here.writing(), "P-1", said(100, "tape"), who="bo")
        import_records(there.writing(), export_records(here.reading(), "jsonl"), "one.jsonl")
        measure_record(here.writing(), "P-1", said(120, "guess"), who="bo")  # stands beside, and changes nothing
        import_records(there.writing(), export_records(here.reading(), "jsonl"), "two.jsonl")
        with there.reading() as uow:
            assert [row.text for row in uow.records.measurements.of_boat("P-1")] == ["0.100000 m", "0.120000 m"]
    finally:
        here.close()
        there.close()


WRONG = '{"field":"transom.rake_dg","text":"1","unit":"deg","value":1,"who":"a","at":"2026-01-01T00:00:00Z"}'


@pytest.mark.parametrize(
    ("line", "says"),
    [
        ('"record.merged_into": {"reference": "nowhere", "revision": 1}', "no such record"),
        ('"record.merged_into": "P-9"', "expected the reference"),
        ('"record.merged_into": {"reference": "P-1", "revision": 1}', "another record"),
        (f'"record.measurements": [{WRONG}]', "nothing that is measured"),
    ],
)
def test_what_cannot_be_brought_along_is_named(databases: Databases, line: str, says: str) -> None:
    store = new_store(databases)
    try:
        kit = ", ".join(f'"configuration.{part}": "x"' for part in ("gear", "lower", "upper", "shaft"))
        text = f'{{"record.reference": "P-1", "record.status": "shipped", {kit}, {line}}}'
        report = import_records(store.writing(), text.encode(), "one.jsonl")
        assert says in report.rejected[0].expected
        assert report.rejected[0].row == 1
    finally:
        store.close()
