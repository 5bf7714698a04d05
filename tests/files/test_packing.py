"""What is shipped: lists that add up and that other programs read. All metal invented."""

from __future__ import annotations

import csv
import io
from dataclasses import replace

import pypdf
from python_calamine import CalamineWorkbook

from service.core.catalogue import Catalogue, Configuration
from service.core.fit.fasteners import parts
from service.files.write.packing import (
    NO_TAX,
    PACKED,
    PICKED,
    PRICED,
    Packing,
    packing_csv,
    packing_pdf,
    packing_xlsx,
    picking_csv,
    prices_csv,
)
from tests.support.boats import demo

DEMO = Configuration(gear="gear-720", lower="hinge-60-170", upper="hinge-270-420", shaft="shaft-1350")
TWICE = Configuration(gear="gear-720", lower="hinge-60-170", upper="hinge-60-170", shaft="shaft-1350")


def packing(what: Configuration = DEMO, catalogue: Catalogue | None = None, subject: str = "Tarnholt 36") -> Packing:
    made = catalogue or demo()
    return Packing(what, parts(made, what), made, subject, "catalogue demo-1. Answer 0123456789ab")


def rows(data: bytes) -> list[dict[str, str]]:
    return list(csv.DictReader(io.StringIO(data.decode())))


def test_the_packing_list_holds_every_part_by_carton_with_the_small_ones_called_out() -> None:
    found = rows(packing_csv(packing()))
    assert [row["carton"] for row in found] == sorted(row["carton"] for row in found)
    assert {row["code"] for row in found} == {line.code for line in parts(demo(), DEMO)}
    small = {row["code"] for row in found if row["loose small part"] == "true"}
    assert small == {part.code for part in demo().parts if part.small} & {row["code"] for row in found}
    assert "hinge-pin-14" in small
    assert next(row for row in found if row["code"] == "hinge-pin-14")["number"] == "2", "one for each hinge"
    assert next(row for row in found if row["code"] == "gear-720")["mass, kg"] == "24"


def test_the_pick_list_names_each_code_once() -> None:
    found = rows(picking_csv(packing(TWICE)))
    codes = [row["code"] for row in found]
    assert codes == sorted(set(codes))
    assert next(row for row in found if row["code"] == "hinge-60-170")["number"] == "2"


def test_prices_are_the_catalogues_and_add_up_without_tax() -> None:
    """By hand from the demo catalogue: 3650 + 392 + 310 + 420 = 4772; twice the short hinge: 3650 + 392 + 2 x 310 = 4662."""
    for what, total in ((DEMO, "4772"), (TWICE, "4662")):
        found = rows(prices_csv(packing(what)))
        assert found[-1]["code"] == "total"
        assert float(found[-1]["amount"]) == float(total)
        assert {row["currency"] for row in found} == {demo().currency}
        assert not any("tax" in heading or "vat" in heading for heading in found[0])


def test_the_workbook_holds_the_three_lists() -> None:
    book = CalamineWorkbook.from_filelike(io.BytesIO(packing_xlsx(packing())))
    assert book.sheet_names == ["packing", "picking", "prices"]
    heads = [book.get_sheet_by_name(name).to_python()[0] for name in book.sheet_names]
    assert heads == [list(PACKED), list(PICKED), list(PRICED)]
    assert book.get_sheet_by_name("prices").to_python()[-1][4] == 4772


def test_the_paper_says_the_same_and_a_hostile_name_is_only_a_name() -> None:
    data = packing_pdf(packing(subject="=1+1 <b>Tarnholt</b> & Co"))
    pages = [" ".join(page.extract_text().split()) for page in pypdf.PdfReader(io.BytesIO(data)).pages]
    whole = " ".join(pages)
    assert "=1+1 <b>Tarnholt</b> & Co" in whole
    assert "4,772.00" in whole
    assert NO_TAX in whole
    assert "LOOSE" in whole
    for line in parts(demo(), DEMO):
        assert line.code in pages[0]
        assert line.code in pages[1]


def test_each_list_has_a_page_of_its_own_and_no_price_lies_in_the_carton() -> None:
    """The demo's masses by hand: gear 24, shaft 9.6, hinges 4.2 and 7.1 make 44.9 kg; the rest has none in the catalogue."""
    made = replace(packing(), going_to="Saltgate Marine, GB", not_shipped=("Sealant for the bolt holes",))
    read = pypdf.PdfReader(io.BytesIO(packing_pdf(made)))
    pages = [" ".join(page.extract_text().split()) for page in read.pages]
    assert len(pages) == 3
    marks = [str(one.title) for one in read.outline if not isinstance(one, list)]
    for page, title in zip(pages, ("Packing list", "Pick list", "Prices"), strict=True):
        assert page.startswith(title)
        assert "Saltgate Marine, GB" in page
        assert any(marked.startswith(title) for marked in marks)
    assert [demo().currency in page for page in pages] == [False, False, True]
    assert "6 cartons, 30 pieces, at least 44.9 kg" in pages[0]
    assert "Carton B: 7.1 kg" in pages[0]
    assert "Carton flat: mass not in the catalogue" in pages[0]
    assert "Sealant for the bolt holes" in pages[0]
    assert "Sealant" not in pages[1]


def test_a_text_that_a_spreadsheet_would_take_for_a_formula_is_text() -> None:
    parts_ = tuple(p.model_copy(update={"name": "=cmd()"}) if p.code == "line-8" else p for p in demo().parts)
    data = packing_csv(packing(catalogue=demo().model_copy(update={"parts": parts_})))
    assert b",'=cmd()," in data


def test_the_same_parts_give_the_same_bytes() -> None:
    for make in (packing_csv, picking_csv, prices_csv, packing_xlsx, packing_pdf):
        assert make(packing()) == make(packing())
