"""Hull models kept in columns: a quarter of the memory of as many shapes, and shaped again when one is shown."""

from __future__ import annotations

from array import array
from collections.abc import Iterator
from typing import Any

from service.core.record import HullModel

_YEARS = ("first_year", "last_year")
_SIZES = ("loa_mm", "lwl_mm", "beam_mm", "draft_mm", "displacement_kg")
_SHARED = ("builder", "stern")  # the same few texts over and over
_REST = tuple(name for name in HullModel.model_fields if name not in (*_YEARS, *_SIZES))
_UNSAID = float("nan")


class Columns:
    """Hull models by place, in the order they were added. Never changed once an index was built of it."""

    def __init__(self) -> None:
        self._numbers = {name: array("d") for name in (*_YEARS, *_SIZES)}
        self._rest: dict[str, list[Any]] = {name: [] for name in _REST}
        self._shared: dict[Any, Any] = {}

    def __len__(self) -> int:
        return len(self._rest["id"])

    def add(self, model: HullModel) -> None:
        """Take one more model."""
        said = model.__dict__
        for name, column in self._numbers.items():
            value = said[name]
            column.append(_UNSAID if value is None else value)
        for name, kept in self._rest.items():
            value = said[name]
            kept.append(self._shared.setdefault(value, value) if name in _SHARED else value)

    def id(self, place: int) -> str:
        """Return a model's id."""
        return str(self._rest["id"][place])

    def ids(self) -> list[str]:
        """Return every id, by place."""
        return self._rest["id"]

    def said(self, place: int, name: str) -> float | None:
        """Return a length, weight or year of a model, None where it is not known."""
        value = self._numbers[name][place]
        return value if value == value else None  # noqa: PLR0124 - only what was not said differs from itself

    def shaped(self, place: int) -> HullModel:
        """Return a model as it was added."""
        values: dict[str, Any] = {name: column[place] for name, column in self._rest.items()}
        for name in self._numbers:
            value = self.said(place, name)
            values[name] = int(value) if value is not None and name in _YEARS else value
        return HullModel.model_construct(**values)  # it was checked when it was first made

    def all(self) -> Iterator[HullModel]:
        """Return every model, by place."""
        return (self.shaped(place) for place in range(len(self)))
