"""Geometry of the fit against published or independently derived values. None is the service's own output.

"By hand": the closed form beside the value, worked out apart from the service (plain arithmetic, no code of its).
"""

from __future__ import annotations

import math

import numpy as np
import pytest
from scipy.interpolate import PchipInterpolator

from service.core.boat import BoatForm
from service.core.fit import pchip
from service.core.fit.site import skin
from service.core.fit.solids import point_sector, sectors
from tests.support.boats import at, bench, boat, metal, ready, ruled, value


def of(form: BoatForm, y: float, z: float) -> tuple[float, float, float]:
    return skin(ready(form).nominal, 0, float(y), float(z))  # ints would be compiled for anew


# --- rake and camber --------------------------------------------------------------------------------------


def test_rake_from_a_plumb_line() -> None:
    """A plumb line: tan θ = Δx/Δz; 268 over 1000 is 15.002716° (by hand: atan 0.268).

    A plumb line from a counter's top edge hangs 268 mm aft of the skin 1000 mm below: the profile says the same as
    the angle.
    """
    points = [{"below_top_mm": 0, "aft_mm": 0}, {"below_top_mm": 1000, "aft_mm": -268}]
    measured, angled = boat(transom={"profile": points}), boat(transom={"rake_deg": 15.002716})
    for z in (0.0, 250.0, 900.0):
        assert math.degrees(math.atan(of(measured, 0, z)[1])) == pytest.approx(15.002716, abs=1e-6)
        assert of(measured, 0, z)[0] == pytest.approx(of(angled, 0, z)[0], abs=1e-5)
    assert of(angled, 0, 0)[0] == pytest.approx(-268, abs=1e-5)


@pytest.mark.parametrize(
    ("radius", "y", "parabola", "circle"),
    [(3000, 250, 10.41667, 10.43481), (2500, 300, 18.00000, 18.06527)],
)
def test_camber_offset(radius: float, y: float, parabola: float, circle: float) -> None:
    """Offset of a curve of radius R at y: circle R - sqrt(R² - y²), parabola y²/2R (by hand, both).

    The form's camber is the sagitta c over the width W of a parabola: c = W²/8R gives y²/2R at y. The circle differs
    by less than 0.1 mm over a bracket's flange.
    """
    width = 2000
    form = boat(transom={"camber_mm": width**2 / 8 / radius, "width_top_mm": width})
    assert -of(form, y, 900)[0] == pytest.approx(parabola, abs=1e-4)
    assert -of(form, y, 900)[0] == pytest.approx(circle, abs=0.1)


@pytest.mark.parametrize(
    ("rake", "radius", "y", "bevel", "rise_over_150"),
    [
        (15, 3000, 250, 15.6746, 42.091),
        (20, 2500, 300, 20.9689, 57.486),
        (30, 4000, 150, 30.0523, 86.785),
        (-12, 3000, 200, 12.5585, 33.415),
    ],
)
def test_compound_wedge(rake: float, radius: float, y: float, bevel: float, rise_over_150: float) -> None:
    """Angle between a vertical athwartships plane and a parabolic skin: cos β = 1/sqrt(1 + tan²θ + (y/R)²) (by hand).

    Neither the sum of both angles nor their root of squares: for the first row 19.78° and 15.743°.
    """
    form = boat(transom={"camber_mm": 2000**2 / 8 / radius, "rake_deg": rake})
    _, up, across = of(form, y, 500)
    slope = math.hypot(up, across)
    assert math.degrees(math.atan(slope)) == pytest.approx(bevel, abs=1e-4)
    assert 150 * slope == pytest.approx(rise_over_150, abs=1e-3)


def test_pad_takes_the_compound_wedge() -> None:
    """Row one of the wedge, cut into the pad of a flange that takes no slope: its two bevels and four corners (by hand).

    tan 15° = 0.2679492 over half of 150 mm, 250/3000 = 0.0833333 over half of 160 mm: 20.09619 and 6.66667.
    """
    form = boat(transom={"camber_mm": 2000**2 / 8 / 3000, "rake_deg": 15})
    fit = at(form, metal("stiff", "stiff"), y=250, x=400, lower=400, upper=800)
    pad = next(p for p in fit.pads if p.role == "lower")
    assert pad.rake_bevel_deg == pytest.approx(15, abs=1e-6)
    assert abs(pad.plan_bevel_deg) == pytest.approx(math.degrees(math.atan(250 / 3000)), abs=1e-6)
    corners = sorted(pad.corners_mm.values())
    middle = pad.centre_mm
    assert corners == pytest.approx(
        sorted(middle + a * 20.09619 + b * 6.66667 for a in (1, -1) for b in (1, -1)), abs=1e-4
    )


def test_clock_angle_of_the_steepest_slope() -> None:
    """atan2(y/R, tan θ): 17.28° and 18.25° (by hand) for the first two wedges."""
    for rake, radius, y, clock in ((15, 3000, 250, 17.28), (20, 2500, 300, 18.25)):
        form = boat(transom={"camber_mm": 2000**2 / 8 / radius, "rake_deg": rake})
        _, up, across = of(form, y, 500)
        assert math.degrees(math.atan2(abs(across), up)) == pytest.approx(clock, abs=0.005)


