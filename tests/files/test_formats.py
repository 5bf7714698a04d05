"""Records through every format and back, and what each format's reader makes of others' files."""

from __future__ import annotations

import csv
import io
import zipfile
from datetime import UTC, date, datetime
from typing import Any, get_args

import pyarrow as pa
import pyarrow.parquet as pq
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from python_calamine import CalamineWorkbook

from service.core.catalogue import Configuration
from service.core.form import parse_form
from service.core.record import Record
from service.files.columns import columns
from service.files.read.errors import Unreadable
from service.files.read.grid import open_table
from service.files.read.records_file import read_records
from service.files.write.grids import Sheet
from service.files.write.opendocument import put_ods
from service.files.write.tables import Format, Unwritable, put_records

MADE = Configuration(gear="Gear 60", lower="Hinge 200", upper="Arm 400", shaft="Shaft 1800")
TABLES = tuple(format_ for format_ in get_args(Format) if format_ != "jsonl")
# Text that XML can hold, with what tables trip over: formula signs, guards, numbers in disguise, lines, tabs, spaces.
words = st.one_of(
    st.sampled_from(["=1+1", "'=1+1", "007", "1e5", "-5", "a;b", 'a"b', "a\tb", "a\nb", "a  b", "x\r\ny", "1,5", "<&>"]),
    st.text(st.characters(codec="utf-8", exclude_categories=["Cc", "Cs"], exclude_characters="\ufffe\uffff"), min_size=1),
).filter(lambda text: text.strip() != "")  # fmt: skip
numbers = st.floats(-60_000, 60_000, allow_nan=False)
records = st.builds(
    lambda reference, day, name, height, offset, flag, number: Record.model_validate(
        {
            "reference": reference[:80],
            "status": "installed",
            "date": day,
            "form": {
                "boat": {"name": name, "year": number},
                "transom": {"camber_mm": height},
                "obstacles": [{"kind": "ladder", "removable": flag}],
                "notes": name,
            },
            "configuration": MADE.model_dump(),
            "placement": {"offset_mm": offset},
            "outcome": {"fitted_as_proposed": flag},
        }
    ),
    words, st.none() | st.dates(), words, numbers, numbers, st.booleans(), st.integers(1850, 2100),
)  # fmt: skip
fleets = st.lists(records, max_size=3, unique_by=lambda record: record.reference)


def written(fleet: list[Record], format_: Format) -> bytes:
    out = io.BytesIO()
    put_records(out, fleet, format_)
    return out.getvalue()


@pytest.mark.parametrize("format_", TABLES)
@settings(deadline=None, derandomize=True, max_examples=60)
@given(fleet=fleets)
def test_records_come_back(format_: Format, fleet: list[Record]) -> None:
    data = written(fleet, format_)
    read = read_records(data, "fleet")
    assert read.rejected == ()
    assert [row.record for row in read.rows] == fleet
    assert written(fleet, format_) == data  # the same records give the same bytes


def record(**form: Any) -> Record:  # noqa: ANN401 - parts of a form
    return Record(reference="R-1", status="installed", form=parse_form(form), configuration=MADE)


def test_another_reader_finds_the_same_in_our_spreadsheet() -> None:
    odd = record(boat={"name": "=1+1", "year": 1975}, transom={"rake_deg": -12.5}, notes="two  blanks\nand\ta tab")
    sheet = CalamineWorkbook.from_filelike(io.BytesIO(written([odd], "ods"))).get_sheet_by_name("records")
    headings, cells = sheet.to_python()
    row = dict(zip(headings, cells, strict=False))
    assert (row["boat.name"], row["boat.year"], row["transom.rake_deg"]) == ("=1+1", 1975, -12.5)
    assert "two  blanks" in str(row["notes"])


def test_parquet_has_the_columns_kinds() -> None:
    data = written([record(boat={"year": 1975}, transom={"rake_deg": -12.5})], "parquet")
    schema = pq.read_schema(io.BytesIO(data))
    assert schema.field("transom.rake_deg").type == pa.float64()
    assert schema.field("boat.year").type == pa.int64()
    assert schema.field("outcome.fitted_as_proposed").type == pa.bool_()
    assert schema.names == [column.name for column in columns()]


def test_parquet_of_others() -> None:
    table = pa.table(
        {
            "record.reference": [1001, 1002],
            "record.status": ["installed", "shipped"],
            "record.date": [date(2020, 3, 4), None],
            **{f"configuration.{part}": [code] * 2 for part, code in MADE.model_dump().items()},
            "obstacles": [[{"kind": "ladder"}], None],
            "enquiry.received": [datetime(2020, 3, 1, 10, tzinfo=UTC), None],
            "transom.rake_deg": pa.array([18.5, None], pa.float32()),
        }
    )
    out = io.BytesIO()
    pq.write_table(table, out)
    one, two = (row.record for row in read_records(out.getvalue(), "fleet").rows)
    assert (one.reference, str(one.date), one.form.transom.rake_deg) == ("1001", "2020-03-04", 18.5)
    assert one.form.obstacles[0].kind == "ladder"
    assert (two.reference, two.date, two.form.obstacles) == ("1002", None, ())


