"""The house at the desk: users, keys, the audit, jobs, and how it all stands."""

from __future__ import annotations

import re
from datetime import timedelta

import pytest

from service.flow.authenticate import authenticate
from service.flow.refusal import Refused
from service.flow.restore_key import MOMENT, restore_key
from service.flow.revoke_key import revoke_key
from service.flow.sign_in import sign_in
from service.flow.start_job import start_job
from service.store.audit import Sought
from service.store.happening import Actor, Happening
from service.store.unit import Store
from tests.support.notices import undo_in
from tests.support.offices import Office, send

USERS, KEYS = "/desk/house/users", "/desk/house/keys"


def handed(text: str) -> str:
    """Return what a page hands out once."""
    found = re.search(r'<code class="secret">([^<]+)</code>', text)
    assert found
    return found[1]


def test_the_state_says_what_is_in_force(here: Office) -> None:
    text = here.client("admin").get("/desk/house").text
    with here.store.reading() as uow:
        catalogue, records = uow.catalogues.latest(), uow.records.count()
    assert catalogue is not None
    assert f"<dd>{catalogue.version}</dd>" in text
    assert f"<dd>{records}</dd>" in text
    assert "up to date" in text
    assert "SQLite" in text


def test_somebody_is_let_in_with_a_password_that_is_shown_once(everywhere: Office) -> None:
    client = everywhere.client("admin")
    made = send(client, USERS, USERS, login="Gil@Example.com", name="Gil <b>Moor</b>", role="dealer", dealer="Quayside")
    assert made.status_code == 200
    password = handed(made.text)
    assert made.headers["cache-control"] == "private, no-store"
    assert sign_in(everywhere.store, "gil@example.com", password, "", ticket="t").user.dealer == "Quayside"
    listed = client.get(USERS).text
    assert password not in listed
    assert "Gil &lt;b&gt;Moor&lt;/b&gt;" in listed
    with everywhere.store.reading() as uow:
        lines = uow.audit.page(Sought(who="finn", kind="user"), after=None, limit=5)
    assert [entry.action for _, entry in lines] == ["created"]


def test_what_was_written_comes_back_where_it_cannot_be_taken(here: Office) -> None:
    client = here.client("admin")
    for login, role, said in (("ada@example.com", "desk", "signs in by that name already"), ("no mail", "desk", "no mail address"),
                              ("hal@example.com", "dealer", "need the dealer")):  # fmt: skip
        refused = send(client, USERS, USERS, login=login, name="Hal", role=role)
        assert refused.status_code == 422
        assert said in refused.text
        assert f'value="{login}"' in refused.text
        assert 'value="Hal"' in refused.text


def test_a_role_is_changed_and_changed_back(here: Office) -> None:
    client, at = here.client("admin"), f"{USERS}/bo@example.com"
    assert send(client, at, at, name="Bo Lind", role="fitter").status_code == 303
    assert here.client("second").get("/desk/hulls").status_code == 403
    send(client, USERS, undo_in(client.get(at).text))
    assert here.client("second").get("/desk/hulls").status_code == 200


def test_a_reset_ends_what_was_before_and_closing_is_undone(here: Office) -> None:
    client, at = here.client("admin"), f"{USERS}/cleo@example.com"
    before = here.client("dealer")
    assert before.get("/desk/account").status_code == 200
    password = handed(send(client, at, f"{at}/reset").text)
    assert before.get("/desk/account").status_code == 303
    assert sign_in(here.store, "cleo@example.com", password, "", ticket="t2").user.fresh
    assert send(client, at, f"{at}/close").headers["location"] == USERS
    with pytest.raises(Refused):
        sign_in(here.store, "cleo@example.com", password, "", ticket="t3")
    send(client, USERS, undo_in(client.get(USERS).text))
    assert sign_in(here.store, "cleo@example.com", password, "", ticket="t4").user.login == "cleo@example.com"


def test_nobody_closes_themselves(here: Office) -> None:
    client, at = here.client("admin"), f"{USERS}/finn@example.com"
    assert send(client, at, f"{at}/close").status_code == 422
    assert send(client, at, at, name="Finn Oster", role="desk").status_code == 422
    assert client.get(at).status_code == 200
    assert client.get(f"{USERS}/nobody").status_code == 404


def test_a_key_is_shown_once_taken_back_and_given_back(here: Office) -> None:
    client = here.client("admin")
    made = send(client, KEYS, KEYS, name="web <form>", scope="enquiries:write", dealer="Quayside", days="30")
    assert made.status_code == 200
    text = handed(made.text)
    caller = authenticate(here.store, text)
    assert caller is not None
    assert caller.may("enquiries:write")
    listed = client.get(KEYS).text
    assert text not in listed
    assert "web &lt;form&gt;" in listed
    assert send(client, KEYS, f"{KEYS}/{caller.key}/revoke").status_code == 303
    assert authenticate(here.store, text) is None
    send(client, KEYS, undo_in(client.get(KEYS).text))
    assert authenticate(here.store, text) is not None
    refused = send(client, KEYS, KEYS, name="nothing", days="long")
    assert refused.status_code == 422
    assert 'value="long"' in refused.text
    assert 'value="nothing"' in refused.text


def test_a_key_is_given_back_for_a_moment_only(here: Office) -> None:
    client = here.client("admin")
    made = authenticate(here.store, handed(send(client, KEYS, KEYS, name="late", scope="records:read").text))
    assert made is not None
    revoke_key(here.store.writing(), made.key)
    with here.store.writing() as uow:
        uow.keys.set(made.key, revoked=uow.now() - MOMENT - timedelta(seconds=5))
        uow.commit()
    with pytest.raises(Refused, match="longer than ten minutes"):
        restore_key(here.store.writing(), made.key)
    with pytest.raises(Refused, match="no revoked key"):
        restore_key(here.store.writing(), "never")


def test_the_audit_is_found_by_who_and_what_and_read_page_by_page(here: Office) -> None:
    client, at = here.client("admin"), "/desk/house/audit?who=100%25"
    assert "No such line" in client.get(at).text  # a percent sign is no wildcard
    _note(here.store, 120)
    at, seen = "/desk/house/audit?who=ogg&kind=thing", list[str]()
    while at:
        text = client.get(at).text
        seen += re.findall(r"thing=n-\d+\">(n-\d+)</a>", text)
        more = re.search(r'class="button" href="([^"]+)">Earlier', text)
        at = more[1].replace("&amp;", "&") if more else ""
    assert seen == [f"n-{number}" for number in reversed(range(120))]
    assert client.get("/desk/house/audit?after=x").status_code == 422
    assert client.get("/desk/house/audit?after=2024-01-01~x").status_code == 422


def _note(store: Store, count: int) -> None:
    with store.writing() as uow:
        for number in range(count):
            uow.audit.note(Actor("Ogg <b>Vale</b>"), [Happening("created", "thing", f"n-{number}")])
        uow.commit()


def test_a_job_is_cancelled_and_gone_on_with(here: Office) -> None:
    client = here.client("admin")
    job = start_job(here.store.writing(), "nothing-known", "far away", {}, actor=Actor("test"), total=7)
    text = client.get("/desk/house/jobs").text
    assert "far away" in text
    to = f"/desk/house/jobs/{job.id}"
    with here.store.reading() as uow:
        over = uow.jobs.get(job.id).over
    first, second = ("resume", "cancel") if over else ("cancel", "resume")
    assert send(client, "/desk/house/jobs", f"{to}/{first}").status_code == 303
    assert f"{to}/{second}" in client.get("/desk/house/jobs").text
