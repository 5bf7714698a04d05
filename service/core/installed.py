"""What was found on the boat when the gear was installed: `as-installed/1`."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import Literal

from pydantic import Field

from service.core.boat import BoatForm, Shape, Text, get
from service.core.catalogue import Configuration
from service.core.measurement import Measurement, fields, resolved
from service.core.record import Outcome, Proposed, Record, RecordedPlacement, Status


class OtherKit(Shape):
    """Codes of what was installed; what is not named is as it was proposed."""

    gear: str | None = Field(None, min_length=1, max_length=80)
    lower: str | None = Field(None, min_length=1, max_length=80)
    upper: str | None = Field(None, min_length=1, max_length=80)
    shaft: str | None = Field(None, min_length=1, max_length=80)


class AsInstalled(Shape):
    """What somebody on site says: other metal, where it sits, what was measured (a boat form), what was changed and why.

    All of it may be left out; what is not said stays as it was proposed.
    """

    schema_: Literal["as-installed/1"] = Field("as-installed/1", alias="schema")
    configuration: OtherKit = OtherKit()
    placement: RecordedPlacement = RecordedPlacement()
    form: BoatForm = BoatForm()
    changed: Text | None = None
    fitted_as_proposed: bool | None = None


def installed(
    record: Record, site: AsInstalled | None, rows: Sequence[Measurement], *, status: Status, day: date | None
) -> Record:
    """Return the record a step further. `rows`: every measurement of the boat, those of the site among them.

    Where the site names other metal, the record carries it and keeps what had been proposed; it did not fit as
    proposed then. FormError where what was measured contradicts itself.
    """
    moved = record.model_copy(update={"status": status, "date": day or record.date})
    if site is None:
        return moved
    kit = record.configuration.model_copy(update=site.configuration.model_dump(exclude_none=True))
    other = kit != (record.replaced or record.configuration)
    first = record.replaced or record.configuration
    spot = site.placement.model_dump(exclude_none=True)
    told = {"fitted_as_proposed": False if other else site.fitted_as_proposed, "changed": site.changed}
    return moved.model_copy(
        update={
            "form": resolved(record.form, site.form, rows),
            "configuration": kit,
            "proposed": Proposed(**first.model_dump()) if other else Proposed(),
            "placement": _placed(record, kit, spot),
            "outcome": Outcome.model_validate(
                {**record.outcome.model_dump(), **{key: value for key, value in told.items() if value is not None}}
            ),
        }
    )


def said_already(
    before: Record, now: Record, site: AsInstalled, rows: Sequence[Measurement], *, who: str, note: str | None
) -> bool:
    """Say whether `who` has written down just this of `before`, so that it stands in `now`: the same form sent twice.

    `rows`: every measurement of the boat as it stands.
    """
    kept = {(row.field, row.value) for row in rows if row.who == who}
    if any((path, get(site.form, path)) not in kept for path in fields() if get(site.form, path) is not None):
        return False
    after = installed(before, site, rows, status="installed", day=now.date)
    if note is not None:
        after = after.model_copy(update={"outcome": after.outcome.model_copy(update={"note": note})})
    return after == now


def _placed(record: Record, kit: Configuration, spot: dict[str, float]) -> RecordedPlacement:
    """Return where it sits. Other metal does not sit where the proposed one would have: only what the site says counts."""
    before = record.placement.model_dump() if kit == record.configuration else {}
    return RecordedPlacement.model_validate({**before, **spot})
