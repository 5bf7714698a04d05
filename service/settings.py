"""What can be set from outside, as one plain value. Nothing is read until somebody hands in an environment."""

from __future__ import annotations

import sys
from collections.abc import Mapping
from dataclasses import dataclass, fields
from pathlib import Path, PurePath
from typing import Any

LONGEST_MONTHS = 1200


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


@dataclass(frozen=True)
class Serving:
    """How the service over HTTP is run.

    `threads` answers are worked out at a time in each of the `workers`, and each uses its share of the processors. `proxies`
    are the addresses whose forwarded headers are believed, separated by commas. `requests` a minute a key may make,
    `strangers` an address without one. `counters` is the file in which the workers count together, None where one works
    alone. `public` is the address people know the service by. `insecure_webhooks` lets webhooks lead anywhere, for tests.
    """

    host: str = "127.0.0.1"
    port: int = 8080
    workers: int = 1
    threads: int = 1
    proxies: str = ""
    requests: int = 600
    strangers: int = 120
    counters: Path | None = None
    public: str = ""
    insecure_webhooks: bool = False


def serving_from(environment: Mapping[str, str], *, processors: int = 1) -> Serving:
    """Return how the service is run, as TRANSOM_HOST, TRANSOM_PORT and so on say; ValueError names one that is wrong.

    There are as many workers as `processors` where nothing is said.

    >>> serving_from({}, processors=4).workers
    4
    >>> serving_from({"TRANSOM_PORT": "9000"}).port
    9000
    >>> serving_from({"TRANSOM_WORKERS": "many"})
    Traceback (most recent call last):
        ...
    ValueError: TRANSOM_WORKERS is 'many'; give a whole number from 1 to 64
    """
    most = {"port": 65_535, "workers": 64, "threads": 64, "requests": 1_000_000, "strangers": 1_000_000}
    said: dict[str, Any] = {"workers": min(processors, most["workers"])}
    for name, value in (
        (field.name, environment.get(f"TRANSOM_{field.name.upper()}", "")) for field in fields(Serving)
    ):
        if name in most and value:
            if not value.isdecimal() or not 1 <= int(value) <= most[name]:
                raise ValueError(f"TRANSOM_{name.upper()} is {value!r}; give a whole number from 1 to {most[name]}")
            said[name] = int(value)
        elif value:
            said[name] = Path(value) if name == "counters" else value == "1" if name == "insecure_webhooks" else value
    return Serving(**said)


def retention_from(environment: Mapping[str, str]) -> int | None:
    """Return for how many months people's data are held, as TRANSOM_RETENTION_MONTHS says; None, for ever, where unset.

    >>> retention_from({"TRANSOM_RETENTION_MONTHS": "36"}), retention_from({})
    (36, None)
    >>> retention_from({"TRANSOM_RETENTION_MONTHS": "soon"})
    Traceback (most recent call last):
        ...
    ValueError: TRANSOM_RETENTION_MONTHS is 'soon'; give a whole number of months from 1 to 1200
    """
    said = environment.get("TRANSOM_RETENTION_MONTHS", "").strip()
    if not said:
        return None
    if not said.isdecimal() or not 1 <= int(said) <= LONGEST_MONTHS:
        raise ValueError(
            f"TRANSOM_RETENTION_MONTHS is {said!r}; give a whole number of months from 1 to {LONGEST_MONTHS}"
        )
    return int(said)
