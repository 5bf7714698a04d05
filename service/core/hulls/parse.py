"""Boat names -> what they are made of: words, main number, generation, suffix.

`fold` takes away what writers vary (case, diacritics, punctuation); `parse_name` tells the parts apart, so that
"TERN 31 mk2" and "Tern 31-II" come out alike while "Tern 340" and "Tern 34" do not.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Collection
from dataclasses import dataclass

from service.core.hulls.vocabulary import CODES, METRES, NOISE, ROMAN, UNITS, VARIANTS, YARD

LONGEST_NAME = 200
_SAME = str.maketrans(
    {
        "æ": "ae",
        "œ": "oe",
        "ø": "o",
        "đ": "d",
        "ð": "d",
        "þ": "th",
        "ł": "l",
        "\u0131": "i",
        "ħ": "h",
        "ŧ": "t",
        "ŋ": "n",
    }
)
_SMALL_METRES = 25
_YEARS = range(1900, 2036)
_CENTURY_TURN = 36

_TICK = "['\u2019\u00b4`]"
_TWO_DIGIT_YEAR = re.compile(rf"(?<=[\s(]){_TICK}(\d\d)(?!\d)")
_HALF = re.compile(r"(?<=\d) 1/2(?!\d)|(?<=\d) ?½")
_THOUSANDS = re.compile(r"(?<!\d)(\d),(\d{3})(?![\d.,])")
_DECIMAL = re.compile(r"(?<=\d)[.,](?=\d)")
_POINT = "\u0001"
_SET_APART = "\u0002"
_PREFIX = re.compile(r"^\W*s\W?[yv](?=\W)", re.IGNORECASE)
_OWN_MARKS = str.maketrans({_POINT: " ", _SET_APART: " "})
_APOSTROPHE = re.compile(rf"(?<=[^\W\d_]){_TICK}(?=[^\W\d_])")
_OTHER = re.compile(rf"[\W_]+(?<!{_POINT})|{_POINT}(?!\d)")
_GLUE = re.compile(r"(?<=\d)(?=[^\W\d_])|(?<=[^\W\d_])(?=\d)")
_TOKEN = re.compile(r"\d+(?:\.\d+)?|[^\W\d_]+")

_NUMERAL = "viii|vii|vi|iv|ix|iii|ii|i|v|[1-9]"
_MARK = re.compile(rf"(?<![^\W\d_])(?:mk|mark|gen|generation|series|serie|version|ver) ?({_NUMERAL})(?![\w.])")
_ORDINAL = re.compile(r"(?<![\d.])([1-9]) ?(?:st|nd|rd|th|e)? (?:generation|gen|series|serie|version|mark)(?!\w)")
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


def fold(name: str) -> str:
    """Return the name in lower case without diacritics, ligatures and punctuation; a decimal between digits stays.

    >>> fold("  HAVDUN-Båt 33 D.S. ")
    'havdun bat 33 d s'
    >>> fold("Lobrac 10,50"), fold("S/Y Œil de Mer's №7")
    ('lobrac 10.50', 'oeil de mers no7')
    """
    text = _PREFIX.sub(" ", name.translate(_OWN_MARKS))
    text = _HALF.sub(".5", text)
    if not text.isascii():
        text = _plain(text)
    text = _THOUSANDS.sub(r"\1\2", text.casefold())
    text = _DECIMAL.sub(_POINT, _APOSTROPHE.sub("", text))
    return " ".join(_OTHER.sub(" ", text).replace(_POINT, ".").split())


def _plain(text: str) -> str:
    """Return the text without marks: letters to their base, foreign digits to 0-9, raised ones set apart."""
    out: list[str] = []
    for char in text:
        raised = unicodedata.decomposition(char).startswith(("<super>", "<sub>", "<fraction>"))
        for part in unicodedata.normalize("NFKD", char.casefold()).translate(_SAME):
            kind = unicodedata.category(part)
            if kind in ("Mn", "Me", "Cf"):
                continue
            plain = str(unicodedata.decimal(part)) if kind == "Nd" else part
            out.append(f" {plain}" if raised else plain)
    return "".join(out)


def bare_number(text: str) -> str:
    """Return a number without what does not change it: 010.50 -> 10.5.

    >>> bare_number("10.50"), bare_number("105"), bare_number("4.0")
    ('10.5', '105', '4')
    """
    whole, _, part = text.partition(".")
    part = part.rstrip("0")
    whole = whole.lstrip("0") or "0"
    return f"{whole}.{part}" if part else whole


def parse_name(name: str, builders: Collection[str] = YARD) -> ParsedName:
    """Return the parts of `name`; words found in `builders` (folded) are told apart as the builder's.

    Without `builders` these are the words any yard calls itself by ("Yard", "Varv", "& Sons").

    >>> p = parse_name("TERN31MkII")
    >>> p.words, p.number, p.generation
    (('tern',), '31', 2)
    >>> parse_name("Havdun 33 Deck Saloon").suffix
    ('ds',)
    """
    name = _TWO_DIGIT_YEAR.sub(lambda m: f" {'20' if int(m[1]) < _CENTURY_TURN else '19'}{m[1]}", name)
    folded = fold(_HUMP.sub(" ", name))
    text, generation = _generation(_variants(_GLUE.sub(" ", _GLUED_I.sub(f" {_SET_APART}i", folded))))
    tokens = _TOKEN.findall(text)
    main, year, others = _numbers(tokens)
    words, suffix = _letters(tokens, main)
    number = bare_number(tokens[main]) if main is not None else None
    written = tokens[main] if main is not None else None
    if number is None and generation is not None:  # "Tern II" and "Tern 2" say the same
        number, written, generation = str(generation), str(generation), None
    known = tuple(w for w in words if w in builders)
    own = tuple(w for w in words if w not in known)
    return ParsedName(folded, known, own, number, written, generation, suffix, others, year)


def _variants(text: str) -> str:
    for pattern, short in VARIANTS:
        text = pattern.sub(short, text)
    return text


def _generation(text: str) -> tuple[str, int | None]:
    for pattern in (_MARK, _ORDINAL, _BARE, _TRAILING):
        found = pattern.search(text)
        if found:
            numeral = next(group for group in found.groups() if group)
            value = ROMAN.get(numeral) or int(numeral)
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
    kept = [w for w in words if w not in NOISE]
    return tuple(kept or words), tuple(s for s in suffix if s not in NOISE)
