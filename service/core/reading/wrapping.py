"""Which lines stand by themselves, and which only go on where the one above was wrapped, evenly or by hand."""

from __future__ import annotations

import re
from itertools import pairwise

from service.core.reading.lexis import words_of
from service.core.reading.lines import Line

_MEASURE_ENDS = re.compile(
    r"\d[\d.,/\u00bd\u00bc\u00be]{0,6}[ ]?(?:[a-z]{1,9}|[\u00b0'\"\u2032\u2033]{1,2})?\)?$", re.IGNORECASE
)
_SENTENCE = re.compile(r"(?:[^\W_]{3}|\d[ ]?[^\W\d_]{1,2}|[\u00b0\"'%)])[.!?][)\"'\u201d\u2019]?[ ]{1,3}([^\W\d_])")
NARROW = 66
SPARE = 6
LISTED = 3
RAGGED = 1.5
RUNS_ON = frozenset(",;-&(/")
_LEADS_ON = (
    "above below off over under from to of at in on and or with than aft forward ahead behind wide high thick deep long tall by "
    "uber unter vom von bis am an im in auf und oder mit als hinter vor breit hoch dick tief lang stark aus ab "
    "au du de des sur sous en et ou avec que dans par pour large haut epais "
    "sobre bajo del en y o con que por para de ancho alto "
    "boven onder van tot aan in op en of met dan achter voor breed hoog dik diep lang uit "
    "sopra sotto dal dalla dello della di a al in su e o con che per largo alto spesso "
    "over under fran fra till til av af i pa och og eller med an end bakom bag bak fore for bred brett bredt hog hoy hoj tjock tyk "
    "tykk ovanfor nedanfor"
)
LEADS_ON = frozenset(_LEADS_ON.split())
_HANGS = (
    "the a an is are was has have and or of to at in on with from than about only some it its her his our my that which but "
    "der die das dem den des ein eine einen einem einer ist sind hat haben und oder mit von vom zu zum zur im am an auf aus bei als "
    "uber unter hinter vor nur etwa rund ca circa knapp "
    "le la les l un une des du de est sont a ont et ou avec que qui sur sous dans en au aux mon ma mes notre environ "
    "el los las lo una es son tiene tenemos y o con del al por para mi nuestro unos "
    "het een is zijn heeft hebben en of met van tot aan op bij onze mijn ongeveer "
    "il i gli uno sono ha abbiamo e ed o con dal dalla dello della di al alla su per mio nostro circa "
    "en ett ar har och eller med fran till av pa om for var min vart cirka ungefar "
    "et er og fra til af vores ca rundt omtrent"
)
HANGS = frozenset(_HANGS.split())


def broken(clean: str, lines: list[Line], *, nouns: bool) -> frozenset[int]:
    """Return where lines start that stand by themselves; `nouns`: the language writes nouns with a capital."""
    found: set[int] = set()
    paragraph: list[Line] = []
    for line in [*lines, None]:
        if line is not None and line.zone in ("own", "quoted") and clean[line.start : line.end].strip():
            paragraph.append(line)
            continue
        texts = [clean[ln.start : ln.end].strip() for ln in paragraph]
        found |= {paragraph[at].start for at in _alone(texts, nouns=nouns)}
        paragraph = []
    return frozenset(found)


def _alone(texts: list[str], *, nouns: bool) -> set[int]:
    """Return which lines of a paragraph stand by themselves: the one before ends though there was room."""
    if len(texts) < LISTED:
        return set()
    if _led(texts):
        return set(range(len(texts)))
    width = max(map(len, texts))
    low = texts[0][:1].islower()  # typed without capitals, each thought on its line
    prose = _is_prose(texts)
    titled = len(texts) > LISTED and all(t[:1].isupper() and t[-1] not in RUNS_ON for t in texts)
    spaces = [width - len(a) - len(b.split()[0]) for a, b in pairwise(texts)]
    ragged = len(spaces) >= LISTED and RAGGED * sum(s > 3 * SPARE for s in spaces) >= len(spaces)
    if ragged and not prose and not any(_goes_on(a, b, low=low) for a, b in pairwise(texts)):
        return set(range(len(texts)))
    found: set[int] = set()
    for at, (above, below) in enumerate(pairwise(texts)):
        room = max(width, NARROW if below[:1].isupper() else 0) - len(above) - len(below.split()[0])
        listed = (low or below[:1].isupper()) and above[-1:] not in RUNS_ON
        roomy = room > SPARE and (listed or (_MEASURE_ENDS.search(above) is not None and not prose))
        if (roomy or titled) and not (prose and nouns) and not _goes_on(above, below, low=low):
            found |= {at + 1, *([0] if at == 0 else [])}
    return found


def _is_prose(texts: list[str]) -> bool:
    """Say whether sentences end within lines, and lines within sentences."""
    inside = any(m[1].isupper() for t in texts for m in _SENTENCE.finditer(t))
    wrapped = any(b[:1].islower() and a[-1:] not in ".!?:" for a, b in pairwise(texts))
    return inside and (wrapped or any(_hangs(t) for t in texts))


def _goes_on(above: str, below: str, *, low: bool) -> bool:
    """Say whether the words themselves run on over the end of a line: "is about / 95 cm", "95 cm / above the water"."""
    if _hangs(above):
        return True
    first = words_of(below[:NARROW])[:1]
    small = below[:1].islower()
    return small and bool(first) and (first[0].fold in LEADS_ON or (not low and _MEASURE_ENDS.search(above) is None))


def _hangs(text: str) -> bool:
    words = words_of(text[-NARROW:])
    return bool(words) and text[-1:].isalpha() and words[-1].fold in HANGS and text[-1:] not in ".!?:"


def _led(texts: list[str]) -> bool:
    """Say whether a line leads up to a list: it ends with a colon, and each line below is short and has its number."""
    below = texts[1:]
    numbers = all(any(c.isdigit() for c in t) and len(t) <= NARROW for t in below)
    return len(below) >= LISTED - 1 and texts[0].endswith(":") and numbers
