"""Several pieces of work at a time, and no more than the process may."""

from __future__ import annotations

import threading
from collections.abc import Iterator

import pytest

from service.core.fit.side_by_side import at_most, side_by_side


@pytest.fixture(autouse=True)
def _unbound() -> Iterator[None]:
    yield
    at_most(None)


def _met(pieces: int) -> int:
    """Return how many pieces were under way at once at most, each of which waits a while for another."""
    lock, here, most = threading.Lock(), 0, 0
    company = threading.Event()

    def work(_: int) -> int:
        nonlocal here, most
        with lock:
            here += 1
            most = max(most, here)
            if here > 1:
                company.set()
        company.wait(0.2)
        with lock:
            here -= 1
        return _

    assert side_by_side(work, range(pieces)) == list(range(pieces))
    return most


def test_pieces_are_worked_on_at_a_time_and_come_back_in_order() -> None:
    assert _met(4) > 1


@pytest.mark.parametrize("hands", [1, 2])
def test_a_process_that_shares_its_processors_keeps_within_its_bound(hands: int) -> None:
    at_most(hands)
    assert _met(4) == hands


def test_one_piece_and_none_need_no_thread() -> None:
    here = threading.get_ident()
    assert side_by_side(lambda _: threading.get_ident(), [1]) == [here]
    assert side_by_side(lambda _: threading.get_ident(), []) == []
