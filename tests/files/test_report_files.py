"""Reports as files: the same numbers in every format, the same bytes every time, and nothing that a reader cannot open."""

from __future__ import annotations

import io
import re
import zipfile
from datetime import date
from html.parser import HTMLParser
from xml.etree import ElementTree as ET

import pyarrow.parquet as pq
import pypdf
import pytest
from python_calamine import CalamineWorkbook

from service.core.report import Cell, Column, LeftOut, Plot, Report, Table, about
from service.files.write.charts import bar_labels, chart, headed_by
from service.files.write.report_files import FORMATS, report_files

ROWS: tuple[tuple[Cell, ...], ...] = (
    ("shaft-1350", 163, 0.3159, 0.2769, 0.3569, 2.25),
    ("=cmd|' /C calc'!A0", 77, 0.1492, 0.1204, 0.1816, None),
    ("Чайка <b>&", 1, 0.0019, 0.0, 0.0089, 0.04),
)
COLUMNS = (
    Column(name="code", heading="shaft"),
    Column(name="boats", heading="boats", kind="whole"),
    Column(name="share", heading="share", kind="share"),
    Column(name="low", heading="from", kind="share"),
    Column(name="high", heading="to", kind="share"),
    Column(name="mean", heading="expected", kind="number", unit="pieces"),
)
QUARTERS = Table(
    id="quarters",
    title="Boats by quarter",
    columns=(
        Column(name="quarter", heading="quarter"),
        Column(name="counted", heading="boats", kind="whole"),
        Column(name="expected", heading="expected", kind="number"),
        Column(name="low", heading="95 % from", kind="whole"),
        Column(name="high", heading="to", kind="whole"),
    ),
    rows=(("2025 Q3", 4, None, None, None), ("2025 Q4", 7, None, None, None), ("2026 Q1", None, 6.8, 2, 12)),
    shown=0,
)
SAID = Table(
    id="said",
    title="How true chances were",
    columns=(
        Column(name="said", heading="said", kind="share"),
        Column(name="share", heading="installed", kind="share"),
        Column(name="low", heading="from", kind="share"),
        Column(name="high", heading="to", kind="share"),
    ),
    rows=((0.35, 0.4, 0.23, 0.59), (0.7, 0.66, 0.4, 0.9)),
)
BINS = Table(
    id="bins",
    title="Were the chances true?",
    columns=(Column(name="bin", heading="transform"), Column(name="share", heading="share", kind="share")),
    rows=(("0.0 to 0.5", 0.52), ("0.5 to 1.0", 0.48)),
    shown=0,
)


def made(shafts: Table | None = None) -> Report:
    shafts = shafts or Table(
        id="shafts", title="Shafts", columns=COLUMNS, rows=ROWS, note="Shares of 516 boats.", shown=2
    )
    ends = {"low": "low", "high": "high"}
    return Report(
        name="demand",
        title="Demand: what is needed",
        as_of=date(2026, 1, 15),
        first=date(2020, 1, 1),
        last=None,
        filters={"statuses": "shipped, installed"},
        counts={"boats counted": 516},
        left_out=(LeftOut(what="withdrawn records", count=50, why="no metal stayed on a boat"),),
        findings=("most needed shaft: shaft-1350",),
        tables=(shafts, QUARTERS, SAID, BINS),
        plots=(
            Plot(
                id="shafts",
                table="shafts",
                title="Shafts",
                form="bars",
                label="code",
                value="share",
                axis="share",
                **ends,
            ),
            Plot(
                id="quarters",
                table="quarters",
                title="Quarters",
                form="series",
                label="quarter",
                value="counted",
                **ends,
            ),
            Plot(id="said", table="said", title="Said", form="calibration", label="said", value="share", **ends),
            Plot(id="bins", table="bins", title="Bins", form="histogram", label="bin", value="share", level=0.5),
        ),
        sources=("hand-made",),
        catalogue="demo-1",
        software="transom-ledger test",
    )


@pytest.fixture(scope="module")
def files() -> dict[str, bytes]:
    return report_files(made())


def test_the_same_report_gives_the_same_bytes(files: dict[str, bytes]) -> None:
    assert report_files(made()) == files
    assert {name.rsplit(".", 1)[1] for name in files} == set(FORMATS)


def test_only_the_formats_asked_for_are_written() -> None:
    assert list(report_files(made(), ("json",))) == ["demand.json"]


def test_json_is_the_report(files: dict[str, bytes]) -> None:
    assert Report.model_validate_json(files["demand.json"]) == made()


