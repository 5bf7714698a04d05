"""Ways people write a boat's name, made by rule and seed: one query of each family a model allows.

Written from general knowledge of how names are written in letters, lists and certificates, before it was seen what the
resolver makes of them.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence

import numpy as np

from service.core.evaluate.names import NameQuery, has_sibling
from service.core.hulls import parse_name
from service.core.record import HullModel
from tests.published.misspelling import marked, misspelt

_TRIM = (
    "mod", "OD", "std", "TM", "DK", "LK", "shoal draft", "tall rig", "cruising", "Race", "Wing Keel", "fractional",
    "ketch", "carbon mast", "Cb", "Regatta", "MOD.", "fin keel", "sloop",
)  # fmt: skip
_NATIONS = ("GBR", "SWE", "NOR", "NED", "GER", "FIN", "DEN", "POL")
_MARK = re.compile(r"\s+(?:Mk\s*)?(?:II|2)$")
_NUMBER = re.compile(r"\d+(?:\.\d+)?")
_LONG, _VERY_LONG = 4, 9
Writer = Callable[[HullModel, np.random.Generator], str | None]


def queries(known: Sequence[HullModel], asked: Sequence[HullModel], seed: int) -> list[NameQuery]:
    """Return queries for the models `asked`, each in every family it allows, and for pairs of them."""
    dice = np.random.default_rng(seed)
    ids = {model.id for model in known}
    namesakes = {m.id for m in asked for o in asked if o.id != m.id and (o.builder, o.model) == (m.builder, m.model)}
    found: list[NameQuery] = []
    for model in asked:
        wanted = frozenset({model.id} & ids)
        sibling = not wanted and has_sibling(model, known)
        for family, writer in FAMILIES.items():
            name = writer(model, dice)
            if name is not None:
                found.append(_beside(model, name, wanted, family, dice, sibling=sibling, surely=model.id in namesakes))
        found += [NameQuery(alias.upper(), wanted, family="nickname") for alias in model.aliases]
    return found + list(_pairs([m for m in asked if m.id in ids and m.id not in namesakes], dice))


def renumbered(known: Sequence[HullModel], asked: Sequence[HullModel], seed: int) -> list[NameQuery]:
    """Return queries for siblings that no yard built: models `asked` with a number that no model of their words has."""
    dice = np.random.default_rng(seed)
    taken = {(name.words, name.number) for name in (parse_name(m.model, ()) for m in known)}
    found = []
    for model in asked:
        number = _NUMBER.search(model.model)
        if number is None or "." in number[0]:
            continue
        other = str(int(number[0]) + int(dice.choice([-3, -2, -1, 1, 2, 3])))
        name = _case(model.model.replace(number[0], other), dice)
        parsed = parse_name(name, ())
        if (parsed.words, parsed.number) not in taken:
            found.append(NameQuery(name, frozenset(), family="sibling of none", sibling=True, loa_mm=model.loa_mm))
    return found


def _beside(
    model: HullModel,
    name: str,
    wanted: frozenset[str],
    family: str,
    dice: np.random.Generator,
    *,
    sibling: bool,
    surely: bool,
) -> NameQuery:
    """Add what is often said beside a name; always year or length where only they tell two boats of one name apart."""
    first, last = model.first_year, model.last_year
    year = int(dice.integers(first, (last or first + 10) + 1)) if first else None
    off = float(dice.laplace(0, 0.004))
    loa = round(model.loa_mm * (1 + off)) if model.loa_mm else None
    return NameQuery(
        name,
        wanted,
        builder=model.builder if dice.random() < 0.3 else None,
        year=year if dice.random() < 0.4 else None,
        loa_mm=loa if surely or dice.random() < 0.4 else None,
        family=family,
        sibling=sibling,
    )


def _case(text: str, dice: np.random.Generator) -> str:
    return (text, text.upper(), text.lower(), text.title())[int(dice.integers(4))]


def _with_yard(model: HullModel) -> str:
    """Return builder and model, the builder's words not twice."""
    yard = (model.builder or "").replace("-", " ")
    return model.model if model.model.lower().startswith(yard.lower().split()[0]) else f"{yard} {model.model}"


