"""Which of several media types does the client want? See RFC 9110, section 12.5.1."""

from __future__ import annotations

from collections.abc import Sequence

from service.api.problems import Problem


def chosen(accept: str | None, offered: Sequence[str]) -> str:
    """Return the offered media type that `accept` likes best, the first among equals. The problem is `not-acceptable`.

    >>> chosen("text/*;q=0.5, image/svg+xml", ("application/json", "text/plain", "image/svg+xml"))
    'image/svg+xml'
    >>> chosen(None, ("application/json", "text/plain"))
    'application/json'
    """
    wanted = [_range(part) for part in (accept or "*/*").split(",") if part.strip()]
    scored = [(_quality(kind, wanted), -place, kind) for place, kind in enumerate(offered)]
    best = max(scored)
    if best[0] <= 0:
        raise Problem("not-acceptable", f"this can be had as {', '.join(offered)}")
    return best[2]


def _range(part: str) -> tuple[str, float]:
    kind, *parameters = (piece.strip().lower() for piece in part.split(";"))
    quality = next((text[2:] for text in parameters if text.startswith("q=")), "1")
    try:
        return kind, min(max(float(quality), 0.0), 1.0)
    except ValueError:
        return kind, 0.0


def _quality(kind: str, wanted: Sequence[tuple[str, float]]) -> float:
    """Return what the most exact range that covers `kind` says of it."""
    for name in (kind, f"{kind.partition('/')[0]}/*", "*/*"):
        found = [quality for range_, quality in wanted if range_ == name]
        if found:
            return max(found)
    return 0.0
