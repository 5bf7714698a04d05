"""`transom answer`: the whole job.

It is begun before it is loaded: a copy of this process loads what answers are worked out with, while this one loads and
reads the message and then gets ready to write the papers. So nothing large is named at the head of this file.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from service.cli import faults, given, outbox
from service.cli.options import Db, Json, Seed, Source, opened, reading
from service.flow.beside import Copy, worth_a_copy

if TYPE_CHECKING:
    from service.core.answer import Answers
    from service.flow.reckon import Reckoner

FORM_SCHEMA = "boat-form"
ENGINE = "service.core.answer.compose"
"""The module that loads all that an answer is worked out with, compiled code among it."""

Out = Annotated[
    Path | None,
    typer.Option(
        "--out", metavar="DIR", help="Also write answer, reply, sheet, drawings and packing list as files there."
    ),
]


def answer(file: Source, out_: Out = None, seed: Seed = 1, json: Json = False, db: Db = None) -> None:
    """Answer a mail, a text or a boat form.

    Which boat, precedents, what fits and where, what is missing, the reply; enquiry and answer are kept.
    Exit status 1 where for a boat in it nothing fits; 0 where it asks nothing.
    """
    data, name = given.read(file)
    folder = outbox.ready(out_)
    with _aside(db, papers=folder is not None) as aside:
        found = _answered(data, name, folder, seed, db, aside)
    if json:
        from service.cli import out  # noqa: PLC0415 - loaded while the copy works

        out.document(found)
    else:
        _show(found, name)
    if any(one.suggestions and not one.fits for one in found.answers):
        raise typer.Exit(faults.NO)


@contextmanager
def _aside(db: str | None, *, papers: bool) -> Iterator[Copy | None]:
    """Yield a copy of this process that works answers out; None where this one does it as soon."""
    if not worth_a_copy(ENGINE):
        yield None
        return
    import service.bootstrap  # noqa: PLC0415 - both need it
    import service.files.read.messages  # noqa: F401, PLC0415 - the same

    copy = Copy(partial(_reckoner, db), meanwhile=_load_papers if papers else None)
    try:
        yield copy
    finally:
        copy.end()


@contextmanager
def _reckoner(db: str | None) -> Iterator[Reckoner]:
    """Yield what works answers out, with a moment of the database of its own."""
    from service.flow.reckon import Reckoner  # noqa: PLC0415 - large

    with reading(db) as uow:
        yield Reckoner(uow).ready()


def _load_papers() -> None:
    from service.flow.papers import load_writers  # noqa: PLC0415 - large

    load_writers()


def _answered(data: bytes, name: str, folder: Path | None, seed: int, db: str | None, aside: Copy | None) -> Answers:
    """Return the answers, kept; their papers are then in the folder."""
    from service import bootstrap  # noqa: PLC0415 - large
    from service.cli.progress import bar  # noqa: PLC0415 - the same
    from service.flow.answer import answer_file  # noqa: PLC0415 - the same

    with faults.reading(name, FORM_SCHEMA), opened(db) as store, bar("answer"):
        found = answer_file(store, data, name, now=bootstrap.clock(), seed=seed, aside=aside)
        if folder is not None:
            with store.reading() as uow:
                outbox.put(folder, uow, found, aside)
    return found


def _show(found: Answers, name: str) -> None:
    from service.cli import out  # noqa: PLC0415 - large
    from service.cli.pages import answer as page  # noqa: PLC0415 - the same
    from service.cli.sheet import Sheet  # noqa: PLC0415 - the same

    with out.page() as console:
        sheet = Sheet(console)
        for number, one in enumerate(found.answers, start=1):
            several = f", boat {number} of {len(found.answers)}" if len(found.answers) > 1 else ""
            page.show(sheet, one, name + several)
        if not found.answers:
            sheet.title(name, f"{found.kind}: asks for no fit")
