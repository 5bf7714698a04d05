"""The fleet: found, compared, drawn as a map; and a record made from an answer that was sent."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, cast
from urllib.parse import urlencode

from fastapi import APIRouter, Request
from starlette.responses import Response

from service.core.boat import STERNS, BoatForm
from service.core.form import FormError, parse_form
from service.core.proposal import SentAnswer
from service.core.record import HullModel, Record
from service.flow.compare_records import compare_records, two_records
from service.flow.find_records import Found, Wanted, find_records
from service.flow.map_fleet import map_fleet
from service.flow.propose_record import Chosen, kept_answer, propose_record
from service.flow.refusal import Refused
from service.flow.sign_in import Visitor
from service.store.record_search import ORDERS, Side
from service.store.unit import UnitOfWork
from service.web import fields
from service.web.desk import Desk, Here
from service.web.faults import NotFound
from service.web.pages import ROOT, Notice, in_part, page, redirect
from service.web.posted import Form
from service.web.sight import note, seen
from service.web.who import Anyone, Selling, actor, owner_of

routes = APIRouter(prefix="/fleet")
AT = f"{ROOT}/fleet"
LINES, WAITING, LONGEST, MOST_WORDS = 25, 8, 200, 8
NAMES = ("q", "status", "stern", "side", "gear", "bracket", "shaft", "from", "to", "sort", "like")
MEASURED = {
    "loa": "boat.loa_mm", "top": "transom.top_height_mm", "rake": "transom.rake_deg", "width": "transom.width_top_mm",
    "water": "transom.width_waterline_mm",
}  # fmt: skip
"""By what measurements near boats can be looked for, by the name of the field in the address."""
STATUSES = ("proposed", "shipped", "installed", "withdrawn")
SIDES = ("port", "centre", "starboard")
SORTS = {
    "newest": "newest first", "oldest": "oldest first", "reference": "reference", "boat": "hull model",
    "year": "year built", "offset": "from port to starboard",
}  # fmt: skip


@dataclass(frozen=True)
class Line:
    """A record in a list: as its reader may see it, her hull model, and how like the boat it was found by."""

    record: Record
    boat: str
    likeness: float | None = None
    shared: tuple[str, ...] = ()


@dataclass(frozen=True)
class Listing:
    """A page of the list; `total` where it was counted, `more` the address of the next page."""

    lines: tuple[Line, ...]
    total: int | None = None
    more: str | None = None


@routes.get("")
def show_fleet(request: Request, here: Here, by: Anyone) -> Response:
    """Show what of the fleet is asked for; whoever fits sees first what waits to be written down."""
    given = {name: request.query_params.get(name, "").strip()[:LONGEST] for name in (*NAMES, *MEASURED, "after")}
    trouble: dict[str, str] = {}
    with here.store.reading() as uow:
        wanted = _wanted(uow, given, by, trouble)
        listing = _listing(uow, wanted, given, by, trouble) if wanted is not None else Listing(())
        waits = _waiting(uow, by) if by.user.role == "fitter" and not any(given.values()) else None
        codes = ((), (), ()) if in_part(request) else uow.records.counts.codes()  # the list alone offers none
    return page(
        request, "fleet/list.html", status=422 if trouble else 200, part="fleet/found.html", given=given,
        trouble=trouble, listing=listing, waits=waits, codes=codes, sterns=STERNS, statuses=STATUSES, sides=SIDES,
        sorts=SORTS, measured=MEASURED, fields=fields, asked=any(value for name, value in given.items() if name != "sort"),
        near=wanted is not None and wanted.near is not None,
    )  # fmt: skip


def _wanted(uow: UnitOfWork, given: Mapping[str, str], by: Visitor, trouble: dict[str, str]) -> Wanted | None:
    """Return what is asked for; None where something was written that cannot be read, and `trouble` says what."""
    years = _year(given, "from", trouble), _year(given, "to", trouble)
    near = _near(uow, given, trouble)
    if trouble:
        return None
    return Wanted(
        years=years,
        stern=given["stern"] or None,
        status=given["status"] or None,
        codes=tuple(given[name] for name in ("gear", "bracket", "shaft") if given[name]),
        words=tuple(given["q"].split()[:MOST_WORDS]),
        side=cast("Side", given["side"]) if given["side"] in SIDES else None,
        dealers_of=owner_of(by),
        order=given["sort"] if given["sort"] in ORDERS else "newest",
        near=near,
        after=(given["after"] or None) if near is None else None,
        limit=LINES,
    )


def _year(given: Mapping[str, str], name: str, trouble: dict[str, str]) -> int | None:
    text = given[name]
    if not text:
        return None
    if not (text.isascii() and text.isdecimal() and len(text) == 4):  # noqa: PLR2004 - digits of a year
        trouble[name] = "Write a year with four figures, such as 1984."
        return None
    return int(text)


def _near(uow: UnitOfWork, given: Mapping[str, str], trouble: dict[str, str]) -> BoatForm | None:
    """Return the boat to be near to: of a record, or of measurements; None where neither was given."""
    said = {path: given[name] for name, path in MEASURED.items() if given[name]}
    if given["like"]:
        like = uow.records.get(given["like"])
        if like is None:
            trouble["like"] = f"There is no record {given['like']}."
            return None
        return like.form
    if not said:
        return None
    document: dict[str, Any] = {"boat": {"stern": given["stern"]} if given["stern"] in STERNS else {}, "transom": {}}
    for path, text in said.items():
        part, _, name = path.partition(".")
        document[part][name] = text
    try:
        return parse_form(document)
    except FormError as error:
        by_path = {path: name for name, path in MEASURED.items()}
        trouble |= {by_path.get(one.field, "loa"): one.problem for one in error.defects}
        return None


def _listing(
    uow: UnitOfWork, wanted: Wanted, given: Mapping[str, str], by: Visitor, trouble: dict[str, str]
) -> Listing:
    try:
        found = find_records(uow, wanted)
    except Refused as refused:
        trouble["q"] = f"{refused}."
        return Listing(())
    total = None
    if wanted.near is None and not wanted.after:
        total = len(found.records) if found.next is None else uow.records.counts.tally(wanted.asked(None))
    more = None
    if found.next is not None:
        more = f"{AT}?{urlencode({**{k: v for k, v in given.items() if v}, 'after': found.next})}"
    return Listing(_lines(found, by, leave_out=given["like"]), total, more)


def _lines(found: Found, by: Visitor, *, leave_out: str = "") -> tuple[Line, ...]:
    """Return the lines of a list. Nobody's name is in one, so that looking through the fleet is not reading of people."""
    models = _models(found.models)
    near = {one.record: one for one in found.near}
    return tuple(
        Line(
            seen(record, by),
            fields.called(record, models.get(record.hull or "")),
            near[record.reference].likeness if record.reference in near else None,
            tuple(map(fields.label, near[record.reference].shared)) if record.reference in near else (),
        )
        for record in found.records
        if record.reference != leave_out
    )


