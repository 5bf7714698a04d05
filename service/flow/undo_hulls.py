"""Take a change to the registry of hull models back, as far as nothing was built on it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from service.core.registry import Cell, HullChange
from service.flow.refusal import Refused
from service.store.unit import UnitOfWork


@dataclass(frozen=True)
class Undone:
    """Which change took which one back, and in which cells: `kept` are those that stay, with what stands there now."""

    number: int | None
    change: HullChange
    turned: tuple[Cell, ...]
    kept: tuple[tuple[Cell, Any], ...]
    preview: bool


def undo_change(uow: UnitOfWork, number: int, *, who: str, why: str, preview: bool = False) -> Undone:
    """Give every cell of a change the value it had before, and commit.

    What was changed since by an import or in a record's own history stays as it is, and a model that was added stays
    while anything names it. Taking back what was taken back does the first change again. Refused where there is no
    such change, where it holds no more, or where a later decision was built on it.
    """
    with uow:
        change = uow.hulls.log.get(number)
        if change is None:
            raise Refused(f"there is no change {number}; `transom hulls log` lists them")
        if number in uow.hulls.log.undone():
            raise Refused(f"change {number} was taken back already; `transom hulls log` shows by which")
        turned, kept = _sorted(uow, change)
        done = None
        if not preview:
            reason = f"took back change {number}" + (f": {why}" if why else "")
            move_records(uow, turned, who=who, why=reason)
            turned, still = _without_named(uow, turned)
            kept += still
            done = uow.hulls.change("undo", turned, who=who, why=why, undoes=number)
            uow.commit()
    return Undone(done, change, tuple(turned), tuple(kept), preview)


def unmerge_hulls(uow: UnitOfWork, hull_id: str, *, who: str, why: str, preview: bool = False) -> Undone:
    """Let a hull model that was merged into another stand for itself again, and commit. Refused where it was not."""
    with uow:
        undone = uow.hulls.log.undone()
        for change in reversed(uow.hulls.log.of([hull_id])):
            merged = any(c.key == (hull_id, "merged_into") and c.after for c in change.cells)
            if merged and change.number not in undone and hull_id in uow.hulls.survivors():
                return undo_change(uow, change.number, who=who, why=why, preview=preview)
        raise Refused(f"hull model {hull_id!r} was not merged into another; `transom hulls show {hull_id}` tells of it")


def move_records(uow: UnitOfWork, cells: Sequence[Cell], *, who: str, why: str) -> None:
    """Give records the hull models that cells say, as a revision of each."""
    wanted = {cell.key[0]: cell.after for cell in cells if cell.of == "record"}
    moved = [record.model_copy(update={"hull": wanted[name]}) for name, record in uow.records.among(wanted).items()]
    uow.records.revise_many(moved, who=who, why=why)


def _sorted(uow: UnitOfWork, change: HullChange) -> tuple[list[Cell], list[tuple[Cell, Any]]]:
    """Return the cells that can be turned back, turned, and those that stay."""
    turned, kept = [], list[tuple[Cell, Any]]()
    later: tuple[HullChange, ...] | None = None
    for cell in change.cells:
        now = uow.hulls.present(cell)
        if now == cell.after:
            turned.append(cell.turned())
            continue
        if later is None:
            later = _later(uow, change)
        since = next((c for c in later for other in c.cells if (other.of, other.key) == (cell.of, cell.key)), None)
        if since is not None or cell.key[-1] == "merged_into":
            which = f"change {since.number} by {since.who}" if since else "something else"
            raise Refused(
                f"change {change.number} cannot be taken back: {which} was built on it since"
                + (f"; take that back first (`transom hulls undo {since.number}`)" if since else "")
            )
        kept.append((cell, now))
    return turned, kept


def _later(uow: UnitOfWork, change: HullChange) -> tuple[HullChange, ...]:
    """Return the decisions after a change that concern the same hull models and hold."""
    undone = uow.hulls.log.undone()
    ids = set().union(*(cell.ids() for cell in change.cells))
    return tuple(
        c for c in uow.hulls.log.of(ids) if c.number > change.number and c.number not in undone and c.kind != "import"
    )


def _without_named(uow: UnitOfWork, cells: Sequence[Cell]) -> tuple[list[Cell], list[tuple[Cell, Any]]]:
    """Keep hull models from being taken away while something names them."""
    turned, kept = [], list[tuple[Cell, Any]]()
    for cell in cells:
        if cell.of != "made" or cell.after:
            turned.append(cell)
            continue
        for other, into in uow.hulls.merged_into(cell.key).items():
            raise Refused(f"{other!r} was merged into {into!r} since; `transom hulls unmerge {other}` first")
        used = uow.hulls.used(cell.key)
        free = tuple(name for name in cell.key if name not in used)
        if free:
            turned.append(Cell("made", free, cell.before, cell.after))
        if used:
            kept.append((Cell("made", tuple(sorted(used)), cell.after, cell.before), True))
    return turned, kept
