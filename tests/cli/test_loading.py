"""What a command loads: each large library costs every call that loads it between a tenth of a second and a whole one."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path
from typing import TYPE_CHECKING

from service.cli.main import COMMANDS, program

if TYPE_CHECKING:
    from tests.cli.conftest import Database

NOT_FOR_AN_ANSWER = {
    "alembic", "babel.messages", "ezdxf", "fastapi", "matplotlib", "pandas", "procrastinate", "psycopg", "pyarrow",
    "reportlab", "scipy.optimize", "scipy.stats", "statsmodels", "uvicorn", "xlsxwriter",
}  # fmt: skip
_RUN = "import sys; from service.cli.main import status; status(sys.argv[1:]); print(*sys.modules, file=sys.stderr)"


def loaded(*arguments: object) -> set[str]:
    """Return what is loaded once a command has been run in a process of its own."""
    command = [sys.executable, "-c", _RUN, *map(str, arguments)]
    ran = subprocess.run(command, capture_output=True, text=True, check=True)  # noqa: S603 - our own program
    return set(ran.stderr.splitlines()[-1].split())


def test_an_answer_loads_nothing_that_only_other_commands_need(database: Database, mail: Path) -> None:
    found = loaded("answer", mail, "--db", database.url, "--json")
    assert {"service.flow.answer", "numba"} <= found, "it was answered"
    assert found & NOT_FOR_AN_ANSWER == set()


def test_only_the_command_that_is_named_is_loaded() -> None:
    found = loaded("db", "--help")
    assert "service.cli.database" in found
    assert {f"service.cli.{module}" for module, _ in COMMANDS.values()} & found == {"service.cli.database"}
    assert [group.name for group in program(["db"]).registered_groups] == ["db"]
