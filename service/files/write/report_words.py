"""How a report's cells are written for people, on pages and on paper."""

from __future__ import annotations

from service.core.report import Cell, Column, Table

MINUS = "\u2212"
MADE_LEAST, MADE_MOST = 0.1, 100


def cell_text(cell: Cell, column: Column) -> str:
    """Write a cell: shares in per cent, numbers to three figures, a dash for what does not apply.

    >>> cell_text(0.0512, Column(name="s", heading="s", kind="share")), cell_text(None, Column(name="s", heading="s"))
    ('5.1 %', '-')
    >>> [cell_text(x, Column(name="n", heading="n", kind="number")) for x in (0.04567, 6.7732, 213.85)]
    ['0.046', '6.8', '214']
    """
    if cell is None:
        return "-"
    if isinstance(cell, str):
        return cell
    if column.kind == "share":
        per_cent = 100 * float(cell)
        text = f"{per_cent:.0f} %" if abs(per_cent) >= MADE_MOST else f"{per_cent:.1f} %"
    elif column.kind == "number":
        value = float(cell)
        size = abs(value)
        text = f"{value:.2g}" if size < MADE_LEAST else f"{value:.0f}" if size >= MADE_MOST else f"{value:.1f}"
    else:
        text = str(cell)
    return text.replace("-", MINUS, 1) if text.startswith("-") else text


def shown_rows(table: Table) -> tuple[tuple[Cell, ...], ...]:
    """Return the rows that go on a page."""
    return table.rows[: table.shown]


def rest(table: Table) -> str:
    """Say what is not on the page; nothing where all of it is."""
    left = len(table.rows) - table.shown
    return f"and {left} more rows: they are in the workbook, CSV, Parquet and JSON" if left > 0 else ""


def whole_headings(table: Table) -> list[str]:
    """Return headings that stand for themselves, with units: the ends of an interval say of what they are.

    >>> names = [Column(name=x, heading=x) for x in ("share", "from", "to", "growth", "from", "to", "95 % from", "to")]
    >>> whole_headings(Table(id="t", title="t", columns=names, rows=()))
    ['share', 'share from', 'share to', 'growth', 'growth from', 'growth to', '95 % from', '95 % to']
    """
    found, of = [], ""
    for column in table.columns:
        end = column.heading in ("from", "to")
        found.append(f"{of} {column.heading}" if end and of else column.heading)
        of = of if end else column.heading.removesuffix(" from")
    return [
        f"{text} ({column.unit})" if column.unit else text for text, column in zip(found, table.columns, strict=True)
    ]
