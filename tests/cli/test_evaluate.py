"""Evaluate and refit from the command line, on a fleet too small to learn from and on files that cannot be."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

import pytest

if TYPE_CHECKING:
    from tests.cli.conftest import Run
    from tests.support.databases import Databases

FIXTURES = Path(__file__).resolve().parents[2] / "seed_fixtures"


@pytest.fixture
def few(run: Run, databases: Databases, tmp_path: Path) -> str:
    """Return a database with a fifteenth of the demo fleet."""
    lines = (FIXTURES / "fleet.jsonl").read_text(encoding="utf-8").splitlines()
    fleet = tmp_path / "few.jsonl"
    fleet.write_text("\n".join(lines[::15]), encoding="utf-8")
    url = databases.empty()
    steps = (
        ("db", "upgrade"), ("catalogue", "load", FIXTURES / "catalogue.toml"),
        ("hulls", "import", FIXTURES / "hulls.csv"), ("records", "import", fleet),
    )  # fmt: skip
    for step in steps:
        assert run(*step, "--db", url).status == 0
    return url


def test_a_small_fleet_is_scored_with_a_caution(run: Run, few: str, tmp_path: Path) -> None:
    plot = tmp_path / "plot.svg"
    ran = run("evaluate", "--configurations", "--with-fit", 1, "--plot", plot, "--json", "--db", few)
    assert (ran.status, ran.err) == (0, "")
    found = ran.document
    assert found["schema"] == "evaluation/1"
    assert found["names"] is None
    ways = [(h["by"], h["votes"]) for h in found["configurations"]["holdouts"]]
    assert ways == [("time", "alone"), ("hull", "alone"), ("time", "with verdicts"), ("hull", "with verdicts")]
    assert any("too few" in caution for caution in found["configurations"]["cautions"])
    assert plot.read_bytes().startswith(b"<?xml")
    page = run("evaluate", "--configurations", "--db", few)
    assert "most common  " in page.out
    assert "no fit was run" in page.out


def test_names_alone(run: Run, few: str) -> None:
    ran = run("evaluate", "--names", "--json", "--db", few)
    assert ran.document["configurations"] is None
    ours, floor = ran.document["names"]["this service"], ran.document["names"]["WRatio"]
    assert ours["absent_accepted"]["share"] < floor["absent_accepted"]["share"]
    assert "asked back" in run("evaluate", "--names", "--db", few).out


def test_weights_are_not_learned_from_too_few(run: Run, few: str) -> None:
    ran = run("recall-weights", "refit", "--db", few)
    assert ran.status == 2
    assert "records are installed; weights are learned from 40 on" in ran.err
    shown = run("recall-weights", "show", "--json", "--db", few).document
    assert (shown["weights"]["version"], shown["gains"]) == ("built-in", None)
    assert "rake of the transom" in run("recall-weights", "show", "--db", few).out
    assert run("recall-weights", "forget", "--json", "--db", few).document["forgotten"] == 0


def test_an_empty_fleet_has_nothing_to_score(run: Run, databases: Databases, tmp_path: Path) -> None:
    url = databases.empty()
    assert run("db", "upgrade", "--db", url).status == 0
    ran = run("evaluate", "--json", "--db", url)
    assert ran.status == 0
    assert ran.document["configurations"]["holdouts"] == []
    ran = run("evaluate", "--plot", tmp_path / "plot.png", "--db", url)
    assert ran.status == 2
    assert "nothing to plot" in ran.err
    assert not (tmp_path / "plot.png").exists()


@pytest.mark.parametrize(("name", "said"), [("plot.gif", ".svg or .png"), ("none/plot.svg", "there is no folder")])
def test_a_plot_that_cannot_be_written_is_refused_before_any_work(
    run: Run, tmp_path: Path, name: str, said: str
) -> None:
    ran = run("evaluate", "--plot", tmp_path / name, "--db", f"sqlite:///{tmp_path / 'none.sqlite'}")
    assert ran.status == 2
    assert said in ran.err
