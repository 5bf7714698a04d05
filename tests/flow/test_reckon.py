"""An answer worked out in a copy of the process is the one worked out here, and here is where it is done if the copy ends."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator
from contextlib import contextmanager, nullcontext
from datetime import UTC, datetime
from pathlib import Path

from service.core.answer import Answers
from service.flow.answer import answer_file
from service.flow.beside import Copy
from service.flow.papers import papers
from service.flow.reckon import Reckoner
from service.store.unit import Store

MAIL = Path(__file__).resolve().parents[2] / "seed_fixtures" / "enquiries" / "demo.eml"


def answered(store: Store, aside: Copy | None = None) -> Answers:
    return answer_file(
        store, MAIL.read_bytes(), MAIL.name, now=datetime(2026, 5, 4, tzinfo=UTC), keep=False, aside=aside
    )


class Known(Reckoner):
    """A reckoner that says which process it stands in."""

    def who(self) -> int:
        return os.getpid()


@contextmanager
def reckoner(store: Store) -> Iterator[Reckoner]:
    with store.reading() as uow:
        told = Known(uow)
        told.ready()
        yield told


def test_a_copy_works_out_what_would_be_worked_out_here(copies: Callable[[], Store]) -> None:
    store, theirs = copies(), copies()
    here = answered(store)
    copy = Copy(lambda: reckoner(theirs))
    try:
        assert answered(store, copy) == here
        assert copy.do("who") != os.getpid(), "and it is the copy that did"
        with store.reading() as uow:
            drawn = {paper.name: paper.content for paper in papers(uow, here.answers[0], aside=copy)}
            assert drawn == {paper.name: paper.content for paper in papers(uow, here.answers[0])}
    finally:
        copy.end()


def test_where_the_copy_has_ended_it_is_worked_out_here(copies: Callable[[], Store]) -> None:
    store = copies()
    copy = Copy(lambda: nullcontext(object()))  # which can do nothing that it is asked
    try:
        found = answered(store, copy)
        assert found == answered(store)
        with store.reading() as uow:
            assert "drawing.svg" in {paper.name for paper in papers(uow, found.answers[0], aside=copy)}
    finally:
        copy.end()
