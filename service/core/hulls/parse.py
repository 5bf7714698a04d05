"""Boat names -> what they are made of: words, main number, generation, suffix.

`fold` takes away what writers vary (case, diacritics, punctuation); `parse_name` tells the parts apart, so that
"TERN 31 mk2" and "Tern 31-II" come out alike while "Tern 340" and "Tern 34" do not.
"""

from __future__ import annotations

import re
from collections.abc import Collection
from dataclasses import dataclass

from service.core.hulls.beside import without_marks
from service.core.hulls.fold import SET_APART, bare_number, fold
from service.core.hulls.vocabulary import CODES, MAY_VARY, METRES, NOISE, NUMERALS, READ_AS, UNITS, VARIANTS, YARD

LONGEST_NAME = 200
_SMALL_METRES = 25
_YEARS = range(1900, 2036)

_GLUE = re.compile(r"(?<=\d)(?=[^\W\d_])|(?<=[^\W\d_])(?=\d)")
_TOKEN = re.compile(r"\d+(?:\.\d+)?|[^\W\d_]+")

_NUMERAL = "|".join(sorted(NUMERALS, key=len, reverse=True))
_KIND = "generation|gen|series|serie|version|ver|mark|mk|mrk"
_MARK = re.compile(rf"(?<![^\W\d_])(?:{_KIND}) ?({_NUMERAL})(?![\w.])")
_ORDINAL = re.compile(
    r"(?<![\d.])([1-9]) ?(?:st|nd|rd|th|e|de|te|a|ra|eme)? (?:generation|gen|series|serie|version|mark)(?!\w)"
)
_SAID = re.compile(
    r"(?<!\w)(?:(first|erste|forsta|forste|premiere|eerste)|(second|zweite|andra|anden|annen|deuxieme|seconde|tweede)"
    r"|(third|dritte|tredje|troisieme|derde)) (?:generation|generatie|series|serie|version|mark)(?!\w)"
)
_BARE = re.compile(r"(?<=\w )(viii|vii|vi|iv|ix|iii|ii)(?!\w)|(?<=\d )(i)(?!\w)")
_TRAILING = re.compile(r"(?<=\d\d )([1-9])(?![\w.])")
_HUMP = re.compile(r"(?<=[a-zß-öø-ÿ])(?=[A-ZÀ-ÖØ-Þ])")
_GLUED_I = re.compile(r"(?<=\d)i(?!\w)")


@dataclass(frozen=True, slots=True)
class ParsedName:
    """The parts of a boat name, folded.

    `number` is the main number with its decimal (10.5 for "10.50", 105 for "105"), None where the name has none;
    `written` is it as written. `builder` holds the words known to be a yard's. `suffix` is what follows the number.
    """

    folded: str
    builder: tuple[str, ...] = ()
    words: tuple[str, ...] = ()
    number: str | None = None
    written: str | None = None
    generation: int | None = None
    suffix: tuple[str, ...] = ()
    others: tuple[str, ...] = ()
    year: int | None = None
    marked: bool = False  # the number is a generation, for the name has no other: "Tern II"

    @property
    def pointed(self) -> bool:
        """Say whether the number was written with a decimal point."""
        return "." in (self.written or "")

    @property
    def digits(self) -> frozenset[str]:
        """Return the number's digits without its point, as written and without closing zeros."""
        return frozenset(text.replace(".", "") for text in (self.written, self.number) if text)

    @property
    def plain(self) -> str:
        """Return the number's digits as written, without the point."""
        return (self.written or "").replace(".", "")

    @property
    def key(self) -> str:
        """Return one text that is equal for names that say the same."""
        parts = ("".join(self.words), self.number or "", str(self.generation or ""), " ".join(sorted(self.suffix)))
        return "|".join((*parts, " ".join(self.others)))


