"""Enquiries a second over HTTP, and how long each waits, at 1, 8 and 32 clients; run by hand.

`.venv/bin/python -m scripts.bench_api [--seconds N] [--records N] [--database sqlite|postgresql]`. Needs wrk (apt-get
install wrk). Every request asks for another boat. Beside each database, in the same run, a bare FastAPI application
answers the same JSON with a body of the same size: the floor.
"""

from __future__ import annotations

import argparse
import json
import os
import shutil
import signal
import socket
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from http import HTTPStatus
from http.client import HTTPConnection, HTTPException
from pathlib import Path
from typing import Any
from urllib.parse import urlunsplit

from fastapi import FastAPI, Request
from starlette.responses import Response

from service import bootstrap
from service.cli.main import status
from service.core.api_key import RANDOM_BYTES
from service.flow.create_key import KeyWanted, create_key
from tests.support.postgres import server

HERE = "127.0.0.1"
TOP = Path(__file__).resolve().parent.parent
FIXTURES = TOP / "seed_fixtures"
CLIENTS = (1, 8, 32)
WORKERS = 2
ANSWER_BYTES = 150_000
TIMES = 6
"""p95 at 8 clients is to stay within so many times the single client's median."""


def echo() -> FastAPI:
    """Return the floor: the same JSON read, an answer of the same size written, nothing worked out."""
    app = FastAPI()
    body = json.dumps({"echo": "x" * ANSWER_BYTES}).encode()

    @app.post("/v1/enquiries", status_code=201)
    async def answer(request: Request) -> Response:
        await request.json()
        return Response(body, 201, media_type="application/json")

    @app.get("/health/ready")
    async def ready() -> dict[str, str]:
        return {"status": "ok"}

    return app


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
        with (folder / "said").open("w") as said:
            kept, sys.stdout = sys.stdout, said
            try:
                done = status([*step, "--db", url])
            finally:
                sys.stdout = kept
        if done != 0:
            raise SystemExit(f"{step} ended with {done}")
    store = bootstrap.open_store(bootstrap.settings(url))
    with store.writing() as uow:
        wanted = KeyWanted("bench", ("enquiries:write",))
        text = create_key(uow, wanted, random=os.urandom(RANDOM_BYTES), who="bench").text
    store.close()
    return text


@contextmanager
def running(command: list[str], port: int, environment: dict[str, str], log: Path) -> Iterator[int]:
    """Yield the process id of a server that is ready."""
    with log.open("wb") as out:
        process = subprocess.Popen(command, cwd=TOP, env={**os.environ, **environment}, stdout=out, stderr=out)  # noqa: S603 - our own
    try:
        for _ in range(1200):
            if process.poll() is not None:
                raise SystemExit(log.read_text())
            with suppress(OSError, HTTPException):  # not listening yet
                asked = HTTPConnection(HERE, port, timeout=5)
                asked.request("GET", "/health/ready")
                if asked.getresponse().status == HTTPStatus.OK:
                    break
            time.sleep(0.1)
        yield process.pid
    finally:
        process.send_signal(signal.SIGTERM)
        process.wait(90)


def load(port: int, clients: int, seconds: int, key: str, mark: str) -> dict[str, Any]:
    """Return what wrk measured."""
    command = [
        "wrk", "-t1", f"-c{clients}", f"-d{seconds}s", "--timeout", "60s", "-s", str(TOP / "scripts" / "bench_api.lua"),
        urlunsplit(("http", f"{HERE}:{port}", "", "", "")),
    ]  # fmt: skip
    environment = {**os.environ, "BENCH_KEY": key, "BENCH_MARK": mark}
    ran = subprocess.run(command, env=environment, capture_output=True, text=True, check=False)  # noqa: S603 - the tool
    if ran.returncode != 0:
        raise SystemExit(ran.stdout + ran.stderr)
    found: dict[str, Any] = json.loads(ran.stdout.strip().splitlines()[-1])
    return found


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


def measure(
    what: str, command: list[str], port: int, environment: dict[str, str], seconds: int, key: str, log: Path
) -> None:
    """Print a line for each number of clients."""
    with running(command, port, environment, log) as pid:
        load(port, 2, 5, key, f"{what}-warm")
        first = None
        for clients in CLIENTS:
            before = memory_mb(pid)
            got = load(port, clients, seconds, key, f"{what}-{clients}")
            first = first or got["p50"]
            rate = got["requests"] / got["seconds"]
            print(
                f"{what:<12} {clients:>3} clients {rate:8.2f}/s   p50 {got['p50']:8.1f}  p95 {got['p95']:8.1f}  "
                f"p99 {got['p99']:8.1f} ms   {got['p95'] / first:5.1f} x one's median   {got['bad']} errors   "
                f"{before:6.0f} -> {memory_mb(pid):6.0f} MB",
                flush=True,
            )


def main() -> None:
    """Measure."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--seconds", type=int, default=30)
    parser.add_argument("--records", type=int, default=10_000)
    parser.add_argument("--database", choices=("sqlite", "postgresql"))
    asked = parser.parse_args()
    if shutil.which("wrk") is None:
        raise SystemExit("wrk is not installed: apt-get install wrk")
    with tempfile.TemporaryDirectory() as text:
        folder, port = Path(text), free_port()
        bare = [sys.executable, "-m", "uvicorn", "scripts.bench_api:echo", "--factory", "--port", str(port)]
        measure(
            "bare echo",
            [*bare, "--workers", str(WORKERS), "--no-access-log"],
            port,
            {},
            asked.seconds,
            "none",
            folder / "log",
        )
        for kind in ("sqlite", "postgresql"):
            if asked.database in (None, kind):
                with address(kind, folder) as url:
                    key = seed(url, asked.records, folder)
                    port = free_port()
                    command = [
                        sys.executable,
                        "-c",
                        "from service.cli.main import run; run()",
                        "serve",
                        "--port",
                        str(port),
                    ]
                    command += ["--workers", str(WORKERS), "--db", url]
                    environment = {"TRANSOM_REQUESTS": "1000000", "TRANSOM_THREADS": "1"}
                    measure(kind, command, port, environment, asked.seconds, key, folder / "log")


@contextmanager
def address(kind: str, folder: Path) -> Iterator[str]:
    """Yield the address of a new database."""
    if kind == "sqlite":
        yield f"sqlite:///{folder / 'ledger.sqlite'}"
        return
    with server() as running_server:
        yield running_server.url("postgres")


if __name__ == "__main__":
    main()
