"""The same request, however often and at whatever time it comes, works once. On both kinds of database."""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Iterator
from datetime import timedelta

import httpx
import pytest
import sqlalchemy as sa

from service.api.examples import FORM
from service.settings import Serving
from service.store import schema
from service.store.idempotency import LEASE, Reply
from tests.api.conftest import House, house

MANY = 50


@pytest.fixture(scope="module")
def both(everywhere: Callable[[], str]) -> Iterator[House]:
    yield from house(everywhere(), Serving(requests=1_000_000, strangers=1_000_000))


def rows(here: House, table: str) -> int:
    with here.store._engine.connect() as connection:
        counted = sa.select(sa.func.count()).select_from(schema.metadata.tables[table])
        return int(connection.execute(counted).scalar_one())


def test_fifty_at_once_make_one_enquiry_and_get_fifty_equal_answers(both: House) -> None:
    before = {name: rows(both, name) for name in ("enquiries", "answers")}
    headers = both.head("mine")

    async def storm() -> list[httpx.Response]:
        transport = httpx.ASGITransport(app=both.app)
        async with httpx.AsyncClient(transport=transport, base_url="http://test", timeout=120) as client:
            return await asyncio.gather(
                *(client.post("/v1/enquiries", json=FORM, headers=headers) for _ in range(MANY))
            )

    replies = asyncio.run(storm())
    assert {reply.status_code for reply in replies} == {201}
    assert len({reply.content for reply in replies}) == 1
    assert len({reply.headers["location"] for reply in replies}) == 1
    assert sum("idempotency-replayed" in reply.headers for reply in replies) == MANY - 1
    assert {name: rows(both, name) - count for name, count in before.items()} == {"enquiries": 1, "answers": 1}


def test_another_body_under_the_same_key_is_refused_and_another_dealer_may_use_it(both: House) -> None:
    headers = both.head("mine")
    assert both.client.post("/v1/enquiries", json={"text": "thank you"}, headers=headers).status_code == 200
    other = both.client.post("/v1/enquiries", json={"text": "thanks a lot"}, headers=headers)
    assert (other.status_code, other.json()["type"]) == (422, "/problems/key-reused")
    theirs = both.client.post(
        "/v1/enquiries", json={"text": "thanks a lot"}, headers={**headers, "X-API-Key": both.keys["other"]}
    )
    assert theirs.status_code == 200


@pytest.mark.parametrize("key", [None, "", "a" * 201, "blank\tinside"])
def test_a_request_without_a_usable_key_is_told_so(both: House, key: str | None) -> None:
    headers = {"X-API-Key": both.keys["mine"], **({} if key is None else {"Idempotency-Key": key})}
    response = both.client.post("/v1/enquiries", json=FORM, headers=headers)
    assert (response.status_code, response.json()["type"]) == (400, "/problems/key-missing")


def test_what_fails_is_not_remembered(both: House, monkeypatch: pytest.MonkeyPatch) -> None:
    headers, before = both.head("mine"), rows(both, "enquiries")

    def fail(*_: object, **__: object) -> None:
        raise RuntimeError("mast@example.com fell over")

    with monkeypatch.context() as patched:
        patched.setattr("service.api.enquiries.keep_answers", fail)
        broken = both.client.post("/v1/enquiries", json=FORM, headers=headers)
    assert (broken.status_code, broken.json()["type"]) == (500, "/problems/fault")
    assert "mast@example.com" not in broken.text
    assert rows(both, "enquiries") == before
    assert both.client.post("/v1/enquiries", json=FORM, headers=headers).status_code == 201
    assert rows(both, "enquiries") == before + 1


def test_whoever_was_taken_for_dead_writes_nothing(both: House) -> None:
    with both.store.writing() as uow:
        first = uow.idempotency.claim("dealer x", "k", "POST /", "f")
        assert uow.idempotency.claim("dealer x", "k", "POST /", "f").state == "running"
        assert uow.idempotency.claim("dealer x", "k", "POST /", "other").state == "other"
        started = uow.now() - LEASE - timedelta(seconds=1)
        uow.commit()
    with both.store._engine.connect().execution_options(writes=True) as raw, raw.begin():
        raw.execute(schema.metadata.tables["idempotency"].update().values(started=started))
    with both.store.writing() as uow:
        second = uow.idempotency.claim("dealer x", "k", "POST /", "f")
        assert first.claim is not None
        assert second.claim is not None
        with pytest.raises(Exception, match="taken for dead"):
            uow.idempotency.finish(first.claim, Reply(201, {}, "{}"))
        uow.idempotency.finish(second.claim, Reply(201, {}, "{}"))
        assert uow.idempotency.claim("dealer x", "k", "POST /", "f").reply == Reply(201, {}, "{}")
