"""Tokens -> quantities: numbers with fractions, units, and what people write in two parts (5 ft 2 1/2 in, 1 m 05)."""

from __future__ import annotations

from dataclasses import dataclass

from service.core.units.lexicon import (
    AFTER_PREPOSITION_IN,
    AND,
    CM,
    COUNTED,
    DEGREE,
    FOOT,
    INCH,
    INCH_MM,
    KG,
    METRE,
    MM,
    PHRASES,
    PLAUSIBLE,
    RADIANS,
    TON,
    TONNE,
    UNITS,
    Unit,
)
from service.core.units.numbers import Number, Tokens, gap, number_at, spoken_number, text_at

INCHES_A_FOOT = 12
MINUTES = 60.0
CM_DIGITS = 2


@dataclass(frozen=True)
class Hit:
    """A quantity in tokens [start, end): readings in SI, the unit; `problem` where there is no single good reading."""

    readings: tuple[float, ...]
    unit: Unit
    start: int
    end: int
    problem: str | None = None
    note: str | None = None


def unit_at(tokens: Tokens, at: int) -> tuple[Unit, int] | None:
    """Return the unit at token `at` and where it ends; None for areas, volumes, rates and words that are no unit."""
    if at >= len(tokens) or tokens[at].closes:
        return None
    if text_at(tokens, at) == "-" and gap(tokens, at) == 0 == gap(tokens, at + 1) and tokens[at + 1].kind == "word":
        at += 1
    for width in (3, 2):
        phrase = PHRASES.get(tuple(token.text for token in tokens[at : at + width]))
        if phrase is not None:
            return phrase, at + width
    unit = UNITS.get(tokens[at].text)
    if unit is None or _raised(tokens, at) or _preposition(tokens, at):
        return None
    word = tokens[at].kind == "word"
    if word and gap(tokens, at) > 0 and gap(tokens, at + 1) == 0 and tokens[at + 1].kind == "num":
        return None  # "4 M10 bolts": the letter belongs to what follows
    apostrophe = tokens[at].text == "'" and gap(tokens, at + 1) == 0 and tokens[at + 1].kind == "word"
    return None if apostrophe else (unit, at + 1)


def _raised(tokens: Tokens, at: int) -> bool:
    if gap(tokens, at + 1) != 0 or tokens[at].kind != "word":
        return False
    follows = text_at(tokens, at + 1)
    if follows == "/":
        return at + 2 < len(tokens) and tokens[at + 2].kind == "word"
    raised = follows in ("2", "3") and not (gap(tokens, at + 2) == 0 and text_at(tokens, at + 2) in (".", ","))
    return follows in ("²", "³", "^") or raised


def _preposition(tokens: Tokens, at: int) -> bool:
    if tokens[at].text != "in" or at + 1 >= len(tokens) or gap(tokens, at) == 0:
        return False
    follows = tokens[at + 1]
    year = follows.digits and len(follows.text) == 4  # noqa: PLR2004 - "in 1984"
    counted = tokens[at - 1].digits and len(tokens[at - 1].text) == 4  # noqa: PLR2004 - "1984 in Kiel", wrapped or not
    name = follows.capital and (counted or not follows.first)
    return gap(tokens, at + 1) > 0 and (follows.text in AFTER_PREPOSITION_IN or name or year)


def hit_at(tokens: Tokens, at: int, *, loose_sign: bool = False) -> Hit | None:
    """Return the quantity that starts at token `at`, None where a number and a unit do not meet."""
    negative, start = False, at
    if text_at(tokens, at) in ("-", "+"):
        joined = gap(tokens, at + 1) == 0 and (at == 0 or gap(tokens, at) > 0 or tokens[at - 1].text in "([=:")
        if not (joined or (loose_sign and at == 0)):
            return None
        negative, start = tokens[at].text == "-", at + 1
    number = number_at(tokens, start)
    if number is None:
        return None
    if text_at(tokens, number.end) in RADIANS:
        return Hit((), DEGREE, at, number.end + 1, "radians are not read; write degrees")
    unit = unit_at(tokens, number.end)
    if unit is None or not _same_line(tokens, number.end):
        return None
    hit = _compound(tokens, at, number, *unit)
    if hit is not None and negative:
        hit = Hit(tuple(0.0 - v for v in hit.readings), hit.unit, hit.start, hit.end, hit.problem, hit.note)
    return hit


