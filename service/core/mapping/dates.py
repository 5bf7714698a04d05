"""Dates as people write them, by a format said in a mapping: DD.MM.YYYY, MM/DD/YYYY, YYYY."""

from __future__ import annotations

import re
from collections.abc import Sequence
from datetime import date
from functools import cache

USUAL = ("YYYY-MM-DD", "DD.MM.YYYY", "DD/MM/YYYY", "MM/DD/YYYY", "DD-MM-YYYY", "YYYY/MM/DD", "DD.MM.YY", "DD/MM/YY")
_PARTS = re.compile(r"YYYY|YY|MM|DD")
_CENTURY_TURNS = 70
"""Two digits below it are of this century, the others of the last one."""


@cache
def _pattern(written: str) -> re.Pattern[str]:
    shapes = {"YYYY": r"(?P<Y>\d{4})", "YY": r"(?P<y>\d\d)", "MM": r"(?P<m>\d\d?)", "DD": r"(?P<d>\d\d?)"}
    parts = re.split(r"(YYYY|YY|MM|DD)", written)
    return re.compile("".join(shapes.get(part) or re.escape(part) for part in parts) + r"(?:[T ]00:00(?::00)?)?")


def is_format(written: str) -> bool:
    """Say whether it names a year and, where a day, a month too, each once."""
    parts = [part[0] for part in _PARTS.findall(written)]
    left = _PARTS.sub("", written)
    return sorted(parts) in (["Y"], ["M", "Y"], ["D", "M", "Y"]) and not re.search(r"[\w]", left)


def read_date(text: str, written: str) -> date | None:
    """Return the day; None where the text is not written so, or there is no such day. A missing part is the first.

    >>> read_date("4.3.2020", "DD.MM.YYYY"), read_date("31/02/2020", "DD/MM/YYYY")
    (datetime.date(2020, 3, 4), None)
    """
    found = _pattern(written).fullmatch(text.strip())
    if found is None:
        return None
    said = found.groupdict()
    year = int(said["Y"]) if said.get("Y") else int(said["y"])
    if not said.get("Y"):
        year += 2000 if year < _CENTURY_TURNS else 1900
    try:
        return date(year, int(said.get("m") or 1), int(said.get("d") or 1))
    except ValueError:
        return None


def formats_of(samples: Sequence[str]) -> tuple[str, ...]:
    """Return the usual formats that all samples could be written in: one where it is sure, two where it is not.

    >>> formats_of(["12/05/2019", "30/11/2019"]), formats_of(["4/5/2019"])
    (('DD/MM/YYYY',), ('DD/MM/YYYY', 'MM/DD/YYYY'))
    """
    return tuple(one for one in USUAL if samples and all(read_date(text, one) for text in samples))
