"""Hull models by the W3C Reconciliation Service API 0.2: its shapes stand in reconciliation.json, their source beside it."""

from __future__ import annotations

import csv
import json
from pathlib import Path
from typing import Any

import jsonschema_rs
import pytest

from tests.api.conftest import House
from tests.support.seeding import FIXTURES

SHAPES = json.loads((Path(__file__).parent / "reconciliation.json").read_text())


def holds(shape: str, value: object) -> None:
    jsonschema_rs.validate({**SHAPES[shape], "$defs": SHAPES["$defs"]}, value, validate_formats=True)


def matched(here: House, queries: dict[str, Any]) -> dict[str, Any]:
    holds("queries", queries)
    response = here.client.post("/v1/reconcile", data={"queries": json.dumps(queries)}, headers=here.head("mine"))
    assert response.status_code == 200, response.text
    holds("results", response.json())
    found: dict[str, Any] = response.json()
    return found


def test_the_manifest_needs_no_key(here: House) -> None:
    response = here.get("/v1/reconcile", None, Origin="https://sheets.example.com")
    holds("manifest", response.json())
    assert response.headers["access-control-allow-origin"] == "*"
    assert response.json()["authentication"] == {"type": "apiKey", "in": "header", "name": "X-API-Key"}


MANIFEST = {"versions": ["0.2"], "name": "x", "identifierSpace": "a:b", "schemaSpace": "a:b"}


@pytest.mark.parametrize(
    ("shape", "value"),
    [
        ("results", {"q0": {"result": [{"id": "a", "name": "b", "score": "high"}]}}),
        ("results", {"q0": {}}),
        ("results", [{"result": []}]),
        ("manifest", {**MANIFEST, "versions": ["0.1"]}),
        ("manifest", {**MANIFEST, "authentication": {"type": "apiKey", "in": "cookie", "name": "a"}}),
        ("manifest", {**MANIFEST, "view": {"url": "https://example.com/${id}"}}),
        ("manifest", {**MANIFEST, "defaultTypes": ["hull-model"]}),
        ("manifest", {**MANIFEST, "preview": {"url": "https://example.com/{{id}}"}}),
        ("manifest", {**MANIFEST, "extend": {"property_settings": [{"type": "select", "label": "a", "name": "b"}]}}),
        ("queries", {"q0": {}}),
        ("queries", {"q0": {"properties": []}}),
        ("queries", {"q0": {"query": "a", "conditions": []}}),
        ("suggested type", {"result": ["hull-model"]}),
        ("extend", {"ids": ["a"], "properties": ["b"]}),
        ("extended", {"meta": [], "rows": {"a": {"b": [{"str": 7}]}}}),
        ("extended", {"meta": [], "rows": {"a": {"b": [{"bool": True}]}}}),
        ("extended", {"meta": [], "rows": {"a": {"b": [{"date": "1988"}]}}}),
        ("extended", {"rows": {}}),
    ],
)
def test_the_shapes_refuse_what_is_wrong(shape: str, value: object) -> None:
    holds("manifest", MANIFEST)
    with pytest.raises(jsonschema_rs.ValidationError):
        holds(shape, value)


def test_a_sheet_of_names_is_matched_to_its_own_hull_models(here: House) -> None:
    rows = list(csv.DictReader((FIXTURES / "hulls.csv").read_text("utf-8").splitlines()))
    queries = {
        f"q{number}": {
            "query": f"{row['builder']} {row['model']}",
            "properties": [{"pid": "loa_mm", "v": row["loa_mm"]}],
        }
        for number, row in enumerate(rows)
    }
    found = matched(here, queries)
    assert list(found) == list(queries)
    first = [found[f"q{number}"]["result"][0] for number in range(len(rows))]
    assert [one["id"] for one in first] == [row["id"] for row in rows]
    assert all(one["match"] for one in first)
    for one in found.values():
        scores = [candidate["score"] for candidate in one["result"]]
        assert scores == sorted(scores, reverse=True)


def test_every_hull_model_is_found_by_its_id(here: House) -> None:
    rows = list(csv.DictReader((FIXTURES / "hulls.csv").read_text("utf-8").splitlines()))
    found = matched(here, {row["id"]: {"query": row["id"]} for row in rows})
    assert {name: [one["id"] for one in said["result"]] for name, said in found.items()} == {
        name: [name] for name in found
    }
    first = here.get(f"/v1/reconcile/suggest/entity?prefix={rows[0]['id'][:-1]}").json()["result"]
    assert rows[0]["id"] in [one["id"] for one in first]


def test_a_query_may_tell_properties_alone(here: House) -> None:
    found = matched(here, {"a": {"properties": [{"pid": "loa_mm", "v": [10980, "10,98 m"]}]}})
    assert found == {"a": {"result": []}}


