"""`transom report`: what the records say when they are looked at together. Each loads what it needs when it is asked for."""

from __future__ import annotations

import inspect
import re
from collections.abc import Callable
from datetime import date
from pathlib import Path
from typing import Annotated, Any

import typer

from service import bootstrap
from service.cli import faults, out, outbox
from service.cli.options import Db, Json, group, reading
from service.cli.pages import reports as page
from service.cli.progress import bar
from service.cli.sheet import Sheet
from service.core.demand.ledger import Asked, Stocking
from service.core.report import Report
from service.files.write.report_files import FORMATS, Format, report_files
from service.flow.report_demand import report_demand
from service.store.unit import UnitOfWork

EVERY = ",".join(FORMATS)
commands = group("Reports over all records.")
KINDS = tuple(page.WORDS)
Out = Annotated[Path | None, typer.Option("--out", metavar="DIR", help="Also write it there, as CSV and XLSX.")]
Folder = Annotated[Path | None, typer.Option("--out", metavar="DIR", help="Also write it there, in every format.")]
Formats = Annotated[
    str, typer.Option("--format", metavar="LIST", help=f"What --out writes: any of {EVERY}, with commas.")
]
From = Annotated[str | None, typer.Option("--from", metavar="DATE", help="Count from this day on, as 2024-01-01.")]
To = Annotated[str | None, typer.Option("--to", metavar="DATE", help="Count up to this day.")]
AsOf = Annotated[
    str | None,
    typer.Option(
        "--as-of", metavar="DATE", help="The day the report is made for; else today. Later ones do not count."
    ),
]
Quiet = Annotated[bool, typer.Option("--quiet", help="Print nothing: for cron, with --out. The exit status tells.")]


def days_of(as_of: str | None, first: str | None, last: str | None) -> tuple[date, date | None, date | None]:
    """Return the days that were named, today where the report's own was not. BadInput says what a day looks like."""
    days = [_day(name, text) for name, text in (("--as-of", as_of), ("--from", first), ("--to", last))]
    if days[1] and days[2] and days[1] > days[2]:
        raise faults.BadInput(f"--from {days[1]} comes after --to {days[2]}. Give the earlier day first")
    return days[0] or bootstrap.clock().date(), days[1], days[2]


def _day(name: str, text: str | None) -> date | None:
    try:
        return None if text is None else date.fromisoformat(text)
    except ValueError:
        raise faults.BadInput(f"{name} {text!r} is no day; write it as 2024-01-31") from None


def _reach(text: str) -> tuple[str, float, float]:
    found = re.fullmatch(r"(.+)=(\d+(?:\.\d+)?)-(\d+(?:\.\d+)?)", text)
    if found is None or float(found[2]) >= float(found[3]):
        raise faults.BadInput(
            f"--with-reach {text!r}: write a bracket's code and its reach in mm, as hinge-60-170=280-390"
        )
    return found[1], float(found[2]), float(found[3])


def _formats(text: str) -> tuple[Format, ...]:
    named = [part.strip().lower() for part in text.split(",") if part.strip()]
    unknown = [one for one in named if one not in FORMATS]
    if unknown or not named:
        raise faults.BadInput(f"--format {text!r}: take any of {', '.join(FORMATS)}, with commas between them")
    return tuple(one for one in FORMATS if one in named)


Days = tuple[date, date | None, date | None]
"""The report's own day, and the ends of the period."""
Made = Callable[[UnitOfWork, Days], Report]
PERIOD = ("from_", "to", "as_of")


def _told(  # one parameter an option
    made: Made,
    from_: From = None,
    to: To = None,
    as_of: AsOf = None,
    out_: Folder = None,
    format_: Formats = EVERY,
    quiet: Quiet = False,
    json: Json = False,
    db: Db = None,
) -> None:
    """Make the report, write its files, and print it. What was asked for is looked at before any work is done."""
    days, chosen, folder = days_of(as_of, from_, to), _formats(format_), outbox.ready(out_)
    with reading(db) as uow:
        found = made(uow, days)
    for name, data in report_files(found, chosen).items() if folder else ():
        outbox.write_bytes(folder / name, data)  # type: ignore[operator] # there is a folder
    if json:
        out.document(found)
    elif not quiet:
        with out.page() as console:
            page.report(Sheet(console), found)


def report(own: Callable[..., Made]) -> Callable[..., Made]:
    """Make a command of a function that takes the options of one report: period and files are options of every one."""
    mine, shared = (inspect.signature(one, eval_str=True).parameters for one in (own, _told))
    period = [shared[name] for name in PERIOD]
    files = [one for name, one in shared.items() if name not in ("made", *PERIOD)]
    every = [one.replace(kind=one.KEYWORD_ONLY) for one in (*period, *mine.values(), *files)]

    def command(**given: Any) -> None:  # noqa: ANN401 - options of any type
        made = own(**{name: given.pop(name) for name in mine})
        _told(made, **given)

    command.__doc__, command.__name__ = own.__doc__, own.__name__
    command.__signature__ = inspect.Signature(every, return_annotation=None)  # type: ignore[attr-defined] # it is asked for
    command.__annotations__ = {one.name: one.annotation for one in every}
    commands.command()(command)
    return own


