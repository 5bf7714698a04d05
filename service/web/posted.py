"""Forms as they were sent: fields and files, read whole before a page works with them."""

from __future__ import annotations

import hmac
from dataclasses import dataclass, field
from typing import Annotated

from fastapi import Depends, Request
from starlette.datastructures import UploadFile

from service.flow.sign_in import Visitor
from service.web.guard import ForeignRequest, see_origin
from service.web.who import signed_in

MOST_FIELDS, MOST_FILES, LONGEST_FIELD = 2_000, 20, 30_000_000


@dataclass(frozen=True)
class File:
    """A file that was sent: the name it had (never a path), and its bytes."""

    name: str
    content: bytes


@dataclass(frozen=True)
class Posted:
    """The fields of a form, in the order they came, and its files. A file field that was left empty is not there."""

    fields: tuple[tuple[str, str], ...] = ()
    files: tuple[tuple[str, File], ...] = field(default=(), repr=False)

    def text(self, name: str) -> str:
        """Return a field without space about it; empty where it was not sent."""
        return next((value.strip() for key, value in self.fields if key == name), "")

    def all(self, name: str) -> list[str]:
        """Return every value of a field that may be sent several times, without empty ones."""
        return [value.strip() for key, value in self.fields if key == name and value.strip()]

    def under(self, prefix: str) -> dict[str, str]:
        """Return the fields whose names begin so, by the rest of their names."""
        return {key.removeprefix(prefix): value.strip() for key, value in self.fields if key.startswith(prefix)}

    def file(self, name: str) -> File | None:
        """Return the first file of that field."""
        return next((one for key, one in self.files if key == name), None)


async def unsigned(request: Request) -> Posted:
    """Return the form somebody sent who need not be signed in. ForeignRequest where another site sent it."""
    see_origin(request)
    form = await request.form(max_files=MOST_FILES, max_fields=MOST_FIELDS, max_part_size=LONGEST_FIELD)
    fields, files = [], []
    for name, value in form.multi_items():
        if isinstance(value, UploadFile):
            content = await value.read()
            if value.filename or content:
                files.append((name, File((value.filename or "file").replace("\\", "/").rpartition("/")[2], content)))
        else:
            fields.append((name, value.replace("\r\n", "\n")))
    await form.close()
    return Posted(tuple(fields), tuple(files))


async def signed(
    request: Request, by: Annotated[Visitor, Depends(signed_in)], form: Annotated[Posted, Depends(unsigned)]
) -> Posted:
    """Return the form, which carries the word of this session. ForeignRequest where it does not."""
    given = form.text("csrf") or request.headers.get("x-csrf", "")
    if not hmac.compare_digest(given.encode(), by.csrf.encode()):
        raise ForeignRequest
    return form


Form = Annotated[Posted, Depends(signed)]
"""A form of somebody signed in: every route that changes something takes it."""
