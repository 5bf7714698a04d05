"""Counts of configurations -> pieces of gears, brackets, shafts, configurations and loose parts, by quarter and by place."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date, timedelta

import numpy as np
import pandas as pd

from service.core.catalogue import Catalogue, Configuration
from service.core.demand.backtest import Panel
from service.core.demand.ledger import Codes, Counts
from service.core.fit.fasteners import parts

WHOLE, GEAR, BRACKET, SHAFT, CONFIGURATION, PART = (
    "installation", "gear", "bracket", "shaft", "configuration",
    "part",
)  # fmt: skip
METAL = (GEAR, BRACKET, SHAFT)
KINDS = (*METAL, CONFIGURATION, PART)
PLACES = ("region", "length", "stern", "side")


def quarter_of(day: date) -> int:
    """Return a day's quarter as four times the year plus the quarter from 0.

    >>> quarter_of(date(2024, 12, 31)) - quarter_of(date(2024, 1, 1))
    3
    """
    return day.year * 4 + (day.month - 1) // 3


def quarter_name(quarter: int) -> str:
    """Return a quarter for people.

    >>> quarter_name(8099)
    '2024 Q4'
    """
    return f"{quarter // 4} Q{quarter % 4 + 1}"


def whole_quarters(last: date) -> int:
    """Return the first quarter that is not over at the end of `last`.

    >>> quarter_name(whole_quarters(date(2024, 3, 31))), quarter_name(whole_quarters(date(2024, 3, 30)))
    ('2024 Q2', '2024 Q1')
    """
    return quarter_of(last + timedelta(days=1))


def pieces_of(codes: Codes, catalogue: Catalogue | None) -> list[tuple[str, str, int]]:
    """Return kind, code and number of everything that goes with one installation; parts only where all codes are known."""
    gear, lower, upper, shaft = codes
    found = [(WHOLE, "all", 1), (GEAR, gear, 1), (SHAFT, shaft, 1), (CONFIGURATION, " · ".join(codes), 1)]
    found += [(BRACKET, lower, 2)] if lower == upper else [(BRACKET, lower, 1), (BRACKET, upper, 1)]
    if catalogue is not None:
        try:
            lines = parts(catalogue, Configuration(gear=gear, lower=lower, upper=upper, shaft=shaft))
        except (KeyError, ValueError):
            return found
        loose = {part.code for part in catalogue.parts}
        found += [(PART, line.code, line.quantity) for line in lines if line.code in loose]
    return found


def goods(every: Iterable[Codes], catalogue: Catalogue | None) -> pd.DataFrame:
    """Return a row for each configuration and everything it needs: `at` (its place in order), kind, code, pieces."""
    rows = [(at, *piece) for at, codes in enumerate(sorted(set(every))) for piece in pieces_of(codes, catalogue)]
    return pd.DataFrame(rows, columns=["at", "kind", "code", "pieces"]).astype({"at": np.int64, "pieces": np.int64})


def by_quarter(counts: Counts, needs: pd.DataFrame) -> pd.DataFrame:
    """Return installations that need an item by kind, code, pieces in one, and quarter (-1: undated)."""
    places = {codes: at for at, codes in enumerate(sorted({codes for codes, _ in counts.by_month}))}
    rows = [
        (places[codes], -1 if month is None else month // 12 * 4 + month % 12 // 3, n)
        for (codes, month), n in counts.by_month.items()
    ]
    each = (
        pd.DataFrame(rows, columns=["at", "quarter", "n"], dtype=np.int64)
        .groupby(["at", "quarter"], as_index=False)
        .sum()
    )
    joined = each.merge(needs, on="at")
    return joined.groupby(["kind", "code", "pieces", "quarter"], as_index=False)["n"].sum()


def by_place(counts: Counts, needs: pd.DataFrame) -> pd.DataFrame:
    """Return installations that need an item by kind, code, and place: what is asked (`of`), and where (`value`)."""
    places = {codes: at for at, codes in enumerate(sorted({codes for codes, _ in counts.by_place}))}
    rows = [(places[codes], *(x or "not said" for x in place), n) for (codes, place), n in counts.by_place.items()]
    each = pd.DataFrame(rows, columns=["at", *PLACES, "n"]).astype({"at": np.int64, "n": np.int64})
    items = needs[needs.kind.isin((WHOLE, *METAL, CONFIGURATION))].drop_duplicates(["at", "kind", "code"])
    found = []
    for of in PLACES:
        one = each.groupby(["at", of], as_index=False)["n"].sum().merge(items, on="at")
        one = one.groupby([of, "kind", "code"], as_index=False)["n"].sum().rename(columns={of: "value"})
        found.append(one.assign(of=of))
    return pd.concat(found, ignore_index=True)


def panel(counted: pd.DataFrame, kind: str, first: int, until: int) -> Panel:
    """Return the series of a kind from quarter `first` to before `until`, a row for each code and number of pieces."""
    mine = counted[(counted.kind == kind) & (counted.quarter >= first) & (counted.quarter < until)]
    keys = sorted({(str(code), int(n)) for code, n in zip(mine.code, mine.pieces, strict=True)})
    rows = {key: at for at, key in enumerate(keys)}
    found = np.zeros((len(keys), max(until - first, 0)))
    for code, pieces, quarter, n in zip(mine.code, mine.pieces, mine.quarter, mine.n, strict=True):
        found[rows[str(code), int(pieces)], int(quarter) - first] += n
    return Panel(tuple(keys), found, first)
