"""What every reader raises for bytes it cannot read."""

from __future__ import annotations


class Unreadable(ValueError):  # noqa: N818 - reads as what it says: the file is unreadable
    """Input that cannot be read; the message says what is wrong, where, and how to mend it."""
