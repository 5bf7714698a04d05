"""What pages can be looked at for: an enquiry with its answer, records, a batch, a job; plain ones or hostile ones."""

from __future__ import annotations

from service import bootstrap
from service.flow.answer import keep_answers, work_out
from service.flow.create_key import KeyWanted, create_key
from service.flow.import_records import import_records
from service.store.unit import Store
from tests.support import hostile
from tests.support.offices import DEALER

LETTER = b"""From: Mara Lindqvist <mara.lindqvist@example.org>
To: desk@example.com
Subject: Steering gear for our Tarnholt 36
Message-ID: <letter-1@example.org>
Date: Mon, 02 Mar 2026 10:00:00 +0000

Dear all,

we sail a Tarnholt 36 built in 1991, with a reverse transom. Measured with a tape: the top of the transom is 98.5 cm
above the water, and it leans forward by 23.5 degrees by inclinometer. There is a ladder on the port side that we use
every day. The rudder hangs under the hull.

Which gear do we need?

Mara Lindqvist
"""


def made(store: Store, *, bad: bool = False) -> dict[str, str]:
    """Return ids by kind of things that were put into the ledger: enquiry, answer, record, other, hull and so on.

    `bad` puts in things whose every text would do harm where a page forgets to escape it.
    """
    letter, lines = (hostile.mail(), hostile.line("H-1") + hostile.line("H-2")) if bad else (LETTER, None)
    worked = work_out(store, letter, "letter.eml", now=bootstrap.clock())
    with store.writing() as uow:
        (answer, *_) = keep_answers(uow, worked).answers
        uow.commit()
    worked = work_out(store, letter.replace(b"letter-1", b"letter-2"), "letter.eml", now=bootstrap.clock())
    with store.writing() as uow:
        theirs = keep_answers(uow, worked, owner=DEALER).answers[0]
        uow.commit()
    if lines is not None:
        import_records(store.writing(), lines, f"{hostile.TEXTS[0]}.jsonl", who=hostile.TEXTS[1])
    with store.reading() as uow:
        first, second = ("H-1", "H-2") if bad else [one.reference for one in uow.records.all()][:2]
        batch = uow.imports.all()[0].id
        contact = next(iter(uow.people.all())).id
    wanted = KeyWanted(hostile.TEXTS[0] if bad else "web form", ("enquiries:read",), DEALER)
    key = create_key(store.writing(), wanted, random=bytes(range(64)), who="tests").key
    return {
        "enquiry": str(answer.enquiry),
        "answer": str(answer.id),
        "theirs": str(theirs.enquiry),
        "record": first,
        "second": second,
        "hull": "tarnholt-36",
        "batch": batch,
        "contact": contact,
        "version": "demo-1",
        "key": key.id,
        "login": "bo@example.com",
    }
