"""The command `transom`. It loads what the command asked for needs, and nothing else."""

from __future__ import annotations

import gc
import sys
from collections.abc import Mapping, Sequence
from importlib import import_module

from typer import Typer

PROGRAM = "transom"
DONE, STOPPED = 0, 130
MANY = 100_000
"""Values made before the collector of reference cycles looks: loading makes hundreds of thousands that all stay."""

COMMANDS: Mapping[str, tuple[str, str]] = {
    "read": ("reading", "read"),
    "resolve": ("resolving", "resolve"),
    "recall": ("fitting", "recall"),
    "fit": ("fitting", "fit"),
    "answer": ("answering", "answer"),
    "records": ("records", "commands"),
    "attachments": ("attaching", "commands"),
    "imports": ("importing", "commands"),
    "jobs": ("jobs", "commands"),
    "hulls": ("hulls", "commands"),
    "catalogue": ("catalogue", "commands"),
    "db": ("database", "commands"),
    "backup": ("backup", "commands"),
    "restore": ("backup", "restore"),
    "recheck": ("rechecking", "recheck"),
    "report": ("reports", "commands"),
    "evaluate": ("evaluate", "evaluate"),
    "recall-weights": ("evaluate", "commands"),
    "serve": ("serve", "serve"),
    "keys": ("keys", "commands"),
    "users": ("users", "commands"),
    "people": ("people", "commands"),
    "schema": ("schemas", "schema"),
}
"""By its name, in which module of this package a command or a group of commands stands, and as what."""


def program(arguments: Sequence[str] = ()) -> Typer:
    """Return the command line as far as `arguments` need it: the command that comes first; all where none does."""
    from service.cli.options import group  # noqa: PLC0415 - loading starts where something is asked for

    named = arguments[0] if arguments else ""
    app = group(
        "From an enquiry to a configuration that fits: which boat, what her sisters carry, what fits, what to ask."
    )
    app.callback()(lambda: None)  # one command alone would be taken for the whole program
    for name in (named,) if named in COMMANDS else COMMANDS:
        module, what = COMMANDS[name]
        found = getattr(import_module(f"service.cli.{module}"), what)
        if isinstance(found, Typer):
            app.add_typer(found, name=name)
        else:
            app.command(name)(found)
    return app


def status(arguments: Sequence[str]) -> int:
    """Run the command and return its exit status.

    0 done; 1 the answer is no; 2 bad usage or input; 3 the service could not work. A message for the last two is on
    stderr.
    """
    try:
        program(arguments)(list(arguments), prog_name=PROGRAM)
    except SystemExit as end:
        return end.code if isinstance(end.code, int) else DONE
    except KeyboardInterrupt:
        return STOPPED
    except Exception as error:  # noqa: BLE001 - whatever went wrong is told in one line, with its own exit status
        from service.cli import faults  # noqa: PLC0415 - it knows the errors of all parts, and most calls end without one

        return faults.tell(error)
    return DONE


def run() -> None:
    """Run the command line of this process. Nothing large has been loaded before."""
    gc.set_threshold(MANY)
    ended = status(sys.argv[1:])
    gc.freeze()  # all of it goes with the process: looking for cycles among it would take as long as many a command
    sys.exit(ended)
