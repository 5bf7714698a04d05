"""Every bracket of the demo catalogue, loaded; and every rule the loads read, stated there."""

from __future__ import annotations

import numpy as np
import pytest

from seed_fixtures.generate import kit
from service.core.catalogue import Configuration
from service.core.catalogue_check import parse_catalogue
from service.core.loads import Place as At
from service.core.loads import Seat, assess, inputs_of
from service.core.loads.shapes import Hull
from service.core.loads.standard import STANDARD, Numbers

CATALOGUE = parse_catalogue(kit())


def test_the_demo_catalogue_states_every_rule_the_loads_read() -> None:
    assert set(STANDARD) <= set(CATALOGUE.rules.rule)
    Numbers(CATALOGUE.rules)
    assert CATALOGUE.rules.scale["load"] == 0.25


@pytest.mark.parametrize("code", [bracket.code for bracket in CATALOGUE.brackets])
def test_every_bracket_of_the_demo_catalogue_can_be_loaded(code: str) -> None:
    one = CATALOGUE.bracket(code)
    other = "hinge-150-290"
    lower, upper = (code, other) if "lower" in one.roles else (other, code)
    reach = sum(one.reach_mm) / 2
    feet = np.array([[-reach, -300.0, 40.0], [-reach, 300.0, 40.0]]) if one.struts else None
    mine = Seat(reach, stands_mm=sum(one.stands_mm) / 2 if one.stands_mm else 0.0, feet_mm=feet)
    seats = (mine, Seat(200.0)) if lower == code else (Seat(200.0), mine)
    configuration = Configuration(gear="gear-720", lower=lower, upper=upper, shaft="shaft-1350")
    hull = Hull(9350.0, "wood", 30.0, post_mm=90.0)
    got = assess(inputs_of(CATALOGUE, configuration, At(300.0, 720.0, -60.0), seats, hull), Numbers(CATALOGUE.rules))
    assert all(np.isfinite(r.margin) for r in got.results)
    role = "lower" if lower == code else "upper"
    names = {r.id for r in got.results if r.id.startswith(f"load.{role}.")}
    assert (f"load.{role}.struts" in names) is (one.struts is not None)
    assert (f"load.{role}.skin_bending" in names) is (one.kind != "cheek")
    assert f"load.{role}.skin_bearing" in names
