"""Open boat data: 93 production boats of the package sailboat-hydro 1.0.0 (MIT licence), read from it when tests run.

The package calls every model by builder, name, years and length. What it has too little of is made from it, by rule:
second generations, later boats of the same name, twins whose number has a point, and nicknames as aliases. Their ids
say so. The registry lacks a share of the models, numbered siblings of known ones among them.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

import numpy as np
from sailboat_hydro import load_nordic_benchmark

from service.core.record import HullModel

_HALVES = 2024
_ABSENT = 0.25
_MADE = 0.25
_NICKNAMES = (
    "Old Grey",
    "Seven Bells",
    "Bluebottle",
    "The Plank",
    "Kittywake",
    "Half Moon",
    "Long Sally",
    "Tin Lizzie",
)


@dataclass(frozen=True)
class Names:
    """Known models, missing ones, and which half of the models each belongs to (`dev` or `test`)."""

    known: tuple[HullModel, ...]
    absent: tuple[HullModel, ...]
    half: dict[str, str]


def models() -> tuple[HullModel, ...]:
    """Return the package's models; the id is builder/model as the package has it."""
    return tuple(
        HullModel(
            id=f"{one.brand_slug}/{one.model_slug}",
            builder="-".join(part.title() for part in one.brand_slug.split("-")),
            model=one.name,
            first_year=one.production_start_year,
            last_year=one.production_end_year,
            loa_mm=one.loa_m and one.loa_m * 1000,
            beam_mm=one.beam_m and one.beam_m * 1000,
        )
        for one in load_nordic_benchmark().models
    )


def names(seed: int = 1) -> Names:
    """Return the registry, what it lacks, and the halves: by model and the same for every seed."""
    dice, halves = np.random.default_rng(seed), np.random.default_rng(_HALVES)
    known: list[HullModel] = []
    absent: list[HullModel] = []
    half: dict[str, str] = {}
    for place, model in enumerate(models()):
        side = "dev" if halves.random() < 0.5 else "test"
        missing = dice.random() < _ABSENT
        family = [model] if missing else [model, *_made(model, place, dice)]
        half |= {one.id: side for one in family}
        if not missing and dice.random() < _MADE:
            family[0] = model.model_copy(update={"aliases": (f"{_NICKNAMES[place % 8]} {place}",)})
        (absent if missing else known).extend(family)
    return Names(tuple(known), tuple(absent), half)


def _made(model: HullModel, place: int, dice: np.random.Generator) -> list[HullModel]:
    """Return boats made from a model: a second generation, a later namesake, or a twin with a point in its number."""
    kind = dice.random()
    number = re.search(r"\d+", model.model)
    first, last = model.first_year or 1975, model.last_year or (model.first_year or 1975) + 8
    loa = model.loa_mm or 10_000.0
    if number is None or "Mk" in model.model:
        return []
    if kind < _MADE:
        mark = ("Mk II", "MkII", "Mk 2", "II")[place % 4]
        change = {
            "id": f"{model.id}+generation",
            "model": f"{model.model} {mark}",
            "first_year": last,
            "last_year": last + 7,
        }
        return [model.model_copy(update={**change, "loa_mm": loa * 1.01})]
    if kind < 2 * _MADE:
        change = {"id": f"{model.id}+namesake", "first_year": last + 15, "last_year": last + 22}
        return [model.model_copy(update={**change, "loa_mm": loa * 1.08})]
    if kind < 3 * _MADE and len(number[0]) > 1:
        pointed = f"{number[0][:-1]}.{number[0][-1]}"
        change = {"id": f"{model.id}+point", "model": model.model.replace(number[0], pointed)}
        return [model.model_copy(update={**change, "loa_mm": loa * 1.15, "first_year": first + 20, "last_year": None})]
    return []
