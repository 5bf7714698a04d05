# ruff: noqa: RUF001 - the marks people write are what is tested
"""Quantities as people write them. Expected values: arithmetic by hand from exact definitions (see published/)."""

from __future__ import annotations

import time

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from service.core.units import Dimension, Quantity, Unread, format_angle, format_length, format_mass, parse, scan

INCH = 25.4
MESSY = st.text(alphabet="0123456789 .,'\"/-°½¼−′″mcftinkglbdeg\n", max_size=60)


def si(text: str, dimension: Dimension, assumed: str | None = None) -> float:
    got = parse(text, dimension, assumed=assumed)
    assert isinstance(got, Quantity), got
    assert got.dimension == dimension
    return got.value


@pytest.mark.parametrize(
    ("text", "inches"),
    [
        ("5'2\"", 62), ("5 ft 2 1/2 in", 62.5), ("5' 2½\"", 62.5), ('62"', 62), ("62 in", 62), ("62 in.", 62),
        ("4′ 3½″", 51.5), ("6’ 2½”", 74.5), ("6‘ 2½“", 74.5), ("1¼″", 1.25), ("5.2 ft", 62.4), ('23 5/8"', 23.625),
        ("7 1/2 in", 7.5), ("2-1/2 in", 2.5), ("7 ft 6 in", 90), ("7 ft 6", 90), ("12'6", 150), ("5'-2\"", 62),
        ("5 feet, 2 inches", 62), ("5 ft and 2 in", 62), ("31-foot", 372), ("½ in", 0.5), ("5''", 5), ("3 Zoll", 3),
        ("-4'2\"", -50), ("−4 ft 2 in", -50),
    ],
)  # fmt: skip
def test_feet_and_inches(text: str, inches: float) -> None:
    assert si(text, "length") == pytest.approx(inches * INCH, abs=1e-6)


@pytest.mark.parametrize(
    ("text", "mm"),
    [
        ("1,27 m", 1270), ("127 cm", 1270), ("1.270 m", 1270), ("1,270 m", 1270), ("2,35 m", 2350), ("1 m 05", 1050),
        ("1m04", 1040), ("1 m 20 cm", 1200), ("1 270 mm", 1270), ("0.270 mm", 0.27), (".5 m", 500), ("–0,5 m", -500),
        ("- 5 cm", -50), ("12 mètres", 12000), ("1,5 Meter", 1500),
    ],
)  # fmt: skip
def test_metric_lengths(text: str, mm: float) -> None:
    assert si(text, "length") == pytest.approx(mm, abs=1e-6)


@pytest.mark.parametrize(
    ("text", "dimension", "value"),
    [
        ("18°", "angle", 18), ("18 deg", "angle", 18), ("12°30'", "angle", 12.5), ("12°30", "angle", 12.5),
        ("12° 30' 36\"", "angle", 12.51), ("−12°", "angle", -12), ("12,5 Grad", "angle", 12.5),
        ("7.2 t", "mass", 7200), ("7 tonnes", "mass", 7000), ("7.000 kg", "mass", 7000), ("7,250 t", "mass", 7250),
        ("7'200 kg", "mass", 7200), ("7 t 500 kg", "mass", 7500), ("16,000 lb", "mass", 16000 * 0.45359237),
        ("2 long tons", "mass", 2 * 2240 * 0.45359237), ("2 short tons", "mass", 2 * 2000 * 0.45359237),
        ("3 m/s", "speed", 3), ("9 knots", "speed", 4.63), ("36 km/h", "speed", 10), ("10 mph", "speed", 4.4704),
    ],
)  # fmt: skip
def test_angles_masses_speeds(text: str, dimension: Dimension, value: float) -> None:
    assert si(text, dimension) == pytest.approx(value, abs=1e-6)


def test_tons_are_metric_and_say_so() -> None:
    got = parse("7.5 tons", "mass")
    assert isinstance(got, Quantity)
    assert got.value == 7500
    assert "metric" in (got.note or "")


