"""Cautions and the reply: what has to be said is said, and nothing else than the answer tells. All boats invented."""

from __future__ import annotations

from functools import cache
from typing import Any

import pytest

from service.core.answer import Answer, as_text
from service.core.answer.compose import Known, compose
from service.core.answer.reply import reply
from service.core.recall.fleet import Fleet
from service.files.read.messages import speak
from tests.support.boats import bench, boat

KNOWN = Known(bench(), Fleet.build([], {}), "test", speak)
WALL = {"kind": "rail", "aft_mm": [-100, 1500], "starboard_mm": [-1500, 1500], "height_mm": [350, 950]}


def answer(**changes: Any) -> Answer:  # noqa: ANN401 - JSON is any
    return compose(boat(**changes), None, KNOWN)


def english(one: Answer) -> str:
    return as_text(reply(one, speak()))


@cache
def plain() -> Answer:
    return answer(contact={"name": "Hedda Lyngvik", "email": "hedda@example.org"}, boat={"model": "Corrin 31"})


def test_every_answer_defers_to_the_boat_the_builder_and_the_surveyor() -> None:
    said = " ".join(plain().cautions)
    for words in ("Confirm every measurement", "can sink a boat", "builder or a surveyor", "local rules", "plumb"):
        assert words in said


@pytest.mark.parametrize(
    ("changes", "words"),
    [
        ({"boat": {"hull_material": "frp_cored"}}, "cored"),
        ({"transom": {"thickness_mm": 30, "core_mm": 15}}, "cored"),
        ({"boat": {"hull_material": "aluminium"}}, "insulate"),
        ({"boat": {"hull_material": "steel"}}, "insulate"),
        ({"obstacles": [{"kind": "ladder", "moves": "folds", "aft_mm": [0, 60], "starboard_mm": [600, 800],
                         "height_mm": [0, 900]}]}, "try it through its whole movement"),
    ],
)  # fmt: skip
def test_what_this_boat_asks_to_be_said(changes: dict[str, Any], words: str) -> None:
    assert any(words in c for c in answer(**changes).cautions)
    assert not any(words in c for c in plain().cautions)


def test_a_tight_fit_is_called_so() -> None:
    tight = answer(boat={"displacement_kg": 7990}, methods={"boat.displacement_kg": "photo"})
    assert tight.suggestions[0].fit.verdict == "tight"
    assert any("tight" in c for c in tight.cautions)
    assert "only just" in english(tight)


def test_a_hole_near_the_water_is_a_matter_for_a_surveyor() -> None:
    low = answer(
        transom={"top_height_mm": 520, "bottom_height_mm": -100}, preferences={"side": "centre", "strength": "must"}
    )
    best = low.suggestions[0]
    assert best.fit.placement is not None
    lowest = best.fit.placement.lower_height_mm - bench().bracket(best.configuration.lower).collar.rise_mm - 40
    assert any("lowest bolt hole" in c for c in low.cautions) == (lowest < 50)


def test_the_reply_names_metal_place_chance_and_cautions() -> None:
    text = english(plain())
    best = plain().suggestions[0]
    assert text.startswith("Dear Hedda Lyngvik,")
    for code in (best.configuration.gear, best.configuration.lower, best.configuration.upper, best.configuration.shaft):
        assert code in text
    assert best.fit.probability == 1.0
    assert "> 99\N{NO-BREAK SPACE}%" in text, "every draw passing is not certainty"
    assert "your Corrin 31" in text
    assert "no sister ship" in text
    assert all(caution in text for caution in plain().cautions)
    assert all(question in text for question in plain().questions)
    assert "nothing we make fits" not in text


def test_the_reply_says_so_where_nothing_fits() -> None:
    none = answer(obstacles=[WALL])
    text = english(none)
    assert text.startswith("Hello,")
    assert "nothing we make fits her as she is" in text
    assert "Without this: rail" in text
    assert "We suggest" not in text


def test_the_reply_asks_for_a_trade() -> None:
    text = english(answer(obstacles=[{**WALL, "removable": True}]))
    assert "Take off: rail" in text
