"""Reports over all records: the page comes at once, the report when it is made; plots with the tables behind them."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from typing import Annotated
from urllib.parse import urlencode

from fastapi import APIRouter, Depends, Request
from starlette.responses import Response

from service.core.demand.ledger import Stocking
from service.core.quality import Quality
from service.core.report import Report, period
from service.flow.make_report import FORMATS, NAMES, Name, Wanted, make_report, report_file
from service.web.attached import attached
from service.web.desk import Here
from service.web.faults import NotFound
from service.web.pages import ROOT, page
from service.web.report_page import KINDS, Part, parts
from service.web.who import AtDesk

routes = APIRouter(prefix="/reports")
MOST_FINDINGS = 200
CALLED: dict[Name, tuple[str, str]] = {
    "demand": ("Demand", "What is needed of each piece, what will be, and when to order it."),
    "unmet": ("Unmet", "Boats that nothing fits, and what refuses them."),
    "accuracy": ("Accuracy", "What was proposed against what was installed, and how true the chances were."),
    "quality": ("Quality", "What is likely wrong with records, each with what mends it."),
}


@dataclass(frozen=True)
class Filled:
    """The filters of a report as they were written, what they mean, and by field what cannot be read of them."""

    said: dict[str, str]
    wanted: Wanted
    faults: dict[str, str] = field(default_factory=dict)


def filled(request: Request, here: Here, name: str) -> Filled:
    """Return the filters that an address holds. NotFound where there is no such report."""
    known = {one: one for one in NAMES}
    if name not in known:
        raise NotFound(f"there is no report {name!r}")
    said = {key: text.strip()[:40] for key, text in request.query_params.items() if key not in ("made", "format")}
    read = _Reading(said)
    first, last = read.day("from"), read.day("to")
    if first and last and first > last:
        read.faults["to"] = "This is before the first day."
    wanted = Wanted(
        name=known[name],
        as_of=read.day("as_of") or here.clock().date(),
        first=first,
        last=last,
        proposals=said.get("proposals") == "yes",
        stocking=Stocking(
            int(read.number("quarters", 4, 1, 20)),
            read.number("lead_weeks", 8.0, 0.1, 260),
            read.number("service", 95.0, 50, 99.99) / 100,
        ),
        most=int(read.number("most", 20, 1, 200)),
        thorough=said.get("thorough") == "yes",
        kind=said.get("kind", "") if said.get("kind", "") in KINDS else "",
    )
    return Filled(said, wanted, read.faults)


class _Reading:
    """Reads filters, and keeps what cannot be read."""

    def __init__(self, said: dict[str, str]) -> None:
        self._said, self.faults = said, dict[str, str]()

    def day(self, name: str) -> date | None:
        text = self._said.get(name, "")
        try:
            return date.fromisoformat(text) if text else None
        except ValueError:
            self.faults[name] = "Write a day as 2024-01-31."
            return None

    def number(self, name: str, usual: float, least: float, most: float) -> float:
        text = self._said.get(name, "").replace(",", ".")
        try:
            value = float(text) if text else usual
        except ValueError:
            value = least - 1
        if not least <= value <= most:
            self.faults[name] = f"Write a number from {least:g} to {most:g}."
            return usual
        return value


Filters = Annotated[Filled, Depends(filled)]


@routes.get("")
def list_reports(request: Request, by: AtDesk) -> Response:
    """List the reports."""
    del by
    return page(request, "reports/list.html", called=CALLED)


@routes.get("/{name}")
def show(request: Request, here: Here, by: AtDesk, name: str, filters: Filters, made: str = "") -> Response:
    """Show a report: the page at once, and what it says when it is made."""
    del by
    found: Report | Quality | None = None
    if made and not filters.faults:
        with here.store.reading() as uow:
            found = make_report(uow, filters.wanted)
    shown: list[Part] = parts(found) if isinstance(found, Report) else []
    asked = urlencode(filters.said)
    title, about = CALLED[filters.wanted.name]
    return page(
        request, "reports/shown.html", part="reports/made.html", status=422 if filters.faults else 200,
        name=name, title=title, about=about, said=filters.said, faults=filters.faults, found=found, parts=shown,
        quality=isinstance(found, Quality), made_at=f"{ROOT}/reports/{name}?{asked}{'&' if asked else ''}made=1",
        files=[(one, f"{ROOT}/reports/{name}/file?{asked}{'&' if asked else ''}format={one}") for one in FORMATS[filters.wanted.name]],
        period=period, kinds=KINDS, most=MOST_FINDINGS,
    )  # fmt: skip


@routes.get("/{name}/file")
def get_file(here: Here, by: AtDesk, name: str, filters: Filters, format: str = "csv") -> Response:  # noqa: A002 - the address says it so
    """Give a report as a file."""
    del by, name
    if filters.faults:
        raise NotFound("; ".join(filters.faults.values()))
    with here.store.reading() as uow:
        found = make_report(uow, filters.wanted)
    called, data = report_file(found, format)
    return attached(data, called)
