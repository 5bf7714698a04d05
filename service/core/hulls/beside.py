"""What stands beside a model's name without being of it: sail and hull numbers; and names of two models in one."""

from __future__ import annotations

import re

from service.core.hulls.fold import TICK
from service.core.hulls.vocabulary import NATIONS

_CENTURY_TURN = 36
_TWO_DIGIT_YEAR = re.compile(rf"(?<=[\s(]){TICK}(\d\d)(?!\d)|(?<=\d)\s+-((?:[5-9]|[0-3])\d)\s*$")
_NATION = "|".join(sorted(NATIONS))
_COUNT = r"(?:no|nr|num|number|nummer|n°|nº|№)\.?"
_NO = rf"(?<![^\W\d_]){_COUNT}"
# Written behind a name that has letters and digits of its own, or set off by a mark that nothing else has.
_SAIL = re.compile(
    rf"(?<=\d)(\D*?)(?:(?<=\W)(?:{_NATION})[\s-]{{0,2}}\d{{2,6}}[a-z]?|\bsail[\s-]*{_NO}[\s:]*[a-z]{{0,3}}[\s-]*\d+[a-z]?)(?!\w)",
    re.IGNORECASE,
)
_HULL = re.compile(
    rf"(?:\b(?:hull|build|bau|rumpf|skrog|skrov|casco|coque|romp|scafo)[\s-]*(?:{_COUNT})?|#)[\s:#]*\d+(?!\w)",
    re.IGNORECASE,
)
_COUNTED = re.compile(rf"(?<=\d)(\D*?){_NO}[\s:]*\d+(?!\w)", re.IGNORECASE)
_CABINS = re.compile(r"(?<=\d)(\D*?)(?<!\w)\d[\s-]*(?:cab(?:in|ine)?s?|kab(?:ine)?n?|hytter)(?!\w)", re.IGNORECASE)
_BEHIND = ((_HULL, " "), (_CABINS, r"\1 "), (_COUNTED, r"\1 "), (_SAIL, r"\1"))
_RUN = re.compile(r"\d+")

_BETWEEN = re.compile(
    r"\s*(?:[/;+]|,\s|\s(?:or|oder|eller|ou|o|lub|tai|of|vs\.?|and|und|og|och|et|en|&)\s)\s*", re.IGNORECASE
)
_LARGE_NUMBER = re.compile(
    r"(?<![\d.,])(?!(?:19|20)\d\d(?!\d))(?:\d{2,4}(?:[.,]\d{1,2})?|\d[.,]\d{1,2})(?![\d.,]|\s*(?:m|ft|feet|kg|t|hp|hk|ps)\b)"
)
_ENDING = re.compile(r"\d.*$", re.DOTALL)


def without_marks(name: str) -> str:
    """Return the name without sail and hull numbers and the number of cabins, its years in four digits.

    >>> without_marks("Tern 31 GBR-1234"), without_marks("Tern 31 hull no. 7"), without_marks("Tern 31 '79")
    ('Tern 31 ', 'Tern 31  ', 'Tern 31  1979')
    """
    name = _TWO_DIGIT_YEAR.sub(_four_digits, name)
    runs = len(_RUN.findall(name))
    # Most names have one number, behind which nothing can stand; saying so at once makes reading a registry a third faster.
    for pattern, kept in _BEHIND if runs > 1 else _BEHIND[:runs]:
        name = pattern.sub(kept, name, count=1)
    return name


def _four_digits(found: re.Match[str]) -> str:
    year = found[1] or found[2]
    return f" {'20' if int(year) < _CENTURY_TURN else '19'}{year}"


def apart(name: str) -> tuple[str, ...]:
    """Return the names of a text that names two models, or nothing where it names one.

    >>> apart("Tern 31 / 34"), apart("Tern 31 or Kittar 28"), apart("Tern 31/2"), apart("Tern 31, 1979")
    (('Tern 31', 'Tern 34'), ('Tern 31', 'Kittar 28'), (), ())
    """
    for between in _BETWEEN.finditer(name):
        first, second = name[: between.start()], name[between.end() :]
        if not (_LARGE_NUMBER.search(first) and _LARGE_NUMBER.search(second)):
            continue
        if not _LARGE_NUMBER.match(second):
            return first, second
        return first, _ENDING.sub("", first) + second
    return ()
