"""Days and moments are written, never counted. ISO 8601's calendar date and date-time; pydantic would take numbers too."""

from __future__ import annotations

from datetime import UTC, date, datetime

import pytest
from pydantic import TypeAdapter, ValidationError

from service.core.days import Day, Moment

DAYS, MOMENTS = TypeAdapter(Day), TypeAdapter(Moment)


def test_what_is_written_is_read() -> None:
    assert DAYS.validate_python("2025-11-30") == date(2025, 11, 30)
    assert DAYS.validate_python(date(2025, 11, 30)) == date(2025, 11, 30)
    assert MOMENTS.validate_python("2025-11-30T14:05:00Z") == datetime(2025, 11, 30, 14, 5, tzinfo=UTC)
    assert MOMENTS.validate_json('"2025-11-30"') == datetime(2025, 11, 30)  # noqa: DTZ001 - nobody said where


@pytest.mark.parametrize("wrong", [0, 1577836800, "0", "1577836800", "2025", 5.0, True, "30.11.2025", "2025-13-01"])
def test_a_number_is_no_day_and_no_moment(wrong: object) -> None:
    for kind in (DAYS, MOMENTS):
        with pytest.raises(ValidationError):
            kind.validate_python(wrong)


def test_the_message_shows_how_it_is_written() -> None:
    with pytest.raises(ValidationError, match="2025-11-30"):
        DAYS.validate_python("30/11/25")


def test_a_program_is_told_that_it_is_a_text() -> None:
    assert DAYS.json_schema() == {"type": "string", "format": "date"}
    assert MOMENTS.json_schema() == {"type": "string", "format": "date-time"}
