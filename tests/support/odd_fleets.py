"""Fleets of odd sorts, which every report has to bear: nothing, one record, one configuration, no date or one to come."""

from __future__ import annotations

from datetime import date
from pathlib import Path
from typing import Any

from service import bootstrap
from service.core.boat import BoatForm
from service.core.catalogue import Configuration
from service.core.record import Record
from service.files.read.catalogue_file import read_catalogue

CATALOGUE = Path(__file__).resolve().parents[2] / "seed_fixtures" / "catalogue.toml"
AS_OF = "2026-01-15"
KIT = Configuration(gear="gear-720", lower="hinge-60-170", upper="hinge-270-420", shaft="shaft-1350")
FORM = BoatForm.model_validate(
    {
        "schema": "boat-form/1",
        "boat": {"loa_mm": 9450, "stern": "plumb", "displacement_kg": 4600},
        "transom": {"top_height_mm": 950, "rake_deg": 3},
    }
)


def _record(number: int, **more: Any) -> Record:  # noqa: ANN401 - any field of a record
    usual: dict[str, Any] = {"status": "installed", "date": date(2025, 5, 1), "configuration": KIT, "form": FORM}
    return Record(reference=f"a-{number}", **{**usual, **more})


ODD: dict[str, list[Record]] = {
    "empty": [],
    "one record": [_record(1)],
    "one withdrawn": [_record(1, status="withdrawn")],
    "one configuration": [_record(n, date=date(2020 + n % 5, 1 + n % 12, 3)) for n in range(30)],
    "to come": [*(_record(n, date=date(2031, 1, 1 + n)) for n in range(3)), _record(9, date=date(2031, 1, 1), status="withdrawn")],
    "undated": [*(_record(n, date=None) for n in range(3)), _record(9, date=None, status="withdrawn")],
}  # fmt: skip


def fill(url: str, records: list[Record]) -> None:
    """Put the demo catalogue and the records into a database that is at this program's revision."""
    store = bootstrap.open_store(bootstrap.settings(url))
    with store.writing() as uow:
        uow.catalogues.add(read_catalogue(CATALOGUE.read_bytes(), CATALOGUE.name))
        uow.records.add_many(records, who="desk", why="test")
        uow.commit()
    store.close()
