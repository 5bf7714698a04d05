"""One boat's answer from fleet, catalogue and fit: ranking, contrasts, what is missing. All boats invented."""

from __future__ import annotations

from typing import Any

import pytest

from service.core.answer import Answer, as_text
from service.core.answer.compose import Known, compose
from service.core.answer.reply import reply
from service.core.boat import BoatForm
from service.core.catalogue import Configuration
from service.core.form import parse_form
from service.core.hulls import HullDecision, HullIndex, resolve
from service.core.reading.shape import Doubt
from service.core.recall.fleet import Fleet
from service.core.record import HullModel, Outcome, Record, Status
from service.files.read.messages import speak
from tests.support.boats import bench, boat, demo, metal

HULL = HullModel(id="corrin-31", builder="Osmund Yard", model="Corrin 31", loa_mm=9450)
INDEX = HullIndex.build([HULL])


def decided() -> HullDecision:
    found = resolve(INDEX, "Corrin 31")
    assert found.model is not None
    return found


def record(reference: str, form: BoatForm, kit: Configuration, status: Status = "installed", **outcome: bool) -> Record:
    return Record(
        reference=reference, status=status, hull=HULL.id, form=form, configuration=kit, outcome=Outcome(**outcome)
    )


def known(*records: Record, catalogue: Any = None) -> Known:  # noqa: ANN401 - a catalogue, the bench's where none is given
    return Known(catalogue or bench(), Fleet.build(list(records), {HULL.id: HULL}), "test", speak)


def sister(rake: float, **changes: Any) -> BoatForm:  # noqa: ANN401 - JSON is any
    return boat(boat={"model": "Corrin 31", "stern": "raked"}, transom={"rake_deg": rake, **changes})


# --- sister ships -----------------------------------------------------------------------------------------

FLAT = [record(f"flat{i}", sister(2 + i), metal("hinge", "hinge")) for i in range(3)]
LEANING = [record(f"leaning{i}", sister(26 + i), metal("long", "hinge", "shaft-1600")) for i in range(3)]


def answered(form: BoatForm, what: Known, **more: Any) -> Answer:  # noqa: ANN401 - handed on
    return compose(form, decided(), what, **more)


def test_two_sister_ships_with_another_rake_are_served_differently_and_the_rake_is_named() -> None:
    fleet = known(*FLAT, *LEANING)
    flat, leaning = answered(sister(3), fleet), answered(sister(27), fleet)
    ours, theirs = flat.suggestions[0], leaning.suggestions[0]
    assert (ours.configuration, ours.fit.placement) != (theirs.configuration, theirs.fit.placement)
    assert ours.configuration == metal("hinge", "hinge")
    assert theirs.configuration.lower == "long"
    for one in (flat, leaning):
        assert one.sisters == 6
        assert one.contrasts
        assert all(c.field == "transom.rake_deg" for c in one.contrasts)
        assert "rake of the transom" in one.contrasts[0].text


def test_the_contrast_is_found_by_trying_and_names_what_moves_most() -> None:
    """Her rake is 20° more, her top 5 mm higher: it is the rake that makes the difference."""
    fleet = known(record("her", sister(25, top_height_mm=1005), metal("hinge", "hinge")))
    one = answered(sister(5), fleet).contrasts[0]
    assert (one.record, one.field, one.theirs, one.ours) == ("her", "transom.rake_deg", 25, 5)
    assert one.moves_mm is not None
    assert one.moves_mm > 5 or "would not pass" in one.text


def test_a_sister_like_her_in_everything_measured_makes_no_contrast() -> None:
    assert answered(sister(5), known(record("same", sister(5), metal()))).contrasts == ()


def test_a_sisters_value_that_would_make_no_boat_is_left_out() -> None:
    low = sister(0, top_height_mm=500, bottom_height_mm=100)
    high = sister(3, top_height_mm=1100, bottom_height_mm=520)  # her bottom edge lies above this one's top
    found = answered(low, known(record("high", high, metal()))).contrasts
    assert all(c.field != "transom.bottom_height_mm" for c in found)


# --- ranking ----------------------------------------------------------------------------------------------


def test_what_fitters_install_goes_before_what_is_merely_simple() -> None:
    fleet = known(*(record(f"r{i}", sister(3), metal("stiff", "riser", "shaft-1600")) for i in range(5)))
    best = answered(sister(3), fleet).suggestions[0]
    assert best.configuration == metal("stiff", "riser", "shaft-1600")
    assert best.origin == "precedent"
    assert set(best.precedents) <= {f"r{i}" for i in range(5)}
    assert best.probability is not None
    assert best.probability > 0.5


def test_what_the_fit_refutes_is_not_put_forward_however_common() -> None:
    """Five sisters carry short hinges; this one leans 38°, and no pad bridges that."""
    fleet = known(*(record(f"r{i}", sister(3), metal("hinge", "hinge")) for i in range(5)))
    one = answered(sister(38), fleet)
    assert {p.configuration for p in one.precedents} == {metal("hinge", "hinge")}
    assert metal("hinge", "hinge") not in {s.configuration for s in one.suggestions}
    order = {"fits": 0, "tight": 1, "undecided": 2}
    assert [order[s.fit.verdict] for s in one.suggestions] == sorted(order[s.fit.verdict] for s in one.suggestions)


def test_without_a_fleet_the_solver_alone_puts_forward() -> None:
    one = compose(boat(), None, known())
    assert one.suggestions
    assert {s.origin for s in one.suggestions} == {"solver"}
    assert not one.precedents
    assert not one.contrasts
    assert sum(s.probability or 0 for s in one.suggestions) <= 1 + 1e-9


