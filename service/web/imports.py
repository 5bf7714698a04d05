"""Taking over records from a file: what its columns are, what would be done, doing it, and undoing it."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Annotated
from urllib.parse import urlencode

from fastapi import APIRouter, Query, Request
from pydantic import ValidationError
from starlette.responses import Response

from service.core.form import FormError
from service.files.columns import columns
from service.files.read.errors import Unreadable
from service.files.waiting import Waiting
from service.flow.decide_hulls import decider
from service.flow.fault_sheet import kept_fault_sheet
from service.flow.go_on_import import go_on_import, job_of
from service.flow.import_job import start_import
from service.flow.import_records import import_records
from service.flow.import_report import ImportReport, faults_of
from service.flow.preview_import import Plan, changed, plan_import, preview_import
from service.flow.undo_import import undo_import
from service.store.errors import Conflict
from service.web.attached import attached
from service.web.by_page import by_page
from service.web.desk import Desk, Here
from service.web.faults import NotFound
from service.web.pages import ROOT, Notice, page, redirect
from service.web.posted import Form, Posted
from service.web.who import AtDesk, actor

routes = APIRouter(prefix="/imports")
HERE = f"{ROOT}/imports"
MOST_BATCHES, MOST_SHOWN = 50, 100
UNASKED, AT_ONCE = 60_000, 400_000
"""Bytes of a file that is previewed unasked, and of one that is taken while somebody waits; a larger one is a job."""
GONE = "that file does not wait here any more; files wait for a day. Send it again"
Text = Annotated[str, Query(max_length=300)]


@routes.get("")
def list_imports(request: Request, here: Here, by: AtDesk) -> Response:
    """List imports, the newest first, with the form to send a file."""
    del by
    return _listed(request, here)


@routes.post("")
def do_send(request: Request, here: Here, by: AtDesk, form: Form) -> Response:
    """Let a file wait, and go on to what it is."""
    del by
    file = form.file("file")
    if file is None or not file.content:
        return _listed(request, here, "Choose a file first; it is empty, or there is none.")
    name = Waiting(here.vault.folder).put(file.content, here.clock())
    return redirect(request, f"{HERE}/new?{urlencode({'file': name, 'name': file.name[:200]})}")


@routes.get("/new")
def show_new(request: Request, here: Here, by: AtDesk, file: Text = "", name: Text = "") -> Response:
    """Show what the columns of a waiting file are taken for; of a small one also what would be done."""
    if not file:
        return redirect(request, HERE)
    given = Given(file, name or "file", _waiting(here, file))
    try:
        plan = plan_import(given.data, given.name)
    except (Unreadable, FormError) as error:
        return _listed(request, here, by_page(f"{error}."))
    looked = Looked(given, plan)
    if len(given.data) <= UNASKED:
        looked = _tried(here, looked, by.who)
    return _new(request, looked)


@routes.post("/preview")
def do_preview(request: Request, here: Here, by: AtDesk, form: Form) -> Response:
    """Show what importing the file would do, with the columns as they are given."""
    return _new(request, _tried(here, _looked(here, form), by.who))


@routes.post("/run")
def do_run(request: Request, here: Here, by: AtDesk, form: Form) -> Response:
    """Take the file over: a small one at once, a large one as a job."""
    looked = _looked(here, form)
    given, who = looked.given, actor(request, by)
    if looked.trouble:
        return _new(request, looked)
    unit, mapping = here.store.writing(who), looked.plan.file()
    try:
        if len(given.data) > AT_ONCE:
            job = start_import(unit, given.data, given.name, actor=who, mapping=mapping)
            batch_id, said = str(job.arguments["import"]), f"{given.name} is being taken over"
        else:
            decide = decider(here.store.reading())
            report = import_records(unit, given.data, given.name, mapping=mapping, decide=decide, who=by.who)
            batch_id, said = report.batch.id if report.batch else "", _said(report)
    except (Unreadable, FormError) as error:
        return _new(request, replace(looked, trouble=by_page(f"{error}.")))
    Waiting(here.vault.folder).drop(given.file)
    return redirect(request, f"{HERE}/{batch_id}", Notice(said, f"{HERE}/{batch_id}/undo"))


@routes.get("/{import_id}")
def show(request: Request, here: Here, by: AtDesk, import_id: str) -> Response:
    """Show how far an import is, and what became of its rows."""
    del by
    with here.store.reading() as uow:
        try:
            batch = uow.imports.get(import_id)
        except Conflict as conflict:
            raise NotFound(f"{conflict.what}: {conflict.where}") from None
        job = job_of(uow, import_id)
        told = uow.imports.telling(import_id, MOST_SHOWN)
    at_work = job is not None and not job.over
    return page(
        request, "imports/shown.html", part="imports/progress.html",
        batch=batch, job=job, at_work=at_work, rejected=faults_of(told), most=MOST_SHOWN,
        updated=[one for one in told if one.outcome == "updated" and not one.undo],
        stayed=[one for one in told if one.undo in ("kept", "failed")],
    )  # fmt: skip


@routes.get("/{import_id}/faults")
def get_faults(here: Here, by: AtDesk, import_id: str) -> Response:
    """Give the rows that were not taken as a file of the same kind, to be mended and sent again."""
    del by
    try:
        sheet = kept_fault_sheet(here.store.reading(), import_id)
    except Conflict as conflict:
        raise NotFound(f"{conflict.what}: {conflict.where}") from None
    return attached(sheet.data, f"faults-{import_id}.{sheet.ending}")


@routes.post("/{import_id}/undo")
def do_undo(request: Request, here: Here, by: AtDesk, form: Form, import_id: str) -> Response:
    """Undo an import: what was edited since is kept."""
    del form
    done = undo_import(here.store.writing(actor(request, by)), import_id, who=by.who)
    kept = sum(row.undo != "undone" for row in done.rows)
    also = f"; {kept} rows stay, for they were edited since" if kept else ""
    return redirect(
        request, f"{HERE}/{import_id}", f"{len(done.rows) - kept} rows of {done.batch.name} are undone{also}"
    )


@routes.post("/{import_id}/resume")
def do_resume(request: Request, here: Here, by: AtDesk, form: Form, import_id: str) -> Response:
    """Go on with an import that broke off."""
    del form
    who = actor(request, by)
    job = go_on_import(here.store.writing(who), import_id, actor=who)
    return redirect(request, f"{HERE}/{import_id}", f"{job.name} goes on")


@dataclass(frozen=True)
class Given:
    """A file that waits."""

    file: str
    name: str
    data: bytes


@dataclass(frozen=True)
class Looked:
    """A file that waits, how it would be read, and what would be done or what is wrong with it."""

    given: Given
    plan: Plan
    report: ImportReport | None = None
    trouble: str | None = None


def _waiting(here: Desk, file: str) -> bytes:
    data = Waiting(here.vault.folder).get(file)
    if data is None:
        raise NotFound(GONE)
    return data


def _looked(here: Desk, form: Posted) -> Looked:
    """Return the file of a form with the columns as somebody changed them; what cannot be read so is its trouble."""
    file = form.text("file")
    given, text = Given(file, form.text("name") or "file", _waiting(here, file)), form.text("mapping")
    plan = Plan(None)
    try:
        plan = plan_import(given.data, given.name, text)
        if plan.mapping is not None and text and form.text("use") != "text":
            more = {"decimal": form.text("decimal") or None, "number_rows": form.text("number_rows") or None}
            mapping = changed(plan.mapping, _rules(form), **more)
            headings = tuple(replace(one, rule=rule) for one, rule in zip(plan.headings, mapping.column, strict=True))
            plan = replace(plan, mapping=mapping, headings=headings)
    except ValidationError as error:
        said = "; ".join(f"{'.'.join(map(str, one['loc']))} {one['msg']}".strip() for one in error.errors()[:5])
        return Looked(given, plan, trouble=f"{said}.")
    except (Unreadable, FormError) as error:
        return Looked(given, plan, trouble=by_page(f"{error}."))
    return Looked(given, plan)


def _rules(form: Posted) -> dict[str, tuple[str, str, str]]:
    rules, headings = {}, form.under("heading.")
    for number, heading in headings.items():
        to, unit, written = (form.text(f"{what}.{number}") for what in ("to", "unit", "format"))
        rules[heading] = (to or "keep", unit, written)
    return rules


def _tried(here: Desk, looked: Looked, who: str) -> Looked:
    if looked.trouble:
        return looked
    try:
        return replace(
            looked, report=preview_import(here.store, looked.given.data, looked.given.name, looked.plan, who)
        )
    except (Unreadable, FormError) as error:
        return replace(looked, trouble=by_page(f"{error}."))


def _new(request: Request, looked: Looked) -> Response:
    mapping = looked.plan.file()
    return page(
        request, "imports/new.html", status=422 if looked.trouble else 200,
        looked=looked, given=looked.given, plan=looked.plan, report=looked.report, trouble=looked.trouble,
        text=mapping.data.decode() if mapping else "", targets=[one.name for one in columns()],
        large=len(looked.given.data) > AT_ONCE, most=MOST_SHOWN,
    )  # fmt: skip


def _listed(request: Request, here: Desk, trouble: str | None = None) -> Response:
    with here.store.reading() as uow:
        batches = uow.imports.all()
    return page(
        request, "imports/list.html", status=422 if trouble else 200,
        batches=batches[:MOST_BATCHES], count=len(batches), trouble=trouble,
    )  # fmt: skip


def _said(report: ImportReport) -> str:
    counts = ((len(report.created), "added"), (len(report.updated), "changed"), (len(report.unchanged), "as they were"))
    rejected = sum(row.outcome == "rejected" for row in report.rows)
    told = [f"{count} {what}" for count, what in counts if count]
    return f"{', '.join(told) or 'Nothing was taken'}" + (f"; {rejected} not taken" if rejected else "")
