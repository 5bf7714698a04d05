"""Pages for a dealer's programmer, without any script: what there is, how to begin, what each problem means."""

from __future__ import annotations

import json
from html import escape
from importlib import resources
from typing import Any

from fastapi import APIRouter, Request
from starlette.responses import Response

from service.api.examples import FORM
from service.api.openapi import client_settings
from service.api.problems import KINDS, Problem
from service.api.who import Anybody

routes = APIRouter(include_in_schema=False)
HTML = "text/html; charset=utf-8"
METHODS = ("get", "post", "patch", "delete")
KEEP = {"Cache-Control": "public, max-age=300"}


@routes.get("/openapi.json")
def get_openapi_document(request: Request, _: Anybody) -> Response:
    """Give the OpenAPI document."""
    text = json.dumps(request.app.openapi(), ensure_ascii=False)
    return Response(text, media_type="application/json", headers=KEEP)


@routes.get("/docs/style.css")
def get_style(_: Anybody) -> Response:
    """Give the style of the pages."""
    text = resources.files("service.api").joinpath("docs.css").read_text("utf-8")
    return Response(text, media_type="text/css", headers=KEEP)


@routes.get("/docs")
def get_docs(request: Request, _: Anybody) -> Response:
    """Give the page for programmers."""
    base = str(request.base_url).rstrip("/")
    document = request.app.openapi()
    parts = [
        f"<h1>{escape(document['info']['title'])}</h1><p>{escape(document['info']['description'])}</p>",
        '<p><a href="/openapi.json">OpenAPI 3.1 document</a> · <a href="/problems">problems</a></p>',
        f"<h2>Begin</h2><p>Put your key into <code>KEY</code>, then:</p><pre>{escape(curl(base))}</pre>",
        f"<p>The same in Python, with nothing installed:</p><pre>{escape(python(base))}</pre>",
        _manners(),
        _client(document),
        "<h2>What there is</h2>",
        *(
            _operation(path, method, operations[method])
            for path, operations in document["paths"].items()
            for method in METHODS
            if method in operations
        ),
    ]
    return _page("Programmer's page", "".join(parts))


def curl(base: str) -> str:
    """Return a first request for a shell."""
    return (
        f"curl -sS {base}/v1/enquiries \\\n"
        '  -H "Authorization: Bearer $KEY" \\\n'
        '  -H "Idempotency-Key: first-boat-1" \\\n'
        '  -H "Content-Type: application/json" \\\n'
        f"  -d '{json.dumps(FORM, ensure_ascii=True)}'"
    )


def python(base: str) -> str:
    """Return the same request for Python."""
    return f"""import json, os, urllib.request

form = json.loads({json.dumps(json.dumps(FORM))})
request = urllib.request.Request(
    "{base}/v1/enquiries",
    data=json.dumps(form).encode(),
    headers={{
        "Authorization": "Bearer " + os.environ["KEY"],
        "Idempotency-Key": "first-boat-1",
        "Content-Type": "application/json",
    }},
)
with urllib.request.urlopen(request) as response:
    answers = json.load(response)["answers"]
for suggestion in answers[0]["suggestions"]:
    print(suggestion["rank"], suggestion["configuration"], suggestion["fit"]["verdict"])
"""


def _client(document: dict[str, Any]) -> str:
    how = "openapi-python-client makes one from <code>/openapi.json</code>. What is no JSON it is to leave as bytes: give it this"
    settings = json.dumps(client_settings(document), indent=2)
    return f"<h2>A typed client</h2><p>{how} as its <code>--config</code>:</p><pre>{escape(settings)}</pre>"


def _manners() -> str:
    said = (
        ("Keys", "Authorization: Bearer KEY, or X-API-Key: KEY. A key is shown once; it has scopes and an end."),
        ("Creating", "Carry an Idempotency-Key. Sent again after a broken connection, a request is done once, answered the same."),
        ("Changing", "Send If-Match with the ETag of what you looked at: nobody's change is lost."),
        ("Lists", "Follow next (or the Link header); limit goes to 200."),
        ("Pace", "RateLimit says what is left of the minute; after 429 wait as long as Retry-After says."),
        ("Errors", "application/problem+json; errors names each fault by a JSON pointer; keep the request_id."),
        ("Webhooks", "Standard Webhooks: verify webhook-signature, answer 2xx; 410 ends it. The same webhook-id may come twice."),
    )  # fmt: skip
    rows = "".join(f"<tr><th>{escape(name)}</th><td>{escape(text)}</td></tr>" for name, text in said)
    return f"<h2>Manners</h2><table>{rows}</table>"


def _operation(path: str, method: str, operation: dict[str, Any]) -> str:
    scopes = sorted({scope for one in operation.get("security", ()) for names in one.values() for scope in names})
    needs = f"<p>Scope: <code>{escape(', '.join(scopes))}</code></p>" if scopes else ""
    rows = "".join(
        f"<tr><th><code>{escape(one['name'])}</code></th><td>{escape(one['in'])}</td>"
        f"<td>{escape(one.get('description', ''))}</td></tr>"
        for one in operation.get("parameters", ())
    )
    takes = ", ".join(operation.get("requestBody", {}).get("content", {}))
    body = f"<p>Body: {escape(takes)}</p>" if takes else ""
    gives = ", ".join(f"{status} {said['description']}" for status, said in sorted(operation["responses"].items()))
    return (
        f'<h3 id="{escape(operation["operationId"])}"><code>{method.upper()} {escape(path)}</code></h3>'
        f"<p>{escape(operation.get('description', ''))}</p>{needs}{f'<table>{rows}</table>' if rows else ''}{body}"
        f"<p>Answers: {escape(gives)}</p>"
    )


@routes.get("/problems")
def get_problems(_: Anybody) -> Response:
    """List the problems."""
    rows = "".join(
        f'<tr><td>{kind.status}</td><td><a href="/problems/{name}">{escape(kind.title)}</a></td></tr>'
        for name, kind in KINDS.items()
    )
    return _page("Problems", f"<h1>Problems</h1><table>{rows}</table>")


@routes.get("/problems/{name}")
def get_problem(_: Anybody, name: str) -> Response:
    """Say what one type of problem means, and how to mend it."""
    kind = KINDS.get(name)
    if kind is None:
        raise Problem("not-found", "there is no such problem; /problems lists them")
    said = f"<h1>{escape(kind.title)}</h1><p>HTTP status {kind.status}</p><p>{escape(kind.says)}</p>"
    return _page(kind.title, said + '<p><a href="/problems">All problems</a></p>')


def _page(title: str, body: str) -> Response:
    page = (
        f'<!doctype html><html lang="en"><head><meta charset="utf-8"><title>{escape(title)}</title>'
        '<meta name="viewport" content="width=device-width"><link rel="stylesheet" href="/docs/style.css"></head>'
        f"<body>{body}</body></html>"
    )
    return Response(page, media_type=HTML, headers=KEEP)
