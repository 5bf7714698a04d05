"""A service run by `transom serve` on a filled database of either kind, for what is run by hand against it."""

from __future__ import annotations

import json
import os
import signal
import socket
import subprocess
import sys
import time
from collections.abc import Iterator, Mapping
from contextlib import contextmanager, redirect_stdout, suppress
from dataclasses import dataclass
from http import HTTPStatus
from http.client import HTTPConnection, HTTPException
from pathlib import Path

from service import bootstrap
from service.cli.main import status
from service.core.api_key import RANDOM_BYTES
from service.flow.create_key import KeyWanted, create_key
from tests.support.postgres import server

HERE = "127.0.0.1"
TOP = Path(__file__).resolve().parents[2]
FIXTURES = TOP / "seed_fixtures"
PATIENCE = 6000
"""Tenths of a second in which a server is ready: each worker of a new version compiles first."""


@dataclass(frozen=True)
class Served:
    """A running service: where it listens, the process that began it, an admin's key."""

    port: int
    pid: int
    key: str


@contextmanager
def served(kind: str, folder: Path, records: int, *, workers: int | None = None) -> Iterator[Served]:
    """Yield a service on a new database of a kind with so many records; as many workers as usual where not said."""
    with address(kind, folder) as url:
        key, port = seed(url, records, folder), free_port()
        command = [
            sys.executable,
            "-c",
            "from service.cli.main import run; run()",
            "serve",
            "--port",
            str(port),
            "--db",
            url,
        ]
        command += ["--workers", str(workers)] if workers else []
        freely = {"TRANSOM_REQUESTS": "1000000", "TRANSOM_STRANGERS": "1000000"}
        with running(command, port, freely, folder / f"{kind}.log") as pid:
            yield Served(port, pid, key)


def seed(url: str, records: int, folder: Path) -> str:
    """Fill a database with copies of the demo's fleet and return a key."""
    lines = [json.loads(line) for line in (FIXTURES / "fleet.jsonl").read_text("utf-8").splitlines()]
    many = folder / "many.jsonl"
    with many.open("w", encoding="utf-8") as out:
        for number in range(records):
            one = lines[number % len(lines)]
            out.write(json.dumps({**one, "reference": f"{one['reference']}-{number // len(lines)}"}) + "\n")
    for step in (
        ("db", "upgrade"),
        ("catalogue", "load", str(FIXTURES / "catalogue.toml")),
        ("hulls", "import", str(FIXTURES / "hulls.csv")),
        ("records", "import", str(many)),
    ):
        with (folder / "said").open("w") as said, redirect_stdout(said):
            done = status([*step, "--db", url])
        if done != 0:
            raise SystemExit(f"{step} ended with {done}")
    store = bootstrap.open_store(bootstrap.settings(url))
    with store.writing() as uow:
        wanted = KeyWanted("bench", ("admin",))
        text = create_key(uow, wanted, random=os.urandom(RANDOM_BYTES), who="bench").text
    store.close()
    return text


@contextmanager
def running(command: list[str], port: int, environment: Mapping[str, str], log: Path) -> Iterator[int]:
    """Yield the process id of a server that is ready."""
    with log.open("wb") as out:
        process = subprocess.Popen(command, cwd=TOP, env={**os.environ, **environment}, stdout=out, stderr=out)  # noqa: S603 - our own
    try:
        for _ in range(PATIENCE):
            if process.poll() is not None:
                raise SystemExit(log.read_text())
            with suppress(OSError, HTTPException):  # not listening yet
                asked = HTTPConnection(HERE, port, timeout=5)
                asked.request("GET", "/health/ready")
                if asked.getresponse().status == HTTPStatus.OK:
                    break
            time.sleep(0.1)
        else:
            raise SystemExit(f"{command[:4]}... was not ready in time:\n{log.read_text()}")
        yield process.pid
    finally:
        process.send_signal(signal.SIGTERM)
        process.wait(90)


def memory_mb(parent: int) -> float:
    """Return what a process and its children hold, in MB."""
    total = 0
    for folder in Path("/proc").iterdir():
        try:
            parts = (folder / "stat").read_text().rsplit(")", 1)[1].split() if folder.name.isdecimal() else []
            if parts and parent in (int(folder.name), int(parts[1])):
                total += int(parts[21]) * os.sysconf("SC_PAGE_SIZE")
        except OSError:  # it has ended meanwhile
            continue
    return total / 1e6


def free_port() -> int:
    """Return a port nobody listens on."""
    with socket.socket() as found:
        found.bind(("127.0.0.1", 0))
        return int(found.getsockname()[1])


@contextmanager
def address(kind: str, folder: Path) -> Iterator[str]:
    """Yield the address of a new database."""
    if kind == "sqlite":
        yield f"sqlite:///{folder / 'ledger.sqlite'}"
        return
    with server() as running_server:
        yield running_server.url("postgres")
