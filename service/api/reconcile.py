"""Hull models for any client of the W3C Reconciliation Service API 0.2: a spreadsheet of boat names is matched."""

from __future__ import annotations

import html
from collections.abc import Mapping, Sequence
from contextlib import suppress
from typing import Annotated, Any
from urllib.parse import parse_qs

from fastapi import APIRouter, Query, Request
from fastapi.security import SecurityScopes
from starlette.concurrency import run_in_threadpool
from starlette.responses import JSONResponse, Response

from service.api.problems import Problem
from service.api.reconcile_shapes import (
    MOST_QUERIES,
    PROPERTIES,
    TOLD,
    TYPE,
    Extension,
    cell,
    described,
)
from service.api.reconcile_shapes import Query as Asked
from service.api.running import Running
from service.api.strict import StrictRoute, loads, media_type
from service.api.who import Anybody, RecordsRead, Service, caller
from service.core.form import parse_shape
from service.core.hulls import HullDecision
from service.core.record import HullModel
from service.flow.resolve import resolve_name
from service.flow.suggest_hulls import suggest_hulls
from service.store.unit import UnitOfWork

routes = APIRouter(prefix="/v1/reconcile", tags=["reconciliation"], route_class=StrictRoute)
FORM = "application/x-www-form-urlencoded"
PAGE = "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors *"
LONGEST_QUERY = 2000
"""Letters of a batch that comes by GET: many clients and proxies cut longer addresses."""
MOST_YEAR, MOST_MM = 2100, 60_000
Prefix = Annotated[str, Query(min_length=1, max_length=200, examples=["Tarn"])]
Skip = Annotated[int, Query(ge=0, le=1000, description="How many suggestions to leave out.")]
Id = Annotated[str, Query(alias="id", min_length=1, max_length=200)]
SHAPE = {"type": "string", "description": "A JSON object of queries by name."}
BODY = {
    "requestBody": {
        "required": True,
        "content": {
            FORM: {
                "schema": {
                    "type": "object",
                    "properties": {"queries": SHAPE, "extend": {"type": "string", "description": "ids and properties"}},
                },
                "example": {"queries": '{"q0": {"query": "Tarnholt 36"}}'},
            }
        },
    }
}


@routes.get("", response_model=dict[str, Any])
def get_reconcile(
    request: Request,
    _: Anybody,
    service: Service,
    queries: Annotated[str | None, Query(max_length=LONGEST_QUERY)] = None,
    extend: Annotated[str | None, Query(max_length=LONGEST_QUERY)] = None,
) -> Response:
    """Give the manifest; with `queries` or `extend`, and a key, what POST gives."""
    if queries is None and extend is None:
        return JSONResponse(manifest(service.serving.public.rstrip("/") or str(request.base_url).rstrip("/")))
    caller(request, SecurityScopes(["records:read"]), service)
    return JSONResponse(_answered(service, queries, extend))


@routes.post("", response_model=dict[str, Any], openapi_extra=BODY)
async def create_reconciliation(request: Request, by: RecordsRead, service: Service) -> Response:
    """Match a batch of names (`queries`), or give properties of hull models by id (`extend`)."""
    del by
    if media_type(request.headers.get("content-type", ""))[0] != FORM:
        raise Problem("unsupported", f"send a form: {FORM}")
    try:
        said = parse_qs((await request.body()).decode("ascii"), max_num_fields=10, strict_parsing=True, errors="strict")
    except ValueError:
        raise Problem("bad-request", "the body is no form: url-encoded UTF-8 with a field queries or extend") from None
    queries, extend = said.get("queries", [None])[0], said.get("extend", [None])[0]
    return JSONResponse(await run_in_threadpool(_answered, service, queries, extend))


