"""Reports of fleets of odd sorts, on both kinds of database: by command and over HTTP they say the same, and leave nothing out unsaid."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

from service.settings import Serving
from tests.api.conftest import House, house
from tests.cli.conftest import Run, run
from tests.support.databases import Databases
from tests.support.odd_fleets import AS_OF, ODD, fill

__all__ = ["run"]
ROOM = Serving(requests=1_000_000, strangers=1_000_000)
FIRST = {
    "empty": {
        "demand": "no record is kept yet, so there is nothing to tell",
        "unmet": "no boat was found that nothing fits",
        "accuracy": "no record is installed in this period, so there is nothing to compare",
    },
    "one record": {
        "demand": "most needed gear: gear-720, on 1 of 1 boats (100 %, 15 to 100 %)",  # Beta(1.5, 0.5): 0.1465, by scipy
        "unmet": "no boat was found that nothing fits",
        "accuracy": "no record says whether it was fitted as proposed; tell with `transom records outcome`",
    },
    "one withdrawn": {
        "demand": "no record counts, so there is nothing to tell; see what was left out",
        "unmet": "something fits every boat that was looked at",
        "accuracy": "no record is installed in this period, so there is nothing to compare",
    },
    "one configuration": {
        "demand": "most needed gear: gear-720, on 30 of 30 boats (100 %, 92 to 100 %)",  # Beta(30.5, 0.5): 0.9195, by scipy
        "unmet": "no boat was found that nothing fits",
        "accuracy": "no record says whether it was fitted as proposed; tell with `transom records outcome`",
    },
    "to come": {
        "demand": "no record counts, so there is nothing to tell; see what was left out",
        "unmet": "no boat was found that nothing fits",
        "accuracy": "no record is installed in this period, so there is nothing to compare",
    },
    "undated": {
        "demand": "most needed gear: gear-720, on 3 of 3 boats (100 %, 46 to 100 %)",  # Beta(3.5, 0.5): 0.4641, by scipy
        "unmet": "something fits every boat that was looked at",
        "accuracy": "no record says whether it was fitted as proposed; tell with `transom records outcome`",
    },
}
"""What each report says first of each fleet."""


APART = {
    "demand": ("boats counted", ("withdrawn records", "records dated later")),
    "accuracy": ("boats installed", ("records not installed", "records outside the period")),
}
"""Under which names a report counts records, and leaves others out; undated ones count, though in no quarter."""


def records_in(name: str, said: dict[str, Any]) -> int:
    """Return how many records a report speaks of: those it counts and those it says it left out."""
    counted, others = APART[name]
    left: dict[str, int] = {one["what"]: one["count"] for one in said["left_out"]}
    return int(said["counts"][counted]) + sum(left.get(what, 0) for what in others)


@pytest.mark.parametrize("fleet", ODD)
def test_an_odd_fleet_is_told_of_sensibly(fleet: str, run: Run, databases: Databases, tmp_path: Path) -> None:
    url = databases.migrated()
    fill(url, ODD[fleet])
    for served in house(url, ROOM):
        for name, first in FIRST[fleet].items():
            over_http = served.get(f"/v1/reports/{name}?as_of={AS_OF}", "clerk")
            assert over_http.status_code == 200, over_http.text
            quick = ("--no-solve", "--most", 20) if name == "unmet" else ()
            files = ("--out", tmp_path, "--format", "json,html,xlsx")
            ran = run("report", name, "--as-of", AS_OF, *quick, *files, "--json", "--db", url)
            assert (ran.status, ran.err) == (0, "")
            said = json.loads(ran.out)
            assert over_http.json() == said
            assert said["findings"][0] == first
            if name in APART:
                assert records_in(name, said) == len(ODD[fleet])
            assert first in (tmp_path / f"{name}.html").read_text("utf-8").replace("&gt;", ">")
        quality = served.get("/v1/reports/quality", "clerk")
        ran = run("report", "quality", "--no-fit", "--json", "--db", url)
        assert (quality.status_code, ran.status) == (200, 0)
        assert quality.json() == json.loads(ran.out)
        assert quality.json()["records"] == len(ODD[fleet])


@pytest.mark.parametrize("query", ["as_of=0", "as_of=1577836800", "from=2020", "to=1e9"])
def test_a_number_is_no_day_of_a_report(here: House, query: str) -> None:
    """Else it would be counted as seconds since 1970, and the report would be of a fleet that was not there yet."""
    response = here.get(f"/v1/reports/demand?{query}")
    assert response.status_code == 422
    assert "2025-11-30" in response.json()["errors"][0]["detail"]
