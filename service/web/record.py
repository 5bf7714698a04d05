"""One record: its page, its drawing, its files, and all that happens to it."""

from __future__ import annotations

import base64
import hashlib
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any
from urllib.parse import quote

from fastapi import APIRouter, Request
from starlette.responses import Response

from service.core.boat import METHODS, get
from service.core.measurement import Measurement, of_field
from service.core.measurement import fields as measurable
from service.core.record import NEXT, Record
from service.files.read.errors import Unreadable
from service.flow.attach import attach
from service.flow.draw_record import check_record, draw_record
from service.flow.edit_record import Edited, redirected
from service.flow.merge_records import merge_records, unmerge_records
from service.flow.record_history import History, Shown, record_history, show_record
from service.flow.refusal import Moved, Refused
from service.flow.restore_revision import restore_revision
from service.flow.sign_in import Visitor
from service.flow.step_record import Told, step_record
from service.web import fields
from service.web.desk import Desk, Here
from service.web.faults import NotFound
from service.web.fleet import AT
from service.web.pages import Notice, page, redirect
from service.web.posted import Form
from service.web.sight import inside, note, seen
from service.web.who import Anyone, AtDesk, Fitting, actor

routes = APIRouter(prefix="/fleet/{reference}")
_EMPTY = (
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 400 60" role="img"><title>Nothing to draw</title>'
    '<text x="10" y="35" font-family="sans-serif" font-size="16">This cannot be drawn.</text></svg>'
)


@dataclass(frozen=True)
class Measured:
    """One thing that is measured: the value that stands, the row it comes from where one is kept, and the others."""

    path: str
    stands: float | None
    row: Measurement | None
    others: tuple[Measurement, ...]
    method: str | None


def standing(here: Desk, reference: str) -> str:
    """Return the reference that stands for this one. NotFound where there is no such record."""
    with here.store.reading() as uow:
        stands, _ = redirected(uow, reference)
        if uow.records.head(stands) is None:
            raise NotFound(f"There is no record {reference}. The fleet's search finds the others.")
    return stands


def changed(request: Request, reference: str, done: Edited, said: str) -> Response:
    """Return to the record's page after a change, which can be taken back from there."""
    to = f"{AT}/{quote(reference, safe='')}"
    if not done.changes:
        return redirect(request, to, "; ".join([*done.notes, f"{said}: nothing differs from what stood"]))
    undo = f"{to}/back/{done.number - 1}?expect={done.number}"
    return redirect(request, to, Notice("; ".join([said, *done.notes]), undo=undo))


@routes.get("")
def show(request: Request, reference: str, here: Here, by: Anyone) -> Response:
    """Show one record."""
    stands = standing(here, reference)
    if stands != reference:
        return redirect(request, f"{AT}/{quote(stands, safe='')}", f"{reference} was merged into {stands}")
    return _page(request, here, by, stands)


def _page(
    request: Request,
    here: Desk,
    by: Visitor,
    reference: str,
    *,
    trouble: str | None = None,
    lines: tuple[str, ...] = (),
    given: Mapping[str, str] | None = None,
    status: int = 200,
) -> Response:
    with here.store.reading() as uow:
        shown = show_record(uow, reference)
        own = inside(shown.record, by)
        history = record_history(uow, reference) if own else History(reference, ())
        catalogue = (
            uow.catalogues.get(shown.record.catalogue) if shown.record.catalogue else None
        ) or uow.catalogues.latest()
    record = seen(shown.record, by)
    note(request, here, by, [shown.record])
    names = {one.code: one.name for one in catalogue.gears} if catalogue else {}
    names |= {one.code: one.name for one in catalogue.brackets} if catalogue else {}
    return page(
        request, "fleet/record.html", status=status, shown=shown, record=record, own=own, steps=history.steps[::-1],
        measured=_measured(shown, record, own=own), fields=fields, names=names, next=NEXT[record.status],
        boat=fields.called(record, shown.hull), measurable=measurable(), methods=METHODS, given=given or {},
        trouble=trouble, lines=lines, may=_may(by),
    )  # fmt: skip


