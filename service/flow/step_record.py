"""A record goes a step further: shipped, installed, withdrawn; and how it went after a season."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from service.core.boat import get
from service.core.catalogue import Configuration
from service.core.installed import installed
from service.core.measurement import Measurement, fields, taken_from, unwritten
from service.core.record import NEXT, Outcome, Record, Status
from service.files.read.installed_file import FromSite
from service.flow.edit_record import Desk, Edited, edit_record
from service.flow.refusal import Refused
from service.store.unit import UnitOfWork


@dataclass(frozen=True)
class Told:
    """What is said beside a step: the day, a reason, a note, what was found on site, why metal unknown to the catalogue."""

    day: date | None = None
    why: str | None = None
    note: str | None = None
    site: FromSite | None = None
    anyway: str | None = None


def step_record(
    uow: UnitOfWork, reference: str, status: Status, told: Told = Told(), *, who: str, expect: int | None = None
) -> Edited:
    """Step a record to `status` and commit.

    By itself a record goes from proposed to shipped to installed, and from anywhere to withdrawn; any other step is a
    correction and needs a reason. With `site` it carries from then on what was really installed, and what was measured
    there is kept as measurements beside the earlier ones. Refused says what is possible; Moved as `edit_record`.
    """
    if told.site is not None and status != "installed":
        raise Refused(f"what was found on site belongs to the step 'installed', not {status!r}")

    def make(record: Record, desk: Desk) -> Record:
        corrects = _see_possible(record, status, told)
        day = told.day or (None if corrects and record.date else uow.now().date())
        rows = _measured(uow, desk, told, who)
        site = told.site.site if told.site else None
        after = installed(record, site, rows, status=status, day=day)
        if site is not None:
            _see_made(uow, record, after.configuration, told.anyway)
        if told.note is None:
            return after
        return after.model_copy(update={"outcome": after.outcome.model_copy(update={"note": told.note})})

    reason = "; ".join([status, *([told.why] if told.why else []), *([told.anyway] if told.anyway else [])])
    return edit_record(uow, reference, make, who=who, why=reason, expect=expect)


def _see_possible(record: Record, status: Status, told: Told) -> bool:
    """Say whether the step is a correction; Refused where it is one without a reason."""
    if status in NEXT[record.status]:
        return False
    if told.why:
        return True
    possible = " or ".join(NEXT[record.status]) or "nothing further"
    raise Refused(
        f"record {record.reference} is {record.status}; from there it goes to {possible}. "
        f"To correct it to {status} all the same, say --why"
    )


def _measured(uow: UnitOfWork, desk: Desk, told: Told, who: str) -> tuple[Measurement, ...]:
    """Return every measurement of the boat, the site's among them; what is new is left on the desk to be kept."""
    if told.site is None:
        return desk.measured
    form = told.site.site.form
    fresh = taken_from(
        form, who=who, at=uow.now(), written=told.site.written, day=told.day, source="measured when installed"
    )
    wanted = [path for path in fields() if get(form, path) is not None]
    desk.fresh += [*unwritten(desk.history, desk.measured, wanted), *fresh]
    return (*desk.measured, *desk.fresh)


def _see_made(uow: UnitOfWork, record: Record, kit: Configuration, anyway: str | None) -> None:
    """Refused where no catalogue that could be meant makes what is said to be installed: most likely a slip."""
    if kit == record.configuration or anyway:
        return
    catalogue = (uow.catalogues.get(record.catalogue) if record.catalogue else None) or uow.catalogues.latest()
    misfit = catalogue.misfit(kit) if catalogue else None
    if misfit:
        raise Refused(f"as installed: {misfit}. Mend the code, or say with --anyway why it is right all the same")


@dataclass(frozen=True)
class Season:
    """How it went: as proposed or not, what was changed and why, what was heard."""

    fitted_as_proposed: bool | None = None
    changed: str | None = None
    note: str | None = None


def record_outcome(
    uow: UnitOfWork, reference: str, season: Season, *, who: str, why: str | None = None, expect: int | None = None
) -> Edited:
    """Write down how an installation went, and commit; what is not said stays. Refused before it is installed."""
    said = {name: value for name, value in vars(season).items() if value is not None}
    if not said:
        raise Refused("nothing is said of the outcome; give --fitted-as-proposed, --changed WHAT or --note")

    def make(record: Record, _desk: Desk) -> Record:
        if record.status != "installed":
            raise Refused(
                f"record {record.reference} is {record.status}: an outcome is known once it is installed. "
                f"Step it first: `transom records step {record.reference} installed`"
            )
        outcome = Outcome.model_validate({**record.outcome.model_dump(), **said})
        return record.model_copy(update={"outcome": outcome})

    return edit_record(uow, reference, make, who=who, why=why or "outcome", expect=expect)
