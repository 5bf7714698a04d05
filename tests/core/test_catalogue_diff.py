"""What differs between two catalogues: nothing of one with itself, and each change by itself."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from hypothesis import given, settings
from hypothesis import strategies as st

from service.core.catalogue import Catalogue, Configuration
from service.core.catalogue_diff import Carrier, ThingChange, changes, compare
from tests.support.boats import bench, demo, ruled

Change = Callable[[Catalogue], tuple[Catalogue, str, str]]
TABLES = {"gears": "gear", "shafts": "shaft", "brackets": "bracket", "parts": "part", "methods": "method"}


def repriced(catalogue: Catalogue, table: str, at: int, add: float) -> tuple[Catalogue, str, str]:
    """Return the catalogue with a number of one thing of a table raised, and what was changed."""
    things = list(getattr(catalogue, table))
    at %= len(things)
    field = {"parts": "quantity", "methods": "mm"}.get(table, "price")
    step: Any = int(add) + 1 if field == "quantity" else add
    things[at] = things[at].model_copy(update={field: getattr(things[at], field) + step})
    return catalogue.model_copy(update={table: tuple(things)}), things[at].code, field


@settings(max_examples=25, deadline=None, derandomize=True)
@given(st.lists(st.tuples(st.sampled_from(sorted(TABLES)), st.integers(0, 200), st.floats(1, 900)), max_size=6))
def test_each_change_shows_and_nothing_else_does(steps: list[tuple[str, int, float]]) -> None:
    start = now = demo()
    touched = set()
    for table, at, add in steps:
        before, (now, code, field) = now, repriced(now, table, at, add)
        touched.add((TABLES[table], code))
        (one,) = changes(before, now)
        (changed,) = one.fields
        assert (one.kind, one.code, one.what, changed.field) == (TABLES[table], code, "changed", field)
        assert changed.before != changed.after
        assert changed.before_unit == changed.after_unit == {"price": "EUR", "mm": "mm"}.get(field)
        assert changes(now, now) == ()
    assert {(one.kind, one.code) for one in changes(start, now)} == touched


def backwards(one: ThingChange) -> ThingChange:
    fields = tuple(
        f.model_copy(
            update={"before": f.after, "after": f.before, "before_unit": f.after_unit, "after_unit": f.before_unit}
        )
        for f in one.fields
    )
    what = {"added": "removed", "removed": "added", "changed": "changed"}[one.what]
    return one.model_copy(update={"what": what, "fields": fields})


def test_two_catalogues_that_share_little_differ_the_same_way_from_either_side() -> None:
    there, back = changes(bench(), demo()), changes(demo(), bench())
    assert {one.what for one in there} == {"added", "removed", "changed"}
    assert {one.kind for one in there} >= {"catalogue", "gear", "shaft", "bracket", "method", "scale", "prior"}
    assert tuple(map(backwards, back)) == there


def test_what_says_nothing_is_no_difference() -> None:
    demo_ = demo()
    turned = demo_.model_copy(
        update={
            "version": "another",
            "brackets": tuple(
                b.model_copy(update={"gears": b.gears[::-1], "roles": b.roles[::-1]}) for b in demo_.brackets[::-1]
            ),
        }
    )
    assert turned != demo_
    assert changes(demo_, turned) == ()


def test_rules_and_priors_are_told_with_their_units() -> None:
    rules = demo().rules
    path = "transom.top_height_mm"
    (stern, *_) = rules.prior[path]
    priors = {
        **rules.prior,
        path: {**rules.prior[path], stern: rules.prior[path][stern].model_copy(update={"per_loa": 9.0})},
    }
    now = ruled(demo(), fixed_gap=77.0)
    now = now.model_copy(update={"rules": now.rules.model_copy(update={"prior": priors})})
    rule, prior = changes(demo(), now)
    assert (rule.kind, rule.code, rule.fields[0].after, rule.fields[0].after_unit) == ("rule", "fixed_gap", 77.0, "mm")
    assert (prior.kind, prior.code) == ("prior", f"{path} {stern}")
    assert [(f.field, f.after, f.after_unit) for f in prior.fields] == [("per_loa", 9.0, "mm/m")]


def test_records_carry_what_their_configuration_names_and_the_parts_that_go_with_it() -> None:
    small, other = (one for one in demo().configurations() if one.gear == "gear-720"), "gear-860"
    mine = next(small)
    theirs = next(one for one in demo().configurations() if one.gear == other)
    part = next(p for p in demo().parts if p.goes_with == ("gear:gear-720",))
    everyone = next(p for p in demo().parts if p.goes_with == ("*",))
    without = demo().model_copy(update={"parts": tuple(p for p in demo().parts if p not in (part, everyone))})
    fleet = [Carrier("b", mine), Carrier("a", mine), Carrier("c", theirs)]
    found = compare(demo(), without, fleet, further="next", references=True)
    assert {one.code: one.references for one in found.carried} == {
        part.code: ("a", "b"),
        everyone.code: ("a", "b", "c"),
    }
    assert (found.records, found.looked_at, found.counts) == (3, 3, {"added": 0, "removed": 2, "changed": 0})
    back = compare(without, demo(), fleet, further="next")
    assert (back.carried, back.records, back.counts["added"]) == ((), 0, 2)  # nobody carries what is new


def test_one_bracket_in_both_roles_is_carried_once() -> None:
    both = next(b for b in demo().brackets if set(b.roles) == {"lower", "upper"})
    now, _, _ = repriced(demo(), "brackets", demo().brackets.index(both), 5.0)
    one = Configuration(gear="gear-720", lower=both.code, upper=both.code, shaft="shaft-1110")
    (carried,) = compare(demo(), now, [Carrier("a", one)], further="").carried
    assert (carried.code, carried.records, carried.references) == (both.code, 1, None)
