from __future__ import annotations

from pathlib import Path

import pytest

from service.core.record import HullModel
from service.files.read.errors import Unreadable
from service.flow.import_hulls import import_hulls
from service.flow.import_report import ImportReport
from service.store.unit import Store

HULLS = Path(__file__).parents[2] / "seed_fixtures" / "hulls.csv"
HEAD = "id,builder,model,aliases,first_year,last_year,loa_mm,stern\n"
TERN = "tern,Ostrel Yard,Tern 31,T31,1972,1979,9450,raked\n"


def taken(store: Store, text: str, *, preview: bool = False) -> ImportReport:
    return import_hulls(store.writing(), text.encode(), "hulls.csv", preview=preview)


def hulls(store: Store) -> dict[str, HullModel]:
    with store.reading() as uow:
        return {hull.id: hull for hull in uow.hulls.all()}


def test_the_demos_hulls_come_in_and_a_second_time_nothing_changes(store: Store) -> None:
    lines = len(HULLS.read_text("utf-8").splitlines()) - 1
    first = import_hulls(store.writing(), HULLS.read_bytes(), "hulls.csv")
    assert first.whole
    assert len(first.created) == len(hulls(store)) == lines
    again = import_hulls(store.writing(), HULLS.read_bytes(), "hulls.csv")
    assert (again.created, again.updated, len(again.unchanged)) == ((), (), lines)


def test_a_preview_writes_nothing(store: Store) -> None:
    report = taken(store, HEAD + TERN, preview=True)
    assert (report.created, report.preview) == (("tern",), True)
    assert hulls(store) == {}
    import_hulls(store.reading(), (HEAD + TERN).encode(), "x", preview=True)  # and needs no right to write


def test_what_a_row_does_not_say_stays(store: Store) -> None:
    taken(store, HEAD + TERN)
    report = taken(store, "builder,model,aliases,loa_mm\nostrel  yard,TERN 31,Tern31,9500\n")
    assert report.updated == ("tern",)
    assert set(report.changes["tern"]) == {"builder", "model", "aliases", "loa_mm"}
    tern = hulls(store)["tern"]
    assert (tern.loa_mm, tern.first_year, tern.stern, set(tern.aliases)) == (9500, 1972, "raked", {"T31", "Tern31"})


def test_a_name_used_again_years_later_is_another_model(store: Store) -> None:
    taken(store, HEAD + TERN)
    report = taken(store, HEAD + ",Ostrel Yard,Tern 31,,1999,2005,9600,scoop\n")
    assert len(report.created) == 1
    assert len(hulls(store)) == 2
    later = taken(store, HEAD + ",Ostrel Yard,Tern 31,,2000,2005,9650,scoop\n")  # overlapping years: the later one
    assert later.updated == report.created


def test_a_name_that_could_be_two_is_not_guessed(store: Store) -> None:
    taken(store, HEAD + TERN + ",Ostrel Yard,Tern 31,,1999,2005,9600,scoop\n")
    report = taken(store, HEAD + ",Ostrel Yard,Tern 31,,,,9999,\n")
    (error,) = report.rejected
    assert (error.row, error.column) == (2, "id")
    assert "tern, " in error.expected or ", tern" in error.expected


def test_one_model_twice_in_a_file(store: Store) -> None:
    report = taken(store, HEAD + TERN + ",Ostrel Yard,Tern 31,,1972,1979,9000,\n")
    (error,) = report.rejected
    assert (error.row, error.expected) == (3, "row 2 is this hull model too; keep one of them")
    assert hulls(store)["tern"].loa_mm == 9450


def test_bad_rows_keep_no_good_one_out(store: Store) -> None:
    taken(store, HEAD + TERN)
    report = taken(
        store,
        "id,model,first_year,loa_mm\ntern,Tern 31,1990,\n,Kittar 28,1970,8 feet or so\n,Havdun 33,1976,33 ft\n",
    )
    assert [(error.row, error.column) for error in report.rejected] == [(2, "first_year"), (3, "loa_mm")]
    assert "1990 to 1979" in report.rejected[0].expected
    assert not report.whole
    assert {hull.model for hull in hulls(store).values()} == {"Tern 31", "Havdun 33"}


def test_a_file_that_is_no_list_writes_nothing(store: Store) -> None:
    with pytest.raises(Unreadable, match="unknown heading 'modell'"):
        taken(store, "modell\nTern 31\n")
    assert hulls(store) == {}


def test_progress_is_told_for_every_row(store: Store) -> None:
    told: list[int] = []
    import_hulls(store.writing(), HULLS.read_bytes(), "hulls.csv", progress=told.append)
    assert sum(told) == len(hulls(store))
