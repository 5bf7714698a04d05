"""One configuration on one boat; names of boats."""

from __future__ import annotations

from functools import partial
from typing import Annotated

from fastapi import APIRouter, Query, Request
from starlette.responses import Response

from service.api.once import heavily
from service.api.running import Running
from service.api.shapes import FitWanted
from service.api.strict import JSON, StrictRoute
from service.api.who import EnquiriesWrite, RecordsRead, Service
from service.core.fit import Fit
from service.core.hulls import HullDecision
from service.flow.fit import fit_form
from service.flow.resolve import resolve_name

routes = APIRouter(prefix="/v1", tags=["boats"], route_class=StrictRoute)
FAR_MM = 60_000
Name = Annotated[str, Query(min_length=1, max_length=200, description="As people write it.", examples=["Tarnholt 36"])]


@routes.post("/fits", response_model=Fit)
async def create_fit(request: Request, wanted: FitWanted, by: EnquiriesWrite, service: Service) -> Response:
    """Place one configuration on one boat and check it. Nothing is kept."""
    del by
    made = await heavily(request, service, partial(_fit, service, wanted))
    return Response(made.model_dump_json(by_alias=True), media_type=JSON)


def _fit(service: Running, wanted: FitWanted) -> Fit:
    with service.store.reading() as uow:
        return fit_form(uow, wanted.form, wanted.configuration, seed=wanted.seed)


@routes.get("/hulls", response_model=HullDecision)
def get_hulls(
    by: RecordsRead,
    service: Service,
    name: Name,
    builder: Annotated[str | None, Query(max_length=200)] = None,
    year: Annotated[int | None, Query(ge=1850, le=2100)] = None,
    loa_mm: Annotated[float | None, Query(ge=0, le=FAR_MM, allow_inf_nan=False)] = None,
    beam_mm: Annotated[float | None, Query(ge=0, le=FAR_MM, allow_inf_nan=False)] = None,
) -> Response:
    """Say which hull model a name stands for: matched, several, or unknown, and what was seen."""
    del by
    with service.store.reading() as uow:
        found = resolve_name(uow, name, builder=builder, year=year, loa_mm=loa_mm, beam_mm=beam_mm)
    return Response(found.model_dump_json(by_alias=True), media_type=JSON)
