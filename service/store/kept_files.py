"""Files as they came, each once, named by the hash of its content.

They stand in the database and not in a folder beside it: a file is there exactly when the import is that reads it (one
transaction), a desk can go on with what another desk began, and a backup of the database is one of the files too.
"""

from __future__ import annotations

import hashlib
import zlib
from itertools import count

import sqlalchemy as sa

from service.store.desk import Desk
from service.store.errors import Conflict
from service.store.schema import kept_file_parts, kept_files

PART = 4_000_000
_LEVEL = 1  # half the size for a tenth of the time that the best packing takes


class KeptFiles:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def keep(self, data: bytes) -> str:
        """Keep the content and return its hash; nothing is written where it is known."""
        digest = hashlib.sha256(data).hexdigest()
        c = kept_files.c
        if self._desk.one(sa.select(c.sha256).where(c.sha256 == digest)) is None:
            row = {"sha256": digest, "bytes": len(data), "created": self._desk.now()}
            self._desk.write(kept_files.insert(), [row])
            for number, start in enumerate(range(0, len(data), PART)):
                packed = zlib.compress(data[start : start + PART], _LEVEL)
                self._desk.write(kept_file_parts.insert(), [{"sha256": digest, "number": number, "data": packed}])
        return digest

    def get(self, digest: str) -> bytes:
        """Return the content with this hash. Conflict where it is not there whole."""
        c = kept_file_parts.c
        found, seen = bytearray(), hashlib.sha256()
        for number in count():
            row = self._desk.one(sa.select(c.data).where(c.sha256 == digest, c.number == number))
            if row is None:
                break
            part = zlib.decompress(row.data)
            seen.update(part)
            found += part
        if seen.hexdigest() != digest:
            raise Conflict("a kept file is not what it was", digest, "Restore the database from a backup")
        return bytes(found)
