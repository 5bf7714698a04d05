"""Whatever the document allows and forbids is sent, call after call: no fault, no undocumented status, no other shape."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from threading import Thread

import pytest
import uvicorn

from tests.api.conftest import House

HERE = Path(__file__).parent / "fuzz"
SECONDS = int(os.environ.get("TRANSOM_FUZZ_SECONDS", "25"))


@pytest.fixture
def address(here: House) -> Iterator[str]:
    """Return the address under which the house is served from a thread of this process."""
    config = uvicorn.Config(here.app, port=0, lifespan="off", log_level="error", ws="none")
    server = uvicorn.Server(config)
    thread = Thread(target=server.run)
    thread.start()
    while not server.started:
        thread.join(0.01)
    port = server.servers[0].sockets[0].getsockname()[1]
    yield f"http://127.0.0.1:{port}"
    server.should_exit = True
    thread.join()


def test_nothing_that_can_be_sent_breaks_it(here: House, address: str, tmp_path: Path) -> None:
    seed = int(os.environ.get("TRANSOM_FUZZ_SEED") or int.from_bytes(os.urandom(3)))
    print(f"seed {seed}: TRANSOM_FUZZ_SEED begins from it, TRANSOM_FUZZ_SECONDS=600 runs longer")  # noqa: T201 - to run the same again
    command = [
        sys.executable, "-m", "schemathesis.cli", "--config-file", str(HERE / "schemathesis.toml"), "run", f"{address}/openapi.json",
        "--header", f"X-API-Key: {here.keys['desk']}", "--seed", str(seed), "--max-time", str(SECONDS),
        "--continue-on-failure", "--no-color", "--generation-database", "none", "--workers", "2",
    ]  # fmt: skip
    environment = {**os.environ, "SCHEMATHESIS_HOOKS": "hooks", "PYTHONPATH": str(HERE)}
    ran = subprocess.run(command, cwd=tmp_path, env=environment, capture_output=True, text=True, check=False)  # noqa: S603 - our own tool
    assert ran.returncode == 0, f"seed {seed}\n{shortened(ran.stdout)}{ran.stderr[-2000:]}"
    found = re.search(r"(\d+) generated", ran.stdout)
    assert found is not None
    assert int(found[1]) > 200, ran.stdout[-2000:]
    assert "Tested: 31" in ran.stdout


def shortened(text: str) -> str:
    """Return the report with long lines cut."""
    return "\n".join(line[:300] for line in text.splitlines())