def _may(by: Visitor) -> frozenset[str]:
    found = {"fit"} if by.user.role in {"desk", "admin", "fitter"} else set()
    return frozenset(found | ({"edit"} if by.user.role in {"desk", "admin"} else set()))


def _measured(shown: Shown, record: Record, *, own: bool) -> list[Measured]:
    found = []
    for path in measurable():
        value, rows = get(record.form, path), of_field(shown.measured, path) if own else ()
        if value is None and not rows:
            continue
        stands = next((row for row in rows if row.value == value), None)
        others = tuple(row for row in rows if row is not stands)
        method = record.form.methods.get(path, record.form.methods.get("*"))
        found.append(Measured(path, value, stands, others, method))
    return found


@routes.get("/drawing.svg")
def show_drawing(reference: str, here: Here, by: Anyone) -> Response:
    """Give the drawing of a record: its configuration on its boat, where the record says it sits."""
    record, hull = _seen(here, by, reference)
    text = draw_record(here.store.reading(), record, f"{fields.called(record, hull)}: {record.configuration}") or _EMPTY
    style = text.partition("<style>")[2].partition("</style>")[0]
    known = base64.b64encode(hashlib.sha256(style.encode()).digest()).decode()
    policy = f"default-src 'none'; style-src 'sha256-{known}'; frame-ancestors 'none'"
    return Response(text, media_type="image/svg+xml", headers={"Content-Security-Policy": policy})


@routes.get("/checked")
def show_checked(request: Request, reference: str, here: Here, by: Anyone) -> Response:
    """Show what the rules say of a record where it sits; a page asks for this when it is there already."""
    record, _ = _seen(here, by, reference)
    found = check_record(here.store.reading(), record)
    return page(
        request, "fleet/checked.html", part="fleet/checked_part.html", found=found, record=record, fields=fields
    )


def _seen(here: Desk, by: Visitor, reference: str) -> tuple[Record, Any]:
    stands = standing(here, reference)
    with here.store.reading() as uow:
        record = uow.records.among([stands])[stands]
        hull = uow.hulls.get(record.hull) if record.hull else None
    return seen(record, by), hull


# --- files ------------------------------------------------------------------------------------------------


@routes.post("/files")
def do_attach(request: Request, reference: str, here: Here, by: Fitting, form: Form) -> Response:
    """Keep files with a record."""
    stands = standing(here, reference)
    files = [(one.name, one.content) for name, one in form.files if name == "files"]
    if not files:
        return _page(request, here, by, stands, trouble="No file was chosen.", status=422)
    try:
        fresh = attach(
            here.store.writing(actor(request, by)),
            here.vault,
            stands,
            files,
            who=by.who,
            note=form.text("note") or None,
        )
    except (Unreadable, Refused) as fault:
        return _page(request, here, by, stands, trouble=f"{fault}. Nothing was kept.", status=422)
    again = len(files) - len(fresh)
    said = f"{len(fresh)} kept" + (f"; {again} were here already" if again else "")
    return redirect(request, f"{AT}/{quote(stands, safe='')}#files", said)


@routes.get("/files/{number}")
def get_file(request: Request, reference: str, number: int, here: Here, by: Anyone) -> Response:
    """Give one file, to be kept and never shown as a page of this desk."""
    with here.store.reading() as uow:
        stands, _ = redirected(uow, reference)
        record = uow.records.get(stands)
        kept = next((one for one in uow.records.attachments.of([reference]) if one.number == number), None)
    if record is None or not inside(record, by):
        raise NotFound("There is no such file, or it is not yours to see.")
    data = here.vault.read(kept.sha256) if kept else None
    if kept is None or data is None:
        return redirect(request, f"{AT}/{quote(stands, safe='')}", f"File {number} of record {reference} is not here")
    headers = {
        "Content-Disposition": f"attachment; filename*=UTF-8''{quote(kept.name, safe='')}",
        "Content-Security-Policy": "default-src 'none'; sandbox",
    }
    note(request, here, by, [record])
    return Response(data, media_type=kept.type, headers=headers)


# --- what happens to it ---------------------------------------------------------------------------------


