"""Year, hull number, builder: said beside the boat's name or after a label."""

from __future__ import annotations

import re

from service.core.reading.claims import Claim, plausible
from service.core.reading.models import Named
from service.core.reading.particulars import read_lengths
from service.core.reading.sheet import Clause, Sheet
from service.core.reading.view import is_thing

_YEAR = re.compile(
    r"(?<![\d.,+/-])(?:(19[3-9]\d|20[0-4]\d)|(?:['\u2019]|(?<=\s)-)?(?<!\d)([4-9]\d)(?![ \t]?in\b))"
    r"(?![\d]|[.,]\d|[ \t]?(?:mm|cm|m|kg|lb|ft)\b)"
)
_NUMBER = re.compile(r"[ \t:.#]{1,4}(\d{1,5}[A-Za-z]?)\b(?![.,]\d)")
_ONLY_NUMBER = re.compile(r"(?:n\u00b0|n\u00ba|nr\.?|no\.?|#)[ ]?(\d{1,4}[A-Za-z]?)", re.IGNORECASE)  # "(n° 47)"
_PAIRED = re.compile(r"[ ]{0,3}[/|][ ]{0,3}(?:(?:n\u00b0|nr\.?|no\.?|#)[ ]?)?(\d{1,5}[A-Za-z]?)[ \t]{0,9}(?:\n|$)")
_FROM = re.compile(r"\s(?:of|from|de|del|du|van|von|aus|uit|fra|fr[åa]n|di|nel|dal|vom)\s")
_BESIDE = re.compile(r"(?:[(,]|,[ \t][^\W\d]{1,9})\s{0,3}$")
_LISTED = re.compile(r"[/|;,][ ]{0,3}$")
_BUILT_AT = re.compile(r"(?:\s{1,2}[^\W\d_]{1,14}){1,4}\s{1,2}")
_ARTICLE = re.compile(r"\b(?:a|an|my|our)\s$")
_CAPITAL = r"[A-Z\u00c0-\u00de&][\w&.-]"
_FIRM = re.compile(
    rf"[ \n](?:(?:de|von|av|af|di|by|van)[ ])?({_CAPITAL}{{2,30}}(?:[ \n](?:&|{_CAPITAL}{{0,20}})){{0,2}})"
    r"(?=[ ]?(?:[,;)/]|\.(?:\s|$)|$)|[ ](?:uit|aus|de|from|of|fr\u00e5n|fra|del|van|in|von|anno)[ ]\d{4})"
)
_CENTURY = 1900
NEAR_NAME = 12
TOUCHES = 3
LEAST = 800.0
WORD = 5


def read_details(sheet: Sheet, boat: list[Named]) -> list[Claim]:
    """Return claims for year, hull number and builder in the clauses of this boat."""
    claims: list[Claim] = []
    for clause in sheet.clauses:
        if "OTHER_BOAT" in clause.concepts:
            continue
        if clause.foreign:  # what our own question says of her, where the answer names no other
            claims += _years(sheet, clause, _again(sheet, clause, boat))
            continue
        claims += _years(sheet, clause, boat)
        claims += [*_beside_name(clause, boat), *read_lengths(sheet, clause, boat)]
        claims += _hull_numbers(sheet, clause, boat)
        claims += _builders(sheet, clause) or _named_builder(sheet, clause, boat)
    return claims


def _again(sheet: Sheet, clause: Clause, boat: list[Named]) -> list[Named]:
    """Return the boat's names where they stand again in a question of ours."""
    found = []
    for name in dict.fromkeys(n.name for n in boat):
        at = sheet.clean.find(name, clause.start, clause.end)
        found += [Named(name, at, at + len(name), 0.0, clause)] if at >= 0 else []
    return found


