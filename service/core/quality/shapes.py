"""What a look through the fleet finds: `quality/1`."""

from __future__ import annotations

from typing import Literal

from pydantic import Field

from service.core.boat import Shape

Kind = Literal["impossible", "duplicate", "outlier", "disagreeing", "fails_fit", "missing"]
KINDS: tuple[Kind, ...] = ("impossible", "duplicate", "outlier", "disagreeing", "fails_fit", "missing")
"""Worst first: what cannot be true, what is there twice, what is unlike its sisters; gaps last."""


class Finding(Shape):
    """One thing that is likely wrong with a record: what stands there, what speaks against it, what to do about it.

    `grade` orders findings of one kind, greatest first: how far outside a value lies, in the scale its rule names.
    `command` is the mend as a command line where one command does it.
    """

    kind: Kind
    record: str
    field: str | None = None
    value: float | str | None = None
    expected: str
    why: str
    mend: str
    command: str | None = None
    other: str | None = None
    grade: float = 0.0


class Quality(Shape):
    """Every finding, worst kinds first, and how many records were looked at and are free of all but gaps."""

    schema_: Literal["quality/1"] = Field("quality/1", alias="schema")
    records: int
    sound: int
    catalogue: str | None
    counts: dict[str, int]
    findings: tuple[Finding, ...]
