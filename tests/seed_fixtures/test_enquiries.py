"""The demo's mails are mails: CRLF, readable by the standard parser, invented addresses."""

from __future__ import annotations

import re
from email import policy
from email.parser import BytesParser
from pathlib import Path

import pytest

from seed_fixtures.generate import HERE, hull_rows

MAILS = sorted((HERE / "enquiries").glob("*.eml"))


def _text(path: Path) -> str:
    message = BytesParser(policy=policy.default).parsebytes(path.read_bytes())
    body = message.get_body(("plain", "html"))
    assert body is not None
    return f"{message['subject']}\n{body.get_content()}"


def test_there_are_a_dozen_and_the_default_one() -> None:
    assert len(MAILS) >= 12
    assert "demo.eml" in {path.name for path in MAILS}


@pytest.mark.parametrize("path", MAILS, ids=lambda path: path.stem)
def test_lines_end_as_mail_lines_do_and_addresses_are_nobodys(path: Path) -> None:
    raw = path.read_bytes()
    assert raw.replace(b"\r\n", b"").count(b"\n") == 0
    assert raw.isascii()
    hosts = re.findall(r"@([\w.-]+)", raw.decode("ascii") + _text(path))
    assert set(hosts) <= {"example.com", "example.org", "example.net"}


@pytest.mark.parametrize("path", MAILS, ids=lambda path: path.stem)
def test_each_speaks_of_a_hull_model_of_the_list(path: Path) -> None:
    text = _text(path)
    assert [row["model"] for row in hull_rows() if row["model"] in text]


def test_the_default_one_leaves_something_to_ask() -> None:
    text = _text(HERE / "enquiries" / "demo.eml")
    assert "985 mm" in text
    assert "23 degrees" in text
    assert "I do not know where the lower edge" in text