def _years(sheet: Sheet, clause: Clause, boat: list[Named]) -> list[Claim]:
    found = []
    for match in _YEAR.finditer(sheet.clean, clause.start, clause.end):
        told = [m.concept for m in clause.marks if m.concept in ("OWNED", "ORDER", "YEAR") and m.end <= match.start()]
        bought = told[-1:] in (["OWNED"], ["ORDER"])  # "bought in 2019", not "bought last year, built in 1967"
        if bought or any(f.start <= match.start() < f.end for f in clause.found):
            continue
        full = match[1] is not None
        value = int(match[1]) if full else _CENTURY + int(match[2])
        before = sheet.clean[max(clause.start, match.start() - 14) : match.start()]
        cue = any(
            m.concept == "YEAR"
            and m.end <= match.start()
            and (
                not sheet.clean[m.end : match.start()].strip(" :.|\n'\u2019-")
                or (
                    full
                    and bool(_BUILT_AT.fullmatch(sheet.clean, m.end, match.start()))
                    and m.end - m.start >= WORD - 1
                )
            )
            for m in clause.marks
        )
        named = [n for n in boat if n.start < match.start() and (n.clause is clause or n.clause is clause.parent)]
        beside = bool(named) and full and bool(_BESIDE.search(before))
        beside = beside or (full and any(_FROM.fullmatch(sheet.clean, n.end, match.start()) for n in named))
        beside = beside or (bool(named) and full and bool(_LISTED.search(before)) and _closed(sheet.clean, match.end()))
        beside = beside or (
            not full
            and match[0][0] in "'\u2019"
            and any(_touches(sheet.clean, n, match.start(), match.end()) for n in boat)
        )
        beside = beside or (full and any(_touches(sheet.clean, n, match.start(), match.end()) for n in boat))
        after = sheet.clean[match.end() : match.end() + 14].split()
        article = full and bool(_ARTICLE.search(before)) and bool(after) and _boat_word(clause, match.end())
        article = article or (
            full and match.start() == clause.start and _boat_word(clause, match.end())
        )  # "2004 boat,"
        near = bool(named) or any(n.clause.paragraph == clause.paragraph for n in boat) or clause.shaped
        behind = near and _behind(clause, boat, match, named=bool(named))
        dated = cue and near and match[0][0] in "-'\u2019"  # "built -79"
        if behind or (cue and full and near) or beside or article or dated or (cue and near and bool(named)):
            found.append(Claim("boat.year", value, match.start(), match.end(), clause.depth))
    return found


def _closed(clean: str, at: int) -> bool:
    return clean[at : at + 3].strip()[:1] in ("", "/", "|", ";", ",", ".") or clean[at : at + 1] == "\n"


def _behind(clause: Clause, boat: list[Named], match: re.Match[str], *, named: bool) -> bool:
    """Say whether the word that makes it a year stands behind it: "79 model year", "an '88 model"."""
    if any(n.start <= match.start() < n.end for n in boat):
        return False
    after = [m for m in clause.marks if 0 <= m.start - match.end() <= 1]
    worded = named and any(m.concept == "YEAR" and m.end - m.start >= WORD for m in after)
    return worded or (match[0][0] in "'\u2019" and any(m.concept in ("YEAR", "MODEL", "BOAT") for m in after))


def _touches(clean: str, name: Named, start: int, end: int) -> bool:
    """Say whether nothing but a mark stands between: "a 1991 Orlan 35", "a Grindle 28? 1979, bilge keels"."""
    between = clean[end : name.start] if end <= name.start else clean[name.end : start]
    return len(between) <= TOUCHES and not between.strip(" ,.?(") and bool(between.strip("\n"))


def _boat_word(clause: Clause, at: int) -> bool:
    return any(0 <= m.start - at <= NEAR_NAME and (m.concept == "BOAT" or is_thing(m.concept)) for m in clause.marks)


