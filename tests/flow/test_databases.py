"""The same work on each kind of database gives the same."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest

from service.flow.answer import answer_file
from service.flow.export_records import export_records
from service.store.unit import Store
from tests.flow.conftest import opened, seed
from tests.support.databases import Files, Served, tidy

NOW = datetime(2024, 6, 1, tzinfo=UTC)


@pytest.fixture
def pair(files: Files, served: Served) -> Iterator[tuple[Store, Store]]:
    """Return two loaded databases, one of each kind, made in the same way."""
    with tidy(served):
        both = opened(files.like(seed)), opened(served.like(seed))
        yield both
        for store in both:
            store.close()


def test_the_demo_mail_gets_one_answer(pair: tuple[Store, Store], mails: Path) -> None:
    data = (mails / "demo.eml").read_bytes()
    one, other = (answer_file(store, data, "demo.eml", now=NOW) for store in pair)
    assert one.model_dump() == other.model_dump()
    for store in pair:
        with store.reading() as uow:
            kept = one.answers[0]
            assert kept.id is not None
            assert uow.answers.get(kept.id) == kept.model_dump_json(by_alias=True)


def test_hull_models_and_records_come_in_one_order(pair: tuple[Store, Store]) -> None:
    exports = []
    for store in pair:
        with store.reading() as uow:
            exports.append((uow.hulls.all(), uow.records.all(), export_records(uow, "jsonl")))
    assert exports[0] == exports[1]
    assert len(exports[0][0]) == 40
