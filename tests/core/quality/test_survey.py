"""Faults planted in the demo fleet are found with their mend, and hardly anything else is. All boats invented."""

from __future__ import annotations

import copy
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from seed_fixtures import generate, notebook
from service.core.answer.recheck import Rechecked
from service.core.boat import get
from service.core.catalogue import Configuration
from service.core.form import parse_form
from service.core.measurement import Measurement
from service.core.quality import Finding, Quality, survey
from service.core.quality.slips import meant
from service.core.record import HullModel, Record
from service.files.read.catalogue_file import read_catalogue
from service.files.read.hulls_file import read_hulls

FIXTURES = Path(__file__).resolve().parents[3] / "seed_fixtures"
METHODS = {m.code: m for m in read_catalogue((FIXTURES / "catalogue.toml").read_bytes(), "catalogue.toml").methods}
KIT = Configuration(gear="g", lower="l", upper="u", shaft="s")
Slip = tuple[float, float]
"""What was meant, and what was written."""


@dataclass(frozen=True)
class Fleet:
    """Records with the slips in them, by reference and field."""

    records: tuple[Record, ...]
    slips: dict[tuple[str, str], Slip]
    hulls: dict[str, HullModel]

    def looked_through(self) -> Quality:
        return survey(self.records, self.hulls, methods=METHODS, measured={})


@pytest.fixture(scope="module")
def demo() -> Fleet:
    """Return the demo fleet with the slips that its generator makes, overheard while it makes them."""
    pairs: list[tuple[dict[str, Any], dict[str, Any]]] = []
    make = notebook._slipped

    def overheard(form: dict[str, Any], rng: np.random.Generator) -> dict[str, Any]:
        before = copy.deepcopy(form)
        pairs.append((before, make(form, rng)))
        return pairs[-1][1]

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(notebook, "_slipped", overheard)
        documents = generate.fleet()
    slips = {
        (one["reference"], f"{part}.{key}"): (before[part][key], value)
        for one in documents
        for before, after in pairs
        if one["form"] is after
        for part in ("boat", "transom")
        for key, value in after.get(part, {}).items()
        if before[part].get(key) != value
    }
    rows = read_hulls((FIXTURES / "hulls.csv").read_bytes(), "hulls.csv").rows
    hulls = {str(row.line.id): HullModel.model_validate(row.line.model_dump()) for row in rows}
    return Fleet(tuple(Record.model_validate(one) for one in documents), slips, hulls)


@pytest.fixture(scope="module")
def planted(demo: Fleet) -> Fleet:
    """Return the fleet with forty further slips, four sorts of them, each large enough to matter on a boat."""
    rng = np.random.default_rng(7)
    records, slips = {r.reference: r for r in demo.records}, dict(demo.slips)
    spoilt = {reference for reference, _ in slips}
    sorts: tuple[tuple[str, Callable[[float], float], float], ...] = (
        ("transom.rake_deg", lambda v: -v, 14.0),
        ("transom.width_top_mm", lambda v: round(v / 25.4, 1), 600.0),
        ("boat.displacement_kg", lambda v: round(v / 1000, 2), 1000.0),
        ("transom.bottom_height_mm", lambda v: v + 900, -500.0),
    )
    for field, spoil, least in sorts:
        able = [r for r in records.values() if r.hull and abs(get(r.form, field) or -1e9) >= least
                and get(r.form, field) is not None and r.reference not in spoilt and _many(demo, r, field)]  # fmt: skip
        for place in rng.choice(len(able), 10, replace=False).tolist():
            record = able[place]
            was = float(get(record.form, field))
            part, _, key = field.partition(".")
            document = record.form.document()
            document[part][key] = spoil(was)
            document["transom"].pop("top_height_mm", None)  # a lower edge above the top would not be let in at all
            records[record.reference] = record.model_copy(update={"form": parse_form(document)})
            slips[record.reference, field] = (was, spoil(was))
            spoilt.add(record.reference)
    return Fleet(tuple(records.values()), slips, demo.hulls)


def _many(fleet: Fleet, record: Record, field: str) -> bool:
    sisters = [r for r in fleet.records if r.hull == record.hull and get(r.form, field) is not None]
    return len(sisters) > 7


def values(found: Quality) -> Iterator[Finding]:
    return (one for one in found.findings if one.kind in ("impossible", "outlier"))


