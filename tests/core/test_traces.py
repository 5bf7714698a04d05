"""Somebody in words that others wrote: found however they are written, and nobody else instead of them."""

from __future__ import annotations

import json

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from service.core.traces import ERASED, Said, Traces

ADA = Said("Ada Quell", "ada.quell@example.org", "+44 20 7946 0000")


@pytest.mark.parametrize(
    "text",
    [
        "ADA QUELL", "Quell, Ada", "Ada\n  Quell", "(ada quell)", "<Ada.Quell@Example.org>", "+44 20 7946 0000",
        "0044 20 7946 0000", "020 7946 0000", "(020) 7946-0000", "+44 (0)20 79460000", "tel:+442079460000",
    ],
)  # fmt: skip
def test_ways_to_write_her_are_found_and_taken_out(text: str) -> None:
    traces = Traces([ADA])
    assert traces.found(f"see {text}.")
    assert not traces.found(traces.redacted(f"see {text}."))


@pytest.mark.parametrize(
    "text",
    [
        "Adaquell", "Ada Quellin", "Granada Quell", "Quell", "Ada", "mada.quell@example.org",
        "120794600001", "20 7946 0001", "Ada Marie Quell",
    ],
)  # fmt: skip
def test_what_is_somebody_else_or_nobody_is_left(text: str) -> None:
    traces = Traces([ADA])
    assert traces.redacted(text) == traces.cleaned(text) == text


def test_an_address_is_another_where_it_goes_on_but_one_with_her_name_in_it_is_hers() -> None:
    other = "ada.quell@example.organic"
    assert Traces([ADA._replace(name=None)]).redacted(other) == other
    assert Traces([ADA]).redacted(other) == f"{ERASED}@example.organic"


def test_a_name_of_one_word_is_looked_for_only_where_it_is_hers_and_never_as_a_term() -> None:
    one = [Said("Tape", None, None)]
    assert Traces(one).redacted("says Tape") == "says Tape"
    assert Traces(one, words=True).leaves({"note": "says Tape", "method": "tape"}) == {
        "note": f"says {ERASED}",
        "method": "tape",
    }


def test_cells_and_lines_stay_where_they_are() -> None:
    assert Traces([ADA]).blanked("1,Ada,Quell\n2,Quell\tAda") == f"1,{ERASED},\n2,{ERASED}\t"


def test_a_document_stays_one_and_keeps_what_others_go_by() -> None:
    text = json.dumps({"reference": "Ada Quell", "rake": 1.0, "said": ["\n\u00e9 Ada Quell\t", 3]})
    clean = Traces([ADA]).cleaned(text, ("reference",))
    assert json.loads(clean) == {"reference": "Ada Quell", "rake": 1.0, "said": [f"\n\u00e9 {ERASED}\t", 3]}
    assert Traces([ADA]).cleaned(clean, ("reference",)) == clean


def test_nobody_is_found_nowhere() -> None:
    assert not Traces([]).found("")
    assert Traces([Said(None, None, "12")]).redacted("12 mm") == "12 mm"


WORD = st.text("abcdefgäöß(.*+", min_size=2, max_size=8)


@settings(max_examples=60, deadline=None, derandomize=True)
@given(st.lists(WORD, min_size=2, max_size=3), st.text(max_size=30), st.text(max_size=30))
def test_what_was_taken_out_is_found_no_more(words: list[str], before: str, after: str) -> None:
    traces = Traces([Said(" ".join(words), None, None)])
    text = f"{before} {' '.join(words)} {after}"
    assert traces.found(text) == (traces.redacted(text) != text)
    assert traces.cleaned(json.dumps([text, {"deep": text}])) == json.dumps([text, {"deep": text}]) or traces.found(
        text
    )
