"""A name -> the hull model it means, a few to ask about, or none."""

from __future__ import annotations

import math
from dataclasses import dataclass

from service.core.hulls import weigh
from service.core.hulls.beside import apart
from service.core.hulls.evidence import Asked, Sign, weigh_up, years
from service.core.hulls.fold import fold
from service.core.hulls.parse import LONGEST_NAME, parse_name
from service.core.hulls.shapes import HullCandidate, HullDecision
from service.core.hulls.surface import Candidates, Surface
from service.core.record import HullModel

_MOST_SHOWN = 3
_WORDS_OFF = weigh.on(weigh.WORDS, weigh.WORD_ALIKE)
_NEAR_ENOUGH_TO_NAME = weigh.VETO - 4


@dataclass(frozen=True, slots=True)
class _Scored:
    surface: Surface
    score: float
    probability: float
    signs: tuple[Sign, ...]

    @property
    def model(self) -> HullModel:
        return self.surface.shaped()


def resolve(
    known: Candidates,
    name: str,
    *,
    builder: str | None = None,
    year: int | None = None,
    loa_mm: float | None = None,
    beam_mm: float | None = None,
) -> HullDecision:
    """Return what `name` means among the models that are known, with all that was seen and why in one sentence.

    A number that differs is a veto, so an absent model is never taken for its numbered sibling. Builder words may
    stand in the name, in `builder`, or nowhere. Lengths in mm; they and the year only shift the odds.
    """
    name = " ".join(name.split())
    builder = " ".join((builder or "").split())
    if len(name) > LONGEST_NAME or len(builder) > LONGEST_NAME:
        return _nothing(f"a text of {max(len(name), len(builder))} characters is no boat's name")
    yard = tuple(fold(builder).split())
    readings: list[Asked] = []
    two = apart(name)
    for text in (name, *two):
        parsed = parse_name(text, ())
        if not (parsed.words or parsed.suffix or parsed.number):
            return _nothing("the name has no letters or digits" if name else "no name was given")
        folded = frozenset({fold(text), fold(f"{builder} {text}")})
        built = parsed.year if year is None else year
        readings.append(Asked(parsed, yard, folded, built, loa_mm, beam_mm, one_of_two=text is not name))
    return _decided(name, _scored(known, readings))


def _scored(known: Candidates, readings: list[Asked]) -> list[_Scored]:
    """Return each candidate model once, as it is best written and the name best read, likeliest first."""
    best: dict[str, tuple[float, tuple[Sign, ...], Surface]] = {}
    for asked in readings:
        for surface in known.candidates(asked.name, asked.builder, asked.folded):
            signs = weigh_up(asked, surface)
            score = weigh.START + math.fsum(sign.score for sign in signs)
            if surface.id not in best or score > best[surface.id][0]:
                best[surface.id] = (score, signs, surface)
    odds = {hull_id: math.exp(score) for hull_id, (score, *_) in best.items()}
    total = 1 + math.fsum(odds.values())
    found = [_Scored(surface, score, odds[i] / total, signs) for i, (score, signs, surface) in best.items()]
    return sorted(found, key=lambda one: (-one.score, one.surface.id))


def _decided(name: str, found: list[_Scored]) -> HullDecision:
    likely = [one for one in found if one.probability >= weigh.LISTED]
    if likely and likely[0].probability >= weigh.MATCHED:
        top, model = likely[0], likely[0].model
        return HullDecision(
            status="matched",
            model=model,
            probability=top.probability,
            alternatives=_shown(likely[1:]),
            saw=tuple(sign.shown() for sign in top.signs),
            why=f"taken for {_named(model)}: {_reasons(top.signs)}",
        )
    if likely and math.fsum(one.probability for one in likely) >= weigh.SEVERAL:
        return HullDecision(
            status="several",
            model=None,
            probability=likely[0].probability,
            alternatives=_shown(likely),
            why="could be " + "; or ".join(_case(one) for one in likely[:_MOST_SHOWN]),
        )
    near = [one for one in found if one.score > _NEAR_ENOUGH_TO_NAME]
    why = f"no known model answers to {name!r}"
    if near:
        why += f"; the nearest is {_named(near[0].model)}, but {_against(near[0].signs)}"
    return HullDecision(
        status="unknown",
        model=None,
        probability=near[0].probability if near else 0.0,
        alternatives=_shown(near),
        why=why,
    )


def _nothing(why: str) -> HullDecision:
    return HullDecision(status="unknown", model=None, probability=0.0, alternatives=(), why=why)


def _shown(found: list[_Scored]) -> tuple[HullCandidate, ...]:
    return tuple(
        HullCandidate(model=one.model, probability=one.probability, saw=tuple(sign.shown() for sign in one.signs))
        for one in found[:_MOST_SHOWN]
    )


def _named(model: HullModel) -> str:
    if model.first_year is None and model.last_year is None:
        return str(model)
    return f"{model} ({years(model.first_year, model.last_year)})"


def _case(one: _Scored) -> str:
    return f"{_named(one.model)}: {_reasons(one.signs)}"


def _reasons(signs: tuple[Sign, ...]) -> str:
    """Return what speaks for a model and what against, from its evidence alone; that nothing is there says nothing."""
    ours = [sign.why for sign in signs if sign.score > 0 and not sign.why.startswith("neither")]
    against = [sign.why for sign in sorted(signs, key=lambda sign: sign.score) if sign.score < 0]
    return ", ".join(ours) + (f"{', but ' if ours else ''}{', '.join(against)}" if against else "")


def _against(signs: tuple[Sign, ...]) -> str:
    worst = sorted((s for s in signs if s.score < (_WORDS_OFF if s.about == "words" else 0)), key=lambda s: s.score)
    return ", ".join(sign.why for sign in worst[:2]) or "too little was said"