def test_the_demos_own_slips_are_found_without_false_alarm(demo: Fleet) -> None:
    found = {(str(one.record), str(one.field)): one for one in values(demo.looked_through())}
    assert set(found) <= set(demo.slips)  # nothing told that is not wrong
    gross = {key for key, (meant_, wrote) in demo.slips.items() if abs(meant_ - wrote) > 0.3 * abs(meant_)}
    assert len(gross) >= 8
    small = {key for key in gross if abs(demo.slips[key][0]) < 10}  # 4 degrees for -4: within what sisters differ by
    assert gross - small <= set(found)


def test_the_proposed_mend_is_what_was_meant(demo: Fleet) -> None:
    told = [one for one in values(demo.looked_through()) if one.command]
    assert len(told) >= 8
    for one in told:
        was, _ = demo.slips[one.record, str(one.field)]
        proposed = float(str(one.command).split("=")[1].split()[0])
        assert proposed == pytest.approx(was, rel=0.002)
        assert str(one.command).startswith(f"transom records correct {one.record} {one.field}=")


def test_planted_slips_are_found_and_little_else(planted: Fleet) -> None:
    found = {(one.record, str(one.field)) for one in values(planted.looked_through())}
    assert len(planted.slips) > 50
    precision = len(found & set(planted.slips)) / len(found)
    recall = len(found & set(planted.slips)) / len(planted.slips)
    assert precision >= 0.95, found - set(planted.slips)
    assert recall >= 0.85, set(planted.slips) - found


def test_an_installation_written_down_twice_is_found(demo: Fleet) -> None:
    rng = np.random.default_rng(3)
    able = [r for r in demo.records if r.status == "installed" and len(_figures(r)) >= 8]
    twice = [able[place] for place in rng.choice(len(able), 8, replace=False).tolist()]
    copies = [
        one.model_copy(update={"reference": f"Z-{n}", "dealer": None, "date": None}) for n, one in enumerate(twice)
    ]
    found = survey((*demo.records, *copies), demo.hulls, methods=METHODS, measured={})
    pairs = {(one.other, one.record) for one in found.findings if one.kind == "duplicate"}
    assert pairs == {(one.reference, two.reference) for one, two in zip(twice, copies, strict=True)}
    commands = {one.command for one in found.findings if one.kind == "duplicate"}
    assert f"transom records merge {twice[0].reference} Z-0" in commands


def _figures(record: Record) -> list[float]:
    said = record.form.document()
    parts = (said.get("transom", {}), said.get("main_rudder", {}))
    return [v for part in parts for key, v in part.items() if key.endswith(("_mm", "_deg"))]


def made(reference: str = "R-1", **changed: Any) -> Record:  # noqa: ANN401 - any field of a record
    form = parse_form(changed.pop("form", {}))
    return Record.model_validate(
        {"reference": reference, "status": "installed", "configuration": KIT, **changed, "form": form}
    )


def looked(*records: Record, **more: Any) -> list[Finding]:  # noqa: ANN401 - arguments of survey
    return list(survey(records, {}, **{"methods": METHODS, "measured": {}, **more}).findings)


@pytest.mark.parametrize(
    ("mine", "theirs", "twice"),
    [
        ({"hull_number": "17"}, {"hull_number": "17"}, True),
        ({"hull_number": "No. 7a"}, {"hull_number": "NO. 7A"}, True),
        ({"hull_number": "17"}, {"hull_number": "18"}, False),
        ({"name": "Siskin", "year": 1980}, {"name": "siskin", "year": 1980}, True),
        ({"name": "Siskin", "year": 1980}, {"name": "Siskin", "year": 1990}, False),
        ({}, {}, False),
    ],
)
def test_one_boat_is_told_by_her_numbers(mine: dict[str, Any], theirs: dict[str, Any], *, twice: bool) -> None:
    one, other = made("R-1", hull="h", form={"boat": mine}), made("R-2", hull="h", form={"boat": theirs})
    assert ("duplicate" in {f.kind for f in looked(one, other)}) is twice
    refitted = other.model_copy(update={"configuration": KIT.model_copy(update={"shaft": "s2"})})
    assert "duplicate" not in {f.kind for f in looked(one, refitted)}  # the same boat, fitted again


@pytest.mark.parametrize(
    ("form", "field"),
    [
        ({"boat": {"loa_mm": 10_000, "beam_mm": 340}}, "boat.beam_mm"),
        ({"boat": {"loa_mm": 10_000, "lwl_mm": 10_500}}, "boat.lwl_mm"),
        ({"boat": {"loa_mm": 10_000, "displacement_kg": 50}}, "boat.displacement_kg"),
        ({"boat": {"stern": "reverse"}, "transom": {"rake_deg": 18}}, "transom.rake_deg"),
        ({"transom": {"top_height_mm": 40}}, "transom.top_height_mm"),
        ({"transom": {"width_top_mm": 1500, "width_waterline_mm": 1900}}, "transom.width_waterline_mm"),
    ],
)
def test_what_no_boat_has_is_impossible(form: dict[str, Any], field: str) -> None:
    (one,) = [f for f in looked(made(form=form)) if f.kind == "impossible"]
    assert one.field == field
    assert one.why


