"""Who wrote: name, address, phone and, where it is a dealer, the firm; from the headers and the signature."""

from __future__ import annotations

import re

from service.core.reading.claims import Claim
from service.core.reading.letter import Letter
from service.core.reading.lexis import Matcher, fold, words_of
from service.core.reading.lines import Line
from service.core.reading.sheet import Sheet
from service.core.reading.words import FIRMS

_PHONE = re.compile(r"\(?\+?\d[\d ()/.-]{5,22}\d")
_DAY = re.compile(r"\d{1,4}([/.-])\d{1,2}\1\d{2,4}")
_CALLED = re.compile(
    r"(?<![\w.,/-])(?:\+\d{1,3}|0|(?=\(\d{3}\)[ ]?\d{3}-\d{4}))[ \d()/-]{6,18}\d(?![\d.,]*\d|[ ]?(?:mm|cm|m|kg)\b)"
)
_MAIL = re.compile(r"[\w.+-]{1,64}@[\w-]{1,63}(?:\.[\w-]{1,63}){1,4}")
_PARTS = re.compile(r"[,|;]|\s-\s")
_FOR = re.compile(r"^(?:i\.[ ]?[av]\.|ppa\.?|p\.[ ]?[pao]\.)[ ]{1,3}", re.IGNORECASE)  # signs for the firm
_CELLS = re.compile(r"[|,;]")
FEWEST, MOST = 7, 15
NAME_WORDS = 4
HEADER, LAST_LINES = 0, 6


def read_people(letter: Letter, sheet: Sheet, matcher: Matcher) -> list[Claim]:
    """Return claims for contact and dealer; what a header says has its place at 0..0."""
    claims = []
    address = letter.reply_to or letter.sender_address
    if address:
        claims.append(Claim("contact.email", address, HEADER, HEADER))
    lines = [ln for ln in sheet.lines if ln.zone == "signature" and sheet.clean[ln.start : ln.end].strip()]
    firm = _firm(letter, sheet, lines)
    name = _name(letter, sheet, lines, matcher, firm)
    phone = _phone(sheet, lines, matcher, letter.sender_name or "") or _within(sheet)
    return [*claims, *(c for c in (firm, name, phone) if c is not None)]


def _is_firm(text: str) -> bool:
    return bool(FIRMS.marks(text, words_of(text)))


def _firm(letter: Letter, sheet: Sheet, lines: list[Line]) -> Claim | None:
    """Return the firm as dealer where the letter speaks of a customer or comes from a firm's own address."""
    acts = any("CUSTOMER" in c.concepts for c in sheet.clauses if not c.foreign)
    sender = letter.sender_name or ""
    if not (acts or (sender and _is_firm(sender))):
        return None
    for line in lines:
        raw = sheet.clean[line.start : line.end]
        part = _PARTS.split(raw)[0].strip()
        if part and _is_firm(part) and not any(c.isdigit() for c in part):
            start = line.start + raw.index(part)
            return Claim("enquiry.dealer", part, start, start + len(part))
    return Claim("enquiry.dealer", sender, HEADER, HEADER) if _is_firm(sender) else None


def _name(letter: Letter, sheet: Sheet, lines: list[Line], matcher: Matcher, firm: Claim | None) -> Claim | None:
    sender = letter.sender_name
    person = sender if sender and not _is_firm(sender) and "@" not in sender else None
    known = [w.fold for w in words_of(person or "")]
    for line in lines:
        raw = sheet.clean[line.start : line.end]
        part = _FOR.sub("", _PARTS.split(raw)[0].strip(), count=1)
        words = [w.fold for w in words_of(part)]
        if not _names(part, words, matcher):
            continue
        fuller = not known or (len(words) > 1 and words[-1] == known[-1] and words[0][0] == known[0][0])
        if fuller or (known and words == known):
            start = line.start + raw.index(part)
            return Claim("contact.name", part, start, start + len(part))
        break
    if person:
        return Claim("contact.name", person, HEADER, HEADER)
    return Claim("contact.name", firm.value, firm.start, firm.end, confidence=0.6) if firm else None


def _names(part: str, words: list[str], matcher: Matcher) -> bool:
    if not 0 < len(words) <= NAME_WORDS or any(c.isdigit() for c in part) or _is_firm(part):
        return False
    marked = {m.concept for m in matcher.marks(part, words_of(part))}
    return part[:1].isupper() and "SIGN_OFF" not in marked and fold(part) not in ("sent from my phone", "--")


def _within(sheet: Sheet) -> Claim | None:
    """Return a number among the writer's own last words that can only be a telephone's: "call me, 070-555 01 87"."""
    mine = [ln for ln in sheet.lines if not ln.foreign and sheet.clean[ln.start : ln.end].strip()]
    own = [ln for ln in mine if ln.zone == "own"][-LAST_LINES:]
    for line in [*own, *[ln for ln in mine if ln.zone == "quoted"][-LAST_LINES:]]:
        for found in _CALLED.finditer(sheet.clean, line.start, line.end):
            if FEWEST + 1 < sum(c.isdigit() for c in found[0]) <= MOST:
                return Claim("contact.phone", found[0].strip(), found.start(), found.end(), confidence=0.6)
    return None


def _phone(sheet: Sheet, lines: list[Line], matcher: Matcher, sender: str) -> Claim | None:
    for line in lines:
        raw = sheet.clean[line.start : line.end]
        for found in _PHONE.finditer(raw):
            digits = sum(c.isdigit() for c in found[0])
            before = _CELLS.split(raw[: found.start()])[-1]
            words = words_of(before)
            marks = {m.concept for m in matcher.marks(before, words) if m.end >= len(before.rstrip(" .:")) - 1}
            if "FAX" in marks and "PHONE" not in marks:
                continue
            named = bool(words) and {w.fold for w in words} <= {w.fold for w in words_of(sender)}  # "marcus 555 0163"
            if _DAY.fullmatch(found[0]):
                continue
            if FEWEST <= digits <= MOST and ("PHONE" in marks or named or not _is_address(before, found[0])):
                return Claim("contact.phone", found[0].strip(), line.start + found.start(), line.start + found.end())
    return None


def _is_address(before: str, number: str) -> bool:
    """Say whether the digits look like a house or company number: no phone word, few digits, words in front."""
    return sum(c.isdigit() for c in number) < FEWEST + 1 and bool(before.strip(" -\u2013"))
