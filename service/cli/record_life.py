"""`transom records propose|step|outcome|measure|correct|restore|merge`: what happens to a record."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from datetime import date, datetime
from pathlib import Path
from typing import Annotated, Any, get_args

import typer

from service.cli import faults, given, out
from service.cli.doer import Who, doer
from service.cli.options import Db, Json, Preview, opened
from service.cli.pages import records as page
from service.cli.sheet import Sheet
from service.core.record import Status
from service.files.read.answer_file import read_answers
from service.files.read.installed_file import FromSite, read_installed
from service.flow.edit_record import Edited, correct_record
from service.flow.measure_record import measure_record
from service.flow.merge_records import Merged, merge_records, unmerge_records
from service.flow.propose_record import Chosen, kept_answer, propose_record
from service.flow.refusal import Moved
from service.flow.restore_revision import restore_revision
from service.flow.step_record import Season, Told, record_outcome, step_record

Ref = Annotated[str, typer.Argument(metavar="REF", help="The record's reference.")]
Why = Annotated[str | None, typer.Option("--why", help="The reason, kept in the record's history.")]
MustWhy = Annotated[str, typer.Option("--why", help="The reason, kept in the record's history.")]
Note = Annotated[str | None, typer.Option("--note", help="A note, kept with the outcome.")]
Day = Annotated[
    datetime | None, typer.Option("--date", formats=["%Y-%m-%d"], help="The day it was; today if not said.")
]
Expect = Annotated[
    int | None,
    typer.Option("--expect", metavar="REVISION", min=1, help="The revision you worked on; told if it moved."),
]
Anyway = Annotated[str | None, typer.Option("--anyway", metavar="WHY", help="Do it all the same, for this reason.")]
INSTALLED = "as-installed"
STATUSES: Sequence[str] = get_args(Status)


def propose(
    answer: Annotated[str, typer.Argument(metavar="ANSWER", help="An answer's id, or its JSON file; - reads it.")],
    boat: Annotated[int | None, typer.Option("--boat", min=1, help="Which boat, where it answers for several.")] = None,
    rank: Annotated[int | None, typer.Option("--rank", min=1, help="Which suggestion; the first if not said.")] = None,
    configuration: Annotated[
        str | None, typer.Option("--configuration", metavar='"GEAR LOWER UPPER SHAFT"', help="Which, by its codes.")
    ] = None,
    anyway: Anyway = None,
    why: Why = None,
    who: Who = None,
    json: Json = False,
    db: Db = None,
) -> None:
    """Make an answer's suggestion a proposed record.

    What does not fit needs --anyway with a reason.
    """
    chosen = Chosen(boat, rank, configuration)
    with opened(db) as store:
        if answer == given.STDIN or Path(answer).is_file():
            data, name = given.read(answer)
            with faults.reading(name, "answer"):
                answers = read_answers(data, name)
        else:
            answers = kept_answer(store.reading(), answer)
        made = propose_record(store.writing(), answers, chosen, who=doer(who), why=why, anyway=anyway)
    if json:
        document = {"schema": "record-change/1", "reference": made.record.reference, "revision": 1, "rank": made.rank}
        out.document({**document, "notes": list(made.notes), "record": _record(made.record)})
        return
    out.say(f"{made.record.reference}  proposed: {made.record.configuration}")
    for note in made.notes:
        out.note(f"transom: {note}")


def step(
    ref: Ref,
    status: Annotated[str, typer.Argument(metavar="shipped|installed|withdrawn", help="What it is now.")],
    as_installed: Annotated[
        str | None,
        typer.Option("--as-installed", metavar="FORM", help="What was found on site: JSON, TOML or a boat form."),
    ] = None,
    day: Day = None,
    why: Why = None,
    note: Note = None,
    anyway: Anyway = None,
    expect: Expect = None,
    who: Who = None,
    json: Json = False,
    db: Db = None,
) -> None:
    """Take a record a step further.

    From proposed to shipped to installed, from anywhere to withdrawn; anything else is a correction and needs --why.
    """
    if status not in STATUSES:
        raise faults.BadInput(f"there is no step {status!r}; take shipped, installed or withdrawn")
    site = _from_site(as_installed) if as_installed else None
    told = Told(_date(day), why, note, site, anyway)
    with opened(db) as store, _told_as_json(json):
        done = step_record(store.writing(), ref, status, told, who=doer(who), expect=expect)  # type: ignore[arg-type] # one of the list above
    _show(done, status, json)


def outcome(
    ref: Ref,
    fitted: Annotated[
        bool | None, typer.Option("--fitted-as-proposed/--not-as-proposed", help="Whether it fitted as proposed.")
    ] = None,
    changed: Annotated[str | None, typer.Option("--changed", metavar="WHAT", help="What was changed, and why.")] = None,
    note: Note = None,
    why: Why = None,
    expect: Expect = None,
    who: Who = None,
    json: Json = False,
    db: Db = None,
) -> None:
    """Write down how an installation went after a season.

    --changed alone says that it did not fit as proposed.
    """
    season = Season(False if changed and fitted is None else fitted, changed, note)
    with opened(db) as store, _told_as_json(json):
        done = record_outcome(store.writing(), ref, season, who=doer(who), why=why, expect=expect)
    _show(done, "outcome", json)


def measure(
    ref: Ref,
    form: Annotated[str, typer.Argument(metavar="FORM", help="A boat form (JSON or TOML) with what was measured.")],
    day: Day = None,
    why: Why = None,
    expect: Expect = None,
    who: Who = None,
    json: Json = False,
    db: Db = None,
) -> None:
    """Keep what was measured on a record's boat.

    Earlier measurements stay; what was measured on the boat outranks paper, that a photo, that a guess; then the newest.
    """
    said = _from_site(form)
    with opened(db) as store, _told_as_json(json):
        done = measure_record(store.writing(), ref, said, who=doer(who), why=why, day=_date(day), expect=expect)
    _show(done, "measured", json)


def correct(
    ref: Ref,
    values: Annotated[
        list[str],
        typer.Argument(metavar="FIELD=VALUE", help="Fields as an export names them; nothing after = empties."),
    ],
    why: MustWhy,
    expect: Expect = None,
    who: Who = None,
    json: Json = False,
    db: Db = None,
) -> None:
    """Set fields of a record to other values, for a reason."""
    wanted = dict[str, Any]()
    for one in values:
        name, mark, value = one.partition("=")
        if not mark:
            raise faults.BadInput(f"{one!r} sets nothing; write FIELD=VALUE, such as boat.year=1984")
        wanted[name.strip()] = value
    with opened(db) as store, faults.reading("what is set", "record"), _told_as_json(json):
        done = correct_record(store.writing(), ref, wanted, who=doer(who), why=why, expect=expect)
    _show(done, "corrected", json)


def restore(
    ref: Ref,
    revision: Annotated[int, typer.Argument(metavar="REVISION", min=1, help="The revision to go back to.")],
    why: MustWhy,
    expect: Expect = None,
    who: Who = None,
    json: Json = False,
    db: Db = None,
) -> None:
    """Make a record again what it was; what it is now stays in its history."""
    with opened(db) as store, _told_as_json(json):
        done = restore_revision(store.writing(), ref, revision, who=doer(who), why=why, expect=expect)
    _show(done, f"as at revision {revision}", json)


def merge(
    ref: Ref,
    other: Annotated[str, typer.Argument(metavar="OTHER", help="The same installation, written down a second time.")],
    preview: Preview = False,
    undo: Annotated[bool, typer.Option("--undo", help="Take the two apart again; needs --why.")] = False,
    why: Why = None,
    who: Who = None,
    json: Json = False,
    db: Db = None,
) -> None:
    """Make two records of one installation one.

    REF stays and is filled up from OTHER, whose reference leads to it from then on. --undo takes them apart.
    """
    if undo and (preview or not why):
        raise faults.BadInput("--undo needs a reason (--why), and has no preview")
    with opened(db) as store:
        if undo:
            done = unmerge_records(store.writing(), ref, other, who=doer(who), why=str(why))
        else:
            uow = store.reading() if preview else store.writing()
            done = merge_records(uow, ref, other, who=doer(who), why=why, preview=preview)
    if json:
        out.document(_merged(done))
        return
    with out.page() as console:
        page.merged(Sheet(console), done)


def _merged(done: Merged) -> dict[str, Any]:
    return {
        "schema": "record-merge/1",
        "into": done.into,
        "other": done.other,
        "revision": done.number,
        "preview": done.preview,
        "changes": [c.model_dump(mode="json") for c in done.taken],
        "differs": [{"field": c.field, "stands": c.before, "other": c.after} for c in done.differs],
    }


def _show(done: Edited, what: str, json: bool) -> None:
    if json:
        out.document(
            {
                "schema": "record-change/1",
                "reference": done.record.reference,
                "revision": done.number,
                "changes": [c.model_dump(mode="json") for c in done.changes],
                "notes": list(done.notes),
                "record": _record(done.record),
            }
        )
        return
    with out.page() as console:
        page.edited(Sheet(console), done, what)


def _record(record: Any) -> Any:  # noqa: ANN401 - JSON is any
    return record.model_dump(mode="json", by_alias=True, exclude_none=True)


def _from_site(file: str) -> FromSite:
    data, name = given.read(file)
    with faults.reading(name, INSTALLED):
        return read_installed(data, name)


@contextmanager
def _told_as_json(json: bool) -> Iterator[None]:
    """Print what was changed meanwhile as a document too, for whoever asked for one."""
    try:
        with faults.reading("the record", "boat-form"):
            yield
    except Moved as moved:
        if json:
            clashes = [clash.model_dump(mode="json") for clash in moved.clashes]
            about = {"reference": moved.reference, "expected": moved.expected, "revision": moved.head}
            out.document({"schema": "record-conflict/1", **about, "clashes": clashes})
        raise


def _date(day: datetime | None) -> date | None:
    return day.date() if day else None
