"""Another way people write a hull model: remembered with who says so, when and why, and forgotten again."""

from __future__ import annotations

from dataclasses import dataclass

from service.core.hulls import fold
from service.core.record import HullModel
from service.core.registry import Cell
from service.core.words import nearest
from service.flow.merge_hulls import standing
from service.flow.refusal import Refused
from service.store.unit import UnitOfWork

LONGEST = 200


@dataclass(frozen=True)
class Aliased:
    """What an alias means now, and whose it is besides: then a name like it is asked about. `number` is the change's."""

    hull: HullModel
    alias: str
    shared: tuple[HullModel, ...]
    number: int | None


def add_alias(uow: UnitOfWork, hull_id: str, alias: str, *, who: str, why: str) -> Aliased:
    """Take `alias` for the hull model from now on, and commit. `number` is None where that was known.

    Refused where there is no such model, or the alias is no name.
    """
    alias = " ".join(alias.split())
    if not fold(alias):
        raise Refused(f"{alias!r} has no letters or digits: nothing could be taken for it")
    if len(alias) > LONGEST:
        raise Refused(f"an alias of {len(alias)} characters is no boat's name; give at most {LONGEST}")
    with uow:
        hull = standing(uow, hull_id)
        known = alias in (hull.model, *hull.aliases)
        number = None
        if not known:
            uow.hulls.add_alias(alias, hull.id, who=who, why=why)
            number = uow.hulls.log.version()
            uow.commit()
        return Aliased(standing(uow, hull.id), alias, _shared(uow, hull, alias), number)


def remove_alias(uow: UnitOfWork, hull_id: str, alias: str, *, who: str, why: str) -> Aliased:
    """Forget an alias of the hull model, and commit. Refused where it has none such."""
    with uow:
        hull = standing(uow, hull_id)
        own = {one.alias: one for one in uow.hulls.aliases(uow.hulls.family(hull.id))}
        if alias not in own:
            near = nearest(alias, own)
            meant = f" (did you mean {near!r}?)" if near else ""
            merged = "; it is the name of one that was merged into it" if alias in hull.aliases else meant
            raise Refused(f"{alias!r} is no alias of {hull.id}{merged}; `transom hulls show {hull.id}` lists them")
        one = own[alias]
        cell = Cell("alias", (one.hull, alias), [one.who, one.at.isoformat(), one.why], None)
        number = uow.hulls.change("alias", [cell], who=who, why=why)
        uow.commit()
        return Aliased(standing(uow, hull.id), alias, (), number)


def _shared(uow: UnitOfWork, hull: HullModel, alias: str) -> tuple[HullModel, ...]:
    others = uow.hulls.among(uow.hulls.called(alias))
    return tuple({one.id: one for one in others.values() if one.id != hull.id}.values())
