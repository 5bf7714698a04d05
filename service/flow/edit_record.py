"""Change one record as it stands: lock it, see that nobody else has changed it, keep what it was."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from service.core.measurement import Measurement
from service.core.record import Record
from service.core.revision import Change, Revision, changes, moved, with_fields
from service.core.words import nearest
from service.files.cells import BadCell, read_cell
from service.files.columns import by_name
from service.flow.refusal import Moved, Refused
from service.store.unit import UnitOfWork

FIXED = frozenset({"record.reference", "record.status"})


@dataclass(frozen=True)
class Edited:
    """The record as it stands now, at which revision, what was changed in it, and remarks for whoever did it."""

    record: Record
    number: int
    changes: tuple[Change, ...]
    notes: tuple[str, ...] = ()


@dataclass
class Desk:
    """What a change sees: the record's history so far, what was measured on its boat, and where remarks go."""

    history: tuple[Revision, ...]
    measured: tuple[Measurement, ...]
    fresh: list[Measurement] = field(default_factory=list)
    notes: list[str] = field(default_factory=list)


Make = Callable[[Record, Desk], Record]
"""Makes the new state of a record from one it was in."""


def edit_record(
    uow: UnitOfWork, reference: str, make: Make, *, who: str, why: str, expect: int | None = None
) -> Edited:
    """Make a record what `make` says and commit; the state before stays in its history.

    `expect` is the revision that somebody worked on: Moved says what was changed since, field by field, and nothing is
    written. Refused where there is no such record; where nothing differs nothing is written either.
    """
    with uow:
        reference, notes = redirected(uow, reference)
        uow.records.head(reference, lock=True)
        history = uow.records.history(reference)
        if not history:
            raise Refused(unknown(uow, reference))
        desk = Desk(history, uow.records.measurements.of_boat(reference), notes=list(notes))
        _see_expected(desk, make, reference, expect)
        before = history[-1].record
        after = make(before, desk)
        if after != before:
            uow.records.revise(after, who=who, why=why)
        uow.records.measurements.add({reference: desk.fresh})
        uow.commit()
    number = len(history) + (after != before)
    return Edited(after, number, changes(before, after), tuple(desk.notes))


def _see_expected(desk: Desk, make: Make, reference: str, expect: int | None) -> None:
    head = len(desk.history)
    if expect is None or expect == head:
        return
    if not 1 <= expect <= head:
        raise Refused(f"record {reference} has no revision {expect}; it is at {head}")
    apart = Desk(desk.history[:expect], desk.measured)
    wanted = make(desk.history[expect - 1].record, apart)
    raise Moved(reference, expect, head, moved(desk.history, expect, wanted))


def redirected(uow: UnitOfWork, reference: str) -> tuple[str, Sequence[str]]:
    """Return the reference that stands for this one, and a remark where it is another: merged records are redirected."""
    at, seen = reference, set[str]()
    while at not in seen and (merge := uow.records.merges.of(at)) is not None:
        seen.add(at)
        at = merge.into
    return at, () if at == reference else (f"{reference} was merged into {at}",)


def unknown(uow: UnitOfWork, reference: str) -> str:
    """Return what to say of a reference that is not there, with the nearest that is."""
    near = nearest(reference, (record.reference for record in uow.records.all()))
    hint = f"did you mean {near!r}?" if near else "`transom records find` lists them"
    return f"there is no record {reference!r}; {hint}"


def correct_record(
    uow: UnitOfWork, reference: str, values: Mapping[str, Any], *, who: str, why: str, expect: int | None = None
) -> Edited:
    """Set fields, named as the columns of a table are, to other values (None or "" takes one away), and commit.

    A status is stepped, not set; what was measured is better said as a measurement. Refused or FormError name what
    cannot be.
    """
    wanted = {_column(name): value for name, value in values.items()}

    def make(record: Record, _desk: Desk) -> Record:
        return with_fields(record, {by_name()[name].path: _read(name, value) for name, value in wanted.items()})

    return edit_record(uow, reference, make, who=who, why=f"correction: {why}", expect=expect)


def _column(name: str) -> str:
    if name in FIXED:
        mend = "take `transom records step`" if name == "record.status" else "a reference never changes"
        raise Refused(f"{name} cannot be set; {mend}")
    if name not in by_name():
        near = nearest(name, by_name())
        raise Refused(f"there is no field {name!r}" + (f"; did you mean {near!r}?" if near else ""))
    return name


def _read(name: str, value: Any) -> Any:  # noqa: ANN401 - JSON is any
    if value is None or value == "":
        return None
    try:
        return read_cell(by_name()[name], value)
    except BadCell as problem:
        raise Refused(f"{name}: {problem} (got {value!r})") from None
