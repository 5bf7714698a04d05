"""One installation was written down twice: the second becomes part of the first, and can be taken apart again."""

from __future__ import annotations

from dataclasses import dataclass

from service.core.form import merged
from service.core.record import Outcome, Record, RecordedPlacement
from service.core.revision import Change, changes, taken_back
from service.flow.edit_record import redirected, unknown
from service.flow.refusal import Refused
from service.store.merges import Merge
from service.store.unit import UnitOfWork


@dataclass(frozen=True)
class Merged:
    """What a merge did or would do.

    `taken` are the gaps of `into` that the other one fills; `differs` what the other says otherwise (before: what
    stands, after: what it says): that stays with the other one, in its history, and is not taken over.
    """

    into: str
    other: str
    number: int
    taken: tuple[Change, ...]
    differs: tuple[Change, ...]
    preview: bool


def merge_records(
    uow: UnitOfWork, reference: str, other: str, *, who: str, why: str | None = None, preview: bool = False
) -> Merged:
    """Merge `other` into `reference` and commit: gaps are filled, what both say stays as `reference` says it.

    From then on the other reference leads to this record; its own history and measurements are kept. Refused where
    either is not there, or both are one already.
    """
    with uow:
        into, source = _two(uow, reference, other)
        joined = _joined(into, source)
        taken, differs = changes(into, joined), _differs(joined, source)
        number = uow.records.head(into.reference) or 0
        if not preview:
            reason = f"took in {source.reference}, the same installation" + (f": {why}" if why else "")
            uow.records.head(into.reference, lock=True)
            number += uow.records.revise(joined, who=who, why=reason)
            uow.records.merges.put([Merge(source.reference, into.reference, number if taken else 0)])
            uow.commit()
    return Merged(into.reference, source.reference, number, taken, differs, preview)


def unmerge_records(uow: UnitOfWork, reference: str, other: str, *, who: str, why: str) -> Merged:
    """Take a merge apart and commit: `other` stands for itself again, as it was before `reference` took it in.

    What the merge brought is taken out of the record it went into, except what was changed there since.
    """
    with uow:
        merge = uow.records.merges.of(other)
        if merge is None or merge.into != reference:
            meant = f"; it was merged into {merge.into}" if merge else ""
            raise Refused(f"record {other} was not merged into {reference}{meant}")
        uow.records.head(merge.into, lock=True)
        history = uow.records.history(merge.into)
        now = history[-1].record
        back = now
        if merge.number > 1:
            back = taken_back(history[merge.number - 1].record, history[merge.number - 2].record, now)
        number = len(history) + uow.records.revise(back, who=who, why=f"let go of {other} again: {why}")
        uow.records.merges.drop(other)
        source = uow.records.get(other)
        uow.commit()
    differs = _differs(back, source) if source else ()
    return Merged(merge.into, other, number, changes(now, back), differs, preview=False)


def _two(uow: UnitOfWork, reference: str, other: str) -> tuple[Record, Record]:
    into, _ = redirected(uow, reference)
    if uow.records.merges.of(other) is not None:
        raise Refused(f"record {other} was merged into {redirected(uow, other)[0]} already")
    if into == other:
        raise Refused(f"{reference} and {other} are one record already")
    found = uow.records.among([into, other])
    for name in (into, other):
        if name not in found:
            raise Refused(unknown(uow, name))
    return found[into], found[other]


def _joined(into: Record, source: Record) -> Record:
    """Return the first record with its gaps filled from the second; its configuration stands as a whole."""
    filled = {
        name: getattr(source, name)
        for name in ("date", "dealer", "hull", "catalogue", "answer")
        if getattr(into, name) is None
    }
    if into.configuration == source.configuration:
        spot = {**source.placement.model_dump(exclude_none=True), **into.placement.model_dump(exclude_none=True)}
        filled["placement"] = RecordedPlacement.model_validate(spot)
    outcome = {**source.outcome.model_dump(exclude_none=True), **into.outcome.model_dump(exclude_none=True)}
    return into.model_copy(
        update={**filled, "outcome": Outcome.model_validate(outcome), "form": merged(into.form, source.form)}
    )


def _differs(joined: Record, source: Record) -> tuple[Change, ...]:
    own = {"record.reference", "record.answer", "methods[*]", "uncertainties[*]"}
    return tuple(c for c in changes(joined, source) if c.after is not None and c.field not in own)
