"""A record is amended: fields corrected with a reason, and what was measured on its boat added."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from typing import Any
from urllib.parse import quote

from fastapi import APIRouter, Request
from starlette.responses import Response

from service.core.boat import METHODS, STERNS
from service.core.form import FormError, parse_shape
from service.core.installed import AsInstalled
from service.core.measurement import fields as measurable
from service.core.record import Record
from service.files.cells import number_text
from service.files.columns import values
from service.files.read.installed_file import FromSite
from service.flow.edit_record import correct_record
from service.flow.measure_record import measure_record
from service.flow.record_history import Shown, show_record
from service.flow.refusal import Moved, Refused
from service.web import fields
from service.web.desk import Desk, Here
from service.web.fleet import AT
from service.web.pages import page, redirect
from service.web.posted import Form, Posted
from service.web.record import changed, standing
from service.web.who import AtDesk, Fitting, actor

routes = APIRouter(prefix="/fleet/{reference}")
GROUPS = (
    ("The record", ("record.date", "record.dealer", "record.hull")),
    ("What is fitted", ("configuration.gear", "configuration.lower", "configuration.upper", "configuration.shaft")),
    (
        "Where it sits",
        (
            "placement.offset_mm", "placement.shaft_aft_mm", "placement.lower_height_mm", "placement.upper_height_mm",
            "placement.shaft_bottom_mm",
        ),
    ),
    ("How it went", ("outcome.fitted_as_proposed", "outcome.changed", "outcome.note")),
    (
        "The boat",
        (
            "boat.builder", "boat.model", "boat.year", "boat.stern", "boat.hull_material", "boat.name", "boat.hull_number",
            "boat.sail_number",
        ),
    ),
    ("Whom to answer", ("contact.name", "contact.email", "contact.phone")),
    ("Notes", ("notes",)),
)  # fmt: skip
"""What is corrected on one page; what is measured is said as a measurement, so that nothing is lost."""
EDITED = tuple(name for _, names in GROUPS for name in names)
LONG = ("outcome.changed", "outcome.note", "notes")
OPTIONS: dict[str, tuple[tuple[str, str], ...]] = {
    "outcome.fitted_as_proposed": (("", "not said"), ("true", "yes"), ("false", "no")),
    "boat.stern": (("", "not said"), *((one, one.replace("_", "-")) for one in STERNS)),
    "boat.hull_material": (("", "not said"), *fields.MATERIALS.items()),
}  # fmt: skip


def written(record: Record) -> dict[str, str]:
    """Return what stands in each field of the page, as it is written there."""
    said = values(record)
    return {name: _text(said.get(name)) for name in EDITED}


def _text(value: Any) -> str:  # noqa: ANN401 - a field of any type
    if value is None:
        return ""
    if isinstance(value, bool):
        return "true" if value else "false"
    return number_text(value) if isinstance(value, (int, float)) else str(value)


@routes.get("/edit")
def show_edit(request: Request, reference: str, here: Here, by: AtDesk) -> Response:
    """Show the fields of a record to be corrected."""
    del by
    shown = _shown(here, standing(here, reference))
    return _edit(request, here, shown, written(shown.record), shown.head)


@routes.post("/edit")
def do_edit(request: Request, reference: str, here: Here, by: AtDesk, form: Form) -> Response:
    """Correct what was changed on the page; where somebody else was quicker, let one choose field by field."""
    stands = standing(here, reference)
    said = form.text("expect")
    shown = _shown(here, stands)
    expect = int(said) if said.isdecimal() and 1 <= int(said) <= shown.head else shown.head
    base = written(_shown(here, stands, expect).record)
    given, why = _given(form), form.text("why")
    wanted = {name: text for name, text in given.items() if name in base and text != base[name]}
    if not why:
        trouble = {"why": "Say why, in a few words: it stands in the record's history."}
        return _edit(request, here, shown, {**base, **given}, expect, trouble)
    try:
        done = correct_record(
            here.store.writing(actor(request, by)), stands, wanted, who=by.who, why=why, expect=expect
        )
    except Moved as moved:
        return _conflict(request, stands, wanted, moved, why)
    except FormError as error:
        trouble = {one.field.removeprefix("form."): one.problem for one in error.defects}
        return _edit(request, here, shown, {**base, **given, "why": why}, expect, trouble)
    except Refused as refused:
        name = str(refused).partition(":")[0]
        return _edit(request, here, shown, {**base, **given, "why": why}, expect, {name: f"{refused}."})
    return changed(request, stands, done, f"Record {stands} is corrected")


def _given(form: Posted) -> dict[str, str]:
    """Return what was written, by field; of a page that let one choose, one's own where that was chosen."""
    given = form.under("f.")
    mine = {name: text for name, text in form.under("mine.").items() if form.text(f"pick.{name}") == "mine"}
    return {**given, **mine}


