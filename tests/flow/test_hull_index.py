"""One index for all threads, as new as the registry, whoever changed it."""

from __future__ import annotations

import shutil
from collections.abc import Iterable
from concurrent.futures import ThreadPoolExecutor

import pytest

from service.core.hulls import HullIndex, resolve
from service.core.record import HullModel
from service.flow.hull_index import hull_index
from service.store.unit import Store
from tests.flow.conftest import opened, seed
from tests.support.databases import Files, file_of

NEW = HullModel(id="new", builder="Osmund Yard", model="Corrin 31", loa_mm=9450)


def _put(store: Store, *hulls: HullModel, commit: bool = True) -> None:
    with store.writing() as uow:
        uow.hulls.put(hulls, who="tester", why="to see")
        if commit:
            uow.commit()


def _index(store: Store) -> HullIndex:
    with store.reading() as uow:
        return hull_index(uow)


def _holds_what_the_registry_does(store: Store) -> None:
    with store.reading() as uow:
        held = sorted(hull_index(uow).models(), key=lambda hull: hull.id)
        assert held == sorted(uow.hulls.all(), key=lambda hull: hull.id)


@pytest.fixture
def builds(monkeypatch: pytest.MonkeyPatch) -> list[int]:
    """Count how often an index is built from nothing."""
    counted: list[int] = []
    build = HullIndex.build

    def counting(models: Iterable[HullModel]) -> HullIndex:
        counted.append(1)
        return build(models)

    monkeypatch.setattr(HullIndex, "build", counting)
    return counted


def test_it_is_built_once_while_nothing_changes(seeded: Store, builds: list[int]) -> None:
    assert _index(seeded) is _index(seeded)
    assert len(builds) == 1
    _holds_what_the_registry_does(seeded)


def test_threads_share_one_building(seeded: Store, builds: list[int]) -> None:
    with ThreadPoolExecutor(8) as threads:
        found = list(threads.map(lambda _: _index(seeded), range(32)))
    assert len({id(index) for index in found}) == 1
    assert len(builds) == 1


def test_a_change_is_taken_over_alone(seeded: Store, builds: list[int]) -> None:
    before = _index(seeded)
    _put(seeded, NEW)
    after = _index(seeded)
    assert (resolve(before, "Corrin 31").model, resolve(after, "Corrin 31").model) == (None, NEW)
    with seeded.writing() as uow:
        uow.hulls.add_alias("Old Grey", "new", who="tester", why="its owner says so")
        uow.commit()
    found = resolve(_index(seeded), "OLD GREY").model
    assert found is not None
    assert found.id == "new"
    assert len(builds) == 1
    _holds_what_the_registry_does(seeded)


def test_what_another_process_wrote_is_seen(files: Files, builds: list[int]) -> None:
    url = files.like(seed)
    store, other = opened(url), opened(url)
    _index(store)
    _put(other, NEW)
    other.close()
    assert resolve(_index(store), "Corrin 31").model == NEW
    assert len(builds) == 1
    store.close()


def test_another_history_under_the_same_numbers_is_not_taken_for_its_own(files: Files) -> None:
    """As after a restore: the file is another one, and its registry went on differently from there."""
    url = files.like(seed)
    backup = file_of(url).with_suffix(".backup")
    shutil.copy(file_of(url), backup)
    store = opened(url)
    _put(store, NEW)
    assert resolve(_index(store), "Corrin 31").model == NEW
    kept = store._kept
    store.close()
    for part in file_of(url).parent.glob("ledger.db*"):
        part.unlink()
    shutil.copy(backup, file_of(url))
    again = opened(url)
    again._kept = kept
    for model in ("Corrin 34", "Corrin 35"):
        _put(again, NEW.model_copy(update={"model": model}))
    found = _index(again)
    assert (resolve(found, "Corrin 31").model, resolve(found, "Corrin 34").model) == (None, None)
    _holds_what_the_registry_does(again)
    again.close()


def test_what_was_never_committed_is_not_kept(seeded: Store) -> None:
    _index(seeded)
    with seeded.writing() as uow:
        uow.hulls.put([NEW], who="tester", why="to see")
        assert resolve(hull_index(uow), "Corrin 31").model == NEW  # its own change
    assert resolve(_index(seeded), "Corrin 31").model is None
    _put(seeded, NEW.model_copy(update={"model": "Corrin 34"}))  # under the number that the other would have had
    assert resolve(_index(seeded), "Corrin 31").model is None
    _holds_what_the_registry_does(seeded)


def test_an_older_transaction_keeps_what_it_sees(seeded: Store, builds: list[int]) -> None:
    with seeded.reading() as older:
        seen = older.hulls.all()
        _put(seeded, NEW)
        assert resolve(_index(seeded), "Corrin 31").model == NEW
        assert sorted(h.id for h in hull_index(older).models()) == sorted(h.id for h in seen)
        assert hull_index(older) is hull_index(older)
    assert resolve(_index(seeded), "Corrin 31").model == NEW
    assert len(builds) == 2


def test_an_empty_registry_has_an_index(store: Store) -> None:
    assert len(_index(store)) == 0
    _put(store, NEW)
    assert resolve(_index(store), "Corrin 31").model == NEW
