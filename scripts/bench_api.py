"""Enquiries a second over HTTP and how long each waits, at 1, 8 and 32 clients, on both databases: `scripts/bench api`.

Needs wrk, a public load tool. Every request asks for another boat; nothing answers from memory. In the same run a bare
FastAPI application reads the same JSON and writes an answer of the same size: the floor. `--steps` shows instead where the
time of one answer goes. Exit status: 0 where p95 at 8 clients is within 6 times the single client's median and nothing
failed, else 1.
"""

from __future__ import annotations

import argparse
import json
import os
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Sequence
from pathlib import Path
from typing import Any
from urllib.parse import urlunsplit

from fastapi import FastAPI, Request
from starlette.responses import Response

from scripts.bench_steps import steps
from scripts.soaks.serving import HERE, TOP, free_port, memory_mb, running, served
from service.bootstrap import processors

CLIENTS = (1, 8, 32)
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


def measure(what: str, port: int, pid: int, key: str, seconds: int) -> bool:
    """Print a line for each number of clients; return whether the bound holds and nothing failed."""
    load(port, 2, max(5, seconds // 4), key, f"{what}-warm")
    first, holds = 0.0, True
    for clients in CLIENTS:
        before = memory_mb(pid)
        got = load(port, clients, seconds, key, f"{what}-{clients}")
        first = first or got["p50"]
        times = got["p95"] / first if first else float("inf")
        holds &= got["bad"] == 0 and (clients != 8 or times <= TIMES)  # noqa: PLR2004 - the number the bound speaks of
        print(
            f"{what:<11} {clients:>3} clients {got['requests'] / got['seconds']:8.2f}/s   p50 {got['p50']:7.0f}  "
            f"p95 {got['p95']:7.0f}  p99 {got['p99']:7.0f} ms   p95 is {times:4.1f} x one's median   {got['bad']} failed   "
            f"{before:5.0f} -> {memory_mb(pid):5.0f} MB",
            flush=True,
        )
    return holds


def floor(seconds: int, folder: Path) -> bool:
    """Measure the bare application, with as many workers."""
    port = free_port()
    command = [sys.executable, "-m", "uvicorn", "scripts.bench_api:echo", "--factory", "--port", str(port)]
    command += ["--workers", str(processors()), "--no-access-log"]
    with running(command, port, {}, folder / "echo.log") as pid:
        return measure("bare echo", port, pid, "none", seconds)


def main(given: Sequence[str] | None = None) -> int:
    """Measure; return the exit status."""
    parser = argparse.ArgumentParser(prog="scripts/bench api", description=__doc__)
    parser.add_argument("--seconds", type=int, default=30, help="for each number of clients")
    parser.add_argument("--records", type=int, default=10_000)
    parser.add_argument("--database", choices=("sqlite", "postgresql"), help="this one alone")
    parser.add_argument("--steps", action="store_true", help="where the time of one answer goes, instead")
    asked = parser.parse_args(given)
    if asked.steps:
        return steps(asked.records, asked.database or "sqlite")
    if shutil.which("wrk") is None:
        raise SystemExit("wrk is not here. On Debian: apt-get install wrk")
    holds = True
    with tempfile.TemporaryDirectory(prefix="transom-bench-") as text:
        floor(asked.seconds, Path(text))
        for kind in ("sqlite", "postgresql"):
            if asked.database in (None, kind):
                with served(kind, Path(text), asked.records) as service:
                    holds &= measure(kind, service.port, service.pid, service.key, asked.seconds)
    print(
        f"p95 at 8 clients within {TIMES} times the single client's median, and nothing failed: {'yes' if holds else 'NO'}"
    )
    return 0 if holds else 1


if __name__ == "__main__":
    sys.exit(main())
