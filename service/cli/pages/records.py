"""Records as people read them: one record, its history, a list, and what a change did."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

from rich.console import RenderableType

from service.cli.pages import boat
from service.cli.sheet import Sheet, hanging, number, said, share, table, words
from service.core.boat import title
from service.core.measurement import Measurement, fields, of_field
from service.core.record import HullModel, Record
from service.core.revision import Change, changes
from service.flow.edit_record import Edited
from service.flow.find_records import Found
from service.flow.merge_records import Merged
from service.flow.record_history import History, Shown

_APART = ("record.", "configuration.", "placement.", "outcome.", "proposed.", "contact.", "methods[", "uncertainties[")
LONGEST_VALUE = 60


def show(sheet: Sheet, shown: Shown) -> None:
    """Print the page of one record."""
    record = shown.record
    sheet.title(f"record {record.reference}", f"revision {shown.revision.number} of {shown.head}")
    sheet.part("status", words(f"{record.status}{f', {record.date}' if record.date else ''}", "bold"), *_about(shown))
    sheet.part("boat", *_boat(record, shown.hull))
    sheet.part("carries", words(str(record.configuration), "bold"), *_carried(record))
    sheet.part("outcome", *_outcome(record))
    sheet.part("measured", *measured(shown.measured))
    if shown.attached:
        files = [(str(one.number), one.name, one.type, f"{one.bytes}", one.sha256[:12]) for one in shown.attached]
        sheet.part("files", table((">", "name", "type", ">bytes", "sha256"), files, wraps=(1,)))
    form = [c for c in changes(None, record) if not c.field.startswith(_APART)]
    sheet.part("form", table(("", ""), [(title(c.field), value(c.field, c.after)) for c in form], wraps=(0, 1)))


def _about(shown: Shown) -> list[RenderableType]:
    record, last = shown.record, shown.revision
    lines = [
        f"last changed by {last.who}, {last.at:%Y-%m-%d %H:%M} UTC: {last.why}",
        *([f"dealer {record.dealer}"] if record.dealer else []),
        *([f"made from answer {record.answer}, catalogue {record.catalogue}"] if record.answer else []),
        *([f"the same boat: {', '.join(shown.boat)}"] if shown.boat else []),
        *([f"took in {', '.join(shown.took_in)}"] if shown.took_in else []),
        *shown.notes,
    ]
    return [words(line) for line in lines]


def _boat(record: Record, hull: HullModel | None) -> list[RenderableType]:
    about = record.form.boat
    told = [
        f"'{about.name}'" if about.name else "",
        f"hull number {about.hull_number}" if about.hull_number else "",
        f"sail number {about.sail_number}" if about.sail_number else "",
        f"built {about.year}" if about.year else "",
    ]
    return [words(named(record, hull), "bold"), words(", ".join(word for word in told if word) or "-")]


def named(record: Record, hull: HullModel | None) -> str:
    """Return what a record's boat is called: her hull model, else what was written."""
    form = record.form.boat
    return str(hull) if hull else " ".join(w for w in (form.builder, form.model) if w) or "hull model not known"


def _carried(record: Record) -> list[RenderableType]:
    spot = record.placement.model_dump(exclude_none=True)
    lines = [", ".join(f"{key.removesuffix('_mm').replace('_', ' ')} {number(v, 'mm')}" for key, v in spot.items())]
    if record.replaced:
        lines.append(f"proposed had been {record.replaced}")
    return [words(line) for line in lines if line]


def _outcome(record: Record) -> list[RenderableType]:
    told = record.outcome
    fitted = {True: "fitted as proposed", False: "did not fit as proposed", None: ""}[told.fitted_as_proposed]
    lines = [fitted, f"changed: {told.changed}" if told.changed else "", told.note or ""]
    return [words(line) for line in lines if line]


