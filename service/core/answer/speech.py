"""What is to be said, apart from the language it is said in: a message's id and its values, and who puts it into words."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any, Protocol

from service.core.boat import Shape
from service.core.units import System, format_length, format_mass
from service.core.units.lexicon import INCH_MM

INCHES_AT_HOME = frozenset({"US", "LR", "MM"})
"""Countries that measure in feet and pounds (CLDR supplemental data, measurementSystem, from memory)."""
BOTH_AT_HOME = frozenset({"GB", "IE", "CA", "AU", "NZ", "ZA"})
"""English-speaking countries where a tape has both scales: common practice, no source."""


class Amount(Shape):
    """A quantity: `unit` is mm, deg, kg, 1 for a share, or another as it stands."""

    value: float
    unit: str


class Said(Shape):
    """One thing to be said: the message's id and its values.

    A value is plain text or a number, a quantity, another message, or alternatives (`a, b or c`).
    """

    id: str
    values: dict[str, str | int | Amount | Said | tuple[str | Amount | Said, ...]] = {}

    model_config = {**Shape.model_config, "str_strip_whitespace": False}


MANY = 100
"""From here on a tenth of a newton or megapascal says nothing."""
Value = str | int | Amount | Said | tuple[str | Amount | Said, ...]


def said(id_: str, **values: Value) -> Said:
    """Return one thing to be said."""
    return Said(id=id_, values=values)


def mm(value: float) -> Amount:
    """Return a length, to a tenth."""
    return Amount(value=round(value, 1), unit="mm")


def share(value: float) -> Amount:
    """Return a share of one."""
    return Amount(value=round(value, 4), unit="1")


class Messages(Protocol):
    """Messages of one language."""

    def message(self, id_: str, values: Mapping[str, Any]) -> str:
        """Return a message with its values put in; LookupError where there is none, or a value is lacking."""
        ...


@dataclass(frozen=True)
class Marks:
    """How a country writes numbers: decimal mark, mark between thousands."""

    decimal: str = "."
    group: str = ","


@dataclass(frozen=True)
class Speech:
    """A language, a country's way of writing numbers, and its measures."""

    language: str
    messages: Messages
    marks: Marks = Marks()
    system: System = "both"

    def say(self, id_: str, **values: Value) -> str:
        """Return a message in words."""
        return self.put(said(id_, **values))

    def put(self, one: Said) -> str:
        """Return in words what is to be said."""
        return self.messages.message(one.id, {name: self._value(value) for name, value in one.values.items()})

    def sentence(self, one: Said) -> str:
        """Return in words what stands as a sentence: many begin with a label, which is written small."""
        text = self.put(one)
        return text[:1].upper() + text[1:]

    def _value(self, value: Value) -> str | int:
        if isinstance(value, tuple):
            return self.listed([str(self._value(one)) for one in value])
        if isinstance(value, Said):
            return self.put(value)
        return self.amount(value.value, value.unit) if isinstance(value, Amount) else value

    def listed(self, texts: Sequence[str]) -> str:
        """Return alternatives as one phrase: `a, b or c`."""
        if len(texts) < 2:  # noqa: PLR2004 - one thing is no list
            return "".join(texts)
        return self.messages.message("or", {"first": ", ".join(texts[:-1]), "last": texts[-1]})

    def amount(self, value: float, unit: str) -> str:
        """Return a value in a unit of the form or of a check (`mm`, `deg`, `kg`, `1` for a share, others as they are)."""
        kinds = {"mm": self.length, "deg": self.angle, "kg": self.mass, "1": self.share}
        if unit in kinds:
            return kinds[unit](value)
        return f"{self.number(value, 1 if abs(value) < MANY else 0)} {unit}".rstrip()

    def length(self, mm: float) -> str:
        """Return a length as the country measures, with a proper minus."""
        return format_length(mm, self.system).replace("-", "\N{MINUS SIGN}")

    def inches(self, inches: float) -> str:
        """Return a length that is bought in inches: 2.25 -> `2 1/4 in`."""
        return format_length(inches * INCH_MM, "imperial").replace("-", "\N{MINUS SIGN}")

    def angle(self, deg: float) -> str:
        """Return an angle: a tenth where there is one."""
        return f"{self.number(deg, 1).removesuffix(self.marks.decimal + '0')}°"

    def mass(self, kg: float) -> str:
        """Return a mass as the country weighs."""
        text = format_mass(kg, self.system)
        if self.system != "metric":
            return text.replace(",", self.marks.group)
        return f"{self.number(kg, 0)} kg"

    def share(self, share: float) -> str:
        """Return a share in whole per cent, never quite certain and never quite nothing.

        A language that sets a space before the sign sets it in its message `percent`.
        """
        whole = min(max(round(100 * share), 1), 99)
        sign = "> " if share > 0.99 else "< " if share < 0.01 else ""  # noqa: PLR2004 - nothing is quite certain
        return self.messages.message("percent", {"number": f"{sign}{whole}"})

    def number(self, value: float, decimals: int) -> str:
        """Return a number with the country's marks; thousands are parted from 10,000 on."""
        group = "," if abs(value) >= 10_000 else ""  # noqa: PLR2004 - as most style books have it
        text = f"{round(value, decimals) + 0.0:{group}.{decimals}f}"
        swap = {",": self.marks.group, ".": self.marks.decimal, "-": "\N{MINUS SIGN}"}
        return "".join(swap.get(c, c) for c in text)


class Speak(Protocol):
    """Finds who speaks a language."""

    def __call__(self, language: str | None = None, country: str | None = None) -> Speech:
        """Return who speaks to somebody there; English where the language is none of ours."""
        ...


def system_of(country: str | None, language: str) -> System:
    """Return which measures to write: inches alone, both scales, or millimetres alone.

    >>> system_of("US", "en"), system_of("DE", "de"), system_of(None, "en"), system_of("CA", "fr")
    ('imperial', 'metric', 'both', 'both')
    """
    if country in INCHES_AT_HOME:
        return "imperial"
    if country in BOTH_AT_HOME or (country is None and language == "en"):
        return "both"
    return "metric"
