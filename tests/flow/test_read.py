"""Reading a mail or a form, with and without a database to know hull models by."""

from __future__ import annotations

from pathlib import Path

import pytest

from service.core.answer.questions import MOST_QUESTIONS
from service.core.form import FormError
from service.files.read.errors import Unreadable
from service.files.read.messages import LANGUAGES
from service.flow.read import read_file
from service.store.unit import Store


def test_a_form_is_a_reading_without_evidence() -> None:
    got = read_file(None, b'{"transom": {"rake_deg": -3}, "enquiry": {"language": "da"}}', "x.json")
    assert (got.is_enquiry, got.kind, got.language, got.boats, got.evidence) == (True, "enquiry", "da", 1, ())
    assert got.form is not None
    assert got.form.transom.rake_deg == -3


def test_the_registry_tells_names_apart_from_other_words(seeded: Store) -> None:
    text = b"Hi,\n\nwhat would you put on a Quervenec 10.50? The transom leans 12 degrees, top further aft.\n"
    with seeded.reading() as uow:
        got = read_file(uow, text, "x.txt")
    assert got.form is not None
    assert got.form.boat.model is not None
    assert got.form.boat.model.startswith("Quervenec")
    assert got.form.transom.rake_deg == 12


def test_every_mail_that_ships_is_read_and_its_evidence_stands_in_the_text(seeded: Store, mails: Path) -> None:
    files = sorted(mails.glob("*.eml"))
    assert len(files) >= 12
    with seeded.reading() as uow:
        for file in files:
            got = read_file(uow, file.read_bytes(), file.name)
            assert got.is_enquiry == bool(got.forms), file.name
            for one in got.evidence:
                assert got.text[one.start : one.end] == one.text, file.name


@pytest.mark.parametrize(
    ("data", "error"), [(b"", Unreadable), (b"{", Unreadable), (b'{"transom": {"rake": 1}}', FormError)]
)
def test_what_cannot_be_read(data: bytes, error: type[Exception]) -> None:
    with pytest.raises(error):
        read_file(None, data, "x.json")


HELLO = {
    "en": "Dear all, what would you suggest for our Corvane 33?", "de": "Guten Tag, was würden Sie uns für unsere Corvane 33 empfehlen?",
    "fr": "Bonjour, quel régulateur nous conseillez-vous pour notre Corvane 33 ?",
    "es": "Buenos días, ¿qué timón de viento nos recomiendan para nuestro Corvane 33?",
    "nl": "Goedemiddag, welke windvaan past er op onze Corvane 33?",
    "it": "Buongiorno, quale timone a vento ci consigliate per il nostro Corvane 33?",
    "sv": "Hej, vilket vindroder passar till vår Corvane 33?", "no": "Hei, hvilket vindror passer til vår Corvane 33?",
    "da": "Hej, hvilket vindror passer til vores Corvane 33?",
}  # fmt: skip
WATER = {
    "en": "above the water", "de": "über Wasser", "fr": "au-dessus de l'eau", "es": "sobre el agua", "nl": "boven water",
    "it": "sopra l'acqua", "sv": "över vattnet", "no": "over vannet", "da": "over vandet",
}  # fmt: skip


@pytest.mark.parametrize("language", LANGUAGES)
def test_questions_are_few_and_in_the_writers_language_with_how_exactly(language: str) -> None:
    got = read_file(None, HELLO[language].encode(), "x.txt")
    assert got.language == language
    assert len(got.questions) == len(got.asks) == MOST_QUESTIONS == 3
    assert list(got.asks) == [one.field for one in got.missing[:3]], "what settles most first"
    told = " ".join(got.questions)
    assert WATER[language] in told
    assert "mm" in told, "how exactly it is needed"


def test_what_is_in_doubt_is_asked_first_in_the_writers_words() -> None:
    text = (
        HELLO["de"]
        + " Die Oberkante des Spiegels liegt 1,08 m über Wasser. Die Oberkante des Spiegels ist 1,30 m über Wasser."
    )
    got = read_file(None, text.encode(), "x.txt")
    assert got.asks[0] == "transom.top_height_mm"
    assert got.questions[0].startswith("Höhe der Spiegeloberkante über Wasser: ")
    assert "1080" in got.questions[0]
    assert "1300" in got.questions[0]


def test_a_draft_in_doubt_is_no_question_for_a_fit() -> None:
    text = HELLO["en"] + " Draft is 1.5 m. Draft is 1.8 m."
    got = read_file(None, text.encode(), "x.txt")
    assert {one.field for one in got.doubts} == {"boat.draft_mm"}
    assert "boat.draft_mm" not in got.asks


def test_a_form_is_asked_for_what_it_lacks_and_what_asks_nothing_is_asked_nothing() -> None:
    form = read_file(None, b'{"boat": {"model": "Corvane 33"}, "enquiry": {"language": "it"}}', "x.json")
    assert len(form.questions) == 3
    assert any("acqua" in question for question in form.questions)
    assert read_file(None, b"Thank you, the parcel arrived safely.", "x.txt").questions == ()
