"""Is a backup what was written? Every member of it is read, counted and hashed."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from service.core.archive import Manifest
from service.files.read.archive import Archive, Fault, opened
from service.files.read.errors import Unreadable
from service.flow.refusal import Refused
from service.store.snapshot import known


@dataclass(frozen=True)
class Verified:
    """What the archive says of itself (None where that cannot be read), and what is wrong with it."""

    manifest: Manifest | None
    faults: tuple[Fault, ...]


def verify_backup(path: Path, *, progress: Callable[[int], object] = lambda _: None) -> Verified:
    """Return what is wrong with an archive, and where in it. OSError where the file cannot be opened."""
    try:
        with opened(path) as archive:
            return Verified(archive.manifest, tuple(examined(archive, progress)))
    except Unreadable as error:
        return Verified(None, (Fault(str(path), str(error).removeprefix(f"{path}: ")),))


def examined(archive: Archive, progress: Callable[[int], object] = lambda _: None) -> list[Fault]:
    """Return what is wrong with an archive that is open."""
    head = archive.manifest.head
    if not known(head):
        return [Fault("manifest.json", f"this is of a newer transom (revision {head[:40]!r}). Update the program")]
    return archive.faults(progress)


def require_sound(path: Path) -> None:
    """Return where nothing is wrong with the archive; Refused says what is."""
    with opened(path) as archive:
        refuse(path, examined(archive))


def refuse(path: Path, faults: list[Fault]) -> None:
    """Raise Refused where there are faults."""
    if faults:
        lines = [f"  {fault.where}: {fault.what}" for fault in faults]
        raise Refused("\n".join([f"{path} is not sound; nothing was changed", *lines, "Take another backup"]))
