"""The demo in a checkout of its own, with an environment that stands already."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

import service

TOP = Path(__file__).resolve().parents[2]


@pytest.fixture(scope="module")
def checkout(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return a checkout in a folder with a blank in its name, with this very environment and program in its .venv."""
    top = tmp_path_factory.mktemp("some where") / "ledger"
    top.mkdir()
    for name in ("scripts", "seed_fixtures", "migrations"):
        shutil.copytree(TOP / name, top / name, ignore=shutil.ignore_patterns("__pycache__"))
    shutil.copy(TOP / "pyproject.toml", top)
    tools = top / ".venv" / "bin"
    tools.mkdir(parents=True)
    for name, call in (("python", ""), ("transom", " -c 'from service.cli.main import run; run()'")):
        (tools / name).write_text(
            f'#!/bin/sh\nPYTHONPATH="{TOP}" exec "{sys.executable}"{call} "$@"\n', encoding="utf-8"
        )
        (tools / name).chmod(0o755)
    ask = 'source scripts/environment.sh; stamp_of "$top/scripts/lock/run.txt"'
    stamp = subprocess.run(["/bin/bash", "-c", ask], cwd=top, capture_output=True, check=True)  # noqa: S603 - our own
    (top / ".venv" / ".made-for-run").write_bytes(stamp.stdout)
    # What this run has compiled is good there too. The package, once imported, has said where it is kept:
    # <cache>/transom-ledger/compiled-…
    assert service.__version__
    (top / ".venv" / "cache").symlink_to(Path(os.environ["NUMBA_CACHE_DIR"]).parent.parent)
    return top


def demo(top: Path, home: Path, *arguments: object) -> subprocess.CompletedProcess[str]:
    home.mkdir(exist_ok=True)
    return subprocess.run(  # noqa: S603 - our own script
        [str(top / "scripts" / "demo"), *map(str, arguments)],
        cwd=home,
        env={"PATH": os.environ["PATH"], "HOME": str(home), "PYTHONDONTWRITEBYTECODE": "1"},
        capture_output=True,
        text=True,
        check=False,
    )


def test_the_demo_answers_its_mail_from_anywhere_and_only_builds_once(checkout: Path, tmp_path: Path) -> None:
    home = tmp_path / "home"
    first = demo(checkout, home)
    assert first.returncode == 0, first.stderr
    for part in ("BOAT", "PRECEDENTS", "SUGGESTIONS", "MISSING", "REPLY"):
        assert f"\n{part}" in first.stdout
    made = (checkout / ".demo" / "made-from").stat().st_mtime_ns
    second = demo(checkout, home)
    assert second.returncode == 0
    assert "Making" in first.stderr
    assert "Making" not in second.stderr
    assert (checkout / ".demo" / "made-from").stat().st_mtime_ns == made
    assert list(home.iterdir()) == []
    stray = {file.name for file in checkout.iterdir()} - {"scripts", "seed_fixtures", "migrations", "pyproject.toml"}
    assert stray == {".venv", ".demo"}


def test_the_users_own_file_and_its_exit_status(checkout: Path, tmp_path: Path) -> None:
    home = tmp_path / "home"
    home.mkdir()
    (home / "mine.txt").write_text(
        "Hello, what fits our Selmarrow 34 of 1980? The transom is 900 mm high.", encoding="utf-8"
    )
    (home / "empty.eml").write_bytes(b"")
    assert "Selmarrow 34" in demo(checkout, home, "mine.txt").stdout
    empty = demo(checkout, home, "empty.eml")
    assert empty.returncode == 2
    assert "it is empty" in empty.stderr
    assert demo(checkout, home, "none.eml").returncode == 2
    assert demo(checkout, home, "a", "b").returncode == 2
    assert "FILE" in demo(checkout, home, "--help").stdout


def test_the_database_is_made_anew_when_what_it_is_made_from_changes(checkout: Path, tmp_path: Path) -> None:
    home = tmp_path / "home"
    if not (checkout / ".demo").exists():  # where this test runs alone
        assert demo(checkout, home).returncode == 0
    with (checkout / "seed_fixtures" / "hulls.csv").open("a", encoding="utf-8") as hulls:
        hulls.write("bruvmere-29,,Bruvmere 29,,,,,,,,,raked\n")
    changed = demo(checkout, home)
    assert changed.returncode == 0, changed.stderr
    assert "Making the demo's database" in changed.stderr
    assert (checkout / ".demo" / "before.sqlite").is_file()
