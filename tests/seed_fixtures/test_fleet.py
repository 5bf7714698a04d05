"""The demo fleet is what it says it is: the same each time, loadable, and with the faults of real records."""

from __future__ import annotations

import json
from collections import Counter, defaultdict

import pytest

from seed_fixtures.generate import HERE, RECORDS, as_lines, fleet, hull_rows, kit
from service.core.catalogue import Catalogue
from service.core.catalogue_check import parse_catalogue
from service.core.record import HullModel, Record


@pytest.fixture(scope="module")
def records() -> list[Record]:
    lines = (HERE / "fleet.jsonl").read_text("utf-8").splitlines()
    return [Record.model_validate(json.loads(line)) for line in lines]


@pytest.fixture(scope="module")
def catalogue() -> Catalogue:
    return parse_catalogue(kit())


def test_making_the_fleet_anew_gives_the_committed_file_to_the_byte() -> None:
    assert as_lines(fleet()).encode() == (HERE / "fleet.jsonl").read_bytes()


def test_another_seed_gives_another_fleet() -> None:
    committed = (HERE / "fleet.jsonl").read_text("utf-8").splitlines()
    assert as_lines(fleet(seed=1, records=8)).splitlines() != committed[:8]


def test_six_hundred_records_over_twenty_five_years_with_references_used_once(records: list[Record]) -> None:
    assert len(records) == RECORDS == 600
    assert {record.date.year for record in records if record.date} == set(range(2001, 2026))
    assert len({record.reference for record in records}) == RECORDS


def test_every_configuration_can_be_made_from_the_catalogue(records: list[Record], catalogue: Catalogue) -> None:
    assert {record.reference: catalogue.misfit(record.configuration) for record in records} == dict.fromkeys(
        record.reference for record in records
    )


def test_every_record_names_a_hull_model_of_the_list_built_before_it_was_bought(records: list[Record]) -> None:
    models = {row["id"]: int(row["first_year"]) for row in hull_rows()}
    assert {record.hull for record in records} == set(models)
    assert not [
        record.reference
        for record in records
        if record.hull is None or record.date is None or record.date.year < models[record.hull]
    ]


def test_most_sit_off_the_centreline(records: list[Record]) -> None:
    """About six in ten: common practice, no source."""
    sides = [record.placement.offset_mm for record in records if record.placement.offset_mm is not None]
    assert 0.5 < sum(abs(side) > 100 for side in sides) / len(sides) < 0.7


def test_one_dealer_puts_nearly_everything_to_starboard(records: list[Record]) -> None:
    starboard: dict[str, list[bool]] = defaultdict(list)
    for record in records:
        if record.dealer and record.placement.offset_mm is not None:
            starboard[record.dealer].append(record.placement.offset_mm > 0)
    share = {dealer: sum(sides) / len(sides) for dealer, sides in starboard.items()}
    second, first = sorted(share.values())[-2:]
    assert share["Segelboden Lillnäs"] == first
    assert first > second + 0.2
    assert first > 0.7


def test_dealers_of_long_seas_ship_longer_shafts(records: list[Record], catalogue: Catalogue) -> None:
    lengths: dict[bool, list[float]] = {True: [], False: []}
    for record in records:
        far = record.dealer in {"Northlatch Rigging", "Totara Reach Chandlers"}
        lengths[far].append(catalogue.shaft(record.configuration.shaft).length_mm)
    mean = {far: sum(all_) / len(all_) for far, all_ in lengths.items()}
    assert mean[True] > mean[False] + 60


def test_sister_ships_often_took_different_brackets(records: list[Record]) -> None:
    pairs: dict[str | None, Counter[tuple[str, str]]] = defaultdict(Counter)
    for record in records:
        if record.status == "installed":
            pairs[record.hull][record.configuration.lower, record.configuration.upper] += 1
    usual = [taken for taken in pairs.values() if sum(taken.values()) >= 8]
    assert len(usual) >= 15
    assert sum(len(taken) >= 2 for taken in usual) > 0.8 * len(usual)


def test_sister_ships_took_one_rake_each_of_their_own(records: list[Record]) -> None:
    rakes = {r.form.transom.rake_deg for r in records if r.hull == "tarnholt-36" and r.form.transom.rake_deg}
    assert max(rakes) - min(rakes) >= 3


@pytest.mark.parametrize(
    ("part", "field"),
    [
        ("transom", "top_height_mm"),
        ("transom", "rake_deg"),
        ("transom", "bottom_height_mm"),
        ("transom", "width_top_mm"),
        ("main_rudder", "trailing_edge_aft_mm"),
        ("boat", "displacement_kg"),
    ],
)
def test_there_are_gaps_but_most_is_there(records: list[Record], part: str, field: str) -> None:
    said = [getattr(getattr(record.form, part), field) is not None for record in records]
    assert 0.55 < sum(said) / len(said) < 0.92


def test_older_records_say_less(records: list[Record]) -> None:
    said = defaultdict(list)
    for record in records:
        if record.date:
            form = record.form.document()
            filled = len(form.get("transom", {})) + len(form.get("boat", {})) + len(form.get("main_rudder", {}))
            said[record.date.year // 13].append(filled)
    oldest, newest = min(said), max(said)
    assert sum(said[oldest]) / len(said[oldest]) + 1 < sum(said[newest]) / len(said[newest])


def test_there_are_slips_of_the_pen(records: list[Record]) -> None:
    widths = [r.form.transom.width_top_mm for r in records if r.form.transom.width_top_mm is not None]
    beams = [r.form.boat.beam_mm for r in records if r.form.boat.beam_mm is not None]
    wrong_way = [
        record.reference
        for record in records
        if record.form.boat.stern == "reverse" and (record.form.transom.rake_deg or 0) > 8
    ]
    slips = sum(width < 300 for width in widths) + sum(beam < 1000 for beam in beams) + len(wrong_way)
    assert 3 <= slips <= 20


def test_all_four_statuses_and_changes_at_fitting_occur(records: list[Record]) -> None:
    statuses = Counter(record.status for record in records)
    assert statuses["installed"] > 400
    assert min(statuses[status] for status in ("proposed", "shipped", "withdrawn")) >= 15
    changed = [record for record in records if record.outcome.fitted_as_proposed is False]
    assert len(changed) >= 20
    assert all(record.outcome.note for record in changed)


def test_the_hull_models_load_and_hold_near_namesakes() -> None:
    rows = hull_rows()
    models = [
        HullModel.model_validate(
            {
                **{key: value or None for key, value in row.items()},
                "aliases": tuple(filter(None, row["aliases"].split("|"))),
            }
        )
        for row in rows
    ]
    assert len(models) == 40
    assert len({model.builder for model in models}) == 10
    assert {"Selmarrow 31", "Selmarrow 31 Mk II", "Selmarrow 34", "Selmarrow 340"} <= {model.model for model in models}
    assert {model.stern for model in models} == {"plumb", "raked", "reverse", "scoop", "open", "double_ended"}
