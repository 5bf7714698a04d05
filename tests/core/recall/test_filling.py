"""What a form lacks is lent by sister ships, else by neighbours, else not at all. All boats invented."""

import numpy as np
import pytest

from service.core.boat import BoatForm
from service.core.catalogue import Configuration
from service.core.form import parse_form, with_values
from service.core.recall.features import COLUMNS
from service.core.recall.filling import _median, fills
from service.core.recall.fleet import Fleet
from service.core.record import HullModel, Record

HULLS = {
    "corrin-31": HullModel(id="corrin-31", model="Corrin 31", loa_mm=9450, displacement_kg=4300, stern="raked"),
    "kvist-42": HullModel(id="kvist-42", model="Kvist 42", loa_mm=12800, stern="double_ended"),
}
KIT = Configuration(gear="g", lower="l", upper="u", shaft="s")
TOP = "transom.top_height_mm"


def _record(reference: str, hull: str | None, **form: object) -> Record:
    return Record(reference=reference, status="installed", hull=hull, form=parse_form(form), configuration=KIT)


def _neighbours(count: int) -> list[Record]:
    return [
        _record(f"n{i}", None, boat={"loa_mm": 9000 + 50 * i, "stern": "raked"}, transom={"top_height_mm": 900 + i})
        for i in range(count)
    ]


def _sister(reference: str, top: float) -> Record:
    return _record(reference, "corrin-31", transom={"top_height_mm": top}, main_rudder={"hung": "inboard"})


def test_two_sisters_lend_and_neighbours_are_not_asked() -> None:
    fleet = Fleet.build([_sister("s1", 1000), _sister("s2", 1020), *_neighbours(20)], HULLS)
    fill = fills(fleet, BoatForm(), hull="corrin-31", wanted=[TOP])[TOP]
    assert (fill.source, sorted(v for v in fill.values if isinstance(v, float))) == ("sister_ships", [1000.0, 1020.0])
    assert sum(fill.weights) == pytest.approx(1)
    assert set(fill.records) == {"s1", "s2"}


def test_one_sister_counts_with_the_neighbours_and_weighs_more() -> None:
    fleet = Fleet.build([_sister("s1", 905), *_neighbours(20)], HULLS)
    fill = fills(fleet, BoatForm(), hull="corrin-31", wanted=[TOP])[TOP]
    assert (fill.source, len(fill.values)) == ("neighbours", 12)
    assert fill.records[0] == "s1"
    assert fill.weights[0] == max(fill.weights)


def test_neighbours_are_the_twelve_nearest_that_have_it() -> None:
    fleet = Fleet.build(_neighbours(40), HULLS)
    fill = fills(fleet, parse_form({"boat": {"loa_mm": 10_000, "stern": "raked"}}), hull=None, wanted=[TOP])[TOP]
    assert set(fill.records) <= {f"n{i}" for i in range(13, 28)}  # loa 10 000 is n20
    assert len(fill.values) == len(fill.weights) == 12


def test_the_hull_models_own_entry_comes_first() -> None:
    fleet = Fleet.build([_record("s", "corrin-31", boat={"loa_mm": 9300})] * 3, HULLS)
    found = fills(fleet, BoatForm(), hull="corrin-31", wanted=["boat.loa_mm", "boat.stern", "boat.displacement_kg"])
    assert found["boat.loa_mm"].values == (9450.0,)
    assert found["boat.stern"].values == ("raked",)
    assert all(f.source == "sister_ships" and f.weights == (1.0,) and f.records == () for f in found.values())


def test_classes_are_lent_as_words() -> None:
    fleet = Fleet.build([_sister("s1", 1000), _sister("s2", 1020)], HULLS)
    fill = fills(fleet, BoatForm(), hull="corrin-31", wanted=["main_rudder.hung"])["main_rudder.hung"]
    assert fill.values == ("inboard", "inboard")
    assert with_values(BoatForm(), {"main_rudder.hung": fill.values[0]}).main_rudder.hung == "inboard"


def test_what_is_given_or_what_nobody_has_is_not_filled() -> None:
    fleet = Fleet.build([_sister("s1", 1000), _sister("s2", 1020)], HULLS)
    given = parse_form({"transom": {"top_height_mm": 950}})
    assert fills(fleet, given, hull="corrin-31", wanted=[TOP, "transom.camber_mm"]) == {}
    assert fills(Fleet.build([], {}), BoatForm(), hull=None, wanted=[TOP]) == {}
    with pytest.raises(KeyError, match="transom\\.top_height_mm"):
        fills(fleet, given, hull=None, wanted=["transom.top_heigth_mm"])


def test_a_sternpost_lends_nothing_to_a_flat_skin() -> None:
    posts = [_record(f"p{i}", "kvist-42", transom={"post_width_mm": 90}, boat={"loa_mm": 9500}) for i in range(3)]
    fleet = Fleet.build([*posts, *_neighbours(3)], HULLS)
    form = parse_form({"boat": {"loa_mm": 9500, "stern": "raked"}})
    assert fills(fleet, form, hull=None, wanted=["transom.post_width_mm"]) == {}
    assert fills(fleet, BoatForm(), hull="kvist-42", wanted=["transom.post_width_mm"])


def test_a_slip_of_the_pen_is_left_out() -> None:
    sisters = [_sister(f"s{i}", top) for i, top in enumerate((1000, 1010, 990, 1005, 995, 10_000))]
    fill = fills(Fleet.build(sisters, HULLS), BoatForm(), hull="corrin-31", wanted=[TOP])[TOP]
    assert max(v for v in fill.values if isinstance(v, float)) == 1010
    assert "s5" not in fill.records


def test_every_column_that_can_be_lent_goes_back_into_a_form() -> None:
    rng = np.random.default_rng(1)
    whole = parse_form(
        {
            "boat": {"year": 1980, "loa_mm": 9450, "lwl_mm": 7310, "beam_mm": 2870, "draft_mm": 1520,
                     "displacement_kg": 4300, "hull_material": "wood", "stern": "raked"},
            "transom": {"top_height_mm": 1000, "bottom_height_mm": 50, "rake_deg": 20, "width_top_mm": 1500,
                        "width_waterline_mm": 900, "camber_mm": 40, "thickness_mm": 20, "core_mm": 5,
                        "step_height_mm": 300, "step_depth_mm": 400, "step_width_mm": 900, "lower_rake_deg": 5,
                        "post_width_mm": 80},
            "main_rudder": {"hung": "inboard", "number": 1, "spacing_mm": 0, "stock_aft_mm": -500,
                            "leading_edge_aft_mm": -700, "trailing_edge_aft_mm": -100, "top_height_mm": -100,
                            "bottom_height_mm": -1200, "max_deflection_deg": 35},
        }
    )  # fmt: skip
    made = [Record(reference=str(i), status="installed", hull="x", form=whole, configuration=KIT) for i in range(3)]
    found = fills(Fleet.build(made, {}), BoatForm(), hull="x", wanted=COLUMNS)
    assert set(found) == set(COLUMNS)
    filled = with_values(BoatForm(), {path: fill.values[int(rng.integers(3))] for path, fill in found.items()})
    assert filled == whole


@pytest.mark.parametrize("count", [1, 2, 5, 8, 23, 24])
def test_the_middle_value_is_numpys(count: int) -> None:
    dice = np.random.default_rng(count)
    for values in (dice.normal(900, 80, count), dice.integers(0, 4, count).astype(float)):
        assert _median(values) == np.median(values)
