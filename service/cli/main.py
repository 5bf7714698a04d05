"""The command `transom`."""

from __future__ import annotations

import sys
from collections.abc import Sequence

from service.cli import (
    attaching,
    backup,
    catalogue,
    database,
    evaluate,
    faults,
    fitting,
    hulls,
    importing,
    jobs,
    keys,
    people,
    reading,
    rechecking,
    records,
    reports,
    resolving,
    schemas,
    serve,
    users,
)
from service.cli.options import group

PROGRAM = "transom"
STOPPED = 130

app = group("From an enquiry to a configuration that fits: which boat, what her sisters carry, what fits, what to ask.")
app.command("read")(reading.read)
app.command("resolve")(resolving.resolve)
app.command("recall")(fitting.recall)
app.command("fit")(fitting.fit)
app.command("answer")(fitting.answer)
app.add_typer(records.commands, name="records")
app.add_typer(attaching.commands, name="attachments")
app.add_typer(importing.commands, name="imports")
app.add_typer(jobs.commands, name="jobs")
app.add_typer(hulls.commands, name="hulls")
app.add_typer(catalogue.commands, name="catalogue")
app.add_typer(database.commands, name="db")
app.add_typer(backup.commands, name="backup")
app.command("restore")(backup.restore)
app.command("recheck")(rechecking.recheck)
app.add_typer(reports.commands, name="report")
app.command("evaluate")(evaluate.evaluate)
app.add_typer(evaluate.commands, name="recall-weights")
app.command("serve")(serve.serve)
app.add_typer(keys.commands, name="keys")
app.add_typer(users.commands, name="users")
app.add_typer(people.commands, name="people")
app.command("schema")(schemas.schema)


def status(arguments: Sequence[str]) -> int:
    """Run the command and return its exit status.

    0 done; 1 the answer is no; 2 bad usage or input; 3 the service could not work. A message for the last two is on
    stderr.
    """
    try:
        app(list(arguments), prog_name=PROGRAM)
    except SystemExit as end:
        return end.code if isinstance(end.code, int) else faults.DONE
    except KeyboardInterrupt:
        return STOPPED
    except Exception as error:  # noqa: BLE001 - whatever went wrong is told in one line, with its own exit status
        return faults.tell(error)
    return faults.DONE


def run() -> None:
    """Run the command line of this process."""
    sys.exit(status(sys.argv[1:]))
