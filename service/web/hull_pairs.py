"""Hull models that may be one, or two: pairs to review, merging and splitting with a preview."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Any

from fastapi import APIRouter, Depends, Query, Request
from starlette.responses import Response

from service.core.record import Record
from service.core.registry import FIELDS
from service.flow.duplicate_hulls import kept_duplicates, say_distinct
from service.flow.find_records import Wanted, find_records
from service.flow.merge_hulls import MergedHulls, merge_hulls
from service.flow.refusal import Refused
from service.flow.split_hulls import Into, SplitHull, split_hull
from service.store.unit import UnitOfWork
from service.web.desk import Here
from service.web.hull_words import LABELS, value, years
from service.web.hulls import UNSAID, address, known, undo_of
from service.web.pages import ROOT, Notice, page, redirect
from service.web.posted import Form
from service.web.who import AtDesk, actor

routes = APIRouter(prefix="/hulls")
AT_A_TIME, MOST_NAMED, MOST_MOVED = 15, 30, 100
Id = Annotated[str, Query(max_length=80)]
Several = Annotated[list[str] | None, Query(max_length=500)]


@routes.get("/duplicates")
def list_duplicates(
    request: Request, here: Here, by: AtDesk, made: Id = "", skip: Annotated[int, Query(ge=0)] = 0
) -> Response:
    """List pairs that may be one hull model; the page comes at once, the pairs when they are found."""
    del by
    pairs = None
    if made:
        with here.store.reading() as uow:
            pairs = kept_duplicates(uow)
    at = f"{ROOT}/hulls/duplicates?made=1"
    shown = () if pairs is None else pairs[skip : skip + AT_A_TIME]
    more = f"{at}&skip={skip + AT_A_TIME}" if pairs is not None and len(pairs) > skip + AT_A_TIME else None
    return page(
        request, "hulls/duplicates.html", part="hulls/pairs.html",
        pairs=pairs, shown=shown, skip=skip, more=more, made_at=at, value=value, labels=LABELS, years=years,
    )  # fmt: skip


@routes.post("/distinct")
def do_distinct(request: Request, here: Here, by: AtDesk, form: Form) -> Response:
    """Remember that two hull models are two."""
    one, other = form.text("one"), form.text("other")
    number = say_distinct(
        here.store.writing(actor(request, by)), one, other, who=by.who, why=form.text("why") or UNSAID
    )
    to = f"{ROOT}/hulls/duplicates"
    if number is None:
        return redirect(request, to, f"{one} and {other} were known to be two")
    return redirect(request, to, Notice(f"{one} and {other} are two, and are not proposed again", undo_of(number, one)))


@routes.get("/merge")
def show_merge(request: Request, here: Here, by: AtDesk, into: Id = "", other: Id = "") -> Response:
    """Show what merging `other` into `into` would do."""
    return _merging(request, here, by.who, into.strip(), other.strip())


@routes.post("/merge")
def do_merge(request: Request, here: Here, by: AtDesk, form: Form) -> Response:
    """Merge two hull models."""
    into, other, why = form.text("into"), form.text("other"), form.text("why")
    try:
        done = merge_hulls(here.store.writing(actor(request, by)), into, other, who=by.who, why=why or UNSAID)
    except Refused as refused:
        return _merging(request, here, by.who, into, other, why=why, trouble=f"{refused}.")
    said = f"{done.other} leads to {done.into} from now on"
    return redirect(request, address(done.into.id), Notice(said, undo_of(done.number, done.into.id)))


@dataclass(frozen=True)
class Beside:
    """A field of two hull models and what stands after a merge; `mark` says how it came about."""

    label: str
    into: str
    other: str
    after: str
    mark: str


def _merging(
    request: Request, here: Here, who: str, into: str, other: str, *, why: str = "", trouble: str | None = None
) -> Response:
    done, records = None, tuple[Record, ...]()
    if into and other and not trouble:
        with here.store.reading() as uow:
            try:
                done = merge_hulls(uow, into, other, who=who, why="", preview=True)
                records = find_records(uow, Wanted(hull=done.other.id, limit=MOST_NAMED)).records
            except Refused as refused:
                trouble = f"{refused}."
    return page(
        request, "hulls/merge.html", status=422 if trouble else 200,
        into=into, other=other, why=why, trouble=trouble, done=done, records=records,
        rows=_beside(done) if done else [], years=years,
    )  # fmt: skip


def _beside(done: MergedHulls) -> list[Beside]:
    taken = {cell.key[1]: cell.after for cell in done.fills}
    differs = {name for name, _, _ in done.differs}
    rows = []
    for name in FIELDS:
        mine, theirs = getattr(done.into, name), getattr(done.other, name)
        if mine is None and theirs is None:
            continue
        mark = "taken over" if name in taken else "differs" if name in differs else ""
        rows.append(
            Beside(LABELS[name], value(name, mine), value(name, theirs), value(name, taken.get(name, mine)), mark)
        )
    return rows


@dataclass(frozen=True)
class Moving:
    """What is to move out of a hull model, and where to."""

    records: tuple[str, ...] = ()
    aliases: tuple[str, ...] = ()
    new: str = ""
    builder: str = ""
    into: str = ""

    def target(self) -> Into:
        """Return where it goes: a model that is there where one is named, else a new one."""
        return Into(self.into or None, self.new or None, self.builder or None)


def moving_of(
    record: Several = None, alias: Several = None, new: Id = "", builder: Id = "", into: Id = ""
) -> Moving:  # fmt: skip
    """Return what an address says is to move."""
    return Moving(tuple(record or ()), tuple(alias or ()), new.strip(), builder.strip(), into.strip())


@routes.get("/{hull_id:path}/split")
def show_split(
    request: Request, here: Here, by: AtDesk, hull_id: str, moving: Annotated[Moving, Depends(moving_of)]
) -> Response:  # fmt: skip
    """Show what splitting a hull model would do."""
    return _splitting(request, here, by.who, hull_id, moving)


@routes.post("/{hull_id:path}/split")
def do_split(request: Request, here: Here, by: AtDesk, form: Form, hull_id: str) -> Response:
    """Split a hull model."""
    names = tuple(form.all("record")), tuple(form.all("alias"))
    moving = Moving(*names, form.text("new"), form.text("builder"), form.text("into"))
    unit = here.store.writing(actor(request, by))
    try:
        done = _split(unit, hull_id, moving, who=by.who, why=form.text("why") or UNSAID)
    except Refused as refused:
        return _splitting(request, here, by.who, hull_id, moving, trouble=f"{refused}.")
    said = f"{len(done.records)} records and {len(done.aliases)} names moved to {done.into}"
    return redirect(request, address(done.into.id), Notice(said, undo_of(done.number, done.source.id)))


def _split(uow: UnitOfWork, hull_id: str, moving: Moving, **said: Any) -> SplitHull:  # noqa: ANN401 - of the use case
    return split_hull(uow, hull_id, moving.target(), records=moving.records, aliases=moving.aliases, **said)


def _splitting(
    request: Request, here: Here, who: str, hull_id: str, moving: Moving, *, trouble: str | None = None
) -> Response:
    done = None
    with here.store.reading() as uow:
        found = known(uow, hull_id)
        records = find_records(uow, Wanted(hull=found.hull.id, limit=MOST_MOVED)).records
        if moving != Moving() and not trouble:
            try:
                done = _split(uow, hull_id, moving, who=who, why="", preview=True)
            except Refused as refused:
                trouble = f"{refused}."
    return page(
        request, "hulls/split.html", status=422 if trouble else 200,
        found=found, hull=found.hull, records=records, moving=moving, done=done, trouble=trouble, most=MOST_MOVED,
    )  # fmt: skip
