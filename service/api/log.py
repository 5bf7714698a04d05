"""The request log: one line of JSON a request, to stderr. No bodies, no keys, no addresses of mails or machines."""

from __future__ import annotations

import sys
from contextlib import suppress
from typing import Any, Literal

import structlog


def configure() -> None:
    """Write lines of JSON to whatever is stderr at the time."""
    structlog.configure(
        processors=[
            structlog.processors.add_log_level,
            structlog.processors.TimeStamper(fmt="iso", utc=True),
            structlog.processors.JSONRenderer(),
        ],
        logger_factory=lambda *_: structlog.PrintLogger(sys.stderr),
        cache_logger_on_first_use=False,
    )


def log(level: Literal["info", "warning", "error"], event: str, **said: Any) -> None:  # noqa: ANN401 - JSON is any
    """Write one line. A log that cannot be written to is no reason to refuse a request."""
    with suppress(OSError, ValueError):
        getattr(structlog.get_logger(), level)(event, **said)
