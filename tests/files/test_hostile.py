"""Files that are mixed, huge, damaged or meant ill: refused with what, where and how to mend it."""

from __future__ import annotations

import io
import struct
import zipfile
import zlib

import pytest
import xlsxwriter

from service.files.read.delimited import delimited
from service.files.read.encoding import encoding_of
from service.files.read.errors import Unreadable
from service.files.read.grid import Layout, open_table
from service.files.read.names_file import read_names
from service.files.read.records_file import open_records, read_records

HEAD = "record.reference,record.status,configuration.gear,configuration.lower,configuration.upper,configuration.shaft"
GOOD = "installed,Gear 60,Hinge 200,Arm 400,Shaft 1800"


def test_each_encoding_is_found_and_a_guess_is_said() -> None:
    text = f"{HEAD},boat.name\nR-1,{GOOD},Høyde\n"
    for encoding, remark in (("utf-8", None), ("utf-8-sig", None), ("utf-16", None), ("utf-16-le", "every other byte")):
        file = open_records(text.encode(encoding), "fleet.csv")
        assert [row.record.form.boat.name for row in file.rows()] == ["Høyde"], encoding  # type: ignore[union-attr]
        assert (remark in file.remarks[0]) if remark else file.remarks == ()
    file = open_records(text.encode("cp1252"), "fleet.csv")
    assert [row.record.form.boat.name for row in file.rows()] == ["Høyde"]  # type: ignore[union-attr]
    assert "read as Windows-1252, for it is no UTF-8: line 2" in file.remarks[0]


def test_a_declared_encoding_is_taken_or_refused() -> None:
    data = "a\nβ\n".encode("iso8859-7")
    assert next(open_table(data, "x", Layout(encoding="iso8859-7")).grids()).rows.__next__() == (2, ["β"])
    with pytest.raises(Unreadable, match=r"x, line 2: this is not UTF-8"):
        encoding_of(data, "x", "utf-8")
    for name in ("klingon", "base64", "a\0b"):
        with pytest.raises(Unreadable, match="encoding"):
            encoding_of(data, "x", name)


def test_two_encodings_in_one_file_are_refused_with_both_lines() -> None:
    data = f"{HEAD}\nR-ø,{GOOD}\n".encode() + f"R-ø,{GOOD}\n".encode("cp1252")
    with pytest.raises(Unreadable, match="line 3 is not UTF-8, but line 2 is; two encodings are mixed"):
        read_records(data, "fleet.csv")


def test_nul_characters_are_named_at_their_cell() -> None:
    text = f"{HEAD},notes\nR-1,{GOOD},a\0b\nR-2,{GOOD},b\n"
    for data in (text.encode(), text.encode("utf-16")):
        read = read_records(data, "fleet.csv")
        assert [row.record.reference for row in read.rows] == ["R-2"]
        ((error),) = read.rejected
        assert (error.row, error.column) == (2, "notes")
        assert "NUL" in error.expected
    line = '{"record.reference": "R-1", "notes": "a\\u0000b"}'
    (error,) = read_records(line.encode(), "fleet.jsonl").rejected
    assert "NUL" in error.expected


def test_too_many_columns_are_refused() -> None:
    data = ",".join(f"c{n}" for n in range(10_000)).encode() + b"\n" + b"," * 9_999
    with pytest.raises(Unreadable, match=r"row 1: 10000 columns are more than the 2000 taken"):
        read_records(data, "wide.csv")


def test_a_row_with_many_surplus_cells_is_one_error() -> None:
    data = f"{HEAD}\nR-1,{GOOD}{',x' * 10_000}\nR-2,{GOOD}\n".encode()
    read = read_records(data, "fleet.csv")
    assert len(read.rows) == len(read.rejected) == 1


def test_an_endless_cell_is_refused_by_its_row() -> None:
    data = f"{HEAD}\nR-1,{GOOD}\nR-2,".encode() + b"x" * 5_000_000
    with pytest.raises(Unreadable, match=r"row 3: a cell has more than 2 million characters"):
        read_records(data, "fleet.csv")


def test_a_file_that_breaks_off_is_refused_before_its_first_row_is_taken() -> None:
    data = f"{HEAD}\n".encode() + b"".join(f"R-{n},{GOOD}\n".encode() for n in range(5000)) + b'R-x,"open'
    with pytest.raises(Unreadable, match=r"row 5002: .*quote"):
        open_records(data, "fleet.csv")


