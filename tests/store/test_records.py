from __future__ import annotations

import time
from collections.abc import Callable
from datetime import UTC, date, datetime
from typing import Any

import pytest
import sqlalchemy as sa

from service.core.boat import Contact
from service.core.catalogue import Configuration
from service.core.form import parse_form
from service.core.record import HullModel, Record
from service.core.revision import Revision
from service.store import schema
from service.store.errors import Conflict
from service.store.unit import Store

MADE = Configuration(gear="Gear 60", lower="Hinge 200", upper="Arm 400", shaft="Shaft 1800")


def record(reference: str, *, hull: str | None = None, **form: Any) -> Record:  # noqa: ANN401 - parts of a form
    return Record(reference=reference, status="installed", hull=hull, form=parse_form(form), configuration=MADE)


def put_hulls(store: Store, *ids: str) -> None:
    with store.writing() as uow:
        uow.hulls.put([HullModel(id=name, model=name) for name in ids], who="test", why="test")
        uow.commit()


def test_what_goes_in_comes_out(store: Store) -> None:
    put_hulls(store, "tern-31")
    one = record(
        "R-1",
        hull="tern-31",
        contact={"name": "Ada Holm", "email": "ada@example.com"},
        boat={"model": "Tern 31", "year": 1975, "stern": "raked", "hull_number": "17"},
        transom={
            "top_height_mm": 0.1 + 0.2,
            "rake_deg": -0.0,
            "profile": [{"height_mm": 900, "aft_mm": 0}, {"height_mm": 0, "aft_mm": -1e-7}],
        },
        obstacles=[{"kind": "ladder", "aft_mm": [None, 300], "size_mm": {}, "swept_to": {}}],
        preferences={"avoid": []},
        enquiry={"received": "2024-05-01T10:00:00+02:00"},
        methods={"*": "tape"},
        notes="two lines\r\nand a \x00",
    )
    with store.writing() as uow:
        uow.records.add(one, who="test", why="first")
        uow.commit()
    with store.reading() as uow:
        assert uow.records.get("R-1") == one
        assert uow.records.all() == (one,)
        assert uow.records.get("R-2") is None


def test_nothing_is_kept_without_a_commit(store: Store) -> None:
    with store.writing() as uow:
        uow.records.add(record("R-1"), who="test", why="first")
        assert uow.records.count() == 1
    with store.reading() as uow:
        assert uow.records.count() == 0


def test_history_keeps_every_state(store: Store) -> None:
    first = record("R-1", transom={"rake_deg": 10})
    second = record("R-1", transom={"rake_deg": 12})
    with store.writing() as uow:
        uow.records.add(first, who="ada", why="order")
        uow.commit()
    with store.writing() as uow:
        assert uow.records.revise(second, who="bo", why="measured on site")
        assert not uow.records.revise(second, who="bo", why="again")
        assert uow.records.revise(first, who="bo", why="it was right after all")
        uow.commit()
    with store.reading() as uow:
        history = uow.records.history("R-1")
        assert uow.records.get("R-1") == first
        assert uow.records.histories() == {"R-1": history} == uow.records.histories_among(["R-1", "R-0"])
    assert [(r.number, r.who, r.why, r.record) for r in history] == [
        (1, "ada", "order", first),
        (2, "bo", "measured on site", second),
        (3, "bo", "it was right after all", first),
    ]
    assert history[0].at < history[1].at < history[2].at
    assert history[0].at.tzinfo is not None


def test_a_taken_reference_is_refused(store: Store) -> None:
    with store.writing() as uow:
        uow.records.add(record("R-1"), who="test", why="first")
        with pytest.raises(Conflict, match=r"taken: 'R-1'"):
            uow.records.add(record("R-1"), who="test", why="second")
        with pytest.raises(Conflict, match=r"taken: 'R-2'"):
            uow.records.add_many([record("R-2"), record("R-2")], who="test", why="second")
        with pytest.raises(Conflict, match=r"no such record: 'R-9'"):
            uow.records.revise(record("R-9"), who="test", why="third")


def test_a_history_brought_along_is_kept_as_it_was(store: Store) -> None:
    then = datetime(2001, 2, 3, 4, 5, 6, 789, tzinfo=UTC)
    boats = {n: record("R-1", boat={"year": 1970 + n}) for n in (1, 2)}
    steps = [
        Revision(number=n, who="ada", at=then.replace(month=n), why=f"step {n}", record=boat)
        for n, boat in boats.items()
    ]
    with store.writing() as uow:
        uow.records.add_histories([steps])
        uow.commit()
    with store.reading() as uow:
        assert list(uow.records.history("R-1")) == steps


def test_find(store: Store) -> None:
    put_hulls(store, "a", "b")
    fleet = [
        record("R-1", hull="a", boat={"year": 1975, "stern": "raked"}),
        record("R-2", hull="a", boat={"year": 1976, "stern": "raked"}),
        record("R-3", hull="b", boat={"year": 1975, "stern": "scoop"}),
    ]
    with store.writing() as uow:
        uow.records.add_many(fleet, who="test", why="first")
        uow.commit()

    def found(**asked: Any) -> list[str]:  # noqa: ANN401 - whatever is asked
        with store.reading() as uow:
            return [r.reference for r in uow.records.find(**asked)]

    assert found(hull="a") == ["R-1", "R-2"]
    assert found(year=1975) == ["R-1", "R-3"]
    assert found(year=1975, stern="scoop") == ["R-3"]
    assert found(hull="c") == []


