"""Two hull models turned out to be one: the second leads to the first from then on, and can stand for itself again."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from service.core.record import HullModel
from service.core.registry import Cell, differs, fills
from service.core.words import nearest
from service.flow.refusal import Refused
from service.store.unit import UnitOfWork


@dataclass(frozen=True)
class MergedHulls:
    """What a merge did or would do.

    `fills` are what `into` did not say and the other does: taken over. `differs` are (field, what stands, what the
    other says): that stays with the other. `names` are those that `into` answers to besides its own from then on,
    `uses` what is found under it besides, and `number` the change's.
    """

    into: HullModel
    other: HullModel
    fills: tuple[Cell, ...]
    differs: tuple[tuple[str, Any, Any], ...]
    names: tuple[str, ...]
    uses: dict[str, int]
    number: int | None


def merge_hulls(uow: UnitOfWork, into: str, other: str, *, who: str, why: str, preview: bool = False) -> MergedHulls:
    """Merge the hull model `other` into `into` and commit. No id changes: the other's leads to `into` from then on.

    Records, boats and enquiries keep the id they were written with, and are found under `into`. Refused where either
    is not there, both are one already, or somebody said that they are two.
    """
    with uow:
        first, second = standing(uow, into), standing(uow, other)
        if first.id == second.id:
            raise Refused(f"{into!r} and {other!r} are one hull model already: {first.id}")
        if second.id != other:
            raise Refused(
                f"{other!r} was merged into {second.id!r} already; merge that one, or unmerge {other!r} first"
            )
        _see_not_distinct(uow, first.id, other)
        both = uow.hulls.written([first.id, other])
        taken = fills(both[first.id], both[other])
        gained = tuple(name for name in (second.model, *second.aliases) if name not in (first.model, *first.aliases))
        uses = uow.hulls.uses(uow.hulls.family(other))
        number = None
        if not preview:
            cells = [Cell("model", (other, "merged_into"), None, first.id), *taken]
            number = uow.hulls.change("merge", cells, who=who, why=why)
            uow.commit()
    return MergedHulls(first, second, tuple(taken), tuple(differs(first, second)), gained, uses, number)


def standing(uow: UnitOfWork, hull_id: str) -> HullModel:
    """Return what stands for a hull model; Refused names the nearest id or model where there is none."""
    found = uow.hulls.get(hull_id)
    if found is not None:
        return found
    known = {name: hull.id for hull in uow.hulls.all() for name in (hull.id, hull.model, str(hull))}
    near = nearest(hull_id, known)
    meant = f" (did you mean {known[near]!r}, {near}?)" if near else ""
    raise Refused(f"there is no hull model {hull_id!r}{meant}; take an id that `transom hulls list` shows")


def _see_not_distinct(uow: UnitOfWork, one: str, other: str) -> None:
    pair = (min(one, other), max(one, other))
    said = uow.hulls.present(Cell("distinct", pair, None, None))
    if said is None:
        return
    undone = uow.hulls.log.undone()
    by = [
        c for c in uow.hulls.log.of(pair) if c.kind == "distinct" and c.number not in undone and c.cells[0].key == pair
    ]
    back = f"; take that back first (`transom hulls undo {by[-1].number}`)" if by else ""
    raise Refused(f"{said[0]} said on {said[1][:10]} that {one!r} and {other!r} are two: {said[2]}{back}")
