"""Uncertainty against the GUM and an independent package. None of the expected values is the service's own output."""

from __future__ import annotations

import math

import numpy as np
import pytest
from uncertainties import ufloat, umath

from service.core.boat import BoatForm
from service.core.fit import factors
from service.core.fit.engine import fit_configuration
from service.core.fit.factors import standard_uncertainty
from service.core.fit.site import skin
from tests.support.boats import bench, boat, metal, ready


def test_a_half_range_is_rectangular() -> None:
    """JCGM 100:2008, 4.3.7: a half-range a, nothing else known, has the standard uncertainty a/sqrt(3); 50 -> 28.8675."""
    form = boat(uncertainties={"transom.top_height_mm": 50}, methods={"transom.top_height_mm": "photo"})
    assert standard_uncertainty(form, "transom.top_height_mm", bench()) == pytest.approx(28.8675, abs=1e-4)


def test_a_method_has_its_own() -> None:
    form = boat(methods={"*": "tape", "transom.rake_deg": "laser"})
    assert standard_uncertainty(form, "transom.top_height_mm", bench()) == 10
    assert standard_uncertainty(form, "transom.rake_deg", bench()) == 0.5
    assert standard_uncertainty(form, "boat.displacement_kg", bench()) == 100
    unsaid = boat(methods={"*": None})
    assert standard_uncertainty(unsaid, "transom.rake_deg", bench()) == 3


def test_what_is_said_of_an_obstacle_holds_for_its_axes() -> None:
    thing = {"kind": "rail", "aft_mm": [0, 1], "starboard_mm": [0, 1], "height_mm": [0, 1]}
    form = boat(
        obstacles=[thing, thing],
        methods={"obstacles[0]": "photo", "obstacles[0].aft_mm": "tape"},
        uncertainties={"obstacles[0].height_mm": 30, "obstacles[1]": 60},
    )
    found = {
        axis: standard_uncertainty(form, f"obstacles[0].{axis}_mm", bench()) for axis in ("aft", "starboard", "height")
    }
    assert found == pytest.approx({"aft": 10, "starboard": 60, "height": 30 / math.sqrt(3)})
    assert standard_uncertainty(form, "obstacles[1].aft_mm", bench()) == pytest.approx(60 / math.sqrt(3))


# --- the rake from two tapes ------------------------------------------------------------------------------

RAKE, U_RAKE, U_MONTE_CARLO = 15.0027, 0.16291, 0.16288
"""Δx = 268 ± 3 over Δz = 1000 ± 2: the packages uncertainties, suncal 1.7.1 and metrolopy 1.1.1 all give 15.0027° and
0.16291°; a Monte Carlo of two million draws 0.16288°."""


def test_the_referee_says_so_too() -> None:
    rake = umath.atan(ufloat(268, 3) / ufloat(1000, 2)) * 180 / math.pi
    assert rake.nominal_value == pytest.approx(RAKE, abs=5e-5)
    assert rake.std_dev == pytest.approx(U_RAKE, abs=5e-6)


def test_two_tapes_through_star_points_and_draws() -> None:
    """The service's factors carry Δx and Δz to the rake: star points give the first order, draws the rest."""
    along = factors.normal("along", "measured", 268, 3)
    down = factors.normal("down", "measured", 1000, 2)
    halves = [
        (math.atan2(a[0], d[0]) - math.atan2(a[1], d[1])) / 2
        for a, d in (((along.high, along.low), (1000, 1000)), ((268, 268), (down.high, down.low)))
    ]
    assert math.degrees(math.hypot(*halves)) == pytest.approx(U_RAKE, abs=2e-5)
    rng = np.random.default_rng(11)
    drawn = np.degrees(np.arctan2(along.draw(rng, 400_000), down.draw(rng, 400_000)))
    assert drawn.std() == pytest.approx(U_MONTE_CARLO, abs=4 * U_MONTE_CARLO / math.sqrt(2 * 400_000))
    assert np.percentile(drawn, [2.5, 97.5]) == pytest.approx([14.683, 15.322], abs=3e-3)


