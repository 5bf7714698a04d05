"""A letter's lines, each with its zone: whose words they are, and how deep they are quoted."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Literal

from service.core.reading.lexis import words_of

Sender = tuple[str | None, str | None]
Zone = Literal["subject", "own", "quoted", "signature", "attribution"]
_QUOTE = re.compile(r"[ \t]{0,3}(?:>[ \t]?){1,60}")
_WROTE = re.compile(
    r"\b(?:wrote|schrieb|[ée]crit|escribi[óo]|scritto|schreef|skrev|napisa[łl])\b[^\n]{0,80}:\s*$", re.IGNORECASE
)
_OLD_HEAD = re.compile(
    r"\s{0,9}(?:-{2,40}\s{0,9}(?:original|urspr|message|mensaje|messaggio|oorspr)|_{10,120}\s{0,9}$)", re.IGNORECASE
)
_FORWARD = re.compile(
    r"\W{0,12}(?:begin )?(?:forwarded (?:message|mail)|weitergeleitete (?:nachricht|e-?mail)|message (?:transf[ée]r[ée]|"
    r"r[ée]exp[ée]di[ée])|mensaje reenviado|doorgestuurd bericht|messaggio inoltrato|vidarebefordrat (?:meddelande|brev)|"
    r"videresendt (?:melding|besked|meddelelse|e-?post)|anfang der weitergeleiteten)",
    re.IGNORECASE,
)
_FORWARD_SUBJECT = re.compile(r"\s{0,3}(?:fwd?|wg|tr|rv|i|vb|vs|doorst)\s?:", re.IGNORECASE)
_HEAD_LINE = re.compile(
    r"[ \t*>|]{0,6}(?:from|sent|date|to|cc|subject|von|gesendet|datum|an|betreff|de|envoy[ée]|[àa]|objet|enviado(?: el)?|"
    r"fecha|para|asunto|van|verzonden|aan|onderwerp|da|inviato|data|oggetto|fr[åa]n|skickat|till|[äa]mne|fra|sendt|dato|"
    r"til|emne|reply-to)[ \t*]{0,3}:[* \t]",
    re.IGNORECASE,
)
_FROM_LINE = re.compile(r"[ \t*>|]{0,6}(?:from|von|de|van|da|fr[åa]n|fra)[ \t*]{0,3}:[* \t]", re.IGNORECASE)
HEAD_LINES = 3


@dataclass(frozen=True)
class Line:
    start: int
    end: int
    depth: int
    zone: Zone
    foreign: bool = False
    passed_on: bool = False


def lines_of(text: str, subject_length: int, sender: Sender) -> list[Line]:
    """Return the lines of a text that begins with its subject; what another wrote is foreign, a forward excepted."""
    lines: list[Line] = []
    foreign: dict[int, bool] = {}
    at, below, heads = 0, 0, 0
    raws = text.split("\n")
    passed_on = bool(_FORWARD_SUBJECT.match(text[:subject_length]))
    for number, raw in enumerate(raws):
        end = at + len(raw)
        mark = _QUOTE.match(raw)
        depth = mark[0].count(">") if mark else below
        zone: Zone = "quoted" if depth else "own"
        if at < subject_length:
            zone, depth = "subject", 0
        elif _FORWARD.match(raw):
            zone, passed_on = "attribution", True
        elif heads and _HEAD_LINE.match(raw):
            zone, heads = "attribution", heads - 1
        elif _FROM_LINE.match(raw) and (block := _head_block(raws, number)):
            zone, heads = "attribution", block - 1
            below = depth + 1 if not mark and not _answered(raws, number + block) else below
            foreign[depth + 1] = not (passed_on or _names(raw, sender))
        elif _WROTE.search(raw) or _OLD_HEAD.match(raw):
            zone = "attribution"
            heads_on = number + 1 + _head_block(raws, number + 1)
            below = 1 if _OLD_HEAD.match(raw) and not _answered(raws, heads_on) else below
            wrapped = lines and lines[-1].depth == depth and lines[-1].zone != "subject"
            said = text[lines[-1].start : lines[-1].end] + raw if wrapped else raw
            foreign = {d: f for d, f in foreign.items() if d <= depth} | {depth + 1: not _names(said, sender)}
        lines.append(Line(at, end, depth, zone, foreign.get(depth, False), passed_on=bool(passed_on and depth)))
        at = end + 1
    return lines


def _answered(raws: list[str], at: int) -> bool:
    """Say whether the older mail stands there with quotation signs, so that what has none below it answers it."""
    first = next((raw for raw in raws[at : at + HEAD_LINES * 3] if raw.strip() and not _HEAD_LINE.match(raw)), "")
    return _QUOTE.match(first) is not None


def _head_block(raws: list[str], at: int) -> int:
    """Return how many lines from `at` on are the head of an older mail (From, Sent, To, Subject); 0 for too few."""
    count = 0
    while at + count < len(raws) and count < HEAD_LINES * 3 and _HEAD_LINE.match(raws[at + count]):
        count += 1
    return count if count >= HEAD_LINES else 0


def _names(attribution: str, sender: Sender) -> bool:
    """Say whether an attribution line names the writer (by address where there is one), or nobody at all."""
    name, address = sender
    if "@" in attribution:
        return bool(address) and str(address).casefold() in attribution.casefold()
    words = {w.fold for w in words_of(attribution)}
    names = {w.fold for w in words_of(name or "") if len(w.fold) > 2}  # noqa: PLR2004 - initials say nothing
    return bool(names & words) or len(words) <= 1


def blanked(text: str, lines: list[Line]) -> str:
    """Return the text with quotation signs blanked, every place kept."""
    parts = []
    for line in lines:
        raw = text[line.start : line.end]
        mark = _QUOTE.match(raw) if line.depth else None
        parts.append(" " * mark.end() + raw[mark.end() :] if mark else raw)
    return "\n".join(parts)
