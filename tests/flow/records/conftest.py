"""A fleet of three on each kind of database, and answers as they would have been sent. All invented."""

from __future__ import annotations

import json
from collections.abc import Iterator
from datetime import UTC, date, datetime
from typing import Any

import pytest

from service.core.catalogue import Configuration
from service.core.form import parse_form
from service.core.proposal import SentAnswer
from service.core.record import HullModel, Record
from service.files.read.answer_file import read_answers
from service.store.unit import Store
from tests.support.desks import MakeStore, desks

KIT = Configuration(gear="gear-a", lower="low-a", upper="up-a", shaft="shaft-a")
OTHER_KIT = Configuration(gear="gear-a", lower="low-a", upper="up-b", shaft="shaft-b")
START = datetime(2026, 3, 1, 9, tzinfo=UTC)
FORM: dict[str, Any] = {
    "schema": "boat-form/1",
    "enquiry": {"dealer": "Hafenladen Süd", "reference": "SN-7"},
    "contact": {"name": "Ada Holm", "email": "ada@example.com"},
    "boat": {"model": "Tern 31", "year": 1979, "loa_mm": 9450, "stern": "raked"},
    "transom": {"top_height_mm": 900, "rake_deg": 14},
    "methods": {"*": "tape", "transom.rake_deg": "photo"},
}


def suggestion(rank: int, kit: Configuration, *, verdict: str = "fits") -> dict[str, Any]:
    spot = {"offset_mm": 0, "shaft_aft_mm": 250, "lower_height_mm": 300, "upper_height_mm": 800, "shaft_bottom_mm": -200,
            "shaft_top_mm": 1100}  # fmt: skip
    fit = {"verdict": verdict, "placement": spot, "why": "blade_root is 20 mm too deep", "checks": []}
    return {"rank": rank, "configuration": kit.model_dump(), "probability": 0.5, "fit": fit}


def document(**changed: object) -> dict[str, Any]:
    """Return an answer as it was sent."""
    return {
        "schema": "answer/1",
        "id": "answer-1",
        "enquiry": "enquiry-1",
        "form": FORM,
        "hull": {"status": "matched", "model": {"id": "tern-31", "model": "Tern 31"}, "probability": 0.99},
        "suggestions": [suggestion(1, KIT), suggestion(2, OTHER_KIT, verdict="does_not_fit")],
        "provenance": {"catalogue": "7", "records": 3, "software": "x", "seed": 1},
        **changed,
    }


def sent(**changed: object) -> tuple[SentAnswer, ...]:
    return read_answers(json.dumps(document(**changed)), "answer.json")


def record(reference: str, **changed: Any) -> Record:  # noqa: ANN401 - any field of a record
    """Return a shipped record of a Tern 31; `form` replaces parts of her form."""
    form = parse_form({**FORM, **changed.pop("form", {})})
    said = {"status": "shipped", "date": date(2025, 5, 1), "hull": "tern-31", "configuration": KIT, **changed}
    return Record(reference=reference, form=form, **said)


@pytest.fixture
def make_store(url: str) -> Iterator[MakeStore]:
    """Open further desks at one database."""
    with desks(url, START) as make:
        yield make


@pytest.fixture
def store(make_store: MakeStore) -> Store:
    """Return a database with a hull model and two records."""
    made = make_store()
    with made.writing() as uow:
        uow.hulls.put([HullModel(id="tern-31", model="Tern 31")], who="test", why="test")
        uow.records.add_many([record("2025-001"), record("2025-002", status="installed")], who="ada", why="order")
        uow.commit()
    return made
