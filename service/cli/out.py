"""Where results go: JSON or pages to stdout, everything else to stderr."""

from __future__ import annotations

import io
import json
import os
import shutil
import sys
from collections.abc import Iterator
from contextlib import contextmanager

import typer
from pydantic import BaseModel
from rich.console import Console

from service.cli.faults import CANNOT_WORK
from service.cli.plain import as_json, plain

WIDTH = 100


def document(value: object, *, indent: int | None = 2) -> None:
    """Print one JSON document on stdout, in UTF-8 whatever the terminal's own encoding is."""
    shaped = json.loads(value.model_dump_json(by_alias=True)) if isinstance(value, BaseModel) else value
    raw(as_json(shaped, indent=indent).encode() + b"\n")


def raw(data: bytes) -> None:
    """Write bytes to stdout as they are."""
    with _reader_there():
        sys.stdout.flush()
        sys.stdout.buffer.write(data)
        sys.stdout.buffer.flush()


def note(text: str) -> None:
    """Print a remark on stderr."""
    sys.stderr.write(f"{plain(text)}\n")


@contextmanager
def page() -> Iterator[Console]:
    """Yield what a page is printed with; it goes to stdout as a whole at the end.

    At most 100 columns, no colours at all, weight only for a terminal, and no blanks at the ends of lines.
    """
    terminal = sys.stdout.isatty()
    written = io.StringIO()
    yield Console(
        file=written,
        width=min(WIDTH, shutil.get_terminal_size().columns) if terminal else WIDTH,
        force_terminal=terminal,
        no_color=True,  # black on white: weight sets things apart
        markup=False,
        highlight=False,
        emoji=False,
    )
    text = "\n".join(line.rstrip() for line in written.getvalue().splitlines()) + "\n"
    raw(text.encode(sys.stdout.encoding or "utf-8", "replace"))


@contextmanager
def _reader_there() -> Iterator[None]:
    """End quietly where whoever read the output has gone away (`| head`)."""
    try:
        yield
    except BrokenPipeError:
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        raise typer.Exit(CANNOT_WORK) from None


def say(text: str) -> None:
    """Print one line on stdout, however long."""
    raw(f"{plain(text)}\n".encode(sys.stdout.encoding or "utf-8", "replace"))
