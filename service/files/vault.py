"""Files named by their content, each once, in a folder: written whole or not at all, and never changed."""

from __future__ import annotations

import hashlib
import os
import secrets
from collections.abc import Iterator
from pathlib import Path
from typing import Literal

Health = Literal["sound", "missing", "damaged"]
_TREE = 2
_MODE = 0o600


class Vault:
    """A folder of files, in sub-folders by the first two digits of their SHA-256."""

    def __init__(self, folder: Path) -> None:
        """Name the folder; it is made when the first file is kept."""
        self.folder = folder

    def keep(self, data: bytes) -> str:
        """Keep some bytes and return their name; they are on the disk when this returns. OSError where it cannot be."""
        name = digest(data)
        path = self._path(name)
        if self.health(name) == "sound":
            return name
        path.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
        half = path.with_name(f".{name}.{os.getpid()}.{secrets.token_hex(4)}")
        try:
            with half.open("xb") as stream:
                os.fchmod(stream.fileno(), _MODE)
                stream.write(data)
                stream.flush()
                os.fsync(stream.fileno())
            half.replace(path)
            _settle(path.parent)
        finally:
            half.unlink(missing_ok=True)
        return name

    def read(self, name: str) -> bytes | None:
        """Return what is kept under a name; None where it is missing or no longer what it was."""
        try:
            data = self._path(name).read_bytes()
        except FileNotFoundError:
            return None
        return data if digest(data) == name else None

    def remove(self, name: str) -> None:
        """Take a file away; nothing happens where there is none."""
        self._path(name).unlink(missing_ok=True)

    def health(self, name: str) -> Health:
        """Return whether a file is there and what it was."""
        path = self._path(name)
        if not path.is_file():
            return "missing"
        with path.open("rb") as stream:
            return "sound" if hashlib.file_digest(stream, "sha256").hexdigest() == name else "damaged"

    def names(self) -> Iterator[str]:
        """Give the names of all that is kept."""
        for path in sorted(self.folder.glob(f"{'[0-9a-f]' * _TREE}/*")):
            if not path.name.startswith("."):
                yield path.name

    def _path(self, name: str) -> Path:
        if len(name) != hashlib.sha256().digest_size * 2 or not set(name) <= set("0123456789abcdef"):
            raise ValueError(f"{name!r} is no SHA-256")
        return self.folder / name[:_TREE] / name


def digest(data: bytes) -> str:
    """Return the name under which bytes are kept."""
    return hashlib.sha256(data).hexdigest()


def _settle(folder: Path) -> None:
    """See that the folder's own entry is on the disk too, where the system can do that."""
    if os.name != "posix":
        return
    handle = os.open(folder, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)
