"""Boats that nothing fits, on both kinds of database: the metal that was taken away is what the solver asks for."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, date, datetime
from pathlib import Path
from typing import Any

import pytest

from service.core.boat import BoatForm
from service.core.catalogue import Catalogue
from service.core.demand import metal
from service.core.demand.solve import Case, best, passes
from service.core.form import parse_form
from service.core.record import Record
from service.core.report import Table
from service.files.read.catalogue_file import read_catalogue
from service.flow.known import NoCatalogueError, gather
from service.flow.report_unmet import Asked, report_unmet
from service.flow.report_whatif import what_if
from service.store.unit import Store
from tests.flow.conftest import opened
from tests.support.databases import Files

FIXTURES = Path(__file__).resolve().parents[3] / "seed_fixtures"
WHOLE = read_catalogue((FIXTURES / "catalogue.toml").read_bytes(), "catalogue.toml")
FORM: dict[str, Any] = {
    "schema": "boat-form/1",
    "boat": {"loa_mm": 9450, "lwl_mm": 7600, "displacement_kg": 4600, "hull_material": "frp_solid", "stern": "plumb"},
    "transom": {"top_height_mm": 950, "bottom_height_mm": -60, "rake_deg": 3, "width_top_mm": 1700, "thickness_mm": 14},
    "main_rudder": {"hung": "inboard", "stock_aft_mm": -700, "top_height_mm": -150, "trailing_edge_aft_mm": -350},
    "obstacles": [
        {"kind": "platform", "side": "across", "aft_mm": [0, 300], "starboard_mm": [-900, 900], "height_mm": [350, 430],
         "keep": True, "moves": "fixed"}
    ],
    "methods": {"*": "tape"},
}  # fmt: skip
"""A boat with a platform 300 mm deep: brackets have to reach beyond it."""
SHORT, LONG = "hinge-60-170", "hinge-270-420"
BOTH = (SHORT, LONG)
SHAFTS = ("shaft-1220", "shaft-1350")


def only(*brackets: str, shafts: tuple[str, ...] = SHAFTS) -> Catalogue:
    """Return the demo catalogue for its smaller gear with these shafts and brackets alone, so that little is tried."""
    return WHOLE.model_copy(
        update={
            "version": f"only {' '.join(brackets)}",
            "gears": WHOLE.gears[:1],
            "shafts": tuple(one for one in WHOLE.shafts if one.code in shafts),
            "brackets": tuple(one for one in WHOLE.brackets if one.code in brackets),
        }
    )


@pytest.fixture
def desk(files: Files) -> Iterator[Store]:
    """Open an empty file: what is solved is the same on either kind of database."""
    made = opened(files.migrated())
    yield made
    made.close()


def filled(store: Store, catalogue: Catalogue, records: list[Record]) -> Store:
    with store.writing() as uow:
        uow.catalogues.add(catalogue)
        uow.records.add_many(records, who="desk", why="test")
        uow.commit()
    return store


def boat(reference: str, status: str = "withdrawn", kit: str = SHORT) -> Record:
    """Return a boat with a platform that carries two brackets of a kind."""
    return Record.model_validate(
        {
            "reference": reference,
            "status": status,
            "date": date(2025, 2, 3),
            "form": parse_form(FORM).model_dump(by_alias=True, exclude_none=True),
            "configuration": {"gear": "gear-720", "lower": kit, "upper": kit, "shaft": "shaft-1350"},
        }
    )


def rows(table: Any) -> list[dict[str, Any]]:  # noqa: ANN401 - a table
    return [dict(zip((c.name for c in table.columns), row, strict=True)) for row in table.rows]


def test_the_reach_that_was_taken_away_is_asked_for(desk: Store) -> None:
    filled(desk, only(SHORT), [boat("w-1"), boat("w-2")])
    with desk.reading() as uow:
        known = gather(uow)
        report = report_unmet(uow, Asked(date(2025, 12, 31)))
    whole = replace(known, catalogue=only(*BOTH))
    fit = best(Case("w-1", boat("w-1").form, None), whole)
    assert fit is not None
    assert passes(fit)  # with the catalogue's own longer hinge she is served
    assert report.counts["that nothing fits"] == 2
    assert [row["boat"] for row in rows(report.table("boats"))] == ["w-1", "w-2"]
    checks = {row["check"]: row for row in rows(report.table("checks"))}
    assert checks["obstacle[0]"]["boats"] == 2
    served = {row["piece"]: row for row in rows(report.table("new_metal"))}
    first = rows(report.table("new_metal"))[0]
    assert (first["served"], first["which"]) == (2, "w-1 w-2")
    assert first["piece"].startswith(f"{SHORT} with reach ")
    assert int(first["piece"].split()[-2]) > 300  # beyond the platform
    allowed = [WHOLE.bracket(code).allowable.moment_nm for code in BOTH]
    assert allowed[0] < first["bears"] <= allowed[1]  # more than the short one's metal, no more than the long one's
    assert not any(row["served"] for name, row in served.items() if name.startswith("shaft"))  # no length would help
    assert any("would serve most: 2 of 2" in one for one in report.findings)
    with desk.reading() as uow:
        assert report_unmet(uow, Asked(date(2025, 12, 31))) == report


def test_what_is_said_to_serve_does(desk: Store) -> None:
    filled(desk, only(SHORT), [boat("w-1")])
    with desk.reading() as uow:
        known = gather(uow)
        piece = str(rows(report_unmet(uow, Asked(date(2025, 12, 31))).table("new_metal"))[0]["piece"])
    ends = piece.split()
    made = metal.bracket(known.catalogue, SHORT, (float(ends[-4]), float(ends[-2])))
    made = made.model_copy(update={"allowable": WHOLE.bracket(LONG).allowable})  # made to bear what it has to
    more = known.catalogue.model_copy(update={"brackets": (*known.catalogue.brackets, made)})
    fit = best(Case("w-1", boat("w-1").form, None), replace(known, catalogue=more))
    assert fit is not None
    assert passes(fit)


def test_enquiries_count_by_their_last_answer(store: Store) -> None:
    def answer(verdict: str) -> str:
        kit = {"gear": "gear-720", "lower": SHORT, "upper": SHORT, "shaft": "shaft-1110"}
        fit: dict[str, Any] = {"verdict": verdict, "placement": None, "why": "", "checks": []}
        body = {"schema": "answer/1", "form": FORM, "suggestions": [{"rank": 1, "configuration": kit, "fit": fit}]}
        return json.dumps({**body, "provenance": {"catalogue": "x"}})

    filled(store, only(*BOTH), [])
    with store.writing() as uow:
        for verdicts in (("fits", "does_not_fit"), ("does_not_fit", "fits"), ("does_not_fit",)):
            enquiry = uow.enquiries.add(BoatForm(), source="x", received=datetime(2025, 1, len(verdicts), tzinfo=UTC))
            for verdict in verdicts:
                uow.answers.add(enquiry, answer(verdict))
        enquiry = uow.enquiries.add(BoatForm(), source="x", received=datetime(2026, 2, 1, tzinfo=UTC))
        uow.answers.add(enquiry, answer("does_not_fit"))
        uow.commit()
    with store.reading() as uow:
        report = report_unmet(uow, Asked(date(2025, 12, 31), solve=False))
    assert report.counts["boats answered"] == 3
    assert report.counts["boats looked at again"] == report.counts["that something fits by now"] == 2
    assert {one.what: one.count for one in report.left_out} == {"boats outside the period": 1}
    assert report.table("new_metal").rows == ()


def test_what_fits_by_now_is_counted_and_not_listed(desk: Store) -> None:
    filled(desk, only(*BOTH), [boat("w-1")])
    with desk.reading() as uow:
        report = report_unmet(uow, Asked(date(2025, 12, 31)))
    assert (report.counts["that something fits by now"], report.counts["that nothing fits"]) == (1, 0)
    assert report.findings == ("something fits every boat that was looked at",)


def test_nobody_asked_and_no_catalogue(store: Store) -> None:
    with store.reading() as uow, pytest.raises(NoCatalogueError):
        report_unmet(uow, Asked(date(2025, 12, 31)))
    filled(store, only(SHORT), [])
    with store.reading() as uow:
        report = report_unmet(uow, Asked(date(2025, 12, 31)))
    assert report.findings == ("no boat was found that nothing fits",)


# --- what if ----------------------------------------------------------------------------------------------


def becomes(counts: Table) -> dict[str, int]:
    return {str(row["what"]): int(row["boats"]) for row in rows(counts)}


def test_who_is_stranded_and_who_is_served_otherwise(desk: Store) -> None:
    filled(desk, only(*BOTH), [boat("i-1", "installed", LONG), boat("i-2", "shipped", LONG), boat("w-1", kit=LONG)])
    with desk.reading() as uow:
        counts, boats = what_if(uow, dropped=[LONG])
        assert becomes(counts)["stranded"] == 2
        assert [row["record"] for row in rows(boats)] == ["i-1", "i-2"]
        counts, boats = what_if(uow, dropped=[LONG], reaches=[(SHORT, 280.0, 390.0)])
    assert becomes(counts)["served otherwise"] == 2
    assert all("new-hinge-60-170-280-390" in row["instead"] for row in rows(boats))


def test_new_metal_serves_a_boat_that_nothing_fits_now(desk: Store) -> None:
    filled(desk, only(SHORT), [boat("i-1", "installed")])
    with desk.reading() as uow:
        counts, _ = what_if(uow, reaches=[(SHORT, 280.0, 390.0)])
        assert becomes(counts)["served at last"] == 1
        counts, _ = what_if(uow, lengths=[1300.0])
        assert becomes(counts)["the same"] == 1


def test_dropping_what_nobody_carries_touches_nobody(desk: Store) -> None:
    filled(desk, only(*BOTH), [boat("i-1", "installed")])
    with desk.reading() as uow:
        counts, boats = what_if(uow, dropped=["shaft-1220"])
        assert sum(becomes(counts).values()) == 0
        assert boats.rows == ()
        with pytest.raises(KeyError, match="shaft-9999"):
            what_if(uow, dropped=["shaft-9999"])


def test_every_new_catalogue_makes_nothing_without_something_new() -> None:
    catalogue = only(*BOTH)
    for one in metal.only(catalogue, metal.shaft(catalogue, 1400.0), metal.reaches(catalogue)[:3]):
        made = one.configurations()
        assert made
        assert all(metal.new_in((c.lower, c.upper, c.shaft)) for c in made)


def test_no_length_is_tried_that_there_is() -> None:
    lengths = metal.lengths(only(SHORT, shafts=("shaft-1350", "shaft-1600")))
    assert not {1350.0, 1600.0} & set(lengths)
    assert {1250.0, 1400.0, 1450.0, 1950.0} <= set(lengths)
