"""Whether it is alive, whether it can work, what it did."""

from __future__ import annotations

import ipaddress
import shutil
from pathlib import Path
from typing import Annotated

from fastapi import APIRouter, Depends, Request
from fastapi.security import SecurityScopes
from starlette.responses import Response

from service.api.metrics import CONTENT_TYPE_LATEST, Metrics, generate_latest
from service.api.running import Running
from service.api.shapes import Health
from service.api.strict import JSON
from service.api.who import Service, caller
from service.store.errors import StoreError

routes = APIRouter(tags=["running"])
LEAST_FREE = 50_000_000
"""Bytes: below, a database soon cannot be written to."""


@routes.get("/health/live", response_model=Health)
async def get_live() -> Response:
    """Say that the process runs. Nothing is looked at."""
    return Response(Health(status="ok").model_dump_json(), media_type=JSON)


@routes.get("/health/ready", response_model=Health, responses={503: {"model": Health, "description": "It cannot work"}})
def get_ready(service: Service) -> Response:
    """Say whether it can work: the database answers at this program's revision, and there is room on the disk."""
    checks = {"database": True, "revision": False, "disk": _room(service)}
    try:
        with service.store.reading() as uow:
            checks["revision"] = uow.at_head()
    except StoreError:
        checks["database"] = False
    well = all(checks.values())
    health = Health(status="ok" if well else "away", checks=checks)
    return Response(health.model_dump_json(), 200 if well else 503, media_type=JSON)


def _room(service: Running) -> bool:
    folder: Path | None = service.store.folder
    return folder is None or shutil.disk_usage(folder).free > LEAST_FREE


def near(request: Request, service: Service) -> None:
    """Return for a request from this machine, or with an admin's key; else the problem is `unauthorized`."""
    forwarded = {"x-forwarded-for", "forwarded", "x-real-ip"} & set(request.headers)
    if not (service.serving.proxies or forwarded) and _loopback(request.client.host if request.client else ""):
        return
    caller(request, SecurityScopes(["admin"]), service)


def _loopback(host: str) -> bool:
    try:
        return ipaddress.ip_address(host).is_loopback
    except ValueError:
        return False


@routes.get(
    "/metrics",
    response_class=Response,
    responses={
        200: {"content": {"text/plain": {"schema": {"type": "string"}}}, "description": "Prometheus's text format"}
    },
)
def get_metrics(request: Request, service: Service, _: Annotated[None, Depends(near)]) -> Response:
    """Give what was counted, to this machine or an admin's key."""
    metrics: Metrics = request.app.state.metrics
    with service.store.reading() as uow:
        metrics.outbox.set(uow.outbox.waiting())
    return Response(generate_latest(metrics.registry), headers={"Content-Type": CONTENT_TYPE_LATEST})
