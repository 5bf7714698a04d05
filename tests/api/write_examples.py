"""Write service/api/examples.json anew: one example of each shape, as the service answers with the demo maker's data.

Run it after shapes changed: .venv/bin/python -m tests.api.write_examples
"""

from __future__ import annotations

import json
import os
import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import jsonschema_rs
from fastapi.testclient import TestClient

from service import bootstrap
from service.api.app import create_app
from service.api.examples import FORM
from service.api.openapi import REF, problem_example
from service.cli.main import status
from service.core.api_key import RANDOM_BYTES
from service.flow.create_key import KeyWanted, create_key
from service.settings import Serving
from tests.support.waiting import until

TOP = Path(__file__).resolve().parents[2]
FIXTURES = TOP / "seed_fixtures"
TARGET = TOP / "service" / "api" / "examples.json"
RICH: dict[str, Any] = {
    **FORM,
    "transom": {
        "top_height_mm": 985,
        "profile": [{"below_top_mm": 0, "aft_mm": 0}, {"below_top_mm": 900, "aft_mm": -380}],
        "sections": [
            {"height_mm": 500, "points": [{"half_breadth_mm": 0, "aft_mm": -200}, {"half_breadth_mm": 700, "aft_mm": -260}]},
            {"height_mm": 900, "points": [{"half_breadth_mm": 0, "aft_mm": -40}, {"half_breadth_mm": 800, "aft_mm": -110}]},
        ],
    },
    "obstacles": [
        {"kind": "ladder", "side": "starboard", "starboard_mm": [300, 650], "moves": "folds",
         "swept_to": {"aft_mm": [0, 900]}, "size_mm": {"aft": 80, "starboard": 350, "height": 900}},
    ],
    "other_datum": [{"field": "transom.top_height_mm", "value_mm": 1040, "datum": "toe_rail"}],
    "preferences": {"side": "centre", "strength": "wish"},
}  # fmt: skip
CONFIGURATION = {"gear": "gear-720", "lower": "hinge-60-170", "upper": "hinge-270-420", "shaft": "shaft-1350"}
BY_HAND: dict[str, Any] = {
    "BoatForm-Input": FORM,
    "TextEnquiry": {"text": "Tarnholt 36, 1991, reverse transom 985 mm high, rake 23 degrees."},
    "RecordWanted": {"answer": "answer-018f3c5d7a2e4b6c8d0f1a2b3c4d5e6f", "rank": 1},
    "StepWanted": {"status": "shipped", "date": "2026-05-04"},
    "RecordChange": {"set": {"transom.rake_deg": -22.5}, "why": "measured again on the hard"},
    "WebhookWanted": {"url": "https://dealer.example.com/hooks/transom", "events": ["answer.ready"]},
    "FitWanted": {"form": RICH, "configuration": CONFIGURATION, "seed": 1},
    "OtherJob": {
        "id": "job-019ab4c5d6e75b0c6d7e8f90a1b2c3d4",
        "kind": "recheck",
        "work": "running",
        "name": "demo-1 -> demo-2",
        "done": 240,
        "total": 600,
        "asked": "2026-05-04T09:12:00Z",
        "started": "2026-05-04T09:12:01Z",
        "changed": "2026-05-04T09:12:40Z",
        "ended": None,
        "trouble": None,
        "result": None,
    },
    "ProblemDocument": problem_example("invalid"),
}


class Examples:
    """The first value seen of each component, lists cut to one item."""

    def __init__(self, document: dict[str, Any]) -> None:
        """Begin with what no answer shows."""
        self._schemas = document["components"]["schemas"]
        self.found: dict[str, Any] = {}
        for name, value in BY_HAND.items():
            self.see({"$ref": REF + name}, value)

    def see(self, schema: dict[str, Any], value: Any) -> None:  # noqa: ANN401 - JSON is any
        """Take the value of a schema, and its parts, as examples."""
        if "$ref" in schema:
            name = schema["$ref"].removeprefix(REF)
            self.found.setdefault(name, short(value))
            self.see(self._schemas[name], value)
        for part in schema.get("anyOf", ()):
            if self._holds(part, value):
                self.see(part, value)
        if isinstance(value, dict):
            for key, item in value.items():
                self.see(schema.get("properties", {}).get(key) or _rest(schema), item)
        elif isinstance(value, list):
            for place, item in enumerate(value):
                named = schema.get("prefixItems", [])
                self.see(named[place] if place < len(named) else schema.get("items") or {}, item)

    def _holds(self, part: dict[str, Any], value: object) -> bool:
        return jsonschema_rs.is_valid({**part, "components": {"schemas": self._schemas}}, value)


def _rest(schema: dict[str, Any]) -> dict[str, Any]:
    rest = schema.get("additionalProperties")
    return rest if isinstance(rest, dict) else {}


def short(value: Any) -> Any:  # noqa: ANN401 - the same
    """Return the value with lists of objects cut to their first."""
    if isinstance(value, dict):
        return {key: short(item) for key, item in value.items()}
    if isinstance(value, list):
        return [short(item) for item in (value[:1] if any(isinstance(item, dict) for item in value) else value)]
    return value


