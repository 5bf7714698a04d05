"""Workers that listen on one socket take an equal share of the connections that come."""

from __future__ import annotations

import asyncio
import os
import socket
import subprocess
import sys
import time
from contextlib import ExitStack
from pathlib import Path
from threading import Thread

import pytest

from service.api import even_loop
from service.api.even_loop import EvenLoop, Shares


class Listener:
    """A worker in a thread: how many connections it holds."""

    def __init__(self, shares: Shares, sock: socket.socket) -> None:
        self.held = 0
        self._loop = EvenLoop(shares)
        self._sock = sock.dup()
        self._sock.setblocking(False)  # noqa: FBT003 - the standard library's own
        self._thread = Thread(target=self._run)
        self._thread.start()

    def _run(self) -> None:
        outer = self

        class Held(asyncio.Protocol):
            def connection_made(self, transport: asyncio.BaseTransport) -> None:
                outer.held += 1
                assert isinstance(transport, asyncio.Transport)
                transport.write(b".")

            def connection_lost(self, _error: Exception | None) -> None:
                outer.held -= 1

        self._loop.run_until_complete(self._loop.create_server(Held, sock=self._sock))
        self._loop.run_forever()
        self._loop.close()

    def stop(self) -> None:
        self._loop.call_soon_threadsafe(self._loop.stop)
        self._thread.join()
        self._sock.close()


def test_connections_that_come_at_once_are_shared_equally(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(even_loop, "PATIENCE_S", 5.0)  # this machine may be busy with something else
    with ExitStack() as stack:
        sock = stack.enter_context(socket.create_server(("127.0.0.1", 0)))
        workers = [Listener(Shares(tmp_path / "shares", pid), sock) for pid in (os.getpid(), os.getppid())]
        for worker in workers:
            stack.callback(worker.stop)
        for clients in (8, 3, 16):
            with ExitStack() as burst:
                many = [burst.enter_context(socket.create_connection(sock.getsockname())) for _ in range(clients)]
                assert [one.recv(1) for one in many] == [b"."] * clients  # all were taken
                assert sorted(worker.held for worker in workers) == [clients // 2, clients - clients // 2]
            while any(worker.held for worker in workers):
                time.sleep(0.002)


def test_what_a_dead_worker_held_counts_no_more(tmp_path: Path) -> None:
    ended = subprocess.Popen([sys.executable, "-c", ""])
    mine, other = Shares(tmp_path / "shares", os.getpid()), Shares(tmp_path / "shares", ended.pid)
    mine.put(2)
    other.put(1)
    ended.wait()
    assert not mine.fewer(2)
    third = Shares(tmp_path / "shares", os.getppid())  # takes the row of the dead
    assert mine.fewer(1)
    third.put(1)
    assert not mine.fewer(1)
    third.put(0)
    third.close()
    assert not mine.fewer(1)
    mine.close()
