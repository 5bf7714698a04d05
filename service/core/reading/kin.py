"""Words that are in no vocabulary, taken for one that is: a compound's parts, two words written apart, a slip of the pen.

A slip is one letter too few, too many, swapped with its neighbour or (in long words) wrong; the first letter must be right, and
only one word of the vocabulary may be meant. Words of the language that merely look alike are data (`alike`), and names are
left alone. Time is in proportion to the text: each word is held against the few that begin and are as long as it.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from functools import cached_property

from rapidfuzz import process
from rapidfuzz.distance import OSA

from service.core.reading.lexis import Vocabulary, Word, fold

JOINING = frozenset({"de", "nl", "sv", "no", "da"})
"""Languages that write compounds as one word."""
ASIDE = frozenset("SIGN_OFF COMPANY THANKS SELL ORDER OWNED PHONE FAX CUSTOMER ASK YES MAY EASILY".split())  # noqa: SIM905 - a list of words
_TAILS = "HEIGHT WIDTH THICK DEPTH LENGTH RAKE TOP BOTTOM TRAILING STOCK TRANSOM RUDDER WATER DISPLACEMENT TOERAIL STEP POST HULL TURN"
_HEADS = (
    "TRANSOM POST RUDDER STEP HULL BOAT TOP BOTTOM WATER TOERAIL COCKPIT KEEL BALLAST WOOD STEEL ALU GRP CORED SOLID FOLD SLIDE "
    "HEIGHT AFT SCOOP"
)
TAILS, HEADS = frozenset(_TAILS.split()), frozenset(_HEADS.split())
LINKS = ("", "s", "n", "en", "e", "es", "er")
LEAST, LEAST_MISSED, LEAST_WRONG, LEAST_PART, LEAST_WHOLE, LEAST_JOINED, LEAST_TAIL = 5, 6, 8, 4, 9, 8, 8
LONGEST, MOST_NEAR, TWO = 30, 9, 2
ENDINGS = {
    "en": "s es",
    "de": "ern ens en es em er n s e",
    "fr": "es s e x",
    "es": "es s",
    "nl": "etjes tjes jes etje tje je en s e",
    "it": "",
    "sv": "arnas ernas arna erna orna ens ets ar er or en et an n t a s",
    "no": "enes ene ens ets er en et a e s n t",
    "da": "ernes erne ens ets ene er en et e s n t",
}
"""How nouns and adjectives end, the longest first; a word is looked up without."""
_NUMBERED = re.compile(r"[ ]\d{2,3}(?![\d.,]{0,6}\d|[ ]?(?:[a-z]{1,6}\b|[°'\"]))")  # a model's name
_WRITTEN = (("ae", "a"), ("oe", "o"), ("ue", "u"), ("aa", "a"))


class Kin:
    """Takes the words of a text for words of one vocabulary."""

    def __init__(self, vocabulary: Vocabulary) -> None:
        self._joins = vocabulary.language in JOINING
        self._nouns = vocabulary.language == "de"  # written with a capital, as names are
        self._vocabulary = vocabulary
        self._endings = ENDINGS[vocabulary.language].split()
        self._said = f"{vocabulary.common} {vocabulary.alike}"

    @cached_property
    def _plain(self) -> frozenset[str]:
        return frozenset(map(fold, self._said.split()))

    @cached_property
    def _single(self) -> dict[str, frozenset[str]]:
        """Every phrase of one word, with its concepts."""
        made: dict[str, frozenset[str]] = {}
        for parts, concept in self._vocabulary.phrases:
            if len(parts) == 1 and parts[0][-1] != "*":
                made[parts[0]] = made.get(parts[0], frozenset()) | {concept}
        return made

    @cached_property
    def _twos(self) -> frozenset[tuple[str, ...]]:
        """Every phrase of two words: they stand as they are, in longer phrases too."""
        return frozenset(parts for parts, _ in self._vocabulary.phrases if len(parts) == TWO)

    @cached_property
    def _known(self) -> frozenset[str]:
        """Every word of any phrase."""
        return frozenset(part for parts, _ in self._vocabulary.phrases for part in parts if part[-1] != "*")

    @cached_property
    def whole(self) -> frozenset[str]:
        """Words that are no abbreviation: the vocabulary's and the language's commonest."""
        return self._known | self._plain

    @cached_property
    def _shelves(self) -> dict[tuple[str, int], list[str]]:
        """Words that may be meant, by first letter and length."""
        made: dict[tuple[str, int], list[str]] = {}
        meant = {part for parts, concept in self._vocabulary.phrases if concept not in ASIDE for part in parts}
        for word in sorted(meant):
            if len(word) >= LEAST and word[-1] != "*":
                made.setdefault((word[0], len(word)), []).append(word)
        return made

    def taken(self, text: str, words: list[Word]) -> tuple[list[Word], list[Word]]:
        """Return the words as the vocabulary is to be looked up with, and those of them that were only guessed."""
        out: list[Word] = []
        guessed: list[Word] = []
        seen: dict[str, tuple[str, ...]] = {}
        at = 0
        while at < len(words):
            word = words[at]
            behind = words[at + 1] if at + 1 < len(words) else None
            if behind is not None and (whole := self._apart(text, word, behind)):
                out.append(Word(whole, word.start, behind.end))
                at += 2
                continue
            at += 1
            if (
                len(word.fold) < LEAST
                or len(word.fold) > LONGEST
                or word.fold in self._known
                or word.fold in self._plain
            ):
                out.append(word)
                continue
            if word.fold not in seen:
                seen[word.fold] = self._parts(word.fold) if self._joins else ()
            parts = seen[word.fold]
            if parts:
                out += [Word(part, word.start, word.end) for part in parts]
                continue
            meant = None if self._is_name(text, word) else self._meant(word.fold)
            out.append(Word(meant, word.start, word.end) if meant else word)
            guessed += [word] if meant else []
        return out, guessed

    def _apart(self, text: str, word: Word, behind: Word) -> str | None:
        """Return the one word that two are when written together: "Hinter kante", "star board"."""
        whole = word.fold + behind.fold
        near = behind.start - word.end == 1 and text[word.end] in " -" and len(whole) >= LEAST_JOINED
        near = near and (word.fold, behind.fold) not in self._twos
        return whole if near and whole in self._single and behind.fold not in self._plain else None

    def _is_name(self, text: str, word: Word) -> bool:
        """Say whether a word is written as names are: a capital within a sentence, or before a number."""
        if not text[word.start].isupper():
            return False
        before = text[max(0, word.start - 2) : word.start]
        inside = (
            word.start > 1 and not before.strip(" ,(\"'").strip("abcdefghijklmnopqrstuvwxyz") and "\n" not in before
        )
        numbered = _NUMBERED.match(text, word.end) is not None
        shouted = text[word.start : word.end].isupper()
        return not shouted and (numbered or (inside and not self._nouns))

    def _parts(self, word: str) -> tuple[str, ...]:
        """Return the two words a compound is made of: "spiegelhohe" -> spiegel, hohe; the last says what it is."""
        if len(word) < LEAST_WHOLE:
            return ()
        for at in range(LEAST_PART, len(word) - LEAST_PART + 1):
            tail = word[at:]
            meant = self._single.get(tail, frozenset())
            thing = any(c.startswith("O_") for c in meant)
            if not (thing or meant & TAILS):
                continue
            for link in LINKS:
                head = (
                    word[:at].removesuffix(link) if link and word[:at].endswith(link) else word[:at] if not link else ""
                )
                if len(head) >= LEAST_PART and any(
                    c.startswith("O_") or c in HEADS for c in self._single.get(head, ())
                ):
                    return head, tail
            if thing and len(tail) >= LEAST_TAIL:
                return (tail,)
        return ()

    def _meant(self, word: str) -> str | None:
        """Return the one word of the vocabulary that a word is a slip for; None where none or several could be."""
        for ending in self._endings:
            stem = word.removesuffix(ending)
            if len(stem) >= LEAST and stem != word and stem in self._single:
                return stem
        for long, short in _WRITTEN:
            plain = word.replace(long, short)
            if plain != word and plain in self._known:
                return plain
        near = {
            other[0]
            for size in (len(word) - 1, len(word), len(word) + 1)
            for other in process.extract(
                word, self._shelves.get((word[0], size), ()), scorer=OSA.distance, score_cutoff=1, limit=MOST_NEAR
            )
        }
        near = {o for o in near if len(word) >= LEAST_WRONG or _is_slip(word, o)}
        return self._one(near)

    def _one(self, near: Iterable[str]) -> str | None:
        """Return the word meant where all that are near mean the same."""
        words = sorted(near)
        if not words:
            return None
        senses = {self._single.get(w, frozenset({w})) for w in words}
        return words[0] if len(senses) == 1 else None


def _is_slip(word: str, other: str) -> bool:
    """Say whether a short word is another with two letters swapped, or with one too many or (in longer ones) too few."""
    if len(word) == len(other):
        return sorted(word) == sorted(other)
    return len(other) >= LEAST_MISSED
