"""Candidates for a boat's name from the database, where the registry is too large to be held in memory.

Two derived tables hold how every model is written: `hull_surfaces` its words and numbers, `hull_forms` the texts under
which it is met exactly. They are brought up to date by `refresh`; a model that changed since is read as it stands now and
is a candidate for every name. Words are compared by pg_trgm; so this is for PostgreSQL alone.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from typing import Any

import sqlalchemy as sa

from service.core.hulls import ParsedName, Surface, surfaces_of
from service.core.hulls.surface import asked_forms, compared, forms
from service.core.record import HullModel
from service.store import dialect
from service.store.desk import Desk, chunks
from service.store.hull_log import HullLog, Mark
from service.store.schema import hull_forms, hull_models, hull_surfaces, stamps

NAME = "hull surfaces"
_LEAST_ALIKE = 0.12
_SAME_NUMBER = 150
_ANY_NUMBER = 200
_NEAR = 20
_EXACT = 150
_AT_ONCE = 5_000
Among = Callable[[Iterable[str]], dict[str, HullModel]]


class HullCandidates:
    """Gives candidates as an index in memory does. `among` reads hull models by id, merged ones as what stands for them."""

    def __init__(self, desk: Desk, log: HullLog, among: Among) -> None:
        self._desk, self._log, self._among = desk, log, among

    def available(self) -> bool:
        """Say whether this database can compare words."""
        return dialect.has_trigrams(self._desk.connection)

    def filled(self) -> int:
        """Return how many ways of writing hull models the derived tables hold; 0 where they are of no use yet."""
        if self._held() is None:
            return 0
        counted = sa.select(sa.func.count()).select_from(hull_surfaces)
        return int(self._desk.connection.execute(counted).scalar_one())

    def refresh(self) -> int:
        """Bring the derived tables up to date in this transaction; return how many hull models were read anew."""
        mark, held = self._log.mark(), self._held()
        if mark is None or held == mark:
            return 0
        if held is None:
            self._desk.connection.execute(hull_surfaces.delete())
            self._desk.connection.execute(hull_forms.delete())
            c = hull_models.c
            changed = [row.id for row in self._desk.all(sa.select(c.id).where(c.survivor.is_(None), ~c.retired))]
        else:
            changed = sorted(self._log.changed_since(held.number))
        for part in chunks(changed, _AT_ONCE):
            self._read(part, anew=held is not None)
        self._desk.connection.execute(stamps.delete().where(stamps.c.name == NAME))
        self._desk.write(stamps.insert(), [{"name": NAME, "stamp": _stamp(mark)}])
        return len(changed)

    def candidates(self, name: ParsedName, extra: tuple[str, ...], folded: frozenset[str]) -> Sequence[Surface]:
        """Return the surfaces worth weighing: exact ones, alike with the same number, near ones, and all that changed."""
        dialect.compare_from(self._desk.connection, _LEAST_ALIKE)
        mark, held = self._log.mark(), self._held()
        if mark is None:
            return ()
        if held is None:
            raise LookupError("the derived tables of hull models were never filled; `refresh` does it")
        ids = {*self._exact(name, extra, folded), *self._alike(name, extra)}
        if held != mark:
            ids |= self._log.changed_since(held.number)
        found = {model.id: model for model in self._among(ids).values()}
        return [surface for model in found.values() for surface in surfaces_of(model)]

    def _held(self) -> Mark | None:
        """Return the mark of the registry that the tables hold; None where they are empty or hold another history."""
        row = self._desk.one(sa.select(stamps.c.stamp).where(stamps.c.name == NAME))
        if row is None:
            return None
        mark = self._log.mark(int(row.stamp.split()[0]))
        return mark if mark is not None and _stamp(mark) == row.stamp else None

    def _exact(self, name: ParsedName, extra: tuple[str, ...], folded: frozenset[str]) -> set[str]:
        wanted = [_keyed(form, name.number) for form in asked_forms(name, extra)] + [f"={text}" for text in folded]
        c = hull_forms.c
        return self._ids(sa.select(c.hull_id).where(c.form.in_(wanted)).order_by(c.hull_id).limit(_EXACT))

    def _alike(self, name: ParsedName, extra: tuple[str, ...]) -> set[str]:
        text = compared((*name.builder, *name.words, *name.suffix, *extra))
        c = hull_surfaces.c
        worth = sa.func.similarity(c.words, text).desc()
        alike = sa.select(c.hull_id).where(c.words.op("%")(text)).order_by(worth, c.words, c.hull_id)
        if name.number is None:
            return self._ids(alike.limit(_ANY_NUMBER))
        digits = list(name.digits)
        point = c.number.in_(digits) if name.pointed else sa.or_(c.digits.in_(digits), c.bare_digits.in_(digits))
        same = sa.or_(c.number == name.number, c.number.is_(None), point)
        found = self._ids(alike.where(same).limit(_SAME_NUMBER)) | self._ids(alike.limit(_NEAR))
        return found | (self._ids(alike.limit(_ANY_NUMBER)) if name.marked else set())

    def _ids(self, statement: sa.Select[Any]) -> set[str]:
        return {row[0] for row in self._desk.all(statement)}

    def _read(self, ids: Sequence[str], *, anew: bool) -> None:
        for table in (hull_surfaces, hull_forms) if anew else ():
            for part in chunks(ids, dialect.MOST_BOUND):
                self._desk.connection.execute(table.delete().where(table.c.hull_id.in_(part)))
        found = self._among(ids)  # a merged one is found as another, which is written in its own place
        models = [found[hull_id] for hull_id in ids if hull_id in found and found[hull_id].id == hull_id]
        self._desk.write(hull_surfaces.insert(), [row for model in models for row in _surfaces(model)])
        self._desk.write(hull_forms.insert(), [row for model in models for row in _forms(model)])


def _stamp(mark: Mark) -> str:
    return f"{mark.number} {mark.at.isoformat()}"


def _keyed(form: str, number: str | None) -> str:
    return f"{form}|{number or ''}"


def _surfaces(model: HullModel) -> Iterator[dict[str, Any]]:
    for place, surface in enumerate(surfaces_of(model)):
        name = surface.name
        pointed = (name.plain, (name.number or "").replace(".", "")) if name.pointed else (None, None)
        yield {
            "hull_id": model.id,
            "place": place,
            "words": compared((*surface.yard, *name.words, *name.suffix)),
            "number": name.number,
            "digits": pointed[0],
            "bare_digits": pointed[1],
        }


def _forms(model: HullModel) -> Iterator[dict[str, Any]]:
    met = set()
    for surface in surfaces_of(model):
        met |= {_keyed(form, surface.name.number) for form in forms(surface.yard, surface.name.words)}
        if surface.alias is not None:
            met.add(f"={surface.alias}")
    return ({"form": form, "hull_id": model.id} for form in sorted(met))
