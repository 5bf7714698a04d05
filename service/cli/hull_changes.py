"""`transom hulls alias|merge|unmerge|split|duplicates|distinct|undo|log`: what is done to the registry."""

from __future__ import annotations

from typing import Annotated, Any

import typer

from service.cli import out
from service.cli.doer import Who, doer
from service.cli.options import Db, Json, Preview, opened, reading
from service.cli.pages import hulls as page
from service.cli.progress import bar
from service.cli.sheet import Sheet
from service.core.record import HullModel
from service.core.registry import Cell, HullChange
from service.flow.alias_hulls import add_alias, remove_alias
from service.flow.duplicate_hulls import find_duplicates, say_distinct
from service.flow.merge_hulls import merge_hulls
from service.flow.split_hulls import Into, split_hull
from service.flow.undo_hulls import Undone, undo_change, unmerge_hulls

Id = Annotated[str, typer.Argument(metavar="ID", help="A hull model's id, as `transom hulls list` shows it.")]
Other = Annotated[str, typer.Argument(metavar="OTHER", help="The other one's id.")]
Why = Annotated[str, typer.Option("--why", help="The reason, kept in the registry's history.")]
UNSAID = "no reason given"


def alias(
    hull: Id,
    name: Annotated[str, typer.Argument(metavar="NAME", help="The way people write it.")],
    remove: Annotated[bool, typer.Option("--remove", help="Forget it instead.")] = False,
    why: Why = UNSAID,
    who: Who = None,
    json: Json = False,
    db: Db = None,
) -> None:
    """Take a name for a hull model from now on, as somebody decided, or forget it."""
    do = remove_alias if remove else add_alias
    with opened(db) as store:
        done = do(store.writing(), hull, name, who=doer(who), why=why)
    if json:
        shared = [one.id for one in done.shared]
        document = {"schema": "hull-alias/1", "hull": _hull(done.hull), "alias": done.alias, "removed": remove}
        out.document({**document, "shared": shared, "change": done.number})
        return
    out.say(page.aliased(done, removed=remove))


def merge(
    hull: Id,
    other: Other,
    preview: Preview = False,
    why: Why = UNSAID,
    who: Who = None,
    json: Json = False,
    db: Db = None,
) -> None:
    """Make OTHER lead to ID: they are one hull model.

    Nothing changes its id: what names OTHER goes on to work, and is found under ID.
    """
    with opened(db) as store:
        uow = store.reading() if preview else store.writing()
        done = merge_hulls(uow, hull, other, who=doer(who), why=why, preview=preview)
    if json:
        document = {"schema": "hull-merge/1", "into": _hull(done.into), "other": _hull(done.other), "preview": preview}
        fills = [_cell(cell) for cell in done.fills]
        rest = {"names": list(done.names), "uses": done.uses, "fills": fills, "differs": _differs(done.differs)}
        out.document({**document, **rest, "change": done.number})
        return
    with out.page() as console:
        page.merged(Sheet(console), done)


def unmerge(
    other: Other, preview: Preview = False, why: Why = UNSAID, who: Who = None, json: Json = False, db: Db = None
) -> None:
    """Let OTHER, which was merged into another hull model, stand for itself again."""
    with opened(db) as store:
        uow = store.reading() if preview else store.writing()
        _undone(unmerge_hulls(uow, other, who=doer(who), why=why, preview=preview), json)


def split(
    hull: Id,
    new: Annotated[str | None, typer.Option("--new", metavar="MODEL", help="The name of a new hull model.")] = None,
    builder: Annotated[str | None, typer.Option("--builder", help="The new one's yard; else the same.")] = None,
    into: Annotated[str | None, typer.Option("--into", metavar="ID", help="One that is there, instead.")] = None,
    record: Annotated[list[str] | None, typer.Option("--record", metavar="REF", help="A record; repeatable.")] = None,
    name: Annotated[list[str] | None, typer.Option("--alias", metavar="NAME", help="An alias; repeatable.")] = None,
    preview: Preview = False,
    why: Why = UNSAID,
    who: Who = None,
    json: Json = False,
    db: Db = None,
) -> None:
    """Move records and aliases of a hull model into a new one, or into one that is there: back, too."""
    if (new is None) == (into is None):
        raise typer.BadParameter("give either --new MODEL or --into ID")
    target = Into(into, new, builder)
    with opened(db) as store:
        uow = store.reading() if preview else store.writing()
        done = split_hull(
            uow, hull, target, records=record or (), aliases=name or (), who=doer(who), why=why, preview=preview
        )
    if json:
        document = {"schema": "hull-split/1", "source": _hull(done.source), "into": _hull(done.into), "new": done.fresh}
        moved = {"records": list(done.records), "aliases": list(done.aliases)}
        out.document({**document, **moved, "preview": preview, "change": done.number})
        return
    with out.page() as console:
        page.split(Sheet(console), done)


