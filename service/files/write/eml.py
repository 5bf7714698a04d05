"""A reply -> a mail draft, text and HTML, that any mail program opens for reading through and sending. Byte-stable.

It has no date, no sender and no id of its own: whoever sends it gives it those.
"""

from __future__ import annotations

import hashlib
import re
from collections.abc import Iterator
from dataclasses import dataclass
from email.headerregistry import Address
from email.message import EmailMessage
from email.policy import SMTP
from html import escape

from service.core.answer.letter import Block, Draft, as_text

LONGEST_NAME = 200
JOINERS = "\N{ZERO WIDTH NON-JOINER}\N{ZERO WIDTH JOINER}"
"""Signs that print nothing and still belong to a name."""
_ID = re.compile(r"<[^<>\s\x00-\x1f\x7f]{1,900}>")
_ADDRESS = re.compile(r"[A-Za-z0-9.!#$%&'*+/=?^_`{|}~-]{1,64}@[A-Za-z0-9-]{1,63}(\.[A-Za-z0-9-]{1,63})+")
_STYLE = (
    "body{font:15px/1.45 Georgia,serif;color:#111;max-width:42em}h2{font:bold 1em sans-serif;margin:1.4em 0 .3em}"
    "li{margin:.2em 0}p{margin:.5em 0}"
)


@dataclass(frozen=True)
class Thread:
    """The mail that is answered: its id, and its subject where it had one."""

    message_id: str
    subject: str | None = None


@dataclass(frozen=True)
class Recipient:
    """Whom it goes to, as they wrote themselves."""

    name: str | None
    email: str | None


def write_eml(draft: Draft, to: Recipient, thread: Thread | None = None) -> bytes:
    """Return the draft as a mail (RFC 5322, CRLF). Nothing of a name or subject can become a header or a mark.

    An address that is none is left out of `To` (the mail program will ask for one); the name is in the greeting.
    """
    return _mail((draft.subject, as_text(draft), write_html(draft), draft.language), to, thread)


@dataclass(frozen=True)
class Worded:
    """A letter in somebody's own words: `language` as a BCP 47 tag, paragraphs apart by empty lines."""

    language: str
    subject: str
    text: str


def write_words(letter: Worded, to: Recipient, thread: Thread | None = None) -> bytes:
    """Return a letter as somebody worded it as a mail, in every respect like a draft."""
    parts = [
        escape(part.strip("\n")).replace("\n", "<br>\n") for part in re.split(r"\n\s*\n", letter.text) if part.strip()
    ]
    body = "\n".join(f"<p>{part}</p>" for part in parts)
    return _mail(
        (letter.subject, letter.text, _page(letter.subject, letter.language, body), letter.language), to, thread
    )


def _mail(said: tuple[str, str, str, str], to: Recipient, thread: Thread | None) -> bytes:
    """Return a mail of subject, text, HTML and language."""
    subject, words, html, language = said
    mail = EmailMessage(policy=SMTP)
    mail["X-Unsent"] = "1"
    address = _address(to)
    if address is not None:
        mail["To"] = address
    answered = one_line(thread.subject) if thread and thread.subject else ""
    mail["Subject"] = (
        (answered if answered.lower().startswith("re:") else f"Re: {answered}") if answered else one_line(subject)
    )
    if thread and _ID.fullmatch(thread.message_id):
        mail["In-Reply-To"] = thread.message_id
        mail["References"] = thread.message_id
    text = words + "\n"
    mail.set_content(text, cte="quoted-printable")
    mail.add_alternative(html, subtype="html", cte="quoted-printable")
    mail["Content-Language"] = language
    mail.set_boundary("part-" + hashlib.sha256(text.encode("utf-8", "replace")).hexdigest()[:32])
    return mail.as_bytes()


def write_html(draft: Draft) -> str:
    """Return the letter as one HTML page that loads nothing."""
    body = "\n".join([
        f"<p>{escape(draft.greeting)}</p>",
        *(line for block in draft.blocks for line in _block(block)),
        f"<p>{'<br>'.join(map(escape, draft.closing))}</p>",
    ])  # fmt: skip
    return _page(draft.subject, draft.language, body)


def _page(subject: str, language: str, body: str) -> str:
    return (
        f'<!DOCTYPE html>\n<html lang="{escape(language)}">\n<head><meta charset="utf-8">'
        f"<title>{escape(subject)}</title><style>{_STYLE}</style></head>\n<body>\n{body}\n</body>\n</html>\n"
    )


def _block(block: Block) -> Iterator[str]:
    if block.heading:
        yield f"<h2>{escape(block.heading)}</h2>"
    for text in block.paragraphs:
        yield f"<p>{escape(text)}</p>"
    tag = "ol" if block.numbered else "ul"
    for intro, items in block.lists:
        if intro:
            yield f"<p>{escape(intro)}</p>"
        yield f"<{tag}>{''.join(f'<li>{escape(item)}</li>' for item in items)}</{tag}>"


def one_line(text: str) -> str:
    r"""Return text as a header can hold it: one line, no control characters, every letter kept.

    >>> one_line("a\r\nBcc: b\x00 c")
    'a Bcc: b c'
    """
    return " ".join("".join(c if c.isprintable() or c in JOINERS else " " for c in text).split())


def _address(to: Recipient) -> Address | None:
    email = (to.email or "").strip()
    if not _ADDRESS.fullmatch(email):
        return None
    return Address(display_name=one_line(to.name or "")[:LONGEST_NAME], addr_spec=email)
