"""Who asks, and may they? Each route names the scope it needs in its signature: `by: EnquiriesRead`."""

from __future__ import annotations

from typing import Annotated

from fastapi import Depends, Request, Security
from fastapi.security import APIKeyHeader, HTTPBearer, SecurityScopes

from service.api.problems import Problem
from service.api.running import Running, running
from service.flow.authenticate import Caller, authenticate
from service.store.happening import Actor

bearer = HTTPBearer(auto_error=False, scheme_name="bearer", description="`Authorization: Bearer KEY`")
header = APIKeyHeader(
    name="X-API-Key", auto_error=False, scheme_name="apiKey", description="For clients that send no bearer token"
)
NO_KEY = "send a key as `Authorization: Bearer KEY` or `X-API-Key: KEY`"
NOT_VALID = "this key is mistyped, unknown, revoked or has expired"


def given(request: Request) -> str | None:
    """Return the text of the key in a request's headers; None where there is none."""
    said = request.headers.get("authorization")
    if said is None:
        return request.headers.get("x-api-key")
    scheme, _, text = said.partition(" ")  # where both are there this one decides, whatever the other would open
    return text.strip() if scheme.lower() == "bearer" else said


def address(request: Request) -> str:
    """Return the address that asks."""
    return request.client.host if request.client else "unknown"


def stranger(request: Request, service: Annotated[Running, Depends(running)]) -> None:
    """Count a request of nobody known against its address. The problem is `too-many`."""
    passed, left = service.count("stranger", address(request))
    request.state.allowance = left
    if not passed:
        raise Problem("too-many", "too many requests without a valid key", headers={"Retry-After": str(left.seconds)})


def caller(
    request: Request,
    scopes: SecurityScopes,
    service: Annotated[Running, Depends(running)],
    _bearer: Annotated[object, Depends(bearer)] = None,
    _header: Annotated[object, Depends(header)] = None,
) -> Caller:
    """Return who asks. Problems: `unauthorized`, `forbidden` for a scope the key lacks, `too-many`."""
    text = given(request)
    found = authenticate(service.store, text) if text else None
    if found is None:
        stranger(request, service)
        said = {"WWW-Authenticate": 'Bearer realm="transom"' + (', error="invalid_token"' if text else "")}
        raise Problem("unauthorized", NOT_VALID if text else NO_KEY, headers=said)
    request.state.key = found.key
    passed, left = service.count("dealer", found.key)
    request.state.allowance = left
    if not passed:
        raise Problem("too-many", "too many requests with this key", headers={"Retry-After": str(left.seconds)})
    lacking = [scope for scope in scopes.scopes if not found.may(scope)]
    if lacking:
        said = {"WWW-Authenticate": f'Bearer realm="transom", error="insufficient_scope", scope="{lacking[0]}"'}
        raise Problem("forbidden", f"the key lacks the scope {lacking[0]}", headers=said)
    return found


def actor(request: Request, by: Caller) -> Actor:
    """Return on whose behalf something is written, for the audit."""
    return Actor(by.who, by.key, request.state.request_id)


EnquiriesWrite = Annotated[Caller, Security(caller, scopes=["enquiries:write"])]
EnquiriesRead = Annotated[Caller, Security(caller, scopes=["enquiries:read"])]
RecordsRead = Annotated[Caller, Security(caller, scopes=["records:read"])]
RecordsWrite = Annotated[Caller, Security(caller, scopes=["records:write"])]
ReportsRead = Annotated[Caller, Security(caller, scopes=["reports:read"])]
Anybody = Annotated[None, Depends(stranger)]
"""Nobody in particular: counted by address alone."""
Service = Annotated[Running, Depends(running)]
