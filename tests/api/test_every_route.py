"""Every route, with no key, an expired one, one of the wrong scope, and another dealer's ids. No route is left out."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import pytest
from fastapi.routing import APIRoute

from service.api.examples import FORM
from tests.api.conftest import House

CONFIGURATION = {"gear": "gear-720", "lower": "hinge-60-170", "upper": "hinge-270-420", "shaft": "shaft-1350"}
PUBLIC = "public"


@dataclass(frozen=True)
class Walk:
    """How one route is called: with which scope, body, and what another dealer gets."""

    scope: str
    path: str
    body: Any = None
    other: int | None = None
    form: bool = False


WALKS: dict[tuple[str, str], Walk] = {
    ("POST", "/v1/enquiries"): Walk("enquiries:write", "/v1/enquiries", FORM),
    ("GET", "/v1/enquiries"): Walk("enquiries:read", "/v1/enquiries"),
    ("GET", "/v1/enquiries/{enquiry_id}"): Walk("enquiries:read", "/v1/enquiries/{enquiry}", other=404),
    ("GET", "/v1/enquiries/{enquiry_id}/reply"): Walk("enquiries:read", "/v1/enquiries/{enquiry}/reply", other=404),
    ("GET", "/v1/enquiries/{enquiry_id}/drawing.svg"): Walk(
        "enquiries:read", "/v1/enquiries/{enquiry}/drawing.svg", other=404
    ),
    ("GET", "/v1/enquiries/{enquiry_id}/{name}"): Walk(
        "enquiries:read", "/v1/enquiries/{enquiry}/reply.html", other=404
    ),
    ("GET", "/v1/answers/{answer_id}"): Walk("enquiries:read", "/v1/answers/{answer}", other=404),
    ("POST", "/v1/fits"): Walk("enquiries:write", "/v1/fits", {"form": FORM, "configuration": CONFIGURATION}),
    ("GET", "/v1/hulls"): Walk("records:read", "/v1/hulls?name=Tarnholt"),
    ("GET", "/v1/records"): Walk("records:read", "/v1/records?dealer={dealer}", other=404),
    ("POST", "/v1/records"): Walk("records:write", "/v1/records", {"answer": "{answer}"}, other=404),
    ("GET", "/v1/records/{reference}"): Walk("records:read", "/v1/records/{record}", other=200),
    ("PATCH", "/v1/records/{reference}"): Walk(
        "records:write", "/v1/records/{record}", {"set": {"boat.year": 1990}, "why": "seen"}, other=404
    ),
    ("GET", "/v1/catalogues"): Walk("records:read", "/v1/catalogues"),
    ("GET", "/v1/catalogues/{version}"): Walk("records:read", "/v1/catalogues/demo-1"),
    ("GET", "/v1/reports/demand"): Walk("reports:read", "/v1/reports/demand", other=404),
    ("GET", "/v1/reports/unmet"): Walk("reports:read", "/v1/reports/unmet", other=404),
    ("GET", "/v1/reports/accuracy"): Walk("reports:read", "/v1/reports/accuracy", other=404),
    ("GET", "/v1/reports/quality"): Walk("reports:read", "/v1/reports/quality", other=404),
    ("POST", "/v1/imports"): Walk("records:write", "/v1/imports?name=a.csv", {}, other=403),
    ("GET", "/v1/jobs/{job_id}"): Walk("records:read", "/v1/jobs/import-1", other=404),
    ("POST", "/v1/jobs/{job_id}/cancel"): Walk("records:write", "/v1/jobs/job-1/cancel", other=404),
    ("POST", "/v1/jobs/{job_id}/resume"): Walk("records:write", "/v1/jobs/job-1/resume", other=404),
    ("GET", "/v1/webhooks"): Walk("enquiries:read", "/v1/webhooks"),
    ("POST", "/v1/webhooks"): Walk("enquiries:write", "/v1/webhooks", {"url": "https://a.example.com/"}),
    ("DELETE", "/v1/webhooks/{webhook_id}"): Walk("enquiries:write", "/v1/webhooks/{webhook}", other=404),
    ("GET", "/v1/reconcile"): Walk("records:read", "/v1/reconcile?queries=%7B%7D"),
    ("POST", "/v1/reconcile"): Walk("records:read", "/v1/reconcile", {"queries": "{}"}, form=True),
    ("GET", "/v1/reconcile/suggest/entity"): Walk("records:read", "/v1/reconcile/suggest/entity?prefix=t"),
    ("GET", "/v1/reconcile/suggest/property"): Walk("records:read", "/v1/reconcile/suggest/property?prefix=t"),
    ("GET", "/v1/reconcile/suggest/type"): Walk("records:read", "/v1/reconcile/suggest/type?prefix=t"),
    ("GET", "/v1/reconcile/properties"): Walk("records:read", "/v1/reconcile/properties"),
    ("GET", "/v1/reconcile/flyout"): Walk("records:read", "/v1/reconcile/flyout?id=tarnholt-36"),
    ("GET", "/metrics"): Walk("admin", "/metrics"),
    ("GET", "/v1/reconcile/preview"): Walk(PUBLIC, "/v1/reconcile/preview?id=tarnholt-36"),
    ("GET", "/health/live"): Walk(PUBLIC, "/health/live"),
    ("GET", "/health/ready"): Walk(PUBLIC, "/health/ready"),
    ("GET", "/openapi.json"): Walk(PUBLIC, "/openapi.json"),
    ("GET", "/docs"): Walk(PUBLIC, "/docs"),
    ("GET", "/docs/style.css"): Walk(PUBLIC, "/docs/style.css"),
    ("GET", "/problems"): Walk(PUBLIC, "/problems"),
    ("GET", "/problems/{name}"): Walk(PUBLIC, "/problems/invalid"),
}
KEYED = [walk for walk, how in WALKS.items() if how.scope != PUBLIC]


@pytest.fixture(scope="module")
def ids(here: House, asked: dict[str, Any]) -> dict[str, str]:
    """Return ids of things that belong to the dealer `mine`."""
    proposed = here.post("/v1/records", {"answer": asked["id"]})
    assert proposed.status_code == 201, proposed.text
    hook = here.post("/v1/webhooks", {"url": "https://hooks.example.com/"}).json()
    return {
        "enquiry": asked["enquiry"],
        "answer": asked["id"],
        "record": proposed.json()["reference"],
        "webhook": hook["id"],
        "dealer": "Hafenladen Ems",
    }


def call(here: House, walk: tuple[str, str], ids: dict[str, str], headers: dict[str, str]) -> Any:  # noqa: ANN401 - a response
    how = WALKS[walk]
    path = how.path.format(**ids)
    if how.form:
        return here.client.request(walk[0], path, data=how.body, headers=headers)
    body = {key: value.format(**ids) if isinstance(value, str) else value for key, value in (how.body or {}).items()}
    return here.client.request(walk[0], path, json=body if how.body is not None else None, headers=headers)


def test_the_walk_goes_by_every_route(here: House) -> None:
    routes = {(method, route.path) for route in _routes(here) for method in route.methods or ()}
    assert routes == set(WALKS)


def _routes(here: House) -> list[APIRoute]:
    found: list[APIRoute] = []
    waiting = list(here.app.routes)
    while waiting:
        route: Any = waiting.pop()
        if isinstance(route, APIRoute):
            found.append(route)
        else:  # what an application includes keeps its own routes; anything else must not be there
            waiting += route.original_router.routes
    return found


@pytest.mark.parametrize("walk", KEYED, ids=" ".join)
def test_no_key_opens_nothing(here: House, ids: dict[str, str], walk: tuple[str, str]) -> None:
    response = call(here, walk, ids, here.head(None))
    assert response.status_code == 401
    assert response.json()["type"] == "/problems/unauthorized"
    assert "Bearer" in response.headers["www-authenticate"]


@pytest.mark.parametrize("walk", KEYED, ids=" ".join)
def test_an_expired_key_opens_nothing(here: House, ids: dict[str, str], walk: tuple[str, str]) -> None:
    assert call(here, walk, ids, here.head("expired")).status_code == 401


@pytest.mark.parametrize("walk", KEYED, ids=" ".join)
def test_a_key_without_the_scope_is_told_which_it_lacks(
    here: House, ids: dict[str, str], walk: tuple[str, str]
) -> None:
    scope = WALKS[walk].scope
    wrong = next(name for name in ("enquiries:read", "records:read") if name != scope)
    response = call(here, walk, ids, here.head(wrong))
    assert response.status_code == 403
    assert scope in response.json()["detail"]


@pytest.mark.parametrize("walk", [walk for walk in KEYED if WALKS[walk].other], ids=" ".join)
def test_another_dealers_things_are_not_there(here: House, ids: dict[str, str], walk: tuple[str, str]) -> None:
    response = call(here, walk, ids, here.head("other"))
    assert response.status_code == WALKS[walk].other
    assert "W-2041" not in response.text
    assert "Hafenladen" not in response.text


@pytest.mark.parametrize("walk", [walk for walk, how in WALKS.items() if how.scope == PUBLIC], ids=" ".join)
def test_what_is_public_needs_no_key(here: House, ids: dict[str, str], walk: tuple[str, str]) -> None:
    assert call(here, walk, ids, here.head(None)).status_code == 200


def test_a_lists_of_enquiries_shows_nothing_of_others(here: House, ids: dict[str, str]) -> None:
    mine = [one["id"] for one in here.get("/v1/enquiries").json()["enquiries"]]
    assert ids["enquiry"] in mine
    assert here.get("/v1/enquiries", "other").json()["enquiries"] == []
    assert here.get("/v1/webhooks", "other").json()["webhooks"] == []
    assert ids["enquiry"] in [one["id"] for one in here.get("/v1/enquiries", "desk").json()["enquiries"]]


def test_every_keyed_route_names_its_scope_in_its_signature(here: House) -> None:
    document = here.app.openapi()
    for method, path in KEYED:
        if path not in ("/metrics", "/v1/reconcile") or method == "POST":
            security = document["paths"][path][method.lower()]["security"]
            assert security == [{"bearer": [WALKS[method, path].scope]}, {"apiKey": [WALKS[method, path].scope]}]
