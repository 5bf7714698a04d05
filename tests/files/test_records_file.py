from __future__ import annotations

import io
import zipfile
from datetime import UTC, datetime
from typing import Any

import pytest
import xlsxwriter
from hypothesis import given, settings
from hypothesis import strategies as st

from service.core.catalogue import Configuration
from service.core.form import parse_form
from service.core.record import Record
from service.files.read.errors import Unreadable
from service.files.read.record_rows import RecordRow
from service.files.read.records_file import read_records
from service.files.write.tables import write_xlsx

MADE = Configuration(gear="Gear 60", lower="Hinge 200", upper="Arm 400", shaft="Shaft 1800")


def record(**form: Any) -> Record:  # noqa: ANN401 - parts of a form
    return Record(reference="R-1", status="installed", form=parse_form(form), configuration=MADE)


HEAD = "record.reference,record.status,configuration.gear,configuration.lower,configuration.upper,configuration.shaft"
GOOD = "installed,Gear 60,Hinge 200,Arm 400,Shaft 1800"


def test_units_in_cells_and_other_ways_to_write() -> None:
    text = (
        f"{HEAD},transom.top_height_mm,transom.rake_deg,boat.displacement_kg,boat.year,record.date,outcome.fitted_as_proposed\r\n"
        f"R-1,{GOOD},4 ft 2 1/2 in,18°,7.2 t,1975.0,2020-03-04T00:00:00,YES\r\n"
    )
    (row,) = read_records(b"\xef\xbb\xbf" + text.encode(), "fleet.xlsx").rows  # told by content, not by name
    form = row.record.form
    assert form.transom.top_height_mm == pytest.approx(1282.7)  # 50.5 in of 25.4 mm
    assert (form.transom.rake_deg, form.boat.displacement_kg, form.boat.year) == (18, 7200, 1975)
    assert str(row.record.date) == "2020-03-04"
    assert row.record.outcome.fitted_as_proposed is True


@pytest.mark.parametrize("mark", [";", "\t"])
def test_other_separators_with_decimal_commas(mark: str) -> None:
    text = f"{HEAD},transom.top_height_mm\n".replace(",", mark) + f"R-1,{GOOD}".replace(",", mark) + f"{mark}1,27 m\n"
    for data in (text.encode(), text.encode("utf-16")):
        (row,) = read_records(data, "fleet").rows
        assert row.record.form.transom.top_height_mm == 1270


def test_a_workbook_somebody_typed() -> None:
    out = io.BytesIO()
    book = xlsxwriter.Workbook(out, {"in_memory": True})
    book.add_worksheet("cover").write_string(0, 0, "Our fleet")
    sheet = book.add_worksheet("2020")
    sheet.write_row(0, 0, [*HEAD.split(","), "boat.hull_number", "boat.year", "record.date", "", ""])
    sheet.write_row(1, 0, ["R-1", *GOOD.split(","), 17, 1975])
    sheet.write_datetime(
        1, 8, datetime(2020, 3, 4, tzinfo=UTC).replace(tzinfo=None), book.add_format({"num_format": "d mmm yyyy"})
    )
    sheet.write_row(3, 0, ["R-2", *GOOD.split(","), "17 A", "seventy"])
    book.close()
    read = read_records(out.getvalue(), "fleet")
    (row,) = read.rows
    assert (row.sheet, row.row, row.record.form.boat.hull_number, row.record.form.boat.year) == ("2020", 2, "17", 1975)
    assert str(row.record.date) == "2020-03-04"
    (error,) = read.rejected
    assert (error.sheet, error.row, error.column, error.value) == ("2020", 4, "boat.year", "seventy")
    assert "sheet '2020', row 4, column boat.year: " in str(error)


