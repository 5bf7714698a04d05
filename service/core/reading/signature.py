"""Where a letter takes leave: from there on its lines are the signature."""

from __future__ import annotations

from service.core.reading.lexis import Matcher, Word, fold, words_of
from service.core.reading.lines import Line, Sender

SIGN_OFF_WORDS = 5
SIGNATURE_LINES = 10
LATE, LAST, MOST_WORDS = 2, 3, 8


def signed(clean: str, lines: list[Line], matcher: Matcher, sender: Sender) -> list[Line]:
    """Mark the signature: from a sign-off, "--" or the sender's own name to the end of the writer's own words."""
    own = [i for i, line in enumerate(lines) if line.zone == "own" and clean[line.start : line.end].strip()]
    name = frozenset(w.fold for w in words_of(sender[0] or "") if len(w.fold) > 1)
    first = None
    for rank, i in enumerate(own):
        raw = clean[lines[i].start : lines[i].end].strip()
        left = len(own) - rank
        words = words_of(raw)
        if raw in ("--", "-- ", "—") or (
            left <= SIGNATURE_LINES and _signs_off(raw, words, matcher, late=rank >= LATE)
        ):
            first = i
            break
        if left <= LAST and name and _begins_with(words, name):
            first = i
            break
        if left <= SIGNATURE_LINES and 0 < len(words) <= 4 and name and _is_name(raw, name):  # noqa: PLR2004 - a name
            first = i
            break
    if first is None:
        return lines
    return [
        Line(ln.start, ln.end, ln.depth, "signature") if i >= first and ln.zone == "own" else ln
        for i, ln in enumerate(lines)
    ]


def _signs_off(raw: str, words: list[Word], matcher: Matcher, *, late: bool) -> bool:
    """Say whether a line takes leave; thanks do where nothing else stands with them and something was said before."""
    if not 0 < len(words) <= SIGN_OFF_WORDS:
        return False
    found = matcher.marks(raw, words)
    if not found or raw[: found[0].start].strip():
        return False
    thanks = any(m.concept == "SIGN_OFF" and m.start == found[0].start for m in found) and late
    return found[0].concept == "SIGN_OFF" or (thanks and not raw[found[0].end :].strip(" ,.!"))


def _begins_with(words: list[Word], name: frozenset[str]) -> bool:
    """Say whether one of the last lines begins with the sender's names and goes on: "Txomin Arrieta - Bermeo - 655 501 082"."""
    return 1 < len(words) <= MOST_WORDS and {w.fold for w in words[:2]} <= name


def _is_name(raw: str, name: frozenset[str]) -> bool:
    words = [fold(w.fold) for w in words_of(raw)]
    return words[0] in name and all(w in name or len(w) == 1 for w in words)
