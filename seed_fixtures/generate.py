"""Make the demo fleet anew: `python -m seed_fixtures.generate` writes fleet.jsonl, the same to the byte each time.

Six hundred installations from 2001 to 2025, one JSON object a line, in the shape of a record. True boats come from
`truth`, choices from `habits`, what was written down from `notebook`; nothing of the service is used.
"""

from __future__ import annotations

import csv
import json
import sys
import tomllib
from collections import Counter
from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path
from typing import Any

import numpy as np

from seed_fixtures.arithmetic import Kit, Way
from seed_fixtures.boats import Boat
from seed_fixtures.dice import Rng, happens
from seed_fixtures.habits import DEALERS, Brackets, Choice, Dealer, choose
from seed_fixtures.notebook import FIRST, LAST, written_down
from seed_fixtures.truth import hull_truth, sister_ship

HERE = Path(__file__).parent
SEED = 20010504
RECORDS = 600
KEPT_VERSIONS_SINCE = 2012
"""Earlier records do not say which catalogue they were made with."""
Document = dict[str, Any]


def kit() -> Kit:
    """Return the catalogue as TOML gives it."""
    return tomllib.loads((HERE / "catalogue.toml").read_text("utf-8"))


def hull_rows() -> list[dict[str, str]]:
    """Return the hull models, one dictionary a row."""
    with (HERE / "hulls.csv").open(encoding="utf-8", newline="") as lines:
        return list(csv.DictReader(lines))


def fleet(seed: int = SEED, records: int = RECORDS) -> list[Document]:
    """Return the fleet's records in order of date."""
    rows, parts = hull_rows(), kit()
    hulls = [hull_truth(row, np.random.default_rng([seed, number])) for number, row in enumerate(rows)]
    rng = np.random.default_rng(seed)
    popular = 0.4 + rng.gamma(1.6, 1.0, len(rows))
    days = _days(records, rng)
    found: list[Document] = []
    fitted: dict[str, Counter[Brackets]] = {row["id"]: Counter() for row in rows}
    for day in days:
        odds = popular * np.array([int(row["first_year"]) <= day.year for row in rows])
        at = int(rng.choice(len(rows), p=odds / odds.sum()))
        dealer = DEALERS[int(rng.choice(len(DEALERS), p=[each.share for each in DEALERS]))]
        boat = sister_ship(hulls[at], rows[at], day.year, rng)
        usual = next((pair for pair, _ in fitted[boat.hull].most_common(1)), None)
        choice = choose(boat, dealer, parts, rng, usual)
        found.append(_record(boat, dealer, day, parts, choice, rng))
        if found[-1]["status"] == "installed":
            fitted[boat.hull][_brackets(found[-1])] += 1
    numbers: dict[int, int] = {}
    for document in found:
        year = int(document["date"][:4])
        numbers[year] = numbers.get(year, 0) + 1
        document["reference"] = f"{year}-{numbers[year]:03d}"
    return found


def _days(records: int, rng: Rng) -> list[date]:
    years = np.arange(FIRST, LAST + 1)
    growth = 14 + 20 * (years - FIRST) / (LAST - FIRST)
    drawn = rng.choice(years, records, p=growth / growth.sum())
    return sorted(date(int(year), 1, 1) + timedelta(days=int(rng.integers(365))) for year in drawn)


def _brackets(document: Document) -> Brackets:
    return document["configuration"]["lower"], document["configuration"]["upper"]


def _record(boat: Boat, dealer: Dealer, day: date, parts: Kit, choice: Choice | None, rng: Rng) -> Document:
    form = written_down(boat, dealer, day.year, rng)
    if choice is None:
        return _nothing_fits(boat, form, dealer, day, parts, rng)
    status = _status(day, rng)
    way, outcome = choice.way, Document()
    if status == "installed":
        way, outcome = _as_installed(choice, rng)
    elif status == "withdrawn":
        outcome = {"note": str(rng.choice(["boat sold before fitting", "bought an electric pilot", "no more heard"]))}
    if "clear of" in choice.reason and happens(rng, 0.6):  # most say why
        form["notes"] = f"Set off centre, {choice.reason}."
    return _document(form, status, day, dealer, boat, _placed(way, status, day, rng), way, outcome)


