"""The OpenAPI document: valid, with examples that hold, and no change that breaks a dealer's program unnoticed."""

from __future__ import annotations

import copy
import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import jsonschema_rs
import pytest

from service.api.examples import BY_SCHEMA
from service.api.openapi import problem_example
from service.api.problems import KINDS, ProblemDocument
from tests.api.breaking import breaks, without_examples
from tests.api.conftest import House

COPY = Path(__file__).parent / "openapi.json"
HOW = "write it anew: .venv/bin/python -m tests.api.write_openapi"


@pytest.fixture(scope="module")
def document(here: House) -> dict[str, Any]:
    return here.app.openapi()


def test_nothing_that_a_program_relies_on_is_gone(document: dict[str, Any]) -> None:
    assert breaks(json.loads(COPY.read_text("utf-8")), document) == []


def test_the_copy_is_what_the_service_says(document: dict[str, Any]) -> None:
    assert json.loads(COPY.read_text("utf-8")) == without_examples(document), HOW


def test_breaking_changes_are_noticed(document: dict[str, Any]) -> None:
    schemas = document["components"]["schemas"]
    changes: list[tuple[list[str], Any]] = [
        (["paths", "/v1/fits"], None),
        (["paths", "/v1/enquiries", "get"], None),
        (["paths", "/v1/fits", "post", "operationId"], "other"),
        (["paths", "/v1/fits", "post", "responses", "200"], None),
        (["components", "schemas", "Job", "properties", "state"], None),
        (["components", "schemas", "Job", "properties", "rows", "type"], "string"),
        (["components", "schemas", "WebhookWanted", "required"], ["url", "events"]),
        (["components", "schemas", "Job", "required"], [one for one in schemas["Job"]["required"] if one != "done"]),
        (["paths", "/v1/fits", "post", "security"], []),
    ]
    for path, value in changes:
        changed = copy.deepcopy(document)
        at = changed
        for part in path[:-1]:
            at = at[part]
        if value is None:
            del at[path[-1]]
        else:
            at[path[-1]] = value
        assert breaks(document, changed) != [], path
    grown = copy.deepcopy(document)
    grown["components"]["schemas"]["Job"]["properties"]["more"] = {"type": "string"}
    grown["paths"]["/v1/new"] = {}
    assert breaks(document, grown) == []


def test_every_operation_is_named_by_its_function_and_says_what_it_does(document: dict[str, Any]) -> None:
    operations = list(_operations(document))
    names = [one["operationId"] for _, _, one in operations]
    assert len(names) == len(set(names)) > 25
    assert all(name.isidentifier() for name in names)
    assert all(one.get("description") for _, _, one in operations)


def test_links_lead_to_operations_that_take_what_they_bring(document: dict[str, Any]) -> None:
    taken = {one["operationId"]: {p["name"] for p in one.get("parameters", ())} for _, _, one in _operations(document)}
    links = [
        link
        for _, _, operation in _operations(document)
        for response in operation["responses"].values()
        for link in response.get("links", {}).values()
    ]
    assert len(links) > 10
    for link in links:
        assert set(link["parameters"]) <= taken[link["operationId"]]


def test_every_schema_has_an_example_that_holds(document: dict[str, Any]) -> None:
    schemas = document["components"]["schemas"]
    assert set(schemas) <= set(BY_SCHEMA)
    for schema in schemas.values():
        for example in schema["examples"]:
            jsonschema_rs.validate({**schema, "components": {"schemas": schemas}}, example)


def test_every_problem_has_an_example_and_a_page(document: dict[str, Any], here: House) -> None:
    shown = {
        name
        for _, _, operation in _operations(document)
        for response in operation["responses"].values()
        for name in response.get("content", {}).get("application/problem+json", {}).get("examples", {})
    }
    assert shown == set(KINDS)
    for kind in KINDS:
        ProblemDocument.model_validate(problem_example(kind))
        page = here.get(f"/problems/{kind}", None)
        assert page.status_code == 200
        assert KINDS[kind].title in page.text


def test_bodies_in_the_document_are_taken_as_they_stand(document: dict[str, Any], here: House) -> None:
    content = document["paths"]["/v1/enquiries"]["post"]["requestBody"]["content"]
    for kind, said in content.items():
        for example in said["examples"].values():
            body = example["value"] if isinstance(example["value"], str) else json.dumps(example["value"])
            headers = here.head("mine", **{"Content-Type": kind})
            response = here.client.post("/v1/enquiries", content=body.encode(), headers=headers)
            assert response.status_code in (200, 201), response.text


def test_the_page_loads_nothing_from_elsewhere_and_runs_no_script(here: House) -> None:
    page = here.get("/docs", None)
    assert "<script" not in page.text
    assert "default-src 'self'" in page.headers["content-security-policy"]
    for attribute in ('href="', 'src="'):
        assert all(part.startswith("/") for part in page.text.split(attribute)[1:])


def _operations(document: dict[str, Any]) -> Iterator[tuple[str, str, dict[str, Any]]]:
    for path, item in document["paths"].items():
        for method, operation in item.items():
            yield path, method, operation
