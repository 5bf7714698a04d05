"""Lengths as they are written on a drawing: in mm, and in inches beside them where people measure so."""

from __future__ import annotations

from math import gcd

INCH, SIXTEENTHS = 25.4, 16
INCH_COUNTRIES = frozenset({"US", "PR", "VI", "GU", "AS", "MP", "LR", "MM", "CA", "BS", "BZ", "KY", "BM"})
"""Where a yard's tape is in inches or in both (from memory; common practice, no source). Millimetres are always shown."""
LETTER_COUNTRIES = frozenset(
    {"US", "PR", "VI", "GU", "AS", "MP", "CA", "MX", "CL", "CO", "VE", "PH", "CR", "GT", "PA", "DO"}
)
"""Where a printer holds Letter paper (from memory; common practice, no source); A4 elsewhere."""


def in_inches(country: str | None) -> bool:
    """Say whether inches are shown beside mm for somebody who writes from there (ISO 3166-1 alpha-2)."""
    return country in INCH_COUNTRIES


def on_letter(country: str | None) -> bool:
    """Say whether paper there is Letter rather than A4."""
    return country in LETTER_COUNTRIES


def unit(*, inches: bool) -> str:
    """Return what the figures of a drawing are in."""
    return "mm (inches)" if inches else "mm"


def written(mm: float, *, inches: bool) -> str:
    """Return a length for a dimension line: whole mm, and inches to a sixteenth.

    >>> written(578.2, inches=False), written(-190.6, inches=True), written(1000, inches=True)
    ('578', '-191 (-7 1/2 in)', '1000 (39 3/8 in)')
    """
    whole = f"{round(mm) + 0:d}"
    return f"{whole} ({tape(mm)})" if inches else whole


def tape(mm: float) -> str:
    """Return a length as a tape in inches shows it: no feet, so that it stays short.

    >>> tape(1000.0), tape(1.0), tape(-12.7), tape(50.8)
    ('39 3/8 in', '1/16 in', '-1/2 in', '2 in')
    """
    whole, over = divmod(round(abs(mm) / INCH * SIXTEENTHS), SIXTEENTHS)
    common = gcd(over, SIXTEENTHS)
    parts = [str(whole)] if whole or not over else []
    parts += [f"{over // common}/{SIXTEENTHS // common}"] if over else []
    return f"{'-' if mm < 0 and (whole or over) else ''}{' '.join(parts)} in"
