"""Reading a backup, which may come from anywhere: nothing in it is believed before it was counted and hashed."""

from __future__ import annotations

import hashlib
import json
import stat
import zipfile
import zlib
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import IO, Any, NamedTuple

from pydantic import ValidationError

from service.core.archive import SCHEMA, FileMember, Manifest, TableMember, read
from service.files.read.errors import Unreadable
from service.files.read.media import LARGEST

MANIFEST = "manifest.json"
_LARGEST_MANIFEST = 64_000_000
_LONGEST_LINE = 128_000_000
"""One row; the largest are parts of imported files, of 4 MB, and answers."""
_DENSEST, _FREE = 300, 256_000_000
"""How many times its size an archive may unpack to, beyond a size that does no harm."""
_BROKEN = (zipfile.BadZipFile, zlib.error, EOFError, NotImplementedError, RuntimeError, OSError)
_KINDS = (zipfile.ZIP_STORED, zipfile.ZIP_DEFLATED)
_MOST_FAULTS = 50


class Fault(NamedTuple):
    """What is wrong, and in which member."""

    where: str
    what: str


class Archive:
    """An archive whose manifest was read and whose members are those that it names."""

    def __init__(self, pack: zipfile.ZipFile, manifest: Manifest) -> None:
        """Keep both."""
        self._pack, self.manifest = pack, manifest

    def rows(self, table: TableMember) -> Iterator[tuple[list[Any], int]]:
        """Give each row with its size in bytes. Unreadable, at the latest at the end, where they are not those counted."""
        name = f"tables/{table.name}.jsonl"
        kinds, hashed, count, left = [column.kind for column in table.columns], hashlib.sha256(), 0, table.bytes
        with _told(name), self._pack.open(name) as stream:
            while left and (line := stream.readline(min(left, _LONGEST_LINE) + 1)):
                count, left = count + 1, left - len(line)
                if left < 0 or not line.endswith(b"\n"):
                    raise Unreadable(f"{name}: row {count} is longer than it may be, or has no end")
                hashed.update(line)
                try:
                    row = read(line, kinds)
                except (ValueError, RecursionError) as error:
                    raise Unreadable(f"{name}: row {count}: {error}") from error
                yield row, len(line)
            _ended(stream, name, left)
        if count != table.rows:
            raise Unreadable(f"{name}: there are {count} rows, and {table.rows} were written")
        if hashed.hexdigest() != table.sha256:
            raise Unreadable(f"{name}: this is not what was written: its SHA-256 is another")

    def file(self, file: FileMember) -> bytes:
        """Return a file's content; Unreadable where it is not what its name says."""
        name = f"files/{file.sha256}"
        with _told(name), self._pack.open(name) as stream:
            data = stream.read(file.bytes)
            _ended(stream, name, file.bytes - len(data))
        if hashlib.sha256(data).hexdigest() != file.sha256:
            raise Unreadable(f"{name}: this is not what was written: its SHA-256 is another")
        return data

    def faults(self, progress: Callable[[int], object]) -> list[Fault]:
        """Return what is wrong with any member, each read from end to end; `progress` is told how many more rows were."""
        found: list[Fault] = []
        for table in self.manifest.tables:
            try:
                for number, _ in enumerate(self.rows(table), start=1):
                    if number % 1000 == 0:
                        progress(1000)
                progress(table.rows % 1000)
            except Unreadable as error:
                found.append(_fault(error))
        for file in self.manifest.files:
            try:
                self.file(file)
            except Unreadable as error:
                found.append(_fault(error))
            if len(found) >= _MOST_FAULTS:
                break
        return found


@contextmanager
def opened(path: Path) -> Iterator[Archive]:
    """Yield an archive. Unreadable where it is none, a newer program's, damaged, or holds what it must not."""
    try:
        with path.open("rb") as stream:
            try:
                pack = zipfile.ZipFile(stream)
            except (*_BROKEN, ValueError) as error:
                raise Unreadable(f"this is no whole backup: {error}. Was it cut short?") from error
            with pack:
                infos = _infos(pack)
                manifest = _manifest(pack, infos)
                _see_members(manifest, infos, path.stat().st_size)
                yield Archive(pack, manifest)
    except Unreadable as error:
        raise Unreadable(f"{path}: {error}") from error


