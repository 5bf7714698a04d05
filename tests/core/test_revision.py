"""What sets two states of a record apart, and taking a change back. All boats invented."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from service.core.form import FormError, parse_form
from service.core.record import Record
from service.core.revision import Revision, changes, flat, moved, named, steps, taken_back, with_fields

KIT = {"gear": "g", "lower": "l", "upper": "u", "shaft": "s"}
START = datetime(2026, 1, 1, tzinfo=UTC)


def made(**changed: Any) -> Record:  # noqa: ANN401 - any field of a record
    form = parse_form(changed.pop("form", {}))
    said = {"reference": "R-1", "status": "shipped", "configuration": KIT, **changed, "form": form}
    return Record.model_validate(said)


def history(*states: Record) -> tuple[Revision, ...]:
    return tuple(
        Revision(number=n, who=f"w{n}", at=START + timedelta(days=n), why=f"step {n}", record=state)
        for n, state in enumerate(states, start=1)
    )


PARTS: dict[str, st.SearchStrategy[Any]] = {
    "dealer": st.sampled_from([None, "Quai 9", "Süd"]),
    "status": st.sampled_from(["proposed", "shipped", "installed"]),
    "placement": st.fixed_dictionaries({}, optional={"offset_mm": st.sampled_from([0, -12.5, 80])}),
    "form": st.fixed_dictionaries(
        {},
        optional={
            "boat": st.fixed_dictionaries({}, optional={"year": st.sampled_from([1979, 1980]), "name": st.just("Siskin")}),
            "methods": st.dictionaries(st.sampled_from(["*", "boat.year"]), st.sampled_from(["tape", "photo"])),
            "obstacles": st.lists(st.sampled_from([{"kind": "ladder"}, {"kind": "rail"}]), max_size=2),
            "transom": st.fixed_dictionaries({}, optional={"rake_deg": st.sampled_from([0, 12, -12])}),
        },
    ),
}  # fmt: skip
STATES = st.fixed_dictionaries(PARTS).map(lambda said: made(**said))
FEW = settings(deadline=None, derandomize=True, max_examples=60)


@FEW
@given(one=STATES, other=STATES)
def test_the_changes_lead_from_one_state_to_the_other(one: Record, other: Record) -> None:
    old, new = flat(one), flat(other)
    differing = {path: new.get(path) for path in {*old, *new} if old.get(path) != new.get(path)}
    assert {c.field for c in changes(one, other)} == {named(path) for path in differing}
    assert flat(with_fields(one, differing)) == new


@FEW
@given(before=STATES, after=STATES)
def test_a_change_taken_back_at_once_leaves_nothing(before: Record, after: Record) -> None:
    assert flat(taken_back(after, before, after)) == flat(before)


@FEW
@given(before=STATES, after=STATES, name=st.sampled_from(["Heron", "Gull"]))
def test_what_was_changed_since_outlives_taking_back(before: Record, after: Record, name: str) -> None:
    now = with_fields(after, {("form", "boat", "name"): name})
    back = flat(taken_back(after, before, now))
    assert back.pop(("form", "boat", "name")) == name
    expected = flat(before)
    expected.pop(("form", "boat", "name"), None)
    assert back == expected


def test_changes_are_named_as_the_columns_of_a_table() -> None:
    one = made()
    other = made(
        dealer="Quai 9",
        outcome={"note": "dry"},
        form={"transom": {"rake_deg": 12}, "methods": {"transom.rake_deg": "tape"}, "obstacles": [{"kind": "ladder"}]},
    )
    got = {c.field: (c.before, c.after) for c in changes(one, other)}
    assert got == {
        "record.dealer": (None, "Quai 9"),
        "outcome.note": (None, "dry"),
        "transom.rake_deg": (None, 12),
        "methods[transom.rake_deg]": (None, "tape"),
        "obstacles": (None, [{"kind": "ladder"}]),
    }


def test_each_step_tells_only_what_it_changed() -> None:
    told = steps(history(made(), made(dealer="Quai 9"), made(dealer="Quai 9", status="installed")))
    assert [[c.field for c in step.changes] for step in told[1:]] == [["record.dealer"], ["record.status"]]
    assert [(step.number, step.who) for step in told] == [(1, "w1"), (2, "w2"), (3, "w3")]


def test_a_clash_names_who_was_last_and_what_everybody_says() -> None:
    mine = made(dealer="mine", placement={"offset_mm": 5})
    (clash,) = moved(history(made(dealer="a"), made(dealer="b"), made(dealer="c")), 1, mine)
    assert (clash.field, clash.was, clash.now, clash.yours, clash.who) == ("record.dealer", "a", "c", "mine", "w3")


def test_a_value_that_does_not_fit_the_others_is_refused() -> None:
    with pytest.raises(FormError, match="bottom_height_mm must be less"):
        with_fields(made(form={"transom": {"top_height_mm": 900}}), {("form", "transom", "bottom_height_mm"): 950})
