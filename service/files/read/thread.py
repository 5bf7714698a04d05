"""Several mails of one thread -> one letter: the writer's newest words first, everything older quoted below them."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from datetime import UTC, datetime

from service.core.reading.letter import Letter
from service.files.read.errors import Unreadable

MOST_MAILS = 40
MOST_QUOTED = 8
_AGAIN = re.compile(r"\s{0,3}(?:(?:re|aw|sv|antw|ang|r|res|rif|vs|fwd?|wg|tr|rv|i|vb)\s?:\s{0,3}){1,6}", re.IGNORECASE)
_START = datetime(1970, 1, 1, tzinfo=UTC)


def split_mailbox(data: bytes) -> list[bytes]:
    """Return the mails of a mailbox file (each after a line "From ..."); Unreadable for too many."""
    starts = [0, *(found.start() + 1 for found in re.finditer(rb"\n\nFrom |\r\n\r\nFrom ", data))]
    if len(starts) > MOST_MAILS:
        raise Unreadable(f"{len(starts)} mails in one mailbox, more than the {MOST_MAILS} taken; give one thread alone")
    ends = [*starts[1:], len(data)]
    mails = [data[a:b].lstrip(b"\r\n").partition(b"\n")[2] for a, b in zip(starts, ends, strict=True)]
    return [re.sub(rb"(?m)^>(>{0,9}From )", rb"\1", mail) for mail in mails]


def joined(letters: Sequence[Letter]) -> Letter:
    """Return the thread as one letter from whoever began it. Unreadable where the mails are of several threads.

    The newest mail of that writer speaks; each older one is quoted once deeper, with who wrote it. What others wrote
    after it is left out: it says nothing of the boat that its owner did not.
    """
    ordered = sorted(letters, key=lambda one: one.date or _START)
    _one_thread(ordered)
    writer = ordered[0].sender_address
    newest = max(i for i, one in enumerate(ordered) if one.sender_address == writer)
    speaking = ordered[newest]
    body = [_own(speaking.body)]
    for depth, one in enumerate(reversed(ordered[:newest]), start=1):
        mark = ">" * min(depth, MOST_QUOTED)
        when = f"{one.date:%Y-%m-%d}" if one.date else "Earlier"
        head = f"{when}, {one.sender_name or ''} <{one.sender_address or 'unknown'}> wrote:"
        before = ">" * min(depth - 1, MOST_QUOTED)
        body.append(f"{before} {head}".strip() + "\n" + "\n".join(f"{mark} {ln}" for ln in _own(one.body).split("\n")))
    ids = tuple(dict.fromkeys(i for one in ordered for i in one.thread))
    files = tuple({a.sha256: a for one in ordered[: newest + 1] for a in one.attachments}.values())
    subject = next((one.subject for one in ordered if one.subject), None)
    return replace(
        speaking, body="\n\n".join(body), subject=subject, attachments=files, references=ids,
        bulk=all(one.bulk for one in ordered),
    )  # fmt: skip


def _own(body: str) -> str:
    """Return a mail without what it quotes of the mails before it: those stand in the thread themselves.

    Answers under a quoted question keep it, for they say nothing without it.
    """
    lines = body.split("\n")
    end = len(lines)
    while end and (lines[end - 1].startswith(">") or not lines[end - 1].strip()):
        end -= 1
    return "\n".join(lines[:end])


def _one_thread(letters: Sequence[Letter]) -> None:
    known: set[str] = set()
    subjects: set[str] = set()
    apart = 0
    for one in letters:
        plain = _AGAIN.sub("", one.subject or "").strip().casefold()
        if known and not (known & set(one.thread) or (plain and plain in subjects)):
            apart += 1
        known.update(one.thread)
        subjects.add(plain)
    if apart:
        raise Unreadable(f"the mails are of {apart + 1} threads; give each thread in a file of its own")
