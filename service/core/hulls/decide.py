"""A name -> the hull model it means, a few to ask about, or none."""

from __future__ import annotations

import math
from dataclasses import dataclass

from service.core.hulls import weigh
from service.core.hulls.evidence import Asked, Sign, weigh_up
from service.core.hulls.index import HullIndex
from service.core.hulls.parse import LONGEST_NAME, fold, parse_name
from service.core.hulls.shapes import HullCandidate, HullDecision
from service.core.record import HullModel

_MOST_SHOWN = 3
_WORDS_OFF = weigh.on(weigh.WORDS, weigh.WORD_ALIKE)
_NEAR_ENOUGH_TO_NAME = weigh.VETO - 4


@dataclass(frozen=True, slots=True)
class _Scored:
    model: int
    score: float
    probability: float
    signs: tuple[Sign, ...]


def resolve(
    index: HullIndex,
    name: str,
    *,
    builder: str | None = None,
    year: int | None = None,
    loa_mm: float | None = None,
    beam_mm: float | None = None,
) -> HullDecision:
    """Return what `name` means among the models of `index`, with all that was seen and why in one sentence.

    A number that differs is a veto, so an absent model is never taken for its numbered sibling. Builder words may
    stand in the name, in `builder`, or nowhere. Lengths in mm; they and the year only shift the odds.
    """
    name = " ".join(name.split())
    builder = " ".join((builder or "").split())
    if len(name) > LONGEST_NAME or len(builder) > LONGEST_NAME:
        return _nothing(f"a text of {max(len(name), len(builder))} characters is no boat's name")
    parsed = parse_name(name, ())
    if not (parsed.words or parsed.suffix or parsed.number):
        return _nothing("the name has no letters or digits" if name else "no name was given")
    yard = tuple(fold(builder).split())
    folded = frozenset({parsed.folded, fold(f"{builder} {name}")})
    asked = Asked(parsed, yard, folded, parsed.year if year is None else year, loa_mm, beam_mm)
    return _decided(index, name, _scored(index, asked))


def _scored(index: HullIndex, asked: Asked) -> list[_Scored]:
    """Return each candidate model once, as it is best written, likeliest first."""
    places = [p for text in asked.folded for p in index.aliases.get(text, ())]
    places += index.candidates(asked.name, asked.builder)
    best: dict[int, tuple[float, tuple[Sign, ...]]] = {}
    for place in dict.fromkeys(places):
        surface = index.surfaces[place]
        signs = weigh_up(asked, surface, index.models[surface.model])
        score = weigh.START + math.fsum(sign.score for sign in signs)
        if surface.model not in best or score > best[surface.model][0]:
            best[surface.model] = (score, signs)
    odds = {model: math.exp(score) for model, (score, _) in best.items()}
    total = 1 + math.fsum(odds.values())
    found = [_Scored(model, score, odds[model] / total, signs) for model, (score, signs) in best.items()]
    return sorted(found, key=lambda one: (-one.score, one.model))


def _decided(index: HullIndex, name: str, found: list[_Scored]) -> HullDecision:
    likely = [one for one in found if one.probability >= weigh.LISTED]
    if likely and likely[0].probability >= weigh.MATCHED:
        top, model = likely[0], index.models[likely[0].model]
        return HullDecision(
            status="matched",
            model=model,
            probability=top.probability,
            alternatives=_shown(index, likely[1:]),
            saw=tuple(sign.shown() for sign in top.signs),
            why=f"taken for {_named(model)}: {_reasons(top.signs)}",
        )
    if likely and math.fsum(one.probability for one in likely) >= weigh.SEVERAL:
        return HullDecision(
            status="several",
            model=None,
            probability=likely[0].probability,
            alternatives=_shown(index, likely),
            why="could be " + "; or ".join(_case(index, one) for one in likely[:_MOST_SHOWN]),
        )
    near = [one for one in found if one.score > _NEAR_ENOUGH_TO_NAME]
    why = f"no known model answers to {name!r}"
    if near:
        why += f"; the nearest is {_named(index.models[near[0].model])}, but {_against(near[0].signs)}"
    return HullDecision(
        status="unknown",
        model=None,
        probability=near[0].probability if near else 0.0,
        alternatives=_shown(index, near),
        why=why,
    )


def _nothing(why: str) -> HullDecision:
    return HullDecision(status="unknown", model=None, probability=0.0, alternatives=(), why=why)


def _shown(index: HullIndex, found: list[_Scored]) -> tuple[HullCandidate, ...]:
    return tuple(
        HullCandidate(
            model=index.models[one.model], probability=one.probability, saw=tuple(sign.shown() for sign in one.signs)
        )
        for one in found[:_MOST_SHOWN]
    )


def _named(model: HullModel) -> str:
    if model.first_year is None and model.last_year is None:
        return str(model)
    return f"{model} ({model.first_year or '…'}-{model.last_year or '…'})"


def _case(index: HullIndex, one: _Scored) -> str:
    return f"{_named(index.models[one.model])}: {_reasons(one.signs)}"


def _reasons(signs: tuple[Sign, ...]) -> str:
    """Return what speaks for a model and what against, from its evidence alone; that nothing is there says nothing."""
    ours = [sign.why for sign in signs if sign.score > 0 and not sign.why.startswith("neither")]
    against = [sign.why for sign in sorted(signs, key=lambda sign: sign.score) if sign.score < 0]
    return ", ".join(ours) + (f"{', but ' if ours else ''}{', '.join(against)}" if against else "")


def _against(signs: tuple[Sign, ...]) -> str:
    worst = sorted((s for s in signs if s.score < (_WORDS_OFF if s.about == "words" else 0)), key=lambda s: s.score)
    return ", ".join(sign.why for sign in worst[:2]) or "too little was said"