def _same_line(tokens: Tokens, at: int) -> bool:
    """Say whether the unit stands near enough: a letter on the number's line, a word on the next at the latest."""
    short = len(tokens[at].text) == 1
    return gap(tokens, at) <= (1 if short else 3) and not (short and tokens[at].first)


def _compound(tokens: Tokens, at: int, number: Number, unit: Unit, end: int) -> Hit | None:
    if unit is FOOT:
        return _feet(tokens, at, number, end)
    if unit is METRE:
        return _metres(tokens, at, number, end)
    if unit is DEGREE:
        return _degrees(tokens, at, number, end)
    if unit in (TONNE, TON):
        return _tonnes(tokens, at, number, unit, end)
    return single(at, number, unit, end)


def single(at: int, number: Number, unit: Unit, end: int) -> Hit:
    """Return number times unit; where the digits have two readings, the plausible ones."""
    readings = tuple(value * unit.factor for value in number.values)
    if len(readings) > 1:
        if unit.dimension == "mass" and unit.factor <= 1:
            readings = readings[1:]  # grams of a boat's displacement are never written
        elif unit.dimension in ("angle", "speed") or readings[1] > PLAUSIBLE[unit.dimension]:
            readings = readings[:1]
    problem = None
    if len(readings) > 1:
        both = " or ".join(f"{value:g} {unit.symbol}" for value in number.values)
        problem = f"the separator may mark thousands or decimals: {both}; write it without thousands separator"
    return Hit(readings, unit, at, end, problem, unit.note)


def _feet(tokens: Tokens, at: int, number: Number, end: int) -> Hit:
    joint = end
    word = text_at(tokens, end - 1) != "'"
    if text_at(tokens, joint) in ("-", ",", "and") and number_at(tokens, joint + 1) and gap(tokens, joint + 1) <= 1:
        joint += 1
    inches = number_at(tokens, joint)
    spoken = joint < len(tokens) and tokens[joint].kind == "word"
    if spoken and tokens[end - 2].kind == "word":
        return _feet_in_words(tokens, at, number, end)
    if inches is None or spoken or gap(tokens, joint) > 2:  # noqa: PLR2004 - a table's next column stands further off
        return single(at, number, FOOT, end)
    unit = unit_at(tokens, inches.end)
    marked = unit is not None and unit[0] is INCH
    if not marked and (joint > end or unit is not None or _counts(tokens, inches.end)):
        return single(at, number, FOOT, end)
    whole = len(number.values) == 1 and number.values[0].is_integer() and len(inches.values) == 1
    if not whole or inches.values[0] >= INCHES_A_FOOT:
        why = "feet must be whole and inches less than 12 where both are written; write one of them alone"
        return Hit((), FOOT, at, unit[1] if marked and unit else inches.end, why)
    value = number.values[0] * FOOT.factor + inches.values[0] * INCH_MM
    if not marked and word and _word_follows(tokens, inches.end):
        alone = number.values[0] * FOOT.factor
        return Hit((value, alone), FOOT, at, end, "the number after the feet has no unit; write it with in")
    return Hit((value,), FOOT, at, unit[1] if marked and unit else inches.end)


def _feet_in_words(tokens: Tokens, at: int, number: Number, end: int) -> Hit:
    """Three foot six and a half: inches in words, a lone "one" excepted (two feet one side)."""
    inches = spoken_number(tokens, end)
    if inches is None or text_at(tokens, end) in ("one", "a", "an", "half") or inches.values[0] >= INCHES_A_FOOT:
        return single(at, number, FOOT, end)
    stop = inches.end + (text_at(tokens, inches.end) in ("inches", "inch"))
    return Hit((number.values[0] * FOOT.factor + inches.values[0] * INCH_MM,), FOOT, at, stop)


def _counts(tokens: Tokens, at: int) -> bool:
    return text_at(tokens, at) in COUNTED


def _word_follows(tokens: Tokens, at: int) -> bool:
    return at < len(tokens) and tokens[at].kind == "word" and gap(tokens, at) == 1


