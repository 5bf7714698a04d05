"""What is put forward, how likely it is said to be, and how little it rests on where it does. All boats invented."""

from __future__ import annotations

from typing import Any

import pytest

from service.core.answer import Answer
from service.core.answer.backing import NOTHING
from service.core.answer.chances import FOUND, chances
from service.core.answer.compose import Known, compose
from service.core.boat import BoatForm
from service.core.catalogue import Configuration
from service.core.hulls import HullDecision, HullIndex, resolve
from service.core.recall import WEIGHTS, Vote
from service.core.recall.fleet import Fleet
from service.core.record import HullModel, Record
from service.files.read.messages import speak
from tests.support.boats import bench, boat, metal

HULL = HullModel(id="corrin-31", builder="Osmund Yard", model="Corrin 31", loa_mm=9450)
A, B, C, D = (Configuration(gear="g", lower=name, upper="u", shaft="s") for name in "abcd")


def vote(one: Configuration, probability: float) -> Vote:
    return Vote(configuration=one, probability=probability, precedents=())


def decided() -> HullDecision:
    return resolve(HullIndex.build([HULL]), "Corrin 31")


def record(reference: str, form: BoatForm, kit: Configuration, hull: str | None = HULL.id) -> Record:
    return Record(reference=reference, status="installed", hull=hull, form=form, configuration=kit)


def known(*records: Record) -> Known:
    catalogue = bench()
    fleet = Fleet.build(records, {HULL.id: HULL}, makes=lambda one: catalogue.misfit(one) is None)
    return Known(catalogue, fleet, "test", speak)


def leaning(rake: float, **changes: Any) -> BoatForm:  # noqa: ANN401 - JSON is any
    return boat(boat={"model": "Corrin 31", "stern": "raked"}, transom={"rake_deg": rake, **changes})


# --- the arithmetic ---------------------------------------------------------------------------------------


def test_verdicts_move_chances_as_bayes_says() -> None:
    found = chances([vote(A, 0.5), vote(B, 0.3)], {A: "does_not_fit", B: "fits"}, refuted=0.3)
    # weights 0.15, 0.3, and 0.2 for what was not thought of: 0.65 in all
    assert found[A] == pytest.approx(0.15 / 0.65)
    assert found[B] == pytest.approx(0.3 / 0.65)


def test_what_the_solver_found_shares_part_of_what_no_vote_claims() -> None:
    found = chances([vote(A, 0.6)], {A: "fits", C: "fits", D: "tight"}, refuted=0.3)
    assert found == pytest.approx({A: 0.6, C: FOUND * 0.2, D: FOUND * 0.2})
    assert chances([], {}, refuted=0.3) == {}


@pytest.mark.parametrize("verdict", ["fits", "tight", "undecided", "does_not_fit"])
def test_chances_never_add_up_to_more_than_one(verdict: str) -> None:
    found = chances([vote(A, 0.7), vote(B, 0.3)], dict.fromkeys((A, B, C), verdict), refuted=0.0)
    assert sum(found.values()) <= 1 + 1e-12


# --- what is put forward ----------------------------------------------------------------------------------


def test_where_no_precedent_fits_the_solver_finds_one_and_it_is_said() -> None:
    """Every boat alike carries two short hinges; this one leans 38°, which neither hinge nor pad bridges."""
    one = compose(leaning(38), decided(), known(*(record(f"r{i}", leaning(3), metal()) for i in range(6))))
    assert one.fits
    assert {s.origin for s in one.suggestions} == {"solver"}
    assert all(s.fit.verdict != "does_not_fit" for s in one.suggestions)
    assert any("found by trying the catalogue" in caution for caution in one.cautions)


def test_what_is_refuted_keeps_a_chance_but_is_not_put_forward() -> None:
    fleet = known(*(record(f"r{i}", leaning(3), metal()) for i in range(6)))
    flat, steep = compose(leaning(3), decided(), fleet), compose(leaning(38), decided(), fleet)
    assert metal() in {s.configuration for s in flat.suggestions}
    assert metal() not in {s.configuration for s in steep.suggestions}
    assert sum(s.probability or 0 for s in steep.suggestions) < 1 - 0.3 * 0.5


def told(answer: Answer) -> str:
    return " ".join(answer.cautions)


def test_an_empty_fleet_says_that_nothing_is_known() -> None:
    assert NOTHING in compose(leaning(3), decided(), known()).warned


def test_an_unseen_hull_model_says_by_what_it_is_judged() -> None:
    others = [record(f"r{i}", leaning(3 + i), metal(), hull=None) for i in range(4)]
    named = compose(leaning(3), decided(), known(*others))
    assert "No Osmund Yard Corrin 31 is on record" in told(named)
    assert "% alike" in told(named)
    unnamed = compose(leaning(3), None, known(*others))
    assert "The hull model is not known" in told(unnamed)
    sisters = compose(leaning(3), decided(), known(*(record(f"s{i}", leaning(3), metal()) for i in range(4))))
    assert "is on record" not in told(sisters)
    assert "not known" not in told(sisters)


@pytest.mark.parametrize(("count", "words"), [(0, "No boat with"), (1, "Only one boat"), (2, "Only 2 boats"), (3, "")])
def test_an_unseen_stern_is_said(count: int, words: str) -> None:
    plumb = [record(f"p{i}", boat(), metal()) for i in range(4)]
    raked = [record(f"r{i}", leaning(3), metal()) for i in range(count)]
    said = told(compose(leaning(3), decided(), known(*plumb, *raked)))
    assert ("a raked transom" in said) == bool(words)
    assert words in said


def test_the_answer_says_what_its_chances_were_weighed_by() -> None:
    assert compose(leaning(3), decided(), known()).provenance.weights == "built-in"
    taught = WEIGHTS.model_copy(update={"version": "learned-3 (2024-05-01, 600 records)"})
    one = compose(leaning(3), decided(), Known(bench(), Fleet.build([], {}, taught), "test", speak))
    assert one.provenance.weights == "learned-3 (2024-05-01, 600 records)"


def test_odd_fleets_are_answered() -> None:
    one = [record("only", leaning(3), metal())]
    same = [record(f"s{i}", leaning(3), metal()) for i in range(30)]
    bare = [record(f"b{i}", BoatForm(), metal(), hull=None) for i in range(5)]
    for records in (one, same, bare):
        answer = compose(leaning(3), decided(), known(*records))
        assert answer.suggestions[0].configuration == metal()
        assert answer.suggestions[0].origin == "precedent"
        assert 0 < (answer.suggestions[0].probability or 0) <= 1
    assert compose(BoatForm(), None, known(*bare)).precedents == ()
