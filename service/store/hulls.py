"""Hull models and the other ways people write them."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Any

import sqlalchemy as sa

from service.core.record import HullModel
from service.store.desk import Desk
from service.store.errors import Conflict
from service.store.schema import hull_aliases, hull_models

_FIELDS = tuple(name for name in HullModel.model_fields if name not in ("id", "aliases"))


@dataclass(frozen=True)
class Put:
    """Which hull models, by id, a call to `put` added, changed and left as they were."""

    created: tuple[str, ...] = ()
    updated: tuple[str, ...] = ()
    unchanged: tuple[str, ...] = ()


class Hulls:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def all(self) -> tuple[HullModel, ...]:
        """Return every hull model with its aliases, by builder and model."""
        return self._shaped(self._desk.all(_SELECT), self._desk.all(_ALIASES))

    def get(self, hull_id: str) -> HullModel | None:
        """Return one hull model, None where there is no such id."""
        return self.among([hull_id]).get(hull_id)

    def among(self, hull_ids: Iterable[str]) -> dict[str, HullModel]:
        """Return those of the ids that exist."""
        wanted = sorted(set(hull_ids))
        rows = self._desk.among(_SELECT, hull_models.c.id, wanted)
        aliases = self._desk.among(_ALIASES, hull_aliases.c.hull_id, wanted)
        return {hull.id: hull for hull in self._shaped(rows, aliases)}

    def put(self, hulls: Sequence[HullModel], *, who: str, why: str, preview: bool = False) -> Put:
        """Add what is new, change what differs; aliases are only ever added. `preview` says it without doing it."""
        known = self.among(hull.id for hull in hulls)
        created = [hull for hull in hulls if hull.id not in known]
        changed = [hull for hull in hulls if hull.id in known and _differs(known[hull.id], hull)]
        if not preview:
            now = self._desk.now()
            self._desk.write(hull_models.insert(), [{**_row(hull), "id": hull.id, "created": now} for hull in created])
            update = hull_models.update().where(hull_models.c.id == sa.bindparam("the_id"))
            self._desk.write(update, [{**_row(hull), "the_id": hull.id} for hull in changed])
            fresh = [
                {"hull_id": hull.id, "alias": alias, "who": who, "why": why, "at": now}
                for hull in (*created, *changed)
                for alias in dict.fromkeys(hull.aliases)
                if hull.id not in known or alias not in known[hull.id].aliases
            ]
            self._desk.write(hull_aliases.insert(), fresh)
        touched = {hull.id for hull in (*created, *changed)}
        return Put(
            tuple(hull.id for hull in created),
            tuple(hull.id for hull in changed),
            tuple(hull.id for hull in hulls if hull.id not in touched),
        )

    def add_alias(self, alias: str, hull_id: str, *, who: str, why: str) -> bool:
        """Remember that people write `alias` for it. False where that was known; Conflict where there is no such id."""
        hull = self.get(hull_id)
        if hull is None:
            raise Conflict("there is no such hull model", repr(hull_id), "Take an id that `transom hulls list` shows")
        if alias in hull.aliases:
            return False
        row = {"hull_id": hull_id, "alias": alias, "who": who, "why": why, "at": self._desk.now()}
        self._desk.write(hull_aliases.insert(), [row])
        return True

    @staticmethod
    def _shaped(rows: Iterable[sa.Row[Any]], aliases: Iterable[sa.Row[Any]]) -> tuple[HullModel, ...]:
        by_hull = defaultdict[str, list[str]](list)
        for row in aliases:
            by_hull[row.hull_id].append(row.alias)
        return tuple(
            HullModel.model_validate({**row._mapping, "aliases": tuple(by_hull.get(row.id, ()))})  # noqa: SLF001 - its public name
            for row in rows
        )


def _differs(known: HullModel, given: HullModel) -> bool:
    return _row(known) != _row(given) or not set(given.aliases) <= set(known.aliases)


def _row(hull: HullModel) -> dict[str, Any]:
    return {name: getattr(hull, name) for name in _FIELDS}


_SELECT = sa.select(hull_models.c.id, *(hull_models.c[name] for name in _FIELDS)).order_by(
    hull_models.c.builder.is_not(None), hull_models.c.builder, hull_models.c.model, hull_models.c.id
)
_ALIASES = sa.select(hull_aliases.c.hull_id, hull_aliases.c.alias).order_by(hull_aliases.c.at, hull_aliases.c.alias)
