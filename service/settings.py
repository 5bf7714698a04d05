"""What can be set from outside, as one plain value. Nothing is read until somebody hands in an environment."""

from __future__ import annotations

import sys
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path, PurePath


@dataclass(frozen=True)
class Settings:
    """`database` is an address (sqlite:///… or postgresql://…); `folder`, if any, is to be made on first use.

    `files` is the folder in which attachments stand.
    """

    database: str
    folder: Path | None = None
    files: Path = Path("files")


def settings_from(
    environment: Mapping[str, str], *, database: str | None = None, platform: str = sys.platform
) -> Settings:
    """Return the settings: `database` (as given on the command line), else TRANSOM_DB, else a file of the user's own.

    >>> settings_from({"TRANSOM_DB": "postgresql://db.example.net/ledger"}).database
    'postgresql://db.example.net/ledger'
    >>> settings_from({"HOME": "/home/ada"}, platform="linux").database
    'sqlite:////home/ada/.local/share/transom/ledger.db'
    """
    given = database or environment.get("TRANSOM_DB", "").strip()
    if given:
        return Settings(given, files=files_folder(environment, given, platform))
    folder = data_folder(environment, platform)
    own = f"sqlite:///{folder / 'ledger.db'}"
    return Settings(own, folder, files_folder(environment, own, platform))


def files_folder(environment: Mapping[str, str], database: str, platform: str) -> Path:
    """Return where attachments stand: TRANSOM_FILES, else beside a database that is a file, else with the user's data.

    >>> str(files_folder({}, "sqlite:////srv/ledger.db", "linux"))
    '/srv/ledger.db.files'
    >>> str(files_folder({"HOME": "/home/ada"}, "postgresql://db.example.net/ledger", "linux"))
    '/home/ada/.local/share/transom/files'
    """
    said = environment.get("TRANSOM_FILES", "").strip()
    if said:
        return Path(said)
    scheme, _, path = database.partition(":///")
    if scheme.startswith("sqlite") and path:
        return Path(f"{path.partition('?')[0]}.files")
    return data_folder(environment, platform) / "files"


def data_folder(environment: Mapping[str, str], platform: str) -> Path:
    """Return where this user's data belong on this system (XDG Base Directory Specification on Linux)."""
    home = environment.get("HOME") or environment.get("USERPROFILE") or str(Path.home())
    if platform == "win32":
        base = environment.get("LOCALAPPDATA") or str(PurePath(home) / "AppData" / "Local")
    elif platform == "darwin":
        base = str(PurePath(home) / "Library" / "Application Support")
    else:
        xdg = environment.get("XDG_DATA_HOME", "")
        # The specification says that a relative path there is invalid and to be ignored.
        base = xdg if PurePath(xdg).is_absolute() else str(PurePath(home) / ".local" / "share")
    return Path(base) / "transom"
