"""A backup killed leaves nothing under its name, a restore killed leaves an empty database; both can be done again."""

from __future__ import annotations

from pathlib import Path

from scripts.soaks.kill_round import Round, need
from service.flow.verify_backup import verify_backup
from service.store import dialect
from service.store.check import state_of
from tests.support.databases import Databases, fingerprint

KILLS = 2


def run(mine: Round, url: str, databases: Databases) -> None:
    """Back up and restore with a kill in each."""
    folder = Path(mine.folder) / f"archive{len(list(mine.folder.iterdir()))}"
    folder.mkdir()
    path = folder / "fleet.zip"
    for _ in range(KILLS):
        done = mine.killed("backup", str(path), url)
        need(path.exists() or not done, "a backup was acknowledged and is not there")
        if path.exists():
            need(not verify_backup(path).faults, "what has the name of a backup is not one")
            path.unlink()
    mine.whole("backup", str(path), url)
    need(not verify_backup(path).faults, "the backup is not sound")
    left = sorted(one.name for one in folder.iterdir() if one.name != "vault")
    need(left == ["fleet.zip"], f"beside the backup there is {left}")
    for _ in range(KILLS):
        target = databases.empty()
        done = mine.killed("restore", str(path), target)
        state = state_of(dialect.address(target))
        if state != "ok":
            need(state == "new" and not done, f"a restore was killed, and the database is {state}")
            mine.whole("restore", str(path), target)
        need(fingerprint(target) == fingerprint(url), "what was restored is not what was backed up")
