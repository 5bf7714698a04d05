"""Measurements that may disagree, and the rule by which one of them stands. All boats invented."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from typing import get_args

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from pydantic import ValidationError

from service.core.boat import Method, get
from service.core.form import FormError, parse_form
from service.core.measurement import RANK, Measurement, fields, of_field, rank, resolved, standing, taken_from

START = datetime(2026, 1, 1, 12, tzinfo=UTC)
RAKE = "transom.rake_deg"


def row(
    value: float, method: str | None, *, days: int = 0, taken: date | None = None, field: str = RAKE
) -> Measurement:
    return Measurement.model_validate(
        {"field": field, "text": f"{value} x", "unit": "deg", "value": value, "method": method, "who": "bo",
         "at": START + timedelta(days=days), "taken": taken}
    )  # fmt: skip


METHODS = st.sampled_from([*get_args(Method), None])
ROWS = st.lists(
    st.builds(lambda v, m, d: row(v, m, days=d), st.integers(-40, 40), METHODS, st.integers(0, 5)),
    min_size=1,
    max_size=6,
)
FEW = settings(deadline=None, derandomize=True, max_examples=80)


@FEW
@given(rows=ROWS)
def test_what_stands_is_of_the_best_class_and_the_newest_in_it(rows: list[Measurement]) -> None:
    stands = standing(rows)[RAKE]
    classes = [RANK.get(one.method, 3) for one in rows]
    assert RANK.get(stands.method, 3) == min(classes)
    rivals = [one for one, place in zip(rows, classes, strict=True) if place == min(classes)]
    assert stands.at == max(one.at for one in rivals)
    assert of_field(rows, RAKE)[0].value == stands.value or rank(of_field(rows, RAKE)[0]) == rank(stands)
    assert sorted(map(id, of_field(rows, RAKE))) == sorted(map(id, rows))  # none is dropped


def test_every_method_has_its_class_or_is_a_guess() -> None:
    assert set(get_args(Method)) - set(RANK) == {"guess"}


@pytest.mark.parametrize(
    ("rows", "stands"),
    [
        ([row(1, "tape"), row(2, "laser", days=1)], 2),  # one class: the newer
        ([row(1, "tape", days=9), row(2, "brochure", days=10)], 1),  # paper never beats the boat
        ([row(1, "photo"), row(2, "drawing", days=-9)], 2),
        ([row(1, "guess", days=9), row(2, "photo")], 2),
        ([row(1, None, days=9), row(2, "guess")], 1),  # neither says much: the newer
        ([row(1, "tape", days=9, taken=date(2020, 1, 1)), row(2, "tape")], 2),  # an old sheet that came late
        ([row(1, "tape"), row(2, "tape")], 2),  # the same in all: the one written down later
    ],
)
def test_the_rule_case_by_case(rows: list[Measurement], stands: float) -> None:
    assert standing(rows)[RAKE].value == stands


def test_values_are_kept_as_written_with_their_unit() -> None:
    document = {
        "boat": {"displacement_kg": "16,000 lb", "loa_mm": 9450},
        "transom": {"top_height_mm": "3 ft 1 1/2 in", "rake_deg": "12°30'"},
        "methods": {"*": "tape", "boat.displacement_kg": "brochure"},
        "uncertainties": {"transom.top_height_mm": 10},
    }
    form = parse_form(document)
    rows = {r.field: r for r in taken_from(form, who="bo", at=START, written=document, day=date(2025, 12, 31))}
    top = rows["transom.top_height_mm"]
    assert (top.text, top.method, top.uncertainty) == ("3 ft 1 1/2 in", "tape", 10)
    assert top.value == pytest.approx(952.5)
    assert {path: (r.text, r.unit) for path, r in rows.items() if path != top.field} == {
        "boat.displacement_kg": ("16,000 lb", "lb"),
        "boat.loa_mm": ("9450 mm", "mm"),
        RAKE: ("12°30'", rows[RAKE].unit),
    }
    assert rows["boat.displacement_kg"].method == "brochure"
    assert all(r.value == get(form, path) for path, r in rows.items())
    assert {r.taken for r in rows.values()} == {date(2025, 12, 31)}


def test_the_form_takes_over_what_stands_and_keeps_each_method() -> None:
    before = parse_form({"transom": {"rake_deg": 14, "camber_mm": 30}, "methods": {"*": "photo"}, "notes": "old"})
    said = parse_form({"transom": {"rake_deg": 12, "top_height_mm": 900}, "methods": {"*": "tape"}})
    rows = [row(17, "laser", days=3), *taken_from(said, who="bo", at=START)]
    after = resolved(before, said, rows)
    assert (after.transom.rake_deg, after.methods[RAKE]) == (17, "laser")
    assert (after.transom.top_height_mm, after.methods["transom.top_height_mm"]) == (900, "tape")
    assert (after.transom.camber_mm, after.methods["transom.camber_mm"]) == (30, "photo")
    assert after.notes == "old"


def test_what_contradicts_the_rest_is_refused() -> None:
    before = parse_form({"transom": {"top_height_mm": 900}})
    said = parse_form({"transom": {"bottom_height_mm": 950}})
    with pytest.raises(FormError, match="must be less"):
        resolved(before, said, taken_from(said, who="bo", at=START))


def test_only_what_is_measured_is_a_measurement() -> None:
    assert "transom.rake_deg" in fields()
    assert not {"boat.year", "boat.stern", "transom.profile"} & set(fields())
    with pytest.raises(ValidationError, match="nothing that is measured"):
        row(1, "tape", field="boat.year")
