"""Vocabularies, one package a language; a new language is a new package named here."""

from __future__ import annotations

from service.core.reading.kin import Kin
from service.core.reading.lexis import Matcher, Vocabulary
from service.core.reading.spoken import Speller
from service.core.reading.words import da, de, en, es, fr, it, nl, no, sv

MATCHERS: dict[str, Matcher] = {
    module.VOCABULARY.language: Matcher(module.VOCABULARY) for module in (en, de, fr, es, nl, it, sv, no, da)
}
KIN: dict[str, Kin] = {
    module.VOCABULARY.language: Kin(module.VOCABULARY) for module in (en, de, fr, es, nl, it, sv, no, da)
}
_FIRMS = "|".join(module.VOCABULARY.concepts["COMPANY"] for module in (en, de, fr, es, nl, it, sv, no, da))
FIRMS = Matcher(Vocabulary("any", "", {"COMPANY": _FIRMS}))  # a firm's name keeps its own language in any letter
SPELLERS: dict[str, Speller] = {
    module.VOCABULARY.language: Speller(module.VOCABULARY.numbers)
    for module in (en, de, fr, es, nl, it, sv, no, da)
    if module.VOCABULARY.numbers is not None
}
