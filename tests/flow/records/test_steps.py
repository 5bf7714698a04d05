from __future__ import annotations

import json
from datetime import date
from typing import Any

import pytest

from service.core.boat import Method
from service.core.record import Status
from service.files.read.installed_file import FromSite, read_installed
from service.flow.edit_record import correct_record
from service.flow.measure_record import measure_record
from service.flow.propose_record import propose_record
from service.flow.record_history import record_history, show_record
from service.flow.refusal import Refused
from service.flow.restore_revision import restore_revision
from service.flow.step_record import Season, Told, record_outcome, step_record
from service.store.unit import Store
from tests.flow.records.conftest import KIT, OTHER_KIT, sent

SITE: dict[str, Any] = {
    "schema": "as-installed/1",
    "configuration": {"upper": "up-b", "shaft": "shaft-b"},
    "placement": {"offset_mm": -40, "shaft_bottom_mm": "-6 in"},
    "form": {"transom": {"rake_deg": "16.5°", "top_height_mm": "3 ft"}, "methods": {"*": "tape"}},
    "changed": "longer shaft: the boat floats 4 cm higher than drawn",
}


def site(**changed: object) -> FromSite:
    return read_installed(json.dumps({**SITE, **changed}).encode(), "site.json")


def measured(value: object, method: Method | None) -> FromSite:
    said = {"transom": {"rake_deg": value}, **({"methods": {"*": method}} if method else {})}
    return read_installed(json.dumps(said).encode(), "form.json")


def test_the_whole_life(store: Store) -> None:
    name = propose_record(store.writing(), sent(), who="ada").record.reference
    shipped = step_record(store.writing(), name, "shipped", Told(day=date(2026, 4, 2)), who="bo")
    assert (shipped.number, shipped.record.date) == (2, date(2026, 4, 2))
    told = Told(day=date(2026, 6, 20), site=site(), note="went well", anyway="shaft from the old stock")
    on = step_record(store.writing(), name, "installed", told, who="cy")
    after = record_outcome(store.writing(), name, Season(note="a whole Atlantic season"), who="ada")
    record = after.record
    assert (record.status, record.configuration, record.replaced) == ("installed", OTHER_KIT, KIT)
    assert record.placement.model_dump(exclude_none=True) == {
        "offset_mm": -40,
        "shaft_bottom_mm": pytest.approx(-152.4),
    }
    assert record.outcome.fitted_as_proposed is False
    assert record.outcome.changed == SITE["changed"]
    assert record.outcome.note == "a whole Atlantic season"
    assert record.form.transom.rake_deg == 16.5
    assert record.form.transom.top_height_mm == pytest.approx(914.4)
    assert record.form.boat.model == "Tern 31"
    assert record.form.contact.name == "Ada Holm"
    history = record_history(store.reading(), name)
    assert [(s.number, s.who) for s in history.steps] == [(1, "ada"), (2, "bo"), (3, "cy"), (4, "ada")]
    changed = {c.field: (c.before, c.after) for c in history.steps[2].changes}
    assert changed["record.status"] == ("shipped", "installed")
    assert changed["configuration.shaft"] == ("shaft-a", "shaft-b")
    assert changed["proposed.shaft"] == (None, "shaft-a")
    assert changed["transom.rake_deg"] == (14, 16.5)
    assert "boat.model" not in changed
    assert on.number == 3


def test_without_word_from_the_site_what_was_proposed_stands(store: Store) -> None:
    done = step_record(store.writing(), "2025-001", "installed", who="cy")
    assert (done.record.configuration, done.record.replaced) == (KIT, None)
    assert done.record.outcome.fitted_as_proposed is None  # nobody said


@pytest.mark.parametrize(
    ("start", "to", "possible"),
    [
        ("proposed", "installed", "goes to shipped or withdrawn"),
        ("shipped", "proposed", "goes to installed or withdrawn"),
        ("installed", "shipped", "goes to withdrawn"),
        ("withdrawn", "shipped", "goes to nothing further"),
        ("shipped", "shipped", "goes to installed or withdrawn"),
    ],
)
def test_a_step_out_of_turn_needs_a_reason(store: Store, start: Status, to: Status, possible: str) -> None:
    step_record(store.writing(), "2025-001", start, Told(why="test"), who="ada")
    with pytest.raises(Refused, match=rf"is {start}; from there it {possible}.*--why"):
        step_record(store.writing(), "2025-001", to, who="bo")
    done = step_record(store.writing(), "2025-001", to, Told(why="clicked wrong"), who="bo")
    assert done.record.status == to
    with store.reading() as uow:
        assert "clicked wrong" in uow.records.history("2025-001")[-1].why or start == to


def test_a_correction_keeps_the_day_it_happened(store: Store) -> None:
    done = step_record(store.writing(), "2025-002", "shipped", Told(why="not yet aboard"), who="bo")
    assert done.record.date == date(2025, 5, 1)


def test_metal_no_catalogue_makes_is_most_likely_a_slip(seeded: Store) -> None:
    with seeded.reading() as uow:
        one = next(r for r in uow.records.all() if r.status == "shipped")
    other = site(configuration={"shaft": "shaft-1351"})
    with pytest.raises(Refused, match=r"no shaft 'shaft-1351' in the catalogue; did you mean 'shaft-1350'\?.*--anyway"):
        step_record(seeded.writing(), one.reference, "installed", Told(site=other), who="cy")