def test_where_nothing_fits_the_nearest_miss_is_shown_with_its_cures() -> None:
    wall = {"kind": "rail", "aft_mm": [-100, 1500], "starboard_mm": [-1500, 1500], "height_mm": [350, 950]}
    one = compose(boat(obstacles=[wall]), None, known())
    assert not one.fits
    assert {s.fit.verdict for s in one.suggestions} == {"does_not_fit"}
    assert "without the rail it would pass" in one.suggestions[0].fit.cures
    assert all(not s.fit.cures for s in one.suggestions[1:])
    misses = [s.fit.smallest_margin or 0.0 for s in one.suggestions]
    assert max(misses) < 0


def test_the_owner_brings_the_tube_to_plumb_with_only_where_none_is_shipped() -> None:
    """The demo maker ships one with each gear; where a catalogue has none, the owner's list and the reply name it."""
    ships = demo()
    bare = ships.model_copy(update={"parts": tuple(part for part in ships.parts if not part.plumbs)})
    assert len(bare.parts) == len(ships.parts) - 2
    for catalogue, own in ((ships, False), (bare, True)):
        one = compose(boat(), None, known(catalogue=catalogue))
        fit = one.suggestions[0].fit
        assert ("a straight tube of the shaft's diameter to plumb with before drilling" in fit.owner_supplies) is own
        assert any("dummy shaft" in line.name for line in fit.parts) is not own
        assert ("straight tube" in as_text(reply(one, speak()))) is own


def test_a_configuration_the_catalogue_no_longer_makes_is_not_put_forward() -> None:
    gone = Configuration(gear="gear", lower="hinge", upper="hinge", shaft="shaft-1400")
    one = answered(sister(3), known(*(record(f"r{i}", sister(3), gone) for i in range(3))))
    assert gone not in {s.configuration for s in one.suggestions}
    assert gone in {p.configuration for p in one.precedents}  # it is remembered all the same


def test_must_be_to_port() -> None:
    one = compose(boat(preferences={"side": "port", "strength": "must"}), None, known())
    assert all(s.fit.placement is not None and s.fit.placement.offset_mm < 0 for s in one.suggestions)


# --- missing and questions --------------------------------------------------------------------------------


def test_what_settles_most_is_asked_first() -> None:
    form = parse_form(
        {"boat": {"loa_mm": 10_000, "stern": "raked", "displacement_kg": 5000}, "transom": {"rake_deg": 15}}
    )
    one = compose(form, None, known(catalogue=demo()))
    settles = [m.settles for m in one.missing if m.settles is not None]
    assert settles == sorted(settles, reverse=True)
    assert all(s >= 0 for s in settles)
    assert "transom.top_height_mm" in {m.field for m in one.missing}
    assert "transom.rake_deg" not in {m.field for m in one.missing}
    assert 1 <= len(one.questions) <= 3


def test_doubts_of_reading_go_first_and_three_questions_are_enough() -> None:
    doubts = (
        Doubt(field="transom.rake_deg", why="sign_unknown", values=(18.0,), text="18 degrees"),
        Doubt(field="transom.top_height_mm", why="contradictory", values=(985.0, 1050.0), text="985 ... 1050"),
        Doubt(field="boat.loa_mm", why="withdrawn", values=(9000.0,), text="9 m"),
        Doubt(field="transom.width_top_mm", why="unit_unknown", values=(1.7, 170.0), text="width 1.7"),
        Doubt(field="main_rudder.stock_aft_mm", why="ambiguous", values=(1.0, 2.0), text="2.35 off"),
    )
    asked = compose(parse_form({}), None, known(catalogue=demo()), doubts=doubts).questions
    assert asked == (
        "Rake of the transom: you write “18 degrees”. Which way does it go: aft or forward, above the water or below it?",
        (
            "Height of the transom's top edge above the water: you give 985 mm (3 ft 2 3/4 in) or 1050 mm (3 ft 5 3/8 in). "
            "Which is right?"
        ),
        "Width of the transom at the top: you write “width 1.7”. In which unit is that?",
    )


def test_questions_come_in_the_writers_language_and_cautions_in_the_desks() -> None:
    one = compose(parse_form({"enquiry": {"language": "de", "country": "AT"}}), None, known(catalogue=demo()))
    assert one.questions[0].startswith(("Wie hoch liegt die Oberkante des Spiegels", "Wie weit weicht der Spiegel"))
    assert one.cautions[0].startswith("This is advice")


def test_a_boat_without_a_name_is_asked_for_it() -> None:
    one = compose(boat(), None, known())
    assert "Which boat is it: builder, model and year?" in one.questions
    assert "boat.model" in {m.field for m in one.missing}


def test_two_hull_models_are_asked_apart() -> None:
    index = HullIndex.build([HULL, HullModel(id="b", builder="Other Yard", model="Corrin 31", loa_mm=9600)])
    several = resolve(index, "Corrin 31")
    assert several.status == "several"
    one = compose(boat(), several, known())
    assert any("Which boat is it exactly" in q and "Other Yard" in q for q in one.questions)


# --- the whole value --------------------------------------------------------------------------------------


def test_the_same_boat_and_seed_give_the_same_answer() -> None:
    fleet = known(*FLAT, *LEANING)
    assert answered(sister(3), fleet, seed=4) == answered(sister(3), fleet, seed=4)


@pytest.mark.parametrize("seed", [1, 9])
def test_an_answer_comes_back_from_its_json(seed: int) -> None:
    one = answered(sister(3), known(*FLAT, *LEANING), seed=seed)
    assert Answer.model_validate_json(one.model_dump_json(by_alias=True)) == one
    assert one.provenance.seed == seed
    assert (one.provenance.catalogue, one.provenance.records) == ("bench-1", 6)
