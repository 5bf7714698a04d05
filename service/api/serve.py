"""What each worker of a running service starts from: its settings stand in the environment."""

from __future__ import annotations

import os

from fastapi import FastAPI

from service import bootstrap
from service.api.app import create_app
from service.api.courier import Courier
from service.api.log import configure
from service.flow.warm import warm


def made() -> FastAPI:
    """Return the application of this process. NeedsUpgrade and its like where the database is not fit for work."""
    configure()
    serving = bootstrap.serving()
    store = bootstrap.open_store(bootstrap.settings())
    warm(store)
    courier = Courier(bootstrap.clock, insecure=serving.insecure_webhooks)
    return create_app(store, serving, clock=bootstrap.clock, random=os.urandom, courier=courier)
