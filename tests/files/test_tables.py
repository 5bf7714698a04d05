from __future__ import annotations

import csv
import io
import zipfile
from datetime import UTC, datetime
from typing import Any, get_args

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from python_calamine import CalamineWorkbook

from service.core.boat import METHODS, OBSTACLE_KINDS, BoatForm
from service.core.catalogue import Configuration
from service.core.form import parse_form
from service.core.record import Record, RecordedPlacement, Status
from service.core.revision import Revision
from service.files.cells import guard, unguard
from service.files.columns import columns
from service.files.read.records_file import read_records
from service.files.write.tables import Unwritable, write_csv, write_jsonl, write_xlsx

MADE = Configuration(gear="Gear 60", lower="Hinge 200", upper="Arm 400", shaft="Shaft 1800")

# --- any record at all ----------------------------------------------------------------------------------

# Formula signs, guards, numbers in disguise, escapes of worksheets and whole planes of other characters. An empty
# word is left out: in a table it cannot be told from nothing said. U+FFFE and U+FFFF are no characters (XML 1.0, 2.2),
# and NUL is none that both databases can hold.
words = st.one_of(
    st.sampled_from(["=1+1", "'=1+1", "''", "'", "007", "1e5", "-5", "+47 22 33", "@x", "_x0041_", "a;b", 'a"b']),
    st.sampled_from("=+-@＝＋－＠'").map(lambda sign: f"{sign}1"),  # noqa: RUF001 - meant
    st.text(st.characters(codec="utf-8", exclude_characters="\0\ufffe\uffff"), min_size=1, max_size=20),
).filter(lambda text: text.strip() != "")  # fmt: skip
lengths = st.floats(-60_000, 60_000, allow_nan=False)
sizes = st.floats(0, 60_000, allow_nan=False)
spans = st.tuples(lengths, lengths).map(sorted).map(list) | st.sampled_from([[None, 5.5], [-3, None]])


def maybe(**parts: st.SearchStrategy[Any]) -> st.SearchStrategy[dict[str, Any]]:
    """Draw some of the parts."""
    return st.fixed_dictionaries({}, optional=parts)


times = st.datetimes(timezones=st.just(UTC)).map(datetime.isoformat)
sides = st.lists(st.sampled_from(["centre", "port"]), max_size=2)
datums = st.fixed_dictionaries({"field": words, "value_mm": lengths, "datum": st.just("keel")})
obstacles = st.fixed_dictionaries(
    {"kind": st.sampled_from(OBSTACLE_KINDS)},
    optional={"note": words, "aft_mm": spans, "removable": st.booleans(), "size_mm": maybe(aft=sizes)},
)  # fmt: skip
profiles = st.lists(lengths, min_size=2, max_size=4, unique=True).map(
    lambda heights: [{"height_mm": h, "aft_mm": h / 7} for h in sorted(heights)]
)
boats = st.fixed_dictionaries(
    {},
    optional={
        "model": words, "name": words, "hull_number": words, "year": st.integers(1850, 2100), "loa_mm": sizes,
        "displacement_kg": st.floats(1, 500_000), "stern": st.sampled_from(["plumb", "scoop"]),
    },
)  # fmt: skip
forms = st.fixed_dictionaries(
    {},
    optional={
        "boat": boats,
        "contact": maybe(name=words, phone=words),
        "enquiry": maybe(received=times, dealer=words),
        "transom": maybe(rake_deg=st.floats(-80, 80), profile=profiles, camber_mm=lengths),
        "main_rudder": maybe(number=st.sampled_from([1, 2]), hung=st.just("inboard")),
        "obstacles": st.lists(obstacles, max_size=2),
        "preferences": maybe(avoid=sides),
        "other_datum": st.lists(datums, max_size=1),
        "methods": st.dictionaries(st.sampled_from(["*", "transom.rake_deg"]), st.sampled_from(METHODS), max_size=2),
        "uncertainties": st.dictionaries(st.just("transom.rake_deg"), sizes, max_size=1),
        "notes": words,
    },
)  # fmt: skip
records = st.builds(
    lambda reference, status, day, dealer, hull, form, offset, outcome: Record.model_validate(
        {
            "reference": reference, "status": status, "date": day, "dealer": dealer, "hull": hull, "form": form,
            "configuration": MADE.model_dump(), "placement": {"offset_mm": offset}, "outcome": outcome,
            "catalogue": hull,
        }
    ),
    words, st.sampled_from(get_args(Status)), st.none() | st.dates(), st.none() | words, st.none() | words, forms,
    st.none() | lengths, maybe(fitted_as_proposed=st.booleans(), note=words),
)  # fmt: skip
fleets = st.lists(records, max_size=3, unique_by=lambda record: record.reference)