def duplicates(
    limit: Annotated[int, typer.Option("--limit", min=1, help="How many to show; --json lists all.")] = 20,
    json: Json = False,
    db: Db = None,
) -> None:
    """List pairs of hull models that may be one and the same, likeliest first, and why."""
    with reading(db) as uow, bar("hull models", uow.hulls.count()) as advance:
        found = find_duplicates(uow, progress=advance)
    if json:
        rows = [
            {"one": _hull(d.one), "other": _hull(d.other), "probability": d.probability, "why": d.why}
            | {"differs": _differs(d.differs)}
            for d in found
        ]
        out.document({"schema": "hull-duplicates/1", "pairs": rows})
        return
    with out.page() as console:
        page.duplicates(Sheet(console), found, limit)


def distinct(hull: Id, other: Other, why: Why = UNSAID, who: Who = None, json: Json = False, db: Db = None) -> None:
    """Remember that two hull models are two, whatever they look like: they are not proposed again."""
    with opened(db) as store:
        done = say_distinct(store.writing(), hull, other, who=doer(who), why=why)
    if json:
        out.document({"schema": "hull-distinct/1", "hulls": sorted([hull, other]), "change": done})
        return
    out.say(f"{hull} and {other} are two" + (f" (change {done})" if done else ", as was known"))


def undo(
    change: Annotated[int, typer.Argument(metavar="CHANGE", min=1, help="Its number, as `transom hulls log` shows.")],
    preview: Preview = False,
    why: Why = UNSAID,
    who: Who = None,
    json: Json = False,
    db: Db = None,
) -> None:
    """Take a change to the registry back, whichever it was; taking that back does it again."""
    with opened(db) as store:
        uow = store.reading() if preview else store.writing()
        _undone(undo_change(uow, change, who=doer(who), why=why, preview=preview), json)


def log(
    limit: Annotated[int, typer.Option("--limit", min=1, help="How many.")] = 20, json: Json = False, db: Db = None
) -> None:
    """List the last changes to the registry: who, when, why, what."""
    with reading(db) as uow:
        changes, undone = uow.hulls.log.latest(limit), uow.hulls.log.undone()
    if json:
        rows = [change_document(change, undone) for change in changes]
        out.document({"schema": "hull-log/1", "changes": rows})
        return
    with out.page() as console:
        page.log(Sheet(console), changes, undone)


def change_document(change: HullChange, undone: frozenset[int]) -> dict[str, Any]:
    """Return a change as JSON values, with every cell before and after."""
    return {
        "change": change.number,
        "at": change.at.isoformat(),
        "who": change.who,
        "why": change.why,
        "kind": change.kind,
        "undoes": change.undoes,
        "undone": change.number in undone,
        "cells": [_cell(cell) for cell in change.cells],
    }


def _undone(done: Undone, json: bool) -> None:
    if json:
        turned, kept = [_cell(c) for c in done.turned], [{**_cell(c), "now": now} for c, now in done.kept]
        document = {"schema": "hull-undo/1", "undoes": done.change.number, "preview": done.preview}
        out.document({**document, "changed": turned, "kept": kept, "change": done.number})
        return
    with out.page() as console:
        page.undone(Sheet(console), done)


def _cell(cell: Cell) -> dict[str, Any]:
    return {"of": cell.of, "key": list(cell.key), "before": cell.before, "after": cell.after}


def _hull(hull: HullModel) -> dict[str, Any]:
    return hull.model_dump(mode="json")


def _differs(rows: tuple[tuple[str, Any, Any], ...]) -> list[dict[str, Any]]:
    return [{"field": name, "one": one, "other": other} for name, one, other in rows]