def test_search_follows_the_current_state(store: Store) -> None:
    with store.writing() as uow:
        uow.records.add(record("R-1", boat={"stern": "plumb"}), who="test", why="first")
        uow.records.revise(record("R-1", boat={"stern": "scoop"}), who="test", why="looked again")
        uow.commit()
        assert not uow.records.find(stern="plumb")
        assert uow.records.find(stern="scoop")


def test_order_is_by_date_then_reference_undated_first(store: Store) -> None:
    dated = [
        record("B").model_copy(update={"date": date(2020, 1, 2)}),
        record("A").model_copy(update={"date": date(2020, 1, 2)}),
        record("Z"),
        record("C").model_copy(update={"date": date(2019, 1, 2)}),
    ]
    with store.writing() as uow:
        uow.records.add_many(dated, who="test", why="first")
        assert [r.reference for r in uow.records.all()] == ["Z", "C", "A", "B"]


def test_people_are_kept_apart_and_once(store: Store) -> None:
    ada = {"name": "Ada Holm", "email": "ada@example.com"}
    fleet = [record(f"R-{n}", contact=ada) for n in range(3)] + [record("R-9", contact={"email": "ada@example.com"})]
    with store.writing() as uow:
        uow.records.add_many(fleet, who="test", why="first")
        uow.records.revise(record("R-0", contact=ada, boat={"year": 1970}), who="test", why="again")
        uow.commit()
    with store._engine.connect() as raw:
        assert raw.execute(sa.select(sa.func.count()).select_from(schema.contacts)).scalar() == 2
        documents = raw.execute(sa.select(schema.record_revisions.c.document)).scalars().all()
    assert not any("Ada" in text or "example.com" in text for text in documents)
    with store.reading() as uow:
        assert uow.records.get("R-2") == fleet[2]
        assert uow.records.get("R-9") == fleet[3]


def test_an_empty_word_is_not_nobody(store: Store) -> None:
    odd = record("R-1").model_copy(update={"form": parse_form({}).model_copy(update={"contact": Contact(name="")})})
    with store.writing() as uow:
        uow.records.add(odd, who="test", why="first")
        assert uow.records.get("R-1") == odd


def boat_rows(store: Store) -> list[tuple[Any, ...]]:
    c = schema.boats.c
    with store._engine.connect() as raw:
        return [tuple(row) for row in raw.execute(sa.select(c.key, c.name, c.hull_id).order_by(c.key))]


def test_records_of_one_boat_share_it(store: Store) -> None:
    put_hulls(store, "a")
    with store.writing() as uow:
        for n, name in enumerate(("Siskin", "Heron")):
            uow.records.add(
                record(f"R-{n}", hull="a", boat={"hull_number": "No 17", "name": name}), who="test", why="first"
            )
        uow.commit()
    assert boat_rows(store) == [("hull:a:no 17", "Heron", "a")]


def test_a_boat_that_turned_out_to_be_another_is_dropped(store: Store) -> None:
    put_hulls(store, "a")
    with store.writing() as uow:
        uow.records.add(record("R-1", boat={"name": "Siskin"}), who="test", why="first")
        uow.records.add(record("R-2", boat={"name": "Heron"}), who="test", why="first")
        uow.records.revise(record("R-1", hull="a", boat={"hull_number": "5"}), who="test", why="found her number")
        uow.commit()
    assert boat_rows(store) == [("hull:a:5", None, "a"), ("record:R-2", "Heron", None)]


def test_a_hull_that_is_not_there_is_refused(store: Store) -> None:
    with (
        pytest.raises(Conflict, match=r"(?i)foreign key"),
        store.writing() as uow,
    ):
        uow.records.add(record("R-1", hull="nowhere"), who="test", why="first")


def test_loading_the_fleet_takes_one_statement_however_large(store: Store, statements: list[str]) -> None:
    counts = []
    for size in (10, 200):
        with store.writing() as uow:
            fresh = [record(f"R-{size}-{n}", contact={"name": f"N{n}"}) for n in range(size)]
            uow.records.add_many(fresh, who="test", why="first")
            uow.commit()
        statements.clear()
        with store.reading() as uow:
            uow.records.all()
        counts.append(len([s for s in statements if not s.startswith("BEGIN")]))
    assert counts == [1, 1]


def test_adding_many_takes_as_many_statements_as_adding_thirty(store: Store, statements: list[str]) -> None:
    counts = []
    for size in (30, 400):
        statements.clear()
        with store.writing() as uow:
            uow.records.add_many([record(f"R-{size}-{n}") for n in range(size)], who="test", why="first")
            uow.commit()
        counts.append(len(statements))
    assert counts[0] == counts[1] < 10


def test_speed_of_loading(store: Store) -> None:
    base = record("R", boat={"model": "Tern 31", "loa_mm": 9000}, transom={"rake_deg": 12, "top_height_mm": 1000})
    fresh = [base.model_copy(update={"reference": f"R-{n}"}) for n in range(3000)]
    with store.writing() as uow:
        uow.records.add_many(fresh, who="test", why="first")
        uow.commit()
    started = time.perf_counter()
    with store.reading() as uow:
        assert len(uow.records.all()) == 3000
    assert time.perf_counter() - started < 2.0  # about 0.2 s on two cores; a hundred thousand in six to nine


def test_another_process_sees_it(store: Store, make_store: Callable[[], Store]) -> None:
    with store.writing() as uow:
        uow.records.add(record("R-1"), who="test", why="first")
        uow.commit()
    with make_store().reading() as uow:
        assert uow.records.count() == 1
