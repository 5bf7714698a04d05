"""How an enquiry went at the desk: what was done, by whom, when; and what there would be to answer as it stands."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any, Literal

import sqlalchemy as sa

from service.core.boat import BoatForm
from service.store.desk import Desk
from service.store.desk_schema import enquiry_steps, working_answers
from service.store.happening import Happening
from service.store.persons import without_contact
from service.store.schema import enquiries

Did = Literal["opened", "edited", "undone", "asked", "sent", "copied", "noted", "closed", "reopened"]
Waits = Literal["us", "them", "nobody"]
"""Whose move it is: ours, the asker's, or nobody's."""


@dataclass(frozen=True)
class Step:
    """One thing done with an enquiry. `form` is the boat form after it, without the contact, where it changed that."""

    number: int
    did: Did
    who: str
    at: datetime
    form: BoatForm | None = None
    hull: str | None = None
    answer: str | None = None
    said: str | None = None


@dataclass(frozen=True)
class Draft:
    """What there would be to answer, as JSON, made from that version of the enquiry and what `stamp` names."""

    version: int
    stamp: str
    document: str


class EnquirySteps:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def of(self, enquiry_id: str) -> tuple[Step, ...]:
        """Return the steps of one enquiry, the first one first."""
        c = enquiry_steps.c
        return tuple(
            map(_step, self._desk.all(sa.select(enquiry_steps).where(c.enquiry_id == enquiry_id).order_by(c.number)))
        )

    def brief(self, enquiry_ids: Sequence[str]) -> dict[str, tuple[Step, ...]]:
        """Return the steps of several enquiries, the first one first, without the forms."""
        c = enquiry_steps.c
        chosen = sa.select(
            c.enquiry_id, c.number, c.did, c.who, c.at, sa.null().label("form"), c.hull, c.answer, c.said
        )
        found: dict[str, list[Step]] = {name: [] for name in enquiry_ids}
        for row in self._desk.among(chosen, c.enquiry_id, sorted(found)):
            found[row.enquiry_id].append(_step(row))
        return {name: tuple(sorted(steps, key=lambda step: step.number)) for name, steps in found.items()}

    def add(  # noqa: PLR0913 - a step is what was done, by whom, and what came of it
        self,
        enquiry_id: str,
        did: Did,
        *,
        who: str,
        form: BoatForm | None = None,
        hull: str | None = None,
        answer: str | None = None,
        said: str | None = None,
        waits: Waits | None = None,
        contact: str | None = None,
    ) -> int:
        """Write a step down, bring the enquiry to what it says, and return the step's number.

        A step with a `form` makes it the enquiry's, with `hull`. Whoever calls holds the writers' turn and has looked at
        the version. `contact` is the id of who asks, where that changed.
        """
        number = self.version(enquiry_id) + 1
        bare = None if form is None else without_contact(form).model_dump_json(by_alias=True, exclude_none=True)
        row = {
            "enquiry_id": enquiry_id, "number": number, "did": did, "who": who, "at": self._desk.now(), "form": bare,
            "hull": hull, "answer": answer, "said": said,
        }  # fmt: skip
        self._desk.write(enquiry_steps.insert(), [row])
        changed: dict[str, Any] = {"version": number}
        changed |= {"form": bare, "hull_id": hull} if bare is not None else {}
        changed |= {"waits": waits} if waits is not None else {}
        changed |= {"contact_id": contact} if contact is not None else {}
        self._desk.connection.execute(enquiries.update().where(enquiries.c.id == enquiry_id).values(**changed))
        owner = self._desk.one(sa.select(enquiries.c.owner).where(enquiries.c.id == enquiry_id))
        self._desk.happened.append(Happening("changed", "enquiry", enquiry_id, str(owner.owner) if owner else ""))
        return number

    def version(self, enquiry_id: str) -> int:
        """Return the number of an enquiry's last step, 0 before the first."""
        row = self._desk.one(sa.select(enquiries.c.version).where(enquiries.c.id == enquiry_id))
        return 0 if row is None else int(row.version)

    def draft(self, enquiry_id: str) -> Draft | None:
        """Return what there would be to answer, None where that was not worked out."""
        c = working_answers.c
        row = self._desk.one(sa.select(c.version, c.stamp, c.document).where(c.enquiry_id == enquiry_id))
        return None if row is None else Draft(**row._mapping)  # noqa: SLF001 - its public name

    def keep_draft(self, enquiry_id: str, draft: Draft) -> None:
        """Keep what there would be to answer in the place of what was kept before."""
        self._desk.connection.execute(working_answers.delete().where(working_answers.c.enquiry_id == enquiry_id))
        self._desk.write(working_answers.insert(), [{"enquiry_id": enquiry_id, **vars(draft)}])


def _step(row: sa.Row[Any]) -> Step:
    form = None if row.form is None else BoatForm.model_validate_json(row.form)
    return Step(row.number, row.did, row.who, row.at, form, row.hull, row.answer, row.said)
