"""What if a shaft or a bracket were dropped, or a new one made: whose boat would stand without, and whose would gain."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from service.core.answer.compose import Known
from service.core.catalogue import Bracket, Catalogue, Configuration, Shaft
from service.core.demand import metal
from service.core.demand.solve import Case, best, passes, quick, ready, room, served
from service.core.fit.engine import set_many
from service.core.report import Cell, Column, Table

ROOMIER = 0.25
"""By how much the smallest scaled margin has to grow for a boat to gain room."""


@dataclass(frozen=True)
class Carried:
    """A boat of the fleet with what it carries."""

    case: Case
    configuration: Configuration


@dataclass(frozen=True)
class Changed:
    """What is dropped (codes), and what is made: shafts of a length, brackets of another reach."""

    dropped: tuple[str, ...] = ()
    shafts: tuple[Shaft, ...] = ()
    brackets: tuple[Bracket, ...] = ()

    @property
    def new(self) -> bool:
        """Say whether something is made."""
        return bool(self.shafts or self.brackets)


@dataclass(frozen=True)
class Outcome:
    """What a change does to one boat: stranded, served another way, served at last, more room, or the same."""

    reference: str
    what: str
    before: str
    after: str
    margin: float | None


STRANDED, OTHERWISE, SERVED, ROOM, SAME = "stranded", "served otherwise", "served at last", "more room", "the same"
ORDER = (STRANDED, OTHERWISE, SERVED, ROOM)


def uses(boat: Carried, changed: Changed) -> bool:
    """Say whether a boat carries something that is dropped."""
    return bool({boat.configuration.lower, boat.configuration.upper, boat.configuration.shaft} & set(changed.dropped))


def tried(boat: Carried, known: Known, left: Catalogue, changed: Changed) -> Outcome:
    """Return what the change does to a boat. `left` is the catalogue without what is dropped."""
    carried = str(boat.configuration)
    if uses(boat, changed):
        lacks = replace(known, catalogue=left)
        fit = best(boat.case, lacks)
        if fit is not None and passes(fit):
            return Outcome(boat.case.reference, OTHERWISE, carried, str(fit.configuration), room(fit))
        found = _with_new(boat, lacks, changed)
        if found is not None:
            return Outcome(boat.case.reference, OTHERWISE, carried, *found)
        return Outcome(boat.case.reference, STRANDED, carried, "", room(fit) if fit else None)
    if not changed.new:
        return Outcome(boat.case.reference, SAME, carried, carried, None)
    return _gained(boat, known, changed)


def _gained(boat: Carried, known: Known, changed: Changed) -> Outcome:
    carried, now = str(boat.configuration), None
    if known.catalogue.misfit(boat.configuration) is None:
        now = set_many(ready(boat.case, known), [boat.configuration])[0].fit
    found = _with_new(boat, known, changed)
    if found is None:
        return Outcome(boat.case.reference, SAME, carried, carried, None)
    if now is None or not passes(now):
        other = best(boat.case, known)
        what = SAME if other is not None and passes(other) else SERVED
        return Outcome(boat.case.reference, what, carried, *found)
    grown = found[1] - room(now)
    return Outcome(boat.case.reference, ROOM if grown >= ROOMIER else SAME, carried, *found)


def _with_new(boat: Carried, known: Known, changed: Changed) -> tuple[str, float] | None:
    boats = ready(boat.case, known) if changed.new else None
    for catalogue in metal.only(known.catalogue, changed.shafts, changed.brackets) if boats else ():
        fit = served(boats, catalogue, quick(boats, catalogue)) if boats else None
        if fit is not None:
            return str(fit.configuration), room(fit)
    return None


def tables(outcomes: Sequence[Outcome], said: str) -> tuple[Table, Table]:
    """Return how many boats a change touches, and which. `said` names the change."""
    counts = {what: sum(one.what == what for one in outcomes) for what in (*ORDER, SAME)}
    summary = Table(
        id="what_if",
        title=f"What if: {said}",
        columns=(Column(name="what", heading="what becomes"), Column(name="boats", heading="boats", kind="whole")),
        rows=tuple(counts.items()),
        note=(
            "Each boat is tried at nominal on the geometry its record gives, gaps filled as for an enquiry. Stranded: nothing "
            "that would be left passes. Served at last: nothing passes now, and the new does. More room: the smallest scaled "
            f"margin grows by {ROOMIER:g} or more. New metal is as what it is like, but for its length or reach; a new bracket is taken to "
            "bear what it has to: have it worked out before it is made."
        ),
    )
    touched = sorted(
        (one for one in outcomes if one.what in ORDER), key=lambda one: (ORDER.index(one.what), one.reference)
    )
    rows: tuple[tuple[Cell, ...], ...] = tuple(
        (one.reference, one.what, one.before, one.after or None, None if one.margin is None else round(one.margin, 3))
        for one in touched
    )
    columns = (
        Column(name="record", heading="record"),
        Column(name="what", heading="what becomes"),
        Column(name="carries", heading="carries"),
        Column(name="instead", heading="would carry"),
        Column(name="margin", heading="smallest margin", kind="number"),
    )
    return summary, Table(id="what_if_boats", title="Whose boats", columns=columns, rows=rows, shown=20)