def test_a_boat_fitted_out_before_she_was_built(demo: Fleet) -> None:
    (one,) = [f for f in looked(made(date="1999-05-01", form={"boat": {"year": 2003}})) if f.kind == "impossible"]
    assert (one.field, one.expected) == ("boat.year", "1999 or before")
    assert not [f for f in looked(made(date="1999-05-01", form={"boat": {"year": 2000}})) if f.kind == "impossible"]
    assert demo.records


@pytest.mark.parametrize(
    ("field", "wrote", "low", "high", "says"),
    [
        ("transom.rake_deg", 18.0, -24.0, -12.0, (-18.0, "a lost sign")),
        ("boat.beam_mm", 33.8, 3000.0, 3600.0, None),
        ("boat.beam_mm", 338.0, 3000.0, 3600.0, (3380.0, "written in centimetres")),
        ("boat.beam_mm", 11.1, 3000.0, 3600.0, (3383.3, "written in feet")),
        ("boat.displacement_kg", 15600.0, 6500.0, 7600.0, (7076.0, "written in pounds")),
        ("boat.displacement_kg", 7.1, 6500.0, 7600.0, (7100.0, "written in tonnes")),
        ("transom.top_height_mm", 1515.0, 1100.0, 1200.0, (1155.0, "two digits swapped")),
    ],
)
def test_what_was_meant(field: str, wrote: float, low: float, high: float, says: tuple[float, str] | None) -> None:
    got = meant(field, wrote, low, high)
    assert (got and got[1]) == (says and says[1])
    if got and says:
        assert got[0] == pytest.approx(says[0], abs=0.1)


def row(value: float, method: str, *, who: str = "bo") -> Measurement:
    return Measurement.model_validate(
        {"field": "transom.top_height_mm", "text": f"{value} mm", "unit": "mm", "value": value, "method": method,
         "who": who, "at": datetime(2025, 1, 1, tzinfo=UTC)}
    )  # fmt: skip


def test_two_tapes_that_do_not_agree_are_told_but_a_guess_is_not() -> None:
    one = made(form={"transom": {"top_height_mm": 1000}})
    found = looked(one, measured={"R-1": (row(1000, "tape"), row(1130, "tape", who="cy"))})
    (told,) = [f for f in found if f.kind == "disagreeing"]
    assert "1000 mm" in told.expected + told.why
    assert "1130 mm" in told.expected + told.why
    for other in (row(1130, "guess"), row(1004, "tape")):
        assert "disagreeing" not in {f.kind for f in looked(one, measured={"R-1": (row(1000, "tape"), other)})}


def test_what_fails_its_own_fit_is_told_unless_its_figures_are_wrong_anyway() -> None:
    judged = [Rechecked(record="R-1", configuration=KIT, found="fails", margin=-2.0, why="overhang: lacks 20 mm")]
    (told,) = [f for f in looked(made(), rechecked=judged) if f.kind == "fails_fit"]
    assert "overhang: lacks 20 mm" in told.why
    wrong = made(form={"transom": {"top_height_mm": 40}})
    assert "fails_fit" not in {f.kind for f in looked(wrong, rechecked=judged)}


def test_gaps_depend_on_the_stern_and_withdrawn_records_have_none() -> None:
    full = {
        "boat": {"stern": "scoop", "displacement_kg": 5000},
        "transom": {"top_height_mm": 900, "rake_deg": -20, "step_height_mm": 200},
        "main_rudder": {"hung": "inboard"},
    }
    (told,) = looked(made(form=full))
    assert (told.kind, told.field, told.expected) == ("missing", "transom.step_depth_mm", "depth of the step")
    assert looked(made(form=full, status="withdrawn")) == []


def test_the_worst_comes_first_and_sound_means_nothing_but_gaps(planted: Fleet) -> None:
    found = planted.looked_through()
    order = [one.kind for one in found.findings]
    assert order == sorted(
        order, key=["impossible", "duplicate", "outlier", "disagreeing", "fails_fit", "missing"].index
    )
    unsound = {one.record for one in found.findings if one.kind != "missing"}
    assert found.sound == len(planted.records) - len(unsound)
    assert sum(found.counts.values()) == len(found.findings)
