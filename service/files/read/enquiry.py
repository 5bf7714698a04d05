"""Any bytes somebody sends in -> a letter or a boat form, told apart by content, never by the file's name."""

from __future__ import annotations

import json
import re

from service.core.boat import BoatForm
from service.core.form import parse_form
from service.core.reading.letter import Letter
from service.files.read.decode import text_of
from service.files.read.errors import Unreadable
from service.files.read.mail import LARGEST, read_letter
from service.files.read.thread import joined, split_mailbox

SAMPLE = 65_536
MOST_CONTROL = 0.02
LONGEST_TEXT = 200_000
_MAGIC = {
    b"\x89PNG": "a PNG picture", b"\xff\xd8\xff": "a JPEG picture", b"GIF8": "a GIF picture", b"%PDF": "a PDF",
    b"PK\x03\x04": "a ZIP archive or an office document", b"\x1f\x8b": "a gzip archive", b"RIFF": "a media file",
    b"\xd0\xcf\x11\xe0": "an old office document or an Outlook .msg", b"7z\xbc\xaf": "a 7-zip archive",
}  # fmt: skip
_HEADER = re.compile(rb"([A-Za-z][A-Za-z0-9-]{0,60}):")
_SURE = frozenset({b"received", b"message-id", b"return-path", b"mime-version", b"delivered-to", b"content-type"})
_LIKELY = frozenset({b"from", b"to", b"subject", b"date", b"cc", b"reply-to"})
HEADER_LINES = 200


def read_enquiry(data: bytes, name: str) -> Letter | BoatForm:
    """Return the boat form (a JSON object), the mail, a mailbox of one thread, or any text as a letter; `name` serves messages only.

    Unreadable for what is empty, larger than 25 MB, binary, or broken JSON; FormError for a form with faults.
    """
    try:
        return _read(data)
    except Unreadable as problem:
        raise Unreadable(f"{name}: {problem}") from None


def _read(data: bytes) -> Letter | BoatForm:
    if len(data) > LARGEST:
        raise Unreadable(f"{len(data) / 1e6:.1f} MB, more than the {LARGEST / 1e6:.0f} MB taken; send the text alone")
    if not data.strip():
        raise Unreadable("it is empty; give a mail (.eml), a text or a boat form (JSON)")
    for magic, kind in _MAGIC.items():
        if data.startswith(magic):
            raise Unreadable(f"it is {kind}; give a mail (.eml), a text or a boat form (JSON)")
    wide = next(
        (codec for bom, codec in ((b"\xff\xfe", "utf-16"), (b"\xfe\xff", "utf-16")) if data.startswith(bom)), None
    )
    if wide is None:
        _refuse_binary(data[:SAMPLE])
    start = data.removeprefix(b"\xef\xbb\xbf").lstrip()
    if start.startswith(b"{"):
        return parse_form(_json(start))
    if start.startswith(b"From ") and _is_mail(start.partition(b"\n")[2]):
        return joined([read_letter(mail) for mail in split_mailbox(start)])
    if _is_mail(start):
        return read_letter(start)
    return Letter(body=text_of(data[: LONGEST_TEXT * 4], wide).strip()[:LONGEST_TEXT])


def _refuse_binary(sample: bytes) -> None:
    strange = len(sample) - len(
        sample.translate(None, bytes(b for b in range(32) if b not in b"\t\n\r\f\x1b") + b"\x7f")
    )
    if b"\0" in sample or strange > MOST_CONTROL * len(sample):
        raise Unreadable("it is binary, not text; give a mail (.eml), a text or a boat form (JSON)")


def _json(data: bytes) -> object:
    try:
        return json.loads(data.decode("utf-8"), object_pairs_hook=_once)
    except UnicodeDecodeError as problem:
        raise Unreadable(f"a boat form must be UTF-8; byte {problem.start} is not") from None
    except json.JSONDecodeError as problem:
        where = f"line {problem.lineno}, column {problem.colno}"
        raise Unreadable(f"broken JSON at {where}: {problem.msg}; mend it there") from None
    except RecursionError:
        raise Unreadable("JSON nested too deep for a boat form; see `transom schema boat-form`") from None


def _once(pairs: list[tuple[str, object]]) -> dict[str, object]:
    found: dict[str, object] = {}
    for key, value in pairs:
        if key in found:
            raise Unreadable(f"the key {key!r} stands twice in one object; keep one")
        found[key] = value
    return found


def _is_mail(data: bytes) -> bool:
    """Say whether the first lines are mail headers: one that only mail has, or two that it mostly has."""
    names: set[bytes] = set()
    for line in data[:SAMPLE].split(b"\n", HEADER_LINES)[:HEADER_LINES]:
        if line[:1] in (b" ", b"\t") and names:
            continue
        found = _HEADER.match(line)
        if found is None:
            break
        names.add(found[1].lower())
    return bool(names & _SURE) or len(names & _LIKELY) > 1
