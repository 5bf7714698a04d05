"""What a running service holds: the ledger, how it is run, its counters, the places for heavy work."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime
from typing import cast

from anyio import CapacityLimiter
from fastapi import Request
from limits import RateLimitItemPerMinute
from limits.strategies import FixedWindowRateLimiter

from service.flow.work_jobs import Crew
from service.settings import Serving
from service.store.limits import Windows
from service.store.unit import Store

BEAT_S = 60


@dataclass(frozen=True)
class Allowance:
    """What is left of a window: `left` of `quota`, for `seconds` more."""

    policy: str
    quota: int
    left: int
    seconds: int

    @property
    def headers(self) -> dict[str, str]:
        """Return the fields of the IETF draft on rate limit headers."""
        return {
            "RateLimit-Policy": f'"{self.policy}";q={self.quota};w={BEAT_S}',
            "RateLimit": f'"{self.policy}";r={self.left};t={self.seconds}',
        }


@dataclass(frozen=True)
class Running:
    """A running service. `random` gives bytes nobody can guess; `jobs` works when nobody waits for it."""

    store: Store
    serving: Serving
    windows: Windows
    clock: Callable[[], datetime]
    random: Callable[[int], bytes]
    jobs: Crew
    heavy: CapacityLimiter

    def count(self, policy: str, name: str) -> tuple[bool, Allowance]:
        """Count one request of a key ("dealer") or of an address ("stranger"); say whether it may pass, and what is left."""
        quota = self.serving.requests if policy == "dealer" else self.serving.strangers
        item, limiter = RateLimitItemPerMinute(quota), FixedWindowRateLimiter(self.windows)
        passed = limiter.hit(item, policy, name)
        ends, left = limiter.get_window_stats(item, policy, name)
        seconds = max(1, min(BEAT_S, round(ends - self.clock().timestamp())))
        return passed, Allowance(policy, quota, max(0, left), seconds)


def running(request: Request) -> Running:
    """Return the service that a request came to."""
    return cast("Running", request.app.state.running)