def _nothing_fits(boat: Boat, form: Document, dealer: Dealer, day: date, parts: Kit, rng: Rng) -> Document:
    """Return a withdrawn record: proposed from the brochure, given up when the stern was seen."""
    bare = replace(boat, things=(), displacement=min(boat.displacement, 24_000))
    choice = choose(bare, dealer, parts, rng)
    while choice is None:
        rudder = replace(bare.rudder, hung="inboard", trailing=bare.rudder.stock - 100)
        bare = replace(bare, rudder=rudder)
        choice = choose(bare, dealer, parts, rng)
    note = "withdrawn: no room on this stern once it was measured"
    return _document(form, "withdrawn", day, dealer, boat, {}, choice.way, {"note": note})


def _status(day: date, rng: Rng) -> str:
    if day.year == LAST:
        return str(rng.choice(["installed", "shipped", "proposed", "withdrawn"], p=[0.35, 0.3, 0.28, 0.07]))
    return str(rng.choice(["installed", "shipped", "proposed", "withdrawn"], p=[0.84, 0.05, 0.04, 0.07]))


def _as_installed(choice: Choice, rng: Rng) -> tuple[Way, Document]:
    """Return what was really fitted, and how it went: about one in eleven differs from the proposal."""
    if choice.second is not None and happens(rng, 0.09):  # one in eleven
        changed = [
            f"{role} {old} changed for {new}"
            for role, old, new in (
                ("lower", choice.way.lower, choice.second.lower),
                ("upper", choice.way.upper, choice.second.upper),
                ("shaft", choice.way.shaft, choice.second.shaft),
            )
            if old != new
        ]
        return choice.second, {"fitted_as_proposed": False, "note": "; ".join(changed) or "moved at fitting"}
    told = str(rng.choice(["nothing", "fitted", "fitted and why"], p=[0.2, 0.4, 0.4]))
    if told == "nothing":
        return choice.way, {}
    return choice.way, {"fitted_as_proposed": True, **({"note": choice.reason} if told == "fitted and why" else {})}


def _placed(way: Way, status: str, day: date, rng: Rng) -> Document:
    """Return where it sits as the record says: measured after fitting, else as drawn; older ones often say nothing."""
    if happens(rng, (0.3 if day.year < KEPT_VERSIONS_SINCE else 0.08)):
        return {}
    off = rng.normal(0, 7 if status == "installed" else 0.1, 5)
    values = (way.offset, way.shaft_aft, way.lower_height, way.upper_height, way.shaft_bottom)
    keys = ("offset_mm", "shaft_aft_mm", "lower_height_mm", "upper_height_mm", "shaft_bottom_mm")
    return {key: round(value + (float(by) if value else 0.0)) for key, value, by in zip(keys, values, off, strict=True)}


def _document(
    form: Document,
    status: str,
    day: date,
    dealer: Dealer,
    boat: Boat,
    placement: Document,
    way: Way,
    outcome: Document,
) -> Document:
    return {
        "reference": "",
        "status": status,
        "date": day.isoformat(),
        "dealer": dealer.name,
        "hull": boat.hull,
        "form": form,
        "configuration": {"gear": way.gear, "lower": way.lower, "upper": way.upper, "shaft": way.shaft},
        "placement": placement,
        "outcome": outcome,
        "catalogue": "demo-1" if day.year >= KEPT_VERSIONS_SINCE else None,
    }


def as_lines(documents: list[Document]) -> str:
    """Return JSON lines, one record a line."""
    return "".join(json.dumps(each, ensure_ascii=False, separators=(",", ":")) + "\n" for each in documents)


def main() -> None:
    """Write fleet.jsonl beside this file."""
    (HERE / "fleet.jsonl").write_text(as_lines(fleet()), encoding="utf-8", newline="\n")
    sys.stdout.write(f"{RECORDS} records -> seed_fixtures/fleet.jsonl\n")


if __name__ == "__main__":
    main()
