"""Hull models: find one by any name, its names, measures and history, and taking changes back."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated
from urllib.parse import quote

from fastapi import APIRouter, Query, Request
from starlette.responses import Response

from service.core.hulls import HullDecision, parse_name
from service.core.record import HullModel
from service.core.registry_words import what
from service.core.units import Unread, parse
from service.flow.alias_hulls import add_alias, remove_alias
from service.flow.find_records import Wanted, find_records
from service.flow.refusal import Refused
from service.flow.resolve import resolve_name
from service.flow.show_hull import ShownHull, show_hull
from service.flow.suggest_hulls import suggest_hulls
from service.flow.undo_hulls import undo_change
from service.store.unit import UnitOfWork
from service.web.desk import Here
from service.web.faults import NotFound
from service.web.hull_words import facts, value, years
from service.web.pages import ROOT, Notice, page, redirect, within
from service.web.posted import Form
from service.web.who import AtDesk, actor

routes = APIRouter(prefix="/hulls")
MOST_SHOWN, MOST_RECORDS, MOST_KIN, MOST_CHANGES = 50, 12, 12, 60
UNSAID = "at the desk"
Text = Annotated[str, Query(max_length=200)]


@dataclass(frozen=True)
class Looked:
    """What somebody looks for, as they wrote it, and what cannot be read of it by field."""

    q: str = ""
    builder: str = ""
    year: str = ""
    loa: str = ""

    def numbers(self) -> tuple[int | None, float | None, dict[str, str]]:
        """Return year, length in mm and faults."""
        faults: dict[str, str] = {}
        if self.year and not (self.year.isascii() and self.year.isdecimal() and len(self.year) <= 4):  # noqa: PLR2004
            faults["year"] = "Write a year as 1984."
        length = parse(self.loa, "length", assumed="m") if self.loa else None
        if isinstance(length, Unread):
            faults["loa"] = f"{length.why}."
        year = int(self.year) if self.year and "year" not in faults else None
        return year, None if length is None or isinstance(length, Unread) else length.value, faults


@routes.get("")
def find(
    request: Request, here: Here, by: AtDesk, q: Text = "", builder: Text = "", year: Text = "", loa: Text = ""
) -> Response:  # fmt: skip
    """Find hull models: those whose names go on so, and what the name would be taken for, with reasons."""
    del by
    looked = Looked(q.strip(), builder.strip(), year.strip(), loa.strip())
    built, length, faults = looked.numbers()
    with here.store.reading() as uow:
        named = suggest_hulls(uow, looked.q, MOST_SHOWN)
        taken = _taken(uow, looked, built, length) if looked.q and not faults else None
        count = uow.hulls.count()
    status = 422 if faults else 200
    return page(
        request, "hulls/find.html", status=status, part="hulls/found.html",
        looked=looked, named=named, taken=taken, count=count, faults=faults, most=MOST_SHOWN, years=years,
    )  # fmt: skip


def _taken(uow: UnitOfWork, looked: Looked, year: int | None, loa_mm: float | None) -> HullDecision:
    return resolve_name(uow, looked.q, builder=looked.builder or None, year=year, loa_mm=loa_mm)


@routes.get("/changes")
def list_changes(request: Request, here: Here, by: AtDesk) -> Response:
    """List the last changes to the registry."""
    del by
    with here.store.reading() as uow:
        changes, undone = uow.hulls.log.latest(MOST_CHANGES), uow.hulls.log.undone()
    return page(request, "hulls/changes.html", changes=changes, undone=undone, most=MOST_CHANGES, what=what)


@routes.post("/changes/{number}/undo")
def do_undo(request: Request, here: Here, by: AtDesk, form: Form, number: int, then: str = "") -> Response:
    """Take a change back; taking that back does it again."""
    unit = here.store.writing(actor(request, by))
    done = undo_change(unit, number, who=by.who, why=form.text("why") or UNSAID)
    kept = f"; {len(done.kept)} of its cells stay as they were changed since" if done.kept else ""
    to = within(then) if then else f"{ROOT}/hulls/changes"
    return redirect(request, to, Notice(f"Change {number} is taken back{kept}", _undo(done.number, to), "Do it again"))


@routes.get("/{hull_id:path}")
def show(request: Request, here: Here, by: AtDesk, hull_id: str) -> Response:
    """Show one hull model."""
    del by
    return _shown(request, here, hull_id)


@routes.post("/{hull_id:path}/aliases")
def do_add_alias(request: Request, here: Here, by: AtDesk, form: Form, hull_id: str) -> Response:
    """Take a name for the hull model from now on."""
    name = form.text("alias")
    unit = here.store.writing(actor(request, by))
    try:
        done = add_alias(unit, hull_id, name, who=by.who, why=form.text("why") or UNSAID)
    except Refused as refused:
        return _shown(request, here, hull_id, written=name, trouble=f"{refused}.", why=form.text("why"))
    at = address(done.hull.id)
    also = f"; {', '.join(map(str, done.shared))} has it too, so it will be asked which" if done.shared else ""
    if done.number is None:
        return redirect(request, at, f"{done.alias!r} was known already")
    return redirect(request, at, Notice(f"{done.alias!r} is taken for {done.hull}{also}", _undo(done.number, at)))


@routes.post("/{hull_id:path}/aliases/remove")
def do_remove_alias(request: Request, here: Here, by: AtDesk, form: Form, hull_id: str) -> Response:
    """Forget a name."""
    unit = here.store.writing(actor(request, by))
    done = remove_alias(unit, hull_id, form.text("alias"), who=by.who, why=form.text("why") or UNSAID)
    at = address(done.hull.id)
    return redirect(request, at, Notice(f"{done.alias!r} is forgotten", _undo(done.number, at)))


def address(hull_id: str) -> str:
    """Return where a hull model is shown."""
    return f"{ROOT}/hulls/{quote(hull_id, safe='')}"


def _undo(number: int | None, then: str) -> str:
    return f"{ROOT}/hulls/changes/{number}/undo?then={quote(then, safe='/')}"


def undo_of(number: int | None, hull_id: str) -> str:
    """Return where a change is taken back, coming back to a hull model."""
    return _undo(number, address(hull_id))


def known(uow: UnitOfWork, hull_id: str) -> ShownHull:
    """Return everything about a hull model. NotFound where there is none."""
    try:
        return show_hull(uow, hull_id)
    except Refused as refused:
        raise NotFound(f"{refused}") from None


def _shown(
    request: Request, here: Here, hull_id: str, *, written: str = "", trouble: str | None = None, why: str = ""
) -> Response:
    with here.store.reading() as uow:
        found = known(uow, hull_id)
        fleet = find_records(uow, Wanted(hull=found.hull.id, limit=MOST_RECORDS))
        kin = _kin(uow, found.hull)
    return page(
        request, "hulls/shown.html", status=422 if trouble else 200,
        found=found, hull=found.hull, facts=facts(found.hull), records=fleet.records, kin=kin, value=value, years=years,
        written=written, trouble=trouble, why=why, what=what,
    )  # fmt: skip


def _kin(uow: UnitOfWork, hull: HullModel) -> tuple[HullModel, ...]:
    """Return other hull models of the same yard whose names have the same words: variants, and others of the series."""
    words = parse_name(hull.model).words
    named = suggest_hulls(uow, words[0] if words else hull.model, MOST_SHOWN)
    return tuple(one for one in named if one.id != hull.id and one.builder == hull.builder)[:MOST_KIN]
