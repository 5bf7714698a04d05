"""What a command loads: each large library costs every call that loads it between a tenth of a second and a whole one."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from service.cli.main import COMMANDS, program

if TYPE_CHECKING:
    from tests.cli.conftest import Database

NOT_FOR_AN_ANSWER = {
    "alembic", "babel.messages", "ezdxf", "fastapi", "matplotlib", "numba.cpython.unicode", "numba.np.linalg", "pandas",
    "procrastinate", "psycopg", "pyarrow", "reportlab", "scipy.linalg", "scipy.optimize", "scipy.stats", "statsmodels",
    "uvicorn", "xlsxwriter",
}  # fmt: skip
_RUN = """
import os, sys
os.cpu_count = lambda: int(sys.argv[1])
from service.cli.main import status
status(sys.argv[2:])
print(*sys.modules, file=sys.stderr)
"""


def loaded(*arguments: object, cores: int = 2) -> set[str]:
    """Return what is loaded once a command has been run in a process of its own."""
    command = [sys.executable, "-c", _RUN, str(cores), *map(str, arguments)]
    ran = subprocess.run(command, capture_output=True, text=True, check=True)  # noqa: S603 - our own program
    return set(ran.stderr.splitlines()[-1].split())


def test_an_answer_loads_nothing_that_only_other_commands_need(database: Database, mail: Path) -> None:
    loaded("answer", mail, "--db", database.url, cores=1)  # what is not compiled yet is compiled, which loads much
    found = loaded("answer", mail, "--db", database.url, "--json", cores=1)
    assert {"service.flow.answer", "numba"} <= found, "it was answered"
    assert found & NOT_FOR_AN_ANSWER == set()


@pytest.mark.skipif(sys.platform != "linux", reason="a copy of a process may not be safe elsewhere")
def test_where_there_is_a_second_core_the_engine_is_loaded_there(
    database: Database, mail: Path, tmp_path: Path
) -> None:
    found = loaded("answer", mail, "--out", tmp_path, "--db", database.url, "--json")
    assert "service.files.write.sheet_pdf" in found, "it was answered"
    assert found & {"numba", "service.core.answer.compose", "service.core.drawing.scene"} == set()
    assert (tmp_path / "1-drawing.svg").read_bytes().startswith(b"<svg"), "the copy said what there is to draw"


def test_a_message_is_read_without_the_engine(database: Database, mail: Path) -> None:
    assert "numba" not in loaded("read", mail, "--db", database.url)


def test_only_the_command_that_is_named_is_loaded() -> None:
    found = loaded("db", "--help")
    assert "service.cli.database" in found
    assert {f"service.cli.{module}" for module, _ in COMMANDS.values()} & found == {"service.cli.database"}
    assert [group.name for group in program(["db"]).registered_groups] == ["db"]
