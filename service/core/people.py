"""What of a record is somebody's, and the record without it."""

from __future__ import annotations

from service.core.boat import Asked, Contact
from service.core.record import Outcome, Record


def without_people(record: Record) -> Record:
    """Return the record as a precedent may be shown to anybody: without contact, boat's name and numbers, and free text.

    Free text is whatever somebody wrote, and may name anybody.
    """
    form = record.form
    bare = form.model_copy(
        update={
            "contact": Contact(),
            "enquiry": Asked(),
            "notes": None,
            "boat": form.boat.model_copy(update={"name": None, "sail_number": None, "hull_number": None}),
            "obstacles": tuple(thing.model_copy(update={"note": None}) for thing in form.obstacles),
        }
    )
    outcome = Outcome(fitted_as_proposed=record.outcome.fitted_as_proposed)
    return record.model_copy(update={"form": bare, "outcome": outcome, "dealer": None, "answer": None})
