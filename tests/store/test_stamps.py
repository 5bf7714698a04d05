"""The stamp changes with whatever answers are made from, in whatever process, and with nothing else."""

from __future__ import annotations

from collections.abc import Callable
from threading import Barrier, Thread

import pytest

from service.core.boat import BoatForm
from service.core.catalogue import Configuration
from service.core.form import parse_form
from service.core.recall import WEIGHTS
from service.core.record import HullModel, Record
from service.store.kept import Kept
from service.store.unit import Store, UnitOfWork

KIT = Configuration(gear="g", lower="l", upper="u", shaft="s")
OTHER = Configuration(gear="g", lower="l2", upper="u", shaft="s")


def stamp(store: Store) -> str | None:
    with store.reading() as uow:
        return uow.stamps.fleet()


def record(reference: str, configuration: Configuration = KIT) -> Record:
    return Record(reference=reference, status="installed", form=BoatForm(), configuration=configuration)


def add(uow: UnitOfWork) -> None:
    uow.records.add(record("r1"), who="a", why="b")


def weigh(uow: UnitOfWork) -> None:
    uow.recall_weights.add(WEIGHTS, records=1, gains={"time": 0.5})


CHANGES: list[Callable[[UnitOfWork], object]] = [
    lambda uow: uow.hulls.put([HullModel(id="h1", model="Corrin 31")], who="a", why="b"),
    add,
    lambda uow: uow.records.revise_many([record("r1", OTHER)], who="a", why="b"),
    weigh,
    lambda uow: uow.recall_weights.forget(),
    lambda uow: uow.removals.remove(["r1"]),
]


def test_every_change_of_what_answers_are_made_from_is_another_stamp(store: Store) -> None:
    seen = [stamp(store)]
    for change in CHANGES:
        with store.writing() as uow:
            change(uow)
            assert uow.stamps.fleet() is None, "what is not committed has no stamp"
            uow.commit()
            assert uow.stamps.fleet() is not None
        seen.append(stamp(store))
    assert len(set(seen)) == len(CHANGES) + 1


def test_what_is_undone_or_speaks_of_something_else_leaves_the_stamp(store: Store) -> None:
    before = stamp(store)
    with store.writing() as uow:
        add(uow)
    assert stamp(store) == before
    with store.writing() as uow:
        form = parse_form({"contact": {"name": "Ada Example", "email": "ada@example.com"}})
        enquiry = uow.enquiries.add(form, source="", received=uow.now(), message_id=None, boat=0, hull=None)
        uow.answers.add(enquiry, "{}", answer_id=uow.answers.new_id())
        uow.commit()
    assert stamp(store) == before


def test_what_was_replaced_is_told_by_reference(store: Store) -> None:
    with store.writing() as uow:
        uow.records.add(record("r1"), who="a", why="b")
        uow.records.add(record("r2"), who="a", why="b")
        uow.records.revise(record("r1", OTHER), who="a", why="another went on")
        uow.records.revise(record("r2").model_copy(update={"dealer": "d"}), who="a", why="named")
        uow.commit()
    with store.reading() as uow:
        assert uow.replaced.all() == {"r1": (KIT,)}


def test_learned_weights_are_numbered_and_come_back(store: Store) -> None:
    with store.writing() as uow:
        assert uow.recall_weights.latest() is None
        first = uow.recall_weights.add(WEIGHTS, records=600, gains={"time": 0.1})
        second = uow.recall_weights.add(WEIGHTS.weighing({"boat.loa_mm": 1.0}), records=610, gains={"hull": 0.2})
        uow.commit()
    with store.reading() as uow:
        assert uow.recall_weights.latest() == second
    assert (first.number, second.number) == (1, 2)
    assert second.weights.version.startswith("learned-2 (")
    assert second.weights.version.endswith(", 610 records)")


def test_a_thing_is_built_once_for_all_threads_and_anew_for_another_stamp() -> None:
    kept, built, got = Kept(), list[int](), list[object]()
    gate = Barrier(8)

    def build() -> object:
        built.append(1)
        return object()

    def ask() -> None:
        gate.wait()
        got.append(kept.get("thing", "one", build))

    threads = [Thread(target=ask) for _ in range(8)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert len(built) == 1
    assert len(set(map(id, got))) == 1
    assert kept.get("thing", "two", build) is not got[0]
    assert kept.get("other", "two", build) is not kept.get("thing", "two", build)
    assert len(built) == 3
    assert kept.get("thing", None, build) is not kept.get("thing", None, build)


def test_what_fails_to_build_is_not_kept() -> None:
    kept = Kept()

    def fail() -> object:
        raise LookupError("no")

    with pytest.raises(LookupError):
        kept.get("thing", "one", fail)
    assert kept.get("thing", "one", lambda: 5) == 5
