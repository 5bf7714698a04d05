"""What a fitter found and fitted, written down on a telephone beside the boat."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any
from urllib.parse import quote

from fastapi import APIRouter, Request
from starlette.responses import Response

from service.core.boat import get, how_to_measure
from service.core.catalogue import Catalogue
from service.core.form import FormError, parse_shape
from service.core.installed import AsInstalled, said_already
from service.core.record import Record
from service.files.read.errors import Unreadable
from service.files.read.installed_file import FromSite
from service.flow.attach import attach
from service.flow.record_history import Shown, show_record
from service.flow.refusal import Moved, Refused
from service.flow.sign_in import Visitor
from service.flow.step_record import Told, step_record
from service.web import fields
from service.web.amend import day_of
from service.web.desk import Desk, Here
from service.web.fleet import AT
from service.web.pages import ROOT, Notice, page, redirect
from service.web.posted import Form, Posted
from service.web.record import standing
from service.web.sight import note, seen
from service.web.who import Fitting, actor

routes = APIRouter(prefix="/fleet/{reference}")
ROLES = ("gear", "lower", "upper", "shaft")
UNITS = (("mm", "mm"), ("cm", "cm"), ("in", "inches"))


@dataclass(frozen=True)
class Wanted:
    """One number the form asks for: its name there, the field it is for, and which word makes it negative."""

    name: str
    field: str
    words: tuple[tuple[str, str], ...] = ()
    minus: str | None = None
    method: str | None = None
    numeric: str = "decimal"


PLACES = (
    Wanted("offset", "placement.offset_mm", (("centre", "on the centreline"), ("port", "to port"), ("starboard", "to starboard")), "port"),
    Wanted("aft", "placement.shaft_aft_mm"),
    Wanted("lower_height", "placement.lower_height_mm"),
    Wanted("upper_height", "placement.upper_height_mm"),
    Wanted("bottom", "placement.shaft_bottom_mm", (("above", "above the water"), ("under", "under it")), "under"),
)  # fmt: skip
RETAKEN = (
    Wanted("top", "transom.top_height_mm", method="tape"),
    Wanted("rake", "transom.rake_deg", (("aft", "top leans aft"), ("forward", "top leans forward")), "forward", "phone_level"),
    Wanted("width", "transom.width_top_mm", method="tape"),
    Wanted("skin", "transom.thickness_mm", method="tape"),
)  # fmt: skip
METHODS = (
    ("tape", "tape"), ("laser", "laser"), ("phone_level", "phone as a level"), ("inclinometer", "inclinometer"),
    ("photo", "from a photo"), ("guess", "guessed"),
)  # fmt: skip


@routes.get("/installed")
def show_installed(request: Request, reference: str, here: Here, by: Fitting) -> Response:
    """Show the form for what was really fitted."""
    stands = standing(here, reference)
    shown = _shown(here, stands)
    note(request, here, by, [shown.record])
    return _form(request, here, by, shown, _proposed(shown.record), shown.head)


@routes.post("/installed")
def do_installed(request: Request, reference: str, here: Here, by: Fitting, form: Form) -> Response:
    """Write down what was fitted. Photos are kept first: a form that comes back cannot give them back to the browser."""
    stands = standing(here, reference)
    shown, given, trouble = _shown(here, stands), dict(form.fields), dict[str, str]()
    kept = _photos(request, here, by, stands, form, trouble)
    day = day_of(given.get("day", "").strip(), trouble)
    site = _site(form, shown.record, trouble)
    expect = form.text("expect")
    number = int(expect) if expect.isdecimal() and 1 <= int(expect) <= shown.head else shown.head
    if trouble or site is None:
        return _form(request, here, by, _shown(here, stands), given, number, trouble=trouble, kept=kept)
    told = Told(
        day=day,
        why=form.text("why") or None,
        note=form.text("note") or None,
        site=site,
        anyway=form.text("anyway") or None,
    )
    try:
        done = step_record(here.store.writing(actor(request, by)), stands, "installed", told, who=by.who, expect=number)
    except Moved as moved:
        if _twice(here, by, stands, number, site, told.note):
            return _done(request, by, stands, Notice("It is written down already; nothing was written twice"))
        return _form(request, here, by, _shown(here, stands), given, moved.head, moved=moved, kept=kept)
    except FormError as error:
        return _form(request, here, by, shown, given, number, trouble=_by_name(error), kept=kept)
    except Refused as refused:
        name = "anyway" if str(refused).startswith("as installed") else "why"
        said = str(refused).replace("with --anyway", "below").replace("say --why", "say why below")
        return _form(request, here, by, shown, given, number, trouble={name: f"{said}."}, kept=kept)
    undo = f"{AT}/{quote(stands, safe='')}/back/{done.number - 1}?expect={done.number}"
    said = "; ".join([f"Record {stands} is written down as installed", *done.notes])
    return _done(request, by, stands, Notice(said, undo=undo))


def _twice(here: Desk, by: Visitor, reference: str, expect: int, site: FromSite, note: str | None) -> bool:
    """Say whether somebody sent the same form a second time, as slow telephones do."""
    now, before = _shown(here, reference), _shown(here, reference, expect)
    own = now.revision.who == by.who
    return own and said_already(before.record, now.record, site.site, now.measured, who=by.who, note=note)


def _done(request: Request, by: Visitor, reference: str, said: Notice) -> Response:
    to = f"{ROOT}/fleet" if by.user.role == "fitter" else f"{AT}/{quote(reference, safe='')}"
    return redirect(request, to, said)


def _shown(here: Desk, reference: str, revision: int | None = None) -> Shown:
    with here.store.reading() as uow:
        return show_record(uow, reference, revision)


def _photos(request: Request, here: Desk, by: Visitor, reference: str, form: Posted, trouble: dict[str, str]) -> int:
    """Keep the photos, each by itself so that one that cannot be kept loses no other. Returns how many are kept."""
    kept = 0
    for name, one in form.files:
        if name not in ("camera", "photos"):
            continue
        try:
            attach(
                here.store.writing(actor(request, by)), here.vault, reference, [(one.name, one.content)], who=by.who,
                note="taken when installed",
            )  # fmt: skip
            kept += 1
        except (Unreadable, Refused) as fault:
            trouble["photos"] = f"{fault}."
    return kept


def _proposed(record: Record) -> dict[str, str]:
    """Return what the form holds at first: the metal as proposed, and which side it was to be on."""
    spot = record.placement
    offset, bottom, rake = spot.offset_mm or 0.0, spot.shaft_bottom_mm, record.form.transom.rake_deg
    return {
        **record.configuration.model_dump(),
        "unit": "mm",
        "offset_side": "centre" if abs(offset) < 1 else "port" if offset < 0 else "starboard",
        "bottom_side": "under" if bottom is not None and bottom < 0 else "above",
        "rake_side": "forward" if rake is not None and rake < 0 else "aft",
    }


def _site(form: Posted, record: Record, trouble: dict[str, str]) -> FromSite | None:
    """Return what the form says of the site, in the words it was typed in; None where it cannot be read."""
    del record
    unit = form.text("unit") if form.text("unit") in dict(UNITS) else "mm"
    placement = {one.field.partition(".")[2]: text for one in PLACES if (text := _text(form, one, unit))}
    if form.text("offset_side") == "centre" and form.text("offset"):
        trouble["offset"] = "On the centreline, and a distance from it? Say to which side, or empty it."
    elif form.text("offset_side") == "centre":
        placement["offset_mm"] = "0 mm"
    elif form.text("offset_side") and not form.text("offset"):
        placement.pop("offset_mm", None)
    measured: dict[str, Any] = {}
    methods: dict[str, str] = {}
    for one in RETAKEN:
        text = _text(form, one, "\u00b0" if one.field.endswith("_deg") else unit)
        if text:
            part, _, name = one.field.partition(".")
            measured.setdefault(part, {})[name] = text
            if form.text(f"{one.name}_method"):
                methods[one.field] = form.text(f"{one.name}_method")
    written = {**measured, **({"methods": methods} if methods else {})}
    fitted = {"yes": True, "no": False}.get(form.text("fitted"))
    document = {
        "configuration": {role: form.text(role) for role in ROLES if form.text(role)},
        "placement": placement,
        "form": written,
        "changed": form.text("changed") or None,
        "fitted_as_proposed": fitted,
    }
    try:
        return FromSite(parse_shape(AsInstalled, document), written)
    except FormError as error:
        trouble |= _by_name(error)
        return None


def _text(form: Posted, one: Wanted, unit: str) -> str:
    """Return a number with its unit and sign, "" where none was typed. Letters typed beside it are its unit."""
    typed = form.text(one.name)
    if not typed:
        return ""
    if not re.search(r"[a-zA-Z\u00b0'\"\u2032\u2033]", typed):
        typed = f"{typed} {unit}"
    turned = one.minus is not None and form.text(f"{one.name}_side") == one.minus
    return f"-{typed}" if turned and not typed.startswith(("-", "\u2212")) else typed


def _by_name(error: FormError) -> dict[str, str]:
    names = {one.field: one.name for one in (*PLACES, *RETAKEN)}
    return {
        names.get(
            one.field.removeprefix("form."), one.field.rpartition(".")[2]
        ): f"{one.problem[:1].upper()}{one.problem[1:]}."
        for one in error.defects
    }


def _form(  # noqa: PLR0913 - what a page is shown again with
    request: Request,
    here: Desk,
    by: Visitor,
    shown: Shown,
    given: Mapping[str, str],
    expect: int,
    *,
    trouble: Mapping[str, str] | None = None,
    moved: Moved | None = None,
    kept: int = 0,
) -> Response:
    record = seen(shown.record, by)
    with here.store.reading() as uow:
        catalogue = (uow.catalogues.get(record.catalogue) if record.catalogue else None) or uow.catalogues.latest()
    known = {one.name for one in (*PLACES, *RETAKEN)} | {"photos", "day", "anyway", "why"}
    return page(
        request, "fleet/installed.html", status=409 if moved else 422 if trouble else 200, record=record, given=given,
        expect=expect, trouble=trouble or {}, moved=moved, kept=kept, boat=fields.called(record, shown.hull),
        parts=_parts(catalogue, record), places=PLACES, retaken=RETAKEN, units=UNITS, methods=METHODS, fields=fields,
        now=_now(record), help=how_to_measure, rest={k: v for k, v in (trouble or {}).items() if k not in known},
    )  # fmt: skip


def _now(record: Record) -> dict[str, str]:
    """Return what the record says of each number the form asks for."""
    said = {one.field: getattr(record.placement, one.field.partition(".")[2]) for one in PLACES}
    said |= {one.field: get(record.form, one.field) for one in RETAKEN}
    return {field: fields.value(field, value) for field, value in said.items() if value is not None}


def _parts(catalogue: Catalogue | None, record: Record) -> dict[str, list[tuple[str, str]]]:
    """Return what can be chosen for each part: what the catalogue makes, and what was proposed in any case."""
    found: dict[str, list[tuple[str, str]]] = {role: [] for role in ROLES}
    if catalogue is not None:
        found["gear"] = [(one.code, one.name) for one in catalogue.gears]
        for role in ("lower", "upper"):
            found[role] = [(one.code, one.name) for one in catalogue.brackets if role in one.roles]
        found["shaft"] = [(one.code, f"{one.length_mm:.0f} mm") for one in catalogue.shafts]
    for role, choices in found.items():
        own = getattr(record.configuration, role)
        if own not in {code for code, _ in choices}:
            choices.insert(0, (own, "in no catalogue here"))
    return {role: [(code, f"{code}: {words}") for code, words in choices] for role, choices in found.items()}