def test_spreadsheets_of_others() -> None:
    # As an office program writes it: repeated cells and rows, covered cells, spaces as elements, values in attributes.
    cells = "".join(
        f'<table:table-cell office:value-type="string"><text:p>{name}</text:p></table:table-cell>'
        for name in (
            "record.reference",
            "record.status",
            "boat.year",
            "record.date",
            "outcome.fitted_as_proposed",
            "notes",
        )
    )
    made = "".join(
        f'<table:table-cell office:value-type="string"><text:p>configuration.{part}</text:p></table:table-cell>'
        for part in ("gear", "lower", "upper", "shaft")
    )
    row = (
        '<table:table-cell office:value-type="float" office:value="7"><text:p>007</text:p></table:table-cell>'
        "<table:table-cell><text:p>installed</text:p></table:table-cell>"
        '<table:table-cell office:value-type="float" office:value="1975"><text:p>1,975</text:p></table:table-cell>'
        '<table:table-cell office:value-type="date" office:date-value="2020-03-04"><text:p>4.3.20</text:p></table:table-cell>'
        '<table:table-cell office:value-type="boolean" office:boolean-value="true"><text:p>WAHR</text:p></table:table-cell>'
        '<table:table-cell><text:p>a<text:s text:c="2"/>b<text:line-break/>c</text:p><text:p>d</text:p></table:table-cell>'
        '<table:table-cell table:number-columns-repeated="4"><text:p>X</text:p></table:table-cell>'
        '<table:table-cell table:number-columns-repeated="16370"/>'
    )
    content = (
        '<office:document-content xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" '
        'xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" '
        'xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"><office:body><office:spreadsheet>'
        f'<table:table table:name="Boats"><table:table-row>{cells}{made}</table:table-row>'
        '<table:table-row table:number-rows-repeated="3"><table:table-cell table:number-columns-repeated="9"/></table:table-row>'
        f'<table:table-row>{row}</table:table-row><table:table-row table:number-rows-repeated="1048570">'
        '<table:table-cell table:number-columns-repeated="16384"/></table:table-row></table:table>'
        "</office:spreadsheet></office:body></office:document-content>"
    )
    read = read_records(ods(content), "fleet.ods")
    (found,) = read.rows
    assert (found.sheet, found.row, found.record.reference, found.record.form.boat.year) == ("Boats", 5, "7", 1975)
    assert (str(found.record.date), found.record.outcome.fitted_as_proposed) == ("2020-03-04", True)
    assert found.record.form.notes == "a  b\nc\nd"


def ods(content: str) -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as book:
        book.writestr(zipfile.ZipInfo("mimetype"), "application/vnd.oasis.opendocument.spreadsheet")
        book.writestr("content.xml", content)
    return out.getvalue()


@pytest.mark.parametrize(
    ("content", "says"),
    [
        ("<office:", "cannot be opened"),
        ('<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa">' + "".join(
            f'<!ENTITY {chr(98 + n)} "{f"&{chr(97 + n)};" * 10}">' for n in range(9)) + "]><x>&j;</x>", "cannot be opened"),
        ("<x/>", "every sheet is empty"),
    ],
)  # fmt: skip
def test_spreadsheets_that_are_damaged_or_multiply(content: str, says: str) -> None:
    with pytest.raises(Unreadable, match=says):
        read_records(ods(content), "fleet.ods")


def test_a_row_repeated_without_end_is_refused() -> None:
    out = io.BytesIO()
    put_ods(out, [Sheet("s", ["a"], [["b"]])])
    with zipfile.ZipFile(io.BytesIO(out.getvalue())) as book:
        text = book.read("content.xml").decode()
    head, _, tail = text.rpartition("<table:table-row>")
    for many in ("99999999", "1048577"):
        hostile = f'{head}<table:table-row table:number-rows-repeated="{many}">{tail}'
        table = open_table(ods(hostile), "fleet.ods")
        with pytest.raises(Unreadable, match="repeated"):
            [list(grid.rows) for grid in table.grids()]


def test_what_a_spreadsheet_cannot_hold_is_refused_by_name() -> None:
    for format_ in ("ods", "xlsx"):
        with pytest.raises(Unwritable, match=r"'R-1', column notes"):
            written([record(notes="a\ufffeb")], format_)
    with pytest.raises(Unwritable, match=r"'R-1', column notes: it holds a character"):
        written([record(notes="a\x01b")], "ods")


def test_tabs_apart() -> None:
    data = written([record(boat={"name": "a,b\tc"}, notes="-x")], "tsv")
    headings, cells = csv.reader(io.StringIO(data.decode(), newline=""), delimiter="\t")
    row = dict(zip(headings, cells, strict=True))
    assert (row["boat.name"], row["notes"]) == ("a,b\tc", "'-x")
    assert open_table(data, "fleet").layout.separator == "\t"
