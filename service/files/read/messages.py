"""The messages of each language, from the files that come with the program, and who speaks it there."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from importlib.resources import files
from typing import Any

from babel import Locale, UnknownLocaleError
from fluent.runtime import FluentBundle, FluentResource

from service.core.answer.speech import Marks, Speech, system_of

ENGLISH = "en"
LANGUAGES = (ENGLISH, "da", "de", "es", "fr", "it", "nl", "no", "sv")
SAME = {"nb": "no", "nn": "no"}
"""Tags for what one file speaks: both written forms of Norwegian are answered in Bokmål."""
NARROW_SPACE = "\N{NARROW NO-BREAK SPACE}"


class UnsaidError(LookupError):
    """A language lacks a message, or a message a value: a fault of the program."""


class Fluent:
    """The messages of one language, read from its file once."""

    def __init__(self, language: str) -> None:
        self._bundle = FluentBundle([language], use_isolating=False)
        self._bundle.add_resource(FluentResource(text_of(language)))

    def message(self, id_: str, values: Mapping[str, Any]) -> str:
        """Return a message with its values put in. UnsaidError where there is none, or a value is lacking."""
        if not self._bundle.has_message(id_):
            raise UnsaidError(f"{self._bundle.locales}: no message {id_!r}")
        pattern = self._bundle.get_message(id_).value
        text, errors = self._bundle.format_pattern(pattern, dict(values)) if pattern else ("", [])
        if errors:
            raise UnsaidError(f"{self._bundle.locales}, message {id_!r}: {errors[0]}")
        return str(text)


def text_of(language: str) -> str:
    """Return the file of a language as it stands."""
    return files("service.files").joinpath("messages", f"{language}.ftl").read_text(encoding="utf-8")


def language_of(tag: str | None) -> str:
    """Return which of our languages answers a language tag (BCP 47): its own, else English.

    >>> language_of("de-CH"), language_of("nn"), language_of("pl"), language_of(None)
    ('de', 'no', 'en', 'en')
    """
    first = (tag or "").replace("_", "-").split("-")[0].lower()
    found = SAME.get(first, first)
    return found if found in LANGUAGES else ENGLISH


def speak(language: str | None = None, country: str | None = None) -> Speech:
    """Return who speaks to somebody: language as a BCP 47 tag, country as ISO 3166-1 alpha-2.

    Where no country is given, the tag's own counts.
    """
    ours = language_of(language)
    region = country or _region(language)
    return Speech(ours, _messages(ours), _marks(ours, region), system_of(region, ours))


def _region(tag: str | None) -> str | None:
    parts = (tag or "").replace("_", "-").split("-")[1:]
    return next((part.upper() for part in parts if len(part) == 2 and part.isalpha()), None)  # noqa: PLR2004 - ISO 3166


@cache
def _messages(language: str) -> Fluent:
    return Fluent(language)


@cache
def _marks(language: str, country: str | None) -> Marks:
    """Return a country's marks in a language (CLDR), the language's own where it is not spoken there."""
    tag = "nb" if language == "no" else language
    try:
        locale = Locale.parse(f"{tag}_{country}" if country else tag)
    except UnknownLocaleError:
        locale = Locale.parse(tag)
    symbols: Any = locale.number_symbols
    symbols = symbols.get("latn", symbols)
    return Marks(symbols["decimal"], symbols["group"])
