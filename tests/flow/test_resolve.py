"""Names to hull models through the store: one name, many rows, a form's own words."""

from __future__ import annotations

import pytest

from service.core.form import parse_form
from service.core.hulls import HullIndex
from service.files.read.errors import Unreadable
from service.flow.resolve import hull_of, resolve_name, resolve_rows
from service.store.unit import Store


def test_a_numbered_sibling_is_never_taken(seeded: Store) -> None:
    with seeded.reading() as uow:
        assert str(resolve_name(uow, "Tarnholt 36").model).endswith("Tarnholt 36")
        absent = resolve_name(uow, "Tarnholt 37")
    assert absent.model is None
    assert absent.status != "matched"


def test_rows_come_back_in_order(seeded: Store) -> None:
    rows = b"name,builder,year,loa_mm,beam_mm\nSelmarrow 31,,1976,,\nnobody's boat,,,,\nTARNHOLT 36,,1991,,\n"
    with seeded.reading() as uow:
        found = list(resolve_rows(uow, rows, "names.csv"))
    assert [one.status for one in found] == ["matched", "unknown", "matched"]
    assert [one.model and one.model.model for one in found] == ["Selmarrow 31", None, "Tarnholt 36"]


def test_rows_without_names_are_refused(seeded: Store) -> None:
    with seeded.reading() as uow, pytest.raises(Unreadable):
        resolve_rows(uow, b"", "names.csv")


def test_an_empty_registry_knows_nobody(store: Store) -> None:
    with store.reading() as uow:
        assert resolve_name(uow, "Tarnholt 36").status == "unknown"


def test_a_form_without_a_model_is_not_resolved(seeded: Store) -> None:
    with seeded.reading() as uow:
        index = HullIndex.build(uow.hulls.all())
    assert hull_of(index, parse_form({"boat": {"builder": "Tarnholt"}})) is None
    decided = hull_of(index, parse_form({"boat": {"model": "Tarnholt 36", "year": 1991}}))
    assert decided is not None
    assert decided.status == "matched"
