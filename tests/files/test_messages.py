"""Messages by language: none lacking, each with the same values, each with its country's marks."""

from __future__ import annotations

import re
from functools import cache

import pytest
from babel.localedata import locale_identifiers
from babel.numbers import format_decimal
from fluent.syntax import ast, parse
from fluent.syntax.visitor import Visitor

from service.core.answer.speech import Amount, Said, Value, said
from service.core.boat import OBSTACLE_KINDS, STERNS, paths, title
from service.core.fit.terms import KINDS
from service.core.recall.features import FEATURES
from service.files.read.messages import LANGUAGES, UnsaidError, language_of, speak, text_of

OTHERS = tuple(one for one in LANGUAGES if one != "en")
BABEL = {"no": "nb"}


class _Names(Visitor):
    def __init__(self) -> None:
        self.variables: set[str] = set()
        self.variants: set[str] = set()

    def visit_VariableReference(self, node: ast.VariableReference) -> None:  # noqa: N802 - the library's name
        self.variables.add(node.id.name)

    def visit_Variant(self, node: ast.Variant) -> None:  # noqa: N802 - the library's name
        self.variants.add(node.key.name if isinstance(node.key, ast.Identifier) else str(node.key.value))
        self.generic_visit(node)


@cache
def messages(language: str) -> dict[str, tuple[frozenset[str], frozenset[str]]]:
    """Return the variables and the variants of each message of a language."""
    found: dict[str, tuple[frozenset[str], frozenset[str]]] = {}
    for entry in parse(text_of(language)).body:
        assert not isinstance(entry, ast.Junk), f"{language}: {entry.content}"
        if isinstance(entry, ast.Message):
            assert entry.id.name not in found, f"{language}: {entry.id.name} twice"
            seen = _Names()
            seen.visit(entry)
            found[entry.id.name] = frozenset(seen.variables), frozenset(seen.variants)
    return found


@pytest.mark.parametrize("language", OTHERS)
def test_no_language_lacks_a_message_or_has_one_too_many(language: str) -> None:
    assert set(messages(language)) == set(messages("en"))


@pytest.mark.parametrize("language", OTHERS)
def test_each_message_has_the_same_values_and_tells_the_same_cases_apart(language: str) -> None:
    english = messages("en")
    for name, found in messages(language).items():
        assert found == english[name], name


@pytest.mark.parametrize("language", OTHERS)
def test_no_message_was_left_in_english(language: str) -> None:
    alike = {"percent", "also", "field-other"}
    same_words = {
        "thing-davits", "thing-mast", "thing-passerelle", "thing-boom", "word-open", "word-aluminium", "field-boat-model",
    }  # fmt: skip
    ours, english = dict(_flat(language)), dict(_flat("en"))
    left = {name for name, text in ours.items() if text == english[name]} - alike - same_words
    assert left == set()


def _flat(language: str) -> list[tuple[str, str]]:
    return re.findall(r"^([a-z][\w-]*) = (.*(?:\n    ?.*|\n\}.*)*)", text_of(language), re.MULTILINE)


@pytest.mark.parametrize("language", LANGUAGES)
def test_whatever_can_be_asked_or_named_has_its_words(language: str) -> None:
    speech = speak(language)
    for path in paths():
        if path.startswith(("boat.", "transom.", "main_rudder.")) and title(path) != path:
            name = path.removesuffix("[]").replace(".", "-")
            if "[]." not in path:
                assert speech.say(f"field-{name}")
    names = [f"thing-{kind}" for kind in OBSTACLE_KINDS] + [f"stern-{one}" for one in STERNS]
    names += [f"word-{one}" for one in STERNS]
    names += ["field-" + f.path.replace(".", "-") for f in FEATURES if not f.path.endswith("builder")]
    for name in names:
        assert speech.say(name)
    for kind in KINDS:
        first, _, rest = kind.id.partition(".")
        id_ = f"check-{rest}" if first in ("lower", "upper") else f"check-{first}"
        values: dict[str, Value] = {"bracket": said("bracket-lower")} if first in ("lower", "upper") else {}
        assert speech.say(id_, **values)


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_message_can_be_said(language: str) -> None:
    speech, plain = speak(language), {"count": 2, "same": 2, "looked": 6}
    for name, (variables, _) in messages(language).items():
        values: dict[str, Value] = {v: plain.get(v, f"<{v}>") for v in variables}
        told = speech.say(name, **values)
        assert told.strip() == told
        assert told
        assert "{" not in told
        for variable in variables - {"whose", "verdict", "side", "source", "known", "count", "same", "offset", "model"}:
            assert str(values[variable]) in told, (name, variable)


