"""What of a catalogue is put forward, against placing every configuration of a thinned catalogue. All boats invented."""

from __future__ import annotations

from typing import Any

import pytest

from service.core.catalogue import Catalogue
from service.core.fit.engine import set_many
from service.core.fit.kit import build
from service.core.fit.place import place
from service.core.fit.survey import burden, promising
from tests.support.boats import bench, boat, demo, metal, ready

THIN = ("hinge-60-170", "hinge-270-420", "outrigger-aft-400-600", "outrigger-fore-380-600", "riser-190-380",
        "strut-600-860", "cheek-180-420", "stand-90-190", "outrigger-540-720")  # fmt: skip
SHAFTS = ("shaft-1220", "shaft-1470", "shaft-1750")


def thinned() -> Catalogue:
    whole = demo()
    return whole.model_copy(
        update={
            "gears": (whole.gear("gear-720"),),
            "brackets": tuple(b for b in whole.brackets if b.code in THIN),
            "shafts": tuple(s for s in whole.shafts if s.code in SHAFTS),
        }
    )


BOATS: dict[str, dict[str, Any]] = {
    "plumb": {},
    "raked": {"boat": {"stern": "raked"}, "transom": {"rake_deg": 27, "bottom_height_mm": 150}},
    "reverse": {"boat": {"stern": "reverse"}, "transom": {"rake_deg": -22}},
    "scoop": {"boat": {"stern": "scoop"}, "transom": {"rake_deg": -13, "step_height_mm": 300, "step_depth_mm": 560,
                                                      "step_width_mm": 1300, "lower_rake_deg": -5}},
    "open": {"boat": {"stern": "open"}, "transom": {"top_height_mm": 480, "rake_deg": -8}},
    "double ended": {"boat": {"stern": "double_ended"}, "transom": {"rake_deg": 20, "post_width_mm": 90,
                                                                    "bottom_height_mm": -200}},
    "ladder amidships": {"obstacles": [{"kind": "ladder", "aft_mm": [0, 200], "starboard_mm": [-200, 200],
                                        "height_mm": [100, 1100], "keep": True}]},
    "rudder hung outside": {"main_rudder": {"hung": "transom", "stock_aft_mm": 30, "leading_edge_aft_mm": 10,
                                            "trailing_edge_aft_mm": 480, "top_height_mm": 350, "bottom_height_mm": -1000}},
}  # fmt: skip


@pytest.mark.parametrize("name", BOATS)
def test_where_anything_passes_something_that_passes_is_put_forward(name: str) -> None:
    catalogue = thinned()
    site = ready(boat(**BOATS[name]), catalogue).nominal
    every = catalogue.configurations()
    aims = place(site, build(catalogue, every), catalogue.rules).aims.max(axis=1)
    passing = {one for one, aim in zip(every, aims, strict=True) if aim >= 0}
    put = promising(site, catalogue, keep=5)
    assert len(put) == 5
    assert not passing or passing & set(put), (name, len(passing))


def test_the_boats_above_are_a_test_at_all() -> None:
    """Most of them can be served by the thinned catalogue, and none by all of it."""
    catalogue = thinned()
    every = catalogue.configurations()
    served = 0
    for changes in BOATS.values():
        aims = place(ready(boat(**changes), catalogue).nominal, build(catalogue, every), catalogue.rules).aims
        share = float((aims.max(axis=1) >= 0).mean())
        assert share < 0.7
        served += share > 0
    assert served >= 5


def test_what_passes_stands_before_what_does_not_and_simple_before_complicated() -> None:
    boats = ready(boat(), bench())
    put = promising(boats.nominal, bench(), keep=12)
    assert len(put) == len(set(put)) == 12
    struts = [burden(bench(), one)[3] for one in put]
    assert struts == sorted(struts)
    fits = [one.fit.verdict != "does_not_fit" for one in set_many(boats, put[:3])]
    assert all(fits)


def test_too_heavy_a_boat_is_not_put_on_a_small_gear() -> None:
    site = ready(boat(boat={"displacement_kg": 12_000}), demo()).nominal
    assert {one.gear for one in promising(site, demo())} == {"gear-860"}
    nothing = promising(ready(boat(boat={"displacement_kg": 90_000}), demo()).nominal, demo())
    assert nothing  # something has to be shown, with what it lacks


def test_burden_adds_up() -> None:
    # gear 20, shaft 5, hinge 4, strutted 12 kg; 1000 + 300 + 300 + 700; middles 150 and 500; two struts
    assert burden(bench(), metal("hinge", "strutted")) == (41, 2300, 650, 2)


@pytest.mark.parametrize(
    ("brackets", "shafts", "many"), [((), SHAFTS, 0), (("hinge-60-170", "hinge-270-420"), SHAFTS, 12)]
)
def test_a_catalogue_with_next_to_nothing_in_it(brackets: tuple[str, ...], shafts: tuple[str, ...], many: int) -> None:
    whole = thinned()
    few = whole.model_copy(
        update={
            "brackets": tuple(b for b in whole.brackets if b.code in brackets),
            "shafts": tuple(s for s in whole.shafts if s.code in shafts),
        }
    )
    put = promising(ready(boat(), few).nominal, few, keep=100)
    assert len(put) == many == len(few.configurations())
