"""One seeded ledger for all tests of the service over HTTP, on each kind of database where that matters."""

from __future__ import annotations

import json
import os
import shutil
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from itertools import count
from pathlib import Path
from typing import Any

import pytest
import sqlalchemy as sa
from fastapi import FastAPI
from fastapi.testclient import TestClient

from service import bootstrap
from service.api.app import create_app
from service.api.examples import FORM
from service.api.log import configure
from service.api.problems import KINDS
from service.core.api_key import RANDOM_BYTES
from service.flow.create_key import KeyWanted, create_key
from service.settings import Serving
from service.store import schema
from service.store.unit import Store
from tests.support.databases import Databases
from tests.support.seeding import seeded_like

MINE, OTHER = "Hafenladen Ems", "Quayside Rigging"
EVERY = ("enquiries:write", "enquiries:read", "records:read", "records:write", "reports:read")


@dataclass
class House:
    """A ledger, its application, a client within its life, and keys by name."""

    url: str
    store: Store
    app: FastAPI
    client: TestClient
    keys: dict[str, str]
    _numbers: Iterator[int] = field(default_factory=lambda: count(1))

    def head(self, who: str | None, **more: str) -> dict[str, str]:
        """Return the headers of one of the keys, with an Idempotency-Key nobody used before."""
        keyed = {} if who is None else {"X-API-Key": self.keys[who]}
        return {**keyed, "Idempotency-Key": f"test-{next(self._numbers)}", **more}

    def get(self, path: str, who: str | None = "mine", **more: str) -> Any:  # noqa: ANN401 - a response
        return self.client.get(path, headers=self.head(who, **more))

    def post(self, path: str, body: object, who: str | None = "mine", **more: str) -> Any:  # noqa: ANN401 - the same
        return self.client.post(path, json=body, headers=self.head(who, **more))


def key(store: Store, name: str, scopes: tuple[str, ...], dealer: str | None = None) -> str:
    """Make a key and return its text."""
    with store.writing() as uow:
        wanted = KeyWanted(name, scopes, dealer)
        return create_key(uow, wanted, random=os.urandom(RANDOM_BYTES), who="tests").text


def expired(store: Store) -> str:
    """Make a key that has ended."""
    text = key(store, "expired", EVERY, MINE)
    with store.writing() as uow:
        uow.keys.set(text.split("_")[1], expires=uow.now())
        uow.commit()
    return text


def house(url: str, serving: Serving) -> Iterator[House]:
    """Yield an application on a database, alive."""
    store = bootstrap.open_store(bootstrap.settings(url))
    keys = {
        "mine": key(store, "mine", EVERY, MINE),
        "other": key(store, "other", EVERY, OTHER),
        "desk": key(store, "desk", ("admin",)),
        "clerk": key(store, "clerk", EVERY),
        "expired": expired(store),
        **{scope: key(store, scope, (scope,), MINE) for scope in EVERY},
    }
    app = create_app(store, serving, clock=bootstrap.clock, random=os.urandom)
    with TestClient(app, raise_server_exceptions=True) as client:
        yield House(url, store, app, client, keys)


@pytest.fixture(scope="session", autouse=True)
def _quiet(tmp_path_factory: pytest.TempPathFactory) -> Iterator[None]:
    """Log as a running service does, and let nothing of this run's environment in."""
    configure()
    yield
    del tmp_path_factory


@pytest.fixture(scope="module")
def here(ledger: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[House]:
    """Return a house on a copy of the seeded file, for one module."""
    file = shutil.copy(ledger, tmp_path_factory.mktemp("house") / "ledger.sqlite")
    yield from house(f"sqlite:///{file}", Serving(requests=1_000_000, strangers=1_000_000))


@pytest.fixture(scope="module")
def asked(here: House) -> dict[str, Any]:
    """Return the one answer to a form that the dealer `mine` posted."""
    response = here.post("/v1/enquiries", FORM)
    assert response.status_code == 201, response.text
    answer: dict[str, Any] = response.json()["answers"][0]
    return answer


@pytest.fixture(scope="session")
def everywhere(every_database: Databases, ledger: Path) -> Callable[[], str]:
    """Return what gives a seeded database of each kind in turn."""
    return lambda: seeded_like(every_database, ledger)


def kept(here: House) -> dict[str, int]:
    """Return how many rows there are of all that a request may leave behind."""
    with here.store._engine.connect() as connection:
        return {
            name: connection.execute(sa.select(sa.func.count()).select_from(schema.metadata.tables[name])).scalar_one()
            for name in ("enquiries", "answers", "records", "webhooks", "outbox", "imports", "idempotency")
        }


def told(response: Any, status: int) -> dict[str, Any]:  # noqa: ANN401 - a response
    """Return the problem document, seen to be one."""
    assert response.status_code == status, response.text
    assert response.headers["content-type"] == "application/problem+json"
    document: dict[str, Any] = response.json()
    assert set(document) == {"type", "title", "status", "detail", "instance", "errors", "request_id"}
    assert document["status"] == status
    assert document["type"].removeprefix("/problems/") in KINDS
    assert document["request_id"] == response.headers["x-request-id"]
    return document


Refusal = Callable[[Any, int], dict[str, Any]]


@pytest.fixture
def refused(here: House, capsys: pytest.CaptureFixture[str]) -> Refusal:
    """Return what sees that a response refuses, that the log tells of it in one line, and that nothing was kept."""
    before = kept(here)
    capsys.readouterr()

    def see(response: Any, status: int) -> dict[str, Any]:  # noqa: ANN401 - a response
        document = told(response, status)
        lines = [json.loads(line) for line in capsys.readouterr().err.splitlines()]
        (line,) = [line for line in lines if line["request_id"] == document["request_id"]]
        assert (line["event"], line["level"], line["status"]) == ("request", "info", status)
        assert kept(here) == before
        return document

    return see
