"""Files that somebody looks at before they are taken: kept for a day at most, beside what is kept for good."""

from __future__ import annotations

from datetime import datetime, timedelta
from pathlib import Path

from service.files.vault import Vault

LONGEST = timedelta(days=1)


class Waiting:
    """Files by the SHA-256 of their content, in a folder of their own in the one of attachments.

    No backup and no export looks there, and nothing stays: personal data may be in it, so all goes when a person is erased.
    """

    def __init__(self, folder: Path) -> None:
        """Name the folder of attachments; nothing is made until a file is put."""
        self._vault = Vault(folder / "waiting")

    def put(self, data: bytes, now: datetime) -> str:
        """Keep some bytes and return their name; whatever was put longer than LONGEST before `now` goes."""
        self.forget(now)
        name = self._vault.keep(data)
        (self._vault.folder / name[:2] / name).touch()
        return name

    def get(self, name: str) -> bytes | None:
        """Return what was put; None where it is gone, or the name is none."""
        try:
            return self._vault.read(name)
        except ValueError:
            return None

    def drop(self, name: str) -> None:
        """Forget one: it was taken, or given up."""
        self._vault.remove(name)

    def forget(self, now: datetime) -> None:
        """Forget what has waited too long."""
        before = (now - LONGEST).timestamp()
        for name in self._vault.names():
            path = self._vault.folder / name[:2] / name
            if path.stat().st_mtime < before:
                self._vault.remove(name)

    def count(self) -> int:
        """Return how many wait."""
        return sum(1 for _ in self._vault.names())

    def clear(self) -> None:
        """Forget all: nobody has looked into them, so nobody can say whose names are in them."""
        for name in self._vault.names():
            self._vault.remove(name)
