"""Boat forms that come along with a mail, and several mails of one thread."""

from __future__ import annotations

import io
import json
from email.message import EmailMessage

import pytest
import xlsxwriter

from service.files.read.attached import read_attached
from service.files.read.errors import Unreadable
from service.files.read.thread import split_mailbox
from service.flow.read import read_file

FORM = {"schema": "boat-form/1", "boat": {"model": "Corvane 33", "year": 1984}, "transom": {"rake_deg": -12}}
ROWS = [
    ["field", "value", "method", "uncertainty"],
    ["boat.model", "Corvane 33", "", ""],
    ["boat.year", "1984", "", ""],
    ["transom.top_height_mm", "3 ft 6 in", "tape", "20"],
    ["obstacles", '[{"kind": "ladder", "side": "port"}]', "", ""],
]
ASK = "Hello,\n\nwhat would you suggest for this boat?\n\nAnn Ask\n"


def workbook(rows: list[list[str]]) -> bytes:
    held = io.BytesIO()
    with xlsxwriter.Workbook(held, {"in_memory": True}) as book:
        sheet = book.add_worksheet()
        for number, row in enumerate(rows):
            sheet.write_row(number, 0, row)
    return held.getvalue()


def table(rows: list[list[str]], mark: str = ",") -> bytes:
    return "\r\n".join(mark.join('"' + cell.replace('"', '""') + '"' for cell in row) for row in rows).encode()


def mail(text: str, data: bytes | None = None, name: str = "boat.csv", **heads: str) -> bytes:
    made = EmailMessage()
    made["From"], made["Subject"] = heads.get("sender", "Ann Ask <ann@example.org>"), heads.get("subject", "my boat")
    made["Date"] = heads.get("date", "Mon, 04 May 2026 10:00:00 +0000")
    made["Message-ID"] = heads.get("mid", "<1@example.org>")
    if "ref" in heads:
        made["In-Reply-To"] = heads["ref"]
    made.set_content(text)
    if data is not None:
        made.add_attachment(data, maintype="application", subtype="octet-stream", filename=name)
    return made.as_bytes()


@pytest.mark.parametrize(
    "data", [table(ROWS), table(ROWS, ";"), workbook(ROWS), table([list(r) for r in zip(*ROWS, strict=True)][:2])]
)
def test_a_form_as_a_table_is_read_either_way_round(data: bytes) -> None:
    (form,) = read_attached(data)
    assert (form.boat.model, form.boat.year) == ("Corvane 33", 1984)
    assert form.transom.top_height_mm == pytest.approx(1066.8)
    assert [o.kind for o in form.obstacles] == ["ladder"]


def test_methods_and_uncertainties_stand_beside_the_values() -> None:
    (form,) = read_attached(table(ROWS))
    assert form.methods == {"transom.top_height_mm": "tape"}
    assert form.uncertainties == {"transom.top_height_mm": 20}


@pytest.mark.parametrize(
    "data",
    [b"", b"{", b"{}", b'{"price": 3}', b"[1]", b"a,b\n1,2", b"\x00\x01", b"PK\x03\x04broken", b"boat.model,boat.year\nX,then",
     workbook([["price", "3"], ["boat", "4"]]), b"[" * 5000, json.dumps(FORM | {"colour": 1}).encode()],
)  # fmt: skip
def test_anything_else_is_no_form(data: bytes) -> None:
    assert read_attached(data) == ()


@pytest.mark.parametrize(
    ("data", "name"), [(json.dumps(FORM).encode(), "b.json"), (table(ROWS), "b.csv"), (workbook(ROWS), "b.xlsx")]
)
def test_every_value_of_an_attached_form_has_its_words(data: bytes, name: str) -> None:
    got = read_file(None, mail(ASK, data, name), "x.eml")
    assert got.form is not None
    assert got.form.boat.model == "Corvane 33"
    assert [a.read for a in got.attachments] == [True]
    assert f"[{name}]" in got.text
    for one in got.evidence:
        assert got.text[one.start : one.end] == one.text
    assert any(e.field == "boat.model" and e.text == "Corvane 33" for e in got.evidence)


def test_letter_and_form_are_joined_and_what_they_contradict_is_in_doubt() -> None:
    words = "Hello,\n\nwhat would suit our Corvane 33? The top of the transom is 1.20 m above the water, the skin 12 mm thick.\n"
    got = read_file(None, mail(words, table(ROWS)), "x.eml")
    assert got.boats == 1
    assert got.form is not None
    assert got.form.transom.thickness_mm == 12
    assert got.form.transom.top_height_mm is None
    assert [(d.field, d.why) for d in got.doubts] == [("transom.top_height_mm", "contradictory")]


THREAD = (
    mail("What would suit our Corvane 33? The top of the transom is 1.21 m above the water. It leans aft.\n\nAnn"),
    mail("How thick is the skin? Usually it is 30 mm.\n", sender="Sales <sales@example.com>", mid="<2@example.com>",
         ref="<1@example.org>", date="Mon, 04 May 2026 12:00:00 +0000", subject="Re: my boat"),
    mail("It is 14 mm thick. And the top of the transom is 1.12 m above the water.\n\nAnn", mid="<3@example.org>",
         ref="<2@example.com>", date="Tue, 05 May 2026 10:00:00 +0000", subject="Re: my boat"),
)  # fmt: skip


def mailbox(*mails: bytes) -> bytes:
    return b"".join(b"From x Mon May  4 10:00:00 2026\n" + one.replace(b"\r\n", b"\n") + b"\n" for one in mails)


@pytest.mark.parametrize("order", [(0, 1, 2), (2, 0, 1), (1, 2, 0)])
def test_a_thread_in_a_mailbox_is_one_enquiry_in_which_the_newest_words_win(order: tuple[int, ...]) -> None:
    got = read_file(None, mailbox(*(THREAD[i] for i in order)), "thread.mbox")
    assert got.boats == 1
    assert got.thread == ("<1@example.org>", "<2@example.com>", "<3@example.org>")
    assert got.form is not None
    assert got.form.transom.top_height_mm == 1120
    assert got.form.transom.thickness_mm == 14
    assert got.form.boat.stern == "raked"
    quoted = {e.field for e in got.evidence if e.quoted}
    assert {"boat.model", "boat.stern"} <= quoted
    assert "transom.top_height_mm" not in quoted


def test_a_mailbox_of_two_threads_is_refused() -> None:
    other = mail("A question about our Selkie 28.", mid="<9@example.net>", subject="another matter")
    with pytest.raises(Unreadable, match="2 threads"):
        read_file(None, mailbox(THREAD[0], other), "box")
    with pytest.raises(Unreadable, match="mails in one mailbox"):
        split_mailbox(mailbox(*[THREAD[0]] * 50))
