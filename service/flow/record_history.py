"""What a record is, and how it came to be."""

from __future__ import annotations

from dataclasses import dataclass

from service.core.measurement import Measurement
from service.core.record import HullModel, Record
from service.core.revision import Revision, Step, steps
from service.flow.attach import attached
from service.flow.edit_record import redirected, unknown
from service.flow.refusal import Refused
from service.store.attachments import Attachment
from service.store.unit import UnitOfWork


@dataclass(frozen=True)
class Shown:
    """A record as it stands or stood: its revision of how many, its hull model, what was measured on its boat.

    `boat` names the other records of the same boat, `took_in` those merged into this one, `attached` its files.
    """

    record: Record
    revision: Revision
    head: int
    hull: HullModel | None
    measured: tuple[Measurement, ...]
    boat: tuple[str, ...]
    took_in: tuple[str, ...]
    notes: tuple[str, ...] = ()
    attached: tuple[Attachment, ...] = ()


@dataclass(frozen=True)
class History:
    reference: str
    steps: tuple[Step, ...]
    notes: tuple[str, ...] = ()


def show_record(uow: UnitOfWork, reference: str, revision: int | None = None) -> Shown:
    """Return one record as it stands, or as it stood at a revision. Refused where there is no such one."""
    with uow:
        reference, notes = redirected(uow, reference)
        history = uow.records.history(reference)
        state = _state(uow, reference, history, revision)
        hull = uow.hulls.get(state.record.hull) if state.record.hull else None
        return Shown(
            state.record,
            state,
            len(history),
            hull,
            uow.records.measurements.of_boat(reference),
            tuple(one for one in uow.records.of_same_boat(reference) if one != reference),
            uow.records.merges.into(reference),
            tuple(notes),
            attached(uow, reference),
        )


def record_history(uow: UnitOfWork, reference: str) -> History:
    """Return every revision of a record with what it changed: who, when, why, field by field."""
    with uow:
        reference, notes = redirected(uow, reference)
        history = uow.records.history(reference)
        if not history:
            raise Refused(unknown(uow, reference))
    return History(reference, steps(history), tuple(notes))


def _state(uow: UnitOfWork, reference: str, history: tuple[Revision, ...], revision: int | None) -> Revision:
    if not history:
        raise Refused(unknown(uow, reference))
    if revision is not None and not 1 <= revision <= len(history):
        raise Refused(f"record {reference} has no revision {revision}; it is at {len(history)}")
    return history[(revision or len(history)) - 1]
