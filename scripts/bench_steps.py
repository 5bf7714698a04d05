"""Where the time of one answer goes, from the request's first byte to the answer's last: what `scripts/bench api --steps` runs.

The service answers as it always does, in this process and over no socket; the functions that a room is entered by are
timed where their callers look them up. A room's time is its own: what it spends in another room is the other's.
"""

from __future__ import annotations

import json
import os
import statistics
import tempfile
import time
from collections import defaultdict
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from importlib import import_module
from pathlib import Path
from typing import Any

from fastapi.testclient import TestClient

from scripts.soaks.serving import address, seed
from service import bootstrap
from service.api import once
from service.api.app import create_app
from service.api.log import configure
from service.core.answer import Answer, Answers
from service.flow import answer
from service.flow.warm import warm
from service.settings import Serving

compose = import_module("service.core.answer.compose")  # its package calls a function by that name
BOATS, WARM = 60, 5
ROOMS: tuple[tuple[str, tuple[tuple[object, str], ...]], ...] = (
    ("read: bytes to a form", ((answer, "read_enquiry"), (answer, "from_form"))),
    ("store: what is known, looked at", ((answer, "gather"),)),
    ("resolve: the hull model", ((answer, "hull_of"),)),
    ("recall: precedents and votes", ((compose, "recall"),)),
    ("recall: gaps filled", ((compose, "fills"),)),
    ("fit: the boat and her draws", ((compose, "prepare"),)),
    ("fit: all configurations surveyed", ((compose, "promising"),)),
    ("fit: the likeliest placed", ((compose, "set_many"),)),
    ("fit: the best assured", ((compose, "assured_many"),)),
    ("fit: cures", ((compose, "cures"),)),
    ("compose: contrasts, questions, cautions", ((answer, "compose"),)),
    ("store: the request's key claimed", ((once, "_claim"),)),
    ("store: enquiry, answer and reply kept", ((once, "_kept"),)),
    ("serialise: the answer as JSON", ((Answer, "model_dump_json"), (Answers, "model_dump_json"))),
)
DOOR = "door: HTTP, key, limits, log, threads"


class Rooms:
    """Time spent in each room, of one request at a time."""

    def __init__(self) -> None:
        """Begin outside."""
        self.spent: dict[str, float] = defaultdict(float)
        self._inside: list[str] = []
        self._since = 0.0

    def timed(self, room: str, work: Callable[..., Any]) -> Callable[..., Any]:
        """Return the work with its time counted to a room."""

        def done(*args: Any, **said: Any) -> Any:  # noqa: ANN401 - whatever the work takes and gives
            self._turn()
            self._inside.append(room)
            try:
                return work(*args, **said)
            finally:
                self._turn()
                self._inside.pop()

        return done

    def _turn(self) -> None:
        now = time.perf_counter()
        if self._inside:
            self.spent[self._inside[-1]] += now - self._since
        self._since = now


def boat(number: int) -> dict[str, Any]:
    """Return another boat for each number, over the same ranges as bench_api.lua's."""
    n = number * 7919 % 100_000
    stern = ("reverse", "raked", "plumb")[n % 3]
    sign = {"plumb": 0, "reverse": -1, "raked": 1}[stern]
    models = ("Tarnholt 36", "Tarnholt 33", "Tarnholt 30", "Morwik 27", "Oxbarrow 32", "Selmarrow 340")
    return {
        "boat": {"model": models[n % 6], "year": 1970 + n % 40, "loa_mm": 8000 + n % 4000,
                 "displacement_kg": 3000 + n % 5000, "hull_material": "frp_solid", "stern": stern},
        "transom": {"top_height_mm": 700 + n % 5000 / 10, "rake_deg": sign * (8 + n % 180 / 10),
                    "width_top_mm": 1300 + n % 700, "thickness_mm": 9 + n % 90 / 10},
        "main_rudder": {"hung": "inboard"},
        "methods": {"*": "tape"},
    }  # fmt: skip


def steps(records: int, kind: str) -> int:
    """Print the median of each room over so many boats; return the exit status."""
    os.environ["NO_COLOR"] = "1"
    configure()
    with tempfile.TemporaryDirectory(prefix="transom-steps-") as text, address(kind, Path(text)) as url:
        key = seed(url, records, Path(text))
        store = bootstrap.open_store(bootstrap.settings(url))
        warm(store)
        app = create_app(store, Serving(requests=1_000_000), clock=bootstrap.clock, random=os.urandom)
        with TestClient(app) as client:
            spent, total = _asked(client, key)
    print(f"One answer, {records} records, {kind}: medians over {BOATS} boats, one after another")
    middle = {
        room: 1000 * statistics.median(one[room] for one in spent) for room in (*(name for name, _ in ROOMS), DOOR)
    }
    whole = sum(middle.values())
    for room, milliseconds in middle.items():
        print(f"  {room:<42} {milliseconds:8.2f} ms  {100 * milliseconds / whole:5.1f} %")
    print(f"  {'all of it (median of the whole)':<42} {1000 * statistics.median(total):8.2f} ms")
    return 0


@contextmanager
def _watched(rooms: Rooms) -> Iterator[None]:
    """Have the rooms timed for a while."""
    before = [(place, name, getattr(place, name)) for _, ways in ROOMS for place, name in ways]
    for room, ways in ROOMS:
        for place, name in ways:
            setattr(place, name, rooms.timed(room, getattr(place, name)))
    try:
        yield
    finally:
        for place, name, work in before:
            setattr(place, name, work)


def _asked(client: TestClient, key: str) -> tuple[list[dict[str, float]], list[float]]:
    spent, total = [], []
    for number in range(WARM + BOATS):
        rooms = Rooms()
        with _watched(rooms):
            headers = {"X-API-Key": key, "Idempotency-Key": f"steps-{number}", "Content-Type": "application/json"}
            begun = time.perf_counter()
            reply = rooms.timed(DOOR, client.post)(
                "/v1/enquiries", content=json.dumps(boat(number + 1)), headers=headers
            )
            took = time.perf_counter() - begun
        if reply.status_code != 201:  # noqa: PLR2004 - HTTP's own
            raise SystemExit(reply.text)
        if number >= WARM:
            spent.append(rooms.spent)
            total.append(took)
    return spent, total
