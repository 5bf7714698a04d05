"""Whatever the document allows and forbids is sent, call after call: no fault, no undocumented status, no other shape.

A short run, the same each time; `scripts/soak api` runs long and from other seeds.
"""

from __future__ import annotations

import os
from collections.abc import Iterator
from pathlib import Path
from threading import Thread

import pytest
import uvicorn

from tests.api.conftest import House
from tests.support.fuzz import fuzz

SEED = int(os.environ.get("TRANSOM_FUZZ_SEED", "1"))


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
    print(f"seed {SEED}: TRANSOM_FUZZ_SEED begins from another, scripts/soak api runs longer")  # noqa: T201 - to run the same again
    how = ("--phases", "fuzzing", "--max-examples", "3")
    found = fuzz(address, here.keys["desk"], tmp_path, SEED, *how, settings="quick.toml")
    assert found.well, found.told
    operations = {f"{method.upper()} {path}" for path, item in here.app.openapi()["paths"].items() for method in item}
    assert set(found.answers) >= operations
    assert max(found.statuses) < 500
    assert found.statuses.total() > 60
    assert all(found.checks[name] > 60 for name in ("response_schema_conformance", "status_code_conformance"))
