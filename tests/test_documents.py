"""README and DEVELOPERS speak of commands, files and folders that are there."""

import re
from pathlib import Path

import pytest
from typer.testing import CliRunner

from service.cli.main import program

TOP = Path(__file__).parent.parent
README = (TOP / "README.md").read_text()
DEVELOPERS = (TOP / "DEVELOPERS.md").read_text()
COMMANDS = sorted(set(re.findall(r"`transom\s+([a-z]+(?:\s+(?:import|export|list|check|load|upgrade))?)", README)))


@pytest.mark.parametrize("command", COMMANDS)
def test_every_command_the_readme_names_is_there(command: str) -> None:
    assert CliRunner().invoke(program(command.split()), [*command.split(), "--help"]).exit_code == 0


def test_the_readme_names_enough_commands_for_this_test_to_mean_something() -> None:
    assert len(COMMANDS) >= 10


@pytest.mark.parametrize(
    "path", sorted(set(re.findall(r"`((?:core|flow|store|files|cli)/[a-z_/]+(?:\.py)?)`", DEVELOPERS)))
)
def test_every_module_the_developers_page_names_is_there(path: str) -> None:
    place = TOP / "service" / path
    assert place.exists() or place.with_suffix(".py").exists() or place.parent.with_suffix(".py").exists()


def test_the_picture_in_the_readme_is_there() -> None:
    (picture,) = re.findall(r"!\[[^\]]+\]\(([^)]+)\)", README)
    assert (TOP / picture).read_text().startswith("<svg")
