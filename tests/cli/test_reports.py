"""`transom report …`: pages, files, exit statuses, and the quiet way for cron."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path

import pytest

from tests.cli.conftest import Database, Run

AS_OF = ("--as-of", "2026-01-15")
LARGE = ("numba", "scipy", "pandas", "statsmodels", "matplotlib", "reportlab")
"""Libraries that take longest to load; a report begins to count before it loads those it needs."""


def test_nothing_large_is_loaded_before_a_report_counts() -> None:
    ask = f"import sys, service.cli.main, service.cli.reports; print(*[m for m in {LARGE} if m in sys.modules])"
    ran = subprocess.run([sys.executable, "-c", ask], capture_output=True, text=True, check=True)  # noqa: S603 - our own
    assert ran.stdout.split() == []


def test_accuracy_prints_a_page_and_writes_every_format(run: Run, database: Database, tmp_path: Path) -> None:
    out = tmp_path / "out"
    ran = run("report", "accuracy", *AS_OF, "--out", out, "--db", database.url)
    assert ran.status == 0
    assert "367 of 400 boats were fitted as proposed" in ran.out
    assert "LEFT OUT" in ran.out
    assert all(len(line) <= 100 for line in ran.out.splitlines())
    names = {one.name for one in out.iterdir()}
    assert {"accuracy.json", "accuracy.xlsx", "accuracy.html", "accuracy.pdf", "accuracy-about.csv"} <= names
    assert "accuracy-by_year.parquet" in names


def test_it_changes_nothing_and_is_the_same_each_time(run: Run, database: Database) -> None:
    before = database.digest
    one, other = (run("report", "accuracy", *AS_OF, "--json", "--db", database.url) for _ in range(2))
    assert one.out == other.out
    assert one.document["schema"] == "report/1"
    assert database.digest == before


def test_quiet_says_nothing_and_writes_what_was_asked_for(run: Run, database: Database, tmp_path: Path) -> None:
    out = tmp_path / "out"
    ran = run("report", "accuracy", *AS_OF, "--quiet", "--out", out, "--format", "json,csv", "--db", database.url)
    assert (ran.status, ran.out, ran.err) == (0, "", "")
    assert {one.suffix for one in out.iterdir()} == {".json", ".csv"}


def test_a_period_is_told(run: Run, database: Database) -> None:
    ran = run(
        "report", "accuracy", *AS_OF, "--from", "2020-01-01", "--to", "2020-12-31", "--json", "--db", database.url
    )
    document = ran.document
    assert (document["first"], document["last"], document["as_of"]) == ("2020-01-01", "2020-12-31", "2026-01-15")
    years = next(table for table in document["tables"] if table["id"] == "by_year")
    assert [row[0] for row in years["rows"]] == ["2020"]


def test_unmet_without_solving(run: Run, database: Database) -> None:
    ran = run(
        "report", "unmet", *AS_OF, "--no-solve", "--most", 3, "--from", "2025-01-01", "--json", "--db", database.url
    )
    assert ran.status == 0
    document = json.loads(ran.out)
    assert document["counts"]["boats looked at again"] == 3
    assert [one["what"] for one in document["left_out"]] == ["boats outside the period", "earlier boats"]


@pytest.mark.parametrize(
    ("arguments", "says"),
    [
        (("--as-of", "yesterday"), "write it as 2024-01-31"),
        (("--from", "2024-02-30"), "is no day"),
        (("--from", "2025-01-02", "--to", "2025-01-01"), "comes after"),
        (("--format", "docx"), "take any of csv"),
        (("--format", ","), "take any of csv"),
    ],
)
def test_bad_days_and_formats_end_with_2(arguments: tuple[str, ...], says: str, run: Run, database: Database) -> None:
    ran = run("report", "accuracy", *arguments, "--db", database.url)
    assert (ran.status, ran.out) == (2, "")
    assert says in ran.err


def test_a_file_in_the_folders_place_is_told_before_any_work(run: Run, database: Database, tmp_path: Path) -> None:
    file = tmp_path / "out"
    file.write_text("mine", encoding="utf-8")
    ran = run("report", "accuracy", "--out", file, "--db", database.url)
    assert ran.status == 2
    assert file.read_text("utf-8") == "mine"


def test_demand_says_what_it_counted_and_what_not(run: Run, database: Database, tmp_path: Path) -> None:
    out = tmp_path / "out"
    ran = run("report", "demand", *AS_OF, "--out", out, "--format", "json", "--lead-weeks", "12", "--db", database.url)
    assert ran.status == 0
    for said in ("516", "withdrawn records", "lead time       12 weeks", "Expected demand and reorder points"):
        assert said in ran.out
    assert all(len(line) <= 100 for line in ran.out.splitlines())
    assert json.loads((out / "demand.json").read_text("utf-8"))["as_of"] == "2026-01-15"


@pytest.mark.parametrize(
    ("arguments", "says"),
    [
        (("--without", "shaft-1351"), "'shaft-1351' is neither a shaft nor a bracket"),
        (("--with-reach", "hinge-60-170"), "as hinge-60-170=280-390"),
        (("--with-reach", "hinge-60-170=390-280"), "as hinge-60-170=280-390"),
    ],
)
def test_a_what_if_of_nothing_ends_with_2(arguments: tuple[str, ...], says: str, run: Run, database: Database) -> None:
    ran = run("report", "demand", *arguments, "--db", database.url)
    assert (ran.status, ran.out) == (2, "")
    assert says in ran.err
