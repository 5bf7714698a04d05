"""A sales desk on a seeded ledger: the application, people of every role, and how each of them comes in."""

from __future__ import annotations

import os
import re
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from fastapi import FastAPI
from fastapi.testclient import TestClient

from service import bootstrap
from service.core.password import TOKEN_BYTES
from service.files.vault import Vault
from service.flow.manage_users import GIVEN_BYTES, add_user
from service.flow.sign_in import sign_in
from service.serve import joined
from service.settings import Serving
from service.store.unit import Store
from service.web.who import COOKIE

DEALER, OTHER = "Hafenladen Ems", "Quayside Rigging"
PEOPLE = {
    "desk": ("ada@example.com", "Ada Holm", "desk", None),
    "second": ("bo@example.com", "Bo Lind", "desk", None),
    "dealer": ("cleo@example.com", "Cleo Brandt", "dealer", DEALER),
    "other": ("dov@example.com", "Dov Reyes", "dealer", OTHER),
    "fitter": ("eva@example.com", "Eva Sund", "fitter", None),
    "admin": ("finn@example.com", "Finn Oster", "admin", None),
}
SITE = "https://desk.example.com"


@dataclass
class Office:
    """A ledger with its application; `tokens` are the cookies of people by what they are called in PEOPLE."""

    url: str
    store: Store
    app: FastAPI
    tokens: dict[str, str]

    def client(self, who: str | None = "desk") -> TestClient:
        """Return a client signed in as one of PEOPLE, or as nobody."""
        made = TestClient(self.app, base_url=SITE, follow_redirects=False)
        if who is not None:
            made.cookies.set(COOKIE, self.tokens[who], domain="desk.example.com", path="/")
        return made


def csrf(text: str) -> str:
    """Return the word that the forms of a page carry."""
    found = re.search(r'name="csrf" value="([0-9a-f]+)"', text)
    assert found, "the page has no form"
    return found[1]


def send(client: TestClient, page: str, to: str, files: Any = None, **fields: str) -> Any:  # noqa: ANN401 - a response
    """Post a form as a browser does that has `page` open."""
    word = csrf(client.get(page).text)
    return client.post(to, data={"csrf": word, **fields}, files=files, headers={"Sec-Fetch-Site": "same-origin"})


@contextmanager
def office(url: str, folder: Path) -> Iterator[Office]:
    """Yield the desk on a database that was seeded; attachments stand in `folder`."""
    store = bootstrap.open_store(bootstrap.settings(url))
    tokens = {who: _let_in(store, *said) for who, said in PEOPLE.items()}
    serving = Serving(requests=1_000_000, strangers=1_000_000)
    app = joined(store, Vault(folder), serving, clock=bootstrap.clock, random=os.urandom)
    with TestClient(app):  # alive until the end
        yield Office(url, store, app, tokens)


def _let_in(store: Store, login: str, name: str, role: str, dealer: str | None) -> str:
    made = add_user(store.writing(), login, name=name, role=role, dealer=dealer, random=os.urandom(GIVEN_BYTES))
    with store.writing() as uow:
        uow.users.set(made.user.id, fresh=False)
        uow.commit()
    token = os.urandom(TOKEN_BYTES).hex()
    sign_in(store, login, made.password, "", ticket=token)
    return token
