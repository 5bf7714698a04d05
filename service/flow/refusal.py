"""What a use case says when it will not do what was asked: what, and how to mend it."""

from __future__ import annotations

from collections.abc import Sequence

from service.core.revision import Clash


class Refused(ValueError):  # noqa: N818 - named for what it is
    """Asked for what cannot be done so; the message says why and what can. Nothing was changed."""


class Moved(Refused):
    """A record was changed by somebody else meanwhile; `clashes` holds every field, both values, who and when."""

    def __init__(self, reference: str, expected: int, head: int, clashes: Sequence[Clash]) -> None:
        """Keep what changed; the message names it field by field."""
        self.reference, self.expected, self.head, self.clashes = reference, expected, head, tuple(clashes)
        lines = [
            f"  {c.field}: was {_said(c.was)}, {c.who} made it {_said(c.now)} at {c.at:%Y-%m-%d %H:%M} UTC; "
            f"yours is {_said(c.yours)}"
            for c in self.clashes
        ]
        what = f"record {reference} was changed meanwhile: it is at revision {head}, you worked on {expected}"
        mend = f"Nothing was written. Look at it, then do yours again with --expect {head} (or leave it)"
        super().__init__("\n".join([what, *(lines or ["  and changed back again"]), mend]))


def _said(value: object) -> str:
    return "empty" if value is None else repr(value) if isinstance(value, str) else str(value)
