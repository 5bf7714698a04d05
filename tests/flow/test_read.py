"""Reading a mail or a form, with and without a database to know hull models by."""

from __future__ import annotations

from pathlib import Path

import pytest

from service.core.form import FormError
from service.files.read.errors import Unreadable
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
