"""One state a record was in, and how it came to be."""

from __future__ import annotations

from pydantic import AwareDatetime, Field

from service.core.boat import Shape, Text
from service.core.record import Record


class Revision(Shape):
    """A record as it stood after somebody changed it. Numbers run from 1; the greatest is current."""

    number: int = Field(ge=1)
    who: Text
    at: AwareDatetime
    why: Text
    record: Record
