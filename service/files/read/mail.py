"""RFC 5322 mail -> Letter, with the standard library and no trust in what it reads.

Headers are decoded here rather than by the newer header policy of the standard library: its parser is recursive and
raises on broken headers, which mail has.
"""

from __future__ import annotations

import email
import email.policy
from collections.abc import Iterator
from datetime import UTC, datetime
from email.message import Message
from email.utils import parseaddr, parsedate_to_datetime
from hashlib import sha256
from typing import TypeAlias

from service.core.reading.letter import Attachment, Letter
from service.files.read.attached import read_attached
from service.files.read.decode import LONGEST_HEADER, header_text, text_of
from service.files.read.errors import Unreadable
from service.files.read.html_text import to_text

Mail: TypeAlias = "Message[str, str]"
LARGEST = 25_000_000
DEEPEST = 20
MOST_PARTS = 2_000
LONGEST_NAME = 200
MOST_CARRIED = 5
FORWARDED = "---------- Forwarded message ----------"
_BROKEN = (ValueError, TypeError, LookupError, AttributeError, AssertionError)
_HEADERS = frozenset({"from", "subject", "date", "message-id", "received", "return-path", "to", "mime-version"})
_BULK = frozenset({"bulk", "list", "junk"})


def read_letter(data: bytes, *, largest: int = LARGEST, deepest: int = DEEPEST) -> Letter:
    """Return the mail in `data`: text/plain where there is one, else the HTML as text; a boat form attached is read.

    Unreadable for an empty or too large mail, for bytes without any mail header, and for parts nested too deep.
    """
    _check_size(data, largest)
    try:
        mail = email.message_from_bytes(data, policy=email.policy.compat32)
        heads = _heads(mail)
        if not heads.keys() & _HEADERS:
            raise Unreadable(
                "no mail header (From, Subject, Date ...) at the top; save the mail as .eml or send plain text"
            )
        leaves = list(_leaves(mail, deepest))
    except RecursionError:
        raise Unreadable(f"its parts are nested deeper than {deepest}; forward the text itself") from None
    name, address = _address(heads.get("from"))
    return Letter(
        body="\n\n".join([_body(leaves), *_carried(leaves, deepest)]).strip(),
        subject=header_text(heads["subject"]) or None if "subject" in heads else None,
        sender_name=name,
        sender_address=address,
        reply_to=_address(heads.get("reply-to"))[1],
        date=_date(heads.get("date")),
        message_id=next(iter(_ids(heads.get("message-id"))), None),
        in_reply_to=next(iter(_ids(heads.get("in-reply-to"))), None),
        references=_ids(heads.get("references")),
        bulk="list-unsubscribe" in heads or header_text(heads.get("precedence", "")).casefold() in _BULK,
        mailed=True,
        attachments=tuple(_attachment(part) for part in leaves if _is_attachment(part)),
    )


def _check_size(data: bytes, largest: int) -> None:
    if len(data) > largest:
        raise Unreadable(
            f"{len(data) / 1e6:.1f} MB, more than the {largest / 1e6:.0f} MB taken; send it without attachments"
        )
    if not data.strip():
        raise Unreadable("it is empty; send the mail, a text or a boat form")
    if data.count(b"\n--") > MOST_PARTS:
        raise Unreadable(f"more than {MOST_PARTS} parts; forward the text itself")


def _heads(mail: Mail) -> dict[str, str]:
    """Return the first of each header, raw, by lower-case name."""
    heads: dict[str, str] = {}
    for name, value in mail.raw_items():
        heads.setdefault(name.lower(), str(value))
    return heads


def _leaves(part: Mail, deepest: int, depth: int = 0) -> Iterator[Mail]:
    if depth > deepest:
        raise Unreadable(f"its parts are nested deeper than {deepest}; forward the text itself")
    payload = part.get_payload() if part.is_multipart() else None  # a single part's text is decoded later, with care
    if isinstance(payload, list) and _type(part) != "message/rfc822":
        for inner in payload:
            if isinstance(inner, Message):
                yield from _leaves(inner, deepest, depth + 1)
    else:
        yield part


def _type(part: Mail) -> str:
    try:
        return part.get_content_type()
    except _BROKEN:
        return "application/octet-stream"


def _name(part: Mail) -> str | None:
    try:
        name = part.get_filename()
    except _BROKEN:
        return None
    bare = header_text(name).replace("\\", "/").rsplit("/", 1)[-1] if name else ""
    return bare[:LONGEST_NAME] or None


def _is_attachment(part: Mail) -> bool:
    try:
        disposed = part.get_content_disposition() == "attachment"
    except _BROKEN:
        disposed = False
    return disposed or _name(part) is not None or not _type(part).startswith("text/")


def _payload(part: Mail) -> bytes:
    try:
        found = part.get_payload(decode=True)
        if isinstance(found, bytes):
            return found
        return part.as_bytes(policy=email.policy.compat32)  # a whole mail carried along
    except (*_BROKEN, RecursionError):
        return b""


def _attachment(part: Mail) -> Attachment:
    data = _payload(part)
    if _type(part) == "message/rfc822":
        return Attachment(_name(part), "message/rfc822", len(data), sha256(data).hexdigest(), shown=True)
    forms = read_attached(data)
    return Attachment(_name(part), _type(part)[:LONGEST_NAME], len(data), sha256(data).hexdigest(), forms)


def _body(leaves: list[Mail]) -> str:
    texts = [(_type(part), part) for part in leaves if not _is_attachment(part)]
    plain = "\n\n".join(_text(part) for kind, part in texts if kind != "text/html").strip()
    return plain or "\n\n".join(to_text(_text(part)) for kind, part in texts if kind == "text/html").strip()


def _carried(leaves: list[Mail], deepest: int) -> list[str]:
    """Return the words of whole mails that this one carries along, each under its own head, as a forward shows them."""
    shown = []
    for part in [p for p in leaves if _type(p) == "message/rfc822"][:MOST_CARRIED]:
        payload = part.get_payload() if part.is_multipart() else None
        inner = payload[0] if isinstance(payload, list) and payload else None
        if not isinstance(inner, Message):
            continue
        heads = _heads(inner)
        name, address = _address(heads.get("from"))
        body = _body(list(_leaves(inner, deepest - 1)))
        date, subject = (header_text(heads.get(key, "")) for key in ("date", "subject"))
        shown.append(f"{FORWARDED}\nFrom: {name or ''} <{address or ''}>\nDate: {date} \nSubject: {subject} \n\n{body}")
    return shown


def _text(part: Mail) -> str:
    try:
        declared = part.get_content_charset()
    except _BROKEN:
        declared = None
    return text_of(_payload(part), declared)


def _address(raw: str | None) -> tuple[str | None, str | None]:
    if raw is None:
        return None, None
    try:
        name, address = parseaddr(" ".join(raw[:LONGEST_HEADER].split()))
    except _BROKEN:
        return None, None
    return header_text(name).strip("'\" ") or None, header_text(address) or None if "@" in address else None


def _date(raw: str | None) -> datetime | None:
    try:
        when = parsedate_to_datetime(raw[:100]) if raw else None
        # A date at the edge of the calendar cannot be moved to another zone.
        return None if when is None else (when if when.tzinfo else when.replace(tzinfo=UTC)).astimezone(UTC)
    except (*_BROKEN, OverflowError):
        return None


def _ids(raw: str | None) -> tuple[str, ...]:
    words = (raw or "")[:LONGEST_HEADER].replace(">", "> ").replace("<", " <").split()
    return tuple(dict.fromkeys(w for w in words if w.startswith("<") and w.endswith(">")))
