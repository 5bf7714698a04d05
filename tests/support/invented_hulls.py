"""Registries of any size of hull models that nobody built, by seed: for crowds, speed and growth."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np

from service.core.record import HullModel
from tests.published.misspelling import marked, misspelt

_BEGIN = (
    "b", "c", "d", "f", "g", "h", "k", "l", "m", "n", "p", "r", "s", "t", "v", "w",
    "br", "dr", "fr", "gr", "kl", "kr", "sk", "st", "tr", "th", "bl", "fl", "gl", "sl", "sn", "sw",
)  # fmt: skip
_MIDDLE = ("a", "e", "i", "o", "u", "y", "ea", "ou", "ie", "ai", "oe")
_END = ("n", "r", "l", "s", "k", "t", "nd", "rn", "x", "m", "rd", "lt", "")
_TRADES = ("Yachts", "Marine", "Boats", "Varv", "Werft", "Yard", "Jachtbouw", "Chantier", "& Sons", "Boat Works")
_VARIANTS = ("", "", "", "", " Mk II", " Mk III", " CC", " S", " DS", " Sport", " Pilothouse")
_MODELS_A_YARD = 30


def invented_hulls(size: int, seed: int = 7) -> Iterator[HullModel]:
    """Return `size` models: yards with lines of boats, lines with numbers, numbers with generations and variants."""
    dice = np.random.default_rng(seed)
    made = 0
    while made < size:
        name = _word(dice, int(dice.integers(1, 4)))
        yard = f"{name} {_TRADES[int(dice.integers(len(_TRADES)))]}"
        for _ in range(min(int(dice.integers(1, 2 * _MODELS_A_YARD)), size - made)):
            line = name if dice.random() < 0.6 else _word(dice, int(dice.integers(1, 4)))
            yield _model(dice, made, yard, line)
            made += 1


def _word(dice: np.random.Generator, syllables: int) -> str:
    letters = "".join(
        _BEGIN[int(dice.integers(len(_BEGIN)))] + _MIDDLE[int(dice.integers(len(_MIDDLE)))] for _ in range(syllables)
    )
    return (letters + _END[int(dice.integers(len(_END)))]).title()


def _model(dice: np.random.Generator, place: int, yard: str, line: str) -> HullModel:
    feet = float(dice.uniform(22, 60))
    way = dice.random()
    if way < 0.55:
        number = f"{feet:.0f}"
    elif way < 0.85:
        number = f"{feet * 10:.0f}"
    else:
        number = f"{feet * 0.3048:.2f}"
    first = int(dice.integers(1960, 2022))
    return HullModel(
        id=f"invented-{place}",
        builder=yard,
        model=f"{line} {number}{_VARIANTS[int(dice.integers(len(_VARIANTS)))]}",
        first_year=first,
        last_year=first + int(dice.integers(2, 15)),
        loa_mm=round(feet * 304.8 * float(dice.uniform(0.97, 1.03))),
        beam_mm=round(feet * 304.8 * 0.33),
    )


def dirty_names(size: int, names: int, seed: int = 3) -> list[tuple[str, int | None]]:
    """Return (name, length in mm or None) of models of `invented_hulls(size)`, one in five of one that is not in it."""
    dice = np.random.default_rng(seed)
    wanted = set(dice.integers(0, size, names).tolist())
    known = [model for place, model in enumerate(invented_hulls(size)) if place in wanted]
    absent = list(invented_hulls(len(known) // 4 + 1, seed=seed + 96))
    found = []
    for _ in range(names):
        models = known if dice.random() < 0.8 else absent
        found.append(_written(models[int(dice.integers(len(models)))], dice))
    return found


def _written(model: HullModel, dice: np.random.Generator) -> tuple[str, int | None]:
    text = model.model if dice.random() < 0.5 else f"{model.builder} {model.model}"
    words = text.split()
    way = dice.random()
    if way < 0.2:
        words = ["".join(words)]
    elif way < 0.5:
        at = int(dice.integers(len(words)))
        slip = (misspelt, marked)[int(dice.integers(2))]
        words[at] = slip(words[at], dice) if words[at].isalpha() else words[at]
    text = " ".join(words)
    length = round(float(model.loa_mm or 0) * float(dice.normal(1, 0.004))) if dice.random() < 0.3 else None
    return (text.upper() if dice.random() < 0.4 else text), length