@pytest.mark.parametrize(
    ("text", "dimension", "readings"),
    [
        ("1.270 mm", "length", (1.27, 1270)), ("1,270 mm", "length", (1.27, 1270)), ("1m5", "length", (1050, 1500)),
        ("1.250 cm", "length", (12.5, 12500)),
    ],
)  # fmt: skip
def test_two_plausible_readings_are_both_given(text: str, dimension: Dimension, readings: tuple[float, ...]) -> None:
    got = parse(text, dimension)
    assert isinstance(got, Unread)
    assert got.reason == "ambiguous"
    assert got.readings == pytest.approx(readings)
    assert "write" in got.why


def test_a_bare_number_has_the_assumed_unit_or_none() -> None:
    assert si("1270", "length", assumed="mm") == 1270
    assert si("-12", "angle", assumed="deg") == -12
    got = parse("1270", "length")
    assert isinstance(got, Unread)
    assert got.reason == "ambiguous"
    assert {1270, 12700} <= set(got.readings)
    with pytest.raises(ValueError, match="no unit of mass"):
        parse("12", "mass", assumed="mm")


@pytest.mark.parametrize(
    "text",
    ["", "about 5 mm", "5 ft 14 in", "5.2 ft 3 in", "34 m2", "34 m²", "3 kg/m", "5 kg", "12.3.2024 m", "1/0 in", "m",
     "3 m 4 m", "9" * 400 + " m", "12,34,56 mm", "five", "1/2/3 in"],
)  # fmt: skip
def test_unreadable_says_how_to_mend_it(text: str) -> None:
    got = parse(text, "length")
    assert isinstance(got, Unread)
    assert got.reason == "unreadable"
    assert "write" in got.why


@pytest.mark.parametrize("text", ["0.3 rad", "12 °C", "50°12'N", "12°75'"])
def test_what_is_no_angle(text: str) -> None:
    assert isinstance(parse(text, "angle"), Unread)


def test_scan_finds_quantities_where_they_stand() -> None:
    text = "Beam 2,87 m, the edge is 3' 6 1/2\" up, 18° aft; she weighs\n16,100 lb. Built 1984 in Kiel, hull 87."
    got = [(text[f.start : f.end], f.read.value) for f in scan(text) if isinstance(f.read, Quantity)]
    assert got == [
        ("2,87 m", 2870),
        ("3' 6 1/2\"", pytest.approx(42.5 * INCH)),
        ("18°", 18),
        ("16,100 lb", pytest.approx(16100 * 0.45359237)),
    ]


@pytest.mark.parametrize(
    ("text", "ends"),
    [
        ("from 35 to 75 cm off", (350, 750)), ("25-60 cm från", (250, 600)), ("20 – 30 cm", (200, 300)),
        ("between 12 and 22 inches", (12 * INCH, 22 * INCH)), ("von 10 bis 40 cm", (100, 400)),
    ],
)  # fmt: skip
def test_scan_gives_a_range_both_ends(text: str, ends: tuple[float, float]) -> None:
    got = scan(text)
    assert [f.shared for f in got] == [True, False]
    assert [f.read.value for f in got if isinstance(f.read, Quantity)] == pytest.approx(ends)


@pytest.mark.parametrize(
    "text",
    ["the 'Corsa 31' is", 'the "Corsa 36" and', "Corsa 31's", "+44 1632 960 118\nM 07700", "4 M10 bolts",
     "34 m2 of sail", "at 50°12'N", "built 1984 in the yard", "6 in the cockpit",
     "12.04.2026", "192.0.2.11 m", "A31m", "18°C"],
)  # fmt: skip
def test_scan_leaves_what_is_no_quantity(text: str) -> None:
    assert scan(text) == []


def test_a_number_that_may_or_may_not_belong_is_ambiguous() -> None:
    (found,) = scan("she is 5 ft 4 and complains")
    assert isinstance(found.read, Unread)
    assert found.read.readings == pytest.approx((64 * INCH, 60 * INCH))


