"""Something was measured on a record's boat, at any time."""

from __future__ import annotations

from datetime import date

from service.core.boat import get
from service.core.measurement import fields, resolved, taken_from, unwritten
from service.core.record import Record
from service.files.read.installed_file import FromSite
from service.flow.edit_record import Desk, Edited, edit_record
from service.flow.refusal import Refused
from service.store.unit import UnitOfWork


def measure_record(
    uow: UnitOfWork,
    reference: str,
    said: FromSite,
    *,
    who: str,
    why: str | None = None,
    day: date | None = None,
    expect: int | None = None,
) -> Edited:
    """Keep what a boat form says as measurements, bring the record up to date with what stands, and commit.

    Which of several stands is told in `core.measurement`; a remark names every value that was measured and does not.
    """
    form = said.site.form
    if form.document().keys() <= {"schema"}:
        raise Refused("the form says nothing; give the boat form with what was measured")

    def make(record: Record, desk: Desk) -> Record:
        source = why or "measured"
        fresh = taken_from(form, who=who, at=uow.now(), written=said.written, day=day, source=source)
        wanted = [path for path in fields() if get(form, path) is not None]
        desk.fresh += [*unwritten(desk.history, desk.measured, wanted), *fresh]
        after = resolved(record.form, form, (*desk.measured, *desk.fresh))
        for row in fresh:
            stands = get(after, row.field)
            if stands != row.value:
                how = f"by {row.method}" if row.method else "nobody says how"
                desk.notes.append(
                    f"{row.field} {row.text} ({how}) is kept; {stands:g} stands, got by a better way or later"
                )
        return record.model_copy(update={"form": after})

    return edit_record(uow, reference, make, who=who, why=f"measured: {why}" if why else "measured", expect=expect)
