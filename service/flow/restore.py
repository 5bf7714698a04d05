"""A backup made into a database again, of either kind."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from pathlib import Path
from typing import Any

from service.core.archive import Manifest
from service.files.read.archive import Archive, opened
from service.files.vault import Vault
from service.flow.refusal import Refused
from service.flow.verify_backup import examined, refuse
from service.store.snapshot import Filling, filling, see_empty

_ROWS, _BYTES = 2_000, 8_000_000


def restore(path: Path, url: str, vault: Vault, *, progress: Callable[[int], object] = lambda _: None) -> Manifest:
    """Fill an empty database, and the folder of files, from an archive; return what was in it.

    The archive is read from end to end before anything is touched. Refused or Unreadable where it is not sound or a
    newer program's, Conflict where the database is not empty. The files are on the disk before the database speaks of
    them; the database is filled in one transaction. `progress` is told how many more rows were read or written:
    each is counted twice.
    """
    see_empty(url)
    with opened(path) as archive:
        refuse(path, examined(archive, progress))
        for file in archive.manifest.files:
            vault.keep(archive.file(file))
        with filling(url, archive.manifest.head) as target:
            _fill(target, archive, path, progress)
        return archive.manifest


def _fill(target: Filling, archive: Archive, path: Path, progress: Callable[[int], object]) -> None:
    members = {table.name: table for table in archive.manifest.tables}
    order = target.order
    if set(order) != members.keys():
        odd = ", ".join(sorted(set(order) ^ members.keys()))
        raise Refused(f"{path}: its tables are not those of revision {archive.manifest.head}: {odd}")
    for name in order:
        table = members[name]
        names = [column.name for column in table.columns]
        if set(names) != target.columns(name) or len(set(names)) != len(names):
            raise Refused(f"{path}: the columns of {name} are not those of revision {archive.manifest.head}")
        for some in _batches(archive.rows(table)):
            target.put(name, table.columns, some)
            progress(len(some))


def _batches(rows: Iterable[tuple[list[Any], int]]) -> Iterator[list[list[Any]]]:
    """Give rows by the batch, as many as take no more memory than does no harm."""
    some, held = list[list[Any]](), 0
    for row, size in rows:
        some.append(row)
        held += size
        if len(some) == _ROWS or held > _BYTES:
            yield some
            some, held = [], 0
    if some:
        yield some
