"""Who does it: what every command that changes something asks."""

from __future__ import annotations

import getpass
import os
from typing import Annotated

import typer

from service.cli import faults

Who = Annotated[str | None, typer.Option("--who", help="Who does it; else TRANSOM_WHO, else who is logged in.")]


def doer(said: str | None) -> str:
    """Return who does it: as said, else TRANSOM_WHO, else the name logged in with. BadInput where nobody is."""
    named = said or os.environ.get("TRANSOM_WHO", "").strip()
    if named:
        return named
    try:
        return getpass.getuser()
    except (KeyError, OSError):  # a user without a name, as in a container
        raise faults.BadInput("nobody is logged in; say with --who (or TRANSOM_WHO) who does it") from None
