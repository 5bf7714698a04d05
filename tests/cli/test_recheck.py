"""The whole fleet against a catalogue: what fails now, and what another catalogue would change."""

from __future__ import annotations

import json
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

if TYPE_CHECKING:
    from tests.cli.conftest import Run
    from tests.support.databases import Databases

FIXTURES = Path(__file__).resolve().parents[2] / "seed_fixtures"
CATALOGUE = FIXTURES / "catalogue.toml"
HEAVY = "2007-001"
DROPPED = "strut-600-860"


@pytest.fixture
def few(run: Run, databases: Databases, tmp_path: Path) -> str:
    """Return a database with a tenth of the demo fleet, every strutted boat of it and one boat too heavy for her gear."""
    lines = (FIXTURES / "fleet.jsonl").read_text(encoding="utf-8").splitlines()
    kept = [line for n, line in enumerate(lines) if n % 20 == 0 or HEAVY in line or DROPPED in line]
    fleet = tmp_path / "few.jsonl"
    fleet.write_text("\n".join(kept[:60]), encoding="utf-8")
    url = databases.empty()
    steps = (("db", "upgrade"), ("catalogue", "load", CATALOGUE), ("hulls", "import", FIXTURES / "hulls.csv"))
    for step in (*steps, ("records", "import", fleet)):
        assert run(*step, "--db", url).status == 0
    return url


def test_most_of_the_fleet_passes_and_what_does_not_says_why(run: Run, few: str) -> None:
    ran = run("recheck", "--json", "--db", few)
    found = json.loads(ran.out)
    assert ran.status == 1
    drawn = [row for row in found["rows"] if DROPPED not in row["configuration"].values() and row["record"] != HEAVY]
    assert sum(row["found"] == "passes" for row in drawn) > 0.8 * len(drawn)
    failed = [row for row in found["rows"] if row["found"] == "fails"]
    assert failed
    assert all("lack" in row["why"] or "beyond" in row["why"] for row in failed)


def test_another_catalogue_changes_only_the_records_it_touches(run: Run, few: str, tmp_path: Path) -> None:
    text = CATALOGUE.read_text(encoding="utf-8").replace('version = "demo-1"', 'version = "demo-2"')
    changed = tmp_path / "changed.toml"
    changed.write_text(
        text.replace(f'code = "{DROPPED}"', 'code = "strut-601-861"').replace(f"bracket:{DROPPED}", "*"),
        encoding="utf-8",
    )
    found = json.loads(run("recheck", "--catalogue", changed, "--json", "--db", few).out)
    touched = {row["record"] for row in found["rows"] if DROPPED in row["configuration"].values()}
    assert (found["catalogue"], found["against"]) == ("demo-1", "demo-2")
    assert touched
    assert {change["record"] for change in found["changes"]} == touched
    assert {change["after"]["found"] for change in found["changes"]} == {"cannot_be_made"}


def test_the_same_catalogue_changes_nothing(run: Run, few: str) -> None:
    ran = run("recheck", "--catalogue", CATALOGUE, "--db", few)
    assert ran.status == 0
    assert "demo-1" in ran.out


def test_a_catalogue_that_cannot_be_read_is_named(run: Run, few: str, tmp_path: Path) -> None:
    bad = tmp_path / "bad.toml"
    bad.write_text("[catalogue]\nname = 3", encoding="utf-8")
    ran = run("recheck", "--catalogue", bad, "--db", few)
    assert ran.status == 2
    assert "bad.toml" in ran.err
