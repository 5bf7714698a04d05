"""A letter -> reading/1, step by step: lay out, name the boats, gather claims, weigh them, say what is missing."""

from __future__ import annotations

from collections.abc import Sequence

from service.core.boat import BoatForm
from service.core.reading.assemble import build, weigh
from service.core.reading.bare import read_bare, read_slope
from service.core.reading.boats import Section, sections
from service.core.reading.claims import Claim, Notes
from service.core.reading.corrections import add_datum, correct
from service.core.reading.details import read_details
from service.core.reading.gaps import gaps, questions
from service.core.reading.kinds import kind_of
from service.core.reading.language import FALLBACK, language_of
from service.core.reading.letter import Letter
from service.core.reading.lexis import words_of
from service.core.reading.measures import read_measures
from service.core.reading.models import Named, find_models
from service.core.reading.obstacles import Seen, read_obstacles
from service.core.reading.people import read_people
from service.core.reading.profile import read_profile
from service.core.reading.shape import Doubt, Enclosed, Evidence, Reading
from service.core.reading.sheet import LONGEST, Sheet, lay_out
from service.core.reading.stern import read_methods, read_words, stern_hints
from service.core.reading.words import MATCHERS

MOST_DOUBTS = 100


def read(letter: Letter, *, known_models: Sequence[str] = ()) -> Reading:
    """Return what the letter says, as forms with evidence. Pure: same letter, same reading; never raises on any text.

    `known_models`: hull models by name; the longest that stands in the text as whole words wins. Evidence at 0..0 comes
    from the mail's headers. A letter that asks nothing has no forms.
    """
    text = letter.text[:LONGEST]
    language = language_of(words_of(text), MATCHERS)
    matcher = MATCHERS[language or FALLBACK]
    sheet = lay_out(text, len(letter.subject or ""), matcher, (letter.sender_name, letter.sender_address))
    named = find_models(sheet, known_models)
    notes = _gather(sheet)
    kind = kind_of(letter, sheet, named=len({n.name for n in named}), measured=len(notes.claims))
    forms: list[BoatForm] = []
    evidence: list[Evidence] = []
    doubts: list[Doubt] = []
    if kind in ("enquiry", "reply"):
        common = [*read_people(letter, sheet, matcher), *_headers(letter, language)]
        obstacles = read_obstacles(sheet)
        parts = sections(sheet, named)
        for index, part in enumerate(parts):
            form, seen, open_ = _one_boat(sheet, part, (notes, obstacles, named), common, index, alone=len(parts) == 1)
            forms.append(form)
            evidence += seen
            doubts += open_
    missing = gaps(forms[0]) if forms else ()
    del doubts[MOST_DOUBTS:]
    enclosed = (Enclosed(name=a.name, type=a.type, bytes=a.bytes, sha256=a.sha256) for a in letter.attachments)
    return Reading(
        is_enquiry=bool(forms), kind=kind, language=language, thread=letter.thread, text=text, boats=len(forms),
        form=forms[0] if forms else None, forms=tuple(forms), evidence=tuple(evidence), doubts=tuple(doubts),
        missing=missing, questions=questions(missing),
        attachments=tuple(enclosed),
    )  # fmt: skip


def _gather(sheet: Sheet) -> Notes:
    notes = Notes()
    read_measures(sheet, notes, stern_hints(sheet))
    read_words(sheet, notes)
    notes.claims += read_profile(sheet)
    read_bare(sheet, notes)
    read_slope(sheet, notes)
    correct(sheet, notes)
    add_datum(sheet, notes)
    notes.claims = [c for c in notes.claims if not _foreign(sheet, c)]
    return notes


def _foreign(sheet: Sheet, claim: Claim) -> bool:
    clause = sheet.clause_at(claim.start)
    return clause is not None and clause.foreign


def _headers(letter: Letter, language: str | None) -> list[Claim]:
    claims = [Claim("enquiry.language", language, 0, 0, confidence=0.8)] if language else []
    if letter.date is not None:
        claims.append(Claim("enquiry.received", letter.date.isoformat(), 0, 0))
    if letter.mailed:
        claims.append(Claim("enquiry.channel", "email", 0, 0))
    return claims


def _one_boat(
    sheet: Sheet,
    part: Section,
    gathered: tuple[Notes, list[Seen], list[Named]],
    common: list[Claim],
    index: int,
    *,
    alone: bool,
) -> tuple[BoatForm, list[Evidence], list[Doubt]]:
    notes, obstacles, named = gathered
    mine = [n for n in named if part.start <= n.start < part.end]
    claims = [c for c in notes.claims if part.start <= c.start < part.end]
    claims += [c for c in read_details(sheet, mine) if part.start <= c.start < part.end]
    if part.named is not None:
        n = part.named
        claims.append(Claim("boat.model", n.name, n.start, n.end, n.clause.depth, min(0.95, 0.6 + n.score / 10)))
    kept, contradicted = weigh(claims, sheet.text)
    kept += read_methods(sheet, kept)
    seen = [o for o in obstacles if alone or part.start <= o.start < part.end]
    form, evidence, refused = build([*kept, *common], seen, sheet.text, index)
    unsaid = [d for at, d in notes.doubts if part.start <= at < part.end and not any(c.field == d.field for c in kept)]
    return form, evidence, [*contradicted, *refused, *unsaid]
