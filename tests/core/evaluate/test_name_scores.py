"""Scores of a resolver that is made up, so that every figure can be worked out by hand. All boats invented."""

from __future__ import annotations

import math

import pytest

from service.core.evaluate.names import (
    Guess,
    NameQuery,
    by_resolve,
    by_wratio,
    has_sibling,
    rate,
    score_names,
)
from service.core.hulls import HullIndex
from service.core.record import HullModel

CORRIN, SKARVIK, GANNET = (
    HullModel(id="c", builder="Osmund", model="Corrin 31"),
    HullModel(id="s", builder="Bråten", model="Skarvik 28", aliases=("Old Grey",)),
    HullModel(id="g", builder="Osmund", model="Gannet 30 Mk II"),
)


def _query(name: str, *wanted: str, family: str = "f", sibling: bool = False) -> NameQuery:
    return NameQuery(name, frozenset(wanted), family=family, sibling=sibling)


GUESSES = {
    "right and taken": Guess(("a", "b"), 0.95, taken=True),
    "second": Guess(("b", "a"), 0.55, asked=True),
    "fourth at best": Guess(("b", "c", "d"), 0.45, asked=True),
    "wrong and taken": Guess(("b",), 0.85, taken=True),
    "nothing": Guess(),
    "absent, taken": Guess(("b",), 0.96, taken=True),
    "absent, asked": Guess(("b",), 0.5, asked=True),
    "absent, unknown": Guess(("b",), 0.01),
}
QUERIES = [
    _query("right and taken", "a"), _query("second", "a"), _query("fourth at best", "a", family="g"),
    _query("wrong and taken", "a"), _query("nothing", "a", family="g"), _query("absent, taken", sibling=True),
    _query("absent, asked", sibling=True), _query("absent, unknown", family="h"),
]  # fmt: skip


def test_each_figure_counts_what_it_says() -> None:
    scores = score_names(QUERIES, lambda query: GUESSES[query.name])
    counted = {
        name: (found.hits, found.of)
        for name, found in scores
        if name
        in ("top1", "top3", "offered", "asked", "absent_accepted", "absent_taken", "sibling_taken", "wrong_taken")
    }
    assert counted == {
        "top1": (1, 5), "top3": (2, 5), "offered": (2, 5), "asked": (3, 8), "absent_accepted": (1, 3), "absent_taken": (1, 3),
        "sibling_taken": (1, 2), "wrong_taken": (1, 5),
    }  # fmt: skip
    assert scores.threshold == 0.95
    assert {name: (one.hits, one.of) for name, one in scores.families.items()} == {
        "f": (2, 5),
        "g": (0, 2),
        "h": (1, 1),
    }


def test_the_threshold_keeps_nineteen_of_twenty_right_ones() -> None:
    queries = [_query(str(n), "a") for n in range(1, 101)]
    scores = score_names(queries, lambda query: Guess(("a",), int(query.name) / 100))
    assert scores.threshold == 0.06  # 95 of 0.01, 0.02, ... 1.00 reach it
    assert score_names([], lambda _: Guess()).top1.share is None


def test_calibration_and_surprise_by_hand() -> None:
    said = {"a": 0.75, "b": 0.75, "c": 0.75, "d": 0.75, "e": 0.15}
    queries = [_query(name, "x" if name in "abc" else "y") for name in said]
    scores = score_names(queries, lambda query: Guess(("x",), said[query.name]))
    assert [(b.low, b.count, b.said, b.right) for b in scores.calibration] == [
        (0.1, 1, 0.15, 0.0),
        (0.7, 4, 0.75, 0.75),
    ]
    assert scores.calibration_error == pytest.approx(0.15 / 5)
    assert scores.log_loss == pytest.approx(-(3 * math.log(0.75) + math.log(0.25) + math.log(0.85)) / 5)


def test_intervals_are_wilsons() -> None:
    found = rate(0, 20)  # with no hit its upper end is z^2 / (n + z^2)
    assert found.low == pytest.approx(0)
    assert found.high == pytest.approx(1.959964**2 / (20 + 1.959964**2), rel=1e-6)


def test_the_services_own_and_the_floor_are_asked_alike() -> None:
    models = [CORRIN, SKARVIK, GANNET]
    ours, floor = by_resolve(HullIndex.build(models)), by_wratio(models)
    for guess in (ours, floor):
        assert guess(_query("SKARVIK 28")).ids[0] == "s"
        assert guess(_query("old grey")).ids[0] == "s"
    assert ours(_query("Corrin 32")).taken is False
    assert floor(_query("Corrin 32")).taken is True
    assert by_wratio([])(_query("Corrin 31")) == Guess()


def test_a_sibling_has_the_words_and_another_number() -> None:
    assert has_sibling(CORRIN, [CORRIN, CORRIN.model_copy(update={"model": "Corrin 34"})])
    assert not has_sibling(CORRIN, [CORRIN, SKARVIK, CORRIN.model_copy(update={"model": "Corrin 31 Mk II"})])