def manifest(base: str) -> dict[str, Any]:
    """Return the manifest of the service at `base`."""
    here = f"{base}/v1/reconcile"

    def suggested(kind: str) -> dict[str, str]:
        return {
            "service_url": base,
            "service_path": f"/v1/reconcile/suggest/{kind}",
            "flyout_service_url": base,
            "flyout_service_path": "/v1/reconcile/flyout?kind=" + kind + "&id=${id}",
        }

    return {
        "versions": ["0.2"],
        "name": "Hull models",
        "identifierSpace": f"{base}/v1/hulls/",
        "schemaSpace": f"{base}/v1/reconcile/schema/",
        "documentation": f"{base}/docs",
        "defaultTypes": [TYPE],
        "view": {"url": f"{here}/preview?id={{{{id}}}}"},
        "preview": {"url": f"{here}/preview?id={{{{id}}}}", "width": 360, "height": 160},
        "suggest": {kind: suggested(kind) for kind in ("entity", "property", "type")},
        "extend": {
            "propose_properties": {"service_url": base, "service_path": "/v1/reconcile/properties"},
            "property_settings": [],
        },
        "batchSize": MOST_QUERIES,
        "authentication": {"type": "apiKey", "in": "header", "name": "X-API-Key"},
    }


def _answered(service: Running, queries: str | None, extend: str | None) -> dict[str, Any]:
    if queries is not None and extend is None:
        return _matched(service, _object(queries))
    if extend is not None and queries is None:
        return _extended(service, parse_shape(Extension, _object(extend)))
    raise Problem("bad-request", "send either queries or extend")


def _object(text: str) -> dict[str, Any]:
    value = loads(text.encode("utf-8", "surrogatepass"))
    if not isinstance(value, dict):
        raise Problem("bad-request", "send a JSON object in the form's field")
    return value


def _matched(service: Running, batch: dict[str, Any]) -> dict[str, Any]:
    if len(batch) > MOST_QUERIES:
        raise Problem("too-large", f"{len(batch)} queries; the manifest's batchSize is {MOST_QUERIES}")
    asked = {name: parse_shape(Asked, value) for name, value in batch.items()}
    with service.store.reading() as uow:
        by_id = uow.hulls.among({one.query for one in asked.values() if one.query})
        return {name: {"result": _result(uow, one, by_id)} for name, one in asked.items()}


def _result(uow: UnitOfWork, one: Asked, by_id: Mapping[str, HullModel]) -> list[dict[str, Any]]:
    """Return the candidates of one query. A query that is an id is that hull model, as the protocol expects."""
    other = one.type is not None and TYPE["id"] not in ([one.type] if isinstance(one.type, str) else one.type)
    if not one.query or (other and one.type_strict in ("any", "all")):
        return []  # without a name nothing stands for a hull model: properties tell those of a name apart
    if one.query in by_id:
        return _shown([(by_id[one.query], 1.0, True)])
    told = {each.pid: each.first for each in one.properties if each.pid in TOLD}
    decision = resolve_name(
        uow,
        one.query,
        builder=told.get("builder"),
        year=_year(told.get("year")),
        loa_mm=_length(told.get("loa_mm")),
        beam_mm=_length(told.get("beam_mm")),
    )
    return candidates(decision)[: one.limit]


def candidates(decision: HullDecision) -> list[dict[str, Any]]:
    """Return what a name may stand for, the likeliest first; `match` where nobody has to be asked."""
    likely = [] if decision.model is None else [(decision.model, decision.probability, True)]
    known = {decision.model.id} if decision.model else set()
    likely += [(one.model, one.probability, False) for one in decision.alternatives if one.model.id not in known]
    return _shown(likely)


def _shown(likely: Sequence[tuple[HullModel, float, bool]]) -> list[dict[str, Any]]:
    return [
        {
            "id": hull.id,
            "name": str(hull),
            "description": described(hull),
            "type": [TYPE],
            "score": round(100 * chance, 1),
            "match": match,
            "features": [{"id": "probability", "value": round(chance, 4)}],
        }
        for hull, chance, match in likely
    ]


def _year(text: str | None) -> int | None:
    bare = (text or "").strip()[:4]
    return int(bare) if bare.isascii() and bare.isdecimal() and 0 < int(bare) <= MOST_YEAR else None


def _length(text: str | None) -> float | None:
    with suppress(ValueError):
        number = float(text or "")
        return number if 0 < number < MOST_MM else None
    return None


