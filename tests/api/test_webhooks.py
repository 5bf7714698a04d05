"""Webhooks: written with the thing, signed, sent to the open internet alone, tried again, stopped by 410."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import timedelta
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from threading import Thread
from typing import Any

import pytest
from standardwebhooks import Webhook

from service import bootstrap
from service.api.courier import Courier
from service.api.examples import FORM
from service.flow.add_webhook import add_webhook, see_address
from service.flow.deliver import GIVEN_UP, deliver
from service.flow.refusal import Refused
from service.store.outbox import Letter
from service.store.unit import Store
from tests.api.conftest import House, Refusal


@dataclass
class Ear:
    """A listener on this machine: what it heard, and what it answers next."""

    url: str
    heard: list[tuple[dict[str, str], str, str]] = field(default_factory=list)
    answers: list[int] = field(default_factory=list)


@pytest.fixture
def ear() -> Iterator[Ear]:
    found = Ear("")

    class Handler(BaseHTTPRequestHandler):
        def do_POST(self) -> None:
            body = self.rfile.read(int(self.headers["content-length"])).decode()
            found.heard.append(({k.lower(): v for k, v in self.headers.items()}, body, self.path))
            code = found.answers.pop(0) if found.answers else 204
            self.send_response(code)
            if 300 <= code < 400:
                self.send_header("Location", "/elsewhere")
            self.send_header("Content-Length", "0")
            self.end_headers()

        def log_message(self, *_: object) -> None:
            """Say nothing."""

    server = ThreadingHTTPServer(("127.0.0.1", 0), Handler)
    thread = Thread(target=server.serve_forever, kwargs={"poll_interval": 0.01})
    thread.start()
    found.url = f"http://127.0.0.1:{server.server_address[1]}/hook?a=1"
    yield found
    server.shutdown()
    thread.join()
    server.server_close()


@pytest.fixture
def courier() -> Iterator[Courier]:
    made = Courier(bootstrap.clock, insecure=True)
    yield made
    made.close()


@pytest.fixture(autouse=True)
def _no_others(here: House) -> None:
    with here.store.writing() as uow:
        for hook in uow.webhooks.of(None):
            uow.webhooks.remove(hook.id)
        uow.commit()


def listen(store: Store, owner: str, url: str, *events: str) -> str:
    """Register a webhook that may lead to this machine, and return its secret."""
    with store.writing() as uow:
        return add_webhook(uow, owner, url, events, random=bytes(range(32)), insecure=True).secret


def carry(store: Store, courier: Courier) -> int:
    return deliver(store, courier.send, lambda: 0.5)


def test_an_answer_is_told_to_its_dealer_signed_and_without_its_content(
    here: House, ear: Ear, courier: Courier
) -> None:
    secret = listen(here.store, "Hafenladen Ems", ear.url, "answer.ready")
    listen(here.store, "Quayside Rigging", ear.url.replace("hook", "other"), "answer.ready")
    answer = here.post("/v1/enquiries", {**FORM, "contact": {"name": "Ada Strand"}}).json()["answers"][0]
    assert carry(here.store, courier) == 1
    ((headers, body, path),) = ear.heard
    assert path == "/hook?a=1"
    told = Webhook(secret).verify(body, headers)
    assert told["type"] == "answer.ready"
    assert told["data"] == {"answers": [{"answer": answer["id"], "enquiry": answer["enquiry"]}]}
    assert "Ada" not in body
    assert carry(here.store, courier) == 0


def test_a_changed_record_is_told_to_everybody_who_asked_whoever_changed_it(
    here: House, ear: Ear, courier: Courier
) -> None:
    listen(here.store, "Quayside Rigging", ear.url, "record.changed")
    listen(here.store, "", ear.url, "answer.ready")
    path = "/v1/records/2003-006"
    headers = here.head("desk", **{"If-Match": here.get(path, "desk").headers["etag"]})
    change = {"set": {"boat.year": 1990}, "why": "seen"}
    assert here.client.patch(path, json=change, headers=headers).status_code == 200
    assert carry(here.store, courier) == 1
    body = json.loads(ear.heard[0][1])
    assert body["data"] == {"records": [{"reference": "2003-006", "revision": 2}]}


def test_what_is_not_committed_is_not_told(here: House) -> None:
    listen(here.store, "", "https://hooks.example.com/", "record.changed")
    with here.store.reading() as uow:
        record = uow.records.all()[0]
    with here.store.writing() as uow:
        uow.records.add(record.model_copy(update={"reference": "2097-001"}), who="a", why="b")
    with here.store.reading() as uow:
        assert uow.outbox.waiting() == 0


def test_a_failure_is_tried_again_under_the_same_id_and_410_ends_it(here: House, ear: Ear, courier: Courier) -> None:
    listen(here.store, "", ear.url)
    ear.answers += [500, 410]
    here.post("/v1/enquiries", FORM)
    assert carry(here.store, courier) == 1
    assert carry(here.store, courier) == 0  # not yet
    later = Store(here.url, now=lambda: bootstrap.clock() + timedelta(minutes=1), new_id=lambda kind: f"{kind}-x")
    assert carry(later, courier) == 1
    assert len({headers["webhook-id"] for headers, _, _ in ear.heard}) == 1
    later.close()
    hook = here.get("/v1/webhooks", "desk").json()["webhooks"][0]
    assert hook["why"] == "its address answered 410 (gone)"
    here.post("/v1/enquiries", {**FORM, "boat": {"model": "Tarnholt 33"}})
    assert len(ear.heard) == 2
    with here.store.reading() as uow:
        assert uow.outbox.waiting() == 0


def test_after_a_day_it_is_given_up(here: House, ear: Ear, courier: Courier) -> None:
    listen(here.store, "", ear.url)
    ear.answers += [503, 503]
    here.post("/v1/enquiries", FORM)
    carry(here.store, courier)
    later = Store(here.url, now=lambda: bootstrap.clock() + GIVEN_UP, new_id=lambda kind: f"{kind}-y")
    assert carry(later, courier) == 1
    with later.reading() as uow:
        assert uow.outbox.waiting() == 0
    later.close()


def test_redirects_are_not_followed(
    here: House, ear: Ear, courier: Courier, capsys: pytest.CaptureFixture[str]
) -> None:
    listen(here.store, "", ear.url)
    ear.answers += [302]
    here.post("/v1/enquiries", FORM)
    carry(here.store, courier)
    assert [path for _, _, path in ear.heard] == ["/hook?a=1"]
    assert '"told": 302' in capsys.readouterr().err
    with here.store.reading() as uow:
        assert uow.outbox.waiting() == 1


@pytest.mark.parametrize(
    "numbers", [["127.0.0.1"], ["10.1.2.3"], ["93.184.216.34", "192.168.1.9"], ["::1"], ["fd00::1"], ["169.254.169.254"],
                ["::ffff:10.0.0.1"], ["0.0.0.1"], ["100.64.0.1"]],
)  # fmt: skip
def test_a_name_that_leads_inside_is_not_called(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], numbers: list[str]
) -> None:
    found = [(0, 0, 0, "", (number, 443)) for number in numbers]
    monkeypatch.setattr("socket.getaddrinfo", lambda *_, **__: found)
    strict = Courier(bootstrap.clock)
    told = strict.send(Letter("o", "m", "w", "https://hooks.example.com/x", "whsec_QUJD", "{}", bootstrap.clock(), 0))
    strict.close()
    assert told == "not sent: its name leads to a private, local or reserved address"
    assert json.loads(capsys.readouterr().err)["told"] == told


@pytest.mark.parametrize(
    "url",
    ["http://a.example.com/", "ftp://a.example.com", "https://", "https://u:p@a.example.com/", "https://a.example.com:22/",
     "https://a.example.com/#x", "https://a.example.com/\r\nX: y", "https://exämple.com/", "https://[::1", "file:///etc/passwd",
     "https://localhost/", "https://a.localhost./", "https://ledger.internal/", "https://127.0.0.1/", "https://127.1/", "https://[::1]/",
     "https://2130706433/", "https://0x7f.0x1/", "https://10.0.0.8/", "https://169.254.169.254/latest", "https://[::ffff:10.0.0.1]/"],
)  # fmt: skip
def test_addresses_that_are_refused_at_once(here: House, refused: Refusal, url: str) -> None:
    with pytest.raises(Refused):
        see_address(url, insecure=False)
    assert refused(here.post("/v1/webhooks", {"url": url}), 422)["type"] == "/problems/refused"


def test_a_secret_is_shown_once(here: House) -> None:
    made: dict[str, Any] = here.post("/v1/webhooks", {"url": "https://a.example.com/"}).json()
    assert made["secret"].startswith("whsec_")
    assert made["secret"] not in here.get("/v1/webhooks").text
    headers = here.head("mine")
    assert here.client.delete(f"/v1/webhooks/{made['id']}", headers=headers).status_code == 204
    assert here.client.delete(f"/v1/webhooks/{made['id']}", headers=headers).status_code == 404


def test_records_are_told_to_those_alone_who_may_read_them(here: House) -> None:
    wanted = {"url": "https://a.example.com/", "events": ["record.changed"]}
    assert here.post("/v1/webhooks", wanted, "enquiries:write").status_code == 403
    usual = here.post("/v1/webhooks", {"url": "https://a.example.com/"}, "enquiries:write")
    assert usual.json()["events"] == ["answer.ready"]
