"""Words in no vocabulary, taken for one that is; and those that are left alone."""

from __future__ import annotations

import pytest

from service.core.reading.lexis import words_of
from service.core.reading.words import KIN, MATCHERS


def _meant(language: str, text: str) -> set[str]:
    taken, _ = KIN[language].taken(text, words_of(text))
    return {m.concept for m in MATCHERS[language].marks(text, taken)}


@pytest.mark.parametrize(
    ("language", "written", "concept"),
    [
        ("en", "the tranosm", "TRANSOM"),
        ("en", "above the watreline", "WATER"),
        ("en", "to star board", "STARBOARD"),
        ("de", "die Spiegeloberkannte", "TOP"),
        ("de", "Hoehe ueber Wasser", "HEIGHT"),
        ("de", "Hinter kante vom Ruder", "TRAILING"),
        ("de", "eine Edelstahlbadeleiter", "O_LADDER"),
        ("nl", "een zwemladdertje", "O_LADDER"),
        ("sv", "akterspegelhöjd", "HEIGHT"),
        ("no", "akterspeilhøyde", "TRANSOM"),
        ("fr", "le tablau", "TRANSOM"),
        ("it", "lo spechio", "TRANSOM"),
    ],
)
def test_a_slip_is_taken_for_what_it_can_only_mean(language: str, written: str, concept: str) -> None:
    assert concept in _meant(language, written)


@pytest.mark.parametrize(
    ("language", "written"),
    [
        ("en", "spelling and stacking"),  # not selling, not sticking
        ("en", "we sailed with Tramson 33"),  # a name before a number
        ("de", "das Schwert"),  # a centreboard, not heavy
        ("de", "Hochwasser"),
        ("sv", "riktning"),  # a direction, not a drawing
        ("it", "passiamo"),
    ],
)
def test_a_word_of_its_own_and_a_name_are_left_alone(language: str, written: str) -> None:
    assert KIN[language].taken(written, words_of(written))[1] == []
