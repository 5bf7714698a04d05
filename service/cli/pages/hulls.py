"""The registry of hull models, and what is done to it, as pages."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

from rich.console import RenderableType

from service.cli.sheet import Sheet, number, said, share, table, words
from service.core.record import HullModel
from service.core.registry import Cell, HullChange
from service.core.registry_words import cell_named, cell_value, what
from service.flow.alias_hulls import Aliased
from service.flow.duplicate_hulls import Duplicate
from service.flow.merge_hulls import MergedHulls
from service.flow.show_hull import ShownHull
from service.flow.split_hulls import SplitHull
from service.flow.undo_hulls import Undone

PREVIEW = "preview: nothing was written"


def listed(sheet: Sheet, found: Sequence[HullModel]) -> None:
    """Print every hull model, one under the other."""
    sheet.title("Hull models", str(len(found)))
    if not found:
        sheet.line("none yet; take them over with `transom hulls import FILE`")
        return
    rows = [
        (
            hull.id,
            f"{hull}\n  also {', '.join(hull.aliases)}" if hull.aliases else str(hull),
            years(hull),
            number(hull.loa_mm, "mm"),
            hull.stern or "-",
        )
        for hull in found
    ]
    sheet.whole(table(("id", "hull model", "years", ">length", "stern"), rows, wraps=(1,)))


def years(hull: HullModel) -> str:
    """Return when it was built, as far as is known."""
    return f"{hull.first_year or ''}-{hull.last_year or ''}".strip("-")


def shown(sheet: Sheet, found: ShownHull) -> None:
    """Print one hull model with its names and its history."""
    hull = found.hull
    sheet.title(str(hull), hull.id)
    if found.asked != hull.id:
        sheet.line(f"{found.asked} was merged into {hull.id}, which stands for it")
    facts = {key: item for key, item in hull.model_dump(exclude={"id", "aliases"}).items() if item is not None}
    sheet.part("says", table(("", ""), [(key, _value(key, item)) for key, item in facts.items()]))
    if found.aliases:
        rows = [(one.alias, one.who, f"{one.at:%Y-%m-%d}", one.why) for one in found.aliases]
        sheet.part("aliases", table(("", "who", "when", "why"), rows))
    if found.merged:
        rows_merged = [(other.id, str(other), years(other)) for other in found.merged]
        sheet.part("leading to it", table(("id", "hull model", "years"), rows_merged, wraps=(1,)))
    sheet.part("named by", words(_uses(found.uses)))
    sheet.part("history", *_history(found.changes, found.undone))


def log(sheet: Sheet, changes: Sequence[HullChange], undone: Iterable[int]) -> None:
    """Print the last changes to the registry."""
    sheet.title("Changes to hull models", "newest first")
    for line in _history(changes, frozenset(undone)) or [words("none yet")]:
        sheet.whole(line)


def merged(sheet: Sheet, done: MergedHulls) -> None:
    """Print what a merge did or would do."""
    verb = "would lead" if done.number is None else "leads"
    sheet.title(f"{done.other.id} {verb} to {done.into.id}", _number(done.number))
    sheet.part("keeps", words(f"{done.into} ({done.into.id})"))
    sheet.part("answers to", words(", ".join(done.names) or "no further name"))
    sheet.part("brings along", words(_uses(done.uses)))
    if done.fills:
        sheet.part("taken over", _cells(done.fills))
    if done.differs:
        sheet.part("differs", _differs(done.into, done.other, done.differs))
    if done.number is not None:
        sheet.part("back", words(f"transom hulls unmerge {done.other.id}"))


def split(sheet: Sheet, done: SplitHull) -> None:
    """Print what a split did or would do."""
    fresh = " (new)" if done.fresh else ""
    sheet.title(f"{done.source} -> {done.into}{fresh}", _number(done.number))
    sheet.part("into", words(f"{done.into}, {done.into.id}"))
    sheet.part("records", words(", ".join(done.records) or "none"))
    sheet.part("aliases", words(", ".join(done.aliases) or "none"))
    if done.number is not None:
        sheet.part("back", words(f"transom hulls undo {done.number}"))


def aliased(done: Aliased, *, removed: bool) -> str:
    """Return in a line what became of an alias."""
    if removed:
        return f"{done.alias!r} is no alias of {done.hull.id} any more (change {done.number})"
    if done.number is None:
        return f"{done.alias!r} is known for {done.hull.id} already"
    also = f"; {', '.join(h.id for h in done.shared)} has it too, so it will be asked which" if done.shared else ""
    return f"{done.alias!r} is taken for {done.hull} ({done.hull.id}) from now on (change {done.number}){also}"


def duplicates(sheet: Sheet, found: Sequence[Duplicate], limit: int) -> None:
    """Print the pairs that may be one hull model."""
    sheet.title("May be one and the same", str(len(found)))
    for one in found[:limit]:
        about = words(f"{one.one} ({one.one.id})  ·  {one.other} ({one.other.id})", "bold")
        body: list[RenderableType] = [about, words(one.why)]
        if one.differs:
            body.append(_differs(one.one, one.other, one.differs))
        sheet.part(share(one.probability), *body)
    if not found:
        sheet.line("none")
        return
    if len(found) > limit:
        sheet.line(f"and {len(found) - limit} more; --limit or --json lists them")
    sheet.line("one and the same: transom hulls merge ID OTHER. Two: transom hulls distinct ID OTHER --why ...")


def undone(sheet: Sheet, done: Undone) -> None:
    """Print what taking a change back did or would do."""
    verb = "would be taken back" if done.preview else "taken back"
    sheet.title(f"change {done.change.number} {verb}", _number(done.number))
    sheet.part("it was", words(f"{what(done.change)}, by {done.change.who}, {done.change.at:%Y-%m-%d}"))
    sheet.part("changed", _cells(done.turned) if done.turned else words("nothing"))
    if done.kept:
        rows = [(cell_named(cell), cell_value(cell.after), cell_value(now)) for cell, now in done.kept]
        sheet.part("stays", table(("", "was made", "is now"), rows, wraps=(0, 1, 2)))


def _history(changes: Sequence[HullChange], undone: frozenset[int]) -> list[RenderableType]:
    rows = [
        (
            str(change.number),
            f"{change.at:%Y-%m-%d %H:%M}",
            change.who,
            f"{what(change)}{' - taken back' if change.number in undone else ''}\n  {change.why}",
        )
        for change in changes
    ]
    return [table((">change", "when (UTC)", "who", "what, why"), rows)] if rows else []


def _cells(cells: Iterable[Cell]) -> RenderableType:
    return table(
        ("", "", "", ""),
        [(cell_named(c), cell_value(c.before), "->", cell_value(c.after)) for c in cells],
        wraps=(0, 1, 3),
    )


def _differs(one: HullModel, other: HullModel, rows: Iterable[tuple[str, Any, Any]]) -> RenderableType:
    lines = [(name, _value(name, mine), _value(name, theirs)) for name, mine, theirs in rows]
    return table(("", one.id, other.id), lines, wraps=(0, 1, 2))


def _value(name: str, item: object) -> str:
    return str(item) if name.endswith("_year") else said(name, item)


def _uses(uses: dict[str, int]) -> str:
    return ", ".join(f"{count} {name}" for name, count in uses.items())


def _number(done: int | None) -> str:
    return PREVIEW if done is None else f"change {done}"