@routes.post("/back/{revision}")
def do_put_back(request: Request, reference: str, revision: int, here: Here, by: Fitting, form: Form) -> Response:
    """Make a record what it was at a revision; a fitter takes back what they did last, and nothing else."""
    stands = standing(here, reference)
    expect = _expected(request, form)
    if by.user.role == "fitter":
        _see_own(here, by, stands, revision)
    why = form.text("why") or "undone"
    try:
        done = restore_revision(
            here.store.writing(actor(request, by)), stands, revision, who=by.who, why=why, expect=expect
        )
    except Moved as moved:
        return _moved(request, here, by, stands, moved)
    return changed(request, stands, done, f"Record {stands} is again what it was at revision {revision}")


def _see_own(here: Desk, by: Visitor, reference: str, revision: int) -> None:
    with here.store.reading() as uow:
        history = uow.records.history(reference)
    if not history or revision != len(history) - 1 or history[-1].who != by.who:
        raise Refused("you can take back what you wrote down last, as long as nobody has changed it since")


def _expected(request: Request, form: Form) -> int | None:
    said = form.text("expect") or request.query_params.get("expect", "")
    return int(said) if said.isascii() and said.isdecimal() else None


def _moved(request: Request, here: Desk, by: Visitor, reference: str, moved: Moved) -> Response:
    lines = tuple(
        f"{fields.label(c.field)}: was {fields.value(c.field, c.was)}, {c.who} made it {fields.value(c.field, c.now)}"
        for c in moved.clashes
    )
    said = f"Somebody else was quicker: the record is at revision {moved.head}, you looked at {moved.expected}. Nothing was written."
    return _page(request, here, by, reference, trouble=said, lines=lines, status=409)


@routes.post("/step")
def do_step(request: Request, reference: str, here: Here, by: AtDesk, form: Form) -> Response:
    """Step a record: shipped, withdrawn, or a correction with its reason."""
    stands = standing(here, reference)
    asked = request.query_params
    status = form.text("status") or asked.get("status", "")
    if status not in NEXT:
        raise Refused(f"there is no step {status!r}; take shipped, installed or withdrawn")
    told = Told(why=form.text("why") or asked.get("why") or None)
    try:
        done = step_record(
            here.store.writing(actor(request, by)), stands, status, told, who=by.who, expect=_expected(request, form)
        )
    except Moved as moved:
        return _moved(request, here, by, stands, moved)
    except Refused as refused:
        return _page(request, here, by, stands, trouble=f"{refused}.", given=dict(form.fields), status=422)
    return changed(request, stands, done, f"Record {stands} is {status}")


@routes.get("/merge")
def show_merge(request: Request, reference: str, here: Here, by: AtDesk, other: str = "") -> Response:
    """Show what a merge with another record would do, or ask for the other."""
    stands = standing(here, reference)
    done, trouble = None, None
    if other.strip():
        try:
            done = merge_records(here.store.reading(), stands, other.strip(), who=by.who, preview=True)
        except Refused as refused:
            trouble = f"{refused}."
    return page(
        request, "fleet/merge.html", status=422 if trouble else 200, reference=stands, other=other.strip(), done=done,
        trouble=trouble, fields=fields,
    )  # fmt: skip


@routes.post("/merge")
def do_merge(request: Request, reference: str, here: Here, by: AtDesk, form: Form) -> Response:
    """Make another record part of this one."""
    stands = standing(here, reference)
    done = merge_records(
        here.store.writing(actor(request, by)), stands, form.text("other"), who=by.who, why=form.text("why") or None
    )
    to = f"{AT}/{quote(stands, safe='')}"
    said = Notice(
        f"{done.other} is part of {done.into} now", f"{to}/unmerge/{quote(done.other, safe='')}", "Take apart again"
    )
    return redirect(request, to, said)


@routes.post("/unmerge/{other}")
def do_unmerge(request: Request, reference: str, other: str, here: Here, by: AtDesk, form: Form) -> Response:
    """Take two records apart again."""
    why = form.text("why") or "undone"
    done = unmerge_records(here.store.writing(actor(request, by)), reference, other, who=by.who, why=why)
    return redirect(request, f"{AT}/{quote(done.into, safe='')}", f"{done.other} stands for itself again")
