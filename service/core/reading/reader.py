"""A letter -> reading/1, step by step: lay out, name the boats, gather claims, weigh them, say what is missing."""

from __future__ import annotations

from collections.abc import Sequence

from service.core.boat import BoatForm
from service.core.reading.another import count_on
from service.core.reading.answers import read_answers
from service.core.reading.axes import name_axes
from service.core.reading.bare import read_bare, read_offset, read_slope
from service.core.reading.boats import sections
from service.core.reading.camber import read_camber
from service.core.reading.claims import Claim, Notes
from service.core.reading.corrections import add_datum, correct, rename
from service.core.reading.enclosed import Told, tell, written_out
from service.core.reading.erratum import put_errata_right
from service.core.reading.gaps import gaps
from service.core.reading.halves import read_halves
from service.core.reading.joining import form_of, joined, said_of
from service.core.reading.kinds import corrected, kind_of
from service.core.reading.laden import read_laden
from service.core.reading.laminate import read_laminate
from service.core.reading.language import FALLBACK, language_of
from service.core.reading.letter import Letter
from service.core.reading.lexis import words_of
from service.core.reading.measures import read_measures
from service.core.reading.models import find_models
from service.core.reading.paired import part
from service.core.reading.people import read_people
from service.core.reading.plumb_gap import read_plumb_gap
from service.core.reading.plumbed import read_plumbed
from service.core.reading.profile import read_profile
from service.core.reading.scaled import scale_up
from service.core.reading.shape import Doubt, Enclosed, Evidence, Reading
from service.core.reading.sheet import LONGEST, Sheet, Tongue, lay_out
from service.core.reading.slopes import read_slopes
from service.core.reading.stern import open_edge, read_words, sort_by_rake, stern_hints
from service.core.reading.under_step import read_under_step
from service.core.reading.weights import settle_weights
from service.core.reading.words import KIN, MATCHERS, SPELLERS

MOST_DOUBTS = 100
GUESSED = 0.8


def read(letter: Letter, *, known_models: Sequence[str] = ()) -> Reading:
    """Return what the letter says, as forms with evidence. Pure: same letter, same reading; never raises on any text.

    `known_models`: hull models by name; the longest that stands in the text as whole words wins. Evidence at 0..0 comes
    from the mail's headers. Forms that came along are written out below the letter. One that asks nothing has no forms.
    """
    written = letter.text[:LONGEST]
    text, told = _enclosed(letter, written)
    language = language_of(words_of(written), MATCHERS)
    tongue = language or FALLBACK
    sender = (letter.sender_name, letter.sender_address)
    spoken = Tongue(MATCHERS[tongue], SPELLERS[tongue], KIN[tongue])
    sheet = name_axes(scale_up(part(lay_out(written, len(letter.subject or ""), spoken, sender))))
    named = find_models(sheet, known_models)
    notes = _gather(sheet)
    measured = len(notes.claims) + sum(len(one.claims) for one in told)
    own = sum(not c.depth for c in notes.claims) + sum(len(one.claims) for one in told) + corrected(sheet)
    kind = kind_of(letter, sheet, named=len({n.name for n in named}), measured=measured, own_measures=own)
    forms: list[BoatForm] = []
    evidence: list[Evidence] = []
    doubts: list[Doubt] = []
    if kind in ("enquiry", "reply"):
        common = [*read_people(letter, sheet, MATCHERS[tongue]), *_headers(letter, language)]
        gathered = (notes, named)
        parts = [] if told and not named and not notes.claims else sections(sheet, named)
        boats = [said_of(sheet, part, gathered, alone=len(parts) == 1) for part in parts]
        for index, said in enumerate(joined(boats, told)):
            form, seen, open_ = form_of(sheet, text, said, common, index)
            forms.append(form)
            evidence += [_less_sure(sheet, one) for one in seen]
            doubts += open_
    del doubts[MOST_DOUBTS:]
    return Reading(
        is_enquiry=bool(forms), kind=kind, language=language, thread=letter.thread, text=text, boats=len(forms),
        form=forms[0] if forms else None, forms=tuple(forms), evidence=tuple(evidence), doubts=tuple(doubts),
        missing=gaps(forms[0]) if forms else (), attachments=_listed(letter, taken=bool(forms)),
    )  # fmt: skip


def _enclosed(letter: Letter, written: str) -> tuple[str, list[Told]]:
    """Return the text with the forms that came along written out below it, and what they say."""
    text = written
    told: list[Told] = []
    for one in letter.attachments:
        for form in one.forms:
            start = len(text) + 2
            text += "\n\n" + "\n".join(written_out(one.name or "attachment", form)) + "\n"
            told.append(tell(text, start, form))
    return text, told


def _listed(letter: Letter, *, taken: bool) -> tuple[Enclosed, ...]:
    return tuple(
        Enclosed(name=a.name, type=a.type, bytes=a.bytes, sha256=a.sha256, read=taken and (a.shown or bool(a.forms)))
        for a in letter.attachments
    )


def _gather(sheet: Sheet) -> Notes:
    notes = Notes()
    hints = stern_hints(sheet)
    open_edge(sheet, hints)
    read_measures(sheet, notes, hints)
    read_laminate(sheet, notes)
    read_words(sheet, notes)
    notes.claims += read_profile(sheet)
    read_plumbed(sheet, notes)
    read_bare(sheet, notes)
    read_answers(sheet, notes)
    read_slope(sheet, notes)
    read_slopes(sheet, notes, hints)
    read_under_step(sheet, notes, hints)
    correct(sheet, notes)
    put_errata_right(sheet, notes)
    rename(sheet, notes)
    add_datum(sheet, notes)
    read_laden(sheet, notes)
    read_camber(sheet, notes)
    read_offset(sheet, notes)
    notes.claims = [c for c in notes.claims if not _foreign(sheet, c)]
    read_plumb_gap(sheet, notes, hints)
    sort_by_rake(notes)
    settle_weights(sheet, notes)
    count_on(sheet, notes)
    read_halves(sheet, notes)
    return notes


def _less_sure(sheet: Sheet, one: Evidence) -> Evidence:
    """Return evidence from a thought in which a word was only guessed as less sure."""
    clause = sheet.clause_at(one.start) if sheet.unsure else None
    guessed = clause is not None and clause.start in sheet.unsure and one.end > 0
    return one.model_copy(update={"confidence": round(one.confidence * GUESSED, 3)}) if guessed else one


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
