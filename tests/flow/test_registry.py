"""Merging, splitting, aliases and duplicates in the registry of hull models, each of which can be taken back."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import suppress
from typing import Any, TypedDict

import numpy as np
import pytest

from service.core.catalogue import Configuration
from service.core.form import parse_form
from service.core.hulls import HullDecision
from service.core.record import HullModel, Record
from service.flow.alias_hulls import add_alias, remove_alias
from service.flow.duplicate_hulls import find_duplicates, say_distinct
from service.flow.find_records import Wanted, find_records
from service.flow.import_hulls import import_hulls
from service.flow.merge_hulls import merge_hulls
from service.flow.refusal import Refused
from service.flow.resolve import resolve_name
from service.flow.split_hulls import Into, split_hull
from service.flow.standing import under_survivors
from service.flow.undo_hulls import undo_change, unmerge_hulls
from service.store.errors import Conflict
from service.store.unit import Store

MADE = Configuration(gear="Gear 60", lower="Hinge 200", upper="Arm 400", shaft="Shaft 1800")
TERN = HullModel(id="tern", builder="Ostrel Yard", model="Tern 31", aliases=("T31",), loa_mm=9450, first_year=1971)
OLD = HullModel(id="old", model="Ternling Mk III", aliases=("Ternling Three",), beam_mm=2900, loa_mm=9400)
KITTAR = HullModel(id="kittar", builder="Kittar", model="Kittar 28")


class By(TypedDict):
    who: str
    why: str


BY: By = {"who": "ada", "why": "a letter"}


def record(reference: str, hull: str) -> Record:
    form = parse_form({"boat": {"hull_number": reference}})
    return Record(reference=reference, status="installed", hull=hull, form=form, configuration=MADE)


@pytest.fixture
def kept(store: Store) -> Store:
    with store.writing() as uow:
        uow.hulls.put([TERN, OLD, KITTAR], who="test", why="first")
        uow.records.add_many(
            [record("R-1", "tern"), record("R-2", "old"), record("R-3", "old")], who="test", why="first"
        )
        uow.enquiries.add(parse_form({}), source="x", hull="old")
        uow.commit()
    return store


def state(store: Store) -> Any:  # noqa: ANN401 - everything a change could touch
    """Return all that people see of the registry, and which hull model each record is of."""
    with store.reading() as uow:
        hulls = {hull.id: hull.model_dump() | {"aliases": sorted(hull.aliases)} for hull in uow.hulls.all()}
        given = {(one.hull, one.alias): (one.who, one.at, one.why) for one in uow.hulls.aliases(list(hulls))}
        return (
            hulls,
            given,
            {r.reference: r.hull for r in uow.records.all()},
            uow.hulls.distinct(),
            uow.hulls.survivors(),
        )


def hull(store: Store, hull_id: str) -> HullModel:
    with store.reading() as uow:
        found = uow.hulls.get(hull_id)
    assert found is not None
    return found


def resolved(store: Store, name: str) -> HullDecision:
    with store.reading() as uow:
        return resolve_name(uow, name)


def found(store: Store, hull_id: str) -> set[str]:
    return {one.reference for one in find_records(store.reading(), Wanted(hull=hull_id)).records}


def test_a_merged_model_leads_to_the_other_and_everything_is_found_under_both_ids(kept: Store) -> None:
    done = merge_hulls(kept.writing(), "tern", "old", **BY)
    assert (done.uses, done.number) == ({"records": 2, "boats": 2, "enquiries": 1}, 2)
    assert [(cell.key[1], cell.after) for cell in done.fills] == [("beam_mm", 2900)]
    assert ("loa_mm", 9450, 9400) in done.differs
    tern = hull(kept, "old")
    assert tern == hull(kept, "tern")
    assert (tern.id, tern.loa_mm, tern.beam_mm) == ("tern", 9450, 2900)
    assert {"T31", "Ternling Mk III", "Ternling Three"} <= set(tern.aliases)
    assert found(kept, "tern") == found(kept, "old") == {"R-1", "R-2", "R-3"}
    for name in ("Ternling Mk III", "Ternling Three", "Ostrel Tern 31"):
        decision = resolved(kept, name)
        assert decision.model is not None, name
        assert decision.model.id == "tern"
    with kept.reading() as uow:
        assert {r.hull for r in under_survivors(uow, uow.records.all())} == {"tern"}
        assert {step.record.hull for step in uow.records.history("R-2")} == {"old"}  # as it was written
        assert uow.hulls.uses(uow.hulls.family("old")) == {"records": 3, "boats": 3, "enquiries": 1}
        assert [one.id for one in uow.hulls.all()] == ["kittar", "tern"]


def test_a_preview_writes_nothing_and_says_the_same(kept: Store) -> None:
    before = state(kept)
    preview = merge_hulls(kept.reading(), "tern", "old", **BY, preview=True)
    assert state(kept) == before
    done = merge_hulls(kept.writing(), "tern", "old", **BY)
    assert preview.number is None
    assert (preview.fills, preview.differs, preview.names, preview.uses) == (
        done.fills,
        done.differs,
        done.names,
        done.uses,
    )


def test_an_unmerged_model_stands_as_it_did(kept: Store) -> None:
    before = state(kept)
    merge_hulls(kept.writing(), "tern", "old", **BY)
    undone = unmerge_hulls(kept.writing(), "old", who="bo", why="two after all")
    assert undone.kept == ()
    assert state(kept) == before
    with pytest.raises(Refused, match="was not merged"):
        unmerge_hulls(kept.writing(), "old", who="bo", why="again")
    with kept.reading() as uow:
        steps = uow.hulls.log.of(["old"])
        assert [(c.kind, c.who, c.why) for c in steps[1:]] == [
            ("merge", "ada", "a letter"),
            ("undo", "bo", "two after all"),
        ]
        assert uow.hulls.log.undone() == {2}


def test_what_was_edited_since_stays_when_a_merge_is_taken_back(kept: Store) -> None:
    merge_hulls(kept.writing(), "tern", "old", **BY)
    import_hulls(kept.writing(), b"id,model,beam_mm\ntern,Tern 31,2950\n", "hulls.csv")
    undone = unmerge_hulls(kept.writing(), "old", **BY)
    assert [(cell.key, now) for cell, now in undone.kept] == [(("tern", "beam_mm"), 2950)]
    assert hull(kept, "tern").beam_mm == 2950
    assert hull(kept, "old").id == "old"


def test_an_import_names_merged_models_and_they_stay_merged(kept: Store) -> None:
    merge_hulls(kept.writing(), "tern", "old", **BY)
    listed = b"id,model,aliases,draft_mm\nold,Ternling Mk III,Tern Three,1500\n,Ternling Mk III,,\n"
    report = import_hulls(kept.writing(), listed, "hulls.csv")
    assert (report.created, report.updated) == ((), ("old",))
    assert [error.expected for error in report.rejected] == ["row 2 is this hull model too; keep one of them"]
    assert hull(kept, "old").id == "tern"
    assert "Tern Three" in hull(kept, "tern").aliases
    unmerge_hulls(kept.writing(), "old", **BY)
    assert (hull(kept, "old").draft_mm, hull(kept, "tern").draft_mm) == (1500, None)


def test_merges_in_a_row_lead_to_the_last_and_part_in_any_order(kept: Store) -> None:
    before = state(kept)
    merge_hulls(kept.writing(), "tern", "old", **BY)
    merge_hulls(kept.writing(), "kittar", "tern", **BY)
    assert found(kept, "old") == found(kept, "kittar") == {"R-1", "R-2", "R-3"}
    assert "T31" in hull(kept, "old").aliases
    unmerge_hulls(kept.writing(), "old", **BY)
    assert (hull(kept, "old").id, hull(kept, "tern").id) == ("old", "kittar")
    unmerge_hulls(kept.writing(), "tern", **BY)
    assert state(kept) == before


@pytest.mark.parametrize(
    ("into", "other", "says"),
    [
        ("tern", "tern", "one hull model already"),
        ("tern", "nowhere", r"no hull model 'nowhere'.*hulls list"),
        ("Tern 31", "old", r"no hull model 'Tern 31' \(did you mean 'tern'"),
        ("old", "tern", "one hull model already"),
        ("kittar", "old", "merged into 'tern' already"),
    ],
)
def test_what_cannot_be_merged_is_refused_and_nothing_is_written(kept: Store, into: str, other: str, says: str) -> None:
    merge_hulls(kept.writing(), "tern", "old", **BY)
    before = state(kept)
    with pytest.raises(Refused, match=says):
        merge_hulls(kept.writing(), into, other, **BY)
    assert state(kept) == before


def test_what_would_go_in_a_circle_is_refused(kept: Store) -> None:
    merge_hulls(kept.writing(), "tern", "old", **BY)
    back = unmerge_hulls(kept.writing(), "old", **BY)
    merge_hulls(kept.writing(), "old", "tern", **BY)
    assert back.number is not None
    with pytest.raises(Conflict, match="in a circle"):
        undo_change(kept.writing(), back.number, **BY)
    assert hull(kept, "tern").id == "old"


def test_a_split_moves_records_and_aliases_into_a_new_model_and_back(kept: Store) -> None:
    before = state(kept)
    done = split_hull(
        kept.writing(), "old", Into(model="Ternling Mk IV"), records=["R-3"], aliases=["Ternling Three"], **BY
    )
    assert done.fresh
    assert found(kept, done.into.id) == {"R-3"}
    assert hull(kept, done.into.id).aliases == ("Ternling Three",)
    assert hull(kept, "old").aliases == ()
    with kept.reading() as uow:
        assert [(step.who, step.record.hull) for step in uow.records.history("R-3")] == [
            ("test", "old"),
            ("ada", done.into.id),
        ]
    assert done.number is not None
    undone = undo_change(kept.writing(), done.number, **BY)
    assert undone.kept == ()
    assert state(kept) == before
    with kept.reading() as uow:
        assert len(uow.records.history("R-3")) == 3  # nothing is overwritten


def test_a_split_into_a_model_that_is_there_is_the_way_back(kept: Store) -> None:
    done = split_hull(kept.writing(), "old", Into(hull="kittar"), records=["R-3"], **BY)
    assert not done.fresh
    assert found(kept, "kittar") == {"R-3"}
    split_hull(kept.writing(), "kittar", Into(hull="old"), records=["R-3"], **BY)
    assert found(kept, "old") == {"R-2", "R-3"}


def test_a_model_that_is_named_since_is_not_taken_away(kept: Store) -> None:
    done = split_hull(kept.writing(), "old", Into(model="Ternling Mk IV"), records=["R-3"], **BY)
    with kept.writing() as uow:
        uow.records.add(record("R-4", done.into.id), who="bo", why="an order")
        uow.commit()
    assert done.number is not None
    undone = undo_change(kept.writing(), done.number, **BY)
    assert [(cell.of, cell.key) for cell, _ in undone.kept] == [("made", (done.into.id,))]
    assert (found(kept, done.into.id), found(kept, "old")) == ({"R-4"}, {"R-2", "R-3"})


@pytest.mark.parametrize(
    ("into", "given", "says"),
    [
        (Into(model="x"), {}, "nothing was named"),
        (Into(model=" "), {"records": ["R-2"]}, "has no name"),
        (Into(model="x"), {"records": ["R-9"]}, r"no record 'R-9'"),
        (Into(model="x"), {"records": ["R-1"]}, r"'R-1' is of tern, not of old"),
        (Into(model="x"), {"aliases": ["Ternling Thre"]}, r"did you mean 'Ternling Three'"),
        (Into(hull="old"), {"records": ["R-2"]}, "are one hull model"),
    ],
)
def test_a_split_that_cannot_be_is_refused(kept: Store, into: Into, given: dict[str, Any], says: str) -> None:
    before = state(kept)
    with pytest.raises(Refused, match=says):
        split_hull(kept.writing(), "old", into, **given, **BY)
    assert state(kept) == before


def test_a_persons_decision_is_an_alias_from_then_on_with_who_when_and_why(kept: Store) -> None:
    assert resolved(kept, "Grey Lady Thirty").status == "unknown"
    done = add_alias(kept.writing(), "tern", "  Grey Lady  Thirty ", who="ada", why="the owner's drawing")
    assert (done.alias, done.shared) == ("Grey Lady Thirty", ())
    decision = resolved(kept, "grey lady thirty")
    assert decision.model is not None
    assert decision.model.id == "tern"
    with kept.reading() as uow:
        (one,) = [a for a in uow.hulls.aliases(["tern"]) if a.alias == "Grey Lady Thirty"]
        assert (one.who, one.why) == ("ada", "the owner's drawing")
    assert add_alias(kept.writing(), "tern", "Grey Lady Thirty", **BY).number is None
    assert [h.id for h in add_alias(kept.writing(), "kittar", "Grey Lady Thirty", **BY).shared] == ["tern"]
    assert resolved(kept, "Grey Lady Thirty").status == "several"
    remove_alias(kept.writing(), "tern", "Grey Lady Thirty", who="bo", why="wrong boat")
    after = resolved(kept, "Grey Lady Thirty")
    assert after.model is not None
    assert after.model.id == "kittar"


def test_aliases_that_cannot_be_are_refused(kept: Store) -> None:
    for alias, says in (("  --- ", "no letters or digits"), ("x" * 201, "201 characters")):
        with pytest.raises(Refused, match=says):
            add_alias(kept.writing(), "tern", alias, **BY)
    with pytest.raises(Refused, match=r"no alias of tern \(did you mean 'T31'"):
        remove_alias(kept.writing(), "tern", "T32", **BY)
    merge_hulls(kept.writing(), "tern", "old", **BY)
    with pytest.raises(Refused, match="name of one that was merged"):
        remove_alias(kept.writing(), "tern", "Ternling Mk III", **BY)
    remove_alias(kept.writing(), "tern", "Ternling Three", **BY)  # one of the merged model's own
    assert "Ternling Three" not in hull(kept, "tern").aliases


def test_a_later_decision_has_to_be_taken_back_first(kept: Store) -> None:
    added = add_alias(kept.writing(), "tern", "Grey Lady", **BY).number
    removed = remove_alias(kept.writing(), "tern", "Grey Lady", who="bo", why="no").number
    assert added is not None
    assert removed is not None
    with pytest.raises(Refused, match=rf"change {removed} by bo was built on it.*hulls undo {removed}"):
        undo_change(kept.writing(), added, **BY)
    undo_change(kept.writing(), removed, **BY)
    undo_change(kept.writing(), added, **BY)
    with pytest.raises(Refused, match="taken back already"):
        undo_change(kept.writing(), added, **BY)
    with pytest.raises(Refused, match="no change 99"):
        undo_change(kept.writing(), 99, **BY)


def test_an_import_can_be_taken_back_but_for_what_is_named_since(kept: Store) -> None:
    report = import_hulls(
        kept.writing(), b"model,loa_mm,aliases\nPellworth 40,12000,P40\nPellworth 50,,\n", "hulls.csv"
    )
    first, second = report.created
    with kept.writing() as uow:
        uow.records.add(record("R-5", second), who="bo", why="an order")
        uow.commit()
        number = uow.hulls.version()
    undone = undo_change(kept.writing(), number, **BY)
    assert [cell.key for cell, _ in undone.kept] == [(second,)]
    assert resolved(kept, "Pellworth 40").status == "unknown"
    again = import_hulls(kept.writing(), f"id,model\n{first},Pellworth 40\n".encode(), "again.csv")
    assert again.updated == (first,)  # an id that comes again is the same model again
    assert hull(kept, first).loa_mm == 12000


def test_duplicates_are_proposed_with_reasons_and_what_was_said_to_be_two_is_not(store: Store) -> None:
    listed = (
        b"id,builder,model,first_year,last_year,loa_mm,aliases\n"
        b"a,Ostrel Yard,Tern 31,1971,1980,9450,\n"
        b"b,Ostrel,Tern31,1972,,9460,\n"  # written together, the yard cut short
        b"c,Ostrel Yard,Tern 310,1999,2005,9440,\n"  # a numbered sibling
        b"d,Ostrel Yard,Tern 31 Mk II,1981,1989,9500,\n"  # a later generation
        b"e,,Grey Lady,,,,Kittar 28|K28\n"
        b"f,Kittar,Kittar 28,,,,\n"  # known by an alias of the other
    )
    import_hulls(store.writing(), listed, "hulls.csv")
    proposed = find_duplicates(store.reading())
    assert {(d.one.id, d.other.id) for d in proposed} == {("a", "b"), ("e", "f")}
    first = next(d for d in proposed if d.one.id == "a")
    assert "the number 31 agrees" in first.why
    assert ("loa_mm", 9450, 9460) in first.differs
    assert say_distinct(store.writing(), "b", "a", who="ada", why="seen both") is not None
    assert say_distinct(store.writing(), "a", "b", who="ada", why="again") is None
    assert {(d.one.id, d.other.id) for d in find_duplicates(store.reading())} == {("e", "f")}
    with pytest.raises(Refused, match=r"ada said on 2024-05-01 that 'a' and 'b' are two: seen both.*hulls undo 2"):
        merge_hulls(store.writing(), "a", "b", **BY)
    undo_change(store.writing(), 2, **BY)
    merge_hulls(store.writing(), "a", "b", **BY)
    assert {(d.one.id, d.other.id) for d in find_duplicates(store.reading())} == {("e", "f")}


@pytest.mark.parametrize("listed", ["", "a,Tern 31\n", "a,Tern 31\nb,Tern 31\n"])
def test_registries_of_none_one_and_two_that_are_one(store: Store, listed: str) -> None:
    if listed:
        assert import_hulls(store.writing(), f"id,model\n{listed}".encode(), "hulls.csv").rejected == ()
    count = listed.count("\n")
    assert resolved(store, "Tern 31").status == ("unknown", "matched", "several")[count]
    assert len(find_duplicates(store.reading())) == (count == 2)
    with store.reading() as uow:
        assert (len(uow.hulls.all()), uow.hulls.version()) == (count, min(count, 1))
    if count == 2:
        merge_hulls(store.writing(), "a", "b", **BY)
        assert resolved(store, "Tern 31").status == "matched"


def test_the_version_and_what_changed_since_follow_every_write(kept: Store) -> None:
    seen = dict[int, dict[str, HullModel]]()

    def look() -> tuple[int, dict[str, HullModel]]:
        with kept.reading() as uow:
            return uow.hulls.version(), {one.id: one for one in uow.hulls.all()}

    steps: list[Callable[[], object]] = [
        lambda: add_alias(kept.writing(), "old", "Grey Lady", **BY),
        lambda: merge_hulls(kept.writing(), "tern", "old", **BY),
        lambda: merge_hulls(kept.writing(), "kittar", "tern", **BY),
        lambda: add_alias(kept.writing(), "old", "Nine Metre Boat", **BY),
        lambda: import_hulls(kept.writing(), b"id,model,aliases\nold,Ternling Mk III,Old Tern\n", "x.csv"),
        lambda: split_hull(kept.writing(), "old", Into(model="Ternling Mk IV"), aliases=["Grey Lady"], **BY),
        lambda: unmerge_hulls(kept.writing(), "old", **BY),
        lambda: unmerge_hulls(kept.writing(), "tern", **BY),
    ]
    version, hulls = look()
    seen[version] = hulls
    for step in steps:
        step()
        later, hulls = look()
        assert later == version + 1
        version = later
        for earlier, before in seen.items():
            with kept.reading() as uow:
                changed = uow.hulls.changed_since(earlier)
            differing = {name for name in before.keys() | hulls.keys() if before.get(name) != hulls.get(name)}
            assert differing <= changed, (earlier, later)
        seen[version] = hulls
    with kept.reading() as uow:
        assert uow.hulls.changed_since(version) == frozenset()


class Play:
    """Random changes to the registry, drawn from a seed; what is refused counts for nothing."""

    def __init__(self, store: Store, seed: int) -> None:
        self.store, self.dice, self.done = store, np.random.default_rng(seed), 0
        self.start = self.version()

    def version(self) -> int:
        with self.store.reading() as uow:
            return uow.hulls.version()

    def one_of(self, *things: str) -> str:
        return things[int(self.dice.integers(len(things)))]

    def hull(self) -> str:
        with self.store.reading() as uow:
            return self.one_of(*(one.id for one in uow.hulls.every()))

    def merge(self) -> None:
        merge_hulls(self.store.writing(), self.hull(), self.hull(), **BY)

    def split(self) -> None:
        reference = self.one_of("R-1", "R-2", "R-3")
        split_hull(self.store.writing(), self.hull(), Into(model="Split"), records=[reference], **BY)

    def alias(self) -> None:
        do = add_alias if self.dice.random() < 0.6 else remove_alias
        do(self.store.writing(), self.hull(), self.one_of("Grey Lady", "T31", "Nine"), **BY)

    def undo(self) -> None:
        if self.version() > self.start:
            undo_change(self.store.writing(), int(self.dice.integers(self.start, self.version())) + 1, **BY)

    def step(self) -> None:
        moves = (self.merge, self.merge, self.split, self.alias, self.alias, self.undo)
        with suppress(Refused, Conflict):
            moves[int(self.dice.integers(len(moves)))]()
            self.done += 1

    def holding(self) -> list[int]:
        """Return the changes that hold, in random order."""
        with self.store.reading() as uow:
            undone, latest = uow.hulls.log.undone(), uow.hulls.log.latest(500)
        found = [c.number for c in latest if c.number > self.start and c.number not in undone and c.kind != "undo"]
        return [int(number) for number in self.dice.permutation(found)]

    def take_all_back(self) -> None:
        """Try what holds in random order, over and over while some of it can be taken back."""
        left = self.holding()
        while left:
            for number in left:
                with suppress(Refused, Conflict):
                    undo_change(self.store.writing(), number, **BY)
            before, left = left, self.holding()
            assert len(left) < len(before), "what is left holds each other fast"


@pytest.mark.parametrize("seed", range(4))
def test_whatever_is_done_and_taken_back_in_any_order_leads_back_to_the_start(kept: Store, seed: int) -> None:
    before, play = state(kept), Play(kept, seed)
    for _ in range(40):
        play.step()
    assert play.done > 10
    assert state(kept) != before
    play.take_all_back()
    assert state(kept) == before
