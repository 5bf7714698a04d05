"""The index answers the same however it came to hold its models. All boats invented."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from service.core.hulls import HullDecision, HullIndex, resolve, surfaces_of
from service.core.hulls import index as index_module
from service.core.hulls import look as look_module
from service.core.hulls.parse import ParsedName
from service.core.hulls.surface import Surface
from service.core.record import HullModel

YARDS = ("Osmund Yard", "Bråten Båt", "Chantier Velmar", "Hedda & Rosenvik", None)
WORDS = ("Corrin", "Korrin", "Skarvik", "Velmar", "Sea Wren", "Seawren", "HR", "")
NUMBERS = ("31", "34", "340", "10.50", "105", "")
ENDS = ("", " Mk II", " S", " DS", " Cruiser")
ASKED = (
    "Corrin 31", "corrin31mkII", "Velmar 10,5", "Velmar 1050", "HR 34", "Sea Wren", "seawren 34 DS", "Osmund 31",
    "skarvik", "Korin 340 S", "Hedda Rosenvik 31", "Old Grey", "nothing like it 77", "31",
)  # fmt: skip


def _model(number: int) -> HullModel:
    dice = np.random.default_rng(number)
    word, end = WORDS[dice.integers(len(WORDS))], ENDS[dice.integers(len(ENDS))]
    name = f"{word} {NUMBERS[dice.integers(len(NUMBERS))]}{end}".strip() or "Plain"
    years = (1970, None) if dice.random() < 0.5 else (None, None)
    return HullModel(
        id=f"m{number % 40}",  # a model comes back under its id, changed
        builder=YARDS[dice.integers(len(YARDS))],
        model=name,
        aliases=("Old Grey",) if dice.random() < 0.1 else (),
        first_year=years[0],
        last_year=years[1],
        loa_mm=float(dice.integers(7000, 14000)) if dice.random() < 0.7 else None,
        displacement_kg=5500.5,
        stern="raked" if dice.random() < 0.5 else None,
    )


def _answers(index: HullIndex) -> list[HullDecision]:
    return [resolve(index, name, loa_mm=9500) for name in ASKED]


steps = st.lists(
    st.tuples(st.lists(st.integers(0, 4000), max_size=8), st.lists(st.integers(0, 45), max_size=4)), max_size=6
)


@settings(deadline=None, derandomize=True, max_examples=40)
@given(st.lists(st.integers(0, 4000), max_size=25), steps, st.integers(0, 30))
def test_an_updated_index_answers_as_one_built_anew(
    first: list[int], changes: list[tuple[list[int], list[int]]], room: int
) -> None:
    held = {model.id: model for model in map(_model, first)}
    index = HullIndex.build(held.values())
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(index_module, "_ROOM", room)  # sometimes all is built anew, sometimes never
        patch.setattr(look_module, "_MOST_POSTINGS", 5 * room)  # as if there were very many
        for put, drop in changes:
            fresh = {model.id: model for model in map(_model, put)}
            gone = {f"m{number}" for number in drop} - set(fresh)
            index = index.updated(fresh.values(), gone)
            held = {i: m for i, m in {**held, **fresh}.items() if i not in gone}
        assert _answers(index) == _answers(HullIndex.build(held.values()))
    assert sorted(index.models(), key=lambda m: m.id) == sorted(held.values(), key=lambda m: m.id)
    assert len(index) == len(held)


def test_the_order_of_models_changes_no_answer() -> None:
    models = list({model.id: model for model in map(_model, range(40))}.values())
    assert _answers(HullIndex.build(models)) == _answers(HullIndex.build(models[::-1]))


def test_an_update_leaves_the_index_it_came_from_as_it_was() -> None:
    model = HullModel(id="a", model="Corrin 31")
    before = HullIndex.build([model])
    after = before.updated([model.model_copy(update={"model": "Corrin 34"})])
    assert (resolve(before, "Corrin 31").model, resolve(before, "Corrin 34").model) == (model, None)
    assert resolve(after, "Corrin 31").model is None
    assert before.updated(drop=["a"]).updated(drop=["a", "nobody"]).parts[0].segment.models.ids() == ["a"]
    assert resolve(before.updated(drop=["a"]), "Corrin 31").status == "unknown"


def test_a_thousand_models_of_one_name_are_answered() -> None:
    index = HullIndex.build(HullModel(id=f"m{i:04}", builder="Osmund", model="Corrin 31") for i in range(1000))
    decision = resolve(index, "Corrin 31")
    assert decision.status == "several"
    assert [a.model.id for a in decision.alternatives] == ["m0000", "m0001", "m0002"]


class _Shelf:
    """Hull models without any index: all of them are candidates."""

    def __init__(self, models: list[HullModel]) -> None:
        self._models = models

    def candidates(self, _name: ParsedName, _extra: tuple[str, ...], _folded: frozenset[str]) -> list[Surface]:
        return [surface for model in self._models for surface in surfaces_of(model)]


def test_the_index_leaves_out_nothing_that_would_have_been_an_answer() -> None:
    models = list({model.id: model for model in map(_model, range(40))}.values())
    index, shelf = HullIndex.build(models), _Shelf(models)
    for name in ASKED:
        ours, all_of_them = resolve(index, name), resolve(shelf, name)
        assert (ours.status, ours.model) == (all_of_them.status, all_of_them.model), name
        if ours.status != "unknown":
            assert [(a.model, a.saw) for a in ours.alternatives] == [(a.model, a.saw) for a in all_of_them.alternatives]
            assert ours.probability == pytest.approx(all_of_them.probability, abs=1e-4)  # less what is vetoed
