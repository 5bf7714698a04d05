"""Speeds and waves against published and hand-computed values."""

from __future__ import annotations

import numpy as np
import pytest

from service.core.loads import water

# Airy in deep water, by hand: H m, T s, length m, u at 0, 0.5 and 1.0 m down.
AIRY = [
    (2, 6, 56.188, 1.0472, 0.9903, 0.9364),
    (2, 7, 76.478, 0.8976, 0.8615, 0.8268),
    (3, 8, 99.890, 1.1781, 1.1416, 1.1063),
    (4, 9, 126.423, 1.3963, 1.3620, 1.3286),
]


@pytest.mark.parametrize(("height", "period", "length", "top", "half", "one"), AIRY)
def test_airy(height: float, period: float, length: float, top: float, half: float, one: float) -> None:
    assert float(water.wave_length(period)) == pytest.approx(length, abs=6e-4)
    got = water.orbital_speed(height, period, np.array([0.0, 500.0, 1000.0]))
    assert got == pytest.approx([top, half, one], abs=6e-5)


def test_a_published_orbital_speed() -> None:
    """Klaka, read in a summary: a wave of 2 m, 75 m and 7 s carries the water at about 1.7 knots."""
    assert float(water.orbital_speed(2.0, 7.0, 0.0)) / water.KNOT == pytest.approx(1.7, abs=0.06)


@pytest.mark.parametrize(("knots", "height", "period", "pressure"), [(6, 2, 7, 8136), (7, 3, 8, 11706)])
def test_the_trough_adds_and_the_crest_takes_away(knots: float, height: float, period: float, pressure: float) -> None:
    """Sums by hand: 6 kn + 1.745 kn and 7 kn + 2.29 kn in the trough."""
    own, orbital = knots * water.KNOT, water.orbital_speed(height, period, 0.0)
    trough, crest = (water.flow_speed(own, orbital, phase) for phase in (1.0, -1.0))
    assert float(water.dynamic_pressure(trough)) == pytest.approx(pressure, rel=2e-4)
    assert float(crest) == pytest.approx(own - float(orbital))
    assert float(crest) < own < float(trough)


@pytest.mark.parametrize(("metres", "metric", "feet"), [(9.35, 7.4304, 7.4217), (8.0, 6.8731, 6.8650)])
def test_hull_speed_in_metres_and_in_feet(metres: float, metric: float, feet: float) -> None:
    """2.43 sqrt(m) as in the package sailboat-hydro 1.0.0 (read); 1.34 sqrt(ft), common practice; knots."""
    got = float(water.hull_speed(metres * 1000)) / water.KNOT
    assert got == pytest.approx(metric, abs=6e-5)
    assert 1.34 * np.sqrt(metres / 0.3048) == pytest.approx(feet, abs=6e-5)
    assert got == pytest.approx(feet, rel=2e-3)
