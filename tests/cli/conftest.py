from __future__ import annotations

import hashlib
import io
import json
import shutil
import sqlite3
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest

from service.cli.main import status
from service.store.schema import VERSION_TABLE

FIXTURES = Path(__file__).resolve().parents[2] / "seed_fixtures"


@dataclass(frozen=True)
class Ran:
    """What a command did: its exit status, stdout and stderr."""

    status: int
    out: str
    err: str

    @property
    def document(self) -> Any:  # noqa: ANN401 - JSON is any
        return json.loads(self.out)


Run = Callable[..., Ran]


@pytest.fixture
def run(monkeypatch: pytest.MonkeyPatch, capsysbinary: pytest.CaptureFixture[bytes], tmp_path: Path) -> Run:
    """Run a command in a process environment that knows no database and no home but an empty one."""
    home = tmp_path / "home"
    home.mkdir()
    for name in ("TRANSOM_DB", "TRANSOM_DEBUG", "XDG_DATA_HOME", "FORCE_COLOR", "COLUMNS"):
        monkeypatch.delenv(name, raising=False)
    monkeypatch.setenv("HOME", str(home))

    def one(*arguments: object, stdin: bytes = b"") -> Ran:
        monkeypatch.setattr("sys.stdin", io.TextIOWrapper(io.BytesIO(stdin)))
        capsysbinary.readouterr()
        ended = status([str(argument) for argument in arguments])
        out, err = capsysbinary.readouterr()
        return Ran(ended, out.decode(), err.decode())

    return one


@pytest.fixture(scope="session")
def seeded(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return a database with the demo maker's catalogue, models and fleet, made by the commands themselves."""
    file = tmp_path_factory.mktemp("seeded") / "seeded.sqlite"
    steps = (
        ("db", "upgrade"),
        ("catalogue", "load", FIXTURES / "catalogue.toml"),
        ("hulls", "import", FIXTURES / "hulls.csv"),
        ("records", "import", FIXTURES / "fleet.jsonl"),
    )
    for step in steps:
        assert status([*map(str, step), "--db", f"sqlite:///{file}", "--json"]) == 0, step
    return file


@dataclass(frozen=True)
class Database:
    file: Path

    @property
    def url(self) -> str:
        return f"sqlite:///{self.file}"

    @property
    def digest(self) -> str:
        """Return the hash of all that stands in the file and beside it: a write-ahead log counts."""
        seen = hashlib.sha256()
        for part in sorted(self.file.parent.glob(f"{self.file.name}*")):
            if not part.name.endswith("-shm") and part.stat().st_size:
                seen.update(part.read_bytes())
        return seen.hexdigest()


@pytest.fixture
def database(seeded: Path, tmp_path: Path) -> Database:
    """Return a copy of the seeded database, for this test alone."""
    folder = tmp_path / "db"
    folder.mkdir()
    return Database(Path(shutil.copy(seeded, folder / "ledger.sqlite")))


@pytest.fixture
def newer(database: Database) -> Database:
    """Return a database that a later version of the program has made."""
    with sqlite3.connect(database.file) as connection:
        connection.execute(f"UPDATE {VERSION_TABLE} SET version_num = '9999'")  # noqa: S608 - a constant
    connection.close()
    return database


FORM: dict[str, Any] = {
    "schema": "boat-form/1",
    "boat": {
        "model": "Tarnholt 36",
        "year": 1991,
        "loa_mm": 10980,
        "displacement_kg": 7100,
        "hull_material": "frp_solid",
        "stern": "reverse",
    },
    "transom": {"top_height_mm": 985, "rake_deg": -23, "width_top_mm": "1.72 m"},
    "main_rudder": {"hung": "inboard"},
    "methods": {"*": "tape"},
}


@pytest.fixture
def form(tmp_path: Path) -> Path:
    """Return a boat form of which the fleet knows sister ships."""
    file = tmp_path / "form.json"
    file.write_text(json.dumps(FORM), encoding="utf-8")
    return file


@pytest.fixture
def put(tmp_path: Path) -> Callable[..., Path]:
    """Write the form above with parts replaced, and return its file."""

    def written(**parts: object) -> Path:
        file = tmp_path / "changed.json"
        file.write_text(json.dumps({**FORM, **parts}), encoding="utf-8")
        return file

    return written


@pytest.fixture
def mail() -> Path:
    """Return the enquiry that ships with the project."""
    return FIXTURES / "enquiries" / "demo.eml"


@pytest.fixture
def fixtures() -> Path:
    """Return the folder of the demo maker's files."""
    return FIXTURES
