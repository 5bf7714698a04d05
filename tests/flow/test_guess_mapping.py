from __future__ import annotations

import io
from datetime import UTC, datetime

import pytest
import xlsxwriter

from service.files.read.errors import Unreadable
from service.files.read.mapping_file import read_mapping
from service.files.read.records_file import read_records
from service.flow.guess_mapping import guess_mapping

HEADINGS = ["Auftrag", "Bootstyp", "Baujahr", "LüA (m)", "Spiegelneigung (°)", "Heck", "Anlage", "Untere Halterung",
            "Obere Halterung", "Rohr", "Einbaudatum", "Status", "Liegeplatz"]  # fmt: skip
ROW = [
    "A-1",
    "Tern 31",
    1979,
    9.45,
    "14°",
    "Badestufe",
    "Gear 60",
    "Hinge 200",
    "Arm 400",
    "Shaft 1800",
    None,
    "eingebaut",
    "B 12",
]


def workbook() -> bytes:
    out = io.BytesIO()
    book = xlsxwriter.Workbook(out, {"in_memory": True})
    book.add_worksheet("Deckblatt").write_row(0, 0, ["Unsere Flotte", "Stand", "2020"])
    sheet = book.add_worksheet("Boote")
    sheet.write(0, 0, "Alle Boote, Stand Mai")
    sheet.write_row(2, 0, HEADINGS)
    sheet.write_row(3, 0, ROW)
    day = datetime(2009, 6, 4, tzinfo=UTC).replace(tzinfo=None)
    sheet.write_datetime(3, 10, day, book.add_format({"num_format": "dd.mm.yyyy"}))
    book.close()
    return out.getvalue()


def test_a_workbook_with_a_cover_and_a_title_needs_no_edit() -> None:
    data = workbook()
    found = guess_mapping(data, "flotte.xlsx")
    assert 'sheets = ["Boote"] # there is also "Deckblatt"' in found.text
    assert "heading_row = 3" in found.text
    assert '# cells: "' not in found.text
    assert "# cells: Tern 31" in found.text
    read = read_records(data, "flotte.xlsx", read_mapping(found.text.encode(), "map.toml"))
    assert read.rejected == ()
    (row,) = read.rows
    record = row.record
    assert (row.sheet, row.row, record.reference, record.status) == ("Boote", 4, "A-1", "installed")
    assert (record.form.boat.loa_mm, record.form.boat.stern, str(record.date)) == (9450, "scoop", "2009-06-04")
    assert record.form.notes == "Liegeplatz: B 12"


def test_the_sheet_can_be_named() -> None:
    assert 'sheets = ["Deckblatt"]' in guess_mapping(workbook(), "flotte.xlsx", sheet="Deckblatt").text
    with pytest.raises(Unreadable, match="there is no sheet 'Bote'; there is 'Boote'"):
        guess_mapping(workbook(), "flotte.xlsx", sheet="Bote")


def test_what_no_column_says_is_asked_for() -> None:
    text = guess_mapping(b"Boat,Rake\nTern 31,12\n", "boats.csv").text
    assert 'number_rows = "row-"' in text
    assert '"record.status" = "installed" # no heading looks like it' in text
    assert '# "configuration.gear" = ""' in text
    with pytest.raises(Unreadable, match=r"nothing in the mapping becomes 'configuration\.gear'"):
        read_records(b"Boat,Rake\nTern 31,12\n", "boats.csv", read_mapping(text.encode(), "map.toml"))


@pytest.mark.parametrize("heading", ['a "quoted" one', "back\\slash", "tab\tin it", "\x7f", "line\nbreak", "π ≈ 3"])
def test_any_heading_and_cell_can_stand_in_the_file(heading: str) -> None:
    out = io.BytesIO()
    book = xlsxwriter.Workbook(out, {"in_memory": True})
    sheet = book.add_worksheet("x")
    sheet.write_row(0, 0, [heading, "Boat", "Status"])
    sheet.write_row(1, 0, [heading, heading, heading])
    book.close()
    mapping = read_mapping(guess_mapping(out.getvalue(), "x.xlsx").text.encode(), "map.toml")
    assert [rule.heading for rule in mapping.column] == [heading, "Boat", "Status"]


def test_what_is_no_table_is_refused() -> None:
    for data, says in ((b"", "empty"), (b'{"a": 1}', "a mapping is for tables"), (b"\x89PNG", "PNG")):
        with pytest.raises(Unreadable, match=says):
            guess_mapping(data, "x")
