"""SI values -> what people read: mm, feet and inches, degrees, kilograms and pounds."""

from __future__ import annotations

from math import gcd, isfinite
from typing import Literal

from service.core.units.lexicon import INCH_MM, POUND_KG

System = Literal["metric", "imperial", "both"]
INCHES_A_FOOT = 12


def format_length(mm: float, system: System = "metric", *, inch_fraction: int = 8, decimals: int = 0) -> str:
    """Return a length (mm) for people; imperial to the nearest 1/`inch_fraction` in. ValueError for no finite number.

    >>> format_length(1270)
    '1270 mm'
    >>> format_length(1270, "imperial")
    '4 ft 2 in'
    >>> format_length(-190.6, "both", inch_fraction=16)
    '-191 mm (-7 1/2 in)'
    """
    _finite(mm)
    metric = f"{_whole(mm, decimals)} mm"
    if system == "metric":
        return metric
    imperial = _feet_inches(mm, inch_fraction)
    return imperial if system == "imperial" else f"{metric} ({imperial})"


def format_angle(deg: float, *, decimals: int = 1) -> str:
    """Return an angle (degrees) for people, without needless zeros.

    >>> format_angle(12.0), format_angle(-12.345)
    ('12°', '-12.3°')
    """
    _finite(deg)
    text = _whole(deg, decimals)
    return f"{text.rstrip('0').rstrip('.') if '.' in text else text}°"


def format_mass(kg: float, system: System = "metric") -> str:
    """Return a mass (kg) for people: whole kilograms, whole pounds.

    >>> format_mass(7302.8, "both")
    '7303 kg (16,100 lb)'
    """
    _finite(kg)
    metric, imperial = f"{_whole(kg, 0)} kg", f"{_whole(kg / POUND_KG, 0, ',')} lb"
    return metric if system == "metric" else imperial if system == "imperial" else f"{metric} ({imperial})"


def _whole(value: float, decimals: int, group: str = "") -> str:
    return f"{round(value, decimals) + 0.0:{group}.{decimals}f}"  # + 0.0: never "-0"


def _feet_inches(mm: float, inch_fraction: int) -> str:
    parts = round(abs(mm) / INCH_MM * inch_fraction)
    inches, over = divmod(parts, inch_fraction)
    feet, inches = divmod(inches, INCHES_A_FOOT)
    common = gcd(over, inch_fraction)
    fraction = f"{over // common}/{inch_fraction // common}" if over else ""
    words = [f"{feet} ft"] if feet else []
    if inches or fraction or not feet:
        words.append(" ".join(filter(None, [str(inches) if inches or not fraction else "", fraction, "in"])))
    return ("-" if mm < 0 and parts else "") + " ".join(words)


def _finite(value: float) -> None:
    if not isfinite(value):
        raise ValueError(f"{value} is no quantity; give a finite number")
