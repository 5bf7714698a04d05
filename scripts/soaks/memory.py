"""Many requests, one after another from each of eight clients: what the service holds in memory stays the same.

Of forty requests one is an enquiry about another boat; the others look at hull models, records, enquiries, answers and reports
of health, match names, and ask for what is not there. Resident memory of all its processes is printed at every eighth of the
way; over the second half it may be up to 5 % above what it was over the second quarter. On both databases.
"""

from __future__ import annotations

import json
import statistics
import tempfile
from collections import Counter
from collections.abc import Callable, Iterable, Sequence
from concurrent.futures import ThreadPoolExecutor
from http.client import HTTPConnection
from pathlib import Path
from urllib.parse import quote, urlencode

from scripts.bench_steps import boat
from scripts.soaks.serving import HERE, Served, memory_mb, served

RECORDS, CLIENTS, STEPS = 600, 8, 8
EVERY = 40
MORE = 1.05
Call = tuple[str, str, str | None]
KINDS = ("sqlite", "postgresql")


def call(number: int, known: Sequence[str]) -> Call:
    """Return method, path and body of a request."""
    if number % EVERY == 0:
        return "POST", "/v1/enquiries", json.dumps(boat(number))
    seen = known[number % len(known)] if known else "none"
    queries = json.dumps({f"q{n}": {"query": f"Tarnholt {30 + (number + n) % 12}"} for n in range(5)})
    calls: tuple[Call, ...] = (
        ("GET", f"/v1/hulls?name={quote(f'Tarnholt {30 + number % 12}')}", None),
        ("GET", f"/v1/records?limit=20&year_from={1960 + number % 60}", None),
        ("GET", "/v1/enquiries?limit=20", None),
        ("GET", f"/v1/answers/{seen}", None),
        ("GET", "/health/ready", None),
        ("POST", "/v1/reconcile", urlencode({"queries": queries})),
        ("GET", f"/v1/records/nobody-{number}", None),
        ("GET", f"/v1/nowhere/{number}", None),
        ("POST", "/v1/fits", f'{{"form": {number}}}'),
    )
    return calls[number % len(calls)]


class Client:
    """One of those who ask."""

    def __init__(self, service: Served) -> None:
        """Begin without a connection."""
        self._service, self._line = service, HTTPConnection(HERE, service.port, timeout=120)

    def ask(self, numbers: Iterable[int], known: list[str]) -> Counter[int]:
        """Send requests and return how often which status was answered; ids of answers are added to `known`."""
        told: Counter[int] = Counter()
        for number in numbers:
            method, path, body = call(number, known)
            kind = "application/x-www-form-urlencoded" if path == "/v1/reconcile" else "application/json"
            headers = {"X-API-Key": self._service.key, "Idempotency-Key": f"memory-{number}"}
            headers |= {"Content-Type": kind} if body else {}
            self._line.request(method, path, body, headers)
            reply = self._line.getresponse()
            content = reply.read()
            told[reply.status] += 1
            if path == "/v1/enquiries" and method == "POST":
                known.extend(one["id"] for one in json.loads(content).get("answers", ()))
        self._line.close()  # the service would, while others are still asked
        return told


def run(numbers: Iterable[int], *, say: Callable[[str], None] = print) -> bool:
    """Return whether memory stays as it was and nothing failed, for requests of these numbers on each database."""
    wanted = list(numbers)
    with tempfile.TemporaryDirectory(prefix="transom-memory-") as text:
        held = {kind: _on(kind, Path(text), wanted, say) for kind in KINDS}
    return all(held.values())


def _on(kind: str, folder: Path, numbers: Sequence[int], say: Callable[[str], None]) -> bool:
    told: Counter[int] = Counter()
    known: list[str] = []
    held: list[float] = []
    with served(kind, folder, RECORDS) as service, ThreadPoolExecutor(CLIENTS) as threads:
        clients = [Client(service) for _ in range(CLIENTS)]
        say(f"{kind}: {memory_mb(service.pid):.0f} MB before the first request")
        size = max(1, len(numbers) // STEPS)
        for step in range(STEPS):
            part = numbers[step * size : (step + 1) * size]
            for each in threads.map(lambda at, part=part: clients[at].ask(part[at::CLIENTS], known), range(CLIENTS)):
                told += each
            held.append(memory_mb(service.pid))
            say(f"{kind}: {held[-1]:.0f} MB after {told.total()} requests, {len(known)} answers")
    before, after = statistics.mean(held[STEPS // 4 : STEPS // 2]), statistics.mean(held[STEPS // 2 :])
    failed = sum(count for status, count in told.items() if status >= 500)  # noqa: PLR2004 - HTTP's own
    holds = after <= MORE * before and not failed and bool(known)
    say(
        f"{kind}: {dict(sorted(told.items()))}; {before:.0f} MB over the second quarter, {after:.0f} MB over the second half"
    )
    say(f"{kind}: {'stays the same' if holds else 'DOES NOT HOLD'}")
    return holds