def test_a_message_that_is_not_there_and_a_value_that_is_lacking_are_faults() -> None:
    with pytest.raises(UnsaidError, match="no message 'nonsense'"):
        speak("de").say("nonsense")
    with pytest.raises(UnsaidError, match="exact"):
        speak("de").say("ask-transom-rake_deg")


@pytest.mark.parametrize(
    ("tag", "spoken"),
    [
        ("de-CH", "de"),
        ("DE", "de"),
        ("nb-NO", "no"),
        ("nn", "no"),
        ("pl", "en"),
        ("pt-BR", "en"),
        (None, "en"),
        ("", "en"),
    ],
)
def test_a_language_tag_finds_who_speaks_it(tag: str | None, spoken: str) -> None:
    assert language_of(tag) == spoken
    assert speak(tag).language == spoken


@pytest.mark.parametrize(
    ("language", "country"),
    [("de", "DE"), ("de", "CH"), ("fr", "FR"), ("fr", "CA"), ("es", "ES"), ("nl", "NL"), ("it", "IT"), ("sv", "SE"),
     ("no", "NO"), ("da", "DK"), ("en", "US"), ("en", "GB"), ("en", "PL"), ("de", None)],
)  # fmt: skip
def test_numbers_are_written_as_the_country_writes_them(language: str, country: str | None) -> None:
    """Source: CLDR, as babel writes decimals."""
    speech, tag = speak(language, country), BABEL.get(language, language)
    locale = f"{tag}_{country}" if country and f"{tag}_{country}" in locale_identifiers() else tag
    theirs = format_decimal(12345.6, format="#,##0.0", locale=locale)
    assert speech.number(12345.6, 1) == theirs
    assert speech.angle(12.5) == format_decimal(12.5, format="0.0", locale=locale) + "°"


@pytest.mark.parametrize(
    ("language", "country", "length", "mass"),
    [
        ("en", "US", "3 ft 2 3/4 in", "15,653 lb"),
        ("en", "GB", "985 mm (3 ft 2 3/4 in)", "7100 kg (15,653 lb)"),
        ("en", None, "985 mm (3 ft 2 3/4 in)", "7100 kg (15,653 lb)"),
        ("de", "DE", "985 mm", "7100 kg"),
        ("de", "US", "3 ft 2 3/4 in", "15.653 lb"),
        ("fr", None, "985 mm", "7100 kg"),
    ],
)
def test_lengths_and_weights_are_measured_as_the_country_measures(
    language: str, country: str | None, length: str, mass: str
) -> None:
    """Source: 985 / 25.4 = 38.78 in = 3 ft 2 3/4 in; 7100 / 0.45359237 = 15 653 lb (international yard and pound, 1959)."""
    speech = speak(language, country)
    assert speech.put(said("also", first=Amount(value=985, unit="mm"), last="x")).split(";")[0].strip() == length
    assert speech.mass(7100) == mass


def test_a_share_is_never_quite_certain_and_never_nothing() -> None:
    told = [speak("en").share(value) for value in (0.0, 0.004, 0.5, 0.985, 0.995, 1.0)]
    assert [one.replace("\N{NO-BREAK SPACE}", " ") for one in told] == [
        "< 1 %",
        "< 1 %",
        "50 %",
        "98 %",
        "> 99 %",
        "> 99 %",
    ]


def test_alternatives_and_messages_within_messages_are_said() -> None:
    choice = said("ask-hull", names=("A 1", "B 2", "C 3"))
    assert "A 1, B 2 oder C 3" in speak("de").put(choice)
    ladder = said("thing-at", side="port", thing=said("thing-ladder"))
    assert "échelle de bain (à bâbord)" in speak("fr").put(said("ask-obstacle", thing=ladder, exact="2 cm"))
    assert Said.model_validate_json(choice.model_dump_json()) == choice
    assert Said.model_validate_json(ladder.model_dump_json()) == ladder
