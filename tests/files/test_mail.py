# ruff: noqa: RUF001 - the marks people write are what is tested
"""Mail and other bytes -> letter or form. The mails are made here; no outside source is needed for their shape."""

from __future__ import annotations

import base64
import time
from datetime import UTC, datetime
from email.message import EmailMessage
from hashlib import sha256

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from service.core.boat import BoatForm
from service.core.form import FormError
from service.core.reading.letter import Letter
from service.files.read.enquiry import read_enquiry
from service.files.read.errors import Unreadable
from service.files.read.mail import read_letter

HEAD = b"From: =?utf-8?q?J=C3=B6rn_Ask?= <jorn@example.org>\r\nSubject: Corsa 31\r\n"
HEAD += b"Date: Mon, 2 Feb 2026 10:00:00 +0100\r\n"


def mail(*, text: str | None = "Corsa 31, 1.1 m", html: str | None = None) -> EmailMessage:
    made = EmailMessage()
    made["From"] = "Ann Ask <ann@example.org>"
    made["To"] = "sales@example.com"
    made["Subject"] = "Corsa 31 – gear"
    made["Message-ID"] = "<b@example.org>"
    made["References"] = "<a@example.org> <x@example.com>"
    made["In-Reply-To"] = "<x@example.com>"
    if text is not None:
        made.set_content(text)
    if html is not None:
        (made.set_content if text is None else made.add_alternative)(html, subtype="html")
    return made


def test_headers_and_thread() -> None:
    letter = read_letter(HEAD + b"\r\nhello\r\n")
    assert (letter.sender_name, letter.sender_address) == ("Jörn Ask", "jorn@example.org")
    assert letter.date == datetime(2026, 2, 2, 9, 0, tzinfo=UTC)
    assert letter.text == "Corsa 31\n\nhello"
    assert not letter.bulk
    assert read_letter(mail().as_bytes()).thread == ("<a@example.org>", "<x@example.com>", "<b@example.org>")
    assert read_letter(mail().as_bytes()).subject == "Corsa 31 – gear"


def test_bulk_is_seen() -> None:
    assert read_letter(b"List-Unsubscribe: <mailto:x@example.org>\r\n" + HEAD + b"\r\nbuy").bulk
    assert read_letter(b"Precedence: bulk\r\n" + HEAD + b"\r\nbuy").bulk


def test_plain_text_outranks_html() -> None:
    letter = read_letter(mail(text="plain words", html="<p>html words</p>").as_bytes())
    assert letter.body == "plain words"


def test_html_alone_becomes_lines() -> None:
    html = (
        "<html><head><style>td{width:120px}</style></head><body><p>Hello,</p><table><tr><td>Beam</td><td>2&frac12; "
        "m</td></tr><tr><th>Top of transom:</th><td>49.5&quot;</td></tr><tr><td>a</td><td>b</td><td>c</td></tr></table>"
        "<script>var x = 3;</script><blockquote>old words</blockquote>Bye<br>Ann</body></html>"
    )
    body = read_letter(mail(text=None, html=html).as_bytes()).body
    assert [line for line in body.split("\n") if line] == [
        "Hello,", "Beam: 2½ m", 'Top of transom: 49.5"', "a  b  c", "> old words", "Bye", "Ann",
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("declared", "data"),
    [
        ("utf-8", "Rückwärts 5′".encode()),
        ("iso-8859-1", "Rückwärts".encode("latin-1")),
        ("us-ascii", "Rückwärts 5’".encode("cp1252")),
        ("utf-8", "Rückwärts".encode("cp1252")),
        ("iso-8859-1", "Rückwärts".encode()),
        ("x-nonsense", "Rückwärts".encode()),
        ("unicode_escape", "Rückwärts".encode()),
    ],
)
def test_declared_wrongly_or_rightly(declared: str, data: bytes) -> None:
    raw = HEAD + f'Content-Type: text/plain; charset="{declared}"\r\n\r\n'.encode() + data
    assert read_letter(raw).body.startswith("Rückwärts")
    coded = f'Content-Type: text/plain; charset="{declared}"\r\nContent-Transfer-Encoding: base64\r\n\r\n'.encode()
    assert read_letter(HEAD + coded + base64.encodebytes(data)).body.startswith("Rückwärts")


def test_attachments_are_listed_and_not_read() -> None:
    made = mail(text="see photo")
    photo = b"\xff\xd8\xff rake 18 deg"
    made.add_attachment(photo, maintype="image", subtype="jpeg", filename="../../rake_18deg.jpg")
    made.add_attachment("top height 1.2 m", filename="notes.txt")
    letter = read_letter(made.as_bytes())
    assert letter.body == "see photo"
    assert [(a.name, a.type) for a in letter.attachments] == [
        ("rake_18deg.jpg", "image/jpeg"),
        ("notes.txt", "text/plain"),
    ]
    assert (letter.attachments[0].bytes, letter.attachments[0].sha256) == (len(photo), sha256(photo).hexdigest())


def test_a_forwarded_mail_is_an_attachment_whose_words_are_shown() -> None:
    made = mail(text="see below")
    made.add_attachment(mail(text="inner words"))
    letter = read_letter(made.as_bytes())
    assert letter.body.startswith(
        "see below\n\n---------- Forwarded message ----------\nFrom: Ann Ask <ann@example.org>"
    )
    assert letter.body.endswith("inner words")
    assert [(a.type, a.shown) for a in letter.attachments] == [("message/rfc822", True)]


