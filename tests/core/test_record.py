"""Records and hull models as values. All boats invented."""

from __future__ import annotations

import pytest

from service.core.form import FormError, parse_shape
from service.core.record import HullModel, Record

KIT = {"gear": "g", "lower": "l", "upper": "u", "shaft": "s"}


@pytest.mark.parametrize(
    ("builder", "model", "said"),
    [
        ("Osmund Yard", "Corrin 31", "Osmund Yard Corrin 31"),
        ("Corrin Boats", "Corrin 31", "Corrin 31"),  # the model begins with a word of the builder's name
        (None, "Corrin 31", "Corrin 31"),
    ],
)
def test_a_hull_model_is_named_once(builder: str | None, model: str, said: str) -> None:
    assert str(HullModel(id="x", builder=builder, model=model)) == said


def test_a_record_needs_reference_status_and_configuration() -> None:
    made = parse_shape(Record, {"reference": "r1", "status": "installed", "form": {}, "configuration": KIT})
    assert made.placement.offset_mm is None
    assert made.outcome.fitted_as_proposed is None
    assert Record.model_validate_json(made.model_dump_json(by_alias=True)) == made
    with pytest.raises(FormError) as caught:
        parse_shape(Record, {"reference": "", "status": "sold", "form": {"boat": {"modle": 1}}})
    assert {d.field for d in caught.value.defects} == {"reference", "status", "form.boat.modle", "configuration"}


def test_a_records_lengths_take_units() -> None:
    placed = {"reference": "r", "status": "shipped", "form": {}, "configuration": KIT,
              "placement": {"offset_mm": "-1 ft", "shaft_bottom_mm": "-3 cm"}, "date": "2020-02-29"}  # fmt: skip
    made = parse_shape(Record, placed)
    assert made.placement.offset_mm == pytest.approx(-304.8)
    assert made.placement.shaft_bottom_mm == pytest.approx(-30)
    with pytest.raises(FormError, match="date"):
        parse_shape(Record, {**placed, "date": "2021-02-29"})
