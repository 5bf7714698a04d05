"""Hull models from CSV or a workbook."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Any, Self

from pydantic import Field, model_validator

from service.core.boat import Mass, Shape, Size, Stern, Text
from service.core.form import FormError, parse_shape
from service.files.read.errors import Unreadable
from service.files.read.kinds import kind_of
from service.files.read.tables import Row, RowError, read_table

COLUMNS = (
    "id", "builder", "model", "aliases", "first_year", "last_year", "loa_mm", "lwl_mm", "beam_mm", "draft_mm",
    "displacement_kg", "stern",
)  # fmt: skip
"""Headings a list of hull models may have; only `model` is needed."""

Year = Annotated[int, Field(ge=1850, le=2100)]


class HullLine(Shape):
    """What one row says of a hull model. What it does not say is not to be changed."""

    id: Annotated[str, Field(min_length=1, max_length=80)] | None = None
    builder: Text | None = None
    model: str = Field(min_length=1, max_length=200)
    aliases: tuple[Annotated[str, Field(min_length=1, max_length=200)], ...] = ()
    first_year: Year | None = None
    last_year: Year | None = None
    loa_mm: Size | None = None
    lwl_mm: Size | None = None
    beam_mm: Size | None = None
    draft_mm: Size | None = None
    displacement_kg: Mass | None = None
    stern: Stern | None = None

    @model_validator(mode="after")
    def _years_in_order(self) -> Self:
        if self.first_year is not None and self.last_year is not None and self.first_year > self.last_year:
            raise ValueError(f"first_year {self.first_year} comes after last_year {self.last_year}")
        return self


@dataclass(frozen=True)
class HullRow:
    sheet: str | None
    row: int
    line: HullLine


@dataclass(frozen=True)
class ReadHulls:
    rows: tuple[HullRow, ...]
    rejected: tuple[RowError, ...]


def read_hulls(data: bytes, name: str) -> ReadHulls:
    """Return the hull models in a file and an error for each cell that kept a row from being one.

    Unreadable where the file as a whole is no list of hull models.
    """
    if kind_of(data, name) == "jsonl":
        raise Unreadable(f"{name}: hull models come as CSV or XLSX, with the headings {', '.join(COLUMNS)}")
    good, bad = [], list[RowError]()
    for row in read_table(data, name, known=COLUMNS, required=("model",)).rows:
        if row.surplus:
            bad.append(
                row.error("", "there are more cells than headings; quote text that holds the separator", row.surplus[0])
            )
            continue
        try:
            good.append(HullRow(row.sheet, row.number, parse_shape(HullLine, _said(row))))
        except FormError as error:
            bad += [row.error(d.field, d.problem, d.value.strip("'")) for d in error.defects]
    return ReadHulls(tuple(good), tuple(bad))


def _said(row: Row) -> dict[str, Any]:
    said: dict[str, Any] = {key: value for key, value in row.cells.items() if value.strip()}
    if "aliases" in said:
        said["aliases"] = [alias.strip() for alias in said["aliases"].split("|") if alias.strip()]
    return said
