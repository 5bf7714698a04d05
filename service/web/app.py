"""The desk, built from a ledger."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime

from fastapi import FastAPI
from fastapi.routing import APIRoute
from starlette.responses import RedirectResponse, Response
from starlette.staticfiles import StaticFiles
from starlette.types import Scope

from service.files.vault import Vault
from service.store.unit import Store
from service.web import (
    bench,
    enquiries,
    enquiry_edits,
    faults,
    fits,
    fleet_parts,
    house_parts,
    measuring,
    replies,
    sign_in,
)
from service.web.desk import Desk
from service.web.guard import Guard
from service.web.pages import CONTENT, ROOT
from service.web.who import Anyone

PARTS = (sign_in, enquiries, enquiry_edits, measuring, fits, bench, replies, *fleet_parts.PARTS, *house_parts.PARTS)


class _Kept(StaticFiles):
    """Files whose address changes with their content: kept by browsers as long as they like."""

    async def get_response(self, path: str, scope: Scope) -> Response:
        response = await super().get_response(path, scope)
        response.headers["Cache-Control"] = "public, max-age=31536000, immutable"
        return response


def create_desk(
    store: Store,
    vault: Vault,
    *,
    clock: Callable[[], datetime],
    random: Callable[[int], bytes],
    passes: Callable[[str], bool],
) -> FastAPI:
    """Return the desk, to be mounted at ROOT. `random` gives bytes nobody can guess; `passes` counts tries to sign in."""
    app = FastAPI(openapi_url=None, docs_url=None, redoc_url=None, generate_unique_id_function=_named)
    app.state.desk = Desk(store, vault, clock, random, passes)
    for part in PARTS:
        app.include_router(part.routes)
    app.mount("/static", _Kept(directory=str(CONTENT)), name="static")
    app.add_api_route("/", _first, methods=["GET"], response_class=Response)
    faults.install(app)
    app.add_middleware(Guard)
    return app


def _named(route: APIRoute) -> str:
    return route.name


def _first(by: Anyone) -> Response:
    """Lead to where somebody's work begins."""
    return RedirectResponse(f"{ROOT}/fleet" if by.user.role == "fitter" else f"{ROOT}/enquiries", 303)