def parse_name(name: str, builders: Collection[str] = YARD) -> ParsedName:
    """Return the parts of `name`; words found in `builders` (folded) are told apart as the builder's.

    Without `builders` these are the words any yard calls itself by ("Yard", "Varv", "& Sons").

    >>> p = parse_name("TERN31MkII")
    >>> p.words, p.number, p.generation
    (('tern',), '31', 2)
    >>> parse_name("Havdun 33 Deck Saloon").suffix
    ('ds',)
    """
    folded = fold(_HUMP.sub(" ", without_marks(name)))
    text, generation = _generation(_variants(_GLUE.sub(" ", _GLUED_I.sub(f" {SET_APART}i", folded))))
    tokens = _initials_joined(_TOKEN.findall(text))
    main, year, others = _numbers(tokens)
    words, suffix = _letters(tokens, main)
    number = bare_number(tokens[main]) if main is not None else None
    written = tokens[main] if main is not None else None
    marked = number is None and generation is not None
    if marked:  # "Tern II" and "Tern 2" say the same
        number, written, generation = str(generation), str(generation), None
    known = tuple(w for w in words if w in builders)
    own = tuple(w for w in words if w not in known)
    return ParsedName(folded, known, own, number, written, generation, suffix, others, year, marked)


def _variants(text: str) -> str:
    if not MAY_VARY.search(text):
        return text
    for pattern, short in VARIANTS:
        text = pattern.sub(short, text)
    return READ_AS.sub(lambda found: found[0].replace("l", "i"), text)


def _generation(text: str) -> tuple[str, int | None]:
    for pattern in (_MARK, _ORDINAL, _SAID, _BARE, _TRAILING):
        found = pattern.search(text)
        if found:
            numeral = next(group for group in found.groups() if group)
            value = found.lastindex if pattern is _SAID else NUMERALS[numeral]
            return f"{text[: found.start()]} {text[found.end() :]}", value
    return text, None


def _numbers(tokens: list[str]) -> tuple[int | None, int | None, tuple[str, ...]]:
    """Return where the main number stands, the year said beside it, and further numbers."""
    places = [i for i, token in enumerate(tokens) if token[0].isdigit()]
    year = None
    if len(places) > 1:
        years = [i for i in places if len(tokens[i]) == 4 and tokens[i].isdigit() and int(tokens[i]) in _YEARS]  # noqa: PLR2004 - digits of a year
        if years and years != places:
            year = int(tokens[years[0]])
            places = [i for i in places if i not in years]
        lengths = [i for i in places if _is_length(tokens, i)]
        if lengths != places:
            places = [i for i in places if i not in lengths]
    if not places:
        return None, year, ()
    return places[0], year, tuple(bare_number(tokens[i]) for i in places[1:])


def _is_length(tokens: list[str], place: int) -> bool:
    after = tokens[place + 1] if place + 1 < len(tokens) else ""
    return after in UNITS or (after in METRES and len(tokens[place]) < LONGEST_NAME and _small(tokens[place]))


def _small(number: str) -> bool:
    return float(number) < _SMALL_METRES


def _letters(tokens: list[str], main: int | None) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Return the words before the main number and the suffix after it, without units and noise."""
    words: list[str] = []
    suffix: list[str] = []
    for i, token in enumerate(tokens):
        if token[0].isdigit() or (i and tokens[i - 1][0].isdigit() and _is_length(tokens, i - 1)):
            continue
        after = main is not None and i > main
        (suffix if after or token in CODES else words).append(token)
    kept = [w for w in words if w not in NOISE] or words
    return tuple(kept), tuple(s for s in suffix if len(s) == 1 or s not in NOISE)


def _initials_joined(tokens: list[str]) -> list[str]:
    """Write letters that stand alone one after the other as one word, and a letter with its digit behind a number.

    "H. R. 36" is "HR 36"; "36 R 2" is "36 R2", a variant and no further number.
    """
    joined: list[str] = []
    for i, token in enumerate(tokens):
        short = i > 0 and len(token) == len(tokens[i - 1]) == 1 and tokens[i - 1].isalpha()
        if short and (token.isalpha() or (i > 1 and tokens[i - 2][0].isdigit())):
            joined[-1] += token
        else:
            joined.append(token)
    return joined
