from __future__ import annotations

from pathlib import Path

import pytest

from service.core.form import FormError
from service.files.read.catalogue_file import read_catalogue
from service.files.read.errors import Unreadable
from service.files.read.hulls_file import read_hulls

CATALOGUE = Path(__file__).parents[2] / "seed_fixtures" / "catalogue.toml"


def test_hulls_are_read_with_aliases_and_units() -> None:
    lines = [
        "id,builder,model,aliases,first_year,loa_mm,displacement_kg,stern",
        "h1,Ostrel Yard,Tern 31,T31| Tern31 |,1972,31 ft,4.3 t,raked",
        ",,Kittar 28,,,,,",
    ]
    read = read_hulls("\n".join(lines).encode(), "hulls.csv")
    first, second = (row.line for row in read.rows)
    assert read.rejected == ()
    assert (first.id, first.aliases, first.first_year, first.stern) == ("h1", ("T31", "Tern31"), 1972, "raked")
    assert first.loa_mm == pytest.approx(9448.8)  # 31 ft of 304.8 mm
    assert first.displacement_kg == 4300
    assert second.model_dump(exclude_none=True) == {"model": "Kittar 28", "aliases": ()}


def test_wrong_hulls_are_named_and_the_right_ones_kept() -> None:
    lines = ["model,first_year,last_year,loa_mm,stern", "A,1980,1970,,", "B,19,,,", "C,,,-5,", "D,,,,rakd", ",1970,,,"]
    read = read_hulls("\n".join([*lines, "E,,,9000,plumb"]).encode(), "hulls.csv")
    assert [row.line.model for row in read.rows] == ["E"]
    assert [(e.row, e.column) for e in read.rejected] == [
        (2, "form"),
        (3, "first_year"),
        (4, "loa_mm"),
        (5, "stern"),
        (6, "model"),
    ]
    assert "1980 comes after" in read.rejected[0].expected


def test_hulls_need_a_model_and_are_no_json() -> None:
    with pytest.raises(Unreadable, match="heading 'model' is missing"):
        read_hulls(b"builder\nOstrel\n", "hulls.csv")
    with pytest.raises(Unreadable, match="CSV or XLSX"):
        read_hulls(b"{}", "hulls.json")


def test_a_catalogue_is_read() -> None:
    assert read_catalogue(b"\xef\xbb\xbf" + CATALOGUE.read_bytes(), "demo").gears


@pytest.mark.parametrize(
    ("data", "says"),
    [
        (b" ", "empty"),
        (b"\x89PNG\r\n", "line 1: this is not UTF-8"),
        (b"[catalogue]\nname = \n", "no TOML: .*line 2"),
        (b"a = " + b"[" * 20_000, "too deep|no TOML"),
        (b"#" * 9_000_000, "no catalogue"),
    ],
)
def test_what_is_no_catalogue_is_refused(data: bytes, says: str) -> None:
    with pytest.raises(Unreadable, match=f"thing.*(?:{says})"):
        read_catalogue(data, "thing")


def test_a_defective_catalogue_lists_its_defects() -> None:
    upside_down = CATALOGUE.read_text("utf-8").replace("[[gear]]", "[[geer]]", 1)
    with pytest.raises(FormError) as caught:
        read_catalogue(upside_down.encode(), "demo")
    assert any("gear" in str(defect) for defect in caught.value.defects)
