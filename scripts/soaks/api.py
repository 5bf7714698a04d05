"""Everything the service's document allows and forbids, sent to a running `transom serve` on SQLite, call after call.

All of schemathesis's checks; for each seed a minute of single requests, and a minute of requests that go on from
what was answered before. Nothing may end in a fault, in a
status or a shape that the document does not name, or let anybody in without a key.
"""

from __future__ import annotations

import tempfile
from collections import Counter
from collections.abc import Callable, Iterable
from itertools import product
from pathlib import Path
from urllib.parse import urlunsplit

from scripts.soaks.serving import HERE, served
from tests.support.fuzz import fuzz

RECORDS, SECONDS = 600, 60
PHASES = ("examples,coverage,fuzzing", "stateful")


def run(seeds: Iterable[int], *, say: Callable[[str], None] = print) -> bool:
    """Return whether it holds for all seeds; say for each how many requests were made and how often each check held."""
    holds, checks, answers = True, Counter[str](), dict[str, Counter[int]]()
    with tempfile.TemporaryDirectory(prefix="transom-fuzz-") as text:
        folder = Path(text)
        with served("sqlite", folder, RECORDS) as service:
            base = urlunsplit(("http", f"{HERE}:{service.port}", "", "", ""))
            for seed, phases in product(seeds, PHASES):
                how = ("--phases", phases, "--max-time", str(SECONDS), "--workers", "2")
                found = fuzz(base, service.key, folder, seed, *how)
                statuses = ", ".join(f"{status} x {count}" for status, count in sorted(found.statuses.items()))
                say(f"seed {seed}, {phases}: {found.requests} requests, {found.checks.total()} checks held; {statuses}")
                if not found.well:
                    holds = False
                    say(found.told)
                checks += found.checks
                for operation, told in found.answers.items():
                    answers[operation] = answers.get(operation, Counter()) + told
    for name, count in sorted(checks.items()):
        say(f"  {name:<32} held {count} times")
    answers = {
        operation: told for operation, told in answers.items() if set(told) != {405}
    }  # methods that are not there
    never = [operation for operation, told in sorted(answers.items()) if not any(200 <= one < 300 for one in told)]  # noqa: PLR2004 - HTTP's own
    say(f"  operations asked: {len(answers)}; never answered well: {', '.join(never) or 'none'}")
    return holds