def measured(rows: Sequence[Measurement]) -> list[RenderableType]:
    """Return what was measured: for each thing the value that stands, and under it those that do not."""
    lines = []
    for path in fields():
        for place, row in enumerate(of_field(rows, path)):
            how = f"{row.method or 'not said how'}, {row.who}, {row.taken or row.at.date()}"
            lines.append((title(path) if place == 0 else "  also", row.text, how))
    return [table(("", "as written", "how, by whom, when"), lines, wraps=(0, 2))] if lines else []


def history(sheet: Sheet, found: History) -> None:
    """Print who changed what, when and why."""
    sheet.title(f"record {found.reference}", f"{len(found.steps)} revisions")
    for note in found.notes:
        sheet.line(note)
    for step in found.steps:
        about = words(f"{step.who}, {step.at:%Y-%m-%d %H:%M} UTC: {step.why}", "bold")
        body = [words(f"written down with {len(step.changes)} values")] if step.number == 1 else changed(step.changes)
        sheet.part(f"revision {step.number}", about, *(body or [words("nothing differs")]))


def changed(rows: Iterable[Change]) -> list[RenderableType]:
    """Return fields with what they were and what they became."""
    lines = [(c.field, value(c.field, c.before), "->", value(c.field, c.after)) for c in rows]
    return [table(("", "", "", ""), lines, wraps=(0, 1, 3))] if lines else []


def value(field: str, what: Any) -> str:  # noqa: ANN401 - JSON is any
    """Write a value of a record for people, a long list by its beginning."""
    if what is None:
        return "-"
    text = said(field, what)
    return text if len(text) <= LONGEST_VALUE else f"{text[:LONGEST_VALUE]}..."


def edited(sheet: Sheet, done: Edited, what: str) -> None:
    """Print what a change did to one record."""
    sheet.title(f"record {done.record.reference}: {what}", f"revision {done.number}")
    sheet.part("changed", *(changed(done.changes) or [words("nothing")]))
    sheet.part("note", *boat.bullets(done.notes))


def merged(sheet: Sheet, done: Merged) -> None:
    """Print what a merge did or would do."""
    would = "preview: nothing was written" if done.preview else f"revision {done.number}"
    sheet.title(f"record {done.into} and {done.other}", would)
    sheet.part("changed", *(changed(done.taken) or [words(f"nothing: {done.into} says it all")]))
    lines = [(c.field, value(c.field, c.before), value(c.field, c.after)) for c in done.differs]
    if lines:
        sheet.part("differs", table(("", f"stands in {done.into}", f"{done.other} says"), lines, wraps=(0, 1, 2)))


def found(sheet: Sheet, result: Found) -> None:
    """Print a list of records."""
    if not result.sure:
        sheet.title("records", "it is not sure which hull model is meant")
        sheet.part("hull", *boat.hull(result.hull))
        return
    taken_for = f"taken for {result.hull.model}" if result.hull else ""
    sheet.title(f"{len(result.records)} records", taken_for)
    models = {model.id: model for model in result.models}
    if result.near:
        near = {one.record: one for one in result.near}
        rows: list[tuple[str | RenderableType, ...]] = [
            (
                share(near[r.reference].likeness),
                hanging(
                    f"{r.reference}  {named(r, models.get(r.hull or ''))}{f', {r.form.boat.year}' if r.form.boat.year else ''}"
                    f"  ({r.status})",
                    f"carries {r.configuration}",
                    f"compared by {', '.join(title(path) for path in near[r.reference].shared)}",
                    *(
                        [f"differs: {boat.named(near[r.reference].differences)}"]
                        if near[r.reference].differences
                        else []
                    ),
                ),
            )
            for r in result.records
        ]
        sheet.whole(table((">alike", "record"), rows))
        return
    listed = [
        (
            r.reference,
            str(r.date or "-"),
            r.status,
            f"{named(r, models.get(r.hull or ''))}{f', {r.form.boat.year}' if r.form.boat.year else ''}",
            str(r.configuration),
        )
        for r in result.records
    ]
    sheet.whole(table(("record", "date", "status", "boat", "carries"), listed, wraps=(3, 4)))
    if result.next:
        sheet.line(f"more: --after {result.next}")