def nested(depth: int) -> bytes:
    raw = HEAD
    for level in range(depth):
        raw += f'Content-Type: multipart/mixed; boundary="b{level}"\r\n\r\n--b{level}\r\n'.encode()
    return raw + b"Content-Type: text/plain\r\n\r\ndeep"


def test_limits() -> None:
    assert read_letter(nested(5)).body == "deep"
    for depth in (30, 400, 3000):
        with pytest.raises(Unreadable, match="parts"):
            read_letter(nested(depth))
    with pytest.raises(Unreadable, match="more than the 0 MB"):
        read_letter(HEAD + b"\r\n" + b"x" * 300_000, largest=200_000)
    with pytest.raises(Unreadable, match="no mail header"):
        read_letter(b"just words")


def test_read_enquiry_tells_by_content() -> None:
    assert isinstance(read_enquiry(b'{"boat": {"model": "Corsa 31"}}', "x.eml"), BoatForm)
    assert isinstance(read_enquiry(HEAD + b"\r\nhello", "x.json"), Letter)
    text = read_enquiry("Corsa 31, Höhe 1,1 m".encode(), "x")
    assert isinstance(text, Letter)
    assert text.text == "Corsa 31, Höhe 1,1 m"
    assert not text.mailed
    labelled = read_enquiry(b"Boat: Corsa 31\nDate: May\n\nhello", "x.txt")
    assert isinstance(labelled, Letter)
    assert labelled.body.startswith("Boat: Corsa 31")
    wide = read_enquiry("Corsa 31".encode("utf-16"), "x.txt")
    assert isinstance(wide, Letter)
    assert wide.body == "Corsa 31"


@pytest.mark.parametrize(
    ("data", "says"),
    [
        (b"", "empty"),
        (b" \r\n\t", "empty"),
        (b"\x89PNG\r\n\x1a\n" + b"\0" * 40, "PNG"),
        (b"%PDF-1.7", "PDF"),
        (b"hello\0there", "binary"),
        (bytes(range(256)) * 40, "binary"),
        (b'{"boat": ', "line 1, column 10"),
        (b'{"boat": {}, "boat": {}}', "twice"),
        (b'{"a":' * 100_000, "nested"),
        (b'{"boat": {"model": "\xff"}}', "UTF-8"),
    ],
)
def test_what_cannot_be_read_says_so(data: bytes, says: str) -> None:
    with pytest.raises(Unreadable, match=says) as caught:
        read_enquiry(data, "letter.eml")
    assert str(caught.value).startswith("letter.eml: ")


def test_a_form_with_faults_names_them() -> None:
    with pytest.raises(FormError, match="top_height_mm"):
        read_enquiry(b'{"transom": {"top_heigth_mm": 1000}}', "form.json")


def test_noise_is_refused_quickly() -> None:
    noise = np.random.default_rng(7).bytes(50_000_000)
    start = time.perf_counter()
    with pytest.raises(Unreadable, match=r"50\.0 MB"):
        read_enquiry(noise, "noise.bin")
    with pytest.raises(Unreadable, match="binary"):
        read_enquiry(noise[:20_000_000], "noise.bin")
    assert time.perf_counter() - start < 1.0


@pytest.mark.parametrize(
    "piece", ["<!--", "<a", "<tr><td>", "</", "&", "<![", "<blockquote>", "<!", "<?", "<a b='", "<a b='>"]
)
def test_hostile_html_takes_no_time(piece: str) -> None:
    start = time.perf_counter()
    read_letter(mail(text=None, html="<p>x</p>" + piece * (200_000 // len(piece))).as_bytes())
    assert time.perf_counter() - start < 2.0


GOOD = [
    mail(text="Höhe 1,05 m", html="<table><tr><td>a</td><td>b</td></tr></table>").as_bytes(),
    mail(text=None, html="<p>x<p>y").as_bytes(),
    HEAD
    + b"Content-Type: text/plain; charset=utf-8\r\nContent-Transfer-Encoding: quoted-printable\r\n\r\n=C3=A9=\r\n=ZZ",
]


@settings(deadline=None, derandomize=True, max_examples=250)
@given(
    st.sampled_from(GOOD),
    st.lists(st.tuples(st.integers(0, 5000), st.binary(min_size=1, max_size=4)), max_size=12),
    st.integers(0, 2000),
)
def test_mutated_mail_is_read_or_refused(data: bytes, flips: list[tuple[int, bytes]], cut: int) -> None:
    raw = bytearray(data)
    for at, what in flips:
        raw[at % len(raw) : at % len(raw) + len(what)] = what
    try:
        letter = read_enquiry(bytes(raw[: max(1, len(raw) - cut % len(raw))]), "m.eml")
    except Unreadable:
        return
    assert isinstance(letter, Letter)
    assert "\0" not in letter.text


@settings(deadline=None, derandomize=True, max_examples=250)
@given(
    st.sampled_from([b"From", b"Date", b"Subject", b"Content-Type", b"Message-ID", b"References"]),
    st.binary(max_size=80),
)
def test_any_header_value_is_read(name: bytes, value: bytes) -> None:
    raw = b"Received: x\r\n" + name + b": " + value.replace(b"\n", b" ").replace(b"\r", b" ") + b"\r\n\r\nbody"
    assert isinstance(read_letter(raw), Letter)


def test_a_character_set_that_cannot_replace_is_survived() -> None:
    mail_ = HEAD + b'Content-Type: text/plain; charset="idna"\r\n\r\nB\xf6rd 33'
    assert "33" in read_letter(mail_).body
