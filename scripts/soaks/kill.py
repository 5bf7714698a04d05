"""Whatever takes longer than a moment, killed (SIGKILL) at a random one, on both databases in turn.

After each kill everything that was acknowledged is there, nothing is half there, and the next try goes on from there.
"""

from __future__ import annotations

import tempfile
from collections.abc import Callable, Iterable
from contextlib import ExitStack
from pathlib import Path

import numpy as np

from scripts.bench_import import grown
from scripts.soaks import kill_backup, kill_import, kill_job, kill_merge
from scripts.soaks.kill_round import BrokenError, Round, opened
from service.files.write.tables import put_records
from service.flow.import_hulls import import_hulls
from service.flow.import_records import import_records
from service.flow.load_catalogue import load_catalogue
from service.store import migrate
from tests.support.databases import Databases, Files, Served
from tests.support.postgres import server

FIXTURES = Path(__file__).resolve().parents[2] / "seed_fixtures"
FLEET, FEW = 200, 24
"""Records that are merged and backed up, and records that are rechecked."""


def with_hulls(url: str) -> None:
    """Make a database with the hull models."""
    migrate.upgrade(url)
    store = opened(url)
    import_hulls(store.writing(), (FIXTURES / "hulls.csv").read_bytes(), "hulls.csv")
    store.close()


def with_fleet(url: str, records: int = FLEET) -> None:
    """Make a database with a catalogue, the hull models and some records."""
    with_hulls(url)
    store = opened(url)
    load_catalogue(store.writing(), (FIXTURES / "catalogue.toml").read_bytes(), "catalogue.toml")
    lines = (FIXTURES / "fleet.jsonl").read_bytes().splitlines(keepends=True)
    import_records(store.writing(), b"".join(lines[:records]), "fleet.jsonl")
    store.close()


def with_few(url: str) -> None:
    """Make a database with few records."""
    with_fleet(url, FEW)


def run(seeds: Iterable[int], *, say: Callable[[str], None] = print) -> bool:
    """Return whether it holds for all seeds, and print one line each, and how often what was killed at the end."""
    wanted = {record.reference: record for record in grown(kill_import.ROWS)}
    holds, kills = True, dict[str, dict[str, int]]()
    with ExitStack() as stack:
        folder = Path(stack.enter_context(tempfile.TemporaryDirectory(prefix="transom-kill-")))
        file = folder / "fleet.csv"
        with file.open("wb") as stream:
            put_records(stream, wanted.values(), "csv")
        kinds: list[Databases] = [Files(folder), Served(stack.enter_context(server()))]
        judged = kill_job.expected(kinds[0].like("few", with_few))
        lasts: dict[str, dict[str, float]] = {one.kind: {} for one in kinds}
        for seed in seeds:
            one = kinds[seed % 2]
            killed = kills.setdefault(one.kind, {})
            mine = Round(one.kind, folder, np.random.default_rng(seed), lasts[one.kind], killed)
            try:
                if seed % 6 < len(kinds):  # the longest of all: at each third turn
                    kill_import.run(mine, one.like("hulls", with_hulls), file, wanted)
                kill_job.run(mine, one.like("few", with_few), judged)
                kill_merge.records(mine, one.like("fleet", with_fleet))
                kill_merge.hulls(mine, one.like("fleet", with_fleet))
                kill_backup.run(mine, one.like("fleet", with_fleet), one)
                verdict = "holds"
            except BrokenError as broken:
                holds, verdict = False, f"DOES NOT HOLD: {broken}"
            say(f"seed {seed} {one.kind}: {'; '.join(mine.said)}: {verdict}")
    for kind, counted in kills.items():
        say(f"{kind}: {sum(counted.values())} kills: {', '.join(f'{count} {what}' for what, count in counted.items())}")
    return holds
