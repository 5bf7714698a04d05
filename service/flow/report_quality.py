"""What is likely wrong with the fleet's records."""

from __future__ import annotations

import io
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace

from service.core.answer.compose import Known
from service.core.answer.recheck import Rechecked, recheck
from service.core.quality import Finding, Quality, survey
from service.core.record import Record
from service.files.read.messages import speak
from service.files.write.grids import Sheet, put_csv, put_xlsx
from service.flow.import_report import Advance, silent
from service.flow.known import remembered
from service.flow.recheck import hands
from service.flow.software import SOFTWARE
from service.store.unit import UnitOfWork

HEADINGS = ("record", "kind", "field", "value", "expected", "why", "mend", "command", "other")


def report_quality(uow: UnitOfWork, *, fit: bool = True, progress: Advance = silent) -> Quality:
    """Return every finding on the records as they stand, each with a proposed mend.

    With `fit` every record that was not withdrawn is tried on its own boat, in the catalogue it was made with where that
    is kept, else in the latest; without any catalogue nothing is tried.
    """
    with uow:
        memory = remembered(uow)
        records, catalogue = memory.fleet.records, memory.catalogue
        measured = uow.records.measurements.all()
        rechecked: list[Rechecked] = []
        if fit and catalogue is not None:
            own = _catalogues(uow, records, Known(catalogue, memory.fleet, SOFTWARE, speak))
            rechecked = list(_tried(records, own, progress))
    return survey(
        records,
        memory.fleet.hulls,
        methods={method.code: method for method in catalogue.methods} if catalogue else {},
        measured=measured,
        rechecked=rechecked,
        catalogue=catalogue.version if catalogue else None,
    )


def _catalogues(uow: UnitOfWork, records: tuple[Record, ...], latest: Known) -> dict[str | None, Known]:
    """Return what to judge by for every version that records name; the latest where one is not kept."""
    found: dict[str | None, Known] = {None: latest}
    for version in dict.fromkeys(record.catalogue for record in records):
        kept = None if version in (None, latest.catalogue.version) else uow.catalogues.get(str(version))
        found[version] = latest if kept is None else replace(latest, catalogue=kept)
    return found


def _tried(records: tuple[Record, ...], own: dict[str | None, Known], progress: Advance) -> Iterator[Rechecked]:
    asked = [record for record in records if record.status != "withdrawn"]
    with ThreadPoolExecutor(hands()) as threads:
        for one in threads.map(lambda record: recheck(record, own[record.catalogue]), asked):
            progress(1)
            yield one


def quality_files(found: Quality) -> dict[str, bytes]:
    """Return the findings as files by name: CSV and a workbook, a row a finding."""
    rows = [_row(finding) for finding in found.findings]
    text, book = io.BytesIO(), io.BytesIO()
    put_csv(text, Sheet("quality", HEADINGS, rows))
    put_xlsx(book, [Sheet("quality", HEADINGS, rows)])
    return {"quality.csv": text.getvalue(), "quality.xlsx": book.getvalue()}


def _row(finding: Finding) -> list[str | float | None]:
    return [getattr(finding, name) for name in HEADINGS]
