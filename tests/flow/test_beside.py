"""Work done in a copy of the process gives what it would give here, and is done here where the copy cannot."""

from __future__ import annotations

import os
from collections.abc import Callable

import pytest

from service.flow.beside import beside

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
