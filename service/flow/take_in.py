"""Take in what somebody sent: read it, work out what there would be to answer, and keep it as enquiries."""

from __future__ import annotations

import zipfile
from collections.abc import Sequence
from dataclasses import dataclass, field

from service.core.boat import Asked, BoatForm, Contact
from service.core.form import FormError
from service.core.reading.letter import Letter
from service.files.read.attached import forms_in
from service.files.read.enquiry import read_enquiry
from service.files.read.errors import Unreadable
from service.flow.answer import Worked, keep_answers, work_out
from service.store.happening import Actor
from service.store.unit import Store, UnitOfWork

GOES_ON, CAME_FROM = "they wrote again; it goes on in ", "goes on from "
"""How the notes begin that tie a letter to an earlier one of its thread; the other enquiry's id follows."""


@dataclass(frozen=True)
class Taken:
    """What came of it. `kind` is what it was read as, `known` says that it had come before.

    No `enquiries` where it asks for nothing; `text` is then what it says.
    """

    kind: str
    enquiries: tuple[str, ...] = ()
    known: bool = False
    text: str = field(default="", repr=False)


def take_in(
    store: Store, data: bytes, name: str, *, actor: Actor, dealer: str | None = None, anyway: bool = False
) -> Taken:
    """Keep what asks for a fit, one enquiry a boat, and commit. What came before leads to the enquiries there are.

    `dealer`: whose people took it in, None for the maker's own. `anyway`: keep also what asks for nothing, with an empty
    form. Unreadable, FormError or NoCatalogueError, and nothing is kept.
    """
    with store.reading() as uow:
        now = uow.now()
        pages = _tables(data, name) or [data]
        known = _known(uow, pages, name, dealer)
    if known:
        return Taken("enquiry", known, known=True)
    worked = [work_out(store, page, name, now=now, dealer=dealer, channel="web") for page in pages]
    kind = worked[0].reading.kind
    if not anyway and not any(one.answers for one in worked):
        return Taken(kind, text=worked[0].text)
    with store.writing(actor) as uow:
        known = _known(uow, pages, name, dealer)
        if known:
            return Taken(kind, known, known=True)
        kept: list[str] = []
        for one in worked:
            answers = keep_answers(uow, one, owner=dealer or "").answers
            fresh = [str(answer.enquiry) for answer in answers]
            _tie(uow, one, fresh, who=actor.who, owner=dealer or "")
            kept += fresh or [_bare(uow, one, dealer)]
        uow.commit()
    return Taken(kind, tuple(kept))


def _tables(data: bytes, name: str) -> list[bytes]:
    """Return the boat forms of a table, each as JSON; none where it is none. A single JSON object is read as it stands."""
    if data.removeprefix(b"\xef\xbb\xbf").lstrip().startswith(b"{"):
        return []
    try:
        forms = forms_in(data)
    except (zipfile.BadZipFile, RecursionError) as problem:
        raise Unreadable(
            f"{name}: this workbook cannot be opened ({problem}); save it again, or send the text"
        ) from None
    except FormError:
        raise
    except Unreadable:
        return []
    except ValueError:
        if data.startswith(b"PK\x03\x04"):
            raise
        return []  # a letter that only looks like a table
    return [form.model_dump_json(by_alias=True, exclude_none=True).encode() for form in forms]


def _known(uow: UnitOfWork, pages: Sequence[bytes], name: str, dealer: str | None) -> tuple[str, ...]:
    found: list[str] = []
    for page in pages:
        got = read_enquiry(page, name)
        if isinstance(got, Letter) and got.message_id:
            found += [one.id for one in uow.enquiries.in_thread([got.message_id], dealer)]
        else:
            text = got.text if isinstance(got, Letter) else page.decode("utf-8", "replace")
            found += uow.enquiries.of_words(text, dealer)
    return tuple(dict.fromkeys(found))


def _tie(uow: UnitOfWork, worked: Worked, fresh: Sequence[str], *, who: str, owner: str) -> None:
    """Note at both ends that a letter goes on from an earlier enquiry about the same boat, which then waits for nobody."""
    if worked.letter is None:
        return
    before = [name for name in worked.letter.thread if name != worked.letter.message_id]
    earlier = uow.enquiries.in_thread(before, owner)
    for boat, new in enumerate(fresh):
        last = next((one for one in reversed(earlier) if one.boat == boat), None)
        if last is not None:
            uow.steps.add(last.id, "noted", who=who, said=f"{GOES_ON}{new}", waits="nobody")
            uow.steps.add(new, "noted", who=who, said=f"{CAME_FROM}{last.id}")


def _bare(uow: UnitOfWork, worked: Worked, dealer: str | None) -> str:
    """Keep what asks for nothing with what its headers say of who wrote it."""
    letter = worked.letter
    asked = Asked(received=worked.received, channel="web" if dealer else None, dealer=dealer)
    who = Contact(name=letter.sender_name, email=letter.reply_to or letter.sender_address) if letter else Contact()
    return uow.enquiries.add(
        BoatForm(enquiry=asked, contact=who),
        source=worked.text,
        received=worked.received,
        message_id=letter.message_id if letter else None,
        owner=dealer or "",
    )
