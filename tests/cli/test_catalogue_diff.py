"""`transom catalogue diff`, between loaded versions and files."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

import pytest

if TYPE_CHECKING:
    from tests.cli.conftest import Database, Run


@pytest.fixture
def dearer(fixtures: Path, tmp_path: Path) -> Path:
    """Return the demo catalogue in another version, with another price, and a shaft that goes with another gear too."""
    text = (fixtures / "catalogue.toml").read_text(encoding="utf-8")
    file = tmp_path / "next one.toml"
    file.write_text(text.replace('"demo-1"', '"demo-2"').replace("price = 3650", "price = 3700"), encoding="utf-8")
    return file


def test_a_loaded_version_beside_a_file(run: Run, database: Database, dearer: Path) -> None:
    ran = run("catalogue", "diff", "demo-1", dearer, "--json", "--db", database.url)
    assert ran.status == 0
    found = ran.document
    assert (found["before"], found["after"], found["same"]) == ("demo-1", "demo-2", False)
    (change,) = found["changes"]
    (field,) = change["fields"]
    assert (change["kind"], change["code"]) == ("gear", "gear-720")
    assert (field["field"], field["before"], field["after"], field["after_unit"]) == ("price", 3650, 3700, "EUR")
    (carried,) = found["carried"]
    assert carried["references"] is None
    asked = ("records", "find", "--configuration", "gear-720", "--limit", "1000", "--json")
    standing = [one for one in run(*asked, "--db", database.url).document["records"] if one["status"] != "withdrawn"]
    assert carried["records"] == len(standing) > 100
    assert found["next"] == f"transom recheck --catalogue '{dearer}'"


def test_two_loaded_versions_and_the_records_by_name(run: Run, database: Database, dearer: Path) -> None:
    assert run("catalogue", "load", dearer, "--db", database.url).status == 0
    found = run("catalogue", "diff", "demo-1", "demo-2", "--records", "--json", "--db", database.url).document
    (carried,) = found["carried"]
    assert len(carried["references"]) == carried["records"] == found["records"] > 100
    assert found["next"] == "transom recheck"
    page = run("catalogue", "diff", "demo-1", "demo-2", "--db", database.url).out
    assert "3650 EUR -> 3700 EUR" in page
    assert f"{carried['records']} of {found['looked_at']} records" in page


def test_the_same_twice_is_no_difference(run: Run, database: Database, fixtures: Path) -> None:
    ran = run("catalogue", "diff", fixtures / "catalogue.toml", "demo-1", "--json", "--db", database.url)
    assert ran.status == 0
    assert (ran.document["same"], ran.document["changes"], ran.document["records"]) == (True, [], 0)
    assert "Nothing differs" in run("catalogue", "diff", "demo-1", "demo-1", "--db", database.url).out


def test_a_version_nobody_loaded_is_told_its_neighbour(run: Run, database: Database) -> None:
    ran = run("catalogue", "diff", "demo-1", "demo-11", "--db", database.url)
    assert ran.status == 2
    assert "did you mean 'demo-1'" in ran.err
    assert run("catalogue", "diff", "demo-1", "gone.toml", "--db", database.url).status == 2
