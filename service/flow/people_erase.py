"""Take a person's data away without losing the technical record."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from service.core.record import Record
from service.core.traces import Traces, compact
from service.files.vault import Vault, digest
from service.files.waiting import Waiting
from service.flow.people_export import MAIL
from service.flow.people_find import Somebody, somebody
from service.flow.refusal import Refused
from service.store.attachments import Attachment
from service.store.kept_people import KeptFile
from service.store.people import KEPT, Asking, Sent, State
from service.store.unit import UnitOfWork


@dataclass(frozen=True)
class Erased:
    """What was (or with `preview` would be) taken away, by id; nothing of it says whose it was.

    `redacted` and `left` count cells by table and column: those in which they stood in passing, and those that something
    else goes by and that stay. `mails` are attachments for a person to look at; `erased_mails` says whether that was
    done. `files` were imported: those in which they stand are written anew, those that are no text stay. `waiting` is how
    many files somebody has sent and nobody taken in: all of those go, for they are sent again in a moment.
    """

    preview: bool
    contacts: tuple[str, ...]
    enquiries: tuple[str, ...]
    answers: tuple[str, ...]
    records: tuple[str, ...]
    revisions: int
    mails: tuple[Attachment, ...]
    erased_mails: bool
    redacted: dict[str, int]
    left: dict[str, int]
    files: tuple[KeptFile, ...]
    waiting: int
    namesakes: tuple[str, ...]


def erase_person(
    uow: UnitOfWork,
    vault: Vault,
    who: str,
    *,
    why: str,
    preview: bool = False,
    attachments: bool = False,
) -> Erased:
    """Erase one person and commit, all at once; with `preview` only say what would be. It cannot be undone.

    The boat forms of their enquiries stay, without contact and free text; a note stands for each mail. Answers and
    records stay but for the person; with `attachments` a note stands for each mail attached to their records. Refused as
    `somebody` does, and where `why` names them.
    """
    with uow:
        return erase_people(uow, vault, [somebody(uow, who)], why=why, preview=preview, attachments=attachments)


def erase_people(
    uow: UnitOfWork,
    vault: Vault,
    people: Sequence[Somebody],
    *,
    why: str,
    preview: bool = False,
    attachments: bool = False,
) -> Erased:
    """Erase several people as `erase_person` does one, in one transaction."""
    whole = Somebody(
        tuple(contact for one in people for contact in one.contacts),
        tuple(contact for one in people for contact in one.namesakes),
    )
    own, anywhere = whole.own(), _anywhere(people)
    if own.found(why):
        raise Refused("the reason names the person; it is kept, so give one that does not")
    with uow:
        asked, states = uow.people.enquiries(whole.ids), uow.people.states(whole.ids)
        sent = uow.people.answers([one.id for one in asked])
        references = sorted({state.reference for state in states})
        mails = tuple(file for file in uow.records.attachments.of(references) if file.type == MAIL)
        files = uow.kept_people.look(anywhere)
        if not preview:
            _write_own(uow, asked, sent, states, own, why)
            uow.people.forget(whole.ids)
            for file in files:
                if file.found:
                    uow.kept_people.redact(file.sha256, anywhere)
            if attachments:
                _replace(uow, vault, mails, _note(uow.now(), why))
        redacted, left = uow.people.sweep(anywhere, write=not preview)
        if not preview:
            uow.commit()
        gone = {file.sha256 for file in mails} - {file.sha256 for file in uow.records.attachments.all()}
    for name in gone if attachments and not preview else ():
        vault.remove(name)
    waiting = Waiting(vault.folder)
    count = waiting.count()
    if not preview:
        waiting.clear()
    return Erased(
        preview=preview,
        contacts=whole.ids,
        enquiries=tuple(one.id for one in asked),
        answers=tuple(one.id for one in sent),
        records=tuple(references),
        revisions=len(states),
        mails=mails,
        erased_mails=attachments and not preview,
        redacted=dict(sorted(redacted.items())),
        left=dict(sorted(left.items())),
        files=files,
        waiting=count,
        namesakes=tuple(one.id for one in whole.namesakes),
    )


def _anywhere(people: Sequence[Somebody]) -> Traces:
    said = [contact if not one.namesakes else contact._replace(name=None) for one in people for contact in one.said]
    return Traces(said)


def _write_own(
    uow: UnitOfWork,
    asked: Sequence[Asking],
    sent: Iterable[Sent],
    states: Iterable[State],
    own: Traces,
    why: str,
) -> None:
    now, theirs = uow.now(), set[str]()
    for one in asked:
        form = json.loads(one.form)
        theirs |= set(_words(form))
        source = f"{_note(now, why)}; sha256 {hashlib.sha256(one.source.encode()).hexdigest()}"
        uow.people.write_enquiry(one.id, form=compact(own.leaves(_bare(form), KEPT)), source=source, contact_id=None)
    ids = [one.id for one in asked]
    for step in uow.people.steps(ids):
        form = None if step.form is None else compact(own.leaves(_bare(json.loads(step.form)), KEPT))
        uow.people.write_step(step, form=form, said=None if step.said is None else _note(now, why))
    uow.people.drop_drafts(ids)
    for answer in sent:
        document = json.loads(answer.document)
        theirs |= set(_words(document.get("form", {})))
        document["form"] = _bare(document.get("form", {}))
        uow.people.write_answer(answer.id, compact(own.leaves(document, KEPT)))
    for state in states:
        document = json.loads(state.document)
        document["form"] = _bare(document["form"], theirs)
        clean = compact(own.leaves(document, KEPT))
        try:
            Record.model_validate_json(clean)
        except ValueError as error:
            raise Refused(
                f"record {state.reference} would no longer be one without the person; mend it first"
            ) from error
        uow.people.write_state(state.record, state.number, clean)


def _words(form: dict[str, Any]) -> Iterable[str]:
    said = [form.get("notes"), *(thing.get("note") for thing in form.get("obstacles", ()))]
    return [text for text in said if text]


def _bare(form: dict[str, Any], theirs: set[str] | None = None) -> dict[str, Any]:
    """Return a form without contact and without free text: all of it, or what is among `theirs`."""
    obstacles = [
        {key: value for key, value in thing.items() if key != "note" or not _goes(value, theirs)}
        for thing in form.get("obstacles", ())
    ]
    kept = {
        key: value for key, value in form.items() if key != "contact" and (key != "notes" or not _goes(value, theirs))
    }
    return kept | ({"obstacles": obstacles} if "obstacles" in form else {})


def _goes(text: str | None, theirs: set[str] | None) -> bool:
    return text is not None and (theirs is None or text in theirs)


def _note(now: datetime, why: str) -> str:
    return f"erased on {now:%Y-%m-%d}: {why}"


def _replace(uow: UnitOfWork, vault: Vault, mails: Iterable[Attachment], note: str) -> None:
    for mail in mails:
        data = f"{note}; sha256 {mail.sha256}\n".encode()
        vault.keep(data)
        uow.people.write_file(mail.reference, mail.number, data, digest(data))