def test_each_bad_row_is_named_and_no_good_one_is_lost() -> None:
    head = f"{HEAD},transom.rake_deg,transom.profile,obstacles,record.date,enquiry.received,outcome.fitted_as_proposed"
    lines = [
        f"R-1,{GOOD},12,,,,,",
        f"R-2,{GOOD},95,,,,,",
        f'R-3,{GOOD},,"[{{""height_mm"":900,""aft_mm"":0}},{{""height_mm"":950,""aft_mm"":0}},{{""height_mm"":0,""aft_mm"":0}}]",,,,',
        f'R-4,{GOOD},,,"[{{""kind"":""lader""}}]",,,',
        f"R-5,{GOOD},,,{{}},,,",
        f"R-6,{GOOD},,,,20200304,5,maybe",
        f"R-1,{GOOD},,,,,,",
        f",{GOOD},,,,,,",
        f"R-8,{GOOD},,,,,,,surplus",
        "R-9,instaled,Gear 60,Hinge 200,Arm 400,,,,,,,",
        f'R-10,{GOOD},,,"{"[" * 100_000}",,,',
        f"R-11,{GOOD},12 or so,,,,,",
        f"R-12,{GOOD},13,,,,,",
    ]
    read = read_records("\n".join([head, *lines]).encode(), "fleet.csv")
    assert [row.record.reference for row in read.rows] == ["R-1", "R-12"]
    found = [(error.row, error.column, error.expected) for error in read.rejected]
    told = {(row, column): expected for row, column, expected in found}
    assert "less than or equal to 80" in told[3, "transom.rake_deg"]
    assert "folds back" in told[4, "transom.profile"]
    assert told[5, "obstacles"].startswith("[0].kind: input should be 'ladder'")
    assert "JSON list" in told[6, "obstacles"]
    assert "YYYY-MM-DD" in told[7, "record.date"]
    assert "YYYY-MM-DDThh:mm:ssZ" in told[7, "enquiry.received"]
    assert "true or false" in told[7, "outcome.fitted_as_proposed"]
    assert told[8, "record.reference"].startswith("row 2 has this reference too")
    assert "required" in told[9, "record.reference"]
    assert "more cells than headings" in told[10, ""]
    assert "'installed'" in told[11, "record.status"]
    assert "required" in told[11, "configuration.shaft"]
    assert "JSON" in told[12, "obstacles"]
    assert (13, "transom.rake_deg") in told
    assert len(found) == len(told) == 14


@pytest.mark.parametrize(
    ("data", "says"),
    [
        (b"", "empty"),
        (b"\xef\xbb\xbf \n", "empty"),
        (b"\x89PNG\r\n\x1a\n" + bytes(100), "PNG picture"),
        (b"PAR1" + bytes(10), "Parquet"),
        (b"PK\x03\x04" + bytes(100), "workbook cannot be opened"),
        (b"\xd0\xcf\x11\xe0" + bytes(100), "workbook cannot be opened"),
        (f"{HEAD},boat.modle\n".encode(), r"row 1: unknown heading 'boat.modle', did you mean 'boat.model'"),
        (f"{HEAD},boat.model,boat.model\n".encode(), "'boat.model' stands twice"),
        (f"{HEAD},,boat.model\n".encode(), "column 7 has no heading"),
        (b"record.reference\n1\n", "heading 'record.status' is missing"),
        (f'{HEAD}\nR-1,"open\n'.encode(), "row 2: .*quote"),
        (
            f"{HEAD}\nR-1,{GOOD}\nR-\x81".encode("latin-1"),
            "line 3: this is not UTF-8, and byte 0x81 is no Windows-1252",
        ),
        (f"{HEAD}\nR-ø,{GOOD}\nR-".encode() + b"\xe5", "line 3 is not UTF-8, but line 2 is; two encodings are mixed"),
        (b'{"a": \n', "line 1: expected JSON"),
        (b"x" * 3_000_000, "field larger than field limit"),
    ],
)
def test_what_is_no_table_of_records_is_refused_with_the_cause(data: bytes, says: str) -> None:
    with pytest.raises(Unreadable, match=rf"thing(?s:.*){says}"):
        read_records(data, "thing")


def refusal_or_rows(data: bytes, name: str) -> Unreadable | tuple[RecordRow, ...]:
    try:
        return read_records(data, name).rows
    except Unreadable as refused:
        return refused


@settings(deadline=None, derandomize=True, max_examples=200)
@given(st.binary(max_size=300), st.sampled_from([b"", b"PK\x03\x04", b"{", HEAD.encode() + b"\n"]))
def test_noise_is_refused_not_crashed_on(noise: bytes, start: bytes) -> None:
    found = refusal_or_rows(start + noise, "thing")
    assert not found or "thing" in str(found)


@settings(deadline=None, derandomize=True, max_examples=100)
@given(st.data())
def test_a_damaged_workbook_is_refused_not_crashed_on(data: st.DataObject) -> None:
    content = bytearray(write_xlsx([record()]))
    for _ in range(data.draw(st.integers(1, 5))):
        content[data.draw(st.integers(0, len(content) - 1))] = data.draw(st.integers(0, 255))
    found = refusal_or_rows(bytes(content[: data.draw(st.integers(10, len(content)))]), "thing")
    assert not isinstance(found, Unreadable) or "thing" in str(found)


def packed(size: int, said: int) -> bytes:
    """Return an archive with one part of `size` bytes, which its directory says are `said`."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr("xl/worksheets/sheet1.xml", bytes(size))
    data = bytearray(out.getvalue())
    at = data.index(b"PK\x01\x02") + 24  # the uncompressed size in the central directory (APPNOTE 4.3.12)
    data[at : at + 4] = said.to_bytes(4, "little")
    return bytes(data)


@pytest.mark.parametrize(("size", "said", "says"), [(10, 2_000_000_000, "unpacks to more"), (20_000_000, 99, "opened")])
def test_a_workbook_that_would_burst_is_refused(size: int, said: int, says: str) -> None:
    with pytest.raises(Unreadable, match=says):
        read_records(packed(size, said), "bomb")
