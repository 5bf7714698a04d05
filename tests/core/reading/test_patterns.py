"""Every compiled pattern that touches a letter takes time in proportion to the text, whatever the text is.

The worst case of each is made from the pattern itself: the characters its parts take, alone and in pairs, over and over, with
an end that cannot match. A text four times as long may take four times as long; sixteen times would be the square of it.
"""

from __future__ import annotations

import importlib
import pkgutil
import re
import sys
import time
from collections.abc import Iterator
from itertools import product
from typing import Any

import pytest

import service.core.reading
import service.core.units
from service.files.read import attached, decode, enquiry, html_tags, html_text, mail

sre = importlib.import_module("re._parser" if sys.version_info >= (3, 11) else "sre_parse")
SHORT, TIMES = 2_000, 4
LINEAR = 9.0  # between 4 and 16: noise of a busy machine lies well inside
TRIES = 2
LEAST_SECONDS = 2e-3
MOST_PIECES = 8


def _patterns() -> dict[str, re.Pattern[Any]]:
    found: dict[str, re.Pattern[Any]] = {}
    modules = [attached, decode, enquiry, html_tags, html_text, mail]
    for package in (service.core.reading, service.core.units):
        names = (info.name for info in pkgutil.walk_packages(package.__path__, package.__name__ + "."))
        modules += map(importlib.import_module, names)
    for module in modules:
        for name, value in vars(module).items():
            if isinstance(value, re.Pattern):
                found.setdefault(f"{module.__name__}.{name}", value)
    return found


def _taken(node: Any) -> Iterator[str]:  # noqa: ANN401 - the parser's own tree
    """Yield characters that the parts of a pattern take."""
    for op, arg in node:
        kind = str(op)
        if kind == "LITERAL":
            yield chr(arg)
        elif kind == "NOT_LITERAL":
            yield "a" if chr(arg) != "a" else "b"
        elif kind == "ANY":
            yield "a"
        elif kind == "IN":
            yield from _of_class(arg)
        elif isinstance(arg, tuple):
            yield from (c for part in arg if hasattr(part, "data") for c in _taken(part))
            yield from (c for part in arg if isinstance(part, list) for inner in part for c in _taken(inner))


def _of_class(items: list[tuple[Any, Any]]) -> Iterator[str]:
    categories = {"CATEGORY_DIGIT": "1", "CATEGORY_SPACE": " ", "CATEGORY_WORD": "a", "CATEGORY_NOT_DIGIT": "a"}
    categories |= {"CATEGORY_NOT_SPACE": "a", "CATEGORY_NOT_WORD": "-"}
    if str(items[0][0]) == "NEGATE":
        yield next(c for c in "aB1 .-\n" if not _in_class(items[1:], c))
        return
    for op, arg in items:
        if str(op) == "LITERAL":
            yield chr(arg)
        elif str(op) == "RANGE":
            yield chr(arg[0])
        else:
            yield categories[str(arg)]


def _in_class(items: list[tuple[Any, Any]], char: str) -> bool:
    spaces, digits = char.isspace(), char.isdigit()
    facts = {"CATEGORY_DIGIT": digits, "CATEGORY_SPACE": spaces, "CATEGORY_WORD": char.isalnum() or char == "_"}
    facts |= {"CATEGORY_NOT_WORD": not facts["CATEGORY_WORD"], "CATEGORY_NOT_SPACE": not spaces}
    return any(
        (str(op) == "LITERAL" and chr(arg) == char)
        or (str(op) == "RANGE" and arg[0] <= ord(char) <= arg[1])
        or facts.get(str(arg), False)
        for op, arg in items
    )


def _pieces(pattern: re.Pattern[Any]) -> list[str]:
    text = pattern.pattern if isinstance(pattern.pattern, str) else pattern.pattern.decode("latin-1")
    chars = list(dict.fromkeys(c for c in _taken(sre.parse(text, pattern.flags & ~re.DEBUG)) if ord(c) < 256))
    order = sorted(chars, key=lambda c: (c.isalpha(), c))[:MOST_PIECES]
    whole = "".join(_taken(sre.parse(text, pattern.flags)))[:60].encode("latin-1", "ignore").decode("latin-1")
    pairs = ["".join(p) for p in product(order[:3], repeat=2) if p[0] != p[1]]
    return [*order, *pairs, whole or "a", " \n", "a "]


def _seconds(pattern: re.Pattern[Any], piece: str, length: int) -> float:
    text: Any = (piece * (length // len(piece) + 1))[:length] + "\x01"
    text = text if isinstance(pattern.pattern, str) else text.encode("latin-1")
    best = float("inf")
    for _ in range(TRIES):
        start = time.process_time()
        for _ in pattern.finditer(text):
            pass
        pattern.match(text)
        pattern.fullmatch(text)
        best = min(best, time.process_time() - start)
    return best


def test_the_patterns_are_found() -> None:
    assert len(_patterns()) > 30


@pytest.mark.parametrize(("name", "pattern"), _patterns().items(), ids=list(_patterns()))
def test_time_grows_with_length_alone(name: str, pattern: re.Pattern[Any]) -> None:
    for piece in _pieces(pattern):
        length = SHORT
        while (short := _seconds(pattern, piece, length)) < LEAST_SECONDS and length < 16 * SHORT:
            length *= TIMES  # too quick to be told from noise
        if short >= LEAST_SECONDS:
            assert _seconds(pattern, piece, length * TIMES) < LINEAR * short, (name, piece, length)


def test_a_pattern_that_is_not_linear_would_be_seen() -> None:
    with pytest.raises(AssertionError):
        test_time_grows_with_length_alone("worst", re.compile(r"[ \t]*x"))
