"""What the W3C Reconciliation Service API 0.2 sends: batches of queries, and requests to extend."""

from __future__ import annotations

from typing import Annotated, Any, Literal, Self

from pydantic import BaseModel, ConfigDict, Field, model_validator

from service.core.record import HullModel

TYPE = {"id": "hull-model", "name": "Hull model"}
PROPERTIES: dict[str, str] = {
    "builder": "builder", "first_year": "first year built", "last_year": "last year built", "loa_mm": "length overall, mm",
    "lwl_mm": "waterline length, mm", "beam_mm": "beam, mm", "draft_mm": "draft, mm",
    "displacement_kg": "displacement, kg", "stern": "stern",
}  # fmt: skip
"""What a hull model can be extended by."""
TOLD: dict[str, str] = {
    "builder": "builder",
    "year": "year built",
    "loa_mm": PROPERTIES["loa_mm"],
    "beam_mm": PROPERTIES["beam_mm"],
}
"""What can be told of a boat beside its name."""
MOST_QUERIES = 50
Value = str | int | float | bool


class _Sent(BaseModel):
    """What a client of the protocol sends: fields this service does not know are left alone."""

    model_config = ConfigDict(extra="ignore")


class Entity(_Sent):
    id: str = Field(max_length=200)
    name: str | None = None


class Told(_Sent):
    """One thing told of a boat."""

    pid: str = Field(max_length=200)
    v: Value | Entity | list[Value | Entity]

    @property
    def first(self) -> str:
        """Return the first value as text."""
        one = self.v[0] if isinstance(self.v, list) and self.v else self.v
        return "" if isinstance(one, list) else (one.name or one.id) if isinstance(one, Entity) else str(one)


class Query(_Sent):
    """One name to be matched. Version 0.2 lets the name be left out where properties are told."""

    query: str | None = Field(None, max_length=500)
    type: str | list[str] | None = None
    limit: Annotated[int, Field(ge=1)] = 10
    properties: list[Told] = Field([], max_length=50)
    type_strict: Literal["any", "all", "should"] | None = None

    @model_validator(mode="after")
    def _asks(self) -> Self:
        if self.query is None and not self.properties:
            raise ValueError("give a query, properties or both")
        return self


class Wanted(_Sent):
    id: str = Field(max_length=200)
    settings: dict[str, Any] | None = None


class Extension(_Sent):
    """Hull models by id, and what is wanted of each."""

    ids: list[str] = Field(max_length=1000)
    properties: list[Wanted] = Field(max_length=50)


def cell(value: object) -> list[dict[str, object]]:
    """Return a value as the protocol writes one; nothing where there is none."""
    if value is None:
        return []
    return [
        {"int": value} if isinstance(value, int) else {"float": value} if isinstance(value, float) else {"str": value}
    ]


def described(hull: HullModel) -> str:
    """Return years and length on one line, to tell hull models of a name apart."""
    years = f"{hull.first_year or ''}-{hull.last_year or ''}" if hull.first_year or hull.last_year else ""
    length = f"{hull.loa_mm / 1000:.2f} m" if hull.loa_mm else ""
    return ", ".join(part for part in (years, length) if part)