def _models(models: tuple[HullModel, ...]) -> dict[str, HullModel]:
    return {model.id: model for model in models}


def _waiting(uow: UnitOfWork, by: Visitor) -> tuple[Line, ...]:
    return _lines(find_records(uow, Wanted(status="shipped", order="oldest", limit=WAITING)), by)


@routes.get("/compare")
def show_compare(request: Request, here: Here, by: Anyone) -> Response:
    """Show two records beside each other, or ask for two: `a` and `b`, or two that were ticked."""
    asked = request.query_params
    names = [
        name.strip()[:LONGEST]
        for name in (*asked.getlist("pick"), asked.get("a", ""), asked.get("b", ""))
        if name.strip()
    ]
    if len(names) != 2:  # noqa: PLR2004 - two sides
        trouble = f"You ticked {len(names)}. Two records can be set beside each other." if names else None
        return page(
            request, "fleet/compare_which.html", a="".join(names[:1]), b="".join(names[1:2]), trouble=trouble,
            status=422 if trouble else 200,
        )  # fmt: skip
    try:
        with here.store.reading() as uow:
            one, other = two_records(uow, *names)
            found = compare_records(uow, seen(one, by), seen(other, by))
    except Refused as refused:
        return page(request, "fleet/compare_which.html", a=names[0], b=names[1], trouble=f"{refused}.", status=422)
    note(request, here, by, [one, other])
    return page(request, "fleet/compare.html", found=found, fields=fields)


@routes.get("/map")
def show_map(request: Request, here: Here, by: Anyone, hull: str = "") -> Response:
    """Show where brackets sit. The pictures come by themselves where scripts run, else with `drawn`: they take a moment."""
    drawn = "drawn" in request.query_params
    words = tuple(hull[:LONGEST].split()[:MOST_WORDS])
    panels = map_fleet(here.store.reading(), words) if drawn else None
    del by
    return page(request, "fleet/map.html", part="fleet/map_part.html", panels=panels, hull=" ".join(words))


@routes.get("/new")
def show_new(request: Request, here: Here, by: Selling, answer: str = "") -> Response:
    """Show what of an answer can become a record."""
    return _new(request, _answers(here, by, answer), answer, {}, None)


@routes.post("")
def propose(request: Request, here: Here, by: Selling, form: Form) -> Response:
    """Make a suggestion of an answer a record of what is proposed."""
    answer = form.text("answer")
    answers = _answers(here, by, answer)
    rank, boat = form.text("rank"), form.text("boat")
    chosen = Chosen(boat=int(boat) if boat.isdecimal() else None, rank=int(rank) if rank.isdecimal() else None)
    try:
        made = propose_record(
            here.store.writing(actor(request, by)), answers, chosen, who=by.who, why=form.text("why") or None,
            anyway=form.text("anyway") or None,
        )  # fmt: skip
    except Refused as refused:
        return _new(request, answers, answer, dict(form.fields), str(refused))
    to = f"{AT}/{made.record.reference}"
    undo = f"{to}/step?status=withdrawn&expect=1&why=undone" if by.user.role != "dealer" else None
    said = "; ".join([f"Record {made.record.reference} is proposed", *made.notes])
    return redirect(request, to, Notice(said, undo=undo, label="Withdraw it again"))


def _answers(here: Desk, by: Visitor, answer: str) -> tuple[SentAnswer, ...]:
    """Return a frozen answer that somebody may see. NotFound where there is none."""
    with here.store.reading() as uow:
        owner = uow.answers.owner(answer) if answer else None
        if owner is None or owner_of(by) not in (None, owner):
            raise NotFound("There is no such answer. The page of an enquiry leads to its answers.")
        return kept_answer(uow, answer)


def _new(
    request: Request, answers: tuple[SentAnswer, ...], answer: str, given: Mapping[str, str], trouble: str | None
) -> Response:
    return page(
        request, "fleet/new.html", status=422 if trouble else 200, answers=answers, answer=answer, given=given,
        trouble=trouble,
    )  # fmt: skip
