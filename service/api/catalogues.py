"""Versions of the catalogue."""

from __future__ import annotations

from typing import Annotated

from fastapi import APIRouter, Header, Path
from starlette.responses import Response

from service.api.etags import etag, unchanged
from service.api.problems import Problem
from service.api.shapes import CatalogueItem, CatalogueList
from service.api.strict import JSON, StrictRoute
from service.api.who import RecordsRead, Service
from service.core.catalogue import Catalogue

routes = APIRouter(prefix="/v1", route_class=StrictRoute)
KEPT = {"Cache-Control": "private, max-age=86400, immutable"}


@routes.get("/catalogues", response_model=CatalogueList, tags=["catalogue"])
def get_catalogues(by: RecordsRead, service: Service) -> Response:
    """List the versions of the catalogue, the one loaded last first."""
    del by
    with service.store.reading() as uow:
        versions = uow.catalogues.versions()
    items = [CatalogueItem(version=one, href=f"/v1/catalogues/{one}") for one in versions]
    return Response(CatalogueList(catalogues=items).model_dump_json(), media_type=JSON)


@routes.get(
    "/catalogues/{version}",
    response_model=Catalogue,
    tags=["catalogue"],
    responses={304: {"description": "You have it"}},
)
def get_catalogue(
    version: Annotated[str, Path(min_length=1, max_length=80)],
    by: RecordsRead,
    service: Service,
    if_none_match: Annotated[str | None, Header(alias="If-None-Match")] = None,
) -> Response:
    """Get one version of the catalogue. It never changes."""
    del by
    with service.store.reading() as uow:
        found = uow.catalogues.get(version)
    if found is None:
        raise Problem("not-found", "there is no such version of the catalogue")
    body = found.model_dump_json(by_alias=True, exclude_none=True)
    tag = etag(body)
    return unchanged(if_none_match, tag) or Response(body, headers={"ETag": tag, **KEPT}, media_type=JSON)
