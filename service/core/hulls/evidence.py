"""What speaks for and against one model, each with its weight and its reason in words."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from service.core.hulls import weigh
from service.core.hulls.parse import ParsedName
from service.core.hulls.shapes import About, Evidence
from service.core.hulls.surface import Surface
from service.core.hulls.vocabulary import KEPT_HULL, NUMERALS, YARD
from service.core.hulls.weigh import on
from service.core.hulls.words import Words, compare_words

_FEET_OFF = 1.0
_METRES_OFF = 0.1


@dataclass(frozen=True, slots=True)
class Asked:
    """A name as asked for, with what was said beside it. Lengths in mm."""

    name: ParsedName
    builder: tuple[str, ...]
    folded: frozenset[str]
    year: int | None
    loa_mm: float | None
    beam_mm: float | None
    one_of_two: bool = False  # the text named another model too


# pydantic shapes are made only for what is shown; scoring a hundred surfaces needs the light form
@dataclass(frozen=True, slots=True)
class Sign:
    about: About
    score: float
    why: str

    def shown(self) -> Evidence:
        """Return it in the published shape."""
        return Evidence(about=self.about, score=round(self.score, 3), why=self.why)


def weigh_up(asked: Asked, surface: Surface) -> tuple[Sign, ...]:
    """Return all that is seen of a model written as `surface`."""
    if surface.alias is not None and surface.alias in asked.folded:
        named: Iterator[Sign] = iter((Sign("alias", weigh.ALIAS, f"{surface.alias!r} is a known way to write it"),))
    else:
        named = _named(asked, surface)
    beside = (Sign("words", weigh.TWO_NAMES, "the text names another model too"),) if asked.one_of_two else ()
    return (*named, *beside, *_measured(asked, surface))


def _named(asked: Asked, surface: Surface) -> Iterator[Sign]:
    compared = compare_words(asked.name, asked.builder, surface)
    yield _number(asked.name, surface)
    yield _words(compared, surface)
    yield _generation(asked.name, surface.name)
    yield from _suffix(compared)
    yield from _builder(asked, compared, surface)


def _number(name: ParsedName, model: Surface) -> Sign:
    ours, theirs = name.number, model.name.number
    if ours is None or theirs is None or _marks_only(name, model.name):
        return _number_missing(name, model)
    if ours == theirs:
        if name.others != model.name.others:
            return Sign("number", weigh.OTHERS_DIFFER, f"the number {name.written} agrees, further numbers differ")
        return Sign("number", weigh.NUMBER_SAME, f"the number {name.written} agrees")
    if name.pointed != model.name.pointed and name.digits & model.name.digits:
        score = weigh.NUMBER_POINT if name.plain == model.name.plain else weigh.NUMBER_POINT_MOVED
        return Sign("number", score, f"{name.written} could be {model.name.written} with its point elsewhere")
    return Sign("number", weigh.VETO, f"the number is {model.name.written}, not {name.written}")


def _marks_only(name: ParsedName, model: ParsedName) -> bool:
    """Say whether the one's generation stands beside the other's number: "Corrin II" and "Corrin 31 Mk II"."""
    number = model.number if name.marked else name.number
    return name.marked != model.marked and number not in NUMERALS


def _number_missing(name: ParsedName, model: Surface) -> Sign:
    """Weigh a number that only one has; a generation that stands for a number is none beside a real one."""
    theirs = model.name
    if name.number is None and theirs.number is None:
        return Sign("number", weigh.NUMBER_NONE, "neither has a number")
    if name.number is None or (name.marked and theirs.number is not None):
        return Sign("number", weigh.NUMBER_UNSAID, f"the number {theirs.written} is not said")
    if _is_length(float(name.number), model.loa_mm):
        return Sign("number", weigh.NUMBER_IS_LENGTH, f"the model has no number, and {name.written} is its length")
    return Sign("number", weigh.NUMBER_EXTRA, f"the model has no number, the name says {name.written}")


def _is_length(number: float, loa_mm: float | None) -> bool:
    """Say whether a number is a length in feet, whole as they are said, or in metres."""
    if loa_mm is None:
        return False
    return abs(number - loa_mm / 304.8) < _FEET_OFF or abs(number - loa_mm / 1000) < _METRES_OFF


def _words(compared: Words, surface: Surface) -> Sign:
    target = " ".join(surface.name.words or surface.yard)
    if compared.unsaid and compared.builder_seen and not compared.stray:
        return Sign("words", weigh.WORDS_UNSAID, f"of its name {target!r} nothing is said")
    likely = on(weigh.WORDS, compared.likeness)
    if compared.likeness >= 1:
        why = f"{target!r} agrees"
    elif compared.partly and not compared.stray:
        likely = max(likely, weigh.WORDS_PARTLY)
        why = f"of its name {target!r} only a part is said"
    elif compared.inexact and compared.likeness >= weigh.WORD_ALIKE:
        why = ", ".join(f"{ours!r} is close to {theirs!r}" for ours, theirs in compared.inexact)
    else:
        why = f"the words are not {target!r}"
    for score, words in (
        (weigh.STRAY_WORD, compared.stray),
        (weigh.STRAY_TRIM, compared.trim),
        (weigh.STRAY_KEPT, compared.kept),
    ):
        likely += score * min(len(words), weigh.STRAY_MOST)
    likely = max(likely, on(weigh.WORDS, 0.0) + weigh.STRAY_WORD * weigh.STRAY_MOST)
    if over := (*compared.stray, *compared.trim, *compared.kept):
        why += f", leaving {' '.join(over)!r} unexplained"
    return Sign("words", likely, why)


def _generation(name: ParsedName, model: ParsedName) -> Sign:
    apart = _marks_only(name, model)
    ours = int(name.number or 0) if apart and name.marked else name.generation
    theirs = int(model.number or 0) if apart and model.marked else model.generation
    if ours == theirs:
        if ours is None:
            return Sign("generation", weigh.GENERATION_NONE, "neither has a generation")
        return Sign("generation", weigh.GENERATION_SAME, f"generation {ours} agrees")
    if ours is None:
        score = weigh.FIRST_UNSAID if theirs == 1 else weigh.GENERATION_UNSAID
        return Sign("generation", score, f"generation {theirs} is not said")
    if theirs is None:
        score = weigh.FIRST_UNSAID if ours == 1 else weigh.GENERATION_EXTRA
        return Sign("generation", score, f"the model has no generation, the name says {ours}")
    return Sign("generation", weigh.GENERATION_DIFFERS, f"it is generation {theirs}, not {ours}")


def _suffix(compared: Words) -> Iterator[Sign]:
    kept = tuple(w for w in compared.suffix_unsaid if w in KEPT_HULL)
    unsaid = tuple(w for w in compared.suffix_unsaid if w not in KEPT_HULL)
    for score, words, what in (
        (weigh.SUFFIX_SAME, compared.suffix_same, "agrees"),
        (weigh.SUFFIX_SHORT, compared.suffix_short, "is said by its first letters"),
        (weigh.SUFFIX_UNSAID, unsaid, "is not said"),
        (weigh.SUFFIX_KEPT_UNSAID, kept, "is not said"),
    ):
        if words:
            yield Sign("suffix", score * min(len(words), weigh.SUFFIX_MOST), f"{' '.join(words)!r} {what}")


def _builder(asked: Asked, compared: Words, surface: Surface) -> Iterator[Sign]:
    if compared.builder_seen:
        doubt = weigh.WORDS[-1][1] - on(weigh.WORDS, compared.likeness)
        score = min(max(doubt, weigh.BUILDER_LEAST), weigh.BUILDER_SAME)
        yield Sign("builder", score, f"the builder agrees ({' '.join(compared.builder_seen)})")
    elif not compared.brand_seen and any(word not in YARD for word in asked.builder) and surface.yard:
        said, theirs = " ".join(asked.builder), " ".join(surface.yard)
        yield Sign("builder", weigh.BUILDER_DIFFERS, f"the builder is {theirs}, not {said}")


def _measured(asked: Asked, model: Surface) -> Iterator[Sign]:
    if asked.loa_mm and model.loa_mm:
        yield _size("length", "length", weigh.LENGTH, asked.loa_mm, model.loa_mm)
    if asked.beam_mm and model.beam_mm:
        yield _size("beam", "beam", weigh.BEAM, asked.beam_mm, model.beam_mm)
    if asked.year is not None:
        yield from _year(asked.year, model)


def _size(about: About, what: str, curve: weigh.Curve, ours: float, theirs: float) -> Sign:
    off = abs(math.log(ours / theirs))
    score = on(curve, off)
    said = f"{what} {ours / 1000:.2f} m"
    return Sign(about, score, f"{said} {'agrees with' if score > 0 else 'is not'} {theirs / 1000:.2f} m")


def _year(year: int, model: Surface) -> Iterator[Sign]:
    first, last = model.first_year or model.name.year, model.last_year
    if first is None and last is None:
        return
    built = years(first, last)
    if first is not None and year < first:
        yield Sign("year", on(weigh.YEAR_BEFORE, first - year), f"{year} is before it was built ({built})")
    elif last is not None and year > last:
        yield Sign("year", on(weigh.YEAR_AFTER, year - last), f"{year} is after it was built ({built})")
    else:
        yield Sign("year", weigh.YEAR_INSIDE, f"{year} lies in the years it was built ({built})")


def years(first: float | None, last: float | None) -> str:
    """Return the years of building as people write them."""
    return "-".join("…" if year is None else f"{year:.0f}" for year in (first, last))
