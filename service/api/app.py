"""The application, built from a ledger and how it is run.

A request passes `shield` (id, size, pace, log), then `who` (key, scope, allowance), then its route, which calls one use
case. What creates something goes through `once`. Errors of use cases become problems in `explain`. `courier` sends
what transactions left in the outbox.
"""

from __future__ import annotations

from collections.abc import AsyncIterator, Callable
from contextlib import AbstractAsyncContextManager, asynccontextmanager
from datetime import datetime

from anyio import CapacityLimiter
from fastapi import FastAPI, Request
from fastapi.exceptions import RequestValidationError
from fastapi.routing import APIRoute
from starlette.exceptions import HTTPException
from starlette.responses import Response

from service import __version__, bootstrap
from service.api import (
    catalogues,
    docs,
    enquiries,
    fits,
    health,
    jobs,
    problems,
    reconcile,
    records,
    reports,
    webhooks,
)
from service.api.courier import Courier, Rounds
from service.api.explain import explain
from service.api.log import log
from service.api.metrics import Metrics
from service.api.openapi import described
from service.api.running import Running
from service.api.shield import Shield
from service.settings import Serving
from service.store.limits import Windows
from service.store.unit import Store

ABOUT = """\
Send a boat, get back which wind-vane self-steering gear fits her, on which brackets, where, how surely, and which
question would settle most. Numbers are in the unit of their suffix; `docs` explains keys, errors and retries."""

PARTS = (enquiries, fits, records, reports, catalogues, jobs, webhooks, reconcile, health, docs)


def create_app(
    store: Store,
    serving: Serving,
    *,
    clock: Callable[[], datetime],
    random: Callable[[int], bytes],
    courier: Courier | None = None,
) -> FastAPI:
    """Return the application. `random` gives bytes nobody can guess. Without a `courier` webhooks wait in the outbox."""
    app = FastAPI(
        title="Transom ledger",
        version=__version__,
        description=ABOUT,
        openapi_url=None,
        docs_url=None,
        redoc_url=None,
        lifespan=_lifespan(store, courier),
        generate_unique_id_function=_named,
        redirect_slashes=False,
    )
    app.state.metrics = Metrics()
    app.state.running = Running(
        store,
        serving,
        Windows(serving.counters),
        clock,
        random,
        bootstrap.crew(store, say=lambda text: log("warning", "worker", said=text)),
        CapacityLimiter(serving.threads),
    )
    for part in PARTS:
        app.include_router(part.routes)
    app.add_exception_handler(HTTPException, _told)
    app.add_exception_handler(RequestValidationError, _told)
    app.add_middleware(Shield, metrics=app.state.metrics)
    app.openapi = lambda: described(app)  # type: ignore[method-assign] # the framework's own way to replace it
    return app


def _named(route: APIRoute) -> str:
    return route.name


def _told(request: Request, error: Exception) -> Response:
    problem = explain(error)
    if problem is None:
        raise error
    if problem.kind == "method-not-allowed":  # the framework names the methods of the first route alone
        problem.headers["Allow"] = ", ".join(sorted(_methods(request.url.path)))
    return problems.response(problem, request.url.path, request.state.request_id)


def _methods(path: str) -> set[str]:
    routes = [route for part in PARTS for route in part.routes.routes if isinstance(route, APIRoute)]
    return {method for route in routes if route.path_regex.match(path) for method in route.methods or ()}


def _lifespan(store: Store, courier: Courier | None) -> Callable[[FastAPI], AbstractAsyncContextManager[None]]:
    @asynccontextmanager
    async def alive(app: FastAPI) -> AsyncIterator[None]:
        rounds = Rounds(store, courier) if courier else None
        running: Running = app.state.running
        running.jobs.start()
        if rounds:
            rounds.start()
        try:
            yield
        finally:
            if rounds:
                rounds.stop()
            running.jobs.stop()
            running.windows.close()
            store.close()

    return alive
