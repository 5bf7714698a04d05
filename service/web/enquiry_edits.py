"""What can be changed about one enquiry: its form, its hull model, who asks, whose move it is."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping
from typing import Annotated, Any

from fastapi import APIRouter, Query, Request
from starlette.responses import Response

from service.core.boat import Contact
from service.core.form import Defect, FormError, parse_shape
from service.core.measurement import fields as measured
from service.flow.edit_enquiry import (
    EditedEnquiry,
    EnquiryMoved,
    bring_back,
    choose_hull,
    close_enquiry,
    edit_enquiry,
    note_enquiry,
    say_who_asks,
    undo_step,
)
from service.flow.refusal import Refused
from service.flow.show_enquiry import get_enquiry, show_enquiry
from service.flow.sign_in import Visitor
from service.store.enquiries import Enquiry
from service.web import enquiry_page
from service.web.boat_fields import LISTS, texts
from service.web.boat_fields import shown as field_text
from service.web.boat_sent import read_fields, sent_texts
from service.web.desk import Desk, Here
from service.web.faults import NotFound
from service.web.fit_panel import Panel
from service.web.pages import ROOT, Notice, page, redirect
from service.web.posted import Form, Posted
from service.web.who import Selling, actor, owner_of

routes = APIRouter(prefix="/enquiries")
AT = f"{ROOT}/enquiries"
HULL_NAME = ("boat.model", "boat.builder", "boat.year")


def mine(here: Desk, by: Visitor, enquiry_id: str) -> Enquiry:
    """Return an enquiry that somebody may see. NotFound where there is none, or where it is another dealer's."""
    found = get_enquiry(here.store.reading(), enquiry_id, owner_of(by))
    if found is None:
        raise NotFound("There is no such enquiry.")
    return found


def shown(
    request: Request,
    here: Desk,
    enquiry: Enquiry,
    *,
    status: int = 200,
    **said: Any,  # noqa: ANN401 - what was sent, and what is wrong with it
) -> Response:
    """Return the page of an enquiry; what there is to offer comes after it, for the letter is looked at first."""
    with here.store.reading() as uow:
        got = show_enquiry(uow, enquiry)
    view = enquiry_page.view(got, **said)
    return page(request, "enquiries/show.html", status=status, panel=Panel(enquiry), **view)


@routes.post("/{enquiry_id}/form")
def save_form(request: Request, here: Here, by: Selling, form: Form, enquiry_id: str) -> Response:
    """Take the form as it was filled in; nothing is lost where it cannot be taken."""
    enquiry = mine(here, by, enquiry_id)
    sent = _chosen(sent_texts(form))
    expect = _whole(form, "version")
    if form.text("more") in LISTS:
        rows = f"rows.{form.text('more')}"
        roomier = sent | {rows: str(_number(sent.get(rows)) + 1)}
        return shown(request, here, enquiry, sent=roomier, version=expect)
    typed = _typed(sent)
    try:
        unit = here.store.writing(actor(request, by))
        edited = edit_enquiry(
            unit, enquiry, lambda base: read_fields(sent, base), who=by.who, expect=expect, typed=typed
        )
    except FormError as error:
        return shown(request, here, enquiry, status=422, defects=error.defects, sent=sent, version=expect)
    except EnquiryMoved as moved:
        enquiry = mine(here, by, enquiry_id)
        both = texts(moved.form) | {name: text for name, text in typed.items() if name in sent}
        return shown(
            request, here, enquiry, status=409, sent=both, version=moved.version, clashes=moved.clashes, moved=moved.step
        )  # fmt: skip
    return _done(request, enquiry_id, edited, "The form is saved", "Nothing was changed", at="form")


def _chosen(sent: dict[str, str]) -> dict[str, str]:
    """Leave out what somebody chose of another's: it then stays as it is."""
    theirs = [
        key.removeprefix("choose.") for key, value in sent.items() if key.startswith("choose.") and value == "theirs"
    ]
    left = set(theirs)
    left |= {f"methods.{name[8:-1]}" for name in theirs if name.startswith("methods[")}
    left |= {f"rows.{name}" for name in theirs if name in LISTS}
    return {key: value for key, value in sent.items() if key not in left}


def _typed(sent: Mapping[str, str]) -> dict[str, str]:
    """Return the measurements that were written in words of somebody's own, such as feet and inches."""
    return {path: sent[path][:200] for path in measured() if sent.get(path) and not _plain(sent[path])}


def _plain(text: str) -> bool:
    try:
        return field_text(float(text)) == text
    except ValueError:
        return False