def test_a_workbook_has_real_numbers_and_text_that_stays_text(files: dict[str, bytes]) -> None:
    book = CalamineWorkbook.from_filelike(io.BytesIO(files["demand.xlsx"]))
    assert book.sheet_names == ["about", "shafts", "quarters", "said", "bins"]
    rows = book.get_sheet_by_name("shafts").to_python()
    assert rows[0] == ["shaft", "boats", "share", "share from", "share to", "expected (pieces)"]
    assert [list(row) for row in rows[1:]] == [["" if cell is None else cell for cell in row] for row in ROWS]
    said = {row[0]: row[1] for row in book.get_sheet_by_name("about").to_python()}
    assert said["count: boats counted"] == 516
    assert said["left out: withdrawn records"] == "50: no metal stayed on a boat"


def test_a_workbooks_headings_stay_and_its_charts_follow_the_cells(files: dict[str, bytes]) -> None:
    with zipfile.ZipFile(io.BytesIO(files["demand.xlsx"])) as book:
        names = book.namelist()
        sheets = [book.read(name).decode() for name in names if re.fullmatch(r"xl/worksheets/sheet\d+\.xml", name)]
        charts = [book.read(name).decode() for name in names if name.startswith("xl/charts/chart")]
    assert all('state="frozen"' in sheet for sheet in sheets)
    assert not any("<f>" in sheet for sheet in sheets)
    assert len(charts) == 4
    assert any("shafts!$C$2:$C$4" in one and "c:errBars" in one for one in charts)
    assert any("quarters!$D$2:$D$4" in one for one in charts)


DRAWN = {"c": "http://schemas.openxmlformats.org/drawingml/2006/chart"}
"""ECMA-376, part 1, 21.2: DrawingML charts."""


def axes_of(chart_: bytes) -> dict[str, dict[str, str | None]]:
    """Return what stands along each axis of a workbook's chart, which way it goes and where it begins, by the axis' kind."""
    root = ET.fromstring(chart_)  # noqa: S314 - made here
    found: dict[str, dict[str, str | None]] = {}
    for kind in ("catAx", "valAx"):
        for axis in root.findall(f".//c:{kind}", DRAWN):
            title, least = axis.find("c:title", DRAWN), axis.find("c:scaling/c:min", DRAWN)
            way = axis.find("c:scaling/c:orientation", DRAWN)
            found[kind] = {
                "title": None if title is None else "".join(title.itertext()),
                "way": None if way is None else way.get("val"),
                "least": None if least is None else least.get("val"),
            }
    return found


def test_a_workbooks_bars_grow_from_nought_with_the_first_on_top(files: dict[str, bytes]) -> None:
    with zipfile.ZipFile(io.BytesIO(files["demand.xlsx"])) as book:
        charts = [book.read(name) for name in book.namelist() if name.startswith("xl/charts/chart")]
    lying = next(one for one in charts if b"shafts!$C$2:$C$4" in one)
    assert b'<c:barDir val="bar"/>' in lying
    assert axes_of(lying) == {
        "catAx": {"title": None, "way": "maxMin", "least": None},
        "valAx": {"title": "share", "way": "minMax", "least": "0"},
    }
    standing = axes_of(next(one for one in charts if b"bins!" in one))
    assert standing["catAx"]["title"] == "transform"
    assert str(standing["valAx"]["title"]).endswith("50 % each where chances are true")


def test_bars_stand_under_headings_only_where_their_groups_do_not_come_again() -> None:
    columns = (
        Column(name="of", heading="by"), Column(name="which", heading="which"),
        Column(name="share", heading="share", kind="share"),
    )  # fmt: skip
    plot = Plot(id="t", table="t", title="t", form="bars", label="which", value="share")

    def said(*rows: tuple[Cell, ...]) -> tuple[list[str], bool]:
        table = Table(id="t", title="t", columns=columns, rows=rows)
        return bar_labels(table, plot), headed_by(table, plot)

    one, two, other = ("stern", "raked", 0.3), ("stern", "plumb", 0.2), ("country", "SE", 0.1)
    assert said(one, two, other) == (["raked", "plumb", "SE"], True)
    assert said(one, other, two) == (["stern: raked", "country: SE", "stern: plumb"], False)
    assert said(one, other) == (["raked", "SE"], False)


def test_a_code_is_never_broken_on_a_page_or_on_paper() -> None:
    columns = tuple(Column(name=f"c{n}", heading="enquiry or record") for n in range(7))
    cell = "gear-720 · outrigger-aft-400-600 · hinge-150-290"
    wide = Table(id="shafts", title="Wide", columns=columns, rows=(("2025-10-23", *[cell] * 6),))
    found = report_files(made(wide).model_copy(update={"plots": ()}), ("html", "pdf"))
    assert b'<span class="w">outrigger-aft-400-600</span>' in found["demand.html"]
    assert b'<span class="w">2025-10-23</span>' in found["demand.html"]
    fewer = wide.model_copy(update={"columns": columns[:4], "rows": (wide.rows[0][:4],)})
    paper = report_files(made(fewer).model_copy(update={"plots": ()}), ("pdf",))["demand.pdf"]
    words = "\n".join(page.extract_text() for page in pypdf.PdfReader(io.BytesIO(paper)).pages)
    assert words.count("outrigger-aft-400-600") == 3
    assert "2025-10-23" in words


