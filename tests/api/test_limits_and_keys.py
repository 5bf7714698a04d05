"""Keys and their ends, and how much they may ask."""

from __future__ import annotations

import json
import shutil
from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path

import pytest
import sqlalchemy as sa

from service.core.api_key import key_id
from service.flow.authenticate import authenticate
from service.flow.create_key import KeyWanted, create_key
from service.flow.refusal import Refused
from service.flow.revoke_key import revoke_key
from service.settings import Serving
from service.store import schema
from service.store.limits import Windows
from tests.api.conftest import EVERY, MINE, House, house, key


@pytest.fixture(scope="module")
def narrow(ledger: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[House]:
    """Return a house in which a key may ask five times a minute, and an address without one three times."""
    file = shutil.copy(ledger, tmp_path_factory.mktemp("narrow") / "ledger.sqlite")
    yield from house(f"sqlite:///{file}", Serving(requests=5, strangers=3))


def test_a_key_is_told_what_is_left_and_then_to_wait(narrow: House) -> None:
    left = [narrow.get("/v1/webhooks") for _ in range(5)]
    assert [one.status_code for one in left] == [200] * 5
    assert [one.headers["ratelimit"].split(";t=")[0] for one in left] == [f'"dealer";r={n}' for n in (4, 3, 2, 1, 0)]
    assert {one.headers["ratelimit-policy"] for one in left} == {'"dealer";q=5;w=60'}
    over = narrow.get("/v1/webhooks")
    assert (over.status_code, over.json()["type"]) == (429, "/problems/too-many")
    assert 1 <= int(over.headers["retry-after"]) <= 60
    assert narrow.get("/v1/webhooks", "other").status_code == 200


def test_an_address_without_a_key_is_counted_and_keeps_no_key_out(narrow: House) -> None:
    got = [narrow.get("/v1/reconcile", None).status_code for _ in range(5)]
    assert got == [200, 200, 200, 429, 429]
    assert narrow.get("/v1/webhooks", None).status_code == 429
    assert narrow.get("/v1/webhooks", "clerk").status_code == 200
    assert narrow.get("/health/live", None).status_code == 200


def test_workers_count_together(tmp_path: Path) -> None:
    one, other = Windows(tmp_path / "counters"), Windows(tmp_path / "counters")
    assert [one.incr("a", 60), other.incr("a", 60), one.incr("a", 60), other.incr("b", 60)] == [1, 2, 3, 1]
    assert other.get("a") == 3
    assert one.incr("short", 0) == 1
    assert other.incr("short", 0) == 1  # the window is over at once
    one.clear("a")
    assert other.get("a") == 0
    one.close()
    other.close()


def test_a_key_is_kept_as_its_hash_alone(here: House) -> None:
    text = here.keys["mine"]
    with here.store._engine.connect() as connection:
        rows = connection.execute(sa.select(schema.metadata.tables["api_keys"])).all()
    assert all(text.split("_")[2][:20] not in repr(row) for row in rows)
    assert len({row.digest for row in rows}) == len(rows)
    assert all(len(row.digest) == 64 for row in rows)


@pytest.mark.parametrize("place", [0, 3, 20, 40, 64])
def test_a_mistyped_key_is_told_by_its_checksum(here: House, place: int) -> None:
    text = here.keys["mine"]
    other = text[:place] + ("x" if text[place] != "x" else "y") + text[place + 1 :]
    assert key_id(text) is not None
    assert key_id(other) is None
    assert authenticate(here.store, other) is None


def test_both_ways_to_send_a_key_are_taken(here: House) -> None:
    for headers in ({"Authorization": f"Bearer {here.keys['mine']}"}, {"X-API-Key": here.keys["mine"]}):
        assert here.client.get("/v1/webhooks", headers=headers).status_code == 200
    assert here.client.get("/v1/webhooks", headers={"Authorization": f"Basic {here.keys['mine']}"}).status_code == 401
    assert here.client.get(f"/v1/webhooks?key={here.keys['mine']}").status_code == 401


def test_a_revoked_key_opens_nothing_from_then_on(here: House) -> None:
    text = key(here.store, "soon gone", EVERY, MINE)
    assert here.client.get("/v1/webhooks", headers={"X-API-Key": text}).status_code == 200
    with here.store.writing() as uow:
        revoke_key(uow, str(key_id(text)))
    assert here.client.get("/v1/webhooks", headers={"X-API-Key": text}).status_code == 401


def test_a_replaced_key_works_until_its_grace_is_over(here: House) -> None:
    old = key(here.store, "old", ("enquiries:read",), MINE)
    with here.store.writing() as uow:
        made = create_key(uow, KeyWanted(replaces=key_id(old), grace_days=2), random=bytes(range(64)), who="tests")
    assert (made.key.name, made.key.dealer, made.key.scopes) == ("old", MINE, ("enquiries:read",))
    with here.store.reading() as uow:
        before = uow.keys.get(str(key_id(old)))
        now = uow.now()
    assert before is not None
    assert before.valid(now + timedelta(days=1.9))
    assert not before.valid(now + timedelta(days=2.1))
    for text in (old, made.text):
        assert here.client.get("/v1/webhooks", headers={"X-API-Key": text}).status_code == 200


@pytest.mark.parametrize(
    ("wanted", "said"),
    [
        (KeyWanted("a", ("enquiry:read",)), "did you mean"),
        (KeyWanted("a"), "give a scope"),
        (KeyWanted("a", ("admin",), "Hafenladen"), "cannot be 'admin'"),
        (KeyWanted("a", ("admin",), days=0), "lasts 1 to"),
        (KeyWanted("a", replaces="nobody"), "no key 'nobody'"),
    ],
)
def test_keys_that_cannot_be_made(here: House, wanted: KeyWanted, said: str) -> None:
    with here.store.writing() as uow, pytest.raises(Refused, match=said):
        create_key(uow, wanted, random=bytes(64), who="tests")


def test_it_is_known_when_a_key_was_last_used(here: House) -> None:
    text = key(here.store, "used", ("enquiries:read",), MINE)
    with here.store.reading() as uow:
        assert getattr(uow.keys.get(str(key_id(text))), "used", "") is None
    authenticate(here.store, text)
    with here.store.reading() as uow:
        found = uow.keys.get(str(key_id(text)))
    assert found is not None
    assert found.used is not None


def test_metrics_are_for_this_machine_and_admins(here: House) -> None:
    assert here.get("/metrics", None).status_code == 401  # the test client is no address of this machine
    assert here.get("/metrics", "clerk").status_code == 403
    page = here.get("/metrics", "desk").text
    assert 'route="/v1/webhooks"' in page
    assert "tk_" not in page


def test_readiness_says_what_is_away_and_nothing_private(here: House, monkeypatch: pytest.MonkeyPatch) -> None:
    assert here.get("/health/ready", None).json() == {
        "status": "ok",
        "checks": {"database": True, "revision": True, "disk": True},
    }
    monkeypatch.setattr("service.api.health.LEAST_FREE", 10**18)
    full = here.get("/health/ready", None)
    assert (full.status_code, full.json()["checks"]["disk"]) == (503, False)
    monkeypatch.setattr("service.store.check.HEAD", "9999")
    assert here.get("/health/ready", None).json()["checks"]["revision"] is False


def test_the_log_is_one_line_a_request_and_holds_nothing_of_anybody(
    here: House, capsys: pytest.CaptureFixture[str]
) -> None:
    secret = {"text": "Please call Ada Strand, ada@example.com, about spares. Thank you"}
    response = here.post("/v1/enquiries", secret, **{"X-Request-ID": "seen-1"})
    lines = [json.loads(line) for line in capsys.readouterr().err.splitlines()]
    assert [line["request_id"] for line in lines] == ["seen-1"]
    assert lines[0]["status"] == response.status_code
    assert lines[0]["route"] == "/v1/enquiries"
    for word in ("Ada", "ada@", here.keys["mine"], "testclient"):
        assert word not in json.dumps(lines)
