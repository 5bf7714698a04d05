"""An answer becomes a record of what was proposed."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from service.core.measurement import taken_from
from service.core.proposal import SentAnswer, SentSuggestion, proposed
from service.core.record import Record
from service.files.read.answer_file import read_answers
from service.flow.refusal import Refused
from service.store.unit import UnitOfWork


@dataclass(frozen=True)
class Chosen:
    """Which boat of several (from 1), and which suggestion: by rank, or by its four codes. The first where not said."""

    boat: int | None = None
    rank: int | None = None
    configuration: str | None = None


@dataclass(frozen=True)
class Proposal:
    """The new record, which suggestion it is, and remarks."""

    record: Record
    rank: int
    notes: tuple[str, ...] = ()


def kept_answer(uow: UnitOfWork, answer_id: str) -> tuple[SentAnswer, ...]:
    """Return an answer that was kept when it was sent. Refused where there is no such id."""
    with uow:
        document = uow.answers.get(answer_id)
    if document is None:
        raise Refused(f"there is no answer {answer_id!r}; give the id an answer was kept by, or its JSON file")
    return read_answers(document, answer_id)


def propose_record(
    uow: UnitOfWork,
    answers: Sequence[SentAnswer],
    chosen: Chosen = Chosen(),
    *,
    who: str,
    why: str | None = None,
    anyway: str | None = None,
) -> Proposal:
    """Make the record of one suggestion of an answer and commit.

    Its form, hull model, configuration, placement, catalogue and dealer are the answer's; the contact is kept apart;
    what the form states becomes measurements. Refused where it is not clear which boat or suggestion is meant, where
    the answer was made into a record already, and, unless `anyway` gives the reason, where the suggestion does not fit.
    """
    answer = _answer(answers, chosen.boat)
    suggestion = _suggestion(answer, chosen)
    if suggestion.fit.verdict == "does_not_fit" and not anyway:
        raise Refused(
            f"suggestion {suggestion.rank} ({suggestion.configuration}) does not fit: {suggestion.fit.why}. "
            "Take another with --rank, or say with --anyway WHY it is proposed all the same"
        )
    with uow:
        _see_new(uow, answer)
        now, notes = uow.now(), list[str]()
        hull = answer.hull_id if answer.hull_id and uow.hulls.get(answer.hull_id) else None
        if answer.hull_id and hull is None:
            notes.append(f"hull model {answer.hull_id!r} is not in this database; the record names none")
        reference = uow.records.series.next(f"{now.year}")
        record = proposed(answer, suggestion, reference=reference, day=now.date(), hull=hull)
        uow.records.add(record, who=who, why=_reason(answer, suggestion, why, anyway))
        source = f"answer {answer.id}" if answer.id else "an answer's file"
        uow.records.measurements.add({reference: taken_from(answer.form, who=who, at=now, source=source)})
        uow.commit()
    return Proposal(record, suggestion.rank, tuple(notes))


def _answer(answers: Sequence[SentAnswer], boat: int | None) -> SentAnswer:
    if not answers:
        raise Refused("there is no answer in it: it was no enquiry")
    if boat is None and len(answers) > 1:
        several = "; ".join(f"{n} {one.named()}" for n, one in enumerate(answers, start=1))
        raise Refused(f"it answers for {len(answers)} boats: say with --boat which one ({several})")
    if boat is not None and not 1 <= boat <= len(answers):
        raise Refused(f"it has no boat {boat}; it answers for {len(answers)}, counted from 1")
    return answers[(boat or 1) - 1]


def _suggestion(answer: SentAnswer, chosen: Chosen) -> SentSuggestion:
    if not answer.suggestions:
        raise Refused(f"the answer for {answer.named()} suggests nothing; there is nothing to propose")
    listed = "; ".join(f"{one.rank} {one.configuration}" for one in answer.suggestions)
    if chosen.configuration is not None:
        codes = chosen.configuration.replace("·", " ").split()
        found = [one for one in answer.suggestions if [*one.configuration.model_dump().values()] == codes]
        if not found:
            raise Refused(f"{' '.join(codes)!r} is none of its suggestions, GEAR LOWER UPPER SHAFT; they are: {listed}")
        if chosen.rank not in (None, found[0].rank):
            raise Refused(f"--rank {chosen.rank} is another suggestion than --configuration; give one of the two")
        return found[0]
    rank = answer.suggestions[0].rank if chosen.rank is None else chosen.rank
    for one in answer.suggestions:
        if one.rank == rank:
            return one
    raise Refused(f"it has no suggestion {rank}; they are: {listed}")


def _see_new(uow: UnitOfWork, answer: SentAnswer) -> None:
    if answer.id is None:
        return
    for record in uow.records.proposed_by(answer.id):
        if record.status != "withdrawn":
            mend = f"Step that one, or withdraw it first: `transom records step {record.reference} withdrawn`"
            raise Refused(f"answer {answer.id} was made into record {record.reference} already. {mend}")


def _reason(answer: SentAnswer, chosen: SentSuggestion, why: str | None, anyway: str | None) -> str:
    parts = [f"suggestion {chosen.rank} of {answer.id or 'an answer'}"]
    if anyway:
        parts.append(f"proposed although it does not fit: {anyway}" if chosen.fit.verdict == "does_not_fit" else anyway)
    if why:
        parts.append(why)
    return "; ".join(parts)
