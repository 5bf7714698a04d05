"""How alike the words of two names are, and which of a name's words nothing explains."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

from rapidfuzz import fuzz
from rapidfuzz.distance import OSA

from service.core.hulls.parse import ParsedName
from service.core.hulls.sound import sound
from service.core.hulls.surface import Surface
from service.core.hulls.vocabulary import KEPT_HULL, RIGS, TRIM, YARD
from service.core.hulls.weigh import (
    ABBREVIATION,
    CUT_SHORT,
    FUZZY_FROM,
    INITIALS,
    LIGHTEST_WORD,
    SHORTEST_ABBREVIATION,
    SOUNDS_ALIKE,
    WORD_ALIKE,
    WORD_USABLE,
    YARD_FOR_INITIALS,
)

_REMEMBERED = 1 << 16


@dataclass(frozen=True, slots=True)
class Words:
    """What comparing words gave: likeness 0..1, and the lists that tell why."""

    likeness: float
    unsaid: bool  # no word of the name is one of the model's, well or badly spelt
    partly: bool  # some words of the model's are said just so, others not at all
    suffix_same: tuple[str, ...]
    suffix_short: tuple[str, ...]  # said by its first letter or letters
    suffix_unsaid: tuple[str, ...]
    stray: tuple[str, ...]
    trim: tuple[str, ...]  # words of a trim that the model is not called by
    kept: tuple[str, ...]  # words of keel, rig or rule, which leave the hull as it is
    builder_seen: tuple[str, ...]
    brand_seen: bool  # the builder said apart is a word of the model's own name: no second witness
    inexact: tuple[tuple[str, str], ...]  # (in the name, in the model) where they are not letter by letter the same


@lru_cache(_REMEMBERED)
def word_likeness(a: str, b: str) -> float:
    """Return 0..1 for a name's word and a model's: 1 for one word, less misspelt or cut short, near 0 for two words.

    >>> word_likeness("pelworth", "pellworth") > 0.9, word_likeness("tern", "kittar") < 0.5
    (True, True)
    >>> word_likeness("pell", "pellworth"), word_likeness("kristof", "christoph")
    (0.82, 0.93)
    """
    if a == b:
        return 1.0
    if b.startswith(a) and len(a) >= SHORTEST_ABBREVIATION:
        return ABBREVIATION if len(b) - len(a) >= SHORTEST_ABBREVIATION else max(CUT_SHORT, fuzz.ratio(a, b) / 100)
    if a.startswith(b) and len(b) >= FUZZY_FROM and a[len(b) :] in YARD:
        return ABBREVIATION
    if min(len(a), len(b)) < FUZZY_FROM - 1 or max(len(a), len(b)) < FUZZY_FROM:
        return 0.0
    written = max(fuzz.ratio(a, b) / 100 if len(a) >= FUZZY_FROM else 0.0, OSA.normalized_similarity(a, b))
    return max(written, SOUNDS_ALIKE) if sound(a) == sound(b) else written


def compare_words(name: ParsedName, extra: tuple[str, ...], surface: Surface) -> Words:
    """Compare a name's words (and `extra`, a builder said apart) with a model's words, suffix and yard."""
    pool = [*name.builder, *name.words, *name.suffix]
    same, short, unsaid = _take_suffix(pool, surface.name.suffix, name.suffix)
    target = tuple(w for w in surface.name.words if w not in YARD) or surface.name.words
    yard = [w for w in (*surface.yard, *surface.name.builder) if w not in target]
    own_yard = [w for w in yard if w not in YARD]
    named_by_yard = not target
    if named_by_yard:
        target = tuple(own_yard)
    covered, used, inexact, missing = _cover(pool, extra, target, any_will_do=named_by_yard)
    left = [w for i, w in enumerate(pool) if i not in used]
    seen = tuple(w for w in (*left, *extra) if _is_of(w, own_yard))
    stray = [w for w in left if not (_says_nothing(w, name.suffix) or _is_of(w, yard) or _again(w, target))]
    whole = _yard_for_initials(pool, own_yard, target)
    if set(target) <= set(surface.yard) and "".join(name.words) == "".join(surface.yard):
        whole = 1.0
    joined, over = _together([w for w in pool if w not in YARD], own_yard, target, yard), list[str]()
    if name.suffix and not joined:
        joined, over = _together(list(name.words), own_yard, target, yard), [w for w in stray if w in name.suffix]
    if max(joined, whole) > covered:
        covered, stray, missing = max(joined, whole), stray if whole > joined else over, False
        inexact = [(" ".join(name.words), " ".join(target))] if joined < 1 else []
    told = [w for w in stray if w not in KEPT_HULL and w not in RIGS]
    behind = name.suffix if name.number is not None else name.words[-1:]
    trim = [w for w in told if w in TRIM and w in behind]
    return Words(
        likeness=covered,
        unsaid=not named_by_yard and covered == 0,
        partly=missing and not inexact and covered > 0,
        suffix_same=same,
        suffix_short=short,
        suffix_unsaid=unsaid,
        stray=tuple(w for w in told if w not in trim),
        trim=tuple(trim),
        kept=tuple(w for w in stray if w in KEPT_HULL or w in RIGS),
        builder_seen=seen,
        brand_seen=any(_is_of(w, target) for w in extra),
        inexact=tuple(inexact),
    )


def _says_nothing(word: str, suffix: Sequence[str]) -> bool:
    """Say whether any yard calls itself so; a single letter behind the number is a variant, whatever else it means."""
    return word in YARD and not (len(word) == 1 and word in suffix)


def _together(words: list[str], own_yard: list[str], target: Sequence[str], yard: list[str]) -> float:
    """Return the likeness of the words written as one, with the yard's where they are exactly those."""
    glued = {"".join((*maker, *target)) for maker in (own_yard, own_yard[:1], yard)}
    if target and "".join(words) in glued:
        return 1.0
    return _joined([w for w in words if not _is_of(w, own_yard) or _is_of(w, target)], target)


