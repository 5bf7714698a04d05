"""Quantities as people write them -> SI (mm, deg, kg, m/s), and back."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Literal

Dimension = Literal["length", "angle", "mass", "speed"]
SI_UNIT: dict[Dimension, str] = {"length": "mm", "angle": "deg", "mass": "kg", "speed": "m/s"}


@dataclass(frozen=True)
class Quantity:
    """A value in the SI unit of its dimension, with the unit and the words it was written in."""

    value: float
    dimension: Dimension
    unit: str
    text: str


@dataclass(frozen=True)
class Unread:
    """A text that gives no single value: why, and the readings it could have."""

    reason: Literal["ambiguous", "unreadable"]
    why: str
    text: str
    readings: tuple[float, ...] = ()


def parse(text: str, dimension: Dimension, *, assumed: str | None = None) -> Quantity | Unread:
    """Return the quantity in `text`; `assumed` is the unit of a bare number, None where a bare number is ambiguous."""
    match = re.fullmatch(r"\s*([-+]?\d+(?:[.,]\d+)?)\s*(mm|cm|m|deg|°|kg|t)?\s*", text)
    if not match or not (match[2] or assumed):
        return Unread("unreadable", "write a number and a unit", text)
    unit = match[2] or assumed or ""
    factor = {"mm": 1, "cm": 10, "m": 1000, "deg": 1, "°": 1, "kg": 1, "t": 1000}[unit]
    return Quantity(float(match[1].replace(",", ".")) * factor, dimension, unit, text)
