"""People in the files that were imported: as far as such a file is text."""

from __future__ import annotations

import codecs
import zlib
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

import sqlalchemy as sa

from service.core.traces import Traces
from service.store.desk import Desk
from service.store.kept_files import KeptFiles
from service.store.schema import imports, kept_file_parts, kept_files

_OVERLAP = 400
_NOT_TEXT = (b"PK\x03\x04", b"PAR1", b"\xd0\xcf\x11\xe0", b"\x1f\x8b")


@dataclass(frozen=True)
class KeptFile:
    """A file that was imported. `found` says whether somebody stands in it, None where it could not be looked into."""

    imports: tuple[str, ...]
    names: tuple[str, ...]
    sha256: str
    found: bool | None


class KeptPeople:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk
        self._files = KeptFiles(desk)

    def look(self, traces: Traces) -> tuple[KeptFile, ...]:
        """Return the files in which somebody stands, and those that could not be looked into."""
        c = imports.c
        found = []
        for row in self._desk.all(sa.select(kept_files.c.sha256).order_by(kept_files.c.sha256)):
            said = self._stands_in(row.sha256, traces)
            if said is not False:
                of = self._desk.all(sa.select(c.id, c.name).where(c.sha256 == row.sha256).order_by(c.id))
                names = tuple(one.name for one in of)
                found.append(KeptFile(tuple(one.id for one in of), names, row.sha256, said))
        return tuple(found)

    def redact(self, digest: str, traces: Traces) -> None:
        """Keep the file without them in its place; rows and columns stay where they are, the hash becomes another."""
        data = self._files.get(digest)
        encoding = _encoding(data)
        fresh = traces.blanked(data.decode(encoding)).encode(encoding)
        name = self._files.keep(fresh)
        if name == digest:
            return
        run = self._desk.connection.execute
        run(imports.update().where(imports.c.sha256 == digest).values(sha256=name))
        run(kept_file_parts.delete().where(kept_file_parts.c.sha256 == digest))
        run(kept_files.delete().where(kept_files.c.sha256 == digest))

    def _stands_in(self, digest: str, traces: Traces) -> Literal[True, False] | None:
        before, encoding = b"", ""
        for data in self._parts(digest):
            if not encoding:
                if data.startswith(_NOT_TEXT):
                    return None
                encoding = _encoding(data[:_OVERLAP])
            if traces.found((before + data).decode(encoding, "replace")):
                return True
            before = data[-_OVERLAP:]
        return False

    def _parts(self, digest: str) -> Iterator[bytes]:
        c = kept_file_parts.c
        for row in self._desk.all(sa.select(c.number).where(c.sha256 == digest).order_by(c.number)):
            part = self._desk.one(sa.select(c.data).where(c.sha256 == digest, c.number == row.number))
            yield zlib.decompress(part.data) if part is not None else b""


def _encoding(data: bytes) -> str:
    """Return what the file is read as; what is no Unicode is read byte by byte, and can be written back the same."""
    for mark, name in ((codecs.BOM_UTF16_LE, "utf-16-le"), (codecs.BOM_UTF16_BE, "utf-16-be")):
        if data.startswith(mark):
            return name
    try:
        codecs.getincrementaldecoder("utf-8")().decode(data)
    except UnicodeDecodeError:
        return "latin-1"
    return "utf-8"
