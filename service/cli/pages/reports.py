"""Reports as people read them."""

from __future__ import annotations

from rich.console import RenderableType

from service.cli.pages.records import value
from service.cli.sheet import Sheet, hanging, table
from service.core.boat import title
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
    stands = f"{title(one.field)} {value(one.field, one.value)}; " if one.field and one.value is not None else ""
    mend = f"{one.mend} {one.command}" if one.command else one.mend
    return hanging(f"{stands}expected {one.expected}", one.why, f"mend: {mend}")
