"""A ledger with the demo maker's data in it."""

from __future__ import annotations

from pathlib import Path

from service.cli.main import status

FIXTURES = Path(__file__).resolve().parents[2] / "seed_fixtures"


def seed(url: str) -> None:
    """Fill a database with the demo maker's data, by the commands themselves."""
    for step in (
        ("db", "upgrade"),
        ("catalogue", "load", FIXTURES / "catalogue.toml"),
        ("hulls", "import", FIXTURES / "hulls.csv"),
        ("records", "import", FIXTURES / "fleet.jsonl"),
    ):
        assert status([*map(str, step), "--db", url, "--json"]) == 0, step
