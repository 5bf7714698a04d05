"""`transom serve` and `transom keys`, as processes and commands of their own."""

from __future__ import annotations

import json
import os
import shutil
import signal
import socket
import sqlite3
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass
from pathlib import Path
from threading import Thread

import httpx
import pytest

from service import bootstrap
from service.api.docs import curl, python
from service.api.examples import FORM
from service.cli.main import status
from service.store import migrate
from tests.api.conftest import MINE, key

TRANSOM = [sys.executable, "-c", "from service.cli.main import run; run()"]
START_S = 90


@dataclass(frozen=True)
class Running:
    """A running service: its ledger, its address, a key, its process and what it logged."""

    url: str
    base: str
    key: str
    process: subprocess.Popen[bytes]
    log: Path


def free_port() -> int:
    with socket.socket() as found:
        found.bind(("127.0.0.1", 0))
        return int(found.getsockname()[1])


@contextmanager
def serving(url: str, log: Path, *more: str) -> Iterator[tuple[str, subprocess.Popen[bytes]]]:
    """Yield the address and the process of a running service."""
    port = free_port()
    with log.open("wb") as out:
        process = subprocess.Popen(  # noqa: S603 - our own program
            [*TRANSOM, "serve", "--port", str(port), "--db", url, *more], stdout=out, stderr=out
        )
    base = f"http://127.0.0.1:{port}"
    try:
        _wait(base, process, log)
        yield base, process
    finally:
        if process.poll() is None:
            process.send_signal(signal.SIGTERM)
        process.wait(30)


def _wait(base: str, process: subprocess.Popen[bytes], log: Path) -> None:
    ends = time.monotonic() + START_S
    while time.monotonic() < ends:
        assert process.poll() is None, log.read_text()
        try:
            if httpx.get(f"{base}/health/ready", timeout=5).status_code == 200:
                return
        except httpx.TransportError:
            time.sleep(0.1)
    raise AssertionError(log.read_text())


@pytest.fixture(scope="module")
def running(ledger: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Running]:
    """Return the address of a running service of two workers, and a key."""
    folder = tmp_path_factory.mktemp("serve")
    url = f"sqlite:///{shutil.copy(ledger, folder / 'ledger.sqlite')}"
    store = bootstrap.open_store(bootstrap.settings(url))
    text = key(store, "web form", ("enquiries:write", "enquiries:read"), MINE)
    store.close()
    with serving(url, folder / "log", "--workers", "2") as (base, process):
        yield Running(url, base, text, process, folder / "log")


def test_the_examples_of_the_page_run_as_they_stand(running: Running) -> None:
    base, key = running.base, running.key
    environment = {"KEY": key, "PATH": os.environ["PATH"]}
    for command in (["bash", "-c", curl(base)], [sys.executable, "-I", "-c", python(base)]):
        ran = subprocess.run(command, env=environment, capture_output=True, text=True, check=False)  # noqa: S603 - our own examples
        assert ran.returncode == 0, ran.stderr
        assert "gear-720" in ran.stdout


def test_workers_share_what_a_key_may_ask(running: Running) -> None:
    base, key = running.base, running.key
    left = []
    for _ in range(6):  # a connection each, so that both workers are met
        got = httpx.get(f"{base}/v1/webhooks", headers={"X-API-Key": key, "Connection": "close"})
        left.append(int(got.headers["ratelimit"].split("r=")[1].split(";")[0]))
    assert left == sorted(left, reverse=True)
    assert len(set(left)) == len(left)


def test_forwarded_addresses_are_not_believed_unasked(running: Running) -> None:
    base = running.base
    assert httpx.get(f"{base}/metrics").status_code == 200
    assert httpx.get(f"{base}/metrics", headers={"X-Forwarded-For": "127.0.0.1"}).status_code == 401


def test_headers_cannot_be_smuggled_in(running: Running) -> None:
    host, port = running.base.removeprefix("http://").split(":")
    for request in (
        b"GET /health/live HTTP/1.1\r\nHost: a\r\nX-Request-ID: a\x00b\r\n\r\n",
        b"GET /health/live\r\nX: y HTTP/1.1\r\nHost: a\r\n\r\n",
        b"POST /v1/enquiries HTTP/1.1\r\nHost: a\r\nContent-Length: 5\r\nContent-Length: 6\r\n\r\nhello!",
        b"POST /v1/enquiries HTTP/1.1\r\nHost: a\r\nContent-Length: -1\r\n\r\n",
    ):
        with socket.create_connection((host, int(port)), timeout=10) as raw:
            raw.sendall(request)
            assert raw.recv(1000).startswith(b"HTTP/1.1 400")


