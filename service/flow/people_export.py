"""Give out everything that is held about one person."""

from __future__ import annotations

import json
from collections import Counter
from typing import Any

from service.flow.people_find import Somebody, somebody
from service.store.attachments import Attachment
from service.store.people import State
from service.store.unit import UnitOfWork

MAIL = "message/rfc822"
UNSEEN = (
    "photos, drawings and mails attached to records are listed, not read",
    "files that were imported are read where they are text; workbooks and Parquet files are listed",
    "backups and exports made earlier stand elsewhere",
)


def export_person(uow: UnitOfWork, who: str) -> dict[str, Any]:
    """Return `person/1`: contacts, their enquiries with mails and answers, records, files; commits that it was read.

    Refused as `somebody` does. Times are ISO 8601 in UTC.
    """
    with uow:
        one = somebody(uow, who)
        asked = uow.people.enquiries(one.ids)
        sent = uow.people.answers([enquiry.id for enquiry in asked])
        states = uow.people.states(one.ids)
        elsewhere, left = uow.people.sweep(one.anywhere(), write=False)
        document = {
            "schema": "person/1",
            "contacts": [
                {
                    "id": c.id,
                    "name": c.name,
                    "email": c.email,
                    "phone": c.phone,
                    "role": c.role,
                    "since": _at(c.created),
                }
                for c in one.contacts
            ],
            "namesakes": [c.id for c in one.namesakes],
            "enquiries": [
                {
                    "id": e.id,
                    "received": _at(e.received or e.created),
                    "message_id": e.message_id,
                    "mail": e.source,
                    "form": json.loads(e.form),
                    "answers": [
                        {"id": a.id, "at": _at(a.created), "document": json.loads(a.document)}
                        for a in sent
                        if a.enquiry == e.id
                    ],
                }
                for e in asked
            ],
            "records": _records(states),
            "attachments": [_file(f) for f in uow.records.attachments.of([s.reference for s in states])],
            "imports": _imports(uow, one),
            "named_in": dict(sorted((elsewhere + left).items())),
            "not_looked_into": list(UNSEEN),
        }
        for contact in one.ids:
            uow.saw("contact", contact)
        uow.commit()
    return document


def _records(states: tuple[State, ...]) -> list[dict[str, Any]]:
    numbers: dict[str, list[int]] = {}
    for state in states:
        numbers.setdefault(state.reference, []).append(state.number)
    last = {state.reference: state for state in states}
    return [
        {
            "reference": reference,
            "status": last[reference].status,
            "revisions": revisions,
            "document": json.loads(last[reference].document),
        }
        for reference, revisions in numbers.items()
    ]


def _imports(uow: UnitOfWork, one: Somebody) -> list[dict[str, Any]]:
    found = uow.kept_people.look(one.anywhere())
    return [
        {"file": names, "imports": list(file.imports), "sha256": file.sha256, "names_them": file.found}
        for file in found
        for names in [sorted(Counter(file.names))]
    ]


def _file(file: Attachment) -> dict[str, Any]:
    return {
        "record": file.reference,
        "number": file.number,
        "name": file.name,
        "type": file.type,
        "sha256": file.sha256,
    }


def _at(time: Any) -> str:  # noqa: ANN401 - a time
    return str(time.isoformat())