def answered(client: TestClient, keyed: dict[str, str]) -> Iterator[tuple[str, str, str, Any]]:
    """Yield method, path, status and JSON of what the service answers."""
    once = {**keyed, "Idempotency-Key": "example"}
    made = client.post("/v1/enquiries", json=FORM, headers=once)
    yield "post", "/v1/enquiries", "201", made.json()
    one = made.json()["answers"][0]
    rich = client.post("/v1/enquiries", json=RICH, headers={**once, "Idempotency-Key": "rich"})
    yield "post", "/v1/enquiries", "201", rich.raise_for_status().json()
    fit = {"form": FORM, "configuration": one["suggestions"][0]["configuration"]}
    yield "post", "/v1/fits", "200", client.post("/v1/fits", json=fit, headers=keyed).json()
    hook = client.post("/v1/webhooks", json=BY_HAND["WebhookWanted"], headers={**once, "Idempotency-Key": "hook"})
    yield "post", "/v1/webhooks", "201", {**hook.json(), "secret": "whsec_" + "QUJD" * 11}
    first = json.loads((FIXTURES / "fleet.jsonl").read_text("utf-8").splitlines()[0])
    file = json.dumps({**first, "record.reference": "2099-001", "record.status": "sunk"}).encode()
    headers = {**once, "Idempotency-Key": "file", "Content-Type": "application/x-ndjson"}
    job = client.post("/v1/imports?name=fleet.jsonl", content=file, headers=headers)
    until(client.app.state.running.jobs.idle)  # type: ignore[attr-defined] # the import is done
    gets = (
        ("/v1/jobs/{job_id}", job.headers["location"]),
        ("/v1/enquiries", "/v1/enquiries"),
        ("/v1/enquiries/{enquiry_id}", f"/v1/enquiries/{one['enquiry']}"),
        ("/v1/records", "/v1/records?limit=1"),
        ("/v1/catalogues", "/v1/catalogues"),
        ("/v1/catalogues/{version}", "/v1/catalogues/demo-1"),
        ("/v1/reports/quality", "/v1/reports/quality"),
        ("/v1/reports/demand", "/v1/reports/demand?as_of=2026-01-15"),
        ("/v1/reports/accuracy", "/v1/reports/accuracy?as_of=2026-01-15"),
        ("/v1/webhooks", "/v1/webhooks"),
        ("/v1/hulls", "/v1/hulls?name=Tarnholt"),
        ("/v1/hulls", "/v1/hulls?name=Tarnholt 36"),
        ("/health/ready", "/health/ready"),
    )
    for path, address in gets:
        found = client.get(address, headers=keyed).raise_for_status().json()
        for table in found.get("tables", ()) if isinstance(found, dict) else ():
            table["rows"] = table["rows"][:1]  # a report has thousands, all of one kind
        yield "get", path, "200", found
    for number in range(0, 600, 60):
        found = client.get(f"/v1/records?limit=1&year_from={1960 + number // 15}", headers=keyed).json()
        yield "get", "/v1/records", "200", found
    for name in ("scoop", "two-boats", "double-ender", "html-table-inches", "transom-hung"):
        mail = (FIXTURES / "enquiries" / f"{name}.eml").read_bytes()
        headers = {**keyed, "Idempotency-Key": name, "Content-Type": "message/rfc822"}
        yield "post", "/v1/enquiries", "201", client.post("/v1/enquiries", content=mail, headers=headers).json()


def main() -> None:
    """Write the examples."""
    with tempfile.TemporaryDirectory() as folder:
        url = f"sqlite:///{folder}/ledger.sqlite"
        for step in (
            ("db", "upgrade"),
            ("catalogue", "load", str(FIXTURES / "catalogue.toml")),
            ("hulls", "import", str(FIXTURES / "hulls.csv")),
            ("records", "import", str(FIXTURES / "fleet.jsonl")),
        ):
            if status([*step, "--db", url, "--json"]) != 0:
                raise SystemExit(f"{step} failed")
        store = bootstrap.open_store(bootstrap.settings(url))
        with store.writing() as uow:
            wanted = KeyWanted("examples", ("admin",))
            key = create_key(uow, wanted, random=os.urandom(RANDOM_BYTES), who="examples").text
        app = create_app(store, Serving(), clock=bootstrap.clock, random=os.urandom)
        document = app.openapi()
        examples = Examples(document)
        with TestClient(app) as client:
            for method, path, code, value in answered(client, {"X-API-Key": key}):
                content = document["paths"][path][method]["responses"][code]["content"]["application/json"]
                examples.see(content["schema"], value)
        lacking = sorted(set(document["components"]["schemas"]) - set(examples.found))
        TARGET.write_text(json.dumps(examples.found, indent=1, ensure_ascii=False, sort_keys=True) + "\n", "utf-8")
    sys.stderr.write(f"{len(examples.found)} examples; none yet for: {', '.join(lacking) or 'nothing'}\n")


if __name__ == "__main__":
    main()
