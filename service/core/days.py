"""Days and moments as people and programs write them: by ISO 8601, never as a number.

A number would be taken for seconds since 1970, and a year alone for a minute of that first day.
"""

from __future__ import annotations

import re
from datetime import date, datetime
from typing import Annotated

from pydantic import BeforeValidator

_DAY = re.compile(r"\s*\d{4}-\d{2}-\d{2}\s*")
_MOMENT = re.compile(r"\s*\d{4}-\d{2}-\d{2}([Tt ].*)?", re.DOTALL)


def _day(value: object) -> object:
    if isinstance(value, date) or (isinstance(value, str) and _DAY.fullmatch(value)):
        return value
    raise ValueError(f"write the day as year, month and day, 2025-11-30 (got {value!r:.40})")


def _moment(value: object) -> object:
    if isinstance(value, date) or (isinstance(value, str) and _MOMENT.fullmatch(value)):
        return value
    raise ValueError(f"write the moment as 2025-11-30T14:05:00Z (got {value!r:.40})")


Day = Annotated[date, BeforeValidator(_day)]
Moment = Annotated[datetime, BeforeValidator(_moment)]
