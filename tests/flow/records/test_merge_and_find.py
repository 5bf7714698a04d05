from __future__ import annotations

from collections.abc import Callable
from datetime import date

import pytest

from service.core.boat import BoatForm
from service.core.form import parse_form
from service.core.measurement import taken_from
from service.core.record import HullModel
from service.flow.edit_record import correct_record
from service.flow.find_records import Found, Wanted, find_records
from service.flow.merge_records import merge_records, unmerge_records
from service.flow.record_history import show_record
from service.flow.refusal import Refused
from service.store.unit import Store
from tests.flow.records.conftest import FORM, KIT, OTHER_KIT, START, record

MORE = {"boat": {**FORM["boat"], "hull_number": "17"}, "transom": {"top_height_mm": 905, "camber_mm": 30}}


@pytest.fixture
def twice(store: Store) -> Store:
    """Return a database in which one installation stands twice: the second says more, and one thing otherwise."""
    second = record("R-9", form=MORE, dealer="Quai 9", placement={"offset_mm": 12})
    with store.writing() as uow:
        uow.records.add(second, who="cy", why="found in a drawer")
        rows = taken_from(second.form, who="cy", at=START, source="drawer")
        uow.records.measurements.add({"R-9": rows})
        uow.commit()
    return store


def test_a_preview_tells_what_a_merge_does_and_writes_nothing(twice: Store) -> None:
    told = merge_records(twice.reading(), "2025-001", "R-9", who="bo", preview=True)
    assert told.preview
    with twice.reading() as uow:
        assert uow.records.count() == 3
        assert len(uow.records.history("2025-001")) == 1
    done = merge_records(twice.writing(), "2025-001", "R-9", who="bo")
    assert (told.taken, told.differs, told.number + 1) == (done.taken, done.differs, done.number)


def test_a_merge_fills_gaps_redirects_and_keeps_all(twice: Store) -> None:
    done = merge_records(twice.writing(), "2025-001", "R-9", who="bo", why="same hull number")
    taken = {c.field: c.after for c in done.taken}
    assert (taken["boat.hull_number"], taken["transom.camber_mm"], taken["placement.offset_mm"]) == ("17", 30, 12)
    assert taken["record.dealer"] == "Quai 9"
    assert {(c.field, c.before, c.after) for c in done.differs} == {("transom.top_height_mm", 900, 905)}
    shown = show_record(twice.reading(), "R-9")
    assert (shown.record.reference, shown.took_in) == ("2025-001", ("R-9",))
    assert "R-9 was merged into 2025-001" in shown.notes[0]
    assert shown.record.form.transom.top_height_mm == 900
    assert 905 in {row.value for row in shown.measured}
    with twice.reading() as uow:
        assert {r.reference for r in uow.records.all()} == {"2025-001", "2025-002"}
        assert uow.records.count() == 2
        assert len(uow.records.history("R-9")) == 1
    for again in (("2025-001", "R-9"), ("R-9", "2025-001")):
        with pytest.raises(Refused, match=r"already"):
            merge_records(twice.writing(), *again, who="bo")


def test_a_merge_is_taken_apart_but_for_what_was_changed_since(twice: Store) -> None:
    with twice.reading() as uow:
        before = uow.records.get("2025-001"), uow.records.get("R-9")
    merge_records(twice.writing(), "2025-001", "R-9", who="bo")
    correct_record(twice.writing(), "R-9", {"record.dealer": "Quai 10", "boat.name": "Siskin"}, who="cy", why="moved")
    done = unmerge_records(twice.writing(), "2025-001", "R-9", who="bo", why="two boats after all")
    with twice.reading() as uow:
        after = uow.records.get("2025-001"), uow.records.get("R-9")
        assert uow.records.count() == 3
    assert after[1] == before[1]
    assert before[0] is not None
    assert after[0] is not None
    assert after[0].dealer == "Quai 10"  # changed since: it stays
    boat = before[0].form.boat.model_copy(update={"name": "Siskin"})
    assert after[0] == before[0].model_copy(
        update={"dealer": "Quai 10", "form": before[0].form.model_copy(update={"boat": boat})}
    )
    assert {c.field for c in done.taken} >= {"boat.hull_number", "transom.camber_mm", "placement.offset_mm"}
    with pytest.raises(Refused, match="was not merged"):
        unmerge_records(twice.writing(), "2025-001", "R-9", who="bo", why="again")


def test_one_that_took_in_another_can_be_taken_in(twice: Store) -> None:
    merge_records(twice.writing(), "2025-001", "R-9", who="bo")
    merge_records(twice.writing(), "2025-002", "2025-001", who="bo")
    assert show_record(twice.reading(), "R-9").record.reference == "2025-002"
    with pytest.raises(Refused, match="one record already"):
        merge_records(twice.writing(), "R-9", "2025-002", who="bo")


# --- finding ------------------------------------------------------------------------------------------------


@pytest.fixture
def many(store: Store) -> Store:
    fleet = [
        record(
            f"F-{n:02d}",
            hull="gannet-40" if n % 3 == 0 else "tern-31",
            date=None if n > 26 else date(2020, 1 + n % 4, 1),
            dealer="Hafenladen Süd" if n % 2 else None,
            configuration=OTHER_KIT if n % 5 == 0 else KIT,
            form={"boat": {"model": "Tern 31", "year": 1970 + n, "stern": "scoop" if n % 7 == 0 else "raked"}},
        )
        for n in range(30)
    ]
    with store.writing() as uow:
        uow.hulls.put([HullModel(id="gannet-40", model="Gannet 40")], who="test", why="test")
        uow.records.add_many(fleet, who="ada", why="order")
        uow.commit()
    return store


