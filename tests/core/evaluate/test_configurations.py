"""Nothing of what is held out is shown, and the service is scored beside its floors on the demo fleet."""

from __future__ import annotations

import csv
import json
from datetime import date

import pytest

from service.core.boat import BoatForm
from service.core.catalogue import Configuration
from service.core.evaluate.configurations import (
    BUILT_IN,
    COMMON,
    LEARNED,
    NEIGHBOURS,
    Ledger,
    by_hull,
    by_time,
    evaluate,
    evaluate_answered,
)
from service.core.evaluate.floors import MostCommon, NameAndNeighbours
from service.core.evaluate.shapes import Configurations
from service.core.form import parse_form
from service.core.record import HullModel, Record
from tests.support.boats import FIXTURES, demo

A, B = (Configuration(gear="g", lower=name, upper="u", shaft="s") for name in "ab")


@pytest.fixture(scope="module")
def ledger() -> Ledger:
    lines = (FIXTURES / "fleet.jsonl").read_text("utf-8").splitlines()
    with (FIXTURES / "hulls.csv").open(encoding="utf-8", newline="") as rows:
        hulls = {
            r["id"]: HullModel.model_validate({k: v for k, v in r.items() if v and k != "aliases"})
            for r in csv.DictReader(rows)
        }
    records = [Record.model_validate(json.loads(line)) for line in lines]
    catalogue = demo()
    return Ledger(records, hulls, lambda one: catalogue.misfit(one) is None)


@pytest.fixture(scope="module")
def found(ledger: Ledger) -> Configurations:
    return evaluate(ledger, groups=3)


def test_time_splits_once_and_nothing_shown_is_later_than_what_is_asked(ledger: Ledger) -> None:
    (split,) = by_time(ledger.records[::-1])
    assert len(split.shown) == 480
    assert max(r.date or date.min for r in split.shown) <= min(r.date or date.max for r in split.asked)
    assert {r.status for r in split.asked} == {"installed"}


def test_whole_hull_models_are_held_out_each_once(ledger: Ledger) -> None:
    splits = by_hull(ledger.records)
    for split in splits:
        assert not {r.hull for r in split.shown} & {r.hull for r in split.asked}
    asked = [r.reference for split in splits for r in split.asked]
    assert sorted(asked) == sorted(r.reference for r in ledger.records if r.status == "installed")


def test_the_service_clearly_beats_both_floors(found: Configurations) -> None:
    assert [h.by for h in found.holdouts] == ["time", "hull"]
    for holdout in found.holdouts:
        score = {one.method: one for one in holdout.scores}
        assert set(score) == {LEARNED, BUILT_IN, COMMON, NEIGHBOURS}
        ours = score[LEARNED]
        for floor in (score[COMMON], score[NEIGHBOURS]):
            assert ours.top1.value > floor.top1.value + 0.1
            assert ours.top3.value > floor.top3.value + 0.1
            assert ours.log_loss.value < floor.log_loss.value - 1
        assert ours.log_loss.value < score[BUILT_IN].log_loss.value
        assert ours.calibration_error.value < 0.1
        assert sum(one.count for one in holdout.bins) == ours.count


def test_whole_answers_are_scored_on_the_same_few_boats(ledger: Ledger) -> None:
    few = Ledger(ledger.records[:200], ledger.hulls, ledger.makes)
    seen: list[str] = []

    def answered(fleet: object, record: Record) -> dict[Configuration, float]:
        assert record not in fleet.records  # type: ignore[attr-defined] # a fleet
        seen.append(record.reference)
        return {record.configuration: 1.0}

    one = evaluate_answered(few, answered, 6)
    for holdout in one.holdouts:
        told, votes = holdout.scores
        assert holdout.votes == "with verdicts"
        assert told.count == votes.count == 6
        assert told.top1.value == 1.0
    assert len(seen) == 12


def test_a_fleet_too_small_to_learn_from_is_scored_as_built_in(ledger: Ledger) -> None:
    few = evaluate(Ledger(ledger.records[:30], ledger.hulls))
    assert any("built-in ones stand alone" in caution for caution in few.cautions)
    assert all(LEARNED not in {s.method for s in h.scores} for h in few.holdouts)
    empty = evaluate(Ledger([], {}))
    assert empty.holdouts == ()
    assert len(empty.cautions) == 2


def test_the_floors_do_what_they_say() -> None:
    def record(name: str, top: float, one: Configuration) -> Record:
        form = parse_form({"boat": {"model": name}, "transom": {"top_height_mm": top}})
        return Record(reference=name + str(top), status="installed", form=form, configuration=one, hull=name)

    records = [
        *(record("Corrin 31", 900 + n, A) for n in range(11)),
        *(record("Kvist 42", 900 + n, B) for n in range(10)),
    ]
    common = MostCommon(records)(BoatForm())
    assert list(common.items()) == [(A, 12 / 24), (B, 11 / 24)]  # one of each added, one kept for the unseen
    plain = NameAndNeighbours(records, {name: HullModel(id=name, model=name) for name in ("Corrin 31", "Kvist 42")})
    near = plain(parse_form({"boat": {"model": "kvist 42"}, "transom": {"top_height_mm": 905}}))
    assert max(near, key=lambda c: near[c]) == B
    assert sum(near.values()) <= 1
