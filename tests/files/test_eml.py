"""A reply as a mail draft: read back by the standard library's own parser, whatever somebody is called."""

from __future__ import annotations

from email import message_from_bytes, policy
from email.header import decode_header, make_header
from email.message import EmailMessage
from email.utils import parseaddr
from html.parser import HTMLParser

import pytest
from hypothesis import given
from hypothesis import strategies as st

from service.core.answer.letter import Block, Draft, as_text
from service.files.write.eml import Recipient, Thread, write_eml, write_html

HOSTILE = (
    "Ada\r\nBcc: everybody@example.com",
    "Ada\nContent-Type: text/html\n\n<script>alert(1)</script>",
    "<script>alert(1)</script>",
    '"><img src=x onerror=alert(1)>',
    "Ada\x00\x1b[31m\u2028Bcc: x@example.com",
    "=?utf-8?q?Bcc=3A_x?=",
    "a, b@example.com",
)
NAMES = (
    "Ναυσικά Παπαδοπούλου", "Фёдор Чайка", "山田太郎", "נעמי כהן", "أمينة", "Ñuño Ærø-Åström",
    "O\u2019Brien, Ada", "\U0001f469\u200d\u2708 Ada", "x" * 200, "Ж" * 200,
)  # fmt: skip


def draft(name: str = "Ada") -> Draft:
    block = Block("Why", ("Two & two < five",), (("These:", (f"one for {name}", "two")),), numbered=True)
    return Draft("de", f"Gear for {name}", f"Dear {name},", (block,), ("Regards,", "The desk"))


def parsed(data: bytes) -> EmailMessage:
    mail = message_from_bytes(data, policy=policy.default)
    assert isinstance(mail, EmailMessage)
    return mail


def bodies(mail: EmailMessage) -> tuple[str, str]:
    plain, html = mail.get_body(("plain",)), mail.get_body(("html",))
    assert isinstance(plain, EmailMessage)
    assert isinstance(html, EmailMessage)
    return str(plain.get_content()).replace("\r\n", "\n"), str(html.get_content()).replace("\r\n", "\n")


def displayed(data: bytes) -> str:
    """Return the name in To: RFC 2047 words side by side are one text (3.11's own header parser parts them)."""
    raw = str(message_from_bytes(data, policy=policy.compat32)["To"])
    return str(make_header(decode_header(parseaddr(raw.replace("\r\n", ""))[0])))


class _Tags(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.tags: list[str] = []
        self.text = ""

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append(tag)
        assert not any(name.startswith("on") for name, _ in attrs)

    def handle_data(self, data: str) -> None:
        self.text += data


OWN = {"html", "head", "meta", "title", "style", "body", "p", "h2", "ol", "ul", "li", "br"}


def test_the_draft_goes_to_who_asked_and_into_their_thread() -> None:
    mail = parsed(write_eml(draft(), Recipient("Ada", "ada@example.org"), Thread("<m1@example.net>", "My boat")))
    assert mail["To"] == "Ada <ada@example.org>"
    assert mail["Subject"] == "Re: My boat"
    assert mail["In-Reply-To"] == mail["References"] == "<m1@example.net>"
    assert mail["X-Unsent"] == "1"
    assert mail["Content-Language"] == "de"
    assert mail.get_content_type() == "multipart/alternative"
    plain, html = bodies(mail)
    assert plain == as_text(draft()) + "\n"
    assert html == write_html(draft())
    assert (
        parsed(write_eml(draft(), Recipient(None, None), Thread("<m1@example.net>", "RE: My boat")))["Subject"]
        == "RE: My boat"
    )
    assert parsed(write_eml(draft(), Recipient(None, None)))["Subject"] == "Gear for Ada"


@pytest.mark.parametrize("name", [*HOSTILE, *NAMES])
def test_a_name_is_never_lost_and_never_more_than_a_name(name: str) -> None:
    data = write_eml(draft(name), Recipient(name, "ada@example.org"), Thread("<m1@example.net>", name))
    mail = parsed(data)
    assert set(mail.keys()) == {
        "X-Unsent", "To", "Subject", "In-Reply-To", "References", "Content-Language", "MIME-Version", "Content-Type",
    }  # fmt: skip
    assert [a.addr_spec for a in mail["To"].addresses] == ["ada@example.org"]
    if name in NAMES:
        assert displayed(data) == name
        assert mail["Subject"] == f"Re: {name}"
    plain, html = bodies(mail)
    shown = _Tags()
    shown.feed(html)
    assert set(shown.tags) <= OWN
    if name in NAMES:
        assert f"one for {name}" in plain
        assert f"one for {name}" in shown.text


@given(name=st.text(max_size=220), subject=st.text(max_size=220))
def test_no_text_makes_a_header_or_a_mark(name: str, subject: str) -> None:
    mail = parsed(write_eml(draft(name), Recipient(name, "ada@example.org"), Thread("<m1@example.net>", subject)))
    assert len(mail.keys()) == 8
    assert [a.addr_spec for a in mail["To"].addresses] == ["ada@example.org"]
    shown = _Tags()
    shown.feed(bodies(mail)[1])
    assert set(shown.tags) <= OWN


@pytest.mark.parametrize(
    "email", [None, "", "nobody", "a@b", "a@example.org\r\nBcc: x@example.com", "<a@example.org>", "a b@example.org"]
)
def test_what_is_no_address_is_left_out(email: str | None) -> None:
    mail = parsed(write_eml(draft(), Recipient("Ada", email)))
    assert mail["To"] is None
    assert mail["Bcc"] is None


def test_a_message_id_that_is_none_makes_no_header() -> None:
    mail = parsed(write_eml(draft(), Recipient(None, None), Thread("<m1@x>\r\nBcc: x@example.com", None)))
    assert mail["In-Reply-To"] is None
    assert mail["Bcc"] is None


def test_the_same_draft_gives_the_same_bytes() -> None:
    to = Recipient("Ada", "ada@example.org")
    assert write_eml(draft(), to) == write_eml(draft(), to)
    assert b"\r\n" in write_eml(draft(), to)
