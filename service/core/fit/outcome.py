"""What a check came to, in numbers: words are made of it only where somebody reads them."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import Literal, NamedTuple, TypeVar

from service.core.fit.shapes import Check, Verdict


class Outcome(NamedTuple):
    """One check as `Check` publishes it, but for its words: `why` and `source` make them."""

    id: str
    value: float | None
    limit: float | None
    margin: float | None
    unit: str
    scale: float
    status: Literal["pass", "fail", "unknown"]
    case: str
    binds: bool
    why: Callable[[], str]
    source: Callable[[], str]

    def check(self) -> Check:
        """Return the check in published shape, its probability not yet worked out."""
        return Check(
            id=self.id, value=self.value, limit=self.limit, margin=self.margin, unit=self.unit, scale=self.scale,
            probability=None, status=self.status, case=self.case, why=self.why(), source=self.source(), binds=self.binds,
        )  # fmt: skip


One = TypeVar("One", Outcome, Check)


def tightest(every: Iterable[One]) -> One:
    """Return what binds with the smallest scaled margin; of a blade wholly immersed, which cannot gain, nothing."""
    return min((c for c in every if c.binds and c.margin is not None and not _whole(c)), key=scaled)


def scaled(one: Outcome | Check) -> float:
    """Return margin over scale."""
    return (one.margin or 0.0) / (one.scale or 1.0)


def _whole(one: Outcome | Check) -> bool:
    return one.id.startswith("immersion.") and (one.value or 0.0) >= 1.0


def verdict(every: Iterable[Outcome | Check], probability: float, threshold: float) -> Verdict:
    """Return what all checks that bind come to, with the probability that they pass together."""
    found = {c.status for c in every if c.binds}
    if "fail" in found:
        return "does_not_fit"
    if "unknown" in found:
        return "undecided"
    return "fits" if probability >= threshold else "tight"
