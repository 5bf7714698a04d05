"""Builds the service from its settings: the store, the clock, the maker of ids. The edges start here."""

from __future__ import annotations

import os
import socket
import tempfile
import time
from collections.abc import Callable, Mapping
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING

from service.files.vault import Vault
from service.settings import Serving, Settings, retention_from, serving_from, settings_from
from service.store import dialect
from service.store.check import State, state_of
from service.store.ids import random_id
from service.store.unit import Store

if TYPE_CHECKING:
    from service.flow.work_jobs import Crew

GRACE_S = 60
"""How long answers that are being worked out may take when the service is told to stop."""


def settings(database: str | None = None, environment: Mapping[str, str] | None = None) -> Settings:
    """Return the settings of this run: `database` as given, else what the environment says (the process's own)."""
    return settings_from(os.environ if environment is None else environment, database=database)


def clock() -> datetime:
    """Return the time, in UTC."""
    return datetime.now(UTC)  # noqa: TID251 - the one place that reads the clock; all else is handed the time


def open_store(chosen: Settings) -> Store:
    """Return the database, looked at and found fit for work.

    NeedsUpgrade, NewerSchema, NotOurs, BadAddress or StoreAway say why not; nothing is changed then.
    """
    return Store(chosen.database, now=clock, new_id=random_id)


def vault(chosen: Settings) -> Vault:
    """Return the folder of attachments; it is made when the first one is kept."""
    return Vault(chosen.files)


def vault_in(folder: Path) -> Vault:
    """Return another folder of attachments; it is made when the first one is kept."""
    return Vault(folder)


def make_folder(chosen: Settings) -> None:
    """Make the user's data folder where the database is to stand in it and there is none."""
    if chosen.folder is not None:
        chosen.folder.mkdir(mode=0o700, parents=True, exist_ok=True)


def upgrade(chosen: Settings) -> str:
    """Bring the database to this program's revision, making it (and the user's data folder) where there is none."""
    from service.store import migrate  # noqa: PLC0415 - only this needs the tool that migrates

    make_folder(chosen)
    return migrate.upgrade(chosen.database)


def state(chosen: Settings) -> State:
    """Return the state of the database, without touching it. StoreAway or BadAddress where it cannot be looked at."""
    return state_of(dialect.address(chosen.database))


def shown(chosen: Settings) -> str:
    """Return the database's address for people, without a password."""
    return dialect.shown(dialect.address(chosen.database))


def serving(environment: Mapping[str, str] | None = None) -> Serving:
    """Return how the service over HTTP is run, as the environment says; ValueError names what is wrong in it."""
    return serving_from(os.environ if environment is None else environment, processors=processors())


def processors() -> int:
    """Return how many processors this process may use."""
    return len(os.sched_getaffinity(0)) if hasattr(os, "sched_getaffinity") else os.cpu_count() or 1


def retention(environment: Mapping[str, str] | None = None) -> int | None:
    """Return for how many months people's data are held, None for ever; ValueError where the environment is wrong."""
    return retention_from(os.environ if environment is None else environment)


def crew(store: Store, *, hands: int = 1, say: Callable[[str], object] = lambda _text: None) -> Crew:
    """Return a worker on the jobs of this database, not begun yet, named by this machine and process."""
    from service.flow.work_jobs import Crew  # noqa: PLC0415 - a worker loads every kind of job there is

    name = f"{socket.gethostname()}:{os.getpid()}"
    return Crew(store, name, stopwatch=time.monotonic, hands=hands, say=say)


def random_bytes(count: int) -> bytes:
    """Return bytes that nobody can guess."""
    return os.urandom(count)


def serve(chosen: Settings, how: Serving) -> bool:
    """Run the service until it is told to stop, letting what is being answered finish; say whether it could start.

    The database is looked at first, as by `open_store`. Each worker opens its own, from what is put into the environment.
    """
    import uvicorn  # noqa: PLC0415 - only this serves

    open_store(chosen).close()
    with tempfile.TemporaryDirectory(prefix="transom-") as folder:
        counters = how.counters or Path(folder) / "counters.sqlite"
        os.environ |= {"TRANSOM_DB": chosen.database, "TRANSOM_FILES": str(chosen.files)}
        os.environ |= {f"TRANSOM_{name.upper()}": _written(value) for name, value in vars(how).items() if value}
        os.environ |= {"TRANSOM_COUNTERS": str(counters), "TRANSOM_SHARES": str(Path(folder) / "shares")}
        uvicorn.run(
            "service.serve:made",
            factory=True,
            host=how.host,
            port=how.port,
            workers=how.workers,
            proxy_headers=bool(how.proxies),
            forwarded_allow_ips=how.proxies or "",
            access_log=False,
            log_level="warning",
            server_header=False,
            timeout_graceful_shutdown=GRACE_S,
            timeout_keep_alive=15,
            limit_concurrency=1000,
            timeout_worker_healthcheck=GRACE_S,  # a worker that works hard is not dead
            loop="service.api.even_loop:EvenLoop" if how.workers > 1 and os.name == "posix" else "asyncio",
        )
    return True


def _written(value: object) -> str:
    return "1" if value is True else str(value)