def test_csv_guards_text_and_no_number(files: dict[str, bytes]) -> None:
    lines = files["demand-shafts.csv"].decode().split("\r\n")
    assert lines[0] == "code,boats,share,low,high,mean"
    assert lines[1] == "shaft-1350,163,0.3159,0.2769,0.3569,2.25"
    assert lines[2].startswith("'=cmd|")
    told = files["demand-about.csv"].decode()
    assert "period,from 2020-01-01" in told
    assert "left out: withdrawn records,50: no metal stayed on a boat" in told


def test_parquet_has_types(files: dict[str, bytes]) -> None:
    table = pq.read_table(io.BytesIO(files["demand-shafts.parquet"]))
    kinds = {field.name: str(field.type) for field in table.schema}
    assert kinds == {
        "code": "string",
        "boats": "int64",
        "share": "double",
        "low": "double",
        "high": "double",
        "mean": "double",
    }
    assert [tuple(row.values()) for row in table.to_pylist()] == list(ROWS)


class Page(HTMLParser):
    """Collects what a page is made of."""

    def __init__(self) -> None:
        super().__init__()
        self.open: list[str] = []
        self.ids: list[str] = []
        self.links: list[str] = []
        self.text: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if tag not in ("meta", "br"):
            self.open.append(tag)
        for name, value in attrs:
            if name == "id":
                self.ids.append(str(value))
            if name in ("src", "href") and value and not value.startswith("#"):
                self.links.append(value)

    def handle_endtag(self, tag: str) -> None:
        assert self.open.pop() == tag

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.handle_starttag(tag, attrs)
        if self.open and self.open[-1] == tag:
            self.open.pop()

    def handle_data(self, data: str) -> None:
        self.text.append(data)


def test_the_page_needs_nothing_else_and_hides_nothing(files: dict[str, bytes]) -> None:
    text = files["demand.html"].decode()
    page = Page()
    page.feed(text)
    assert page.open == []
    assert len(page.ids) == len(set(page.ids))
    assert page.links == []
    assert text.count("<svg") == 4
    words = " ".join(page.text)
    for said in (
        "from 2020-01-01",
        "50 (no metal stayed on a boat)",
        "31.6 %",
        "and 1 more rows",
        "hand-made",
        "2026 Q1",
    ):
        assert said in words
    assert "=cmd" in words
    assert "<b>&" not in text


def test_every_reference_within_a_plot_finds_what_it_names(files: dict[str, bytes]) -> None:
    text = files["demand.html"].decode()
    ids = set(re.findall(r'\bid="([^"]+)"', text))
    named = set(re.findall(r'(?:xlink:href="#|url\(#)([^")]+)', text))
    assert named
    assert named <= ids


def test_the_paper_says_the_same(files: dict[str, bytes]) -> None:
    paper = pypdf.PdfReader(io.BytesIO(files["demand.pdf"]))
    words = " ".join(page.extract_text() for page in paper.pages)
    for said in (
        "Demand: what is needed",
        "As of 2026-01-15, from 2020-01-01",
        "31.6 %",
        "withdrawn records",
        "shaft-1350",
    ):
        assert said in words
    assert paper.metadata is not None
    assert paper.metadata.title == "Demand: what is needed"
    assert sum(len(page.images) for page in paper.pages) == 4


def test_plots_are_grey(files: dict[str, bytes]) -> None:
    del files
    for plot in made().plots:
        root = ET.fromstring(chart(made(), plot))  # noqa: S314 - made here
        colours = {c for node in root.iter() for c in re.findall(r"#[0-9a-fA-F]{6}", node.get("style") or "")}
        assert colours
        assert all(c[1:3] == c[3:5] == c[5:7] for c in colours), plot.id


def test_a_report_of_nothing_can_be_written() -> None:
    bare = Table(id="shafts", title="Shafts", columns=COLUMNS, rows=())
    empty = made(bare).model_copy(update={"tables": (bare,), "plots": (), "findings": ("no record counts",)})
    found = report_files(empty)
    assert b"Nothing to show" in found["demand.html"]
    assert pq.read_table(io.BytesIO(found["demand-shafts.parquet"])).num_rows == 0


def test_what_a_report_says_of_itself_names_all_of_it() -> None:
    said = dict(about(made()))
    assert said["report"] == "Demand: what is needed"
    assert {"as of", "period", "filter: statuses", "finding", "source", "catalogue", "software"} <= set(said)
