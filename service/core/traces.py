"""Where somebody stands in words that others wrote: the ways a name, an address and a telephone number are written."""

from __future__ import annotations

import json
import re
from collections.abc import Collection, Iterable, Iterator
from typing import Any, NamedTuple

ERASED = "[erased]"
_BETWEEN = r"[\s,.;_+\-]{1,4}"
_APART = r"[\s().\-/]{0,3}"
_SET_APART = str.maketrans("", "", " \t\r\n\f\v\xa0\u2009\u202f().-/")
_FEWEST_DIGITS = 6
_NATIONAL = 7
_COUNTRY = 3


class Said(NamedTuple):
    """What is known of somebody."""

    name: str | None
    email: str | None
    phone: str | None


class Traces:
    """Finds people in texts. A name of one word is a word like others: it is looked for only with `words`."""

    def __init__(self, people: Collection[Said], *, names: bool = True, words: bool = False) -> None:
        """Keep the ways the people are written. Without `names` only addresses and numbers are looked for."""
        self._words = words
        exact, rough = set[str](), set[str]()
        for one in people:
            if one.email:
                exact.add(rf"(?<!\w){re.escape(one.email.strip())}(?![\w-])")
                rough.add(one.email.strip().lower())
            exact.update(_numbers(one.phone or ""))
            parts = re.findall(r"[^\s,.;]+", one.name or "")
            if parts and names and (len(parts) > 1 or words):
                exact.update(_name(parts))
                rough.add(max(parts, key=len).lower())
        ends = {re.sub(r"\D", "", one.phone or "")[-_FEWEST_DIGITS:] for one in people}
        self._ends = tuple(end for end in ends if len(end) == _FEWEST_DIGITS)
        self._exact, self._rough = _any(exact), (*rough, "\\u")

    def found(self, text: str) -> bool:
        """Say whether any of them stands in plain text."""
        return self._exact.search(text) is not None

    def redacted(self, text: str) -> str:
        """Return plain text with `[erased]` where they stood.

        >>> Traces([Said("Ada Quell", "ada@example.org", "+44 20 7946 0000")]).redacted(
        ...     "From Quell, Ada <ADA@example.org>, tel. 020 7946-0000: adaptor for Quellin"
        ... )
        'From [erased] <[erased]>, tel. [erased]: adaptor for Quellin'
        """
        return self._exact.sub(ERASED, text)

    def blanked(self, text: str) -> str:
        """Return the text of a table redacted, with every mark that ends a cell or a line where it was."""
        return self._exact.sub(lambda match: ERASED + re.sub(r"[^,;\t\r\n]", "", match[0]), text)

    def cleaned(self, text: str, kept: Collection[str] = ()) -> str:
        """Return text, or a JSON document, without them; the very same where they do not stand in it.

        In a document every text is looked at but those under the keys in `kept`.
        """
        if not self._may(text):
            return text
        if text[:1] not in ("{", "["):
            return self.redacted(text)
        try:
            document = json.loads(text)
        except ValueError:
            return self.redacted(text)
        clean = self.leaves(document, kept)
        return text if clean == document else compact(clean)

    def _may(self, text: str) -> bool:
        """Say whether it is worth a closer look: most texts of a fleet are not, and this is all they cost."""
        low = text.lower()
        if any(one in low for one in self._rough):
            return True
        bare = low.translate(_SET_APART) if self._ends else ""
        return any(end in bare for end in self._ends)

    def leaves(self, value: Any, kept: Collection[str] = ()) -> Any:  # noqa: ANN401 - JSON is any
        """Return a JSON value with every text in it redacted but those under the keys in `kept`.

        With `words` only texts of several words: a single one may be a term of the form's that is a name too.
        """
        if isinstance(value, str):
            return value if self._words and " " not in value.strip() else self.redacted(value)
        if isinstance(value, list):
            return [self.leaves(item, kept) for item in value]
        if isinstance(value, dict):
            return {key: item if key in kept else self.leaves(item, kept) for key, item in value.items()}
        return value


def compact(document: object) -> str:
    """Return a document as JSON the way the store keeps it."""
    return json.dumps(document, ensure_ascii=False, separators=(",", ":"))


def _any(ways: Iterable[str]) -> re.Pattern[str]:
    # What comes first wins where two begin at one place: the longest.
    return re.compile("|".join(sorted(ways, key=len, reverse=True)) or r"(?!)", re.IGNORECASE)


def _name(parts: list[str]) -> Iterator[str]:
    for order in (parts, [parts[-1], *parts[:-1]]):
        yield rf"(?<!\w){_BETWEEN.join(map(re.escape, order))}(?!\w)"


def _numbers(phone: str) -> Iterator[str]:
    """Give the ways to write a telephone number: with its country or without, however it is set apart."""
    digits = re.sub(r"\D", "", phone)
    if len(digits) < _FEWEST_DIGITS:
        return
    yield _number(digits, "")
    bare = digits.lstrip("0")
    abroad = phone.strip().startswith("+") or digits.startswith("00")
    for cut in range(1, _COUNTRY + 1) if abroad else (0,):
        if len(bare[cut:]) >= _NATIONAL:
            yield _number(bare[cut:], rf"(?:(?:\+|00)\d{{1,3}}{_APART})?(?:\(?0\)?{_APART})?")


def _number(digits: str, before: str) -> str:
    return rf"(?<!\d){before}(?:\+|\()?{_APART.join(digits)}(?!\d)"