def _yard_for_initials(words: Sequence[str], own_yard: list[str], target: Sequence[str]) -> float:
    """Return how much it tells that a yard is said in full whose initials are all that its model is called by."""
    if len(own_yard) < 2 or "".join(target) != "".join(w[0] for w in own_yard):  # noqa: PLR2004 - initials are of several
        return 0.0
    said = all(any(_is_of(w, [maker]) for w in words) for maker in own_yard) or _is_of("".join(own_yard), words)
    return YARD_FOR_INITIALS if said else 0.0


def _take_suffix(
    pool: list[str], suffix: Sequence[str], said: Sequence[str]
) -> tuple[tuple[str, ...], tuple[str, ...], tuple[str, ...]]:
    """Take the model's suffix words out of the pool; return those said, those cut short and those unsaid.

    A single letter counts only where it follows the number, as does one that stands for a word or for all of them.
    """
    same, short, unsaid = [], [], []
    whole = "".join(w[0] for w in suffix)
    if len(suffix) > 1 and whole in said and not set(suffix) & set(said):
        pool.remove(whole)
        return (), tuple(suffix), ()
    for wanted in suffix:
        of = [w for w in pool if len(wanted) > 1 or w in said]
        best = max(of, key=lambda w: word_likeness(w, wanted), default="")
        cut = [w for w in said if w in pool and wanted.startswith(w)]
        if best and word_likeness(best, wanted) >= WORD_ALIKE:
            pool.remove(best)
            same.append(wanted)
        elif cut:
            pool.remove(cut[0])
            short.append(wanted)
        else:
            unsaid.append(wanted)
    return tuple(same), tuple(short), tuple(unsaid)


def _cover(
    pool: list[str], extra: Sequence[str], target: Sequence[str], *, any_will_do: bool
) -> tuple[float, set[int], list[tuple[str, str]], bool]:
    """Return how much of `target` the pool says, by letters; which words of it; inexact pairs; whether one is missing."""
    if not target:
        return (1.0 if not pool and not extra else 0.0), set(), [], False
    used: set[int] = set()
    inexact: list[tuple[str, str]] = []
    values: list[float] = []
    for wanted in target:
        scored = [(word_likeness(w, wanted), -i) for i, w in enumerate((*pool, *extra)) if i not in used]
        value, at = max(scored, default=(0.0, 0))
        if value < WORD_USABLE:
            values.append(0.0)
            continue
        values.append(value)
        if -at < len(pool):
            used.add(-at)
        if value < 1:
            inexact.append(((*pool, *extra)[-at], wanted))
    if any_will_do:
        return max(values), used, inexact, False
    weights = [max(len(w), LIGHTEST_WORD) for w in target]
    covered = sum(v * w for v, w in zip(values, weights, strict=True)) / sum(weights)
    return covered, used, inexact, 0.0 in values


def _joined(words: Sequence[str], target: Sequence[str]) -> float:
    """Return the likeness of words written together or apart, or as initials."""
    if not words or not target or (len(words) == 1 and len(target) == 1):
        return 0.0
    first, second = "".join(words), "".join(target)
    for short, long in ((words, target), (target, words)):
        if len(short) == 1 and len(long) > 1 and short[0] == "".join(w[0] for w in long):
            return INITIALS
    return word_likeness(first, second) if min(len(first), len(second)) >= FUZZY_FROM else float(first == second)


def _again(word: str, target: Sequence[str]) -> bool:
    """Say whether a word is one of the model's, said twice."""
    return word in target or (len(word) >= SHORTEST_ABBREVIATION and _is_of(word, target))


def _is_of(word: str, words: Sequence[str]) -> bool:
    """Say whether `word` is one of `words`, misspelt, cut short, or their initials."""
    if len(words) > 1 and len(word) > 1 and word == "".join(w[0] for w in words):
        return True
    cut = any(len(other) >= FUZZY_FROM and other.startswith(word) for other in words)
    return cut or any(word_likeness(word, other) >= WORD_ALIKE for other in words)
