"""Which sign is the decimal one in a table's numbers: found from all of them together."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Literal

Decimal = Literal[".", ","]
_COMMA = re.compile(r"[-+]?(?:\d{1,3}(?:[.\s']\d{3})+|\d+),(?:\d{1,2}|\d{4,})")
_POINT = re.compile(r"[-+]?(?:\d{1,3}(?:[,\s']\d{3})+|\d+)\.(?:\d{1,2}|\d{4,})")
_NUMBER = re.compile(r"[-+]?[\d.,\s']+")


@dataclass(frozen=True)
class Evidence:
    """The first number that only a decimal comma explains, and the first that only a point does."""

    comma: str | None = None
    point: str | None = None

    @property
    def sign(self) -> Decimal | None:
        """The decimal sign where all speak for one; None where nothing or both do."""
        if (self.comma is None) == (self.point is None):
            return None
        return "," if self.comma is not None else "."


def evidence(texts: Iterable[str]) -> Evidence:
    """Return what numbers say of their decimal sign. Three digits behind a sign say nothing: they may be thousands.

    >>> evidence(["1.270", "98,5"]).sign, evidence(["1.270"]).sign, evidence(["1.5", "1,5"]).sign
    (',', None, None)
    """
    comma = point = None
    for text in texts:
        bare = text.strip()
        if comma is None and _COMMA.fullmatch(bare):
            comma = bare
        elif point is None and _POINT.fullmatch(bare):
            point = bare
        if comma is not None and point is not None:
            break
    return Evidence(comma, point)


def plain_number(text: str, sign: Decimal) -> str:
    """Return a bare number with a decimal point and nothing between thousands; other text as it is.

    >>> plain_number("1.270,5", ","), plain_number("1,270", "."), plain_number("4 ft 2 in", ",")
    ('1270.5', '1270', '4 ft 2 in')
    """
    bare = text.strip()
    if not _NUMBER.fullmatch(bare) or bare.count(sign) > 1:
        return text
    between = "." if sign == "," else ","
    whole, _, part = bare.partition(sign)
    groups = re.split(rf"[{between}\s']", whole)
    if any(len(group) != 3 for group in groups[1:]) or between in part:  # noqa: PLR2004 - thousands go by three
        return text
    return "".join(groups) + (f".{part}" if part else "")
