"""Text from outside made safe for a terminal: no character in it may steer the screen or hide what is written."""

from __future__ import annotations

import json
import re

_STEERING = re.compile(r"[\x00-\x08\x0b-\x1f\x7f-\x9f\u2028\u2029\u202a-\u202e\u2066-\u2069\ud800-\udfff]")


def plain(text: str) -> str:
    r"""Return the text with line ends made one kind and every steering character shown as a replacement mark.

    >>> plain("red\x1b[31m\r\nnext")
    'red\ufffd[31m\nnext'
    """
    return _STEERING.sub("\ufffd", text.replace("\r\n", "\n"))


def as_json(document: object, *, indent: int | None = 2) -> str:
    r"""Return JSON in which letters stand as themselves and steering characters are escaped.

    >>> as_json({"a": "½ \x9b"}, indent=None)
    '{"a": "½ \\u009b"}'
    """
    written = json.dumps(document, ensure_ascii=False, indent=indent, allow_nan=False)
    # Only inside strings can these stand here, and line feeds between fields are not among them.
    return _STEERING.sub(lambda found: f"\\u{ord(found[0]):04x}", written)
