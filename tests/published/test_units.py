"""Units against their published definitions. Literals are the sources', none is the service's own output."""

from __future__ import annotations

import pytest

from service.core.units import Dimension, Quantity, parse

# Source for each row. "International yard and pound": agreement of 1 July 1959 (yard 0.9144 m, pound 0.45359237 kg),
# exact; from it foot = yard / 3 and inch = yard / 36. NIST SP 811 appendix B.8: long ton 1.016 047 E+03 kg, short ton
# 9.071 847 E+02 kg, knot 5.144 444 E-01 m/s, mile per hour 4.4704 E-01 m/s (exact). Long ton to 1016.0469088 kg follows
# from 2240 lb exactly. SI brochure, 9th ed., table 8: tonne 1000 kg; minute of arc 1/60 degree.
DEFINITIONS: list[tuple[str, Dimension, float, float]] = [
    ("1 in", "length", 25.4, 1e-9),
    ("1 ft", "length", 304.8, 1e-9),
    ("3 ft", "length", 914.4, 1e-9),
    ("1 lb", "mass", 0.45359237, 1e-9),
    ("1 long ton", "mass", 1016.0469088, 1e-7),
    ("13.4 long tons", "mass", 13.4 * 1016.0469, 1e-3),
    ("1 short ton", "mass", 907.1847, 1e-4),
    ("1 t", "mass", 1000.0, 1e-9),
    ("1 knot", "speed", 0.5144444, 1e-7),
    ("1 mph", "speed", 0.44704, 1e-9),
    ("1°1'", "angle", 1.0166667, 1e-7),
]


@pytest.mark.parametrize(("text", "dimension", "value", "within"), DEFINITIONS)
def test_definitions(text: str, dimension: Dimension, value: float, within: float) -> None:
    got = parse(text, dimension)
    assert isinstance(got, Quantity)
    assert got.value == pytest.approx(value, abs=within, rel=0)