def _beside_name(clause: Clause, boat: list[Named]) -> list[Claim]:
    """Read "Corvane 33, 1984, 5.2 t" and "a Corvane 33, 9.98 m long": what stands with the name is the boat's."""
    names = [n for n in boat if n.clause is clause or (n.clause is clause.parent and n.end < clause.start)]
    things = {m.concept for m in clause.marks if is_thing(m.concept) and m.concept not in ("BOAT", "RUDDER", "TRANSOM")}
    found: list[Claim] = []
    if not names or things or "DISPLACEMENT" in clause.concepts:
        return found
    for piece in clause.found:
        after = next((m for m in clause.marks if 0 <= m.start - piece.end <= 2), None)  # noqa: PLR2004 - a space
        if piece.start < names[0].end or piece.shared:
            continue
        long = piece.dimension == "length" and after is not None and after.concept == "LENGTH"
        first = (
            clause.parent is not None and piece is clause.found[0] and not clause.marks
        )  # "Corvane 33 (9.98 m, 5 t)"
        long = long or (piece.dimension == "length" and first)
        name = "boat.displacement_kg" if piece.dimension == "mass" else "boat.loa_mm" if long else None
        values = tuple(v for v in plausible(name, piece) if v >= LEAST) if name else ()
        if name and len(values) == 1:
            found.append(Claim(name, values[0], piece.start, piece.end, clause.depth, 0.6))
    return found


def _hull_numbers(sheet: Sheet, clause: Clause, boat: list[Named]) -> list[Claim]:
    found = []
    alone = _ONLY_NUMBER.fullmatch(sheet.clean, clause.start, clause.end)
    if alone is not None and clause.parent is not None and any(n.clause is clause.parent for n in boat):
        found.append(Claim("boat.hull_number", alone[1], alone.start(1), alone.end(1), clause.depth, 0.7))
    if "HULL_NUMBER" in clause.concepts:  # "type / yard no. | Corvane 33 / 17"
        pairs = [m for n in boat if n.clause is clause and (m := _PAIRED.match(sheet.clean, n.end, clause.end))]
        found += [Claim("boat.hull_number", m[1], m.start(1), m.end(1), clause.depth) for m in pairs[:1]]
    for mark in clause.marks:
        match = _NUMBER.match(sheet.clean, mark.end, clause.end) if mark.concept in ("HULL_NUMBER", "HULL") else None
        if match is not None and mark.concept == "HULL" and not _whole(sheet, clause, boat, match):
            continue
        if match is not None:
            found.append(Claim("boat.hull_number", match[1], match.start(1), match.end(1), clause.depth))
    return found


def _whole(sheet: Sheet, clause: Clause, boat: list[Named], match: re.Match[str]) -> bool:
    """Say whether a number behind "hull" is the hull's own: no measure, closed at once, and beside the boat's name."""
    measure = any(f.start <= match.start(1) < f.end for f in clause.found)
    closed = sheet.clean[match.end() : match.end() + 1] in {"", ",", ")", ";", "\n"}
    return closed and not measure and any(n.clause in (clause, clause.parent) for n in boat)


def _named_builder(sheet: Sheet, clause: Clause, boat: list[Named]) -> list[Claim]:
    """Read "a Corvane 33 (yard Tessel & Co)" and "built by Tessel": a name right behind the word, beside the boat's."""
    beside = any(n.clause in (clause, clause.parent) for n in boat)
    for mark in clause.marks if beside else ():
        name = _FIRM.match(sheet.clean, mark.end, clause.end) if mark.concept == "BUILDER" else None
        if name is not None and not any(m.start < name.end(1) and name.start(1) < m.end for m in clause.marks):
            said = name[1].rstrip(".")
            return [Claim("boat.builder", said, name.start(1), name.start(1) + len(said), clause.depth, 0.7)]
    return []


def _builders(sheet: Sheet, clause: Clause) -> list[Claim]:
    first = next(iter(clause.marks), None)
    if first is None or first.concept != "BUILDER" or not clause.shaped:
        return []
    colon = sheet.clean.find(":", first.end, first.end + 3)
    value = sheet.clean[colon + 1 : clause.end].strip() if colon >= 0 else ""
    if not value or len(value) > 60 or "\n" in value:  # noqa: PLR2004 - a name, not a sentence
        return []
    start = sheet.clean.index(value, colon)
    return [Claim("boat.builder", value, start, start + len(value), clause.depth)]
