"""Options that every command shares, and what is opened from them."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING, Annotated

import typer

if TYPE_CHECKING:
    from service.store.unit import Store, UnitOfWork

Json = Annotated[bool, typer.Option("--json", help="Print one JSON document on stdout instead of a page.")]
Db = Annotated[
    str | None,
    typer.Option("--db", metavar="URL", help="The database; else TRANSOM_DB, else a file in your data folder."),
]
Preview = Annotated[bool, typer.Option("--preview", help="Say what would be done, and write nothing.")]
Source = Annotated[str, typer.Argument(metavar="FILE", help="The file to read; - reads standard input.")]
Seed = Annotated[int, typer.Option("--seed", min=0, help="What the draws start from; the same gives the same.")]
FormFile = Annotated[str, typer.Argument(metavar="FORM", help="A boat form (JSON); - reads standard input.")]


@contextmanager
def opened(db: str | None) -> Iterator[Store]:
    """Yield the database, looked at and found fit for work; it is let go of afterwards."""
    from service import bootstrap  # noqa: PLC0415 - it loads what opens databases, and a command is known before it needs one

    store = bootstrap.open_store(bootstrap.settings(db))
    try:
        yield store
    finally:
        store.close()


@contextmanager
def reading(db: str | None) -> Iterator[UnitOfWork]:
    """Yield a begun unit of work that only reads."""
    with opened(db) as store, store.reading() as uow:
        yield uow


@contextmanager
def writing(db: str | None) -> Iterator[UnitOfWork]:
    """Yield a begun unit of work that may write; the use case commits."""
    with opened(db) as store, store.writing() as uow:
        yield uow


def group(help_: str) -> typer.Typer:
    """Return a group of commands in the program's plain manner."""
    return typer.Typer(
        help=help_,
        no_args_is_help=True,
        add_completion=False,
        rich_markup_mode=None,
        pretty_exceptions_enable=False,
    )
