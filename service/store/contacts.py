"""People who are to be answered, kept apart from boats and records."""

from __future__ import annotations

from collections.abc import Sequence

import sqlalchemy as sa

from service.core.boat import BoatForm, Contact
from service.store.desk import Desk
from service.store.persons import NO_ONE, Person
from service.store.schema import contacts


class Contacts:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def keep(self, wanted: Sequence[Person]) -> list[str | None]:
        """Return the id of each, in order; None for an empty one. The same words are one person."""
        known = self._known({person for person in wanted if person != NO_ONE})
        rows = []
        for person in wanted:
            if person != NO_ONE and person not in known:
                known[person] = self._desk.new_id("contact")
                name, email, phone, role = person
                rows.append(
                    {
                        "id": known[person],
                        "name": name,
                        "email": email,
                        "phone": phone,
                        "role": role,
                        "created": self._desk.now(),
                    }
                )
        self._desk.write(contacts.insert(), rows)
        return [known.get(person) for person in wanted]

    def _known(self, people: set[Person]) -> dict[Person, str]:
        # Each is looked for by the first thing said of it: that alone narrows it to a handful.
        c = contacts.c
        columns = (c.name, c.email, c.phone, c.role)
        found: dict[Person, str] = {}
        for index, column in enumerate(columns):
            said = sorted({str(p[index]) for p in people if p[index] is not None and p[:index] == NO_ONE[:index]})
            for row in self._desk.among(sa.select(c.id, *columns), column, said):
                found.setdefault((row.name, row.email, row.phone, row.role), row.id)
        return found


def with_contact(form: BoatForm, row: sa.Row[tuple[object, ...]]) -> BoatForm:
    """Return the form with the contact that was joined to its row (columns name, email, phone, role)."""
    person: Person = (row.contact_name, row.contact_email, row.contact_phone, row.contact_role)
    if person == NO_ONE:
        return form
    name, email, phone, role = person
    contact = Contact.model_validate({"name": name, "email": email, "phone": phone, "role": role})
    return form.model_copy(update={"contact": contact})


JOINED = (
    contacts.c.name.label("contact_name"),
    contacts.c.email.label("contact_email"),
    contacts.c.phone.label("contact_phone"),
    contacts.c.role.label("contact_role"),
)
"""Select these beside a document, with an outer join on contacts."""
