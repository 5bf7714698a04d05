"""All that is written of one state of a record, worked out from the record alone: it may be done elsewhere, beforehand."""

from __future__ import annotations

from typing import Any, NamedTuple

from service.core.boat import Contact
from service.core.record import Record
from service.store.persons import NO_ONE, Person, person_of, without_contact


class Written(NamedTuple):
    """The columns of `records` and of `boats` with their values, what tells the boat, who is named, and the document."""

    row: dict[str, Any]
    boat_key: str
    boat: dict[str, Any]
    person: Person
    document: str

    @property
    def reference(self) -> str:
        """The record's reference."""
        return str(self.row["reference"])

    @property
    def record(self) -> Record:
        """The record itself, read anew."""
        return with_person(Record.model_validate_json(self.document), self.person)


class Standing(NamedTuple):
    """What stands of a record: the number of its revision, the document, and who is named."""

    head: int
    document: str
    person: Person


def written(record: Record) -> Written:
    """Return what is written of a record."""
    form, made = record.form, record.configuration
    boat = form.boat
    number = boat.hull_number
    key = f"hull:{record.hull}:{number.casefold()}" if record.hull and number else f"record:{record.reference}"
    row = {
        "reference": record.reference,
        "hull_id": record.hull,
        "status": record.status,
        "date": record.date,
        "dealer": record.dealer,
        "catalogue_version": record.catalogue,
        "year": boat.year,
        "stern": boat.stern,
        "loa_mm": boat.loa_mm,
        "top_height_mm": form.transom.top_height_mm,
        "rake_deg": form.transom.rake_deg,
        "gear": made.gear,
        "lower": made.lower,
        "upper": made.upper,
        "shaft": made.shaft,
        "offset_mm": record.placement.offset_mm,
        "answer": record.answer,
        "country": form.enquiry.country,
    }
    afloat = {
        "hull_id": record.hull,
        "name": boat.name,
        "hull_number": number,
        "sail_number": boat.sail_number,
        "year": boat.year,
    }
    return Written(row, key, afloat, person_of(form.contact), _document(record))


def with_person(record: Record, person: Person) -> Record:
    """Return the record with somebody in its form; as it is for no one."""
    if person == NO_ONE:
        return record
    name, email, phone, role = person
    contact = Contact.model_validate({"name": name, "email": email, "phone": phone, "role": role})
    return record.model_copy(update={"form": record.form.model_copy(update={"contact": contact})})


def _document(record: Record) -> str:
    form = without_contact(record.form)
    apart = record if form is record.form else record.model_copy(update={"form": form})
    return apart.model_dump_json(by_alias=True, exclude_none=True)
