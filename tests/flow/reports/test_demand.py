"""Demand counted by the database, on both kinds: against the same count in plain Python; and fleets of all odd sorts."""

from __future__ import annotations

from collections import Counter
from datetime import date
from pathlib import Path
from typing import Any

import pytest

from service.core.boat import BoatForm
from service.core.catalogue import Configuration
from service.core.demand.ledger import Asked
from service.core.record import Record, RecordedPlacement
from service.core.report import Report
from service.files.read.catalogue_file import read_catalogue
from service.files.write.report_files import report_files
from service.flow.report_demand import report_demand
from service.store.demand import Counting
from service.store.merges import Merge
from service.store.unit import Store

FIXTURES = Path(__file__).resolve().parents[3] / "seed_fixtures"
AS_OF = date(2026, 1, 15)
KIT = Configuration(gear="gear-720", lower="hinge-60-170", upper="hinge-270-420", shaft="shaft-1350")
TWICE = Configuration(gear="gear-720", lower="hinge-60-170", upper="hinge-60-170", shaft="shaft-1220")


def fleet() -> list[Record]:
    """Return every fourth record of the demo fleet."""
    lines = (FIXTURES / "fleet.jsonl").read_text("utf-8").splitlines()
    return [Record.model_validate_json(line).model_copy(update={"hull": None}) for line in lines[::4]]


def keep(store: Store, records: list[Record], *, catalogue: bool = True) -> None:
    with store.writing() as uow:
        if catalogue:
            uow.catalogues.add(read_catalogue((FIXTURES / "catalogue.toml").read_bytes(), "catalogue.toml"))
        uow.records.add_many(records, who="desk", why="test")
        uow.commit()


def made(store: Store, **more: Any) -> Report:  # noqa: ANN401 - handed on
    with store.reading() as uow:
        return report_demand(uow, Asked(AS_OF, **more))


def one(reference: str = "a", **more: Any) -> Record:  # noqa: ANN401 - any field of a record
    usual: dict[str, Any] = {"status": "installed", "date": date(2025, 5, 1), "configuration": KIT, "form": BoatForm()}
    return Record(reference=reference, **{**usual, **more})


def rows(report: Report, table: str) -> list[dict[str, Any]]:
    found = report.table(table)
    return [dict(zip((c.name for c in found.columns), row, strict=True)) for row in found.rows]


def band(length: float | None) -> str | None:
    """Say a hull's length as the report does, by hand."""
    names = ((8000, "under 8 m"), (10000, "8 to 10 m"), (12000, "10 to 12 m"), (14000, "12 to 14 m"))
    return None if length is None else next((name for below, name in names if length < below), "14 m and over")


def side(offset: float | None) -> str | None:
    """Say where a shaft stands as the report does, by hand."""
    return None if offset is None else "centre" if abs(offset) <= 25 else "starboard" if offset > 0 else "port"


def when(day: date | None, asked: Counting) -> str:
    """Say where a day lies, by hand."""
    if day is None:
        return "undated"
    return "after" if day > asked.last else "before" if asked.first and day < asked.first else "within"


def test_the_database_counts_what_plain_python_counts(store: Store) -> None:
    records = fleet()
    keep(store, records)
    for asked in (
        Counting(("shipped", "installed"), None, AS_OF),
        Counting(("installed",), date(2010, 2, 3), date(2019, 6, 7)),
    ):
        mine = [
            r
            for r in records
            if r.status in asked.statuses
            and (asked.first is None or str(r.date) >= str(asked.first))
            and str(r.date) <= str(asked.last)
        ]
        codes = [tuple(r.configuration.model_dump().values()) for r in mine]
        months = Counter((c, r.date and r.date.year * 12 + r.date.month - 1) for c, r in zip(codes, mine, strict=True))
        places = Counter(
            (c, (r.form.enquiry.country, band(r.form.boat.loa_mm), r.form.boat.stern, side(r.placement.offset_mm)))
            for c, r in zip(codes, mine, strict=True)
        )
        with store.reading() as uow:
            counted = uow.demand.counted(asked)
        assert counted.by_month == dict(months)
        assert counted.by_place == dict(places)
        assert counted.statuses == dict(Counter((r.status, when(r.date, asked)) for r in records))


def test_a_merged_record_counts_once(store: Store) -> None:
    keep(store, [one("a"), one("b"), one("c", configuration=TWICE)])
    with store.writing() as uow:
        uow.records.merges.put([Merge("b", "a", 1)])
        uow.commit()
    report = made(store)
    assert report.counts["boats counted"] == 2
    assert {x.what: x.count for x in report.left_out} == {"merged records": 1}


