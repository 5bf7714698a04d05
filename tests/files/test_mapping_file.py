from __future__ import annotations

import io

import pytest
import xlsxwriter

from service.core.record import Record
from service.files.read.errors import Unreadable
from service.files.read.mapping_file import read_mapping
from service.files.read.record_rows import RecordRow, Rejected
from service.files.read.records_file import RecordsFile, open_records

MAP = """
[always]
"record.status" = "installed"
"configuration.gear" = "Gear 60"
[[column]]
heading = "Nr"
to = "record.reference"
[[column]]
heading = "Höhe (cm)"
to = "transom.top_height_mm"
unit = "cm"
[[column]]
heading = "Datum"
to = "record.date"
format = "DD.MM.YYYY"
[[column]]
heading = "Heck"
to = "boat.stern"
values = { "Badestufe" = "scoop" }
[[column]]
heading = "Unten"
to = "configuration.lower"
[[column]]
heading = "Oben"
to = "configuration.upper"
[[column]]
heading = "Rohr"
to = "configuration.shaft"
[[column]]
heading = "Liegeplatz"
to = "keep"
[[column]]
heading = "Farbe"
to = "ignore"
"""
HEADINGS = ["Nr", "Höhe (cm)", "Datum", "Heck", "Unten", "Oben", "Rohr", "Liegeplatz", "Farbe"]


def table(*rows: str, heading_row: int = 1) -> bytes:
    above = ["Unsere Flotte;;;"] * (heading_row - 1)
    return "\n".join([*above, ";".join(HEADINGS), *rows]).encode()


def opened(data: bytes, mapping: str = MAP) -> RecordsFile:
    return open_records(data, "flotte.csv", read_mapping(mapping.encode(), "map.toml"))


def records(file: RecordsFile) -> list[Record]:
    return [row.record for row in file.rows() if isinstance(row, RecordRow)]


def faults(file: RecordsFile) -> list[tuple[int, str, str]]:
    return [(e.row, e.column, e.value) for row in file.rows() if isinstance(row, Rejected) for e in row.errors]


def test_a_foreign_table_by_its_mapping() -> None:
    file = opened(table("17;98,5;4.6.2009;badestufe;H;A;S;B 12;rot", "18;3 ft 2 in;30.08.2009;raked;H;A;S;;"))
    one, two = records(file)
    assert one.form.transom.top_height_mm == 985  # 98,5 cm: the heading's unit, a comma found from the cells
    assert two.form.transom.top_height_mm == pytest.approx(965.2)  # 38 in of 25.4 mm: the cell's own unit wins
    assert (one.reference, one.status, one.configuration.gear, one.form.boat.stern) == (
        "17",
        "installed",
        "Gear 60",
        "scoop",
    )
    assert (str(one.date), str(two.date)) == ("2009-06-04", "2009-08-30")
    assert (one.form.notes, two.form.notes) == ("Liegeplatz: B 12", None)
    assert (file.kept, file.left_out) == (("Liegeplatz",), ("Farbe",))
    assert any("decimal comma, as in 98,5" in remark for remark in file.remarks)


def test_errors_speak_of_the_files_own_headings() -> None:
    file = opened(table("17;hoch;4.6.2009;rund;H;A;S;;", "18;98;31.02.2009;raked;H;A;S;;"))
    assert faults(file) == [(2, "Höhe (cm)", "hoch"), (2, "Heck", "rund"), (3, "Datum", "31.02.2009")]


def test_numbers_with_both_signs_are_said_and_ambiguous_ones_rejected() -> None:
    file = opened(table("17;98,5;;;H;A;S;;", "18;98.5;;;H;A;S;;", "19;1.234;;;H;A;S;;"))
    assert [one.form.transom.top_height_mm for one in records(file)] == [985, 985]
    assert faults(file) == [(4, "Höhe (cm)", "1.234")]
    assert "some numbers have a decimal comma (98,5) and some a point (98.5)" in file.remarks[0]
    said = opened(table("19;1.234;;;H;A;S;;"), f'decimal = ","\n{MAP}')
    assert records(said)[0].form.transom.top_height_mm == 12340  # 1234 cm


def test_a_title_above_the_headings_and_rows_without_a_reference() -> None:
    bare = MAP.replace(
        '[[column]]\nheading = "Nr"\nto = "record.reference"', '[[column]]\nheading = "Nr"\nto = "ignore"'
    )
    file = opened(table("17;98;;;H;A;S;;", heading_row=3), f'heading_row = 3\nnumber_rows = "alt-"\n{bare}')
    assert [one.reference for one in records(file)] == ["alt-4"]


def test_the_sheets_that_are_named_are_read() -> None:
    out = io.BytesIO()
    book = xlsxwriter.Workbook(out, {"in_memory": True})
    for name in ("2009", "2010", "notes"):
        sheet = book.add_worksheet(name)
        sheet.write_row(0, 0, HEADINGS if name != "notes" else ["what"])
        sheet.write_row(1, 0, [f"{name}-1", "98", "", "raked", "H", "A", "S"])
    book.close()
    file = opened(out.getvalue(), f'sheets = ["2010", "2009"]\n{MAP}')
    assert [one.reference for one in records(file)] == ["2009-1", "2010-1"]
    with pytest.raises(Unreadable, match=r"there is no sheet '2011'; there is '201"):
        opened(out.getvalue(), f'sheets = ["2011"]\n{MAP}')


@pytest.mark.parametrize(
    ("change", "says"),
    [
        (("Farbe", "Farbton"), r"row 1: the mapping says nothing of 'Farbe'"),
        (('"Farbe"\nto = "ignore"', '"Farbe"\nto = "ignore"\n[[column]]\nheading = "X"\nto = "keep"'), "no heading 'X'"),
        (('"configuration.gear" = "Gear 60"', ""), r"nothing in the mapping becomes 'configuration.gear'"),
        (("transom.top_height_mm", "transom.top_heigth_mm"), r"column 'Höhe \(cm\)': .*did you mean 'transom.top_height_mm'"),
        (("[always]", "[always"), r"map.toml: this is no TOML: .*line 2"),
        (('"record.status"', '"record.stauts"'), r"\[always\]: 'record.stauts' is no column .*did you mean 'record.status'"),
    ],
)  # fmt: skip
def test_a_mapping_that_does_not_fit_is_refused(change: tuple[str, str], says: str) -> None:
    with pytest.raises(Unreadable, match=says):
        opened(table("17;98;;;H;A;S;;"), MAP.replace(*change))


def test_what_is_no_mapping_file() -> None:
    for data, says in ((b"\xff\xfe", "not UTF-8"), (b"#" * 5_000_000, "no mapping file"), (b"[" * 9_999, "no TOML")):
        with pytest.raises(Unreadable, match=says):
            read_mapping(data, "map.toml")
    with pytest.raises(Unreadable, match="a mapping is for tables"):
        opened(b'{"record.reference": "R-1"}')
