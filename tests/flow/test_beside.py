"""Work done in a copy of the process gives what it would give here, and is done here where the copy cannot."""

from __future__ import annotations

import os
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager, nullcontext
from typing import cast

import pytest

from service.flow.beside import Copy, CopyEndedError, beside, worth_a_copy

HERE = os.getpid()


@pytest.fixture(autouse=True)
def two_cores(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("os.cpu_count", lambda: 2)


def large() -> tuple[int, bytes]:
    return os.getpid(), bytes(1_000_000)  # far more than a pipe holds


def test_it_is_done_in_another_process() -> None:
    pid, data = beside(large)()
    assert pid != HERE
    assert len(data) == 1_000_000


def test_on_one_core_it_is_done_here(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("os.cpu_count", lambda: 1)
    assert beside(large)()[0] == HERE


def killed() -> int:
    if os.getpid() != HERE:
        os._exit(9)
    return 7


def no_pickle() -> Callable[[], None]:
    return lambda: None


def test_where_the_copy_gives_nothing_it_is_done_here(capfd: pytest.CaptureFixture[str]) -> None:
    assert beside(killed)() == 7
    assert beside(no_pickle)()() is None
    assert capfd.readouterr().err == "", "the copy says nothing"


def fails() -> None:
    raise ValueError(f"here: {os.getpid() == HERE}")


def test_what_goes_wrong_goes_wrong_here() -> None:
    with pytest.raises(ValueError, match="here: True"):
        beside(fails)()


class Counter:
    """Counts in whichever process it stands."""

    def __init__(self) -> None:
        self.count = 0

    def add(self, more: int) -> tuple[int, int]:
        self.count += more
        return self.count, os.getpid()

    def fail(self) -> None:
        raise ValueError("nobody is told")

    def busy(self) -> None:
        time.sleep(600)


@contextmanager
def counting() -> Iterator[Copy]:
    copy = Copy(lambda: nullcontext(Counter()))
    try:
        yield copy
    finally:
        copy.end()


def test_a_copy_keeps_what_it_made_ready_from_one_thing_to_the_next() -> None:
    with counting() as copy:
        assert cast("tuple[int, int]", copy.do("add", 2))[0] == 2
        count, where = cast("tuple[int, int]", copy.do("add", 3))
    assert count == 5
    assert where != HERE


def test_what_is_to_be_done_meanwhile_is_done_once_and_here() -> None:
    done: list[int] = []
    copy = Copy(lambda: nullcontext(Counter()), meanwhile=lambda: done.append(os.getpid()))
    copy.do("add", 1)
    copy.do("add", 1)
    copy.end()
    assert done == [HERE]


@contextmanager
def never_ready() -> Iterator[Counter]:
    raise LookupError("there is no catalogue")
    yield Counter()


def test_a_copy_that_cannot_go_on_has_ended_and_says_nothing(capfd: pytest.CaptureFixture[str]) -> None:
    with counting() as copy:
        for name in ("fail", "add"):
            with pytest.raises(CopyEndedError):
                copy.do(name, *([1] if name == "add" else []))
    unready = Copy(never_ready)
    with pytest.raises(CopyEndedError):
        unready.do("add", b"x" * 1_000_000)  # more than a pipe holds
    unready.end()
    assert capfd.readouterr().err == ""


def test_a_copy_that_is_busy_is_not_waited_for() -> None:
    begun = time.perf_counter()
    with counting() as copy:
        copy.ask("busy")
    assert time.perf_counter() - begun < 60


def test_a_copy_is_worth_it_where_what_it_would_load_is_not_loaded(monkeypatch: pytest.MonkeyPatch) -> None:
    assert worth_a_copy("no.such.module")
    assert not worth_a_copy("service.flow.beside")
    monkeypatch.setattr("os.cpu_count", lambda: 1)
    assert not worth_a_copy("no.such.module")
