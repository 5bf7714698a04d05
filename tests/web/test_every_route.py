"""Every route of the desk, with nobody signed in, with each role, and without the word that forms carry."""

from __future__ import annotations

import pytest
from fastapi.routing import APIRoute

from service.web.app import PARTS
from service.web.pages import ROOT
from tests.support.offices import PEOPLE, Office, csrf
from tests.web.walk import NOBODY, WALKS

SAME = {"Sec-Fetch-Site": "same-origin"}
ROLES = {who: role for who, (_, _, role, _) in PEOPLE.items() if who in {"desk", "dealer", "fitter", "admin"}}
KEPT = [key for key, walk in WALKS.items() if walk.roles != NOBODY]


def test_no_route_is_left_out() -> None:
    routes = [route for part in PARTS for route in part.routes.routes if isinstance(route, APIRoute)]
    found = {(method, route.path) for route in routes for method in (route.methods or set()) - {"HEAD"}}
    assert {("GET", "/"), *found} == set(WALKS)


@pytest.mark.parametrize("key", KEPT, ids=" ".join)
def test_who_is_not_signed_in_is_led_to_the_door(here: Office, things: dict[str, str], key: tuple[str, str]) -> None:
    response = here.client(None).request(key[0], WALKS[key].path.format(**things), headers=SAME)
    assert response.status_code == 303
    assert response.headers["location"].startswith(f"{ROOT}/sign-in")


@pytest.mark.parametrize("key", KEPT, ids=" ".join)
def test_a_role_that_may_not_is_told_so(here: Office, things: dict[str, str], key: tuple[str, str]) -> None:
    for who, role in ROLES.items():
        if role not in WALKS[key].roles:
            response = here.client(who).request(key[0], WALKS[key].path.format(**things), headers=SAME)
            assert response.status_code == 403, (who, response.text[:300])
            assert "Not for this account" in response.text or key[0] == "POST"


@pytest.mark.parametrize("key", [key for key in KEPT if key[0] == "POST"], ids=" ".join)
def test_nothing_is_changed_without_the_word_of_the_session(
    here: Office, things: dict[str, str], key: tuple[str, str]
) -> None:
    for who, role in ROLES.items():
        if role in WALKS[key].roles:
            response = here.client(who).post(WALKS[key].path.format(**things), headers=SAME)
            assert response.status_code == 403
            assert "Send it again from here" in response.text


def test_another_dealers_people_find_nothing(here: Office, things: dict[str, str]) -> None:
    client = here.client("other")
    data = {"csrf": csrf(client.get(f"{ROOT}/account").text)}
    for method, path in (key for key in KEPT if WALKS[key].other):
        address = WALKS[method, path].path.format(**things)
        response = client.request(method, address, headers=SAME, data=data if method == "POST" else None)
        assert response.status_code == 404, (method, address)
