"""The fleet is built once and anew when anybody changed what it is made from."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Callable
from datetime import UTC, datetime
from threading import Thread

import pytest

from service.core.recall import WEIGHTS
from service.core.recall.fleet import Fleet
from service.flow.known import NoCatalogueError, gather, remembered
from service.flow.refit_weights import forget_weights, refit_weights, weights_in_use
from service.store.unit import Store


def fleet(store: Store) -> Fleet:
    with store.reading() as uow:
        return gather(uow).fleet


def test_it_is_kept_while_nothing_changed_and_shared_by_threads(seeded: Store) -> None:
    first = fleet(seeded)
    got: list[Fleet] = []
    threads = [Thread(target=lambda: got.append(fleet(seeded))) for _ in range(4)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert all(one is first for one in got)
    assert len(got) == 4


def test_another_process_that_writes_is_noticed(seeded: Store) -> None:
    first = fleet(seeded)
    code = (
        "import sys; from datetime import UTC, datetime; from service.store.unit import Store\n"
        "store = Store(sys.argv[1], now=lambda: datetime(2024, 6, 1, tzinfo=UTC), new_id=lambda kind: kind + '-x')\n"
        "with store.writing() as uow:\n"
        "    one = uow.records.get('2002-001')\n"
        "    uow.records.revise(one.model_copy(update={'status': 'withdrawn'}), who='a', why='sold')\n"
        "    uow.commit()\n"
    )
    url = seeded._engine.url.render_as_string(hide_password=False)
    subprocess.run([sys.executable, "-c", code, url], check=True)  # noqa: S603 - our own interpreter and a fixed text
    second = fleet(seeded)
    assert second is not first
    assert {r.reference: r.status for r in second.records}["2002-001"] == "withdrawn"


def test_a_transaction_sees_its_own_changes_and_keeps_them_to_itself(seeded: Store) -> None:
    first = fleet(seeded)
    with seeded.writing() as uow:
        one = uow.records.get("2002-001")
        assert one is not None
        uow.records.revise(one.model_copy(update={"status": "withdrawn"}), who="a", why="sold")
        inside = remembered(uow).fleet
    assert {r.reference: r.status for r in inside.records}["2002-001"] == "withdrawn"
    assert fleet(seeded) is first  # it was never committed


def test_without_a_catalogue_there_is_memory_but_no_answer(store: Store) -> None:
    with store.reading() as uow:
        assert remembered(uow).fleet.records == ()
        with pytest.raises(NoCatalogueError, match="transom catalogue load"):
            gather(uow)


def test_weights_are_learned_kept_used_and_forgotten(copies: Callable[[], Store]) -> None:
    store = copies()
    assert fleet(store).weights == WEIGHTS
    found = refit_weights(store.writing(), groups=2)
    assert found.kept is not None
    assert all(gain > 0 for gain in found.gains.values())
    assert set(found.gains) == {"time", "hull"}
    assert fleet(store).weights == found.kept.weights
    assert weights_in_use(store.reading()).learned == found.kept
    assert forget_weights(store.writing()) == 1
    assert fleet(store).weights == WEIGHTS
    assert isinstance(found.kept.at, datetime)
    assert found.kept.at.tzinfo == UTC