def test_pieces_parts_and_places_by_hand(store: Store) -> None:
    form = BoatForm.model_validate(
        {"schema": "boat-form/1", "enquiry": {"country": "SE"}, "boat": {"loa_mm": 9100, "stern": "raked"}}
    )
    keep(
        store,
        [
            one("a", form=form, placement=RecordedPlacement(offset_mm=350)),
            one("b", form=form, placement=RecordedPlacement(offset_mm=-3), configuration=TWICE),
            one("c", configuration=TWICE),
        ],
    )
    report = made(store)
    brackets = {row["code"]: (row["installations"], row["pieces"]) for row in rows(report, "brackets")}
    assert brackets == {"hinge-60-170": (3, 5), "hinge-270-420": (1, 1)}
    places = {(row["of"], row["value"]): row["installations"] for row in rows(report, "places")}
    assert places == {
        ("country", "SE"): 2,
        ("length of the hull", "8 to 10 m"): 2,
        ("stern", "raked"): 2,
        ("side of the shaft", "centre"): 1,
        ("side of the shaft", "off centre"): 1,
        ("side of the shaft", "starboard"): 1,
    }
    parts = {row["code"]: row["pieces"] for row in rows(report, "parts")}
    assert parts["hinge-pin-14"] > 0
    assert parts["vane-800"] == 3


def test_the_same_day_gives_the_same_bytes(store: Store) -> None:
    keep(store, fleet())
    one_, other = (report_files(made(store), ("json", "csv", "xlsx")) for _ in range(2))
    assert one_ == other


def test_what_is_left_out_is_told_with_its_reason(store: Store) -> None:
    keep(
        store,
        [
            one("a"), one("b", status="proposed"), one("c", status="withdrawn"), one("d", date=None),
            one("e", date=date(2031, 1, 1)), one("f", date=date(2001, 1, 1)),
        ],
    )  # fmt: skip
    told = {x.what: x.count for x in made(store, first=date(2024, 1, 1)).left_out}
    assert told == {
        "withdrawn records": 1, "proposed records": 1, "undated records": 1, "records dated later": 1,
        "records dated earlier": 1,
    }  # fmt: skip
    assert made(store, proposals=True).counts["boats counted"] == 4


def test_an_empty_fleet(store: Store) -> None:
    report = made(store)
    assert report.findings == ("no record is kept yet, so there is nothing to tell",)
    assert all(not table.rows for table in report.tables if table.id != "transforms")
    assert set(report_files(report)) >= {"demand.pdf", "demand.html", "demand.xlsx"}


@pytest.mark.parametrize("count", [1, 12])
def test_one_record_or_one_configuration_only(store: Store, count: int) -> None:
    keep(store, [one(f"a-{n}", date=date(2023 + n // 4, 1 + n % 4 * 3, 2)) for n in range(count)])
    report = made(store)
    (only,) = rows(report, "configurations")
    assert (only["installations"], only["share"], only["high"]) == (count, 1.0, 1.0)
    assert only["low"] < 1
    ahead = [row for row in rows(report, "expected") if row["kind"] == "shaft"]
    assert len(ahead) == 5
    assert all(0 <= row["low_95"] <= row["low_80"] <= row["high_80"] <= row["high_95"] for row in ahead)
    assert "are foretold by the floor" in " ".join(report.findings)


def test_dates_in_the_future_alone(store: Store) -> None:
    keep(store, [one("a", date=date(2030, 1, 1))])
    report = made(store)
    assert report.counts["boats counted"] == 0
    assert {x.what: x.why for x in report.left_out} == {"records dated later": "dated after 2026-01-15"}


def test_no_dates_at_all(store: Store) -> None:
    keep(store, [one(f"a-{n}", date=None) for n in range(3)])
    report = made(store)
    assert report.counts["boats counted"] == 3
    assert rows(report, "shafts")[0]["pieces"] == 3
    assert report.table("expected").rows == ()
    assert any(finding.startswith("no forecast") for finding in report.findings)


def test_without_a_catalogue_metal_is_counted_and_parts_are_not(store: Store) -> None:
    keep(store, [one("a")], catalogue=False)
    report = made(store)
    assert rows(report, "gears")[0]["installations"] == 1
    assert report.table("parts").rows == ()
    assert {x.what: x.why for x in report.left_out} == {"configurations without loose parts": "no catalogue is loaded"}


def test_codes_that_are_sold_no_more_are_not_foretold(store: Store) -> None:
    old = KIT.model_copy(update={"shaft": "shaft-900"})
    keep(store, [one("a", configuration=old), one("b")])
    report = made(store)
    assert {row["code"] for row in rows(report, "reorder") if row["kind"] == "shaft"} == {"shaft-1350"}
    assert {row["code"] for row in rows(report, "shafts")} == {"shaft-1350", "shaft-900"}
