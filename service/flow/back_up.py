"""The whole service in one file: every table at one moment, and every file that records speak of."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from pathlib import Path

from service.core.archive import FileMember, Lost, Manifest
from service.files.vault import Vault
from service.files.write.archive import writing
from service.flow.refusal import Refused
from service.flow.software import SOFTWARE
from service.flow.verify_backup import require_sound
from service.store.snapshot import taken


def back_up(
    url: str,
    vault: Vault,
    path: Path,
    *,
    at: datetime,
    overwrite: bool = False,
    progress: Callable[[int], object] = lambda _: None,
) -> Manifest:
    """Write the archive while others go on working, read it back, and only then give it its name.

    `lost` in what is returned names files that are missing or damaged: the rest is there all the same. Refused where
    there is such a file already; `progress` is told how many more rows were written.
    """
    files, lost = list[FileMember](), list[Lost]()
    try:
        with (
            taken(url) as snapshot,
            writing(path, overwrite=overwrite, check=require_sound) as archive,
        ):
            tables = [
                archive.table(name, columns, snapshot.rows(name), progress) for name, columns in snapshot.tables.items()
            ]
            for name in snapshot.files():
                data = vault.read(name)
                if data is None:
                    health = vault.health(name)
                    lost.append(Lost(sha256=name, health="damaged" if health == "damaged" else "missing"))
                else:
                    files.append(archive.file(name, data))
            manifest = Manifest(
                software=SOFTWARE,
                head=snapshot.head,
                taken=at,
                tables=tuple(tables),
                files=tuple(files),
                lost=tuple(lost),
            )
            archive.manifest(manifest)
    except FileExistsError:
        raise Refused(f"{path} is there already; name another file, or say --overwrite") from None
    return manifest
