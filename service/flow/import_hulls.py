"""Take over a list of hull models."""

from __future__ import annotations

from collections import defaultdict
from typing import Any

from service.core.hulls import fold
from service.core.record import HullModel
from service.files.read.hulls_file import HullLine, HullRow, read_hulls
from service.files.read.tables import RowError
from service.flow.import_report import Advance, ImportReport, silent
from service.store.unit import UnitOfWork


def import_hulls(
    uow: UnitOfWork,
    data: bytes,
    name: str,
    *,
    who: str = "import",
    preview: bool = False,
    progress: Advance = silent,
) -> ImportReport:
    """Add and bring up to date the hull models in a CSV file or workbook, and commit.

    A row is a known model's by its id, or else by builder and name unless its years are another's. What a row does
    not say stays as it is, and aliases are only added; one that was merged into another stays so. `preview` says
    what would be done and writes nothing.
    Unreadable where the file is no list of hull models; a bad row is reported and keeps no other one out.
    """
    read = read_hulls(data, name)
    with uow:
        registry = _Registry(uow)
        errors = list(read.rejected)
        for row in read.rows:
            problem = registry.take(row)
            if problem:
                errors.append(problem)
            progress(1)
        put = uow.hulls.put(list(registry.taken.values()), who=who, why=f"import of {name}", preview=preview)
        if not preview:
            uow.commit()
    changes = {hull_id: registry.changed(hull_id) for hull_id in put.updated}
    return ImportReport(put.created, put.updated, put.unchanged, _in_order(errors), changes, preview)


def _in_order(errors: list[RowError]) -> tuple[RowError, ...]:
    return tuple(sorted(errors, key=lambda error: (error.sheet or "", error.row)))


class _Registry:
    """The known models, and what the rows make of them so far."""

    def __init__(self, uow: UnitOfWork) -> None:
        self._uow = uow
        self._known = {hull.id: hull for hull in uow.hulls.every()}
        self._gone = {hull.id: hull for hull in uow.hulls.retired()}
        self._named = defaultdict[str, list[HullModel]](list)
        self._row = dict[str, int]()
        self.taken = dict[str, HullModel]()
        for hull in self._known.values():
            self._named[_key(hull)].append(hull)

    def take(self, row: HullRow) -> RowError | None:
        """Take a row over; or return what is wrong with it."""
        line = row.line
        same = self._same(line)
        if len(same) > 1:
            ids = ", ".join(hull.id for hull in same)
            return _error(row, "id", f"several hull models have this name ({ids}); give the id of the one meant")
        before = same[0] if same else None
        if before is not None and before.id in self._row:
            return _error(row, "model", f"row {self._row[before.id]} is this hull model too; keep one of them")
        said = {key: value for key, value in line.model_dump(exclude={"aliases"}).items() if value is not None}
        aliases = (*(before.aliases if before else ()), *line.aliases)
        merged = {**(before.model_dump() if before else {"id": self._uow.new_id("hull")}), **said}
        hull = HullModel.model_validate({**merged, "aliases": tuple(dict.fromkeys(aliases))})
        if hull.first_year is not None and hull.last_year is not None and hull.first_year > hull.last_year:
            years = f"the years would become {hull.first_year} to {hull.last_year}; give both"
            return _error(row, "first_year", years)
        if before is None:
            self._named[_key(hull)].append(hull)
        self.taken[hull.id] = hull
        self._row[hull.id] = row.row
        return None

    def _same(self, line: HullLine) -> list[HullModel]:
        if line.id is not None:
            found = self.taken.get(line.id) or self._known.get(line.id) or self._gone.get(line.id)
            return [found] if found else []
        namesakes = [hull for hull in self._named[_key(line)] if not _of_other_years(hull, line)]
        exact = [hull for hull in namesakes if hull.first_year == line.first_year]
        return exact if len(exact) == 1 else namesakes

    def changed(self, hull_id: str) -> tuple[str, ...]:
        """Return the columns in which a known model changes."""
        before: dict[str, Any] = (self._known.get(hull_id) or self._gone[hull_id]).model_dump()
        after = self.taken[hull_id].model_dump()
        return tuple(key for key, value in after.items() if value != before[key])


def _key(hull: HullModel | HullLine) -> str:
    return f"{fold(hull.builder or '')}|{fold(hull.model)}"


def _of_other_years(hull: HullModel, line: HullLine) -> bool:
    """Say whether the years exclude each other: yards give a later boat an earlier one's name."""
    if hull.first_year is None or line.first_year is None:
        return False
    ends = (hull.last_year or hull.first_year, line.last_year or line.first_year)
    return hull.first_year > ends[1] or line.first_year > ends[0]


def _error(row: HullRow, column: str, expected: str) -> RowError:
    value = getattr(row.line, column)
    return RowError(row.sheet, row.row, column, "" if value is None else str(value), expected)
