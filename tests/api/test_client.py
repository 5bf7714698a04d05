"""A public generator makes a typed Python client from the document, leaves nothing out, and the client works as it stands."""

from __future__ import annotations

import asyncio
import importlib
import json
import os
import pkgutil
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import httpx
import pytest

from service.api.examples import FORM
from service.api.openapi import client_settings
from tests.api.conftest import House

NAME = "transom_made_client"


@pytest.fixture(scope="module")
def made(here: House, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Path]:
    """Return the folder of a client generated from the document as it is served, by the settings on the page for programmers."""
    folder = tmp_path_factory.mktemp("client")
    document, settings = folder / "openapi.json", folder / "settings.json"
    document.write_bytes(here.get("/openapi.json", None).content)
    settings.write_text(json.dumps(client_settings(here.app.openapi())), "utf-8")
    environment = {**os.environ, "PATH": f"{Path(sys.executable).parent}{os.pathsep}{os.environ['PATH']}"}
    ran = subprocess.run(  # noqa: S603 - the generator
        [sys.executable, "-m", "openapi_python_client", "generate", "--path", str(document), "--config", str(settings),
         "--meta", "none", "--output-path", str(folder / NAME), "--fail-on-warning"],
        cwd=folder, env=environment, capture_output=True, text=True, check=False,
    )  # fmt: skip
    assert ran.returncode == 0, ran.stdout[-4000:] + ran.stderr[-2000:]
    assert ran.stdout.split("\n") == [f"Generating {folder / NAME}", ""], ran.stdout  # no warning, nothing left out
    sys.path.insert(0, str(folder))
    yield folder / NAME
    sys.path.remove(str(folder))
    for name in [name for name in sys.modules if name.split(".")[0] == NAME]:
        del sys.modules[name]


def part(name: str) -> Any:  # noqa: ANN401 - a module nobody knows before
    return importlib.import_module(f"{NAME}.{name}")


def test_every_operation_is_in_it_and_every_part_of_it_loads(made: Path, here: House) -> None:
    names = [module.name for module in pkgutil.walk_packages([str(made)], f"{NAME}.")]  # it imports what it walks
    found = {name.rpartition(".")[2] for name in names if name.startswith(f"{NAME}.api.")}
    said = here.app.openapi()["paths"].values()
    assert {operation["operationId"] for path in said for operation in path.values()} <= found
    for name in names:
        importlib.import_module(name)


def test_it_posts_an_enquiry_and_reads_the_answer(made: Path, here: House) -> None:
    assert made.is_dir()
    models, create = part("models"), part("api.enquiries.create_enquiry")
    reply = call(here, create, body=models.BoatFormInput.from_dict(FORM), idempotency_key="by-a-client")
    assert reply.status_code == 201
    assert isinstance(reply.parsed, models.Answers)
    (answer,) = reply.parsed.answers
    assert answer.form.boat.model == FORM["boat"]["model"]
    assert answer.suggestions[0].configuration.gear == "gear-720"
    assert 0 < answer.suggestions[0].fit.probability <= 1
    kept = call(here, part("api.enquiries.get_answer"), answer_id=answer.id)
    assert kept.parsed == answer
    drawn = call(here, part("api.enquiries.get_drawing"), enquiry_id=answer.enquiry)
    assert drawn.parsed.payload.read().startswith(b"<svg")
    listed = call(here, part("api.enquiries.get_enquiries"), limit=1)
    assert [one.id for one in listed.parsed.enquiries] == [answer.enquiry]


def test_it_reads_a_problem(made: Path, here: House) -> None:
    assert made.is_dir()
    models, create = part("models"), part("api.enquiries.create_enquiry")
    reply = call(here, create, body=models.TextEnquiry(text=""), idempotency_key="nothing-said")
    assert reply.status_code == 422
    assert isinstance(reply.parsed, models.ProblemDocument)
    assert reply.parsed.errors[0].pointer == "/text"


def call(here: House, operation: Any, **said: object) -> Any:  # noqa: ANN401 - the same
    """Call an operation of the client, which speaks to the application without a socket in between."""

    async def asked() -> Any:  # noqa: ANN401 - the same
        client = part("client").AuthenticatedClient(base_url="http://test", token=here.keys["mine"])
        headers = {"Authorization": f"Bearer {here.keys['mine']}"}
        transport = httpx.ASGITransport(app=here.app)
        async with httpx.AsyncClient(transport=transport, base_url="http://test", headers=headers) as raw:
            client.set_async_httpx_client(raw)
            return await operation.asyncio_detailed(client=client, **said)

    return asyncio.run(asked())
