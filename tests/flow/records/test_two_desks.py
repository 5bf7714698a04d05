"""Two sessions on one database edit one record at once, on each kind of database."""

from __future__ import annotations

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from threading import Barrier

import pytest

from service.flow.edit_record import Edited, correct_record
from service.flow.propose_record import propose_record
from service.flow.refusal import Moved
from service.flow.step_record import Told, step_record
from service.store.unit import Store
from tests.flow.records.conftest import sent


def at_once(*work: Callable[[], Edited]) -> list[Edited | Moved]:
    """Do each in a thread of its own, all begun together; return what each got or was told."""
    gate = Barrier(len(work))

    def one(do: Callable[[], Edited]) -> Edited | Moved:
        gate.wait(10)
        try:
            return do()
        except Moved as told:
            return told

    with ThreadPoolExecutor(len(work)) as threads:
        return list(threads.map(one, work))


def test_one_of_two_is_told_what_the_other_changed(store: Store, make_store: Callable[[], Store]) -> None:
    here, there = store, make_store()
    got = at_once(
        lambda: correct_record(
            here.writing(), "2025-001", {"boat.year": 1981, "boat.name": "Siskin"}, who="ada", why="papers", expect=1
        ),
        lambda: correct_record(
            there.writing(), "2025-001", {"boat.year": 1983, "record.dealer": "Quai 9"}, who="bo", why="call", expect=1
        ),
    )
    (won,) = [one for one in got if isinstance(one, Edited)]
    (told,) = [one for one in got if isinstance(one, Moved)]
    first, second = ("ada", 1981), ("bo", 1983)
    if won.record.form.boat.year == 1983:
        first, second = second, first
    clashes = {c.field: c for c in told.clashes}
    year = clashes["boat.year"]
    assert (year.was, year.now, year.yours, year.who) == (1979, first[1], second[1], first[0])
    assert year.at == won_at(here)
    assert set(clashes) == {"boat.year", "boat.name" if first[0] == "ada" else "record.dealer"}
    assert (told.expected, told.head) == (1, 2)
    assert f"was 1979, {first[0]} made it {first[1]}" in str(told)
    # Nothing of either is lost: the told one does it again on what stands, and both are in the record.
    again = {"boat.year": second[1], **({"record.dealer": "Quai 9"} if second[0] == "bo" else {"boat.name": "Siskin"})}
    done = correct_record(there.writing(), "2025-001", again, who=second[0], why="seen", expect=told.head)
    assert (done.record.form.boat.name, done.record.dealer, done.record.form.boat.year) == (
        "Siskin",
        "Quai 9",
        second[1],
    )
    with here.reading() as uow:
        assert [r.record.form.boat.year for r in uow.records.history("2025-001")] == [1979, first[1], second[1]]


def won_at(store: Store) -> object:
    with store.reading() as uow:
        return uow.records.history("2025-001")[1].at


def test_many_at_once_lose_nothing(make_store: Callable[[], Store], store: Store) -> None:
    fields = {"boat.year": 1990, "boat.name": "Heron", "record.dealer": "Quai 9", "boat.hull_number": "17",
              "boat.builder": "Osmund", "boat.sail_number": "K 4"}  # fmt: skip
    desks = [make_store() for _ in fields]

    def edit(desk: Store, name: str, value: object) -> Callable[[], Edited]:
        return lambda: correct_record(desk.writing(), "2025-001", {name: value}, who=name, why="at once")

    got = at_once(*(edit(desk, *item) for desk, item in zip(desks, fields.items(), strict=True)))
    assert all(isinstance(one, Edited) for one in got)
    with store.reading() as uow:
        history = uow.records.history("2025-001")
        record = history[-1].record
    assert sorted(r.who for r in history[1:]) == sorted(fields)
    assert [r.number for r in history] == list(range(1, len(fields) + 2))
    boat = record.form.boat
    assert (boat.year, boat.name, boat.hull_number, boat.builder, boat.sail_number, record.dealer) == (
        1990, "Heron", "17", "Osmund", "K 4", "Quai 9",
    )  # fmt: skip


def test_references_given_out_at_once_are_different(make_store: Callable[[], Store], store: Store) -> None:
    desks = [make_store() for _ in range(4)]
    gate = Barrier(4)

    def one(desk: Store) -> str:
        gate.wait(10)
        return propose_record(desk.writing(), sent(id=None), who="bo").record.reference

    with ThreadPoolExecutor(4) as threads:
        names = list(threads.map(one, desks))
    assert sorted(names) == ["2026-001", "2026-002", "2026-003", "2026-004"]
    with store.reading() as uow:
        assert uow.records.count() == 6


def test_a_change_that_was_changed_back_is_told_too(store: Store) -> None:
    step_record(store.writing(), "2025-001", "installed", who="ada")
    step_record(store.writing(), "2025-001", "shipped", Told(why="too early"), who="ada")
    correct_record(store.writing(), "2025-001", {"record.date": "2025-05-01"}, who="ada", why="as it was")
    with pytest.raises(Moved, match="changed back again") as told:
        step_record(store.writing(), "2025-001", "installed", who="bo", expect=1)
    assert told.value.clashes == ()
