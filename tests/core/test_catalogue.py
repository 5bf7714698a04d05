"""A catalogue and everything that can be wrong with one. All metal invented."""

from __future__ import annotations

import tomllib
from typing import Any

import pytest

from service.core.catalogue import Catalogue, Configuration
from service.core.catalogue_check import parse_catalogue
from service.core.form import FormError
from tests.support.boats import HERE, bench, demo, metal


def document() -> dict[str, Any]:
    return tomllib.loads((HERE / "bench.toml").read_text(encoding="utf-8"))


def bracket(data: dict[str, Any], code: str) -> dict[str, Any]:
    found: dict[str, Any] = next(b for b in data["bracket"] if b["code"] == code)
    return found


def faults(data: dict[str, Any]) -> dict[str, str]:
    with pytest.raises(FormError) as caught:
        parse_catalogue(data)
    return {defect.field: defect.problem for defect in caught.value.defects}


def test_the_bench_catalogue_is_sound() -> None:
    assert isinstance(parse_catalogue(document()), Catalogue)


# --- defects, each at its place ---------------------------------------------------------------------------


def test_a_reach_upside_down() -> None:
    data = document()
    data["bracket"][0]["reach_mm"] = [200, 100]
    assert "upside down: 200 comes before 100" in faults(data)["bracket[0].reach_mm"]


def test_unknown_tables_and_keys_name_the_nearest() -> None:
    data = document()
    data["brackets"] = []
    data["gear"][0]["weight_kg"] = 3
    data["rules"]["scale"]["reech"] = 3
    found = faults(data)
    assert "'bracket'" in found["brackets"]
    assert "mass_kg" in found["gear[0].weight_kg"]


def test_every_kind_needs_its_own_table_and_no_other() -> None:
    for code, own in (("strutted", "struts"), ("cheek", "gap_mm"), ("stand", "stands_mm")):
        data = document()
        del bracket(data, code)[own]
        assert any(own in problem for problem in faults(data).values())
    data = document()
    bracket(data, "hinge")["gap_mm"] = [1, 2]
    assert any("belongs to another kind" in problem for problem in faults(data).values())


@pytest.mark.parametrize(
    ("change", "field", "said"),
    [
        ({"tube": {"outside_mm": 6, "wall_mm": 3, "material": "x"}}, "gear[0].tube", "no bore"),
        ({"vane": {"axis_mm": 0, "radius_mm": 1, "bottom_mm": 9, "top_mm": 9}}, "gear[0].vane", "below"),
        ({"max_displacement_kg": -1}, "gear[0].max_displacement_kg", "greater than 0"),
        ({"code": "no/slashes"}, "gear[0].code", "pattern"),
        ({"mass_kg": float("nan")}, "gear[0].mass_kg", "finite"),
    ],
)
def test_impossible_gears(change: dict[str, Any], field: str, said: str) -> None:
    data = document()
    data["gear"][0].update(change)
    assert said in faults(data)[field]


def test_a_blade_balanced_beyond_its_chord() -> None:
    data = document()
    data["gear"][0]["blade"]["balance_mm"] = 200
    assert "less than chord_mm" in faults(data)["gear[0].blade"]


def test_codes_must_be_unique_and_known() -> None:
    data = document()
    data["shaft"][1]["code"] = "shaft-1300"
    data["bracket"][0]["gears"] = ["gear", "gearr"]
    data["part"][1]["goes_with"] = ["bracket:hinj", "pins"]
    found = faults(data)
    assert found["shaft[1].code"] == "the code is used twice"
    assert "known: gear" in found["bracket[0].gears"]
    assert "names nothing" in found["part[1].goes_with"]


def test_rules_must_be_there_with_unit_and_source() -> None:
    data = document()
    del data["rules"]["pad_max"]
    del data["rules"]["scale"]["reach"]
    data["rules"]["heel_angle"]["unit"] = "rad"
    data["rules"]["overhang_max"]["source"] = "  "
    found = faults(data)
    assert found["rules.pad_max"] == "the rule is missing"
    assert found["rules.scale.reach"] == "the scale is missing"
    assert found["rules.heel_angle.unit"] == "must be 'deg'"
    assert "names its source" in found["rules.overhang_max.source"]


