"""What in a newer OpenAPI document breaks a program that was written by an older one."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

METHODS = ("get", "post", "patch", "delete", "put")
REF = "#/components/schemas/"


def breaks(old: dict[str, Any], new: dict[str, Any]) -> list[str]:
    """Return every breaking change, one line each; none for what was only added."""
    return [*_operations(old, new), *_schemas(old, new)]


def without_examples(document: dict[str, Any]) -> dict[str, Any]:
    """Return the document without the examples of its schemas, which change with the demo's data."""
    schemas = {
        name: {key: value for key, value in schema.items() if key != "examples"}
        for name, schema in document["components"]["schemas"].items()
    }
    return {**document, "components": {**document["components"], "schemas": schemas}}


def _operations(old: dict[str, Any], new: dict[str, Any]) -> Iterator[str]:
    for path, item in old["paths"].items():
        for method in METHODS:
            if method not in item:
                continue
            where = f"{method.upper()} {path}"
            now = new["paths"].get(path, {}).get(method)
            if now is None:
                yield f"{where} is gone"
            else:
                yield from _operation(where, item[method], now)


def _operation(where: str, old: dict[str, Any], new: dict[str, Any]) -> Iterator[str]:
    if old["operationId"] != new["operationId"]:
        yield f"{where} is called {new['operationId']} now"
    if old.get("security") != new.get("security"):
        yield f"{where} needs another key"
    before = {(one["in"], one["name"]): one for one in old.get("parameters", ())}
    after = {(one["in"], one["name"]): one for one in new.get("parameters", ())}
    yield from (f"{where}: parameter {name[1]} is gone" for name in before.keys() - after.keys())
    for name, one in after.items():
        if one.get("required") and not before.get(name, {}).get("required"):
            yield f"{where}: parameter {name[1]} has become necessary"
        if name in before and before[name].get("schema") != one.get("schema"):
            yield f"{where}: parameter {name[1]} is another"
    for status, said in old["responses"].items():
        if status.startswith("2") and status not in new["responses"]:
            yield f"{where}: {status} is gone"
        kept = new["responses"].get(status, {}).get("content", {})
        yield from (f"{where}: {status} as {kind} is gone" for kind in said.get("content", {}) if kind not in kept)
    taken = new.get("requestBody", {}).get("content", {})
    yield from (
        f"{where}: {kind} is not taken any more"
        for kind in old.get("requestBody", {}).get("content", {})
        if kind not in taken
    )


def _schemas(old: dict[str, Any], new: dict[str, Any]) -> Iterator[str]:
    sent = _sent(old) | _sent(new)
    for name, schema in old["components"]["schemas"].items():
        now = new["components"]["schemas"].get(name)
        if now is None:
            yield f"schema {name} is gone"
            continue
        before, after = schema.get("properties", {}), now.get("properties", {})
        for key, value in before.items():
            if key not in after:
                yield f"{name}.{key} is gone"
            elif _kind(value) != _kind(after[key]):
                yield f"{name}.{key} is another"
        demanded, were = set(now.get("required", ())), set(schema.get("required", ()))
        if name in sent:
            yield from (f"{name}.{key} has become necessary" for key in demanded - were)
        else:
            yield from (f"{name}.{key} may be missing now" for key in were - demanded)


def _kind(schema: dict[str, Any]) -> Any:  # noqa: ANN401 - JSON is any
    """Return what of a schema a program sees: types, values and references, no titles, bounds or examples."""
    if isinstance(schema, dict):
        return {key: _kind(value) for key, value in schema.items() if key in SEEN}
    return [_kind(one) for one in schema] if isinstance(schema, list) else schema


SEEN = ("type", "enum", "const", "$ref", "anyOf", "oneOf", "items", "prefixItems", "additionalProperties")


def _sent(document: dict[str, Any]) -> set[str]:
    """Return the schemas that clients send, and those within them."""
    waiting: list[Any] = [
        operation.get("requestBody", {}) for item in document["paths"].values() for operation in item.values()
    ]
    found: set[str] = set()
    while waiting:
        at = waiting.pop()
        if isinstance(at, dict):
            name = str(at.get("$ref", "")).removeprefix(REF)
            if name and name not in found:
                found.add(name)
                waiting.append(document["components"]["schemas"].get(name, {}))
            waiting += at.values()
        elif isinstance(at, list):
            waiting += at
    return found