@routes.post("/{enquiry_id}/hull")
def take_hull(request: Request, here: Here, by: Selling, form: Form, enquiry_id: str) -> Response:
    """Take the boat for one of the hull models, or for none."""
    enquiry = mine(here, by, enquiry_id)
    unit = here.store.writing(actor(request, by))
    try:
        edited = choose_hull(unit, enquiry, form.text("hull") or None, who=by.who, expect=_whole(form, "version"))
    except Refused as refused:
        return shown(request, here, mine(here, by, enquiry_id), status=409, hull_trouble=str(refused), choosing=True)
    return _done(request, enquiry_id, edited, "The hull model is taken", "Nothing was changed", at="hull")


@routes.post("/{enquiry_id}/undo")
def undo(
    request: Request, here: Here, by: Selling, _: Form, enquiry_id: str, step: Annotated[int, Query(ge=0)] = 0
) -> Response:
    """Take the last step back."""
    enquiry = mine(here, by, enquiry_id)
    edited = undo_step(here.store.writing(actor(request, by)), enquiry, step, who=by.who)
    return _done(request, enquiry_id, edited, "It is as it was before", "Nothing was changed", label="Do it again")


@routes.post("/{enquiry_id}/back")
def back(request: Request, here: Here, by: Selling, form: Form, enquiry_id: str) -> Response:
    """Bring the form back as it was after an earlier step."""
    enquiry = mine(here, by, enquiry_id)
    unit = here.store.writing(actor(request, by))
    edited = bring_back(unit, enquiry, _whole(form, "step"), who=by.who, expect=_whole(form, "version"))
    return _done(request, enquiry_id, edited, "The form is as it was then", "Nothing was changed", at="form")


@routes.post("/{enquiry_id}/close")
def close(request: Request, here: Here, by: Selling, _: Form, enquiry_id: str) -> Response:
    """Close an enquiry: it waits for nobody."""
    edited = close_enquiry(here.store.writing(actor(request, by)), mine(here, by, enquiry_id), who=by.who)
    return _done(request, enquiry_id, edited, "It is closed", "It was closed before")


@routes.post("/{enquiry_id}/reopen")
def reopen(request: Request, here: Here, by: Selling, _: Form, enquiry_id: str) -> Response:
    """Open an enquiry again."""
    unit = here.store.writing(actor(request, by))
    edited = close_enquiry(unit, mine(here, by, enquiry_id), who=by.who, closed=False)
    return _done(request, enquiry_id, edited, "It is open again", "It was open before")


@routes.post("/{enquiry_id}/note")
def note(request: Request, here: Here, by: Selling, form: Form, enquiry_id: str) -> Response:
    """Write a note beside it."""
    enquiry = mine(here, by, enquiry_id)
    try:
        note_enquiry(here.store.writing(actor(request, by)), enquiry, form.text("note"), who=by.who)
    except Refused as refused:
        return shown(request, here, enquiry, status=422, note=form.text("note"), note_trouble=f"{refused}.")
    return redirect(request, f"{AT}/{enquiry_id}#past", "Noted")


@routes.post("/{enquiry_id}/asker")
def asker(request: Request, here: Here, by: Selling, form: Form, enquiry_id: str) -> Response:
    """Say who is to be answered."""
    enquiry = mine(here, by, enquiry_id)
    said = form.under("contact.")
    try:
        contact = parse_shape(Contact, {key: value or None for key, value in said.items()})
    except FormError as error:
        wrong = defaultdict(str, {defect.field: defect.problem for defect in error.defects})
        kept = dict.fromkeys(Contact.model_fields, "") | said
        return shown(request, here, enquiry, status=422, asker=kept, asker_trouble=wrong)
    say_who_asks(here.store.writing(actor(request, by)), enquiry, contact, who=by.who)
    return redirect(request, f"{AT}/{enquiry_id}#who-asks", "Who asks is saved")


def _done(
    request: Request,
    enquiry_id: str,
    edited: EditedEnquiry,
    said: str,
    else_said: str,
    *,
    at: str = "",
    label: str = "Undo",
) -> Response:
    """Lead back to the enquiry, with a way to take back what was done."""
    to = f"{AT}/{enquiry_id}" + (f"#{at}" if at else "")
    if edited.step is None:
        return redirect(request, to, else_said)
    return redirect(request, to, Notice(said, undo=f"{AT}/{enquiry_id}/undo?step={edited.step}", label=label))


def _whole(form: Posted, name: str) -> int:
    """Return a whole number that a page put into its own form. FormError where somebody sent something else."""
    text = form.text(name)
    if not text.isdecimal() or len(text) > 9:  # noqa: PLR2004 - more no history ever has
        raise FormError([Defect(name, text, "expected a whole number; open the page anew")])
    return int(text)


def _number(text: str | None) -> int:
    return min(int(text), 99) if text and text.isdecimal() and len(text) < 4 else 0  # noqa: PLR2004 - a list of rows
