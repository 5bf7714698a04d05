"""The boat form: what it takes, what it refuses and how it says so. All boats invented."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from service.core.boat import METHODS, OBSTACLE_KINDS, STERNS, BoatForm, get, how_to_measure, is_path, paths, title
from service.core.form import Defect, FormError, parse_form


def refused(document: dict[str, Any]) -> dict[str, str]:
    """Return what is wrong with a document, by field."""
    with pytest.raises(FormError) as caught:
        parse_form(document)
    return {defect.field: defect.problem for defect in caught.value.defects}


# --- what is wrong is named at its place ------------------------------------------------------------------


@pytest.mark.parametrize(
    ("document", "field", "near"),
    [
        ({"transom": {"top_heigth_mm": 900}}, "transom.top_heigth_mm", "top_height_mm"),
        ({"transome": {}}, "transome", "transom"),
        ({"boat": {"displacment_kg": 4000}}, "boat.displacment_kg", "displacement_kg"),
        ({"obstacles": [{"kind": "ladder", "removeable": True}]}, "obstacles[0].removeable", "removable"),
        ({"transom": {"profile": [{"below_top_mm": 0, "aft": 0}]}}, "transom.profile[0].aft", "aft_mm"),
    ],
)
def test_a_misspelt_key_names_the_nearest(document: dict[str, Any], field: str, near: str) -> None:
    assert repr(near) in refused(document)[field]


def test_a_key_that_is_like_none_lists_what_is_known() -> None:
    assert "number" in refused({"main_rudder": {"zzz": 1}})["main_rudder.zzz"]


@pytest.mark.parametrize(
    ("path", "value"),
    [
        ("transom.top_height_mm", -5),
        ("transom.top_height_mm", 0),
        ("transom.rake_deg", 95),
        ("transom.rake_deg", -95),
        ("transom.width_top_mm", -1),
        ("transom.width_top_mm", 61_000),
        ("boat.displacement_kg", 0),
        ("boat.displacement_kg", 600_000),
        ("boat.year", 1492),
        ("boat.stern", "canoe"),
        ("boat.hull_material", "papier mache"),
        ("main_rudder.hung", "yes"),
        ("main_rudder.number", 3),
        ("main_rudder.max_deflection_deg", -10),
        ("enquiry.country", "England"),
        ("transom.top_height_mm", float("nan")),
        ("transom.bottom_height_mm", float("inf")),
        ("transom.top_height_mm", "tall"),
        ("transom.top_height_mm", "12 kg"),
        ("transom.top_height_mm", [1]),
    ],
)
def test_a_value_out_of_bounds_is_named(path: str, value: object) -> None:
    part, name = path.split(".")
    assert set(refused({part: {name: value}})) == {path}


def test_every_fault_is_told_at_once() -> None:
    found = refused({"transom": {"top_height_mm": -1, "rake_deg": 95}, "boat": {"modell": "x"}})
    assert set(found) == {"transom.top_height_mm", "transom.rake_deg", "boat.modell"}


@pytest.mark.parametrize("key", ["height_mm", "below_top_mm"])
def test_a_profile_must_not_fold_back(key: str) -> None:
    points = [{key: h, "aft_mm": 0} for h in (100, 400, 300)]
    assert "folds back" in refused({"transom": {"profile": points}})["transom.profile"]
    level = [{key: 100, "aft_mm": 0}, {key: 100, "aft_mm": 50}]
    assert "folds back" in refused({"transom": {"profile": level}})["transom.profile"]


def test_a_profile_needs_one_way_of_giving_heights() -> None:
    both = [{"height_mm": 900, "aft_mm": 0}, {"below_top_mm": 100, "aft_mm": 0}]
    assert "throughout" in refused({"transom": {"profile": both}})["transom.profile"]
    none = [{"aft_mm": 0}, {"below_top_mm": 100, "aft_mm": 0}]
    assert "exactly one" in refused({"transom": {"profile": none}})["transom.profile[0]"]
    assert "two heights" in refused({"transom": {"profile": [{"height_mm": 1, "aft_mm": 0}]}})["transom.profile"]


def test_a_section_must_not_fold_back() -> None:
    points = [{"half_breadth_mm": b, "aft_mm": 0} for b in (0, 300, 200)]
    found = refused({"transom": {"sections": [{"height_mm": 100, "points": points}]}})
    assert "folds back" in found["transom.sections[0]"]


@pytest.mark.parametrize(
    ("transom", "said"),
    [
        ({"top_height_mm": 500, "bottom_height_mm": 500}, "bottom_height_mm must be less"),
        ({"thickness_mm": 20, "core_mm": 20}, "core_mm must be less"),
    ],
)
def test_what_contradicts_itself_is_refused(transom: dict[str, float], said: str) -> None:
    assert said in refused({"transom": transom})["transom"]


def test_a_span_must_not_be_upside_down() -> None:
    found = refused({"obstacles": [{"kind": "rail", "aft_mm": [100, 0]}]})
    assert "write the smaller first" in found["obstacles[0].aft_mm"]


# --- methods and uncertainties ----------------------------------------------------------------------------


def test_methods_and_uncertainties_name_fields() -> None:
    form = parse_form(
        {
            "methods": {"*": "tape", "transom.rake_deg": "phone_level", "obstacles[0]": "photo",
                        "obstacles[3].aft_mm": "tape", "transom.profile": "drawing", "transom": "laser"},
            "uncertainties": {"transom.top_height_mm": 50},
        }
    )  # fmt: skip
    assert form.methods["transom.rake_deg"] == "phone_level"
    assert repr("transom.rake_deg") in refused({"methods": {"transom.rake": "tape"}})["methods"]
    assert repr("transom.top_height_mm") in refused({"uncertainties": {"transom.top_heigth_mm": 5}})["uncertainties"]
    assert set(refused({"methods": {"transom.rake_deg": "eye"}})) == {"methods.transom.rake_deg"}
    assert set(refused({"uncertainties": {"transom.rake_deg": -2}})) == {"uncertainties.transom.rake_deg"}


# --- quantities as people write them ----------------------------------------------------------------------


@pytest.mark.parametrize(
    ("path", "written", "meant"),
    [
        # foot = 304.8 mm and inch = 25.4 mm exactly; pound = 0.45359237 kg exactly (see tests/published/test_units)
        ("transom.top_height_mm", "4 ft 2 1/2 in", 1282.7),
        ("transom.top_height_mm", "1,27 m", 1270),
        ("transom.top_height_mm", "985", 985),
        ("transom.bottom_height_mm", "-3 cm", -30),
        ("transom.rake_deg", "18°", 18),
        ("boat.displacement_kg", "7.1 t", 7100),
        ("boat.displacement_kg", "16,000 lb", 7257.47792),
    ],
)
def test_a_string_with_a_unit_is_taken_where_a_number_is(path: str, written: str, meant: float) -> None:
    part, name = path.split(".")
    assert get(parse_form({part: {name: written}}), path) == pytest.approx(meant)


def test_zero_is_a_value_and_null_is_unknown() -> None:
    form = parse_form({"transom": {"rake_deg": 0, "camber_mm": None}})
    assert form.transom.rake_deg == 0
    assert form.document()["transom"] == {"rake_deg": 0}
    assert BoatForm().document() == {"schema": "boat-form/1"}


def test_open_ends_of_a_box() -> None:
    form = parse_form({"obstacles": [{"kind": "rail", "aft_mm": [None, "5 cm"], "height_mm": [None, None]}]})
    assert form.obstacles[0].aft_mm == (None, 50)
    assert form.obstacles[0].height_mm == (None, None)


# --- paths ------------------------------------------------------------------------------------------------


def test_paths_reach_every_field() -> None:
    assert {"transom.profile[].aft_mm", "obstacles[].swept_to.aft_mm", "schema", "enquiry.received"} <= set(paths())
    assert is_path("obstacles[12].size_mm.height")
    assert is_path("obstacles")
    assert not is_path("obstacles[0].colour")
    assert not is_path("obstacles[]]")
    assert not is_path("transom[0]")


def test_get() -> None:
    form = parse_form({"transom": {"rake_deg": 3}, "obstacles": [{"kind": "stay", "aft_mm": [1, 2]}]})
    assert get(form, "transom.rake_deg") == 3
    assert get(form, "obstacles[0].aft_mm") == (1, 2)
    assert get(form, "obstacles[0].swept_to.aft_mm") is None
    assert get(form, "obstacles[1].kind") is None
    assert get(form, "transom.profile[0].aft_mm") is None
    assert get(form, "schema") == "boat-form/1"
    with pytest.raises(KeyError):
        get(form, "transom.rake")


def test_titles_are_words_and_measuring_is_told() -> None:
    assert title("transom.rake_deg") == "rake of the transom"
    assert title("obstacles[0].note") == "obstacles[0].note"
    told = how_to_measure("transom.rake_deg")
    assert told is not None
    assert "further aft" in told
    assert how_to_measure("transom.rake") is None


# --- round trip -------------------------------------------------------------------------------------------

LENGTH = st.one_of(st.none(), st.integers(-9000, 9000), st.floats(-9000, 9000, allow_nan=False))
SIZE = st.one_of(st.none(), st.integers(1, 9000))
SPAN = st.one_of(
    st.none(),
    st.tuples(LENGTH, LENGTH).map(lambda p: p if None in p else tuple(sorted(p))),  # type: ignore[type-var] # no None left
)
BOX = {"aft_mm": SPAN, "starboard_mm": SPAN, "height_mm": SPAN}
OBSTACLE = st.fixed_dictionaries(
    {"kind": st.sampled_from(OBSTACLE_KINDS), **BOX},
    optional={
        "removable": st.booleans(), "keep": st.booleans(), "present": st.booleans(), "note": st.text(max_size=20),
        "swept_to": st.fixed_dictionaries(BOX), "size_mm": st.fixed_dictionaries({"aft": SIZE}), "number": st.integers(1, 20),
    },
)  # fmt: skip
FORMS = st.fixed_dictionaries(
    {},
    optional={
        "boat": st.fixed_dictionaries({}, optional={"model": st.text(max_size=30), "stern": st.sampled_from(STERNS),
                                                   "year": st.integers(1850, 2100), "loa_mm": SIZE}),
        "transom": st.fixed_dictionaries({}, optional={
            "top_height_mm": SIZE, "rake_deg": st.floats(-80, 80), "camber_mm": LENGTH,
            "profile": st.lists(st.integers(0, 3000), min_size=2, max_size=6, unique=True).map(
                lambda b: [{"below_top_mm": at, "aft_mm": -at / 7} for at in sorted(b)])}),
        "obstacles": st.lists(OBSTACLE, max_size=3),
        "methods": st.dictionaries(st.sampled_from(["*", "transom.rake_deg", "obstacles[0]"]), st.sampled_from(METHODS)),
        "uncertainties": st.dictionaries(st.just("transom.rake_deg"), st.floats(0, 90)),
        "notes": st.text(max_size=50),
    },
)  # fmt: skip


@given(FORMS)
@settings(deadline=None, derandomize=True, max_examples=150)
def test_a_form_comes_back_from_its_document(document: dict[str, Any]) -> None:
    form = parse_form(document)
    again = parse_form(form.document())
    assert again.document() == form.document()
    assert BoatForm.model_validate_json(form.model_dump_json(by_alias=True)) == form
    for path in ("transom.rake_deg", "transom.profile", "boat.model", "methods", "notes"):
        assert get(again, path) == get(form, path)


@given(st.recursive(st.one_of(st.none(), st.booleans(), st.integers(), st.text(max_size=8)),
                    lambda inner: st.one_of(st.lists(inner, max_size=3), st.dictionaries(
                        st.one_of(st.text(max_size=6), st.sampled_from(["boat", "transom", "obstacles", "methods"])),
                        inner, max_size=3)), max_leaves=8))  # fmt: skip
@settings(deadline=None, derandomize=True, max_examples=150)
def test_whatever_comes_in_is_a_form_or_an_error_that_says_where(document: object) -> None:
    assert all(defect.field and defect.problem for defect in defects_of(document))


def defects_of(document: object) -> list[Defect]:
    try:
        parse_form(document)
    except FormError as error:
        return error.defects or [Defect("", "", "")]
    return []