def test_a_misspelt_rule_is_refused_and_a_rule_of_ones_own_kept() -> None:
    data = document()
    rule = {"value": 9.0, "unit": "m/s", "source": "common practice, no source"}
    data["rules"] |= {"load_surf_sped": rule, "colour_of_the_flag": {**rule, "unit": "1"}}
    assert faults(data)["rules.load_surf_sped"].endswith("did you mean 'load_surf_speed'?")
    assert "rules.colour_of_the_flag" not in faults(data)
    data["rules"]["load_surf_speed"] = {**rule, "unit": "kn"}
    assert faults(data)["rules.load_surf_speed.unit"] == "must be 'm/s'"


def test_priors_and_methods_must_name_what_is() -> None:
    data = document()
    data["rules"]["prior"] = {"transom.rake": {"any": {"mean": 0, "spread": 1}},
                              "transom.rake_deg": {"canoe": {"mean": 0, "spread": 1}}}  # fmt: skip
    data["rules"]["obstacle"] = {"lader": {"any": {"aft_mm": [0, 1], "starboard_mm": [0, 1], "above_top_mm": [0, 1],
                                                   "spread_mm": 1}}}  # fmt: skip
    data["method"] = [{"code": "tapes", "mm": 1, "deg": 1, "kg": 1}]
    found = faults(data)
    assert found["rules.prior.transom.rake"] == "is no field of the boat form"
    assert "is no stern" in found["rules.prior.transom.rake_deg.canoe"]
    assert "'ladder'" in found["rules.obstacle.lader"]
    assert "'tape'" in found["method[0].code"]
    assert "unsaid" in found["method"]


def test_both_roles_must_be_there() -> None:
    data = document()
    data["bracket"] = [b for b in data["bracket"] if b["code"] == "stand"]
    data["part"] = []
    assert faults(data)["bracket"] == "no bracket has the upper role"


def test_a_catalogue_without_a_head() -> None:
    data = document()
    del data["catalogue"]["version"]
    assert "catalogue.version" in faults(data)


# --- what it answers --------------------------------------------------------------------------------------


def test_configurations_are_what_goes_together() -> None:
    catalogue = bench()
    every = catalogue.configurations()
    lowers = [b for b in catalogue.brackets if "lower" in b.roles]
    uppers = [b for b in catalogue.brackets if "upper" in b.roles]
    assert len(every) == len(set(every)) == len(lowers) * len(uppers) * 2
    assert all(catalogue.misfit(one) is None for one in every)
    both = demo().configurations()
    assert all(demo().misfit(one) is None for one in both)
    assert not any(one.gear == "gear-720" and one.shaft == "shaft-1900" for one in both)


@pytest.mark.parametrize(
    ("configuration", "said"),
    [
        (metal("riser", "hinge"), "is not made for the lower role"),
        (metal("hinge", "stand"), "is not made for the upper role"),
        (metal("hinje", "hinge"), "did you mean 'hinge'"),
        (metal(shaft="shaft-1400"), "no shaft 'shaft-1400'"),
    ],
)
def test_a_misfit_says_why(configuration: Configuration, said: str) -> None:
    assert said in str(bench().misfit(configuration))


def test_a_shaft_of_another_gear_is_a_misfit() -> None:
    wrong = Configuration(gear="gear-720", lower="hinge-60-170", upper="hinge-60-170", shaft="shaft-1900")
    assert demo().misfit(wrong) == "shaft 'shaft-1900' does not take gear 'gear-720'"


def test_lookups_name_the_nearest() -> None:
    with pytest.raises(KeyError, match="did you mean 'shaft-1300'"):
        bench().shaft("shaft-130")
    assert bench().method("tape").mm == 10
    assert bench().method(None).code == bench().method("brochure").code == "unsaid"


def test_priors_by_stern_and_by_how_the_rudder_is_hung() -> None:
    rules = demo().rules
    field = "main_rudder.trailing_edge_aft_mm"
    inside, outside = rules.prior_of(field, "plumb"), rules.prior_of(field, "plumb", "transom")
    assert inside is not None
    assert outside is not None
    assert inside.mean < 0 < outside.mean  # under the hull, or hung on the transom
    assert rules.prior_of("transom.top_height_mm", "plumb") == rules.prior_of("transom.top_height_mm", None)
    assert bench().rules.prior_of("transom.top_height_mm", "plumb") is None
    assert rules.obstacle_prior_of("ladder", "port") != rules.obstacle_prior_of("ladder", None)
    with pytest.raises(KeyError):
        rules["no_such_rule"]


def test_a_scale_is_found_by_whole_id_or_last_part() -> None:
    rules = bench().rules
    assert rules.scale_of("lower.reach") == rules.scale_of("reach") == 40
    assert rules.scale_of("main_rudder") == 100