def test_a_site_speaks_only_when_installed(store: Store) -> None:
    with pytest.raises(Refused, match="belongs to the step 'installed'"):
        step_record(store.writing(), "2025-001", "withdrawn", Told(site=site()), who="cy")


def test_an_outcome_waits_for_the_installation(store: Store) -> None:
    with pytest.raises(Refused, match=r"is shipped: an outcome is known once it is installed"):
        record_outcome(store.writing(), "2025-001", Season(fitted_as_proposed=True), who="bo")
    with pytest.raises(Refused, match="nothing is said"):
        record_outcome(store.writing(), "2025-002", Season(), who="bo")
    record_outcome(store.writing(), "2025-002", Season(fitted_as_proposed=True), who="bo")
    done = record_outcome(store.writing(), "2025-002", Season(note="dry and quiet"), who="bo")
    assert (done.record.outcome.fitted_as_proposed, done.record.outcome.note) == (True, "dry and quiet")


def test_two_measurements_of_one_thing_disagree_and_both_stay(store: Store) -> None:
    measure_record(store.writing(), "2025-001", measured("17 deg", "tape"), who="bo", day=date(2025, 6, 1))
    got = measure_record(store.writing(), "2025-001", measured("12°", "guess"), who="cy", day=date(2025, 7, 1))
    assert got.record.form.transom.rake_deg == 17  # a later guess does not outrank a tape
    assert "12°" in got.notes[0]
    assert got.changes == ()
    again = measure_record(store.writing(), "2025-001", measured(18, "phone_level"), who="cy")
    assert again.record.form.transom.rake_deg == 18  # as good a way, and later
    shown = show_record(store.reading(), "2025-001")
    rows = [(r.text, r.unit, r.value, r.method, r.who) for r in shown.measured if r.field == "transom.rake_deg"]
    assert rows == [
        ("14 deg", "deg", 14, "photo", "ada"),  # what the record said before anybody measured
        ("17 deg", "deg", 17, "tape", "bo"),
        ("12°", "deg", 12, "guess", "cy"),
        ("18 deg", "deg", 18, "phone_level", "cy"),
    ]
    assert shown.record.form.methods["transom.rake_deg"] == "phone_level"


def test_a_value_without_a_method_borrows_none(store: Store) -> None:
    said = {"transom": {"rake_deg": 20, "width_top_mm": 1500}, "methods": {"transom.width_top_mm": "tape"}}
    measure_record(store.writing(), "2025-001", measured(17, "laser"), who="bo")
    got = measure_record(store.writing(), "2025-001", read_installed(json.dumps(said).encode(), "form.json"), who="cy")
    form = got.record.form
    assert (form.transom.rake_deg, form.methods["transom.rake_deg"]) == (17, "laser")
    assert (form.transom.width_top_mm, form.methods["transom.width_top_mm"]) == (1500, "tape")
    assert form.methods["transom.top_height_mm"] == "tape"


def test_any_revision_comes_back_as_a_new_one(store: Store) -> None:
    step_record(store.writing(), "2025-001", "installed", Told(site=site(), anyway="x"), who="cy")
    back = restore_revision(store.writing(), "2025-001", 1, who="ada", why="that was the sister's sheet")
    with store.reading() as uow:
        history = uow.records.history("2025-001")
    assert (back.number, len(history)) == (3, 3)
    assert history[2].record == history[0].record
    assert history[2].why == "back to revision 1: that was the sister's sheet"
    idle = restore_revision(store.writing(), "2025-001", 3, who="ada", why="again")
    assert (idle.number, "nothing was written" in idle.notes[0]) == (3, True)
    with pytest.raises(Refused, match="no revision 9; it is at 3"):
        restore_revision(store.writing(), "2025-001", 9, who="ada", why="x")


def test_a_correction_sets_named_fields(store: Store) -> None:
    line = '[{"height_mm":900,"aft_mm":0},{"height_mm":0,"aft_mm":-200}]'
    values = {"boat.year": "1981", "record.dealer": "", "transom.profile": line}
    done = correct_record(store.writing(), "2025-001", values, who="bo", why="papers came")
    assert {c.field for c in done.changes} == {"boat.year", "transom.profile"}  # she had no dealer
    for wrong, says in (
        ({"boat.yaer": 1}, "did you mean 'boat.year'"),
        ({"record.status": "installed"}, "records step"),
        ({"record.reference": "x"}, "never changes"),
        ({"obstacles": "no list"}, "expected JSON"),
    ):
        with pytest.raises(Refused, match=says):
            correct_record(store.writing(), "2025-001", dict[str, Any](wrong), who="bo", why="x")


def test_an_unknown_reference_is_told_its_neighbour(store: Store) -> None:
    with pytest.raises(Refused, match=r"no record '2025-01'; did you mean '2025-001'\?"):
        step_record(store.writing(), "2025-01", "installed", who="bo")
    with pytest.raises(Refused, match="no record"):
        show_record(store.reading(), "9")


def test_a_sold_boat_keeps_its_record_and_its_new_owner_stands_apart(store: Store) -> None:
    correct_record(
        store.writing(),
        "2025-002",
        {"contact.name": "Ivo Ruys", "contact.email": "ivo@example.org"},
        who="bo",
        why="sold",
    )
    with store.reading() as uow:
        first, second = uow.records.history("2025-002")
    assert (first.record.form.contact.name, second.record.form.contact.name) == ("Ada Holm", "Ivo Ruys")
    assert first.record.form.boat == second.record.form.boat
