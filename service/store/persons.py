"""Who is named in a form, as the store tells people apart: by all that is said of them."""

from __future__ import annotations

from service.core.boat import BoatForm, Contact

NOBODY = Contact()
Person = tuple[str | None, str | None, str | None, str | None]
NO_ONE: Person = (None, None, None, None)


def person_of(contact: Contact) -> Person:
    """Return what is said of somebody; NO_ONE where nothing is."""
    return contact.name, contact.email, contact.phone, contact.role


def without_contact(form: BoatForm) -> BoatForm:
    """Return the form with nobody's data in it."""
    return form if form.contact == NOBODY else form.model_copy(update={"contact": NOBODY})
