"""Cells of the registry of hull models, read and written."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping, Sequence
from datetime import datetime
from typing import Any

import sqlalchemy as sa

from service.core.registry import Cell, survivors
from service.store.desk import Desk
from service.store.errors import Conflict
from service.store.schema import hull_aliases, hull_distinct, hull_models, records

_KEYED = {"alias": (hull_aliases, ("hull_id", "alias")), "distinct": (hull_distinct, ("one", "other"))}


class HullCells:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def present(self, cell: Cell) -> Any:  # noqa: ANN401 - a cell holds any value
        """Return what stands in the cell now; of one for several models, whether any of them is there."""
        c = hull_models.c
        if cell.of == "made":
            there = self._desk.among(sa.select(c.id).where(~c.retired), c.id, cell.key)
            return any(True for _ in there)
        if cell.of == "model":
            row = self._desk.one(sa.select(c[cell.key[1]]).where(c.id == cell.key[0]))
            return None if row is None else row[0]
        if cell.of == "record":
            row = self._desk.one(sa.select(records.c.hull_id).where(records.c.reference == cell.key[0]))
            return None if row is None else row[0]
        table, names = _KEYED[cell.of]
        where = [table.c[name] == value for name, value in zip(names, cell.key, strict=True)]
        row = self._desk.one(sa.select(table.c.who, table.c.at, table.c.why).where(*where))
        return None if row is None else [row.who, row.at.isoformat(), row.why]

    def write(self, cells: Sequence[Cell]) -> None:
        """Give the cells their values `after`, but for records, which have a history of their own.

        Conflict where models would be merged in a circle, or into one that is no more.
        """
        by_model, rows = defaultdict[str, dict[str, Any]](dict), defaultdict[str, list[Cell]](list)
        for cell in cells:
            if cell.of == "model":
                by_model[cell.key[0]][cell.key[1]] = cell.after
            elif cell.of == "made":
                for name in cell.key:
                    by_model[name]["retired"] = not cell.after
            elif cell.of != "record":
                rows[cell.of].append(cell)
        self._write_models(by_model)
        for of, some in rows.items():
            self._write_rows(of, some)
        if any("merged_into" in values or "retired" in values for values in by_model.values()):
            self._settle()

    def _write_models(self, by_model: Mapping[str, dict[str, Any]]) -> None:
        alike = defaultdict[tuple[str, ...], list[dict[str, Any]]](list)
        for name, values in by_model.items():
            alike[tuple(sorted(values))].append({**values, "the_id": name})
        for some in alike.values():
            self._desk.write(hull_models.update().where(hull_models.c.id == sa.bindparam("the_id")), some)

    def _write_rows(self, of: str, cells: Sequence[Cell]) -> None:
        table, names = _KEYED[of]
        gone = table.delete().where(*(table.c[name] == sa.bindparam(f"the_{name}") for name in names))
        keys = [dict(zip(names, cell.key, strict=True)) for cell in cells]
        self._desk.connection.execute(gone, [{f"the_{name}": value for name, value in key.items()} for key in keys])
        fresh = [
            {**key, "who": cell.after[0], "at": datetime.fromisoformat(cell.after[1]), "why": cell.after[2]}
            for key, cell in zip(keys, cells, strict=True)
            if cell.after is not None
        ]
        self._desk.write(table.insert(), fresh)

    def _settle(self) -> None:
        """Work out anew which model stands for each that was merged."""
        c = hull_models.c
        rows = self._desk.all(sa.select(c.id, c.merged_into, c.survivor).where(c.merged_into.is_not(None)))
        try:
            final = survivors({row.id: row.merged_into for row in rows})
        except ValueError as circle:
            raise Conflict(
                "hull models cannot be merged in a circle", str(circle), "Take the other merge back"
            ) from None
        gone = sorted(set(final.values()))
        for row in self._desk.among(sa.select(c.id).where(c.retired), c.id, gone):
            raise Conflict("this hull model is no more", repr(row.id), "Merge into one that `transom hulls list` shows")
        settled = hull_models.update().where(c.id == sa.bindparam("the_id"))
        moved = [{"the_id": row.id, "survivor": final[row.id]} for row in rows if row.survivor != final[row.id]]
        self._desk.write(settled, moved)
        alone = hull_models.update().where(c.merged_into.is_(None), c.survivor.is_not(None))
        self._desk.connection.execute(alone.values(survivor=None))