def test_text_that_looks_like_a_formula_is_text() -> None:
    (row,) = read_records(f"{HEAD},boat.name,notes\nR-1,{GOOD},=1+1,'=2\n".encode(), "fleet.csv").rows
    assert (row.record.form.boat.name, row.record.form.notes) == ("=1+1", "=2")


def workbook(*, value: object = "2", error: bool = False, far: bool = False) -> bytes:
    out = io.BytesIO()
    book = xlsxwriter.Workbook(out, {"in_memory": True})
    sheet = book.add_worksheet("fleet")
    sheet.write_row(0, 0, [*HEAD.split(","), "transom.rake_deg"])
    sheet.write_row(1, 0, ["R-1", *GOOD.split(",")])
    if error:
        sheet.write_formula(1, 6, "=NA()", value="#N/A")
    else:
        sheet.write_formula(1, 6, "=1+1", value=value)
    if far:
        sheet.write(1_048_575, 16_383, "x")
    book.close()
    return out.getvalue()


def test_formulas_are_taken_as_last_worked_out_and_said() -> None:
    file = open_records(workbook(value=12), "fleet.xlsx")
    (row,) = file.rows()
    assert row.record.form.transom.rake_deg == 12  # type: ignore[union-attr]
    assert file.remarks == ("1 cells hold formulas; the values they were last worked out to are taken",)


def test_formulas_without_a_value_and_errors_are_not_lost_in_silence() -> None:
    with pytest.raises(Unreadable, match="never worked out; open it in a spreadsheet"):
        open_records(workbook(value=""), "fleet.xlsx")
    assert "1 cells hold an error" in open_records(workbook(error=True), "fleet.xlsx").remarks[-1]


def test_a_cell_at_the_end_of_the_world_is_refused() -> None:
    with pytest.raises(Unreadable, match="span 1048576 rows by 16384 columns; delete what stands far outside"):
        open_records(workbook(far=True), "fleet.xlsx")


@pytest.mark.parametrize("name", ["xl/worksheets/sheet1.xml", "content.xml"])
def test_an_archive_that_says_it_is_two_gigabytes_is_not_unpacked(name: str) -> None:
    data = bytearray(_archive(name, bytes(100)))
    at = data.index(b"PK\x01\x02") + 24  # the uncompressed size in the central directory (APPNOTE 4.3.12)
    struct.pack_into("<I", data, at, 2_000_000_000)
    with pytest.raises(Unreadable, match="unpacks to more than 512 MB"):
        open_table(bytes(data), "bomb")


def test_an_archive_that_lies_about_its_size_is_refused() -> None:
    packer = zlib.compressobj(9, zlib.DEFLATED, -15)
    packed = (
        packer.compress(bytes(1000)) + b"".join(packer.compress(bytes(1_000_000)) for _ in range(50)) + packer.flush()
    )
    data = bytearray(_archive("xl/worksheets/sheet1.xml", packed, method=0))
    for mark, place in ((b"PK\x03\x04", 8), (b"PK\x01\x02", 10)):
        at = data.index(mark)
        struct.pack_into("<H", data, at + place, zipfile.ZIP_DEFLATED)
        struct.pack_into("<I", data, at + place + 14, 1000)
    with pytest.raises(Unreadable, match="cannot be opened"):
        open_table(bytes(data), "bomb")


def _archive(name: str, content: bytes, method: int = zipfile.ZIP_DEFLATED) -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", method) as archive:
        archive.writestr(name, content)
    return out.getvalue()


def test_a_table_that_is_given_up_changes_nothing_for_another() -> None:
    """The csv module has one limit a process: a reader that ends must not shorten the cells of one that still reads."""
    long = b"a,b\n1,2\n3," + b"x" * 500_000 + b"\n"
    first, second = (delimited(long, "utf-8", ",", name) for name in ("first", "second"))
    next(first)
    next(second)
    first.close()
    assert [len(cells[1]) for _, cells in second] == [1, 500_000]
    with pytest.raises(Unreadable, match=r"names.csv: row 2, column name: .* 100,000 characters"):
        read_names(b"name\n" + b"x" * 200_000 + b"\n", "names.csv")