def _abbreviated(model: HullModel, dice: np.random.Generator) -> str | None:
    yard = (model.builder or "").replace("-", " ").split()
    rest = re.sub(rf"^{yard[0]}\s+", "", model.model, flags=re.IGNORECASE) if yard else ""
    if not yard or len(yard[0]) < _LONG:
        return None
    short = yard[0][: int(dice.integers(3, 5))] + "."
    return _case(f"{short} {rest}", dice)


def _marked_otherwise(model: HullModel, dice: np.random.Generator) -> str | None:
    if not _MARK.search(model.model):
        return None
    stem = _MARK.sub("", model.model)
    ways = (
        " Mk II",
        " Mk2",
        "-II",
        " II",
        " MkII",
        "/2",
        " mark 2",
        " Mk. II",
        " 2nd generation",
        " series 2",
        "MkII",
        " -2",
    )
    return _case(stem, dice) + ways[int(dice.integers(len(ways)))]


def _measured(model: HullModel, dice: np.random.Generator) -> str | None:
    number = _NUMBER.search(model.model)
    if number is None:
        return None
    feet = model.loa_mm is not None and abs(float(number[0]) - model.loa_mm / 304.8) < 2
    metres = f"{(model.loa_mm or 10_000) / 1000:.2f}"
    ways = [f" ({metres} m)", f", {metres}m", f" loa {metres.replace('.', ',')} m"]
    if feet:
        ways += [" ft", "'", "ft", " feet", " fot", " Fuß"]
    return _case(model.model, dice) + ways[int(dice.integers(len(ways)))]


def _slipped(
    model: HullModel, dice: np.random.Generator, slip: Callable[[str, np.random.Generator], str]
) -> str | None:
    words = model.model.split()
    long = [i for i, word in enumerate(words) if len(word) >= _LONG and word.isalpha()]
    if not long:
        return None
    at = long[int(dice.integers(len(long)))]
    words[at] = slip(words[at], dice)
    if len(words[at]) >= _VERY_LONG and slip is misspelt and dice.random() < 0.5:
        words[at] = slip(words[at], dice)
    return _case(" ".join(words), dice)


def _pairs(asked: Sequence[HullModel], dice: np.random.Generator) -> Iterator[NameQuery]:
    numbered = [m for m in asked if _NUMBER.search(m.model)]
    for first, second in zip(numbered[::3], numbered[1::3], strict=False):
        way = (" / ", " or ", " oder ", "; ")[int(dice.integers(4))]
        yield NameQuery(f"{first.model}{way}{second.model}", frozenset({first.id, second.id}), family="two models")


def _sailing(model: HullModel, dice: np.random.Generator) -> str:
    number = int(dice.integers(10, 9999))
    nation = _NATIONS[int(dice.integers(len(_NATIONS)))]
    ways = (
        f" {nation} {number}",
        f" {nation}-{number}",
        f" #{number % 300}",
        f" hull no. {number % 300}",
        f" ({nation} {number})",
    )
    return _case(model.model, dice) + ways[int(dice.integers(len(ways)))]


FAMILIES: dict[str, Writer] = {
    "case": lambda model, dice: _case(model.model, dice),
    "with builder": lambda model, dice: _case(_with_yard(model), dice),
    "builder behind": lambda model, dice: _case(f"{model.model} {(model.builder or '').replace('-', ' ')}", dice),
    "builder cut short": _abbreviated,
    "glued": lambda model, dice: _case(re.sub(r"[\s-]", "", _with_yard(model)), dice),
    "hyphens": lambda model, dice: _case(re.sub(r"\s+", "-", model.model), dice),
    "generation": _marked_otherwise,
    "feet and metres": _measured,
    "misspelt": lambda model, dice: _slipped(model, dice, misspelt),
    "marks": lambda model, dice: _slipped(model, dice, marked),
    "keel, rig, trim": lambda model, dice: f"{_case(model.model, dice)} {_TRIM[int(dice.integers(len(_TRIM)))]}",
    "hull or sail number": _sailing,
    "vessel's prefix": lambda model, dice: (
        ("S/Y ", "SY ", "yacht ", "Segelyacht ")[int(dice.integers(4))] + model.model
    ),
    "decimal comma": lambda model, dice: _case(model.model.replace(".", ","), dice) if "." in model.model else None,
    "with year": lambda model, dice: f"{_case(model.model, dice)} ({model.first_year})" if model.first_year else None,
}
