"""Reports as people read them."""

from __future__ import annotations

from typing import TYPE_CHECKING

from rich.console import RenderableType

from service.cli.out import WIDTH
from service.cli.sheet import RIGHT, Sheet, hanging, listed, table
from service.core.boat import title
from service.core.report import Report, Table, period
from service.files.write.report_words import cell_text

if TYPE_CHECKING:
    from service.core.quality import Finding, Quality

WORDS = {
    "impossible": "cannot be true",
    "duplicate": "written down twice",
    "outlier": "unlike sister ships",
    "disagreeing": "measured twice, not the same",
    "fails_fit": "does not fit its own boat",
    "missing": "not said, and matters",
}
SHOWN = 25
"""Findings of one kind on a page; all of them are in --json and --out."""


ROWS = 8
"""Rows of a report's table on a page; more of them are in the files."""


def report(sheet: Sheet, found: Report) -> None:
    """Print a report: what it says, what was counted, and the first rows of the tables that belong on a page."""
    sheet.title(found.title, f"as of {found.as_of}, {period(found.first, found.last)}")
    sheet.part("says", listed(found.findings))
    counted = [*((name, str(count)) for name, count in found.counts.items()), *found.filters.items()]
    sheet.part("counted", table(("", ""), counted))
    sheet.part(
        "left out",
        *[table((">", "", ""), [(str(x.count), x.what, x.why) for x in found.left_out])] * bool(found.left_out),
    )
    for one in found.tables:
        if one.shown and one.rows:
            columns = _columns(one)
            sheet.line(one.title)
            sheet.whole(
                table([head for head, _ in columns], zip(*(cells for _, cells in columns), strict=True), wraps=())
            )
            left = len(one.rows) - ROWS
            sheet.line(f"and {left} more; --out and --json give all\n" if left > 0 else "")


def _columns(one: Table) -> list[tuple[str, list[str]]]:
    """Return headings and cells of as many columns as a page is wide, the ends of an interval behind what they hold."""
    found = list[tuple[str, list[str]]]()
    for at, column in enumerate(one.columns):
        cells = [cell_text(row[at], column) for row in one.rows[:ROWS]]
        if column.heading == "to" and found:
            found[-1] = (found[-1][0], [f"{cell} to {end}" for cell, end in zip(found[-1][1], cells, strict=True)])
        elif column.heading == "from" and found:
            found[-1] = (found[-1][0], [f"{cell}  {end}" for cell, end in zip(found[-1][1], cells, strict=True)])
        else:
            found.append((("" if column.kind == "text" else RIGHT) + column.heading, cells))
    while len(found) > 1 and sum(max(map(len, (head, *cells))) + 2 for head, cells in found) > WIDTH:
        found.pop()
    return found


def quality(sheet: Sheet, found: Quality) -> None:
    """Print what is likely wrong with records, and how to mend it."""
    sheet.title("Quality of the records", f"{found.sound} of {found.records} are sound")
    sheet.part("findings", table((">", ""), [(str(count), WORDS[kind]) for kind, count in found.counts.items()]))
    for kind, words in WORDS.items():
        rows = [one for one in found.findings if one.kind == kind]
        if not rows:
            continue
        lines: list[tuple[str, RenderableType]] = [(one.record, _finding(one)) for one in rows[:SHOWN]]
        if len(rows) > SHOWN:
            lines.append(("", f"and {len(rows) - SHOWN} more; --json or --out gives all"))
        sheet.part(words, table(("", ""), lines))


def _finding(one: Finding) -> RenderableType:
    from service.cli.pages.records import value  # noqa: PLC0415 - large, and no other report needs it

    stands = f"{title(one.field)} {value(one.field, one.value)}; " if one.field and one.value is not None else ""
    mend = f"{one.mend} {one.command}" if one.command else one.mend
    return hanging(f"{stands}expected {one.expected}", one.why, f"mend: {mend}")
