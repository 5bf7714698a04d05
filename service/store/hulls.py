"""Hull models, the other ways people write them, and which of them turned out to be one."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import sqlalchemy as sa

from service.core.record import HullModel
from service.core.registry import FIELDS, Cell, Kind, with_family
from service.store.desk import Desk
from service.store.errors import Conflict
from service.store.hull_candidates import HullCandidates
from service.store.hull_cells import HullCells
from service.store.hull_log import HullLog
from service.store.schema import boats, enquiries, hull_aliases, hull_distinct, hull_models, records


@dataclass(frozen=True)
class Put:
    """Which hull models, by id, a call to `put` added, changed and left as they were."""

    created: tuple[str, ...] = ()
    updated: tuple[str, ...] = ()
    unchanged: tuple[str, ...] = ()


@dataclass(frozen=True)
class Alias:
    """Another way people write a hull model, and who says so."""

    hull: str
    alias: str
    who: str
    at: Any
    why: str


class Hulls:
    """The registry. `log` is its history, and every write goes into it; `candidates` looks names up in the database."""

    def __init__(self, desk: Desk) -> None:
        self._desk, self.log, self._cells = desk, HullLog(desk), HullCells(desk)
        self.candidates = HullCandidates(desk, self.log, self.among)

    def all(self) -> tuple[HullModel, ...]:
        """Return every hull model that stands for itself with its aliases, by builder and model.

        One that others were merged into answers to their names and aliases too.
        """
        return tuple(self._each(self._desk.all))

    def each(self) -> Iterator[HullModel]:
        """Yield the same, one after the other as they come: nothing holds all of them at once."""
        return self._each(self._desk.stream)

    def _each(self, read: Callable[[sa.Select[Any]], Iterable[sa.Row[Any]]]) -> Iterator[HullModel]:
        living, survivor = _SELECT.where(~hull_models.c.retired), hull_models.c.survivor
        aliases = _by_hull(read(_ALIASES))
        merged = defaultdict[str, list[HullModel]](list)
        for row in self._desk.all(living.where(survivor.is_not(None))):
            merged[row.survivor].append(_model(row, aliases))
        for row in read(living.where(survivor.is_(None))):
            hull = _model(row, aliases)
            yield with_family(hull, merged[hull.id]) if hull.id in merged else hull

    def count(self) -> int:
        """Return how many hull models stand for themselves."""
        c = hull_models.c
        counted = sa.select(sa.func.count()).select_from(hull_models).where(c.survivor.is_(None), ~c.retired)
        return int(self._desk.connection.execute(counted).scalar_one())

    def every(self) -> tuple[HullModel, ...]:
        """Return every hull model as it was written, merged ones too, each with its own aliases alone."""
        return self._shaped(self._desk.all(_SELECT.where(~hull_models.c.retired)), self._desk.all(_ALIASES))

    def retired(self) -> tuple[HullModel, ...]:
        """Return the hull models that were added by a change that was taken back, as they were written."""
        return self._shaped(self._desk.all(_SELECT.where(hull_models.c.retired)), self._desk.all(_ALIASES))

    def get(self, hull_id: str) -> HullModel | None:
        """Return what stands for one hull model, None where there is no such id. A merged one leads to another."""
        return self.among([hull_id]).get(hull_id)

    def among(self, hull_ids: Iterable[str]) -> dict[str, HullModel]:
        """Return, by the ids asked for, what stands for those of them that exist."""
        c = hull_models.c
        wanted = sorted(set(hull_ids))
        stands = {row.id: row.survivor or row.id for row in self._desk.among(_SELECT.where(~c.retired), c.id, wanted)}
        final = sorted(set(stands.values()))
        rows = [*self._desk.among(_SELECT, c.id, final), *self._desk.among(_SELECT, c.survivor, final)]
        aliases = self._desk.among(_ALIASES, hull_aliases.c.hull_id, [row.id for row in rows])
        found = self._families(rows, aliases)
        return {name: found[stands[name]] for name in wanted if name in stands}

    def written(self, hull_ids: Iterable[str]) -> dict[str, HullModel]:
        """Return those of the ids that exist as they were written, whatever became of them."""
        wanted = sorted(set(hull_ids))
        rows = self._desk.among(_SELECT, hull_models.c.id, wanted)
        aliases = self._desk.among(_ALIASES, hull_aliases.c.hull_id, wanted)
        return {hull.id: hull for hull in self._shaped(rows, aliases)}

    def survivors(self) -> dict[str, str]:
        """Return for the id of each merged hull model that of the one which stands for it."""
        c = hull_models.c
        return {
            row.id: row.survivor for row in self._desk.all(sa.select(c.id, c.survivor).where(c.survivor.is_not(None)))
        }

    def family(self, hull_id: str) -> tuple[str, ...]:
        """Return the ids of all hull models that the same one stands for, that one first."""
        c = hull_models.c
        row = self._desk.one(sa.select(c.survivor).where(c.id == hull_id))
        head = hull_id if row is None or row.survivor is None else str(row.survivor)
        return head, *(r.id for r in self._desk.all(sa.select(c.id).where(c.survivor == head).order_by(c.id)))

    def uses(self, hull_ids: Sequence[str]) -> dict[str, int]:
        """Return how many records, boats and enquiries name one of these hull models."""
        counts = {}
        for table in (records, boats, enquiries):
            counted = sa.select(sa.func.count()).select_from(table).where(table.c.hull_id.in_(hull_ids))
            counts[table.name] = int(self._desk.connection.execute(counted).scalar_one())
        return counts

    def used(self, hull_ids: Sequence[str]) -> frozenset[str]:
        """Return those of the ids that a record, a boat or an enquiry names."""
        named = [table.c.hull_id for table in (records, boats, enquiries)]
        return frozenset(row[0] for c in named for row in self._desk.among(sa.select(c).distinct(), c, hull_ids))

    def merged_into(self, hull_ids: Sequence[str]) -> dict[str, str]:
        """Return the hull models that were merged into one of these, and into which."""
        c = hull_models.c
        return {
            row.id: row.merged_into for row in self._desk.among(sa.select(c.id, c.merged_into), c.merged_into, hull_ids)
        }

    def aliases(self, hull_ids: Sequence[str]) -> tuple[Alias, ...]:
        """Return the aliases of these hull models with who gave them, oldest first."""
        c = hull_aliases.c
        rows = self._desk.among(sa.select(hull_aliases).order_by(c.at, c.alias), c.hull_id, hull_ids)
        return tuple(Alias(row.hull_id, row.alias, row.who, row.at, row.why) for row in rows)

    def called(self, alias: str) -> tuple[str, ...]:
        """Return the ids of the hull models that have this very alias."""
        c = hull_aliases.c
        return tuple(row.hull_id for row in self._desk.all(sa.select(c.hull_id).where(c.alias == alias)))

    def distinct(self) -> frozenset[tuple[str, str]]:
        """Return the pairs of ids that somebody said are two hull models, each in order."""
        return frozenset((row.one, row.other) for row in self._desk.all(sa.select(hull_distinct)))

    def version(self) -> int:
        """Return a number that grows with every change to hull models or aliases; 0 where there was none."""
        return self.log.version()

    def changed_since(self, version: int) -> frozenset[str]:
        """Return the ids of hull models that are not what they were at that version: see `HullLog.changed_since`."""
        return self.log.changed_since(version)

    def put(self, hulls: Sequence[HullModel], *, who: str, why: str, preview: bool = False) -> Put:
        """Add what is new, change what differs; aliases are only ever added. `preview` says it without doing it.

        A merged one is changed as it was written, and stays merged.
        """
        known = self.written(hull.id for hull in hulls)
        created = [hull for hull in hulls if hull.id not in known]
        changed = [hull for hull in hulls if hull.id in known and _differs(known[hull.id], hull)]
        back = self._retired([hull.id for hull in hulls if hull.id in known])
        if not preview and (created or changed or back):
            self._add(created, who=who, why=why)
            now = self._desk.now().isoformat()
            cells = [Cell("made", tuple(hull.id for hull in created), before=False, after=True)] if created else []
            cells += [Cell("made", (name,), before=False, after=True) for name in back]
            changes = [cell for hull in changed for cell in _changed(known[hull.id], hull, (who, now, why))]
            self._cells.write([*cells[bool(created) :], *changes])
            self.log.add("import", [*cells, *changes], who=who, why=why)
        touched = {*(hull.id for hull in (*created, *changed)), *back}
        return Put(
            tuple(hull.id for hull in created),
            tuple(hull.id for hull in hulls if hull.id in touched and hull.id in known),
            tuple(hull.id for hull in hulls if hull.id not in touched),
        )

    def add_alias(self, alias: str, hull_id: str, *, who: str, why: str) -> bool:
        """Remember that people write `alias` for it. False where that was known; Conflict where there is no such id."""
        hull = self.written([hull_id]).get(hull_id)
        if hull is None:
            raise Conflict("there is no such hull model", repr(hull_id), "Take an id that `transom hulls list` shows")
        if alias in hull.aliases:
            return False
        said = [who, self._desk.now().isoformat(), why]
        self.change("alias", [Cell("alias", (hull_id, alias), None, said)], who=who, why=why)
        return True

    def present(self, cell: Cell) -> Any:  # noqa: ANN401 - a cell holds any value
        """Return what stands in a cell now."""
        return self._cells.present(cell)

    def change(self, kind: Kind, cells: Sequence[Cell], *, who: str, why: str, undoes: int | None = None) -> int:
        """Do what the cells say, but for records; write it down, and return the change's number. Conflict for a circle."""
        self._cells.write(cells)
        return self.log.add(kind, cells, who=who, why=why, undoes=undoes)

    def create(self, hull: HullModel, *, who: str, why: str) -> Cell:
        """Add a new hull model, and return the cell that says so: it belongs into a change."""
        self._add([hull], who=who, why=why)
        return Cell("made", (hull.id,), before=False, after=True)

    def _add(self, created: Sequence[HullModel], *, who: str, why: str) -> None:
        now = self._desk.now()
        rows = [{**_row(hull), "id": hull.id, "created": now, "retired": False} for hull in created]
        self._desk.write(hull_models.insert(), rows)
        aliases = [(hull.id, alias) for hull in created for alias in dict.fromkeys(hull.aliases)]
        self._desk.write(
            hull_aliases.insert(),
            [{"hull_id": name, "alias": alias, "who": who, "why": why, "at": now} for name, alias in aliases],
        )

    def _retired(self, hull_ids: Sequence[str]) -> list[str]:
        c = hull_models.c
        return [row.id for row in self._desk.among(sa.select(c.id).where(c.retired), c.id, hull_ids)]

    def _families(self, rows: Sequence[sa.Row[Any]], aliases: Iterable[sa.Row[Any]]) -> dict[str, HullModel]:
        """Return the models that stand for themselves, by id, each with the names of those merged into it."""
        merged = defaultdict[str, list[HullModel]](list)
        alone = {}
        for row, hull in zip(rows, self._shaped(rows, aliases), strict=True):
            if row.survivor is None:
                alone[hull.id] = hull
            else:
                merged[row.survivor].append(hull)
        return {name: with_family(hull, merged[name]) if name in merged else hull for name, hull in alone.items()}

    @staticmethod
    def _shaped(rows: Iterable[sa.Row[Any]], aliases: Iterable[sa.Row[Any]]) -> tuple[HullModel, ...]:
        by_hull = _by_hull(aliases)
        return tuple(_model(row, by_hull) for row in rows)


