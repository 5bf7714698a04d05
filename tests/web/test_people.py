"""People at the desk: found, given out with a line in the audit, erased after a name was typed, due by age."""

from __future__ import annotations

import json

import pytest

from service.store.audit import Sought
from tests.support.offices import Office, send
from tests.support.things import made

HERE = "/desk/people"


@pytest.fixture(scope="module")
def who(here: Office) -> str:
    return made(here.store)["contact"]


def test_somebody_is_found_by_a_part_and_given_out_which_the_audit_knows(here: Office, who: str) -> None:
    client = here.client()
    text = client.get(f"{HERE}?q=lindq").text
    assert "mara.lindqvist@example.org" in text
    assert "Erase" not in text  # that is for an admin
    assert "Nobody of that name" in client.get(f"{HERE}?q=zzz").text
    given = send(client, f"{HERE}?q=lindq", f"{HERE}/export", who=who)
    assert given.headers["content-disposition"].startswith("attachment")
    assert given.headers["content-type"] == "application/json"
    assert json.loads(given.content)["contacts"][0]["email"] == "mara.lindqvist@example.org"
    with here.store.reading() as uow:
        lines = uow.audit.page(Sought(who="Ada Holm", action="read", kind="contact", thing=who), after=None, limit=3)
    assert len(lines) == 1


def test_who_is_due_depends_on_the_months(here: Office, who: str) -> None:
    client = here.client("admin")
    with here.store.writing() as uow:
        heard = uow.now().year
    months = (heard - 2020) * 12
    assert who not in client.get(f"{HERE}/retention?months={months}").text
    refused = client.get(f"{HERE}/retention?months=many")
    assert refused.status_code == 422
    assert 'value="many"' in refused.text


def test_erasing_is_looked_at_confirmed_by_the_name_and_done(here: Office, who: str) -> None:
    client = here.client("admin")
    text = client.get(f"{HERE}/erase?looked=1&who={who}").text
    assert "cannot be undone" in text
    assert "Mara Lindqvist" in text
    for name, why in (("Mara Lindquist", "asked"), ("", "asked"), ("Mara Lindqvist", "Mara Lindqvist asked")):
        refused = send(client, f"{HERE}/erase?looked=1&who={who}", f"{HERE}/erase", who=who, name=name, why=why)
        assert refused.status_code == 422, name
        assert f'value="{why}"' in refused.text
    with here.store.reading() as uow:
        assert any(one.id == who for one in uow.people.all())
    done = send(
        client,
        f"{HERE}/erase?looked=1&who={who}",
        f"{HERE}/erase",
        who=who,
        name=" mara  lindqvist ",
        why="asked to be",
    )
    assert done.status_code == 303
    with here.store.reading() as uow:
        assert not any(one.id == who for one in uow.people.all())
    assert client.get(f"{HERE}/erase?looked=1&who={who}").status_code == 404