@settings(deadline=None, derandomize=True, max_examples=300)
@given(st.floats(-59_000, 59_000), st.sampled_from([8, 16]))
def test_lengths_come_back_within_the_format(mm: float, fraction: int) -> None:
    assert si(format_length(mm), "length") == pytest.approx(mm, abs=0.5 + 1e-6)
    assert si(format_length(mm, decimals=1), "length") == pytest.approx(mm, abs=0.05 + 1e-6)
    imperial = format_length(mm, "imperial", inch_fraction=fraction)
    assert si(imperial, "length") == pytest.approx(mm, abs=INCH / fraction / 2 + 1e-6)
    assert format_length(mm, "both", inch_fraction=fraction) == f"{format_length(mm)} ({imperial})"


@settings(deadline=None, derandomize=True, max_examples=300)
@given(st.floats(-80, 80), st.floats(1, 400_000))
def test_angles_and_masses_come_back_within_the_format(deg: float, kg: float) -> None:
    assert si(format_angle(deg), "angle") == pytest.approx(deg, abs=0.05 + 1e-9)
    assert si(format_mass(kg), "mass") == pytest.approx(kg, abs=0.5 + 1e-6)
    assert si(format_mass(kg, "imperial"), "mass") == pytest.approx(kg, abs=0.45359237 / 2 + 1e-6)


@settings(deadline=None, derandomize=True, max_examples=300)
@given(st.integers(0, 150), st.integers(0, 11), st.integers(0, 15), st.sampled_from(["'", " ft ", "′", " feet "]))
def test_written_feet_and_inches_come_back(feet: int, inches: int, part: int, mark: str) -> None:
    text = f"{feet}{mark}{inches} {part}/16 in" if part else f"{feet}{mark}{inches} in"
    assert si(text, "length") == pytest.approx((feet * 12 + inches + part / 16) * INCH, abs=1e-6)


@settings(deadline=None, derandomize=True, max_examples=500)
@given(st.one_of(st.text(max_size=80), MESSY), st.sampled_from(["length", "angle", "mass", "speed"]))
def test_never_raises_on_any_text(text: str, dimension: Dimension) -> None:
    got = parse(text, dimension)
    assert isinstance(got, Quantity) or "write" in got.why or "number is too large" in got.why
    ends = 0
    for found in scan(text):
        assert ends <= found.start < found.end <= len(text)
        ends = found.end


@pytest.mark.parametrize("piece", ["1 ", "1", "5' ", "1/2 ", "- ", "1.", "2 1/2 ft ", '"a', "1 to ", "1'000"])
def test_time_grows_with_length_only(piece: str) -> None:
    def seconds(times: int) -> float:
        start = time.perf_counter()
        scan(piece * times)
        return time.perf_counter() - start

    small = min(seconds(2_000) for _ in range(5))
    # Ten times the text in at most thirty times the time: a quadratic reader would take a hundred.
    assert min(seconds(20_000) for _ in range(3)) <= 30 * small + 0.05


def test_writers_for_people() -> None:
    assert format_length(1270) == "1270 mm"
    assert format_length(1270, "imperial") == "4 ft 2 in"
    assert format_length(0, "imperial") == "0 in"
    assert format_length(-0.2) == "0 mm"
    assert format_length(7.9375, "imperial", inch_fraction=16) == "5/16 in"
    with pytest.raises(ValueError, match="finite"):
        format_length(float("nan"))


@pytest.mark.parametrize(
    ("text", "values"),
    [
        ("seven and a half tons or so", [7500]), ("an inch thick", [INCH]), ("half an inch", [INCH / 2]),
        ("two foot nine", [33 * INCH]), ("three foot six and a half, that", [42.5 * INCH]), ("an inch and a half", []),
        ("a foot or two", []), ("two feet one side", [24 * INCH]), ("two brackets, a lady", []),
    ],
)  # fmt: skip
def test_scan_reads_numbers_in_words(text: str, values: list[float]) -> None:
    assert [f.read.value for f in scan(text) if isinstance(f.read, Quantity)] == pytest.approx(values)
