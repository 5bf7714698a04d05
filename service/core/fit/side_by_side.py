"""Several pieces of work at a time: compiled loops let other threads go on."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from concurrent.futures import ThreadPoolExecutor
from typing import TypeVar

Item = TypeVar("Item")
Made = TypeVar("Made")


class _Hands:
    """How many pieces at most this process works on at a time; None for as many as the library thinks fit."""

    most: int | None = None


def at_most(hands: int | None) -> None:
    """Let this process work on no more pieces at a time; None takes the bound away.

    Where as many answers as there are processors are worked out at once anyhow, each is done sooner by one thread: several
    wait for one another's turn at the interpreter.
    """
    _Hands.most = hands


def side_by_side(work: Callable[[Item], Made], items: Sequence[Item]) -> list[Made]:
    """Return `work` of each item, in their order, several at a time."""
    if min(len(items), _Hands.most or len(items)) < 2:  # noqa: PLR2004 - one alone needs no company
        return [work(item) for item in items]
    with ThreadPoolExecutor(_Hands.most) as threads:
        return list(threads.map(work, items))
