"""What is counted: requests by route, how long they took, what waits to be sent."""

from __future__ import annotations

from prometheus_client import CollectorRegistry, Counter, Gauge, Histogram
from prometheus_client.exposition import CONTENT_TYPE_LATEST, generate_latest

BUCKETS = (0.005, 0.02, 0.1, 0.25, 0.5, 1, 2, 4, 8, 16, 32)
__all__ = ["CONTENT_TYPE_LATEST", "Metrics", "generate_latest"]


class Metrics:
    """Counters of one application; labels are route templates, never addresses as they were asked for."""

    def __init__(self) -> None:
        """Begin at nought."""
        self.registry = CollectorRegistry()
        labels = ("method", "route", "status")
        self.requests = Counter("transom_requests", "Requests answered", labels, registry=self.registry)
        self.seconds = Histogram(
            "transom_request_seconds",
            "Time to answer",
            ("method", "route"),
            buckets=BUCKETS,
            registry=self.registry,
        )
        self.running = Gauge("transom_requests_running", "Requests being answered", registry=self.registry)
        self.outbox = Gauge("transom_outbox_waiting", "Webhook messages still to be sent", registry=self.registry)

    def note(self, method: str, route: str, status: int, seconds: float) -> None:
        """Count one request."""
        self.requests.labels(method, route, str(status)).inc()
        self.seconds.labels(method, route).observe(seconds)
