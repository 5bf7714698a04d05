"""Keys to the service: what they look like, and what they open."""

from __future__ import annotations

import hashlib
import re
from zlib import crc32

SCOPES = ("enquiries:write", "enquiries:read", "records:read", "records:write", "reports:read", "admin")
"""What a key may open; `admin` opens everything."""
LETTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz"
ID_LETTERS, SECRET_LETTERS, CHECK_LETTERS = 12, 43, 6
RANDOM_BYTES = 64
_KEY = re.compile(r"tk_([a-z0-9]{12})_([0-9A-Za-z]{43})([0-9A-Za-z]{6})")


def minted(random: bytes) -> tuple[str, str]:
    """Return a new key's id and its whole text, made from RANDOM_BYTES that nobody can guess.

    43 letters out of 62 hold 256 random bits. ValueError for fewer bytes.

    >>> made, text = minted(bytes(range(64)))
    >>> text.startswith(f"tk_{made}_"), key_id(text) == made, key_id(text[:-1] + "!"), len(text)
    (True, True, None, 65)
    """
    if len(random) < RANDOM_BYTES:
        raise ValueError(f"{len(random)} random bytes; a key takes {RANDOM_BYTES}")
    made = _written(int.from_bytes(random[:16]), LETTERS[:10] + LETTERS[36:], ID_LETTERS)
    stem = f"tk_{made}_{_written(int.from_bytes(random[16:]), LETTERS, SECRET_LETTERS)}"
    return made, stem + _check(stem)


def key_id(text: str) -> str | None:
    """Return the id a key names, None for what is no key: the checksum tells a mistyped one without a look anywhere."""
    found = _KEY.fullmatch(text)
    return found[1] if found and _check(text[:-CHECK_LETTERS]) == found[3] else None


def digest(text: str) -> str:
    """Return what is kept of a key: its SHA-256. It holds enough random letters to need no slow hash."""
    return hashlib.sha256(text.encode()).hexdigest()


def _check(stem: str) -> str:
    return _written(crc32(stem.encode()), LETTERS, CHECK_LETTERS)


def _written(number: int, letters: str, length: int) -> str:
    text = ""
    for _ in range(length):
        number, place = divmod(number, len(letters))
        text += letters[place]
    return text
