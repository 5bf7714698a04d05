"""The request log: one line of JSON a request, to stderr. No bodies, no keys, no addresses of mails or machines."""

from __future__ import annotations

import sys
from typing import Any

import structlog


def configure() -> None:
    """Write lines of JSON to stderr."""
    structlog.configure(
        processors=[
            structlog.processors.add_log_level,
            structlog.processors.TimeStamper(fmt="iso", utc=True),
            structlog.processors.JSONRenderer(),
        ],
        logger_factory=structlog.PrintLoggerFactory(sys.stderr),
        cache_logger_on_first_use=False,
    )


def log() -> Any:  # noqa: ANN401 - structlog's own
    """Return what is logged to."""
    return structlog.get_logger()
