from __future__ import annotations

import numpy as np
import pytest

from service.core.loads import blade, shaft, tube, water
from service.core.loads.validity import Valid, outside


def test_a_number_inside_its_range_carries_nothing() -> None:
    got = blade.lift_slope.checked(aspect=2.0)
    assert float(got.value) == float(blade.lift_slope(2.0))
    assert got.findings == ()


def test_outside_it_carries_what_and_by_how_much() -> None:
    (finding,) = blade.lift_slope.checked(aspect=np.array([2.0, 7.5, 9.0])).findings
    assert (finding.formula, finding.input) == ("lift_slope", "aspect")
    assert finding.text == "aspect 9 is outside 0.5 to 6 in 2 of 3"


def test_what_is_no_number_is_outside() -> None:
    assert "nan" in outside("speed_ms", np.array([1.0, np.nan]), Valid(0, 12, "m/s"))
    assert np.isnan(float(water.hull_speed(-1.0)))
    assert water.hull_speed.findings(lwl_mm=-1.0)


def test_open_ends_are_said_as_such() -> None:
    assert outside("x", -1.0, Valid(0)) == "x -1 is outside 0 and more"
    assert outside("x", 5.0, Valid(most=2.0, unit="mm")) == "x 5 mm is outside up to 2 mm"


def test_every_formula_names_its_source() -> None:
    from service.core.loads import bolts, galvanic, materials, mount, plate, skin, struts, threads, vibration  # noqa: PLC0415
    from service.core.loads.validity import Formula  # noqa: PLC0415

    modules = (blade, bolts, galvanic, materials, mount, plate, shaft, skin, struts, threads, tube, vibration, water)
    found = [value for module in modules for value in vars(module).values() if isinstance(value, Formula)]
    assert len({one.name for one in found}) > 45
    assert [one.name for one in found if not one.source.strip() or not one.__doc__] == []


def test_a_tube_without_a_bore_is_refused() -> None:
    with pytest.raises(ValueError, match="leaves no bore"):
        tube.section(20.0, 10.0)


def test_collars_in_one_place_give_a_finding_not_a_division() -> None:
    got = shaft.collar_loads.checked(force_n=100.0, above_lower_mm=-500.0, spacing_mm=0.0)
    assert np.isfinite(got.value.lower)
    assert got.findings
