"""What differs between two catalogues, for people."""

from __future__ import annotations

from collections.abc import Iterator

from service.cli.sheet import Sheet, listed, table, words
from service.core.catalogue_diff import CatalogueDiff, FieldChange, ThingChange, Value


def show(sheet: Sheet, found: CatalogueDiff) -> None:
    """Print the differences, kind by kind, and who carries them."""
    sheet.title("Catalogue", f"{found.before} -> {found.after}")
    if found.same:
        sheet.line("Nothing differs but, if at all, the version.")
        return
    for kind in dict.fromkeys(one.kind for one in found.changes):
        rows = [row for one in found.changes if one.kind == kind for row in _rows(one)]
        sheet.part(kind, table(("", "", "field", "before -> after"), rows, wraps=(0, 3)))
    if found.carried:
        rows = [(one.kind, one.code, one.what, f"{one.records}") for one in found.carried]
        sheet.part("carried by", table(("", "", "", ">records"), rows, wraps=()))
    for one in found.carried:
        if one.references:
            sheet.part(one.code, words(", ".join(one.references)))
    total = f"{found.records} of {found.looked_at} records carry something that was changed or removed."
    sheet.part("records", words(total), listed([f"{found.next} says whose configuration would no longer be right"]))


def _rows(one: ThingChange) -> Iterator[tuple[str, str, str, str]]:
    if one.what != "changed":
        yield one.code, one.what, "", ""
        return
    for place, field in enumerate(one.fields):
        first = (one.code, one.what) if place == 0 else ("", "")
        yield *first, field.field, _arrow(field)


def _arrow(field: FieldChange) -> str:
    before, after = _said(field.before, field.before_unit), _said(field.after, field.after_unit)
    return f"{before} -> {after}"


def _said(value: Value, unit: str | None) -> str:
    if value is None:
        return "none"
    text = ", ".join(_said(part, None) for part in value) if isinstance(value, tuple) else _one(value)
    text = f"({text})" if isinstance(value, tuple) else text
    return f"{text} {unit}" if unit and unit != "1" else text


def _one(value: str | float | bool) -> str:
    return (
        f"{value:.10g}" if isinstance(value, float) else str(value).lower() if isinstance(value, bool) else str(value)
    )
