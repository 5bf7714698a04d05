"""A letter: what a mail or a text says, freed from its wrapping."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from service.core.boat import BoatForm


@dataclass(frozen=True)
class Attachment:
    """A file that came along; `forms`: the boat forms it holds; `shown`: its words stand in the letter's text.

    Any other file is only listed.
    """

    name: str | None
    type: str
    bytes: int
    sha256: str
    forms: tuple[BoatForm, ...] = ()
    shown: bool = False


@dataclass(frozen=True)
class Letter:
    """One message as plain text. `body` keeps quoted lines with their leading ">"; `bulk`: sent to a list."""

    body: str
    subject: str | None = None
    sender_name: str | None = None
    sender_address: str | None = None
    reply_to: str | None = None
    date: datetime | None = None
    message_id: str | None = None
    in_reply_to: str | None = None
    references: tuple[str, ...] = ()
    bulk: bool = False
    mailed: bool = False
    attachments: tuple[Attachment, ...] = ()

    @property
    def text(self) -> str:
        """The whole letter as one plain text, subject first."""
        return f"{self.subject}\n\n{self.body}" if self.subject else self.body

    @property
    def thread(self) -> tuple[str, ...]:
        """Message ids of the thread, oldest first, this message last; each once."""
        ids = (*self.references, self.in_reply_to, self.message_id)
        return tuple(dict.fromkeys(i for i in ids if i))
