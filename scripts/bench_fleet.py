"""The demo maker's fleet, straight from its fixtures."""

from __future__ import annotations

from pathlib import Path

from service.core.recall.fleet import Fleet
from service.core.record import HullModel, Record
from service.files.read.catalogue_file import read_catalogue
from service.files.read.hulls_file import read_hulls

FIXTURES = Path(__file__).resolve().parent.parent / "seed_fixtures"


def demo_fleet() -> Fleet:
    """Return the fleet with its hull models and what the demo catalogue makes."""
    catalogue = read_catalogue((FIXTURES / "catalogue.toml").read_bytes(), "catalogue.toml")
    lines = (FIXTURES / "fleet.jsonl").read_text("utf-8").splitlines()
    lines_of_hulls = [row.line for row in read_hulls((FIXTURES / "hulls.csv").read_bytes(), "hulls.csv").rows]
    hulls = {str(h.id): HullModel.model_validate(h.model_dump()) for h in lines_of_hulls}
    records = [Record.model_validate_json(one) for one in lines]
    return Fleet.build(records, hulls, makes=lambda one: catalogue.misfit(one) is None)
