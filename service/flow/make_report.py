"""Make one of the reports from what a form asks for, and its files."""

from __future__ import annotations

import io
import zipfile
from dataclasses import dataclass, field
from datetime import date
from typing import Literal, get_args

from service.core.demand.ledger import Asked, Stocking
from service.core.quality import Quality
from service.core.report import Report
from service.files.write.report_files import Format, report_files
from service.flow.refusal import Refused
from service.flow.report_demand import report_demand
from service.store.unit import UnitOfWork

Name = Literal["demand", "unmet", "accuracy", "quality"]
NAMES: tuple[Name, ...] = get_args(Name)
FORMATS: dict[Name, tuple[str, ...]] = {
    "demand": ("csv", "xlsx", "pdf", "json", "parquet"),
    "unmet": ("csv", "xlsx", "pdf", "json", "parquet"),
    "accuracy": ("csv", "xlsx", "pdf", "json", "parquet"),
    "quality": ("csv", "xlsx", "json"),
}


@dataclass(frozen=True)
class Wanted:
    """Which report, of which days (`as_of` is the report's own), and what is asked of that one alone.

    demand: `proposals` count too, `stocking` is what reorder points are for. unmet: `most` boats are tried again, and
    metal that would fit is looked for where they are `thorough`. accuracy: `thorough` learns without the last records.
    quality: `thorough` tries each record on its boat, `kind` is the one kind of findings wanted.
    """

    name: Name
    as_of: date
    first: date | None = None
    last: date | None = None
    proposals: bool = False
    stocking: Stocking = field(default_factory=Stocking)
    most: int = 20
    thorough: bool = False
    kind: str = ""


def make_report(uow: UnitOfWork, wanted: Wanted) -> Report | Quality:
    """Return the report. Each loads what it needs when it is asked for: the statistics take a second."""
    days = (wanted.as_of, wanted.first, wanted.last)
    if wanted.name == "demand":
        return report_demand(uow, Asked(*days, wanted.proposals, wanted.stocking))
    if wanted.name == "unmet":
        from service.flow.report_unmet import Asked as Boats  # noqa: PLC0415 - it takes a second to load
        from service.flow.report_unmet import report_unmet  # noqa: PLC0415 - the same

        return report_unmet(uow, Boats(*days, wanted.thorough, wanted.most))
    if wanted.name == "accuracy":
        from service.core.demand.accuracy import Days  # noqa: PLC0415 - it takes a second to load
        from service.flow.report_accuracy import report_accuracy  # noqa: PLC0415 - the same

        return report_accuracy(uow, Days(*days), held_out=wanted.thorough)
    from service.flow.report_quality import report_quality  # noqa: PLC0415 - it takes a second to load

    found = report_quality(uow, fit=wanted.thorough)
    if not wanted.kind:
        return found
    return found.model_copy(update={"findings": tuple(one for one in found.findings if one.kind == wanted.kind)})


def report_file(found: Report | Quality, format_: str) -> tuple[str, bytes]:
    """Return a report as one file, with its name; several of one format are packed together. Refused for no format."""
    name: Name = "quality" if isinstance(found, Quality) else found.name
    if format_ not in FORMATS[name]:
        raise Refused(f"there is no {format_!r} of this report; take one of {', '.join(FORMATS[name])}")
    if isinstance(found, Quality):
        files = _of_quality(found, format_)
    else:
        chosen: Format = format_  # type: ignore[assignment] # it is among them
        files = report_files(found, (chosen,))
    if len(files) == 1:
        return next(iter(files.items()))
    packed = io.BytesIO()
    with zipfile.ZipFile(packed, "w", zipfile.ZIP_DEFLATED) as archive:
        for one, data in files.items():
            archive.writestr(zipfile.ZipInfo(one), data, zipfile.ZIP_DEFLATED)
    return f"{name}-{format_}.zip", packed.getvalue()


def _of_quality(found: Quality, format_: str) -> dict[str, bytes]:
    if format_ == "json":
        return {"quality.json": found.model_dump_json(by_alias=True, indent=1).encode() + b"\n"}
    from service.flow.report_quality import quality_files  # noqa: PLC0415 - it takes a second to load

    return {name: data for name, data in quality_files(found).items() if name.endswith(format_)}
