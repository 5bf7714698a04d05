"""Connections shared evenly among workers that listen on one socket."""

from __future__ import annotations

import asyncio
import fcntl
import mmap
import os
import socket
import struct
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path
from typing import Any

WORKERS = 64
PATIENCE_S, PAUSE_S = 0.05, 0.002
"""How long a worker leaves a connection to one that has fewer, and how often it looks whether that one took it."""
_ROW = struct.Struct("=ii")


class Shares:
    """How many connections each worker holds, for all of them to see: a row of process id and count for each."""

    def __init__(self, file: Path, pid: int) -> None:
        """Take the first row that is free, or whose process has ended. OSError where there is none left."""
        with file.open("a+b") as shared:
            fcntl.flock(shared, fcntl.LOCK_EX)
            shared.truncate(WORKERS * _ROW.size)
            self._rows = mmap.mmap(shared.fileno(), WORKERS * _ROW.size)
            mine = next((at for at in range(WORKERS) if not _alive(self._row(at)[0])), None)
            if mine is None:
                raise OSError(f"{file}: more than {WORKERS} workers")
            self._mine, self._pid = mine, pid
            self.put(0)
            fcntl.flock(shared, fcntl.LOCK_UN)  # closing does not: the map keeps the file open

    def put(self, count: int) -> None:
        """Say how many connections this worker holds."""
        _ROW.pack_into(self._rows, self._mine * _ROW.size, self._pid, count)

    def fewer(self, count: int) -> bool:
        """Say whether another worker holds fewer than `count`."""
        others = (self._row(at) for at in range(WORKERS) if at != self._mine)
        return any(pid and held < count and _alive(pid) for pid, held in others)

    def close(self) -> None:
        """Give the row back."""
        _ROW.pack_into(self._rows, self._mine * _ROW.size, 0, 0)
        self._rows.close()

    def _row(self, at: int) -> tuple[int, int]:
        pid, count = _ROW.unpack_from(self._rows, at * _ROW.size)
        return pid, count


def _alive(pid: int) -> bool:
    if pid <= 0:
        return False
    try:
        os.kill(pid, 0)
    except ProcessLookupError:
        return False
    except PermissionError:
        pass
    return True


class EvenLoop(asyncio.SelectorEventLoop):
    """An event loop that takes a connection when no other worker holds fewer.

    The usual one takes all that wait as soon as it wakes: of eight that come at once one worker then has six, and they
    wait for each other while the next is idle. The workers meet in the file that TRANSOM_SHARES names.
    """

    def __init__(self, shares: Shares | None = None) -> None:
        """Meet the other workers."""
        super().__init__()
        self._shares = shares or Shares(Path(os.environ["TRANSOM_SHARES"]), os.getpid())
        self._held: set[object] = set()

    async def create_server(  # type: ignore[override] # of the base's many ways the one that workers are given
        self,
        protocol_factory: Callable[[], asyncio.Protocol],
        *,
        sock: socket.socket,
        **said: Any,  # noqa: ANN401 - the base's own, handed on
    ) -> asyncio.Server:
        """Listen as the base does, but take connections one at a time, and only those that fall to this worker."""
        server = await super().create_server(protocol_factory, sock=sock, **said)
        self._listen(sock, protocol_factory)
        return server

    def close(self) -> None:
        """Leave the others and close."""
        if not self.is_closed():
            self._shares.close()
        super().close()

    def _listen(self, sock: socket.socket, made: Callable[[], asyncio.Protocol], waited: float = 0.0) -> None:
        if sock.fileno() >= 0:  # it is closed when the service ends
            self.add_reader(sock, self._come, sock, made, waited)

    def _come(self, sock: socket.socket, made: Callable[[], asyncio.Protocol], waited: float) -> None:
        """Take the connection that waits; or look again soon, where another worker that holds fewer is waking too."""
        if waited < PATIENCE_S and self._shares.fewer(len(self._held)):
            self.remove_reader(sock)
            self.call_later(PAUSE_S, self._listen, sock, made, waited + PAUSE_S)
            return
        if waited:
            self._listen(sock, made)
        with suppress(BlockingIOError, InterruptedError, ConnectionAbortedError):  # another worker was quicker
            taken, _ = sock.accept()
            taken.setblocking(False)  # noqa: FBT003 - the standard library's own
            self._hold(self.create_task(self._connected(taken, made)))

    async def _connected(self, taken: socket.socket, made: Callable[[], asyncio.Protocol]) -> None:
        def watched() -> asyncio.Protocol:
            protocol = made()
            lost = protocol.connection_lost

            def gone(error: Exception | None) -> None:
                self._leave(protocol)
                lost(error)

            protocol.connection_lost = gone  # type: ignore[method-assign, assignment] # this one's, not the class's
            self._hold(protocol)
            return protocol

        try:
            await self.connect_accepted_socket(watched, taken)
        finally:
            self._leave(asyncio.current_task())

    def _hold(self, one: object) -> None:
        self._held.add(one)
        self._shares.put(len(self._held))

    def _leave(self, one: object) -> None:
        self._held.discard(one)
        self._shares.put(len(self._held))