def _shown(here: Desk, reference: str, revision: int | None = None) -> Shown:
    with here.store.reading() as uow:
        return show_record(uow, reference, revision)


def _edit(
    request: Request,
    here: Desk,
    shown: Shown,
    given: Mapping[str, str],
    expect: int,
    trouble: Mapping[str, str] | None = None,
) -> Response:
    with here.store.reading() as uow:
        catalogue = uow.catalogues.latest()
    codes: dict[str, tuple[str, ...]] = {}
    if catalogue is not None:
        codes = {
            "configuration.gear": tuple(one.code for one in catalogue.gears),
            "configuration.lower": tuple(one.code for one in catalogue.brackets if "lower" in one.roles),
            "configuration.upper": tuple(one.code for one in catalogue.brackets if "upper" in one.roles),
            "configuration.shaft": tuple(one.code for one in catalogue.shafts),
        }
    rest = {name: said for name, said in (trouble or {}).items() if name not in (*EDITED, "why")}
    return page(
        request, "fleet/edit.html", status=422 if trouble else 200, record=shown.record, given=given, expect=expect,
        groups=GROUPS, trouble=trouble or {}, rest=rest, fields=fields, long=LONG, options=OPTIONS, codes=codes,
    )  # fmt: skip


def _conflict(request: Request, reference: str, wanted: Mapping[str, str], moved: Moved, why: str) -> Response:
    clashes = {one.field: one for one in moved.clashes}
    both = [(clashes[name], text) for name, text in wanted.items() if name in clashes]
    mine = [(name, text) for name, text in wanted.items() if name not in clashes]
    theirs = [one for name, one in clashes.items() if name not in wanted]
    return page(
        request, "fleet/conflict.html", status=409, reference=reference, both=both, mine=mine, theirs=theirs,
        head=moved.head, why=why, fields=fields,
    )  # fmt: skip


@routes.get("/measure")
def show_measure(request: Request, reference: str, here: Here, by: Fitting) -> Response:
    """Ask for something that was measured."""
    del by
    return _measure(request, standing(here, reference), {}, {})


@routes.post("/measure")
def do_measure(request: Request, reference: str, here: Here, by: Fitting, form: Form) -> Response:
    """Keep something that was measured on a record's boat, in the words it was written in."""
    stands = standing(here, reference)
    path, text, method = form.text("field"), form.text("value"), form.text("method")
    given = dict(form.fields)
    trouble: dict[str, str] = {}
    if path not in measurable():
        trouble["field"] = "Choose what was measured."
    if not text:
        trouble["value"] = "Write what was measured, with its unit."
    day = day_of(form.text("day"), trouble)
    if trouble:
        return _measure(request, stands, given, trouble)
    part, _, name = path.partition(".")
    document: dict[str, Any] = {part: {name: text}, **({"methods": {path: method}} if method else {})}
    try:
        site = parse_shape(AsInstalled, {"form": document})
        done = measure_record(
            here.store.writing(actor(request, by)), stands, FromSite(site, document), who=by.who,
            why=form.text("why") or None, day=day,
        )  # fmt: skip
    except FormError as error:
        return _measure(request, stands, given, {"value": "; ".join(one.problem for one in error.defects) + "."})
    if not done.changes and done.notes:
        return _kept(request, stands, done.notes)
    return changed(request, stands, done, "The measurement is kept")


def _kept(request: Request, reference: str, notes: tuple[str, ...]) -> Response:
    return redirect(request, f"{AT}/{quote(reference, safe='')}#measured", "; ".join(notes))


def day_of(text: str, trouble: dict[str, str], name: str = "day") -> date | None:
    """Return the day that was written; None where none was, or where it is none, and `trouble` says so."""
    if not text:
        return None
    try:
        return date.fromisoformat(text)
    except ValueError:
        trouble[name] = "Write the day as 2026-03-01."
        return None


def _measure(request: Request, reference: str, given: Mapping[str, str], trouble: Mapping[str, str]) -> Response:
    return page(
        request, "fleet/measure.html", status=422 if trouble else 200, reference=reference, given=given, trouble=trouble,
        measurable=measurable(), methods=METHODS, fields=fields,
    )  # fmt: skip
