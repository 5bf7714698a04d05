"""Names come apart as a person in the trade would take them apart. Examples invented; common practice, no source."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from service.core.hulls import fold, parse_name
from service.core.hulls.beside import apart
from service.core.hulls.fold import bare_number


@pytest.mark.parametrize(
    "name",
    [
        "Corrin 31 Mk II", "CORRIN 31 MK.II", "Corrin31MkII", "corrin 31 mk2", "Corrin 31-II", "Corrin 31/2",
        "corrin 31-2", "Corrin 31 II", "Corrin 31 Mark 2", "Corrin 31 (Mk-2)", "Mk II Corrin 31", "Corrin 31 Series 2",
        "Corrin 31 2nd generation", "Corrin 31 second series", "Corrin 31 mark two", "Corrin 31 zweite Generation",
        "S/Y Corrin 31 mkII", "Corrin 31²", "⛵ Corrin\u200b31 Mk Ⅱ",
    ],
)  # fmt: skip
def test_every_way_of_writing_a_second_generation_is_one(name: str) -> None:
    parsed = parse_name(name)
    assert (parsed.words, parsed.number, parsed.generation, parsed.suffix) == (("corrin",), "31", 2, ())


@pytest.mark.parametrize(
    ("name", "number"),
    [
        ("Velmar 10.50", "10.5"), ("Velmar 10,50", "10.5"), ("Velmar 10,50 m", "10.5"), ("Velmar 105", "105"),
        ("Velmar 1,033", "1033"), ("Velmar 31 1/2", "31.5"), ("Velmar 31½", "31.5"), ("Velmar 31 ft", "31"),
        ("Velmar 31'", "31"), ("Velmar 31 (9.45 m)", "31"), ("Velmar ٣١", "31"), ("Velmar \uff13\uff11", "31"),
        ("Velmar 4.0", "4"), ("Velmar 40", "40"), ("Velmar 31 1979", "31"), ("1979 Velmar 31", "31"), ("Velmar", None),
    ],
)  # fmt: skip
def test_main_number_keeps_its_decimal(name: str, number: str | None) -> None:
    assert parse_name(name).number == number


@pytest.mark.parametrize(
    ("name", "suffix"),
    [
        ("Velmar 33 DS", "ds"), ("Velmar 33DS", "ds"), ("Velmar 33 Deck Saloon", "ds"), ("Velmar 36 CC", "cc"),
        ("Velmar 36 centre-cockpit", "cc"), ("Velmar 36 Center Cockpit", "cc"), ("Velmar 28 S", "s"),
        ("Velmar 28S", "s"), ("Velmar 42 Pilot House", "pilothouse"), ("Velmar 42 PH", "pilothouse"),
        ("Velmar 34 Spitzgatter", "spissgatter"), ("Velmar 39 Sport", "sport"), ("Velmar 33i", "i"),
    ],
)  # fmt: skip
def test_suffix_is_told_from_words(name: str, suffix: str) -> None:
    parsed = parse_name(name)
    assert (parsed.words, parsed.suffix, parsed.generation) == (("velmar",), (suffix,), None)


def test_year_beside_the_number_is_a_year() -> None:
    assert parse_name("Corrin 31 '79").year == 1979
    assert parse_name("Corrin 31 (2004)").year == 2004
    assert parse_name("Corrin 1990").number == "1990"  # alone, it is the model's number


@pytest.mark.parametrize(
    "beside",
    [
        "GBR 1234",
        "NED-7890",
        "swe 345",
        "sail no. GBR 1234L",
        "hull no 45",
        "Hull #45",
        "#45",
        "Baunr. 7",
        "no. 123",
        "№ 7",
    ],
)
def test_sail_and_hull_numbers_are_no_part_of_the_name(beside: str) -> None:
    parsed = parse_name(f"Corrin 31 Mk II {beside}")
    assert (parsed.words, parsed.number, parsed.generation) == (("corrin",), "31", 2)
    assert (parsed.suffix, parsed.others) == ((), ())


def test_a_letter_with_its_digit_is_a_variant_and_cabins_are_nothing() -> None:
    for name in ("Corrin 36 R2", "Corrin 36R2", "Corrin 36 R 2"):
        assert (parse_name(name).suffix, parse_name(name).others) == (("r2",), ())
    assert parse_name("Corrin 36, 3 cabins").key == parse_name("Corrin 36").key


def test_a_number_that_is_all_there_is_stays_the_models() -> None:
    assert parse_name("Corrin no 31").number == "31"
    assert parse_name("NED 31").number == "31"


@pytest.mark.parametrize("name", ["G.S. 37", "G S 37", "GS-37", "G. & S. 37"])
def test_letters_alone_side_by_side_are_initials(name: str) -> None:
    assert (parse_name(name).words, parse_name(name).number) == (("gs",), "37")


@pytest.mark.parametrize(
    ("text", "names"),
    [
        ("Corrin 31 / 34", ("Corrin 31", "Corrin 34")), ("Corrin 31/34", ("Corrin 31", "Corrin 34")),
        ("Corrin 31 or Skarvik 28", ("Corrin 31", "Skarvik 28")), ("Corrin 31; 34", ("Corrin 31", "Corrin 34")),
        ("Velmar 10.50 oder 105", ("Velmar 10.50", "Velmar 105")),
        ("Corrin 31/2", ()), ("C/31", ()), ("Corrin 31, 1979", ()), ("Corrin 31 / 9.45 m", ()), ("Corrin 31", ()),
        ("Corrin/Osmund 31", ()), ("31/34", ("31", "34")),
    ],
)  # fmt: skip
def test_two_models_in_one_text_are_told_apart(text: str, names: tuple[str, ...]) -> None:
    assert apart(text) == names


def test_builder_words_are_set_apart() -> None:
    assert parse_name("Havlund Båt 33").builder == ("bat",)
    assert parse_name("Havlund Corrin 31", {"havlund"}).builder == ("havlund",)


def test_fold_takes_diacritics_ligatures_and_marks() -> None:
    assert fold("Œuvre-d'Ål  Łódź ÆRØ") == "oeuvre dal lodz aero"


@settings(deadline=None, derandomize=True, max_examples=300)
@given(st.text(max_size=120))
def test_folding_again_changes_nothing_and_nothing_crashes(text: str) -> None:
    once = fold(text)
    assert fold(once) == once
    assert once == once.strip()
    parse_name(text)


@settings(deadline=None, derandomize=True)
@given(st.integers(0, 99999), st.integers(0, 999))
def test_bare_number_keeps_the_value(whole: int, part: int) -> None:
    text = f"0{whole}.{part:03d}0"
    assert float(bare_number(text)) == float(text)
