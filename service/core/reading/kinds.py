"""What a letter is: an enquiry, a reply to our questions, an order of parts, thanks, or something else."""

from __future__ import annotations

import re

from service.core.reading.letter import Letter
from service.core.reading.shape import Kind
from service.core.reading.sheet import Sheet

_PIECES = "x|\u00d7|pcs|pieces|st|stk|st\u00fcck|satz|sets?|juegos?|jeux?|pezzi|pz|stuks|styck|s\u00e6t|sett|pi\u00e8ces?|unidades|off"
_ITEM = re.compile(rf"^[ \t*-]{{0,6}}\d{{1,3}}[ \t]?(?:{_PIECES})\b", re.MULTILINE | re.IGNORECASE)
_PRICE = re.compile(
    r"\d[.,]\d{2}[ ]?(?:eur|euro|\u20ac|usd|gbp|chf|sek|nok|dkk|kr)\b|[\u20ac$\u00a3][ ]?\d", re.IGNORECASE
)

FEW = 4


def corrected(sheet: Sheet) -> int:
    """Return how many thoughts of the writer's own name two quantities of one kind: what was wrong, and what is right."""
    own = [[f.dimension for f in c.found] for c in sheet.clauses if not (c.quoted or c.foreign or c.parent)]
    return sum(any(kinds.count(kind) > 1 for kind in ("length", "angle", "mass")) for kinds in own)


def kind_of(letter: Letter, sheet: Sheet, *, named: int, measured: int, own_measures: int) -> Kind:  # noqa: PLR0911 - one a kind
    """Return the kind. An enquiry or reply asks what a boat needs: a boat or measures, and a question or a wish."""
    if letter.bulk or (not named and measured < FEW and len(_PRICE.findall(sheet.clean)) > 1):
        return "other"  # a newsletter, or somebody else's prices
    own = [c for c in sheet.clauses if not c.quoted]
    said = [m.concept for c in own for m in c.marks]
    asks = said.count("ASK") + any("?" in sheet.clean[c.start : c.end] for c in own)
    if len(_ITEM.findall(sheet.clean)) > 1 and "ORDER" in said:
        return "spares"
    orders, owned = said.count("ORDER"), said.count("OWNED")
    if orders and owned and _ITEM.search(sheet.clean):
        return "spares"
    if orders >= 2 and owned and not measured:  # noqa: PLR2004 - one word alone is no order
        return "spares"
    if orders > asks and (orders > 1 or owned) and measured < 2:  # noqa: PLR2004
        return "spares"
    quotes = any(ln.zone == "quoted" and not (ln.passed_on or ln.foreign) for ln in sheet.lines)
    body = [m.concept for c in own if c.start >= sheet.subject_end for m in c.marks]
    asked = "ASK" in body or any("?" in sheet.clean[c.start : c.end] for c in own)
    thread = letter.in_reply_to is not None or quotes or any(ln.foreign for ln in sheet.lines)
    told = (
        own_measures if thread else own_measures - 1
    )  # one number in a letter of thanks that answers nothing is a tale
    if "THANKS" in body and not asked and told < 1 and not orders:
        return "thanks"
    if thread and (measured or named or "MEANT" in said) and not ("THANKS" in said and not measured and not asks):
        return "reply"
    alone = named == 1 and not orders  # one boat named and nothing else asked: what else would they want
    if (named or measured) and (asks or measured or "GEAR" in said or alone):
        thanks_only = "THANKS" in said and not asks and not measured
        return "thanks" if thanks_only else "enquiry"
    if asks and "GEAR" in said and "SELL" not in said:
        return "enquiry"
    return "thanks" if "THANKS" in said else "other"
