from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import numpy as np
import pytest

from service.core.catalogue import Rule, Rules
from service.core.loads import water
from service.core.loads.cases import blade_cases, blade_loads
from service.core.loads.forces import all_cases
from service.core.loads.shapes import Inputs
from service.core.loads.standard import STANDARD, Numbers

Place = Callable[..., Inputs]


def rules(**values: float) -> Numbers:
    changed = {name: STANDARD[name].model_copy(update={"value": value}) for name, value in values.items()}
    return Numbers(Rules(rule=changed, scale={}))


def test_the_five_cases_and_where_they_are_on_the_wave(place: Place, numbers: Numbers) -> None:
    assert [case.name for case in blade_cases(place(), numbers)] == [
        "hull speed in the trough",
        "125 % of hull speed on the face",
        "surfing at the crest",
        "broach in the trough",
        "astern in the trough",
    ]


def test_the_crest_takes_from_the_flow_and_the_trough_adds(place: Place, numbers: Numbers) -> None:
    inputs = place()
    load, _ = blade_loads(inputs, numbers)
    depth = -float(inputs.wet.middle_mm)
    orbital = float(water.orbital_speed(3.0, 8.0, depth))
    own = float(water.hull_speed(9350.0))
    assert load.speed_ms[:5] == pytest.approx([own + orbital, 1.25 * own, 6.2 - orbital, 3.1 + orbital, 1.5 + orbital])
    assert 1.0 < orbital < 1.2


def test_deeper_blades_feel_less_of_the_wave(place: Place, numbers: Numbers) -> None:
    high, low = place(), place()
    low = replace(low, spot=replace(low.spot, blade_top_mm=-900.0))
    surf = 2
    assert blade_loads(low, numbers)[0].speed_ms[surf] > blade_loads(high, numbers)[0].speed_ms[surf]


def test_a_boat_never_surfs_slower_than_it_sails(place: Place, numbers: Numbers) -> None:
    big = place()
    big = replace(big, hull=replace(big.hull, lwl_mm=30_000.0))
    surf = blade_cases(big, numbers)[2]
    assert float(surf.speed_ms) == pytest.approx(float(water.hull_speed(30_000.0)))


def test_only_the_wet_part_counts(place: Place) -> None:
    spot = place().spot
    rising = replace(spot, blade_top_mm=np.array([-80.0, 0.0, 100.0, 720.0, 900.0]))
    wet = place(spot=rising).wet
    assert wet.span_mm.tolist() == [720.0, 720.0, 620.0, 0.0, 0.0]
    assert wet.middle_mm[:3].tolist() == [-440.0, -360.0, -310.0]


def test_the_surface_is_no_mirror(place: Place, numbers: Numbers) -> None:
    """The aspect ratio is the immersed span's, not twice that: 720 / 220 gives a stall at its own angle."""
    from service.core.loads import blade  # noqa: PLC0415

    load, _ = blade_loads(place(), numbers)
    stall = float(np.degrees(blade.stall_angle(720 / 220, blade.Planform())))
    doubled = float(np.degrees(blade.stall_angle(2 * 720 / 220, blade.Planform())))
    assert float(load.angle_deg[0]) == pytest.approx(stall)
    assert abs(stall - doubled) > 1.0


def test_no_force_without_water(place: Place, numbers: Numbers) -> None:
    dry = place(spot=replace(place().spot, blade_top_mm=800.0))
    load, findings = blade_loads(dry, numbers)
    assert np.abs(load.side_n).max() == 0
    assert any(finding.input == "wet_span_mm" for finding in findings)


def test_ahead_drags_aft_astern_forward_and_a_broach_sideways(place: Place, numbers: Numbers) -> None:
    load, _ = blade_loads(place(), numbers)
    assert (load.along_n[:3] > 0).all()
    assert load.along_n[3] == 0
    assert load.along_n[4] < 0
    assert load.side_n[:5] == pytest.approx(-load.side_n[5:])


def test_klakas_coefficient_holds_where_it_is_asked(place: Place, numbers: Numbers) -> None:
    load, _ = blade_loads(place(), numbers)
    normal = np.hypot(load.along_n, load.side_n) / (water.dynamic_pressure(load.speed_ms) * 0.72 * 0.22)
    assert normal[3] == pytest.approx(1.3)
    assert normal[1] >= 1.3 - 1e-9
    assert normal[0] < 1.45


def test_astern_the_pressure_lies_near_the_other_edge(place: Place, numbers: Numbers) -> None:
    load, _ = blade_loads(place(), numbers)
    arms = np.abs(load.torque_nm[:5]) / np.hypot(load.along_n, load.side_n)[:5] * 1000
    assert arms[0] < 15
    assert arms[4] > 90


@pytest.mark.parametrize("name", ["load_surf_speed", "load_broach_speed", "load_astern_speed"])
def test_one_percent_of_a_speed(name: str, place: Place, numbers: Numbers) -> None:
    """Force goes with the square of the flow: boat's speed and the wave's part, which stays."""
    at = {"load_surf_speed": 2, "load_broach_speed": 3, "load_astern_speed": 4}[name]
    before, _ = blade_loads(place(), numbers)
    after, _ = blade_loads(place(), rules(**{name: 1.01 * numbers[name]}))
    predicted = ((before.speed_ms[at] + 0.01 * numbers[name]) / before.speed_ms[at]) ** 2
    assert after.side_n[at] / before.side_n[at] == pytest.approx(predicted, rel=1e-9)


def test_one_percent_of_the_gears_mass(place: Place, numbers: Numbers) -> None:
    """Only the seaway's cases move, by that share of what the head puts on each collar."""
    one = place()
    more = replace(one, gear=replace(one.gear, gear_kg=1.01 * one.gear.gear_kg))
    (_, before, _), (_, after, _) = all_cases(one, numbers), all_cases(more, numbers)
    assert (after.lower - before.lower)[:10, :2] == pytest.approx(0)
    upper = 0.01 * 24.0 * 6.0 * (1215.0 - 300.0) / 420.0
    assert (after.upper - before.upper)[10, :2] == pytest.approx([upper, upper])
    assert (after.lower - before.lower)[10, 2] == pytest.approx(-0.24 * (9.80665 + 5.0))


def test_collars_together_bear_what_acts(place: Place, numbers: Numbers) -> None:
    load, forces, _ = all_cases(place(), numbers)
    total = forces.lower[..., :2] + forces.upper[..., :2]
    assert total[:10, 0] == pytest.approx(load.along_n[:10])
    assert total[:10, 1] == pytest.approx(load.side_n[:10])
    assert total[10] == pytest.approx([29.0 * 6.0, 29.0 * 6.0])


def test_a_rule_in_another_unit_is_refused() -> None:
    knots = {"load_surf_speed": Rule(value=12, unit="kn", source="x")}
    with pytest.raises(ValueError, match=r"rules.load_surf_speed.unit is 'kn': write the value in 'm/s'"):
        Numbers(Rules(rule=knots, scale={}))


def test_a_source_says_whether_the_catalogue_states_it() -> None:
    assert rules(load_surf_speed=7.0).source("load_surf_speed").startswith("rule load_surf_speed")
    assert "not in the catalogue" in rules().source("load_surf_speed")