@pytest.mark.parametrize(
    ("one", "covers"),
    [
        (boat(methods={"transom.rake_deg": "tape"}), 3.92),
        (boat(uncertainties={"transom.rake_deg": 2 * math.sqrt(3)}), 3.8794),
    ],
)
def test_sum_of_four_normals_and_four_rectangles(one: BoatForm, covers: float) -> None:
    """JCGM 101:2008, 9.2: four of unit standard deviation sum to 2.0; 95 % within ±3.92, of rectangles within ±3.8794.

    By the bench catalogue's tape a rake is known to 2°, a half-range of 2 sqrt(3)° is as wide: both twice the unit.
    """
    rng = np.random.default_rng(3)
    factor = factors.measured(one, bench(), "transom.rake_deg", 0.0)
    assert factor.spread == pytest.approx(2)
    total = sum(factor.draw(rng, 200_000) for _ in range(4)) / 2
    assert np.std(total) == pytest.approx(2.0, abs=0.02)
    assert np.percentile(np.abs(total), 95) == pytest.approx(covers, abs=0.015)


def test_each_point_of_a_profile_has_a_method_of_its_own() -> None:
    points = [
        {"below_top_mm": 0, "aft_mm": 0},
        {"below_top_mm": 400, "aft_mm": -60},
        {"below_top_mm": 900, "aft_mm": -200},
    ]
    form = boat(
        transom={"profile": points},
        methods={"*": "photo", "transom.profile": "laser", "transom.profile[2].aft_mm": "tape"},
        uncertainties={},
    )
    found = {f.field: f.spread for f in factors.curve_factors(form, bench())}
    assert found == {"transom.profile[1].aft_mm": 2, "transom.profile[2].aft_mm": 10}  # the top edge is x = 0 itself


def test_level_cuts_are_no_surer_than_their_method() -> None:
    """The skin at a level cut moves with that cut alone, between two with both: the variance of a straight mean."""
    points = [{"half_breadth_mm": 0, "aft_mm": 0}, {"half_breadth_mm": 800, "aft_mm": -40}]
    cuts = [{"below_top_mm": below, "points": points} for below in (0, 500, 1000)]
    boats = ready(boat(transom={"sections": cuts, "top_height_mm": 1000}, methods={"*": "tape"}), draws=8000)
    sd = {
        down: np.std([skin(boats.draws, i, 100.0, float(boats.draws.values[i, 0]) - down)[0] for i in range(8000)])
        for down in (500.0, 750.0)
    }
    assert sd[500.0] == pytest.approx(10, rel=0.03)
    assert sd[750.0] == pytest.approx(10 / math.sqrt(2), rel=0.03)
    shares = {d.field: d.share for d in fit_configuration(boats, metal()).doubt}
    assert shares.get("transom.sections", 0) > 0


def test_rake_and_height_through_the_whole_boat() -> None:
    """The skin at a fixed height by the boat's draws, against the package uncertainties on the same formula.

    x = (z - top - water) tan r with r 15 ± 0.5° (laser), top 1000 ± 2 mm (laser) and the waterline ± 10 mm.
    """
    boats = ready(boat(transom={"rake_deg": 15}), draws=20_000)
    drawn = np.array([skin(boats.draws, i, 0.0, 400.0)[0] for i in range(20_000)])
    rake = ufloat(math.radians(15), math.radians(0.5))
    x = (400 - ufloat(1000, 2) - ufloat(0, 10)) * umath.tan(rake)
    assert drawn.mean() == pytest.approx(x.nominal_value, abs=0.2)
    assert drawn.std() == pytest.approx(x.std_dev, rel=0.02)


def test_first_order_and_draws_on_a_margin_that_is_one_measurement() -> None:
    """JCGM 100, 5.1.2: a margin of 8000 - 7900 kg with u 100 kg (laser) passes with Φ(1) = 0.8413.

    Everything else has room to spare. By draws: within four standard errors of 4000 (0.023).
    """
    fit = fit_configuration(ready(boat(boat={"displacement_kg": 7900}), draws=4000), metal())
    assert fit.smallest_margin == pytest.approx(0.05)
    assert fit.first_order == pytest.approx(0.841, abs=1e-3)
    assert fit.probability == pytest.approx(0.8413, abs=0.023)
    assert fit.doubt[0].field == "boat.displacement_kg"
    assert fit.doubt[0].share > 0.95
    assert sum(d.share for d in fit.doubt) == pytest.approx(1, abs=0.01)
