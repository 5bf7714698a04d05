"""The mapping: how the columns of somebody's own table become the columns of records."""

from __future__ import annotations

from collections import Counter
from typing import Annotated, Literal, Self

from pydantic import Field, field_validator, model_validator

from service.core import units
from service.core.boat import Shape
from service.core.mapping.dates import is_format

KEEP = "keep"
"""Goes, with its heading, into the record's notes."""
IGNORE = "ignore"
"""Is not read; the report names it."""

Words = Annotated[str, Field(max_length=2_000)]


class ColumnRule(Shape):
    """What one heading becomes: a column of records, `keep` or `ignore`.

    `unit` is that of numbers without one, `format` how dates are written (DD.MM.YYYY), `values` what words in the
    cells stand for.
    """

    heading: str = Field(min_length=1)
    to: str = Field(min_length=1)
    unit: str | None = None
    format: str | None = None
    values: dict[str, Words] = {}

    @field_validator("unit")
    @classmethod
    def _a_unit(cls, unit: str | None) -> str | None:
        if unit is not None and units.BY_SYMBOL.get(unit) is None and units.UNITS.get(unit.casefold()) is None:
            raise ValueError(f"{unit!r} is no unit; write one of {', '.join(units.BY_SYMBOL)}")
        return unit

    @field_validator("format")
    @classmethod
    def _a_format(cls, written: str | None) -> str | None:
        if written is not None and not is_format(written):
            raise ValueError(f"{written!r} is no way to write dates; write DD.MM.YYYY, MM/DD/YYYY or the like")
        return written


class Mapping(Shape):
    """How a foreign table is laid out and what its columns become.

    `always` holds what every row has though no column says it, `number_rows` what goes before the row's number to
    make a reference where no column holds one. What is not said of the layout is found.
    """

    sheets: tuple[str, ...] | None = None
    heading_row: int = Field(1, ge=1, le=1_000)
    encoding: str | None = None
    separator: Annotated[str, Field(min_length=1, max_length=1)] | None = None
    decimal: Literal[".", ","] | None = None
    number_rows: Annotated[str, Field(max_length=60)] | None = None
    always: dict[str, Words] = {}
    column: tuple[ColumnRule, ...] = Field((), max_length=2_000)

    @model_validator(mode="after")
    def _each_once(self) -> Self:
        for what, counted in (
            ("heading", Counter(rule.heading for rule in self.column)),
            ("to", Counter(rule.to for rule in self.column if rule.to not in (KEEP, IGNORE))),
        ):
            twice = [name for name, times in counted.items() if times > 1]
            if twice:
                raise ValueError(f"{what} {twice[0]!r} stands twice; keep one of them, and let the other be kept aside")
        both = [name for name in self.always if any(rule.to == name for rule in self.column)]
        if both:
            raise ValueError(f"{both[0]!r} is in [always] and has a column too; keep one of them")
        return self
