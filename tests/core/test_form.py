"""Changing and joining forms, and errors as people read them. All boats invented."""

from __future__ import annotations

import pytest

from service.core.boat import BoatForm
from service.core.form import Defect, FormError, dotted, merged, parse_form, with_values


def test_with_values_replaces_and_is_read_anew() -> None:
    form = parse_form({"transom": {"rake_deg": 5, "top_height_mm": 900}})
    changed = with_values(form, {"transom.rake_deg": "12°", "boat.displacement_kg": 5000})
    assert (changed.transom.rake_deg, changed.transom.top_height_mm, changed.boat.displacement_kg) == (12, 900, 5000)
    assert form.transom.rake_deg == 5
    with pytest.raises(FormError, match=r"transom\.rake_deg"):
        with_values(form, {"transom.rake_deg": 95})


def test_the_newer_form_goes_before_and_the_older_fills_gaps() -> None:
    older = parse_form(
        {
            "contact": {"name": "Signe", "email": "signe@example.org"},
            "boat": {"model": "Corrin 31", "year": 1979},
            "transom": {"top_height_mm": 890, "rake_deg": -18},
            "obstacles": [{"kind": "ladder"}, {"kind": "stay"}],
        }
    )
    newer = parse_form({"transom": {"top_height_mm": 990}, "contact": {"name": "Signe L."}})
    both = merged(newer, older)
    assert both.transom.top_height_mm == 990
    assert both.transom.rake_deg == -18
    assert (both.contact.name, both.contact.email) == ("Signe L.", "signe@example.org")
    assert [o.kind for o in both.obstacles] == ["ladder", "stay"]
    assert merged(parse_form({"obstacles": [{"kind": "boom"}]}), older).obstacles[0].kind == "boom"
    assert len(merged(parse_form({"obstacles": [{"kind": "boom"}]}), older).obstacles) == 1


def test_merging_with_nothing_changes_nothing() -> None:
    form = parse_form({"transom": {"rake_deg": 5}, "methods": {"*": "tape"}, "uncertainties": {"transom.rake_deg": 1}})
    assert merged(form, BoatForm()) == form
    assert merged(BoatForm(), form).transom == form.transom
    assert merged(form, form).transom == form.transom


def test_each_measurement_keeps_the_method_it_was_taken_with() -> None:
    older = parse_form(
        {
            "transom": {"rake_deg": 15, "top_height_mm": 900, "width_top_mm": 1800},
            "obstacles": [{"kind": "ladder"}],
            "methods": {
                "*": "photo",
                "transom.rake_deg": "laser",
                "transom.width_top_mm": "tape",
                "obstacles[0]": "guess",
            },
            "uncertainties": {"transom.rake_deg": 3, "transom.top_height_mm": 40},
        }
    )
    newer = parse_form({"transom": {"rake_deg": 12}, "methods": {"*": "inclinometer"}})
    both = merged(newer, older)
    assert both.methods["transom.rake_deg"] == "inclinometer"
    assert both.methods["transom.top_height_mm"] == "photo"
    assert both.methods["transom.width_top_mm"] == "tape"
    assert both.methods["obstacles[0]"] == "guess"
    assert both.uncertainties == {"transom.top_height_mm": 40}
    assert "*" not in both.methods


def test_what_nobody_said_how_stays_unsaid() -> None:
    older = parse_form({"transom": {"top_height_mm": 900}})
    newer = parse_form({"transom": {"rake_deg": 12}, "methods": {"*": "laser"}})
    assert merged(newer, older).methods == {"transom.rake_deg": "laser"}
    assert merged(older, newer).methods == {"transom.rake_deg": "laser"}


def test_errors_read_well() -> None:
    assert dotted(("transom", "profile", 2, "aft_mm")) == "transom.profile[2].aft_mm"
    assert str(Defect("a.b", "3", "is odd")) == "a.b: is odd (got 3)"
    assert str(Defect("a.b", "", "is odd")) == "a.b: is odd"
    with pytest.raises(FormError) as caught:
        parse_form({"transom": {"rake_deg": 95, "top_height_mm": "tall"}})
    assert len(str(caught.value).splitlines()) == 2
    with pytest.raises(FormError, match="form"):
        parse_form([1, 2])