def test_what_is_not_sure_matches_nothing_by_itself(here: House) -> None:
    found = matched(
        here, {"a": {"query": "Tarnholt", "limit": 2}, "b": {"query": "Nowhere Boat 99"}, "c": {"query": ""}}
    )
    assert len(found["a"]["result"]) == 2
    assert not any(one["match"] for one in found["a"]["result"])
    assert not any(one["match"] for one in found["b"]["result"])
    assert found["c"]["result"] == []


def test_types_and_unknown_properties_are_heeded_as_the_protocol_says(here: House) -> None:
    odd = {"query": "Tarnholt 36", "properties": [{"pid": "colour", "v": [{"id": "x", "name": "red"}, 7, True]}]}
    found = matched(here, {"a": {**odd, "type": "hull-model"}, "b": {**odd, "type": ["boat"], "type_strict": "should"},
                           "c": {"query": "Tarnholt 36", "type": "boat", "type_strict": "any"}})  # fmt: skip
    assert found["a"]["result"][0]["match"]
    assert found["b"]["result"][0]["match"]
    assert found["c"]["result"] == []


def test_a_batch_may_come_by_get_too(here: House) -> None:
    query = json.dumps({"q": {"query": "Tarnholt 36"}})
    response = here.client.get("/v1/reconcile", params={"queries": query}, headers=here.head("mine"))
    holds("results", response.json())
    assert response.json()["q"]["result"][0]["id"] == "tarnholt-36"


def test_hull_models_are_extended(here: House) -> None:
    wanted = {
        "ids": ["tarnholt-36", "nobody"],
        "properties": [{"id": "loa_mm"}, {"id": "first_year"}, {"id": "builder"}],
    }
    holds("extend", wanted)
    response = here.client.post("/v1/reconcile", data={"extend": json.dumps(wanted)}, headers=here.head("mine"))
    holds("extended", response.json())
    assert response.json()["rows"] == {
        "tarnholt-36": {
            "loa_mm": [{"float": 10980.0}],
            "first_year": [{"int": 1987}],
            "builder": [{"str": "Tarnholt Båtvarv"}],
        },
        "nobody": {"loa_mm": [], "first_year": [], "builder": []},
    }


def test_suggestions_and_flyouts_work_from_the_manifest_alone(here: House) -> None:
    manifest = here.get("/v1/reconcile", None).json()
    for kind, prefix in (("entity", "tarnholt 3"), ("property", "len"), ("type", "hull")):
        service = manifest["suggest"][kind]
        found = here.client.get(service["service_path"], params={"prefix": prefix}, headers=here.head("mine"))
        holds(f"suggested {kind}", found.json())
        first = found.json()["result"][0]
        skipped = here.client.get(
            service["service_path"], params={"prefix": prefix, "cursor": 1}, headers=here.head("mine")
        )
        assert skipped.json()["result"][:5] == found.json()["result"][1:6]
        path = service["flyout_service_path"].replace("${id}", first["id"])
        holds("flyout", here.get(path).json())
    proposed = here.get(manifest["extend"]["propose_properties"]["service_path"] + "?type=hull-model&limit=3")
    holds("proposed", proposed.json())
    assert len(proposed.json()["properties"]) == 3
    page = here.get(manifest["preview"]["url"].replace("{{id}}", "tarnholt-36").removeprefix("http://testserver"), None)
    assert "Tarnholt 36" in page.text
    assert "frame-ancestors *" in page.headers["content-security-policy"]


def test_pages_of_other_sites_may_ask_here_and_nowhere_else(here: House) -> None:
    asks = {"Origin": "https://sheets.example.com", "Access-Control-Request-Method": "POST"}
    allowed = here.client.options("/v1/reconcile", headers=asks)
    assert allowed.status_code == 204
    assert "X-API-Key" in allowed.headers["access-control-allow-headers"]
    assert here.get("/v1/reconcile/suggest/type?prefix=h", None).headers["access-control-allow-origin"] == "*"
    for path in ("/v1/enquiries", "/v1/hulls?name=a", "/docs"):
        assert "access-control-allow-origin" not in here.get(path, **asks).headers
    assert here.client.options("/v1/enquiries", headers=asks).status_code == 405


@pytest.mark.parametrize(
    ("form", "status"),
    [({}, 400), ({"queries": "{"}, 400), ({"queries": "[]"}, 400), ({"queries": '{"q": 7}'}, 422), ({"other": "x"}, 400),
     ({"queries": "{}", "extend": "{}"}, 400), ({"extend": '{"ids": "x"}'}, 422),
     ({"queries": '{"q": {}}'}, 422), ({"queries": '{"q": {"query": "a", "limit": 0}}'}, 422),
     ({"queries": json.dumps({f"q{n}": {"query": "a"} for n in range(51)})}, 413)],
)  # fmt: skip
def test_what_is_no_batch_is_refused(here: House, form: dict[str, str], status: int) -> None:
    response = here.client.post("/v1/reconcile", data=form, headers=here.head("mine"))
    assert response.status_code == (415 if not form else status)