def test_it_does_not_start_on_a_database_that_needs_an_upgrade(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    url = f"sqlite:///{tmp_path / 'old.sqlite'}"
    for revision in (None, "0001"):
        if revision:
            migrate.upgrade(url, revision)
        assert status(["serve", "--db", url]) == 3
        assert "transom db upgrade" in capsys.readouterr().err


@pytest.mark.parametrize(("name", "value"), [("TRANSOM_PORT", "99999"), ("TRANSOM_WORKERS", "many")])
def test_a_wrong_setting_is_named(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], name: str, value: str
) -> None:
    monkeypatch.setenv(name, value)
    assert status(["serve"]) == 2
    assert f"{name} is '{value}'" in capsys.readouterr().err


def test_keys_are_made_listed_and_revoked(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    url = f"sqlite:///{tmp_path / 'ledger.sqlite'}"
    assert status(["db", "upgrade", "--db", url]) == 0
    capsys.readouterr()
    assert status(["keys", "create", "--name", "sheet", "--scope", "records:read", "--db", url]) == 0
    shown = capsys.readouterr()
    text = shown.out.strip()
    assert text.startswith("tk_")
    assert "not shown again" in shown.err
    assert status(["keys", "list", "--db", url]) == 0
    listed = capsys.readouterr().out
    assert text not in listed
    assert text.split("_")[1] in listed
    assert status(["keys", "revoke", text.split("_")[1], "--db", url, "--json"]) == 0
    assert json.loads(capsys.readouterr().out)["revoked"] is not None
    assert status(["keys", "revoke", "nobody", "--db", url]) == 2
    assert status(["keys", "create", "--scope", "records:rea", "--db", url]) == 2
    assert "did you mean 'records:read'" in capsys.readouterr().err


def test_work_nobody_waits_for_is_not_done(running: Running) -> None:
    host, port = running.base.removeprefix("http://").split(":")
    body = json.dumps(FORM).encode()
    many = []
    for number in range(20):
        raw = socket.create_connection((host, int(port)), timeout=10)
        raw.sendall(
            f"POST /v1/enquiries HTTP/1.1\r\nHost: a\r\nX-API-Key: {running.key}\r\nIdempotency-Key: gone-{number}\r\n"
            f"Content-Type: application/json\r\nContent-Length: {len(body)}\r\n\r\n".encode()
            + body
        )
        many.append(raw)
    while not begun(running.url, "gone-19"):
        time.sleep(0.005)
    for raw in many:
        raw.close()
    ends = time.monotonic() + 60
    while open_requests(running.url) and time.monotonic() < ends:
        time.sleep(0.05)
    assert not open_requests(running.url)
    done = running.log.read_text().count('"status": 499')
    assert done > 5  # those whose turn had come already were finished


def open_requests(url: str) -> int:
    """Return how many requests are being worked on."""
    with closing(sqlite3.connect(url.removeprefix("sqlite:///"))) as raw:
        return int(raw.execute("SELECT count(*) FROM idempotency WHERE answered IS NULL").fetchone()[0])


def test_what_is_being_answered_is_finished_before_the_end(running: Running) -> None:
    got: list[httpx.Response] = []

    def ask() -> None:
        headers = {"X-API-Key": running.key, "Idempotency-Key": "last"}
        got.append(httpx.post(f"{running.base}/v1/enquiries", json=FORM, headers=headers, timeout=60))

    asking = Thread(target=ask)
    asking.start()
    while not begun(running.url, "last"):
        time.sleep(0.005)
    running.process.send_signal(signal.SIGTERM)
    asking.join()
    assert running.process.wait(30) in (0, -signal.SIGTERM)
    assert got[0].status_code == 201
    assert b"Traceback" not in running.log.read_bytes()


def begun(url: str, key: str) -> bool:
    """Say whether a request is being worked on."""
    with closing(sqlite3.connect(url.removeprefix("sqlite:///"))) as raw:
        return raw.execute("SELECT 1 FROM idempotency WHERE key = ?", (key,)).fetchone() is not None