def found(store: Store, wanted: Wanted) -> Found:
    return find_records(store.reading(), wanted)


def names(store: Store, wanted: Wanted) -> set[str]:
    return {r.reference for r in found(store, wanted).records}


def every(rule: Callable[[int], bool]) -> set[str]:
    return {f"F-{n:02d}" for n in range(30) if rule(n)}


def test_each_key_finds_what_it_says(many: Store) -> None:
    both = {"2025-001", "2025-002"}
    assert names(many, Wanted(hull="gannet-40", limit=99)) == every(lambda n: n % 3 == 0)
    assert names(many, Wanted(hull="Gannet40", limit=99)) == every(lambda n: n % 3 == 0)  # as people write it
    assert names(many, Wanted(years=(1975, 1978), limit=99)) == every(lambda n: 5 <= n <= 8)
    assert names(many, Wanted(years=(None, 1971), limit=99)) == every(lambda n: n <= 1)
    assert names(many, Wanted(years=(1998, None), limit=99)) == every(lambda n: n >= 28)
    assert names(many, Wanted(stern="scoop", limit=99)) == every(lambda n: n % 7 == 0)
    assert names(many, Wanted(status="installed", limit=99)) == {"2025-002"}
    assert names(many, Wanted(dealer="Hafenladen Süd", limit=99)) == every(lambda n: n % 2 == 1)
    assert names(many, Wanted(codes=("shaft-b", "gear-a"), limit=99)) == every(lambda n: n % 5 == 0)
    assert names(many, Wanted(codes=("shaft-b", "up-a"), limit=99)) == set()
    assert names(many, Wanted(limit=99)) == every(lambda n: n >= 0) | both


def test_a_long_list_comes_page_by_page_once_each_newest_first(many: Store) -> None:
    pages, after = list[str](), None
    while True:
        page = found(many, Wanted(limit=7, after=after))
        pages += [r.reference for r in page.records]
        after = page.next
        if after is None:
            break
    assert len(pages) == len(set(pages)) == 32
    whole = [r.reference for r in found(many, Wanted(limit=99)).records]
    assert pages == whole
    days = [r.date for r in found(many, Wanted(limit=99)).records]
    assert days == sorted(days, key=lambda day: day or date.min, reverse=True)
    assert days[-3:] == [None] * 3


def test_a_record_that_comes_in_between_pages_shifts_none(many: Store) -> None:
    first = found(many, Wanted(limit=10))
    with many.writing() as uow:
        uow.records.add(record("Z-1", date=date(2030, 1, 1)), who="ada", why="new")
        uow.commit()
    second = found(many, Wanted(limit=10, after=first.next))
    assert not {r.reference for r in first.records} & {r.reference for r in second.records}
    assert "Z-1" not in {r.reference for r in second.records}


def test_a_name_that_could_be_several_is_asked_back(many: Store) -> None:
    with many.writing() as uow:
        twins = [HullModel(id="petrel-a", builder="Aule", model="Petrel 28"),
                 HullModel(id="petrel-b", builder="Berg", model="Petrel 28")]  # fmt: skip
        uow.hulls.put(twins, who="t", why="t")
        uow.commit()
    told = found(many, Wanted(hull="Petrel 28"))
    assert (told.sure, told.records) == (False, ())
    assert told.hull is not None
    assert {one.model.id for one in told.hull.alternatives} == {"petrel-a", "petrel-b"}
    unknown = found(many, Wanted(hull="Quimby 77"))
    assert (unknown.sure, unknown.hull and unknown.hull.status) == (False, "unknown")


@pytest.mark.parametrize(
    ("wanted", "says"),
    [
        (Wanted(stern="scop"), "did you mean 'scoop'"),
        (Wanted(dealer="Hafenladen Sued"), "did you mean 'Hafenladen Süd'"),
        (Wanted(years=(1990, 1980)), "run backwards"),
        (Wanted(limit=0), "the limit is 0"),
        (Wanted(after="yesterday"), "no place in a list"),
        (Wanted(after="2020-13-01~x"), "month"),
        (Wanted(near=BoatForm(), after="~x"), "raise the limit"),
    ],
)
def test_what_does_not_exist_is_named(many: Store, wanted: Wanted, says: str) -> None:
    with pytest.raises(Refused, match=says):
        found(many, wanted)


def test_near_a_form_is_nearest_first_with_what_was_compared(many: Store) -> None:
    form = parse_form({"boat": {"stern": "raked", "year": 1980}, "transom": {"top_height_mm": 900, "rake_deg": 14}})
    got = found(many, Wanted(near=form, limit=5))
    assert [one.record for one in got.near] == [r.reference for r in got.records]
    likeness = [one.likeness for one in got.near]
    assert likeness == sorted(likeness, reverse=True)
    assert got.records[0].form.boat.year == 1980
    assert set(got.near[0].shared) == {"boat.year", "boat.stern", "transom.top_height_mm", "transom.rake_deg"}
    only = found(many, Wanted(near=form, hull="gannet-40", limit=99))
    assert {r.hull for r in only.records} == {"gannet-40"}
    assert len(only.records) == 10
