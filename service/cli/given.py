"""What a command is given: bytes from a file or standard input."""

from __future__ import annotations

import stat
import sys
from pathlib import Path

from service.cli.faults import BadInput

LARGEST = 256_000_000
STDIN = "-"


def read(source: str, *, most: int = LARGEST) -> tuple[bytes, str]:
    """Return the bytes and the name for messages. BadInput where the file is not there, no file, or too large."""
    if source == STDIN:
        if sys.stdin is None:  # closed by whoever started us
            raise BadInput("standard input is closed. Give a file, or pipe one in")
        return _within(sys.stdin.buffer.read(most + 1), "standard input", most), "standard input"
    path = Path(source)
    try:
        if not stat.S_ISDIR(path.stat().st_mode):
            with path.open("rb") as stream:
                return _within(stream.read(most + 1), source, most), path.name
    except FileNotFoundError:
        raise BadInput(f"{source}: there is no such file. Give the path of one, or - for standard input") from None
    except PermissionError:
        raise BadInput(f"{source}: this file may not be read. Allow reading it, or give another") from None
    except (OSError, ValueError) as error:
        raise BadInput(f"{source[:200]!r}: this cannot be opened as a file ({error})") from None
    raise BadInput(f"{source}: this is a folder. Give one file in it")


def _within(data: bytes, name: str, most: int) -> bytes:
    if len(data) > most:
        raise BadInput(f"{name}: more than {most / 1e6:.0f} MB. Split it, and give the parts one by one")
    return data
