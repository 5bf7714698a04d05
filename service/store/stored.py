"""How times and text are stored, where databases differ in it."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

import sqlalchemy as sa
from sqlalchemy.types import TypeDecorator


class UtcTime(TypeDecorator[datetime]):
    """A time with its zone, kept in UTC; SQLite, which knows no zones, gets it bare and gives it back as UTC."""

    impl = sa.DateTime(timezone=True)
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: sa.Dialect) -> datetime | None:
        """Return the time in UTC; ValueError for a time without a zone."""
        if value is None:
            return None
        if value.tzinfo is None:
            raise ValueError(f"{value.isoformat()} has no time zone")
        utc = value.astimezone(UTC)
        return utc.replace(tzinfo=None) if dialect.name == "sqlite" else utc

    def process_result_value(self, value: datetime | None, dialect: sa.Dialect) -> datetime | None:
        """Return the time in UTC, with its zone."""
        del dialect
        if value is None:
            return None
        return value.replace(tzinfo=UTC) if value.tzinfo is None else value.astimezone(UTC)


class Text(sa.String):
    """Text on a server. It cannot hold the character NUL, which is written as two of the private use area."""

    render_bind_cast = True

    def bind_processor(self, dialect: sa.Dialect) -> Callable[[str | None], str | None]:
        """Return what is done to a value on its way in."""
        del dialect
        return _without_nul

    def result_processor(self, dialect: sa.Dialect, coltype: object) -> Callable[[str | None], str | None]:
        """Return what is done to a value on its way out."""
        del dialect, coltype
        return _with_nul


_MARK = "\ue000"


def _without_nul(value: str | None) -> str | None:
    if value is None or ("\0" not in value and _MARK not in value):
        return value
    return value.replace(_MARK, f"{_MARK}1").replace("\0", f"{_MARK}0")


def _with_nul(value: str | None) -> str | None:
    if value is None or _MARK not in value:
        return value
    return value.replace(f"{_MARK}0", "\0").replace(f"{_MARK}1", _MARK)
