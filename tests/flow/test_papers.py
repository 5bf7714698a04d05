"""What leaves with an answer: every paper by its name, in the enquirer's language, the same for the same answer."""

from __future__ import annotations

import hashlib
from datetime import UTC, datetime
from email import message_from_bytes, policy
from pathlib import Path

import pytest

from service.core.answer import Answer
from service.flow.answer import answer_file
from service.flow.papers import MARK, NAMES, mark_of, paper, papers
from service.store.unit import Store

NOW = datetime(2026, 1, 20, 12, 0, tzinfo=UTC)


def answered(store: Store, mails: Path, name: str) -> Answer:
    return answer_file(store, (mails / name).read_bytes(), name, now=NOW).answers[0]


def test_a_mail_is_answered_in_its_thread_and_its_language(
    seeded: Store, mails: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    one = answered(seeded, mails, "german.eml")
    with seeded.reading() as uow:
        made = {p.name: p for p in papers(uow, one)}
        monkeypatch.setattr("os.cpu_count", lambda: 1)
        again = {p.name: p for p in papers(uow, one)}
        english = paper(uow, one, "reply.txt", language="en-US")
    assert list(made) == [name for name in NAMES if name in made]
    assert set(NAMES) - set(made) <= {"lower-pad.stl", "upper-pad.stl"}
    assert made["sheet.pdf"].content.startswith(b"%PDF-")
    assert made == again, "the same answer gives the same bytes, made in one process or in two"
    asked = message_from_bytes((mails / "german.eml").read_bytes(), policy=policy.default)
    mail = message_from_bytes(made["reply.eml"].content, policy=policy.default)
    assert mail["In-Reply-To"] == mail["References"] == asked["Message-ID"]
    assert mail["Subject"] == f"Re: {asked['Subject']}"
    assert mail["Content-Language"] == "de"
    text = made["reply.txt"].content.decode()
    assert f"Guten Tag {one.form.contact.name}," in text
    assert one.questions
    assert all(question in text for question in one.questions), "the answer asks in the writer's language"
    assert english is not None
    assert b"We suggest gear" in english.content
    assert b" ft " in english.content


def test_the_mark_of_an_answer_finds_it(seeded: Store, mails: Path) -> None:
    one = answered(seeded, mails, "one-liner.eml")
    with seeded.reading() as uow:
        mark = mark_of(uow, one)
        assert one.id is not None
        document = uow.answers.get(one.id)
        assert document is not None
        assert mark == hashlib.sha256(document.encode()).hexdigest()[:MARK]
        assert uow.answers.by_hash(mark) == (one.id,)
        assert uow.answers.by_hash("0" * 12) == ()
        unkept = one.model_copy(update={"id": None})
        assert len(mark_of(uow, unkept)) == MARK


def test_a_paper_of_no_name_is_a_fault(seeded: Store, mails: Path) -> None:
    one = answered(seeded, mails, "one-liner.eml")
    with seeded.reading() as uow, pytest.raises(KeyError, match="nonsense"):
        paper(uow, one, "nonsense")


def test_where_nothing_fits_there_is_a_sheet_and_nothing_to_pack(seeded: Store, mails: Path) -> None:
    one = answered(seeded, mails, "dealer-list.eml")
    assert not one.fits
    with seeded.reading() as uow:
        made = {p.name for p in papers(uow, one)}
        assert {"reply.eml", "sheet.pdf", "drawing.svg", "drawing.dxf"} <= made
        assert not {"packing.pdf", "packing.csv", "picking.csv", "prices.csv", "packing.xlsx"} & made
        assert paper(uow, one, "packing.pdf") is None