def _infos(pack: zipfile.ZipFile) -> dict[str, zipfile.ZipInfo]:
    infos: dict[str, zipfile.ZipInfo] = {}
    for info in pack.infolist():
        kind = stat.S_IFMT(info.external_attr >> 16)
        if info.filename in infos:
            raise Unreadable(f"{info.filename!r}: this is in it twice")
        if info.is_dir() or kind not in (0, stat.S_IFREG) or info.flag_bits & 1 or info.compress_type not in _KINDS:
            raise Unreadable(f"{info.filename!r}: this is no plain file, and a backup holds nothing else")
        infos[info.filename] = info
    return infos


def _manifest(pack: zipfile.ZipFile, infos: dict[str, zipfile.ZipInfo]) -> Manifest:
    if MANIFEST not in infos:
        raise Unreadable(f"this is no backup: there is no {MANIFEST} in it")
    if infos[MANIFEST].file_size > _LARGEST_MANIFEST:
        raise Unreadable(f"{MANIFEST}: this is longer than {_LARGEST_MANIFEST} bytes")
    with _told(MANIFEST), pack.open(MANIFEST) as stream:
        data = stream.read(_LARGEST_MANIFEST)
    try:
        said = json.loads(data)
        written = said.get("schema") if isinstance(said, dict) else None
        if isinstance(written, str) and written.startswith("backup/") and written != SCHEMA:
            raise Unreadable(f"{MANIFEST}: this is {written[:40]}, of a newer transom. Update the program")
        return Manifest.model_validate_json(data)
    except ValidationError as error:
        first = error.errors()[0]
        place = ".".join(map(str, first["loc"]))
        raise Unreadable(f"{MANIFEST}: {place}: {first['msg']}") from error
    except (UnicodeDecodeError, json.JSONDecodeError, RecursionError) as error:
        raise Unreadable(f"{MANIFEST}: this is no JSON: {error}") from error


def _see_members(manifest: Manifest, infos: dict[str, zipfile.ZipInfo], size: int) -> None:
    named = {f"tables/{table.name}.jsonl": table.bytes for table in manifest.tables}
    named |= {f"files/{file.sha256}": file.bytes for file in manifest.files}
    if len(named) != len(manifest.tables) + len(manifest.files):
        raise Unreadable(f"{MANIFEST}: it names something twice")
    there = infos.keys() - {MANIFEST}
    for name in sorted(named.keys() - there)[:1]:
        raise Unreadable(f"{name}: the manifest names it, and it is not there")
    for name in sorted(there - named.keys())[:1]:
        raise Unreadable(f"{name!r}: the manifest does not name it, and a backup holds nothing else")
    for name, counted in named.items():
        if infos[name].file_size != counted:
            raise Unreadable(f"{name}: it has {infos[name].file_size} bytes, and {counted} were written")
        if name.startswith("files/") and counted > LARGEST:
            raise Unreadable(f"{name}: no file of {counted} bytes is kept; the most are {LARGEST}")
    if sum(named.values()) > max(_FREE, _DENSEST * size):
        raise Unreadable(f"it would unpack to more than {_DENSEST} times its size, as no backup does")


def _ended(stream: IO[bytes], name: str, left: int) -> None:
    if left or stream.read(1):
        raise Unreadable(f"{name}: it does not have as many bytes as were written")


@contextmanager
def _told(name: str) -> Iterator[None]:
    try:
        yield
    except _BROKEN as error:
        raise Unreadable(f"{name}: this is damaged: {error}") from error


def _fault(error: Unreadable) -> Fault:
    where, _, what = str(error).partition(": ")
    return Fault(where, what)
