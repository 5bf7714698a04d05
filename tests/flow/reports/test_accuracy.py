"""Proposed against installed, on both kinds of database: answers kept, records stepped and changed on site."""

from __future__ import annotations

import json
from collections.abc import Mapping
from datetime import UTC, date, datetime
from typing import Any

import pytest

from service.core.boat import BoatForm
from service.core.catalogue import Configuration
from service.core.demand.accuracy import Days
from service.core.record import Outcome, Proposed, Record, RecordedPlacement
from service.core.report import Report
from service.flow.report_accuracy import report_accuracy
from service.store.unit import Store
from tests.flow.records.conftest import KIT, OTHER_KIT, document

AS_OF = date(2026, 6, 30)


def installed(reference: str, **more: Any) -> Record:  # noqa: ANN401 - any field of a record
    usual: dict[str, Any] = {"status": "installed", "date": date(2025, 5, 1), "configuration": KIT, "form": BoatForm()}
    return Record(reference=reference, **{**usual, **more})


def changed(was: Configuration) -> dict[str, Any]:
    return {"proposed": Proposed(**was.model_dump()), "outcome": Outcome(fitted_as_proposed=False)}


def fill(store: Store, records: list[Record], answers: Mapping[str, dict[str, Any]] | None = None) -> None:
    with store.writing() as uow:
        for id_, one in (answers or {}).items():
            enquiry = uow.enquiries.add(BoatForm(), source="x", received=datetime(2025, 1, 1, tzinfo=UTC))
            uow.answers.add(enquiry, json.dumps(one), answer_id=id_)
        uow.records.add_many(records, who="desk", why="test")
        uow.commit()


def made(store: Store, first: date | None = None, last: date | None = None) -> Report:
    with store.reading() as uow:
        return report_accuracy(uow, Days(AS_OF, first, last))


def rows(report: Report, table: str) -> list[dict[str, Any]]:
    found = report.table(table)
    return [dict(zip((c.name for c in found.columns), row, strict=True)) for row in found.rows]


@pytest.fixture
def told(store: Store) -> Report:
    """Return the report on nine boats: six as proposed, two changed (one says for what), one that does not say."""
    answered = {"answer-1": document(), "answer-2": document(id="answer-2")}
    fill(
        store,
        [
            *(
                installed(f"a-{n}", outcome=Outcome(fitted_as_proposed=True), date=date(2024 + n % 2, 3, 1))
                for n in range(5)
            ),
            installed(
                "a-5",
                outcome=Outcome(fitted_as_proposed=True),
                answer="answer-1",
                placement=RecordedPlacement(offset_mm=12),
            ),
            installed("b-0", configuration=OTHER_KIT, answer="answer-2", **changed(KIT)),
            installed("b-1", outcome=Outcome(fitted_as_proposed=False)),
            installed("c-0"),
            installed("d-0", status="shipped"),
            installed("e-0", date=date(2027, 1, 1)),
        ],
        answered,
    )
    return made(store)


def test_counts_and_what_was_left_out(told: Report) -> None:
    assert told.counts == {"boats installed": 9, "of which it is known": 8, "with the answer kept": 2}
    assert {one.what: one.count for one in told.left_out} == {
        "records not installed": 1,
        "records outside the period": 1,
        "records that do not say": 1,
    }
    assert told.findings[0].startswith("6 of 8 boats were fitted as proposed (75 %")


def test_by_year(told: Report) -> None:
    assert [(r["year"], r["hits"], r["known"]) for r in rows(told, "by_year")] == [("2024", 3, 3), ("2025", 3, 5)]


def test_what_was_changed_for_what(told: Report) -> None:
    assert [(r["role"], r["proposed"], r["installed"], r["boats"]) for r in rows(told, "changes")] == [
        ("shaft", "shaft-a", "shaft-b", 1),
        ("upper", "up-a", "up-b", 1),
    ]


def test_chances_ranks_and_places_come_from_the_answers_kept(told: Report) -> None:
    (one,) = rows(told, "calibration")  # two answers of two suggestions, each said to have one chance in two
    assert (one["count"], one["said"], one["share"]) == (4, 0.5, 0.5)
    assert [(r["rank"], r["hits"], r["known"]) for r in rows(told, "ranks")] == [("1", 1, 2), ("2", 1, 2)]
    assert [(r["what"], r["boats"], r["p50"]) for r in rows(told, "moved")] == [("offset_mm", 1, 12.0)]


def test_a_period_bounds_what_counts(store: Store) -> None:
    fill(store, [installed("a", date=date(2024, 1, 1)), installed("b"), installed("c", date=None)])
    assert made(store).counts["boats installed"] == 3
    assert made(store, date(2025, 1, 1), date(2025, 12, 31)).counts["boats installed"] == 1


def test_where_it_goes_wrong_stands_first(store: Store) -> None:
    scoop = BoatForm.model_validate({"schema": "boat-form/1", "boat": {"stern": "scoop"}})
    fill(
        store,
        [
            *(installed(f"a-{n}", outcome=Outcome(fitted_as_proposed=True)) for n in range(20)),
            *(installed(f"b-{n}", form=scoop, outcome=Outcome(fitted_as_proposed=n > 4)) for n in range(8)),
        ],
    )
    first = rows(made(store), "wrong")[0]
    assert (first["of"], first["which"], first["hits"], first["known"]) == ("stern", "scoop", 5, 8)


def test_no_record_and_none_that_says(store: Store) -> None:
    assert made(store).findings == ("no record is installed in this period, so there is nothing to compare",)
    fill(store, [installed("a")])
    assert "no record says whether" in made(store).findings[0]


def test_it_is_the_same_each_time(told: Report, store: Store) -> None:
    assert made(store).model_dump_json() == told.model_dump_json()
