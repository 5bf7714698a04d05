"""Connections shared evenly among workers that listen on one socket."""

from __future__ import annotations

import asyncio
from typing import Any


class EvenLoop(asyncio.SelectorEventLoop):
    """An event loop that takes one connection at a time.

    The usual one takes all that wait as soon as it wakes: of eight that come at once one worker then has eight, and the
    others none. Taking one, a worker that is busy leaves the next to one that is not.
    """

    async def create_server(self, *args: Any, backlog: int = 100, **said: Any) -> asyncio.Server:  # noqa: ANN401 - the base's own, handed on
        """Listen as the base does; `backlog` connections may wait, and one is taken at a time."""
        server = await super().create_server(*args, backlog=1, **said)
        sock = said.get("sock")
        if sock is not None:
            sock.listen(backlog)  # how many are taken at a time was said by the same number as how many may wait
        return server
