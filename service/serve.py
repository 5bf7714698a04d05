"""The service as it runs: the dealers' API with the sales desk beside it, in one process.

Each worker starts from `made`; its settings stand in the environment.
"""

from __future__ import annotations

import gc
import os
from collections.abc import Callable
from datetime import datetime

from fastapi import FastAPI
from limits import RateLimitItemPerMinute
from limits.strategies import FixedWindowRateLimiter
from starlette.responses import RedirectResponse

from service import bootstrap
from service.api.app import create_app
from service.api.courier import Courier
from service.api.log import configure
from service.api.running import Running
from service.core.fit.side_by_side import at_most
from service.files.vault import Vault
from service.flow.warm import warm
from service.settings import Serving
from service.store.unit import Store
from service.web.app import create_desk
from service.web.pages import ROOT

TRIES = 20
"""So often a minute somebody may try to sign in from one address."""


def made() -> FastAPI:
    """Return the application of this process. NeedsUpgrade and its like where the database is not fit for work."""
    configure()
    serving = bootstrap.serving()
    settings = bootstrap.settings()
    store = bootstrap.open_store(settings)
    at_most(max(1, bootstrap.processors() // (serving.workers * serving.threads)))
    warm(store)
    gc.collect()
    gc.freeze()  # the ledger in memory stays: a collector that walks over it holds everybody up, half a second at a time
    courier = Courier(bootstrap.clock, insecure=serving.insecure_webhooks)
    return joined(store, bootstrap.vault(settings), serving, clock=bootstrap.clock, random=os.urandom, courier=courier)


def joined(
    store: Store,
    vault: Vault,
    serving: Serving,
    *,
    clock: Callable[[], datetime],
    random: Callable[[int], bytes],
    courier: Courier | None = None,
) -> FastAPI:
    """Return API and desk as one application."""
    app = create_app(store, serving, clock=clock, random=random, courier=courier)
    running: Running = app.state.running
    limiter, item = FixedWindowRateLimiter(running.windows), RateLimitItemPerMinute(TRIES)

    def passes(address: str) -> bool:
        return limiter.hit(item, "sign-in", address)

    app.mount(ROOT, create_desk(store, vault, clock=clock, random=random, passes=passes))
    app.add_route("/", lambda _request: RedirectResponse(f"{ROOT}/", 303))
    return app
