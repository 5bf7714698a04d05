from __future__ import annotations

import pytest

from service.core.mapping import Seen, Target, guess
from service.core.mapping.headings import read_heading
from service.core.record import Record
from service.flow.guess_mapping import targets

# Headings as lists of nine languages have them, and what they stand for; the words are the trade's.
MEANT = {
    "en": "Job no=record.reference|Boat=boat.model|Year built=boat.year|LOA [ft]=boat.loa_mm|Rake (deg)=transom.rake_deg|"
    "Transom height (in)=transom.top_height_mm|Gear=configuration.gear|Lower bracket=configuration.lower|"
    "Upper bracket=configuration.upper|Shaft=configuration.shaft|Fitted on=record.date|Owner=contact.name|"
    "Displacement, lb=boat.displacement_kg|Harbour=|Paint colour=",
    "de": "Auftrag=record.reference|Bootstyp=boat.model|Baujahr=boat.year|LüA m=boat.loa_mm|"
    "Spiegelneigung (°)=transom.rake_deg|Spiegel Höhe cm=transom.top_height_mm|Anlage=configuration.gear|"
    "Untere Halterung=configuration.lower|Halterung oben=configuration.upper|Rohr=configuration.shaft|"
    "Einbaudatum=record.date|Eigner=contact.name|Verdrängung t=boat.displacement_kg|Liegeplatz=",
    "fr": "N° dossier=record.reference|Bateau=boat.model|Longueur hors tout (m)=boat.loa_mm|"
    "Inclinaison du tableau (°)=transom.rake_deg|Hauteur du tableau (cm)=transom.top_height_mm|"
    "Régulateur=configuration.gear|Support inférieur=configuration.lower|Posé le=record.date|Propriétaire=contact.name",
    "es": "Pedido=record.reference|Barco=boat.model|Eslora (m)=boat.loa_mm|Timón de viento=configuration.gear|"
    "Soporte superior=configuration.upper|Fecha=record.date|Desplazamiento kg=boat.displacement_kg",
    "it": "Commessa=record.reference|Barca=boat.model|Lunghezza fuori tutto (m)=boat.loa_mm|Pescaggio m=boat.draft_mm|"
    "Timone a vento=configuration.gear|Supporto inferiore=configuration.lower|Armatore=contact.name",
    "nl": "Referentie=record.reference|Boottype=boat.model|Lengte over alles=boat.loa_mm|Helling spiegel=transom.rake_deg|"
    "Hoogte spiegel cm=transom.top_height_mm|Windvaan=configuration.gear|Onderste beugel=configuration.lower",
    "sv": "Ordernr=record.reference|Båttyp=boat.model|Längd (m)=boat.loa_mm|Vindroder=configuration.gear|"
    "Övre fäste=configuration.upper|Djupgående=boat.draft_mm|Ägare=contact.name",
    "da": "Ordrenummer=record.reference|Bådtype=boat.model|Længde=boat.loa_mm|Vindror=configuration.gear|Ejer=contact.name",
    "no": "Referanse=record.reference|Båttype=boat.model|Akterspeil høyde (cm)=transom.top_height_mm|"
    "Nedre brakett=configuration.lower|Rør=configuration.shaft|Montert dato=record.date|Hekk=boat.stern",
}


@pytest.mark.parametrize("language", MEANT)
def test_headings_of_nine_languages(language: str) -> None:
    pairs = [pair.split("=") for pair in MEANT[language].split("|")]
    found = guess([Seen(heading) for heading, _ in pairs], targets())
    assert [(one.heading, one.to or "") for one in found] == [(heading, to) for heading, to in pairs]


def test_own_names_are_sure_and_no_column_is_given_twice() -> None:
    headings = ["transom.rake_deg", "Rake", "transom_top_height_mm", "Height of transom"]
    found = guess([Seen(heading) for heading in headings], targets())
    assert [one.to for one in found] == ["transom.rake_deg", None, "transom.top_height_mm", None]
    assert [one.sure for one in found[:1]] == [1.0]


@pytest.mark.parametrize(
    ("text", "words", "unit"),
    [
        ("Rake (deg)", "rake", "deg"), ("LOA [ft]", "loa", "ft"), ("Höhe cm", "hohe", "cm"), ("loa_mm", "loa", "mm"),
        ("Länge/m", "lange", "m"), ("Weight, t", "weight", "t"), ("Beam (in ft)", "beam", "ft"),
        ("topHeight", "top height", None), ("Port of call", "port of call", None), ("Fitted (date)", "fitted date", None),
        ("LüA", "lua", None),
    ],
)  # fmt: skip
def test_the_unit_of_a_heading(text: str, words: str, unit: str | None) -> None:
    found = read_heading(text)
    assert (found.words, found.unit and found.unit.symbol) == (words, unit)


def test_a_unit_of_another_dimension_speaks_against_a_column() -> None:
    (one,) = guess([Seen("Displacement (cm)")], targets())
    assert one.to != "boat.displacement_kg"


def test_what_stands_in_the_cells_counts() -> None:
    years, names = Seen("Boat year", ("1991", "1979")), Seen("Year", ("B. Aune", "unknown", "none"))
    good, bad = guess([years], targets())[0], guess([names], targets())[0]
    assert good.to == "boat.year"
    assert bad.sure < good.sure


def test_words_dates_and_their_meanings() -> None:
    seen = [
        Seen("Status", ("eingebaut", "storniert", "installed", "weiß nicht")),
        Seen("Datum", ("04.06.2009", "30.08.2009")),
        Seen("Heck", ("Badestufe", "offen", "rund")),
    ]
    status, day, stern = guess(seen, targets())
    assert status.values == {"eingebaut": "installed", "storniert": "withdrawn", "weiß nicht": ""}
    assert day.formats == ("DD.MM.YYYY",)
    assert stern.values == {"Badestufe": "scoop", "offen": "open", "rund": ""}


def test_a_date_that_could_be_two_days_is_left_to_a_person() -> None:
    (day,) = guess([Seen("Date", ("04/05/2019", "06/07/2018"))], targets())
    assert day.formats == ("DD/MM/YYYY", "MM/DD/YYYY")


def test_targets_know_the_words_they_take() -> None:
    by_name = {target.name: target for target in targets()}
    assert by_name["record.status"].words == ("proposed", "shipped", "installed", "withdrawn")
    assert "double_ended" in by_name["boat.stern"].words
    assert by_name["boat.model"] == Target("boat.model", "text")
    assert "status" in Record.model_fields
