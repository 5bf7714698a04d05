"""Look at a file of records before it is taken: what its columns stand for, and what would become of its rows."""

from __future__ import annotations

from dataclasses import dataclass

from service.core.mapping import ColumnRule, Mapping
from service.files.columns import by_name
from service.files.read.grid import open_table
from service.files.read.kinds import kind_of
from service.files.read.mapping_file import read_mapping
from service.files.read.records_file import layout_of
from service.files.write.mapping_file import put_mapping
from service.flow.decide_hulls import decider
from service.flow.guess_mapping import guess_mapping
from service.flow.import_records import MappingFile, import_records
from service.flow.import_report import ImportReport
from service.store.unit import Store

SAMPLES, LOOKED_AT = 3, 40


@dataclass(frozen=True)
class Heading:
    """A heading of somebody's table with some of its cells, and how sure the guess was (None: nobody guessed)."""

    rule: ColumnRule
    cells: tuple[str, ...]
    sure: float | None = None


@dataclass(frozen=True)
class Plan:
    """How a file would be read. Without a `mapping` it names the columns of records itself."""

    mapping: Mapping | None
    headings: tuple[Heading, ...] = ()
    remarks: tuple[str, ...] = ()

    def file(self) -> MappingFile | None:
        """Return the mapping as a file."""
        return None if self.mapping is None else MappingFile(put_mapping(self.mapping).encode(), "the mapping")


def plan_import(data: bytes, name: str, text: str = "") -> Plan:
    """Return how a file would be read: by the mapping in `text`, else as its own headings say, else as is likely.

    Unreadable where it is no table; the mapping's faults are raised as `read_mapping` does.
    """
    if kind_of(data, name) == "jsonl":
        return Plan(None)
    sure: dict[str, float] = {}
    remarks: tuple[str, ...] = ()
    if text:
        mapping = read_mapping(text.encode(), "the mapping")
    elif _speaks_for_itself(data, name):
        return Plan(None)
    else:
        guessed = guess_mapping(data, name)
        mapping = read_mapping(guessed.text.encode(), "the guess")
        sure, remarks = {one.heading: one.sure for one in guessed.guesses if one.to}, guessed.remarks
    cells = _cells(data, name, mapping)
    headings = (Heading(rule, cells.get(rule.heading, ()), sure.get(rule.heading)) for rule in mapping.column)
    return Plan(mapping, tuple(headings), remarks)


def changed(mapping: Mapping, rules: dict[str, tuple[str, str, str]], **more: str | None) -> Mapping:
    """Return a mapping with what a person changed: (to, unit, format) by heading, and `decimal` or `number_rows`.

    ValueError (pydantic's) where that is none.
    """
    column = []
    for rule in mapping.column:
        to, unit, written = rules.get(rule.heading, (rule.to, rule.unit or "", rule.format or ""))
        values = rule.values if to == rule.to else {}
        said = {"heading": rule.heading, "to": to, "unit": unit or None, "format": written or None, "values": values}
        column.append(said)
    always = {key: value for key, value in mapping.always.items() if all(one["to"] != key for one in column)}
    return Mapping.model_validate(
        {**mapping.model_dump(exclude={"column"}), "always": always, "column": column, **more}
    )


def preview_import(store: Store, data: bytes, name: str, plan: Plan, who: str) -> ImportReport:
    """Return what importing the file so would do; nothing is written. Raises as `import_records` does."""
    decide = decider(store.reading())
    return import_records(store.reading(), data, name, mapping=plan.file(), decide=decide, who=who, preview=True)


def _speaks_for_itself(data: bytes, name: str) -> bool:
    """Say whether most of a table's headings are columns of records."""
    known = by_name()
    grid = next(open_table(data, name, known=known).grids(), None)
    headings = [one for one in (grid.headings if grid else ()) if one]
    return bool(headings) and 2 * sum(one in known for one in headings) > len(headings)


def _cells(data: bytes, name: str, mapping: Mapping) -> dict[str, tuple[str, ...]]:
    grid = next(open_table(data, name, layout_of(mapping), known=by_name()).grids(), None)
    found: dict[str, list[str]] = {}
    if grid is not None:
        for (_, cells), _ in zip(grid.rows, range(LOOKED_AT), strict=False):
            for heading, cell in zip(grid.headings, cells, strict=False):
                if cell.strip() and len(found.setdefault(heading, [])) < SAMPLES:
                    found[heading].append(cell)
    return {heading: tuple(cells) for heading, cells in found.items()}
