"""What the store says when it cannot work: what, where, and how to mend it."""

# ruff: noqa: N818 - each is named by what went wrong, as the messages name it

from __future__ import annotations


class StoreError(Exception):
    """Base of every error the store raises on purpose; its text is one line for people."""

    def __init__(self, what: str, where: str, mend: str) -> None:
        """Keep the three parts; the message is all of them."""
        super().__init__(f"{what}: {where}. {mend}")
        self.what, self.where, self.mend = what, where, mend


class BadAddress(StoreError, ValueError):
    """What was given as the database's address is none."""


class StoreAway(StoreError):
    """The database cannot be opened, is locked, read-only or damaged, or the disk is full."""


class NotOurs(StoreError):
    """A database (or a file) of another program. It was left as it was."""


class NewerSchema(StoreError):
    """A database made by a newer version of this program. It was left as it was."""


class NeedsUpgrade(StoreError):
    """A database that is empty, or made by an older version of this program. It was left as it was."""


class Conflict(StoreError):
    """What was to be written contradicts what is there; nothing was written."""