def _extended(service: Running, wanted: Extension) -> dict[str, Any]:
    asked = [one.id for one in wanted.properties if one.id in PROPERTIES]
    with service.store.reading() as uow:
        found = uow.hulls.among(wanted.ids)
    return {
        "meta": [{"id": name, "name": PROPERTIES[name]} for name in asked],
        "rows": {
            one: {name: cell(getattr(found[one], name)) if one in found else [] for name in asked} for one in wanted.ids
        },
    }


@routes.get("/suggest/entity", response_model=dict[str, Any])
def suggest_entity(by: RecordsRead, service: Service, prefix: Prefix, cursor: Skip = 0) -> Response:
    """Suggest hull models for the first letters of a name, or of an id."""
    del by
    with service.store.reading() as uow:
        found = suggest_hulls(uow, prefix, cursor + 10)[cursor:]
    named = [{"id": hull.id, "name": str(hull), "description": described(hull), "notable": [TYPE]} for hull in found]
    return JSONResponse({"result": named})


@routes.get("/suggest/property", response_model=dict[str, Any])
def suggest_property(by: RecordsRead, prefix: Prefix, cursor: Skip = 0) -> Response:
    """Suggest what can be told of a boat beside its name."""
    del by
    wanted = prefix.casefold()
    found = [{"id": key, "name": name} for key, name in TOLD.items() if wanted in name.casefold() or wanted in key]
    return JSONResponse({"result": found[cursor:]})


@routes.get("/suggest/type", response_model=dict[str, Any])
def suggest_type(by: RecordsRead, prefix: Prefix, cursor: Skip = 0) -> Response:
    """Suggest types: there is one."""
    del by
    wanted = prefix.casefold()
    found = [TYPE] if any(wanted in text.casefold() for text in TYPE.values()) else []
    return JSONResponse({"result": found[cursor:]})


@routes.get("/properties", response_model=dict[str, Any])
def propose_properties(
    by: RecordsRead,
    kind: Annotated[str, Query(alias="type", max_length=200)] = TYPE["id"],
    limit: Annotated[int, Query(ge=1, le=100)] = 100,
) -> Response:
    """Propose what hull models can be extended by."""
    del by
    known = PROPERTIES.items() if kind == TYPE["id"] else ()
    found = [{"id": key, "name": name} for key, name in known][:limit]
    return JSONResponse({"type": kind, "limit": limit, "properties": found})


@routes.get("/flyout", response_model=dict[str, Any])
def get_flyout(
    by: RecordsRead,
    service: Service,
    hull_id: Id,
    kind: Annotated[str, Query(max_length=20)] = "entity",
) -> Response:
    """Give a few words on what was suggested, as HTML within JSON."""
    del by
    if kind == "property" and hull_id in TOLD:
        return JSONResponse({"id": hull_id, "html": f"<p>{html.escape(TOLD[hull_id])}</p>"})
    if kind == "type" and hull_id == TYPE["id"]:
        return JSONResponse({"id": hull_id, "html": "<p>A design of boat as sold: builder, model and years.</p>"})
    return JSONResponse({"id": hull_id, "html": _card(_hull(service, hull_id))})


@routes.get(
    "/preview",
    response_class=Response,
    responses={200: {"content": {"text/html": {"schema": {"type": "string"}}}, "description": "A small page"}},
)
def get_preview(_: Anybody, service: Service, hull_id: Id) -> Response:
    """Show a hull model on a small page. A frame in a spreadsheet sends no key, so none is asked for."""
    hull = _hull(service, hull_id)
    page = f'<!doctype html><html lang="en"><meta charset="utf-8"><title>{html.escape(str(hull))}</title>{_card(hull)}'
    return Response(page, media_type="text/html; charset=utf-8", headers={"Content-Security-Policy": PAGE})


def _hull(service: Running, hull_id: str) -> HullModel:
    with service.store.reading() as uow:
        hull = uow.hulls.get(hull_id)
    if hull is None:
        raise Problem("not-found", "there is no such hull model")
    return hull


def _card(hull: HullModel) -> str:
    return f"<p><strong>{html.escape(str(hull))}</strong><br>{html.escape(described(hull))}</p>"
