"""Mails spoiled in every way that wires, filters and people spoil them; the same seed spoils the same way."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from email.message import EmailMessage
from functools import cache
from pathlib import Path

import numpy as np

ROOT = Path(__file__).parents[2]
FOLDERS = (
    ROOT / "seed_fixtures/enquiries",
    ROOT / "tests/core/reading/mails/tuned",
    ROOT / "tests/core/reading/mails/apart",
)
DEEPEST = 200
LONGEST_LINE = 20_000_000
SHARE_OF_GIANTS = 0.002
Spoil = Callable[[bytes, np.random.Generator], bytes]


@cache
def whole_mails() -> tuple[bytes, ...]:
    """Every mail of the project, unspoiled, in order of name."""
    return tuple(file.read_bytes() for folder in FOLDERS for file in sorted(folder.glob("*.eml")))


def spoiled(seed: int, mails: Sequence[bytes] | None = None) -> bytes:
    """Return one spoiled mail; some twice or three times spoiled."""
    rng = np.random.default_rng(seed)
    mails = mails or whole_mails()
    data = mails[int(rng.integers(len(mails)))]
    for _ in range(int(rng.integers(1, 4))):
        data = WAYS[int(rng.integers(len(WAYS)))](data, rng)
    return giant(data, rng) if rng.random() < SHARE_OF_GIANTS else data


def _flipped(data: bytes, rng: np.random.Generator) -> bytes:
    found = bytearray(data)
    for at in rng.integers(len(found), size=int(rng.integers(1, 60))) if found else ():
        found[at] = int(rng.integers(256))
    return bytes(found)


def _cut(data: bytes, rng: np.random.Generator) -> bytes:
    low, high = sorted(int(i) for i in rng.integers(len(data) + 1, size=2))
    return data[:low] + data[high:]


def _lines_lost(data: bytes, rng: np.random.Generator) -> bytes:
    return b"\n".join(line for line in data.split(b"\n") if rng.random() > 0.2)


def _lines_mixed(data: bytes, rng: np.random.Generator) -> bytes:
    lines = data.split(b"\n")
    rng.shuffle(lines)
    return b"\n".join(lines)


def _repeated(data: bytes, rng: np.random.Generator) -> bytes:
    low, high = sorted(int(i) for i in rng.integers(len(data) + 1, size=2))
    return data[:high] + data[low:high] * int(rng.integers(1, 30)) + data[high:]


def _charset(data: bytes, rng: np.random.Generator) -> bytes:
    names = (b"utf-16", b"shift_jis", b"utf-7", b"", b"x-unknown", b"us-ascii", b"big5", b"\xff\xfe", b"rot13", b"idna")
    return data.replace(b"utf-8", names[int(rng.integers(len(names)))])


def _encoding(data: bytes, rng: np.random.Generator) -> bytes:
    ways = (b"base64", b"8bit", b"uuencode", b"x-none", b"quoted-printable", b"7bit")
    return data.replace(b"quoted-printable", ways[int(rng.integers(len(ways)))])


def nested(data: bytes, rng: np.random.Generator) -> bytes:
    """Put the mail into mails in mails, up to DEEPEST deep."""
    for level in range(int(rng.integers(1, DEEPEST))):
        mark = b"b%d" % level
        head = (
            b"From: a@example.org\r\nSubject: in\r\nMIME-Version: 1.0\r\nContent-Type: multipart/mixed; boundary="
            + mark
        )
        kind = b"message/rfc822" if rng.random() < 0.5 else b"text/plain"
        data = (
            head
            + b"\r\n\r\n--"
            + mark
            + b"\r\nContent-Type: "
            + kind
            + b"\r\n\r\n"
            + data
            + b"\r\n--"
            + mark
            + b"--\r\n"
        )
        if len(data) > LONGEST_LINE:
            break
    return data


def _parts(data: bytes, rng: np.random.Generator) -> bytes:
    made = EmailMessage()
    made["From"], made["Subject"] = "ann@example.org", "parts"
    made.set_content("see the parts")
    for index in range(int(rng.integers(1, 20))):
        made.add_attachment(data[:5_000], maintype="application", subtype="octet-stream", filename=f"{index}.csv")
    return made.as_bytes()


def _html(data: bytes, rng: np.random.Generator) -> bytes:
    tags = (b"<td>", b"<table>", b"<!--", b"<blockquote>", b'<a href="', b"&#", b"<style>", b"</")
    pieces = [tags[int(i)] for i in rng.integers(len(tags), size=40)]
    return (
        data.replace(b"text/plain", b"text/html").replace(b" ", pieces[0]).replace(b"\n", b"\n" + b"".join(pieces[1:4]))
    )


def giant(data: bytes, rng: np.random.Generator) -> bytes:
    """Add one line of 20 MB: digits, words, quotation signs or marks."""
    pieces = (b"1 m ", b"transom ", b"> ", b"<td>", b"9", b"=C3", b"((", b"a@", b"wrote: ", b"5' ")
    piece = pieces[int(rng.integers(len(pieces)))]
    return data + b"\r\n" + (piece * (LONGEST_LINE // len(piece)))[: LONGEST_LINE - len(data) % 7]


WAYS: tuple[Spoil, ...] = (
    _flipped, _flipped, _cut, _lines_lost, _lines_mixed, _repeated, _charset, _encoding, nested, _parts, _html,
)  # fmt: skip
