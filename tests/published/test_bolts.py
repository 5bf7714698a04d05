"""Bolts against the standards' figures. None is the service's own output.

The standards themselves were not opened. Nut, washer and head heights and the length series of ISO 888 were read in the
fastener tables of the package bd-warehouse 0.4.0; thread diameters follow from ISO 724's formulas; inch lengths from
the list of ASME B18.3 there (hex bolts the same in practice, from memory).
"""

from __future__ import annotations

import math

import pytest

from service.core.fit.fasteners import INCH_LENGTHS, METRIC_LENGTHS, THREADS, needed_length, next_inch, next_metric
from tests.support.boats import at, bench, boat, demo, metal

# size: diameter, pitch (ISO 724); nut ISO 4032 m; washer ISO 7089 h; washer ISO 7093 h; all in mm, greatest heights
METRIC = {
    "M6": (6, 1.0, 5.2, 1.8, 1.8),
    "M8": (8, 1.25, 6.8, 1.8, 2.2),
    "M10": (10, 1.5, 8.4, 2.2, 2.7),
    "M12": (12, 1.75, 10.8, 2.7, 3.3),
    "M16": (16, 2.0, 14.8, 3.3, 3.3),
}


@pytest.mark.parametrize("size", sorted(METRIC))
def test_metric_sizes(size: str) -> None:
    thread = THREADS[size]
    assert (thread.diameter, thread.pitch, thread.nut, thread.washer_head, thread.washer_nut) == METRIC[size]


# size: diameter in inches, threads an inch (unified coarse), tensile stress area in mm² (handbook values)
UNIFIED = {"1/4": (0.25, 20, 20.53), "5/16": (0.3125, 18, 33.83), "3/8": (0.375, 16, 49.99), "1/2": (0.5, 13, 91.55)}


@pytest.mark.parametrize("size", sorted(UNIFIED))
def test_inch_sizes(size: str) -> None:
    """Diameter and pitch give the handbook's stress area: π/4 (d - 0.9743 P)² for unified threads."""
    diameter, threads, area = UNIFIED[size]
    thread = THREADS[size]
    assert thread.diameter == pytest.approx(diameter * 25.4)
    assert thread.pitch == pytest.approx(25.4 / threads)
    assert math.pi / 4 * (thread.diameter - 0.9743 * thread.pitch) ** 2 == pytest.approx(area, abs=0.06)


@pytest.mark.parametrize(("size", "area"), [("M6", 20.1), ("M8", 36.6), ("M10", 58.0), ("M12", 84.3), ("M16", 157)])
def test_metric_stress_areas(size: str, area: float) -> None:
    """π/4 (d - 0.9382 P)² against the table of ISO 898-1, read by way of eurocodepy 2026.1.1."""
    thread = THREADS[size]
    assert math.pi / 4 * (thread.diameter - 0.9382 * thread.pitch) ** 2 == pytest.approx(area, rel=3e-3)


def test_worked_stack() -> None:
    """M10 through 6 + 10 + 12 + 6 = 34 mm (by hand): washers 2.2 + 2.7 and nut 8.4 end at 47.3; two pitches 50.3.

    The next length, 55, stands 7.7 mm or 5.13 pitches proud; 50 would stand 1.80.
    """
    thread = THREADS["M10"]
    needed = needed_length(34.0, thread)
    assert needed == pytest.approx(50.3)
    assert next_metric(needed) == 55
    proud = (55 - (needed - 2 * thread.pitch)) / thread.pitch
    assert proud == pytest.approx(5.13, abs=0.005)
    assert next_metric(needed - 0.3) == 50  # a grip 0.3 mm less would do with the shorter bolt
    assert next_inch(needed) == 2.0  # 50.8 mm


def test_lengths_of_iso_888() -> None:
    """20 to 70 by fives (no 75, 85, 95: those are DIN 931's), to 160 by tens, then by twenties to 500."""
    assert METRIC_LENGTHS[:11] == (20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70)
    assert METRIC_LENGTHS[11:22] == (80, 90, 100, 110, 120, 130, 140, 150, 160, 180, 200)
    assert METRIC_LENGTHS[-1] == 500
    assert not {75, 85, 95} & set(METRIC_LENGTHS)
    for needed, taken in ((70.1, 80), (80.0, 80), (160.5, 180), (19, 20)):
        assert next_metric(needed) == taken
    assert next_metric(500.5) is None


def test_inch_lengths() -> None:
    """Quarter inches from 3/4 to 8 in, then half inches to 10."""
    assert INCH_LENGTHS[:4] == (0.75, 1.0, 1.25, 1.5)
    assert 7.75 in INCH_LENGTHS
    assert 8.25 not in INCH_LENGTHS
    assert INCH_LENGTHS[-3:] == (9.0, 9.5, 10.0)
    assert next_inch(25.4) == 1.0
    assert next_inch(25.5) == 1.25
    assert next_inch(10 * 25.4 + 1) is None


def test_a_bolt_is_made_of_flange_pad_skin_and_backing() -> None:
    """Common practice, no source: flange, pad, skin, backing plate, then washers, nut and two threads.

    By hand on the bench: flange 12, no slope, skin 12, backing 6; what the pad's centre adds is read off the pad.
    """
    fit = at(boat(), metal("stiff", "hinge"), x=150)
    bolt = next(f for f in fit.fasteners if f.role == "upper")
    pad = max((max(p.corners_mm.values()) for p in fit.pads if p.role == "upper"), default=0.0)
    assert bolt.grip_mm == pytest.approx(12 + pad + 12 + 6)
    assert (bolt.size, bolt.count) == ("M10", 4)
    assert bolt.length_mm is not None
    assert bolt.length_mm >= bolt.grip_mm + 2.2 + 2.7 + 8.4 + 3.0
    unsaid = at(boat(transom={"thickness_mm": None}), metal(), catalogue=bench())
    assert unsaid.fasteners[0].length_mm is None
    assert "measure it" in unsaid.fasteners[0].note


def test_a_slanting_skin_is_longer_to_drill() -> None:
    """Skin / cos of what the pad takes (by hand): 12 mm at 15.6746° (15° of rake, 250/3000 across) is 12.4635 mm."""
    form = boat(transom={"camber_mm": 2000**2 / 8 / 3000, "rake_deg": 15})
    fit = at(form, metal("stiff", "stiff"), y=250, x=400, lower=400, upper=800)
    assert fit.fasteners[0].made_of["skin"] == pytest.approx(12.4635, abs=1e-4)


def test_bolts_of_the_trade() -> None:
    """Common practice, no source: four or six a bracket, M10 or 3/8 in, flange about 12.7 mm."""
    flat = [b for b in demo().brackets if b.kind in ("hinged", "outrigger")]
    assert {len(b.bolts.pattern_mm) for b in flat} <= {4, 6}
    assert {b.bolts.size for b in flat} <= {"M10", "M12", "3/8"}
