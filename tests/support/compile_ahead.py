"""Compile the inner loops before tests need them, by `python -m tests.support.compile_ahead`.

One answer that fits, and one where nothing does, which is searched for in another way. Quick where all is compiled.
"""

from __future__ import annotations

import json
import sys
import tempfile
from pathlib import Path

from service.cli.main import status

FIXTURES = Path(__file__).resolve().parents[2] / "seed_fixtures"
NOTHING_FITS = {
    "boat": {"stern": "raked", "displacement_kg": 60_000},
    "transom": {"top_height_mm": 2600, "rake_deg": 70},
}


def main() -> int:
    """Answer both; return 0 where one fits and the other does not, else 1."""
    with tempfile.TemporaryDirectory(prefix="transom-compile-") as name:
        form, database = Path(name) / "form.json", f"sqlite:///{name}/ledger.sqlite"
        form.write_text(json.dumps(NOTHING_FITS), encoding="utf-8")
        steps: tuple[tuple[object, ...], ...] = (
            ("db", "upgrade"),
            ("catalogue", "load", FIXTURES / "catalogue.toml"),
            ("hulls", "import", FIXTURES / "hulls.csv"),
            ("records", "import", FIXTURES / "fleet.jsonl"),
            ("answer", FIXTURES / "enquiries" / "demo.eml", "--out", Path(name) / "papers"),
            ("answer", form),
        )
        ended = [status([*map(str, step), "--db", database]) for step in steps]
    return 0 if ended == [0, 0, 0, 0, 0, 1] else 1


if __name__ == "__main__":
    sys.exit(main())