def _by_hull(aliases: Iterable[sa.Row[Any]]) -> dict[str, list[str]]:
    found = defaultdict[str, list[str]](list)
    for row in aliases:
        found[row.hull_id].append(row.alias)
    return dict(found)


def _model(row: sa.Row[Any], aliases: Mapping[str, Sequence[str]]) -> HullModel:
    said = {name: getattr(row, name) for name in ("id", *FIELDS)}
    return HullModel.model_validate(said | {"aliases": tuple(aliases.get(row.id, ()))})


def _differs(known: HullModel, given: HullModel) -> bool:
    return _row(known) != _row(given) or not set(given.aliases) <= set(known.aliases)


def _changed(known: HullModel, given: HullModel, said: tuple[str, str, str]) -> list[Cell]:
    pairs = [(name, getattr(known, name), getattr(given, name)) for name in FIELDS]
    cells = [Cell("model", (known.id, name), before, after) for name, before, after in pairs if before != after]
    fresh = [alias for alias in dict.fromkeys(given.aliases) if alias not in known.aliases]
    return cells + [Cell("alias", (known.id, alias), None, list(said)) for alias in fresh]


def _row(hull: HullModel) -> dict[str, Any]:
    return {name: getattr(hull, name) for name in FIELDS}


_C = hull_models.c
_SELECT = sa.select(_C.id, _C.survivor, *(_C[name] for name in FIELDS)).order_by(
    _C.builder.is_not(None), _C.builder, _C.model, _C.id
)
_ALIASES = sa.select(hull_aliases.c.hull_id, hull_aliases.c.alias).order_by(hull_aliases.c.at, hull_aliases.c.alias)
