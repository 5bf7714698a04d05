"""Reports over all records, for the maker's own desk. Each is made when it is asked for."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date as Date  # noqa: N812 - the field is called date
from functools import partial
from typing import Annotated

from fastapi import APIRouter, Depends, Query, Request
from starlette.responses import Response

from service.api.once import heavily
from service.api.problems import Problem
from service.api.running import Running
from service.api.strict import JSON, StrictRoute
from service.api.who import ReportsRead, Service
from service.core.days import Day
from service.core.demand.ledger import Asked as Demanded
from service.core.quality import Quality
from service.core.report import Report
from service.flow.authenticate import Caller
from service.flow.report_demand import report_demand
from service.flow.report_quality import report_quality

routes = APIRouter(prefix="/v1/reports", route_class=StrictRoute)


@dataclass(frozen=True)
class Days:
    """The day a report is made for, today where none is named, and the period that counts."""

    as_of: Date | None
    first: Date | None
    last: Date | None


def days(
    as_of: Annotated[Day | None, Query(description="The day it is made for; later ones do not count.")] = None,
    first: Annotated[Day | None, Query(alias="from", description="Count from this day on.")] = None,
    last: Annotated[Day | None, Query(alias="to", description="Count up to this day.")] = None,
) -> Days:
    """Return the days that were asked for."""
    return Days(as_of, first, last)


Asked = Annotated[Days, Depends(days)]


@routes.get("/quality", response_model=Quality, tags=["reports"])
async def get_quality_report(request: Request, by: ReportsRead, service: Service) -> Response:
    """Get what is likely wrong with records, each with what mends it.

    Records are not tried on their own boats for it, which takes minutes: `transom report quality` does that.
    """
    return await _made(request, by, service, partial(_quality, service))


@routes.get("/demand", response_model=Report, tags=["reports"])
async def get_demand_report(request: Request, asked: Asked, by: ReportsRead, service: Service) -> Response:
    """Get what is needed of what and what will be, with a reorder point for each piece."""
    return await _made(request, by, service, partial(_demand, service, asked))


@routes.get("/unmet", response_model=Report, tags=["reports"])
async def get_unmet_report(request: Request, asked: Asked, by: ReportsRead, service: Service) -> Response:
    """Get boats that nothing fits and what refuses them, the last twenty tried again.

    New metal is not looked for here, which takes minutes: `transom report unmet` does that.
    """
    return await _made(request, by, service, partial(_unmet, service, asked))


@routes.get("/accuracy", response_model=Report, tags=["reports"])
async def get_accuracy_report(request: Request, asked: Asked, by: ReportsRead, service: Service) -> Response:
    """Get what was proposed against what was installed, and how true the chances were that answers gave."""
    return await _made(request, by, service, partial(_accuracy, service, asked))


async def _made(request: Request, by: Caller, service: Running, work: Callable[[], Report | Quality]) -> Response:
    if by.dealer is not None:
        raise Problem("not-found", "reports are read by the maker's own desk alone")
    found = await heavily(request, service, work)
    return Response(found.model_dump_json(by_alias=True), media_type=JSON)


def _quality(service: Running) -> Quality:
    with service.store.reading() as uow:
        return report_quality(uow, fit=False)


def _demand(service: Running, asked: Days) -> Report:
    with service.store.reading() as uow:
        return report_demand(uow, Demanded(asked.as_of or service.clock().date(), asked.first, asked.last))


MOST = 20
"""Boats that are tried again while somebody waits."""


def _unmet(service: Running, asked: Days) -> Report:
    from service.flow.report_unmet import Asked as Wanted  # noqa: PLC0415 - the statistics library takes a second to load
    from service.flow.report_unmet import report_unmet  # noqa: PLC0415 - the same

    day = asked.as_of or service.clock().date()
    with service.store.reading() as uow:
        return report_unmet(uow, Wanted(day, asked.first, asked.last, solve=False, most=MOST))


def _accuracy(service: Running, asked: Days) -> Report:
    from service.core.demand.accuracy import Days as Wanted  # noqa: PLC0415 - the statistics library takes a second to load
    from service.flow.report_accuracy import report_accuracy  # noqa: PLC0415 - the same

    with service.store.reading() as uow:
        return report_accuracy(uow, Wanted(asked.as_of or service.clock().date(), asked.first, asked.last))
