"""Writing a backup: one zip file, written under another name and given its own only when it is whole."""

from __future__ import annotations

import fcntl
import glob
import hashlib
import os
import secrets
import zipfile
from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import Any

from service.core.archive import Column, FileMember, Manifest, TableMember, written

MANIFEST = "manifest.json"
_HALF = ".half"
_MODE = 0o600
_LEVEL = 3
_EPOCH = (1980, 1, 1, 0, 0, 0)
"""When every member says it is from: the moment stands in the manifest."""
_STEP = 1000


class ArchiveWriter:
    """An archive that is being written, member by member; the manifest comes last."""

    def __init__(self, pack: zipfile.ZipFile) -> None:
        """Keep the file it goes into."""
        self._pack = pack

    def table(
        self, name: str, columns: Sequence[Column], rows: Iterable[Sequence[Any]], progress: Callable[[int], object]
    ) -> TableMember:
        """Write the rows of a table, one at a time; `progress` is told how many more were written."""
        kinds, hashed, count, size = [column.kind for column in columns], hashlib.sha256(), 0, 0
        with self._pack.open(_member(f"tables/{name}.jsonl", zipfile.ZIP_DEFLATED), "w", force_zip64=True) as stream:
            for count, row in enumerate(rows, start=1):
                line = written(row, kinds)
                hashed.update(line)
                size += len(line)
                stream.write(line)
                if count % _STEP == 0:
                    progress(_STEP)
        progress(count % _STEP)
        return TableMember(name=name, columns=tuple(columns), rows=count, bytes=size, sha256=hashed.hexdigest())

    def file(self, sha256: str, data: bytes) -> FileMember:
        """Write a file; photos and drawings are packed already, so they stand as they are."""
        self._pack.writestr(_member(f"files/{sha256}", zipfile.ZIP_STORED), data)
        return FileMember(sha256=sha256, bytes=len(data))

    def manifest(self, manifest: Manifest) -> None:
        """Write what is in the archive."""
        text = manifest.model_dump_json(by_alias=True, indent=1)
        self._pack.writestr(_member(MANIFEST, zipfile.ZIP_DEFLATED), text.encode())


@contextmanager
def writing(path: Path, *, overwrite: bool, check: Callable[[Path], object]) -> Iterator[ArchiveWriter]:
    """Yield what an archive is written with; it has its name on leaving, where `check` raised nothing at it.

    FileExistsError where there is one and it is not to be overwritten; OSError where it cannot be written. Whatever
    goes wrong, nothing stands under the name that did not stand there before. What an earlier one left that was killed
    is taken away: nobody holds it any more.
    """
    if not overwrite and path.exists():
        raise FileExistsError(path)
    _sweep(path)
    half = path.with_name(f".{path.name}.{os.getpid()}.{secrets.token_hex(4)}{_HALF}")
    try:
        with half.open("xb") as stream:
            fcntl.flock(stream, fcntl.LOCK_EX)  # held as long as this process lives
            os.fchmod(stream.fileno(), _MODE)  # people's data and the secrets of webhooks are in it
            with zipfile.ZipFile(stream, "w", compresslevel=_LEVEL) as pack:
                yield ArchiveWriter(pack)
            stream.flush()
            os.fsync(stream.fileno())
        check(half)
        _name(half, path, overwrite=overwrite)
    finally:
        half.unlink(missing_ok=True)


def _sweep(path: Path) -> None:
    """Take away what stands half written beside a path and whose writer is gone."""
    for left in path.parent.glob(f".{glob.escape(path.name)}.*{_HALF}"):
        with suppress(OSError), left.open("rb") as stream:
            fcntl.flock(stream, fcntl.LOCK_EX | fcntl.LOCK_NB)
            left.unlink()


def _name(half: Path, path: Path, *, overwrite: bool) -> None:
    """Give the archive its name; one that appeared meanwhile is left alone, where the system can see to that."""
    if not overwrite:
        with suppress(OSError, NotImplementedError):
            os.link(half, path)
            return
        if path.exists():
            raise FileExistsError(path)
    half.replace(path)


def _member(name: str, how: int) -> zipfile.ZipInfo:
    info = zipfile.ZipInfo(name, _EPOCH)
    info.compress_type, info.external_attr = how, 0o100600 << 16
    return info
