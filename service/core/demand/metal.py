"""Catalogues with metal left out or put in: a shaft of another length, a bracket of another reach, all else as it is.

New metal is the nearest there is, made longer: its allowable loads, bolts and flange are taken over and have to be worked
out anew before anything is made.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from service.core.catalogue import Bracket, Catalogue, Range, Role, Shaft

STEP_MM = 50.0
"""How finely lengths and reaches are tried."""
BEYOND_MM = 400.0
"""How far beyond what there is."""
NEW = "new"


def without(catalogue: Catalogue, codes: Iterable[str]) -> Catalogue:
    """Return the catalogue without shafts and brackets of these codes; KeyError names one that is neither."""
    gone = set(codes)
    known = {one.code for one in catalogue.shafts} | {one.code for one in catalogue.brackets}
    strange = sorted(gone - known)
    if strange:
        raise KeyError(
            f"{strange[0]!r} is neither a shaft nor a bracket of the catalogue; there are {', '.join(sorted(known))}"
        )
    return catalogue.model_copy(
        update={
            "shafts": tuple(one for one in catalogue.shafts if one.code not in gone),
            "brackets": tuple(one for one in catalogue.brackets if one.code not in gone),
        }
    )


def shaft(catalogue: Catalogue, length_mm: float) -> tuple[Shaft, ...]:
    """Return a shaft of a length for every gear, after the gear's nearest one; mass and price go with the length."""
    found = []
    for gear in catalogue.gears:
        own = [one for one in catalogue.shafts if gear.code in one.gears]
        if own:
            near = min(own, key=lambda one: abs(one.length_mm - length_mm))
            times = length_mm / near.length_mm
            changed = {
                "code": f"{NEW}-shaft-{length_mm:g}-{gear.code}"[:60],
                "length_mm": length_mm,
                "gears": (gear.code,),
                "mass_kg": near.mass_kg * times,
                "price": near.price * times,
            }
            found.append(near.model_copy(update=changed))
    return tuple(found)


def bracket(catalogue: Catalogue, like: str, reach_mm: Range) -> Bracket:
    """Return a bracket like another with another reach; KeyError names a bracket that is not there."""
    near = catalogue.bracket(like)
    code = f"{NEW}-{like}-{reach_mm[0]:g}-{reach_mm[1]:g}"[:60]
    return near.model_copy(update={"code": code, "reach_mm": reach_mm})


def lengths(catalogue: Catalogue) -> list[float]:
    """Return the lengths worth trying: every step from the shortest shaft there is to well beyond the longest.

    Those are left out that a shaft of every gear has already, to half a step.
    """
    have = sorted(one.length_mm for one in catalogue.shafts)
    first, last = (round(end / STEP_MM) for end in (have[0] - BEYOND_MM / 2, have[-1] + BEYOND_MM))
    tried = [STEP_MM * n for n in range(max(first, 1), last + 1)]
    return [length for length in tried if not _had(catalogue, length)]


def _had(catalogue: Catalogue, length: float) -> bool:
    near = {g for one in catalogue.shafts if abs(one.length_mm - length) < STEP_MM / 2 for g in one.gears}
    return near >= {gear.code for gear in catalogue.gears}


def reaches(catalogue: Catalogue) -> list[Bracket]:
    """Return brackets worth trying: each one there is, with its reach moved out and in by half its own width and more."""
    found = []
    for one in catalogue.brackets:
        low, high = one.reach_mm
        wide = max(high - low, STEP_MM)
        for by in (-wide, -wide / 2, wide / 2, wide, 2 * wide):
            ends = (max(round((low + by) / 10) * 10.0, 10.0), round((high + by) / 10) * 10.0)
            if ends[1] > ends[0] and not any(
                other.kind == one.kind and _within(ends, other.reach_mm) for other in catalogue.brackets
            ):
                found.append(bracket(catalogue, one.code, ends))
    return list({one.code: one for one in found}.values())


def _within(inner: Range, outer: Range) -> bool:
    return outer[0] <= inner[0] and inner[1] <= outer[1]


def only(catalogue: Catalogue, new: Sequence[Shaft] = (), brackets: Sequence[Bracket] = ()) -> list[Catalogue]:
    """Return catalogues in which every configuration has something of the new, and no other one is left.

    A new bracket goes below one there is, above one, or both below and above.
    """
    found = [catalogue.model_copy(update={"shafts": tuple(new)})] if new else []
    sides: tuple[tuple[Role, Role], ...] = (("lower", "upper"), ("upper", "lower"))
    for role, other in sides:
        fresh = tuple(one.model_copy(update={"roles": (role,)}) for one in brackets if role in one.roles)
        rest = tuple(one.model_copy(update={"roles": (other,)}) for one in catalogue.brackets if other in one.roles)
        if fresh and rest:
            found.append(catalogue.model_copy(update={"brackets": (*fresh, *rest)}))
    both = [one for one in brackets if len(one.roles) > 1]
    return [*found, *(catalogue.model_copy(update={"brackets": (one,)}) for one in both)]


def new_in(codes: Iterable[str]) -> str | None:
    """Return the new piece among a configuration's codes; None where there is none."""
    return next((code for code in codes if code.startswith(f"{NEW}-")), None)