def test_standoff_grows_down_a_raked_transom() -> None:
    """Δ = (z2 - z1) tan θ: 600 mm at 20° make 218.382 mm (by hand)."""
    form = boat(transom={"rake_deg": 20})
    assert of(form, 0, 900)[0] - of(form, 0, 300)[0] == pytest.approx(218.382, abs=5e-4)


# --- struts, heel, swing ----------------------------------------------------------------------------------


def test_strut_length() -> None:
    """sqrt(450² + 300² + 150²) = 561.249 (by hand): collar 450 aft of both feet, 300 beside and 150 under one of them."""
    up = bench().bracket("strutted")
    assert up.struts is not None
    high = up.model_copy(update={"struts": up.struts.model_copy(update={"foot_rise_mm": 150.0})})
    kit = bench().model_copy(update={"brackets": tuple(high if b.code == "strutted" else b for b in bench().brackets)})
    fit = at(boat(), metal("strutted", "hinge"), x=450, lower=300, catalogue=kit)
    assert value(fit, "lower.strut") == pytest.approx(561.249, abs=5e-4)


@pytest.mark.parametrize(("heel", "rotated"), [(10, -0.735752), (15, -0.695095), (20, -0.649148), (25, -0.598261)])
def test_heel(heel: float, rotated: float) -> None:
    """A point 0.3 m to weather and 0.8 m under water comes to z cos φ + y sin φ (by hand).

    The blade's top stands there when the shaft ends 20 mm higher; to leeward the same point goes to z cos φ - y sin φ,
    so that both depths add up to twice 0.8 cos φ.
    """
    fit = at(boat(), metal(), y=300, bottom=-780, catalogue=ruled(bench(), heel_angle=heel))
    leeward = value(fit, "root_depth.leeward") / 1000
    assert 2 * 0.8 * math.cos(math.radians(heel)) - leeward == pytest.approx(-rotated, abs=1e-6)


def test_share_under_water_agrees_with_rotating_the_blade() -> None:
    """The immersed share to weather, from points along the blade turned one by one (plain numpy)."""
    fit = at(boat(), metal(), y=400, bottom=60, catalogue=ruled(bench(), heel_angle=20))
    z = np.linspace(40, -760, 80_001)
    turned = z * math.cos(math.radians(20)) + 400 * math.sin(math.radians(20))
    assert value(fit, "immersion.weather") == pytest.approx(float((turned < 0).mean()), abs=1e-4)


def test_rudder_swing() -> None:
    """Pivot to trailing edge 0.55, other pivot to leading edge 0.06, 0.75 apart: worst gap 0.140 (by hand).

    With the main rudder hard over at 35° its trailing edge is 0.43497 from the other's axis (law of cosines).
    """
    gear = bench().gear("gear")
    blade = gear.blade.model_copy(update={"balance_mm": 60.0})
    catalogue = bench().model_copy(update={"gears": (gear.model_copy(update={"blade": blade}),)})
    rudder = {"stock_aft_mm": -200, "leading_edge_aft_mm": -300, "trailing_edge_aft_mm": 350}
    fit = at(boat(main_rudder=rudder), metal("long", "long"), x=550, catalogue=catalogue)
    assert value(fit, "main_rudder.blade") == pytest.approx(140)
    # the axis seen 70° off: 35° beyond where the rudder turns to, so its trailing edge at 35° is the nearest of it
    x, y = 0.75 * math.cos(math.radians(70)), 0.75 * math.sin(math.radians(70))
    cos, sin = math.cos(math.radians(35)), math.sin(math.radians(35))
    assert point_sector(x, y, 0.0, 0.0, 0.55, cos, sin, 1.0) == pytest.approx(0.43497, abs=5e-6)
    assert sectors(0.0, 0.0, 0.55, cos, sin, 1.0, 0.75, 0.0, 0.06, cos, sin, -1.0) == pytest.approx(0.140)


# --- interpolation ----------------------------------------------------------------------------------------


def test_the_curve_is_scipys_pchip() -> None:
    """F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300, as scipy's PchipInterpolator has it."""
    rng = np.random.default_rng(4)
    for _ in range(200):
        n = int(rng.integers(2, 9))
        at_, knots = np.cumsum(rng.uniform(5, 400, n)), rng.choice([0.0, 30.0, 300.0]) * rng.normal(size=n)
        theirs = PchipInterpolator(at_, knots)
        slopes = pchip.slopes_of(at_, knots)
        assert slopes == pytest.approx(theirs.derivative()(at_), abs=1e-9)
        for query in rng.uniform(at_[0], at_[-1], 20):
            ours = pchip.value(at_, knots, slopes, float(query))
            assert ours == pytest.approx((float(theirs(query)), float(theirs.derivative()(query))), abs=1e-8)


def test_a_profile_is_that_curve_down_the_centreline() -> None:
    below = np.array([0.0, 180.0, 420.0, 700.0, 1000.0])
    aft = np.array([0.0, 12.0, 30.0, -15.0, -160.0])
    form = boat(transom={"profile": [{"below_top_mm": b, "aft_mm": a} for b, a in zip(below, aft, strict=True)]})
    theirs = PchipInterpolator(below, aft)
    for z in np.linspace(0, 1000, 41):
        x, rake, _ = of(form, 0, float(z))
        assert x == pytest.approx(float(theirs(1000 - z)), abs=1e-6)
        assert rake == pytest.approx(-float(theirs.derivative()(1000 - z)), abs=1e-6)
