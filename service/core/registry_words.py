"""What was done to the registry of hull models, in words: for every page and printout alike."""

from __future__ import annotations

from service.core.registry import Cell, HullChange

DONE = {
    "import": "imported",
    "alias": "alias",
    "merge": "merged",
    "split": "split",
    "distinct": "said to be two",
    "undo": "taken back",
}
MOST_NAMED = 5


def what(change: HullChange) -> str:
    """Return a change in a line: what was done, and to which."""
    if change.kind == "undo":
        return f"change {change.undoes} taken back"
    named = [cell_named(cell) for cell in change.cells[:MOST_NAMED]]
    more = f" and {len(change.cells) - MOST_NAMED} more" if len(change.cells) > MOST_NAMED else ""
    return f"{DONE[change.kind]}: {'; '.join(named)}{more}"


def cell_named(cell: Cell) -> str:
    """Return what a cell is of.

    >>> cell_named(Cell("model", ("tern-24", "merged_into"), None, "tern-25")), cell_named(Cell("record", ("R-7",), "a", "b"))
    ('tern-24 -> tern-25', 'record R-7')
    """
    if cell.of == "made":
        more = f" and {len(cell.key) - MOST_NAMED} more" if len(cell.key) > MOST_NAMED else ""
        return f"new: {', '.join(cell.key[:MOST_NAMED])}{more}"
    if cell.of == "model" and cell.key[1] == "merged_into":
        return f"{cell.key[0]} -> {cell.after or cell.before}"
    if cell.of == "alias":
        return f"{cell.key[1]!r} of {cell.key[0]}"
    return f"record {cell.key[0]}" if cell.of == "record" else " ".join(cell.key)


def cell_value(value: object) -> str:
    """Return what stands in a cell.

    >>> cell_value(["Ada Holm", "2026-01-01", "same boat"]), cell_value(True), cell_value(None), cell_value(9420.0)
    ('by Ada Holm', 'there', '-', '9420')
    """
    if isinstance(value, list) and value:
        return f"by {value[0]}"
    if isinstance(value, bool):
        return "there" if value else "not there"
    return "-" if value is None else f"{value:g}" if isinstance(value, float) else str(value)
