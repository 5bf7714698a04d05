"""Every command is there, explains itself, and takes --json and --db."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING, Any

import pytest
import typer.main

from service.cli.main import program

if TYPE_CHECKING:
    from tests.cli.conftest import Run

# Commands of CONTRACT's "Command line" that this program has so far.
ASKED = {
    "read", "resolve", "recall", "fit", "answer", "records import", "records export",
    "records find", "records show", "records history", "records propose", "records step", "records outcome",
    "records measure", "records correct", "records restore", "records merge", "report quality", "report unmet",
    "report accuracy", "report demand",
    "attachments add", "attachments list", "attachments check", "attachments export",
    "jobs list", "jobs show", "jobs cancel", "jobs resume", "jobs work",
    "imports list", "imports show", "imports undo", "imports resume", "hulls import", "hulls list",
    "hulls show", "hulls alias", "hulls merge", "hulls unmerge", "hulls split", "hulls duplicates", "hulls distinct",
    "hulls undo", "hulls log",
    "catalogue check", "catalogue load", "catalogue diff", "db upgrade", "db check", "recheck", "evaluate",
    "recall-weights refit", "recall-weights show", "recall-weights forget", "schema",
    "backup write", "backup verify", "restore", "serve", "keys create", "keys list", "keys revoke",
    "users add", "users list", "users reset", "users close", "users open",
    "people find", "people export", "people erase", "people retention",
}  # fmt: skip


def _leaves(command: Any, path: tuple[str, ...] = ()) -> Iterator[tuple[tuple[str, ...], Any]]:  # noqa: ANN401 - typer's own
    if hasattr(command, "commands"):
        for name, inner in command.commands.items():
            yield from _leaves(inner, (*path, name))
    else:
        yield path, command


LEAVES = dict(_leaves(typer.main.get_command(program())))


def test_the_commands_are_those_of_the_contract() -> None:
    assert {" ".join(path) for path in LEAVES} == ASKED


@pytest.mark.parametrize("path", LEAVES, ids=" ".join)
def test_each_command_explains_itself_and_takes_json_and_db(path: tuple[str, ...], run: Run) -> None:
    options = {name for parameter in LEAVES[path].params for name in parameter.opts}
    assert {"--json", "--db"} <= options
    for parameter in LEAVES[path].params:
        if parameter.name != "help":
            assert parameter.help, f"{parameter.name} says nothing of itself"
    ran = run(*path, "--help")
    assert ran.status == 0
    assert "--json" in ran.out
    assert ran.err == ""


@pytest.mark.parametrize("group", sorted({path[0] for path in LEAVES if len(path) > 1}))
def test_each_group_explains_itself(group: str, run: Run) -> None:
    ran = run(group, "--help")
    assert ran.status == 0
    for path in LEAVES:
        if path[0] == group:
            assert path[1] in ran.out


@pytest.mark.parametrize(
    "arguments",
    [
        ("anwser", "x.eml"),  # no such command
        ("answer",),  # an argument is missing
        ("answer", "x.eml", "--outt", "d"),  # no such option
        ("fit", "form.json", "--gear", "a"),  # options are missing
        ("resolve", "Tarnholt 36", "--year", "old"),  # no whole number
        ("records", "imprt", "x"),
        ("answer", "x.eml", "--seed", "-1"),
    ],
)
def test_bad_usage_ends_with_2_and_a_message_on_stderr(arguments: tuple[str, ...], run: Run) -> None:
    ran = run(*arguments)
    assert ran.status == 2
    assert ran.out == ""
    assert "Error" in ran.err
    assert "Traceback" not in ran.err


def test_a_mistyped_command_is_told_its_neighbour(run: Run) -> None:
    assert "answer" in run("anwser", "x.eml").err
