"""A registry asked for candidates in the database answers as its index in memory does. All boats invented."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from itertools import count
from pathlib import Path

import pytest

from service.core.hulls import Candidates, HullIndex, resolve
from service.core.record import HullModel
from service.flow.hull_index import fill_names, hull_index, known_hulls
from service.store import migrate
from service.store.unit import Store, UnitOfWork
from tests.support.databases import Served, tidy
from tests.support.invented_hulls import dirty_names, invented_hulls

SIZE, ASKED = 1500, 250
ROWS = (
    ("Osmund Yard", "Corrin 31", ()), ("Osmund Yard", "Corrin 31 Mk II", ("Old Grey", "C31-2")),
    ("Chantier Velmar", "Velmar 10.50", ()), ("Chantier Velmar", "Velmar 105", ()), ("Lark Mouldings", "Sea Wren", ()),
    ("Lark Mouldings", "Sea Wren II", ()), ("Hedda & Rosenvik", "Hedda Rosenvik 36", ()), (None, "Wasp 28", ()),
)  # fmt: skip
SAID = (
    "CORRIN31MKII", "Korrin 31", "Corin 31-2", "old GREY", "Velmar 1050", "Velmar 10,5", "velmar 106", "SeaWren", "HR 36",
    "Wapss 28", "Wsap 28", "Corrin", "Corrin Mk II", "Corrin 31 / Velmar 105", "31", "x", "Œsmund Corrin 31", "א" * 9,
    "%_*'; --", "\x00",
)  # fmt: skip


def _models() -> list[HullModel]:
    own = [HullModel(id=f"own-{i}", builder=b, model=m, aliases=a) for i, (b, m, a) in enumerate(ROWS)]
    return [*own, *invented_hulls(SIZE)]


def _opened(url: str) -> Store:
    numbers, start = count(1), datetime(2024, 5, 1, tzinfo=UTC)
    return Store(
        url, now=lambda: start + timedelta(minutes=next(numbers)), new_id=lambda kind: f"{kind}-{next(numbers)}"
    )


def _filled(url: str) -> None:
    migrate.upgrade(url)
    store = _opened(url)
    with store.writing() as uow:
        uow.hulls.put(_models(), who="tester", why="to see")
        uow.commit()
    fill_names(store)
    store.close()


@pytest.fixture
def store(served: Served) -> Iterator[Store]:
    with tidy(served):
        opened = _opened(served.like(_filled))
        yield opened
        opened.close()


def _same(one: Candidates, other: Candidates, name: str, loa_mm: float | None = None) -> None:
    ours, theirs = (resolve(known, name, loa_mm=loa_mm) for known in (one, other))
    assert (ours.status, ours.model) == (theirs.status, theirs.model), name
    if ours.status != "unknown":
        assert ours.probability == pytest.approx(theirs.probability, abs=1e-3), name
        assert [a.model.id for a in ours.alternatives] == [a.model.id for a in theirs.alternatives], name


def _database(uow: UnitOfWork) -> Candidates:
    known = known_hulls(uow, most=100)
    assert known is uow.hulls.candidates
    return known


def test_the_answers_are_those_of_the_index(store: Store) -> None:
    with store.reading() as uow:
        known, index = _database(uow), hull_index(uow)
        for name in SAID:
            _same(known, index, name)
        decided = 0
        for name, length in dirty_names(SIZE, ASKED):
            _same(known, index, name, length)
            decided += resolve(index, name, loa_mm=length).model is not None
        assert decided > ASKED / 2


def test_what_changed_since_they_were_filled_is_found_as_it_stands(store: Store) -> None:
    with store.writing() as uow:
        changed = HullModel(id="own-0", builder="Osmund Yard", model="Corrin 37")
        uow.hulls.put([changed, HullModel(id="late", model="Gannet 30")], who="tester", why="to see")
        uow.hulls.add_alias("The Late One", "late", who="tester", why="to see")
        uow.commit()
    for read in (None, 2):
        if read:
            assert fill_names(store) == read
            assert fill_names(store) == 0
        with store.reading() as uow:
            known, index = _database(uow), HullIndex.build(uow.hulls.all())
            for name in ("Corrin 31", "Corrin 37", "Gannet 30", "the late one", "Gannet 31"):
                _same(known, index, name)
            found = resolve(known, "the late one").model
            assert found is not None
            assert found.id == "late"


def test_a_small_registry_and_one_never_filled_are_held_in_memory(served: Served, store: Store) -> None:
    with store.reading() as uow:
        assert isinstance(known_hulls(uow), HullIndex)
    bare = _opened(served.migrated())
    with bare.writing() as uow:
        uow.hulls.put(_models()[:20], who="tester", why="to see")
        uow.commit()
    with bare.reading() as uow:
        assert isinstance(known_hulls(uow, most=0), HullIndex)
        with pytest.raises(LookupError):
            resolve(uow.hulls.candidates, "Corrin 31")
    bare.close()


def test_a_file_cannot_compare_words(tmp_path: Path) -> None:
    url = f"sqlite:///{tmp_path / 'ledger.db'}"
    migrate.upgrade(url)
    store = _opened(url)
    assert fill_names(store) == 0
    with store.reading() as uow:
        assert not uow.hulls.candidates.available()
        assert isinstance(known_hulls(uow, most=0), HullIndex)
    store.close()
