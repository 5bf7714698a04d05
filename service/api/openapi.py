"""The service's OpenAPI 3.1 document: what the framework knows, every problem by status, and an example for each.

A client generated from it is to need no mending by hand: shapes that are sent and given go by names of their own, and what
is no JSON is said to be bytes. Held by tests/api/test_client.py.
"""

from __future__ import annotations

from typing import Any

from fastapi import FastAPI
from fastapi.openapi.utils import get_openapi

from service.api.etags import LISTED
from service.api.examples import BY_SCHEMA, FORM
from service.api.links import link
from service.api.problems import KINDS, MEDIA, ProblemDocument
from service.api.shapes import BYTES, TextEnquiry

ALWAYS = ("bad-request", "method-not-allowed", "too-slow", "too-large", "too-many", "fault", "away")
KEYED = ("unauthorized", "forbidden")
METHODS = ("get", "post", "patch", "delete")
MAY_MISS = ("/v1/records", "/v1/reconcile/flyout", "/v1/reconcile/preview")
"""Paths without an id in them that name something all the same."""
DEMANDED = {
    "Idempotency-Key": {"type": "string", "minLength": 1, "maxLength": 200, "pattern": "^[ -~]+$"},
    "If-Match": {"type": "string", "pattern": f"^({LISTED})$"},
}
REF = "#/components/schemas/"
READ = ("application/json", "application/problem+json", "application/x-www-form-urlencoded", "text/plain", "text/html")
"""Media types that a generator of clients reads by itself; every other it has to be told to leave as bytes."""
REQUEST_ID = {
    "name": "X-Request-ID",
    "in": "header",
    "required": False,
    "description": "Your own name for this request, 1 to 64 letters, digits, `.`, `_` or `-`: it then stands in the log and "
    "in the answer. Anything else is replaced.",
    "schema": {"type": "string"},
}


def described(app: FastAPI) -> dict[str, Any]:
    """Return the document; it is built once."""
    if app.openapi_schema is None:
        document = get_openapi(
            title=app.title,
            version=app.version,
            openapi_version="3.1.0",
            description=app.description,
            routes=app.routes,
        )
        schemas = document["components"]["schemas"]
        schemas |= {"ProblemDocument": _schema(ProblemDocument, schemas), "TextEnquiry": _schema(TextEnquiry, schemas)}
        for name in ("HTTPValidationError", "ValidationError"):
            schemas.pop(name, None)
        for path, operations in document["paths"].items():
            for method in METHODS:
                if method in operations:
                    _complete(path, method, operations[method])
        _enquiry(document, schemas)
        link(document)
        for name in [name for name in schemas if name.endswith(("-Input", "-Output"))]:
            schemas[name]["title"] = name.replace("-", "")  # the framework gives both of a pair the same title
        for name, example in BY_SCHEMA.items():
            if name in schemas:
                schemas[name].setdefault("examples", [example])
        app.openapi_schema = document
    return app.openapi_schema


def client_settings(document: dict[str, Any]) -> dict[str, Any]:
    """Return what openapi-python-client has to be told to leave as bytes, as its configuration."""
    kinds = {
        kind
        for operations in document["paths"].values()
        for operation in operations.values()
        for said in (operation.get("requestBody", {}), *operation["responses"].values())
        for kind in said.get("content", {})
    }
    return {"content_type_overrides": dict.fromkeys(sorted(kinds - set(READ)), "application/octet-stream")}


def _schema(shape: Any, schemas: dict[str, Any]) -> dict[str, Any]:  # noqa: ANN401 - a pydantic model
    made = shape.model_json_schema(ref_template=REF + "{model}")
    schemas |= made.pop("$defs", {})
    return dict(made)


def _complete(path: str, method: str, operation: dict[str, Any]) -> None:
    names = {one["name"] for one in operation.get("parameters", ())}
    body = "requestBody" in operation or path == "/v1/enquiries"
    kinds = {
        ALWAYS: True,
        KEYED: bool(operation.get("security")) or path.startswith("/v1/reconcile") or path == "/metrics",
        ("invalid", "refused"): bool(names) or body,
        ("not-found",): "{" in path or path in MAY_MISS,
        ("unsupported", "conflict"): method in ("post", "patch") and body,
        ("key-missing", "key-reused"): "Idempotency-Key" in names,
        ("bad-cursor",): "after" in names,
        ("stale", "precondition-required"): "If-Match" in names,
        ("not-acceptable",): path == "/v1/enquiries/{enquiry_id}",
    }
    for one in operation.get("parameters", ()):
        if one["name"] in DEMANDED:  # the service says itself what it misses, by 400 and 428
            one |= {"required": True, "schema": DEMANDED[one["name"]]}
    if "Idempotency-Key" in names:
        operation["parameters"].append(dict(REQUEST_ID))
    operation["responses"].pop("422", None)
    for some, holds in kinds.items():
        for kind in some if holds else ():
            _tell(operation["responses"], kind)


def _tell(responses: dict[str, Any], kind: str) -> None:
    known = KINDS[kind]
    response = responses.setdefault(str(known.status), {"description": known.title, "content": {}})
    content = response.setdefault("content", {}).setdefault(
        MEDIA, {"schema": {"$ref": f"{REF}ProblemDocument"}, "examples": {}}
    )
    content["examples"][kind] = {"value": problem_example(kind)}


def problem_example(kind: str) -> dict[str, Any]:
    """Return a problem document of this kind."""
    faults = [
        {"pointer": "/transom/rake_deg", "code": "less_than_equal", "detail": "should be less than or equal to 80"}
    ]
    return {
        "type": f"/problems/{kind}",
        "title": KINDS[kind].title,
        "status": KINDS[kind].status,
        "detail": KINDS[kind].says.split(". ")[0],
        "instance": "/v1/enquiries",
        "errors": faults if kind == "invalid" else [],
        "request_id": "5f2b1c0d9e8a47b6a1c2d3e4f5a6b7c8",
    }


def _enquiry(document: dict[str, Any], schemas: dict[str, Any]) -> None:
    """Say what may be posted as an enquiry: the route reads its body itself."""
    form = next(name for name in ("BoatForm-Input", "BoatForm") if name in schemas)
    letter = (
        "From: ada@example.com\r\nTo: desk@example.org\r\nSubject: Tarnholt 36\r\n\r\nReverse transom, 985 mm high.\r\n"
    )
    document["paths"]["/v1/enquiries"]["post"]["requestBody"] = {
        "required": True,
        "content": {
            "application/json": {
                "schema": {"anyOf": [{"$ref": REF + form}, {"$ref": f"{REF}TextEnquiry"}]},
                "examples": {
                    "form": {"value": FORM},
                    "text": {"value": {"text": "Tarnholt 36, 1991, reverse transom 985 mm high, rake 23 degrees."}},
                },
            },
            "message/rfc822": {"schema": BYTES, "examples": {"mail": {"value": letter}}},
        },
    }
