"""What waits for whom at the desk: enquiries in pages, the newest first, each with whose move it is and why."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime

from service.core.reading.gaps import gaps
from service.core.record import HullModel
from service.flow.list_enquiries import list_enquiries
from service.flow.take_in import CAME_FROM, GOES_ON
from service.store.enquiries import Enquiry
from service.store.enquiry_steps import Step
from service.store.unit import UnitOfWork


@dataclass(frozen=True)
class Line:
    """One enquiry in the list.

    `why` says why it waits, `since` since when where something was done, `lack` what is missing for an answer.
    """

    enquiry: Enquiry
    hull: HullModel | None
    why: str
    since: datetime | None
    lack: str | None


@dataclass(frozen=True)
class Board:
    """A page of the list; `following` is the place behind it, `counts` how many wait for whom in all."""

    lines: tuple[Line, ...]
    following: str | None
    counts: Mapping[str, int]


def waiting_enquiries(uow: UnitOfWork, owner: str | None, *, waits: str | None, after: str | None, limit: int) -> Board:
    """Return a page of one owner's enquiries (everybody's where None). ValueError for a place that this never gave."""
    with uow:
        found, following = list_enquiries(uow, owner, after=after, limit=limit, waits=waits)
        hulls = uow.hulls.among([one.hull for one in found if one.hull])
        steps = uow.steps.brief([one.id for one in found])
        counts = {"us": 0, "them": 0, "nobody": 0} | uow.enquiries.waiting(owner)
    lines = [Line(one, hulls.get(one.hull or ""), *_why(one, steps[one.id])) for one in found]
    return Board(tuple(lines), following, counts)


def _why(enquiry: Enquiry, steps: Sequence[Step]) -> tuple[str, datetime | None, str | None]:
    last = next((step for step in reversed(steps) if step.did != "noted"), None)
    missing = len(gaps(enquiry.form)) if enquiry.waits == "us" else 0
    lack = f"{missing} key measurement{'s' if missing > 1 else ''} missing" if missing else None
    tied = next((step for step in reversed(steps) if (step.said or "").startswith((GOES_ON, CAME_FROM))), None)
    if tied is not None and enquiry.waits == "nobody" and (tied.said or "").startswith(GOES_ON):
        return "they wrote again, it goes on in a newer one", tied.at, None
    if last is None:
        return "new, not answered" if tied is None else "they replied, not answered", None, lack
    if enquiry.waits == "us" and last.did in ("asked", "sent"):
        return "they wrote again after", last.at, lack
    said = {
        "asked": _asked(last.said), "sent": "answered", "closed": f"closed by {last.who}",
        "copied": f"begun anew by {last.who}, not answered", "reopened": f"opened again by {last.who}, not answered",
    }  # fmt: skip
    return said.get(last.did, f"worked on by {last.who}, answer not sent"), last.at, lack


def _asked(words: str | None) -> str:
    many = (words or "").count("?")
    return "asked, no reply yet" if not many else f"asked {many} question{'s' if many > 1 else ''}, no reply yet"
