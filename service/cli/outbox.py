"""What `--out DIR` leaves behind: the answers as JSON, and for each boat its own answer and every paper of it."""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import IO, TYPE_CHECKING

from service.cli.faults import BadInput

if TYPE_CHECKING:
    from service.core.answer import Answers
    from service.flow.beside import Copy
    from service.store.unit import UnitOfWork


def ready(folder: Path | None) -> Path | None:
    """Return the folder, made where there is none, before any work is done. BadInput where a file is in its place."""
    if folder is None:
        return None
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except (FileExistsError, NotADirectoryError):
        raise BadInput(f"--out {folder}: this is a file, no folder. Name a folder") from None
    return folder


def put(folder: Path, uow: UnitOfWork, found: Answers, aside: Copy | None = None) -> None:
    """Write `answers.json`, and `1-answer.json`, `1-reply.txt`, `1-sheet.pdf` and so on for the first boat.

    `aside` is as for `papers`.
    """
    from service.flow.papers import papers  # noqa: PLC0415 - large, and reports write without it

    _write(folder / "answers.json", found.model_dump_json(by_alias=True, indent=2) + "\n")
    for number, one in enumerate(found.answers, start=1):
        _write(folder / f"{number}-answer.json", one.model_dump_json(by_alias=True, indent=2) + "\n")
        for paper in papers(uow, one, aside=aside):
            write_bytes(folder / f"{number}-{paper.name}", paper.content)


def _write(path: Path, text: str) -> None:
    write_bytes(path, text.encode("utf-8", "replace"))


def write_bytes(path: Path, data: bytes) -> None:
    """Write all of it or nothing: a file half written is never found under its name."""
    with written(path) as stream:
        stream.write(data)


@contextmanager
def written(path: Path) -> Iterator[IO[bytes]]:
    """Yield a stream whose content stands under the name once it is whole, and is gone where something goes wrong."""
    half = path.with_name(f".{path.name}.{os.getpid()}")
    try:
        with half.open("wb") as stream:
            yield stream
        half.replace(path)
    finally:
        half.unlink(missing_ok=True)
