"""Words -> concepts. A vocabulary is data: for each concept the phrases of one language that mean it.

In a phrase `word*` stands for every word that begins so. The longest phrase at a place wins; a phrase listed under
several concepts means all of them.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from functools import cached_property
from typing import NamedTuple

_LETTERS = {"ß": "ss", "ø": "o", "æ": "ae", "œ": "oe", "ł": "l", "đ": "d", "’": "'"}  # noqa: RUF001 - as people write it
_PLAIN = str.maketrans(
    "\u00e0\u00e1\u00e2\u00e3\u00e4\u00e5\u00e7\u00e8\u00e9\u00ea\u00eb\u00ec\u00ed\u00ee\u00ef\u00f1\u00f2\u00f3\u00f4\u00f5\u00f6"
    "\u00f8\u00f9\u00fa\u00fb\u00fc\u00fd\u00ff\u2019",
    "aaaaaaceeeeiiiinoooooouuuuyy'",
    "",
) | {ord("\u00e6"): "ae", ord("\u0153"): "oe"}  # the letters most met, in one pass
_WORD = re.compile(r"[^\W\d_]+(?:['\u2019][^\W\d_]+)*")
_APOSTROPHE = re.compile("['\u2019]")
LONGEST_STEM = 24
KEPT = frozenset({"FOLD", "FIXED", "SWING", "SLIDE", "GRP"})
"""What a word goes on to mean within a longer phrase."""
_ELISIONS = "l d qu n s j c m t dell all dall sull nell un"
_ELIDED = frozenset(_ELISIONS.split())


class Word(NamedTuple):
    """A word, folded, at [start, end)."""

    fold: str
    start: int
    end: int


class Mark(NamedTuple):
    """A concept in the text at [start, end)."""

    concept: str
    start: int
    end: int


@dataclass(frozen=True)
class Numbers:
    """How a language counts, in words: "/" between forms of one number, blanks between numbers.

    `ones`: 0 to 19; `tens`: 20 to 90; `joint`: how a ten and a one are joined, "|" between ways; `whole`: phrases with a
    value of their own, "_" for a blank, where "{one}" stands for each of 1 to 19 and "+" adds to it.
    """

    ones: str
    tens: str
    joint: str
    hundred: str
    half: str
    and_: str
    whole: str = ""


@dataclass(frozen=True)
class Vocabulary:
    """One language's words: `common` tells the language, `concepts` maps a concept to its phrases, "|" between.

    `alike`: words of the language that mean nothing here and look like one that does, so that none is taken for a slip.
    """

    language: str
    common: str
    concepts: Mapping[str, str]
    numbers: Numbers | None = None
    alike: str = ""

    @cached_property
    def phrases(self) -> list[tuple[tuple[str, ...], str]]:
        """Every phrase as its words, with its concept; worked out once somebody writes in this language."""
        said = [
            (parts, concept)
            for concept, phrases in self.concepts.items()
            for parts in map(parts_of, phrases.split("|"))
            if parts
        ]
        single = {parts[0]: concept for parts, concept in said if concept in KEPT and len(parts) == 1}
        return said + [
            (parts, single[word])  # a folding ladder folds, solid glass is glass
            for parts, concept in said
            if len(parts) > 1 and (concept == "SOLID" or concept.startswith("O_"))
            for word in parts
            if word in single and (single[word] == "GRP") == (concept == "SOLID")
        ]


@dataclass
class _Index:
    exact: dict[str, list[tuple[tuple[str, ...], str]]] = field(default_factory=dict)
    stems: dict[str, list[tuple[tuple[str, ...], str]]] = field(default_factory=dict)


def fold(word: str) -> str:
    """Return the word in lower case without diacritics; æ, ø, ß as ae, o, ss."""
    if word.isascii():
        return word.casefold()
    plain = word.casefold().translate(_PLAIN)
    if plain.isascii():
        return plain
    low = "".join(_LETTERS.get(c, c) for c in word.casefold())
    return "".join(c for c in unicodedata.normalize("NFKD", low) if not unicodedata.combining(c))


def words_of(text: str) -> list[Word]:
    """Return the words with their places; a possessive 's is dropped, l'eau and dell'acqua are two words."""
    found: list[Word] = []
    for match in _WORD.finditer(text):
        whole = fold(match[0]).removesuffix("'s")
        head, _, rest = whole.partition("'")
        if rest and head in _ELIDED:
            cut = match.start() + len(_APOSTROPHE.split(match[0], maxsplit=1)[0])
            found += [Word(head, match.start(), cut), Word(rest, cut + 1, match.end())]
        else:
            found.append(Word(whole, match.start(), match.end()))
    return found


def parts_of(phrase: str) -> tuple[str, ...]:
    """Return a phrase's words as they will be met in a text; a trailing * stays."""
    if phrase.replace(" ", "").isalpha():
        return tuple(fold(phrase).split())
    return tuple(w.fold + ("*" if part.endswith("*") else "") for part in phrase.split() for w in words_of(part))


class Matcher:
    """Finds a vocabulary's concepts in words, in one pass."""

    def __init__(self, vocabulary: Vocabulary) -> None:
        self.language = vocabulary.language
        self.common = frozenset(fold(w) for w in vocabulary.common.split())
        self._vocabulary = vocabulary

    @cached_property
    def _index(self) -> _Index:
        """Lay the phrases out by their first words, once somebody writes in this language."""
        made = _Index()
        for parts, concept in self._vocabulary.phrases:
            table = made.stems if parts[0][-1] == "*" else made.exact
            table.setdefault(parts[0].rstrip("*"), []).append((parts, concept))
            plain = tuple(p.replace("n't", "nt") for p in parts)  # "dont", as many type it
            if plain != parts:
                table.setdefault(plain[0].rstrip("*"), []).append((plain, concept))
        return made

    def marks(self, text: str, words: list[Word]) -> list[Mark]:
        """Return the marks in order; within a phrase only white space and hyphens may stand between words."""
        found: list[Mark] = []
        at = 0
        while at < len(words):
            best = self._best(text, words, at)
            length = max((n for n, _ in best), default=0)
            found += [
                Mark(concept, words[at].start, words[at + n - 1].end)
                for n, concept in dict.fromkeys(best)
                if n == length
            ]
            at += max(1, length)
        return found

    def _best(self, text: str, words: list[Word], at: int) -> list[tuple[int, str]]:
        word = words[at].fold
        candidates: Iterable[tuple[tuple[str, ...], str]] = self._index.exact.get(word, [])
        for size in range(2, min(len(word), LONGEST_STEM) + 1):
            stem = self._index.stems.get(word[:size])
            candidates = [*candidates, *stem] if stem else candidates
        return [(len(parts), concept) for parts, concept in candidates if _follows(text, words, at, parts)]


def _follows(text: str, words: list[Word], at: int, parts: tuple[str, ...]) -> bool:
    if at + len(parts) > len(words):
        return False
    for offset, part in enumerate(parts):
        word = words[at + offset]
        if not (word.fold.startswith(part[:-1]) if part.endswith("*") else word.fold == part):
            return False
        joint = (
            ".-/'\u2019 \n\t>\u00b0\u00ba#" if offset and len(parts[offset - 1]) == 1 else "-'\u2019 \n\t>"
        )  # "f.t.", "n/a"
        if offset and text[words[at + offset - 1].end : word.start].strip(joint):
            return False
    return True
