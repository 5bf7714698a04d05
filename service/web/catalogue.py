"""The catalogue: its versions, what each holds, what differs between two and who carries it, and a new one."""

from __future__ import annotations

from typing import Annotated

from fastapi import APIRouter, Query, Request
from starlette.responses import Response

from service.core.catalogue import Catalogue
from service.core.catalogue_diff import KINDS, CatalogueDiff, Kind, Value, listed
from service.core.form import FormError
from service.files.read.errors import Unreadable
from service.files.read.toml_lines import line_of
from service.flow.compare_catalogues import Side, compare_catalogues
from service.flow.load_catalogue import load_catalogue
from service.flow.refusal import Refused
from service.store.errors import Conflict
from service.web.by_page import by_page
from service.web.desk import Desk, Here
from service.web.faults import NotFound
from service.web.pages import ROOT, page, redirect
from service.web.posted import Form
from service.web.who import AtAdmin, AtDesk, actor

routes = APIRouter(prefix="/catalogue")
MOST_FAULTS = 60
Version = Annotated[str, Query(max_length=80)]
CALLED: dict[Kind, str] = {
    "catalogue": "The whole",
    "gear": "Gears",
    "shaft": "Shafts",
    "bracket": "Brackets",
    "part": "Parts",
    "method": "Ways to measure",
    "rule": "Rules",
    "scale": "Scales of doubt",
    "prior": "What is usual",
    "obstacle": "Usual places of obstacles",
}


@routes.get("")
def list_versions(request: Request, here: Here, by: AtDesk) -> Response:
    """List the versions ever loaded, the one in force first."""
    del by
    return _listed(request, here)


@routes.post("")
def do_load(request: Request, here: Here, by: AtAdmin, form: Form) -> Response:
    """Take a catalogue into use, or tell every fault with its line."""
    file = form.file("file")
    if file is None or not file.content:
        return _listed(request, here, ["Choose a file first; it is empty, or there is none."])
    try:
        loaded = load_catalogue(here.store.writing(actor(request, by)), file.content, file.name)
    except FormError as error:
        return _listed(request, here, _faults(file.content, error), file.name)
    except (Unreadable, Conflict) as error:
        return _listed(request, here, [by_page(str(error))], file.name)
    said = "is in force from now on" if loaded.fresh else "was loaded already: nothing was changed"
    return redirect(
        request, f"{ROOT}/catalogue", f"{loaded.catalogue.name}, version {loaded.catalogue.version}, {said}"
    )


@routes.get("/compare")
def compare(request: Request, here: Here, by: AtDesk, before: Version = "", after: Version = "") -> Response:
    """Show what differs between two versions, and who carries it."""
    del by
    found: CatalogueDiff | None = None
    trouble = None
    with here.store.reading() as uow:
        versions = uow.catalogues.versions()
        if before and after:
            try:
                found = compare_catalogues(uow, Side(before), Side(after), references=True)
            except Refused as refused:
                trouble = f"{refused}."
    return page(
        request, "catalogue/compare.html", status=422 if trouble else 200,
        versions=versions, before=before, after=after, found=found, trouble=trouble, called=CALLED, cell=cell,
    )  # fmt: skip


@routes.get("/{version:path}")
def show(request: Request, here: Here, by: AtDesk, version: str) -> Response:
    """Show all of one version as tables."""
    del by
    with here.store.reading() as uow:
        found, versions = uow.catalogues.get(version), uow.catalogues.versions()
    if found is None:
        raise NotFound(f"no catalogue of version {version!r} was ever loaded")
    return page(
        request, "catalogue/shown.html",
        catalogue=found, tables=tables(found), called=CALLED, in_force=versions[0] == version, cell=cell,
    )  # fmt: skip


Row = tuple[str, list[tuple[Value, str | None]]]


def tables(catalogue: Catalogue) -> list[tuple[Kind, list[str], list[Row]]]:
    """Return a table for each kind: the fields that any of them has, and a row for each code."""
    found: list[tuple[Kind, list[str], list[Row]]] = []
    for kind, things in listed(catalogue).items():
        if kind == "catalogue" or not things:
            continue
        fields = list(dict.fromkeys(name for thing in things.values() for name in thing))
        rows = [(code, [thing.get(name, (None, None)) for name in fields]) for code, thing in things.items()]
        found.append((kind, fields, rows))
    return sorted(found, key=lambda one: KINDS.index(one[0]))


def cell(said: Value, unit: str | None = None) -> str:
    r"""Return what stands in a cell.

    >>> cell((60.0, 170.0), "mm"), cell(None), cell(True), cell(0.05)
    ('60 to 170\u202fmm', '', 'yes', '0.05')
    """
    if said is None:
        return ""
    if isinstance(said, bool):
        return "yes" if said else "no"
    if isinstance(said, tuple):
        pair = len(said) == 2 and all(isinstance(one, (int, float)) for one in said)  # noqa: PLR2004 - from, to
        text = (" to " if pair else ", ").join(_one(one) for one in said)
    else:
        text = _one(said)
    return f"{text}\u202f{unit}" if unit and unit != "1" else text


def _one(said: object) -> str:
    if isinstance(said, tuple):
        return f"({', '.join(_one(one) for one in said)})"
    return f"{said:g}" if isinstance(said, float) else "open" if said is None else str(said)


def _faults(content: bytes, error: FormError) -> list[str]:
    text = content.decode("utf-8-sig", "replace")
    told = []
    for defect in error.defects[:MOST_FAULTS]:
        line = line_of(text, defect.field)
        told.append((f"line {line}: " if line else "") + f"{defect}")
    if len(error.defects) > MOST_FAULTS:
        told.append(f"and {len(error.defects) - MOST_FAULTS} more")
    return told


def _listed(request: Request, here: Desk, trouble: list[str] | None = None, name: str = "") -> Response:
    with here.store.reading() as uow:
        versions, latest = uow.catalogues.versions(), uow.catalogues.latest()
    return page(
        request, "catalogue/list.html", status=422 if trouble else 200,
        versions=versions, latest=latest, trouble=trouble, name=name,
    )  # fmt: skip