@report
def demand(
    proposals: Annotated[bool, typer.Option("--proposals", help="Count what is only proposed, too.")] = False,
    quarters: Annotated[
        int, typer.Option("--quarters", min=1, max=20, help="How many quarters ahead to foretell.")
    ] = 4,
    lead_weeks: Annotated[
        float, typer.Option("--lead-weeks", min=0.1, max=260, help="Weeks from ordering metal until it is there.")
    ] = 8.0,
    service: Annotated[
        float,
        typer.Option("--service", min=0.5, max=0.9999, help="How surely stock is to last until then, 0.5 to 0.9999."),
    ] = 0.95,
    without: Annotated[
        list[str] | None,
        typer.Option(
            "--without", metavar="CODE", help="What if this shaft or bracket were dropped; may be given again."
        ),
    ] = None,
    with_shaft: Annotated[
        list[float] | None,
        typer.Option("--with-shaft", metavar="MM", help="What if there were a shaft of this length."),
    ] = None,
    with_reach: Annotated[
        list[str] | None,
        typer.Option(
            "--with-reach", metavar="CODE=MIN-MAX", help="What if a bracket were made with this reach, in mm."
        ),
    ] = None,
) -> Made:
    """Count what is needed, and foretell what will be.

    Configurations, gears, brackets, shafts and loose parts, with shares, growth, places, pairs, expected demand and
    reorder points. A what-if tries the fleet again, boat by boat, which takes a minute or two for some hundred boats.
    """
    reaches = [_reach(text) for text in with_reach or ()]

    def made(uow: UnitOfWork, days: Days) -> Report:
        asked = Asked(*days, proposals, Stocking(quarters, lead_weeks, service))
        if not (without or with_shaft or reaches):
            return report_demand(uow, asked)
        from service.flow.report_whatif import what_if  # noqa: PLC0415 - it takes a second to load

        with bar("boats") as advance:
            dropped, lengths = without or (), with_shaft or ()
            try:
                more = what_if(uow, dropped=dropped, lengths=lengths, reaches=reaches, progress=advance)
            except KeyError as error:
                raise faults.BadInput(str(error.args[0])) from None
        return report_demand(uow, asked, more)

    return made


@report
def unmet(
    solve: Annotated[
        bool, typer.Option("--solve/--no-solve", help="Look for metal that would fit; takes longest.")
    ] = True,
    most: Annotated[int, typer.Option("--most", min=1, help="How many boats are tried again, the last ones.")] = 200,
) -> Made:
    """List boats that nothing fits, what refuses them, and which new shaft or bracket would serve most of them.

    Enquiries whose last answer fits nothing, and records that were withdrawn. Each is tried again with the catalogue as
    it is loaded now.
    """

    def made(uow: UnitOfWork, days: Days) -> Report:
        from service.flow.report_unmet import Asked, report_unmet  # noqa: PLC0415 - it takes a second to load

        with bar("boats", None) as advance:
            return report_unmet(uow, Asked(*days, solve, most), advance)

    return made


@report
def accuracy(
    held_out: Annotated[
        bool,
        typer.Option("--held-out", help="Also test chances on the last records, learned without them; takes longer."),
    ] = False,
) -> Made:
    """Compare what was proposed with what was installed: by year, where it was changed, and how true chances were."""

    def made(uow: UnitOfWork, days: Days) -> Report:
        from service.core.demand.accuracy import Days as Wanted  # noqa: PLC0415 - it takes a second to load
        from service.flow.report_accuracy import report_accuracy  # noqa: PLC0415 - the same

        return report_accuracy(uow, Wanted(*days), held_out=held_out)

    return made


@commands.command()
def quality(
    kind: Annotated[
        str | None, typer.Option("--kind", metavar="|".join(KINDS), help="Only findings of this kind.")
    ] = None,
    fit: Annotated[bool, typer.Option("--fit/--no-fit", help="Try each record on its own boat; takes longest.")] = True,
    out_: Out = None,
    json: Json = False,
    db: Db = None,
) -> None:
    """List what is likely wrong with records, each with a proposed mend.

    Impossible values, installations written down twice, values unlike sister ships', measurements that contradict each
    other, records that fail their own fit, and what is missing and matters.
    """
    from service.flow.report_quality import quality_files, report_quality  # noqa: PLC0415 - it takes a second to load

    if kind is not None and kind not in KINDS:
        raise faults.BadInput(f"there is no kind {kind!r} of findings; take one of {', '.join(KINDS)}")
    folder = outbox.ready(out_)
    with reading(db) as uow, bar("records", uow.records.count() if fit else None) as advance:
        found = report_quality(uow, fit=fit, progress=advance)
    if kind is not None:
        found = found.model_copy(update={"findings": tuple(one for one in found.findings if one.kind == kind)})
    if folder is not None:
        for name, data in quality_files(found).items():
            outbox.write_bytes(folder / name, data)
    if json:
        out.document(found)
        return
    with out.page() as console:
        page.quality(Sheet(console), found)
