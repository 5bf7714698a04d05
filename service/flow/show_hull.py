"""Everything that is known of one hull model: its names, what leads to it, what names it, what was done to it."""

from __future__ import annotations

from dataclasses import dataclass

from service.core.record import HullModel
from service.core.registry import HullChange
from service.flow.merge_hulls import standing
from service.store.hulls import Alias
from service.store.unit import UnitOfWork


@dataclass(frozen=True)
class ShownHull:
    """`asked` is the id that was asked for, `hull` what stands for it; `merged` are those that lead to that one.

    `uses` counts what names any of them; `undone` are the numbers of changes that hold no more.
    """

    asked: str
    hull: HullModel
    merged: tuple[HullModel, ...]
    aliases: tuple[Alias, ...]
    uses: dict[str, int]
    changes: tuple[HullChange, ...]
    undone: frozenset[int]


def show_hull(uow: UnitOfWork, hull_id: str) -> ShownHull:
    """Return one hull model with its history. Refused where there is no such id."""
    with uow:
        hull = standing(uow, hull_id)
        family = uow.hulls.family(hull.id)
        written = uow.hulls.written(family)
        return ShownHull(
            hull_id,
            hull,
            tuple(written[name] for name in family[1:]),
            uow.hulls.aliases(family),
            uow.hulls.uses(family),
            uow.hulls.log.of(family),
            uow.hulls.log.undone(),
        )