def history(record: Record, *earlier: Record) -> tuple[Revision, ...]:
    at = datetime(2024, 1, 1, 1, 2, 3, 4, tzinfo=UTC)
    return tuple(
        Revision(number=n, who="ada", at=at, why="=why", record=r) for n, r in enumerate((*earlier, record), start=1)
    )


@settings(deadline=None, derandomize=True, max_examples=150)
@given(fleets)
def test_records_come_back_from_every_format(fleet: list[Record]) -> None:
    histories = [history(record, record.model_copy(update={"form": BoatForm()})) for record in fleet]
    for data in (write_csv(fleet), write_xlsx(fleet), write_jsonl(histories) or write_csv(fleet)):
        read = read_records(data, "fleet")
        assert read.rejected == ()
        assert [row.record for row in read.rows] == fleet
    if fleet:
        assert [row.revisions for row in read.rows] == histories


@settings(deadline=None, derandomize=True, max_examples=300)
@given(words)
def test_guards_come_off_again_and_hold(text: str) -> None:
    assert unguard(guard(text)) == text
    assert guard(text)[0] not in "=+-@\t\r\n\0＝＋－＠"  # noqa: RUF001 - the full-width forms are meant


# --- what a table looks like ------------------------------------------------------------------------------


def record(reference: str = "R-1", **form: Any) -> Record:  # noqa: ANN401 - parts of a form
    return Record(reference=reference, status="installed", form=parse_form(form), configuration=MADE)


def test_headings_are_the_contracts() -> None:
    # The names in the contract for records, and some of the boat form's.
    names = {column.name for column in columns()}
    assert names >= {
        "record.reference", "record.status", "record.date", "record.dealer", "record.catalogue", "record.hull",
        "configuration.gear", "configuration.lower", "configuration.upper", "configuration.shaft",
        "placement.offset_mm", "placement.shaft_aft_mm", "placement.lower_height_mm", "placement.upper_height_mm",
        "placement.shaft_bottom_mm", "outcome.fitted_as_proposed", "outcome.note", "boat.model", "transom.rake_deg",
        "transom.profile", "obstacles", "main_rudder.trailing_edge_aft_mm", "notes",
    }  # fmt: skip


def csv_row(fleet: list[Record]) -> dict[str, str]:
    return next(csv.DictReader(io.StringIO(write_csv(fleet).decode(), newline="")))


def test_the_guard_stands_before_text_only() -> None:
    odd = record(boat={"name": "=HYPERLINK(1)", "hull_number": "-17"}, transom={"rake_deg": -12.5}).model_copy(
        update={"placement": RecordedPlacement(offset_mm=-210)}
    )
    row = csv_row([odd])
    assert row["boat.name"] == "'=HYPERLINK(1)"
    assert row["boat.hull_number"] == "'-17"
    assert row["transom.rake_deg"] == "-12.5"
    assert row["placement.offset_mm"] == "-210"


def test_a_workbook_holds_no_formula_and_numbers_as_numbers() -> None:
    data = write_xlsx([record(boat={"name": "=1+1"}, transom={"rake_deg": -12.5, "top_height_mm": 0.1 + 0.2})])
    with zipfile.ZipFile(io.BytesIO(data)) as packed:
        assert b"<f>" not in packed.read("xl/worksheets/sheet1.xml")
    headings, cells = CalamineWorkbook.from_filelike(io.BytesIO(data)).get_sheet_by_name("records").to_python()
    row = dict(zip(headings, cells, strict=True))
    assert row["boat.name"] == "=1+1"
    assert row["transom.rake_deg"] == -12.5
    assert row["transom.top_height_mm"] == "0.30000000000000004"  # 17 digits: a number cell would lose the last


def test_the_same_records_give_the_same_bytes() -> None:
    assert write_xlsx([record()]) == write_xlsx([record()])


def test_what_a_cell_cannot_hold_is_refused_by_name() -> None:
    many = record(obstacles=[{"kind": "other", "note": "x" * 2000}] * 20)
    with pytest.raises(Unwritable, match=r"'R-1', column obstacles: .*32767; export CSV or JSON lines"):
        write_xlsx([many])
    with pytest.raises(Unwritable, match=r"column notes"):
        write_xlsx([record(notes="a\ufffeb")])
    assert [row.record for row in read_records(write_csv([many]), "x.csv").rows] == [many]
