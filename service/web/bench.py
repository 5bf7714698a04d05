"""The bench: measurements changed and the shaft moved, to see what comes of it."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import replace

from fastapi import APIRouter, Request
from starlette.responses import Response

from service.core.fit import Placement
from service.core.form import FormError, with_values
from service.flow.draw_fit import FitViews, draw_fit
from service.flow.edit_enquiry import EnquiryMoved, edit_enquiry
from service.flow.known import gather
from service.flow.refusal import Refused
from service.flow.try_fit import Tried, place_fit, try_fit
from service.flow.working_answer import working_answer
from service.store.enquiries import Enquiry
from service.web import fit_view
from service.web.by_page import by_page
from service.web.desk import Desk, Here
from service.web.fit_panel import Outcome, Panel, Wanted, filled, looked_at, mine, shown, whole, worked
from service.web.pages import ROOT, Notice, redirect
from service.web.posted import Form, Posted
from service.web.who import Selling, actor

routes = APIRouter(prefix="/enquiries")
PLACE = ("offset_mm", "shaft_aft_mm", "lower_height_mm", "upper_height_mm", "shaft_bottom_mm")


@routes.post("/{enquiry_id}/try")
def do_try(request: Request, here: Here, by: Selling, enquiry_id: str, form: Form) -> Response:
    """Show what other measurements make of a suggestion; nothing is kept."""
    return _tried(request, here, mine(here, by, enquiry_id), form, place=False)


@routes.post("/{enquiry_id}/place")
def do_place(request: Request, here: Here, by: Selling, enquiry_id: str, form: Form) -> Response:
    """Show every check of a suggestion put somewhere else; nothing is kept."""
    return _tried(request, here, mine(here, by, enquiry_id), form, place=True)


@routes.post("/{enquiry_id}/keep")
def do_keep(request: Request, here: Here, by: Selling, enquiry_id: str, form: Form) -> Response:
    """Put the measurements that were tried into the form."""
    enquiry = mine(here, by, enquiry_id)
    changed = fit_view.changes(enquiry.form, form.under("v."))
    words = {path: text for path, text in changed.items() if isinstance(text, str) and not _plain(text)}
    unit = here.store.writing(actor(request, by))
    wanted = Wanted(look=whole(form.text("look")), typed=form.under("v."))
    try:
        edited = edit_enquiry(
            unit, enquiry, lambda base: with_values(base, changed), who=by.who, expect=whole(form.text("version"), 0),
            typed=words,
        )  # fmt: skip
    except EnquiryMoved as moved:
        said = f"{moved}. Below is what fits now; your measurements still stand beside the drawing: see them, then keep them"
        again = mine(here, by, enquiry_id)
        return shown(request, worked(here, again, replace(wanted, trouble=said)), status=409)
    except FormError as error:
        said = "; ".join(str(defect) for defect in error.defects)
        return shown(request, worked(here, enquiry, replace(wanted, trouble=said)), status=422)
    to = f"{ROOT}/enquiries/{enquiry_id}"
    if edited.step is None:
        return redirect(request, to, "The form says that already")
    return redirect(request, to, Notice("Kept in the form", undo=f"{to}/undo?step={edited.step}"))


def _plain(text: str) -> bool:
    try:
        return math.isfinite(float(text))
    except ValueError:
        return False


def _tried(request: Request, here: Desk, enquiry: Enquiry, form: Posted, *, place: bool) -> Response:
    answer = working_answer(here.store, enquiry)
    look = looked_at(answer, whole(form.text("look")))
    if look is None:
        raise Refused("nothing was suggested, so nothing can be tried. Say more of her stern first")
    typed = form.under("v.")
    wanted = Wanted(look=look.rank, typed=typed)
    part = "fits/margins.html" if form.text("quick") else "fits/outcome.html"
    try:
        with here.store.reading() as uow:
            changed = fit_view.changes(answer.form, typed)
            got = place_fit(uow, answer, look, changed, _place(form)) if place else try_fit(uow, answer, look, changed)
            views = None if form.text("quick") else draw_fit(got.form, got.after, gather(uow).catalogue)
            outcome = _outcome(got, views, changed, place=place)
            made = (
                Panel(enquiry, answer, look, outcome, widest=fit_view.widest(got.form, got.after))
                if request.headers.get("hx-request") == "true"
                else filled(uow, enquiry, answer, replace(wanted, outcome=outcome))
            )
    except FormError as error:
        faults = {defect.field: defect.problem for defect in error.defects}
        said = "; ".join(str(defect) for defect in error.defects)
        return shown(request, worked(here, enquiry, replace(wanted, faults=faults, trouble=said)), status=422)
    except Refused as error:
        return shown(request, worked(here, enquiry, replace(wanted, trouble=by_page(str(error)))), status=422)
    return shown(request, made, part=part)


def _outcome(got: Tried, views: FitViews | None, changed: Mapping[str, object], *, place: bool) -> Outcome:
    return Outcome(
        kind="placed" if place else "tried" if changed else "best", form=got.form, fit=got.after, before=got.before,
        views=views, rows=fit_view.rows(got.after, got.before), binding=fit_view.binding(got.after), changes=changed,
    )  # fmt: skip


def _place(form: Posted) -> Placement:
    """Return where the shaft was put: as the fields say, all of it raised by `up_mm`. Refused for what is no number."""
    said: dict[str, float] = {}
    for name in (*PLACE, "up_mm"):
        try:
            said[name] = float((form.text(name) or "0").replace(",", ".").replace("\u2212", "-"))
        except ValueError:
            raise Refused(f"{form.text(name)!r} is no length in mm; write figures alone") from None
        if not math.isfinite(said[name]):
            raise Refused("that place is no number; write figures alone")
    up = said.pop("up_mm")
    high = {name: said[name] + up for name in PLACE[2:]}
    return Placement(**{**said, **high}, shaft_top_mm=0.0)