def _metres(tokens: Tokens, at: int, number: Number, end: int) -> Hit:  # noqa: PLR0911 - one for each way of writing
    written = tokens[end - 1].kind == "word" and len(tokens[end - 1].text) > 1
    joint = end + (written and text_at(tokens, end) in AND and gap(tokens, end + 1) == 1)  # "un metro e 15"
    rest = number_at(tokens, joint) if gap(tokens, end) <= 1 and tokens[end].kind != "word" else None
    if joint > end:
        rest = number_at(tokens, joint)
        rest = rest if rest is not None and rest.digits is not None and len(rest.digits) == CM_DIGITS else None
    whole = len(number.values) == 1 and number.values[0].is_integer()
    if rest is None or not whole or len(rest.values) > 1:
        return single(at, number, METRE, end)
    unit = unit_at(tokens, rest.end)
    base = number.values[0] * METRE.factor
    if unit is not None:
        small = unit[0] in (CM, MM) and rest.values[0] * unit[0].factor < METRE.factor
        if small:
            return Hit((base + rest.values[0] * unit[0].factor,), METRE, at, unit[1])
        return single(at, number, METRE, end)
    digits = rest.digits
    if digits is None or (gap(tokens, end) > 0 and _counts(tokens, rest.end)):
        return single(at, number, METRE, end)
    if len(digits) == CM_DIGITS:
        return Hit((base + rest.values[0] * CM.factor,), METRE, at, rest.end)
    if len(digits) == 1 and gap(tokens, end) == 0:
        two = (base + rest.values[0] * CM.factor, base + rest.values[0] * CM.factor * 10)
        return Hit(two, METRE, at, rest.end, "one digit after m may be cm or tenths; write it with a decimal point")
    return single(at, number, METRE, end)


def _degrees(tokens: Tokens, at: int, number: Number, end: int) -> Hit | None:
    follows = tokens[end] if end < len(tokens) else None
    if follows and follows.kind == "word" and follows.text in ("c", "f", "celsius", "fahrenheit", "n", "s", "e", "w"):
        return None  # a temperature or a position
    minutes = number_at(tokens, end) if gap(tokens, end) <= 1 and text_at(tokens, end - 1) == "°" else None
    if minutes is None or len(number.values) > 1:
        return single(at, number, DEGREE, end)
    stop = minutes.end
    marked = text_at(tokens, stop) == "'" and gap(tokens, stop) == 0
    bare = gap(tokens, end) == 0 and minutes.digits is not None and len(minutes.digits) == CM_DIGITS
    if not (marked or (bare and not _units_follow(tokens, stop))):
        return single(at, number, DEGREE, end)
    if minutes.values[0] >= MINUTES or not number.values[0].is_integer():
        return Hit(
            (), DEGREE, at, stop + marked, "minutes must be less than 60 and degrees whole; write 12.5° or 12°30'"
        )
    value = number.values[0] + minutes.values[0] / MINUTES
    return _seconds(tokens, at, value, stop + marked) if marked else Hit((value,), DEGREE, at, stop)


def _units_follow(tokens: Tokens, at: int) -> bool:
    return unit_at(tokens, at) is not None


def _seconds(tokens: Tokens, at: int, value: float, end: int) -> Hit | None:
    seconds = number_at(tokens, end) if gap(tokens, end) <= 1 else None
    if seconds and text_at(tokens, seconds.end) == '"' and seconds.values[0] < MINUTES:
        value, end = value + seconds.values[0] / MINUTES**2, seconds.end + 1
    if text_at(tokens, end) in ("n", "s", "e", "w"):
        return None
    return Hit((value,), DEGREE, at, end)


def _tonnes(tokens: Tokens, at: int, number: Number, unit: Unit, end: int) -> Hit:
    hit = single(at, number, unit, end)
    rest = number_at(tokens, end) if gap(tokens, end) <= 1 else None
    follows = unit_at(tokens, rest.end) if rest else None
    if rest and follows and follows[0] is KG and rest.values[-1] < TONNE.factor and len(hit.readings) == 1:
        return Hit((hit.readings[0] + rest.values[-1],), unit, at, follows[1], None, unit.note)
    return hit
