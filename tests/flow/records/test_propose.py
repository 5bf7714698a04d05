from __future__ import annotations

import json

import pytest
import sqlalchemy as sa

from service.core.measurement import fields
from service.core.record import RecordedPlacement
from service.flow.propose_record import Chosen, kept_answer, propose_record
from service.flow.refusal import Refused
from service.flow.step_record import Told, step_record
from service.store import schema
from service.store.unit import Store
from tests.flow.records.conftest import KIT, OTHER_KIT, document, sent, suggestion


def test_an_answer_becomes_a_record_with_all_that_it_said(store: Store) -> None:
    made = propose_record(store.writing(), sent(), who="bo", why="order by phone")
    with store.reading() as uow:
        record = uow.records.get(made.record.reference)
        (step,) = uow.records.history(made.record.reference)
        rows = uow.records.measurements.of_boat(made.record.reference)
    assert record is not None
    assert (record.reference, record.status, record.dealer, record.hull) == (
        "2026-001", "proposed", "Hafenladen Süd", "tern-31",
    )  # fmt: skip
    assert (record.configuration, record.catalogue, record.answer) == (KIT, "7", "answer-1")
    assert record.placement == RecordedPlacement(
        offset_mm=0, shaft_aft_mm=250, lower_height_mm=300, upper_height_mm=800, shaft_bottom_mm=-200
    )
    assert record.form.contact.name == "Ada Holm"
    assert (step.who, step.why) == ("bo", "suggestion 1 of answer-1; order by phone")
    assert {(r.field, r.value, r.unit, r.method) for r in rows} == {
        ("boat.loa_mm", 9450, "mm", "tape"), ("transom.top_height_mm", 900, "mm", "tape"),
        ("transom.rake_deg", 14, "deg", "photo"),
    }  # fmt: skip
    assert {r.who for r in rows} == {"bo"}
    assert "transom.rake_deg" in fields()


def test_people_stay_out_of_the_records_own_document(store: Store) -> None:
    propose_record(store.writing(), sent(), who="bo")
    with store._engine.connect() as raw:
        documents = raw.execute(sa.select(schema.record_revisions.c.document)).scalars().all()
        sources = raw.execute(sa.select(schema.measurements.c.source)).scalars().all()
    assert documents
    assert not any("Ada" in text or "example.com" in text for text in [*documents, *sources])


def test_references_are_readable_and_none_comes_twice(store: Store) -> None:
    with store.writing() as uow:
        assert [uow.records.series.next("2025") for _ in range(2)] == ["2025-003", "2025-004"]
        uow.commit()
    with store.writing() as uow:
        assert uow.records.series.next("2025") == "2025-005"  # 003 and 004 were never used, and still are gone
        assert uow.records.series.next("2026") == "2026-001"


@pytest.mark.parametrize(
    ("chosen", "kit"),
    [
        (Chosen(), KIT),
        (Chosen(rank=1), KIT),
        (Chosen(configuration="gear-a low-a up-a shaft-a"), KIT),
        (Chosen(configuration="gear-a · low-a · up-a · shaft-a"), KIT),
    ],
)
def test_one_suggestion_is_chosen(store: Store, chosen: Chosen, kit: object) -> None:
    assert propose_record(store.writing(), sent(), chosen, who="bo").record.configuration == kit


@pytest.mark.parametrize(
    ("answers", "chosen", "says"),
    [
        ((), Chosen(), "no enquiry"),
        (sent(), Chosen(rank=3), "no suggestion 3; they are: 1 gear-a"),
        (sent(), Chosen(configuration="gear-a low-a"), "none of its suggestions"),
        (sent(), Chosen(rank=2, configuration="gear-a low-a up-a shaft-a"), "one of the two"),
        (sent(), Chosen(boat=2), "no boat 2"),
        (sent() * 2, Chosen(), "2 boats.*--boat.*1 Tern 31"),
        (sent(suggestions=[]), Chosen(), "suggests nothing"),
        (sent(), Chosen(rank=2), r"does not fit: blade_root is 20 mm too deep.*--anyway"),
    ],
)
def test_what_is_not_clear_is_refused(store: Store, answers: object, chosen: Chosen, says: str) -> None:
    with pytest.raises(Refused, match=says):
        propose_record(store.writing(), answers, chosen, who="bo")  # type: ignore[arg-type] # pytest's parameters have no type
    with store.reading() as uow:
        assert uow.records.count() == 2


def test_what_does_not_fit_needs_a_reason_that_is_kept(store: Store) -> None:
    made = propose_record(store.writing(), sent(), Chosen(rank=2), who="bo", anyway="owner moves the ladder")
    assert made.record.configuration == OTHER_KIT
    with store.reading() as uow:
        assert uow.records.history(made.record.reference)[0].why == (
            "suggestion 2 of answer-1; proposed although it does not fit: owner moves the ladder"
        )


def test_an_answer_is_made_into_a_record_once(store: Store) -> None:
    first = propose_record(store.writing(), sent(), who="bo").record.reference
    with pytest.raises(Refused, match=f"record {first} already"):
        propose_record(store.writing(), sent(), who="bo")
    step_record(store.writing(), first, "withdrawn", Told(note="other metal wanted"), who="bo")
    assert propose_record(store.writing(), sent(), who="bo").record.reference != first


def test_a_hull_model_that_is_not_here_is_left_open_and_said(store: Store) -> None:
    hull = {"status": "matched", "model": {"id": "elsewhere", "model": "x"}, "probability": 1}
    made = propose_record(store.writing(), sent(hull=hull), who="bo")
    assert made.record.hull is None
    assert "'elsewhere' is not in this database" in made.notes[0]


def test_a_kept_answer_is_found_by_its_id(store: Store) -> None:
    with store.writing() as uow:
        enquiry = uow.enquiries.add(sent()[0].form, source="mail")
        uow.answers.add(enquiry, json.dumps(document(suggestions=[suggestion(1, OTHER_KIT)])), answer_id="answer-1")
        uow.commit()
    answers = kept_answer(store.reading(), "answer-1")
    assert propose_record(store.writing(), answers, who="bo").record.configuration == OTHER_KIT
    with pytest.raises(Refused, match="no answer 'answer-2'"):
        kept_answer(store.reading(), "answer-2")
