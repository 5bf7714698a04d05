"""Tables of what was needed: items with shares and trends, places, years, pairs."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
import pandas as pd

from service.core.demand import cells
from service.core.demand.backtest import Panel
from service.core.demand.ledger import Counts
from service.core.demand.shares import jeffreys, lift, trend
from service.core.report import Cell, Column, Table

PLOTTED = 14
"""Rows of items on a page: all that the plot above them has."""
ALIKE = 3
"""A pair that went together fewer times than this is not listed."""
TITLES = {
    cells.GEAR: "Gears", cells.BRACKET: "Brackets", cells.SHAFT: "Shafts", cells.CONFIGURATION: "Configurations",
}  # fmt: skip
OF = {
    "region": "country", "length": "length of the hull", "stern": "stern", "side": "side of the shaft",
}  # fmt: skip
OFF = "off centre"
ORDER = ("under 8 m", "8 to 10 m", "10 to 12 m", "12 to 14 m", "14 m and over", "centre", OFF, "port", "starboard")
"""Places that have an order of their own; others stand by how many they are."""
SHARE = (
    Column(name="share", heading="share", kind="share"),
    Column(name="low", heading="from", kind="share"),
    Column(name="high", heading="to", kind="share"),
)
ENDS = "Shares with 95 % intervals (Jeffreys)."


def rows(frame: pd.DataFrame) -> tuple[tuple[Cell, ...], ...]:
    """Return a frame's rows as cells: numbers as Python has them, null for what is not a number."""
    found = frame.astype(object).where(frame.notna(), None)
    return tuple(tuple(_plain(cell) for cell in row) for row in found.itertuples(index=False, name=None))


def _plain(cell: Any) -> Cell:  # noqa: ANN401 - whatever a frame holds
    if isinstance(cell, np.integer):
        return int(cell)
    if isinstance(cell, (float, np.floating)):
        return round(float(cell), 6)
    return cell  # type: ignore[no-any-return] # text, a whole number or nothing


def items(counted: pd.DataFrame, panels: Mapping[str, Panel], kind: str) -> Table:
    """Return how often each item of a kind was needed, its share of all installations, and whether it grows."""
    mine = counted[counted.kind == kind]
    whole = int(counted[counted.kind == cells.WHOLE].n.sum())
    each = (
        mine.assign(total=mine.n * mine.pieces)
        .groupby("code", as_index=False)
        .agg(n=("n", "sum"), total=("total", "sum"))
    )
    each = each.sort_values(["n", "code"], ascending=[False, True], ignore_index=True)
    low, high = jeffreys(each.n.to_numpy(float), np.full(len(each), float(whole)))
    each = each.assign(share=each.n / max(whole, 1), low=low, high=high)
    series = _series(panels.get(kind))
    lately = [_lately(series.get(code)) for code in each.code]
    each = each.assign(**{name: [one[at] for one in lately] for at, name in enumerate(LATELY)})
    columns = [
        Column(name="code", heading=kind),
        Column(name="installations", heading="boats", kind="whole"),
        Column(name="pieces", heading="pieces", kind="whole"),
        *SHARE,
        Column(name="last_year", heading="last 4 quarters", kind="whole"),
        Column(name="year_before", heading="the 4 before", kind="whole"),
        Column(name="trend", heading="growth a year", kind="share"),
        Column(name="trend_low", heading="from", kind="share"),
        Column(name="trend_high", heading="to", kind="share"),
    ]
    note = f"Share of {whole} boats that carry it. {ENDS} Growth by Poisson regression over whole quarters."
    return Table(id=f"{kind}s", title=TITLES[kind], columns=tuple(columns), rows=rows(each), note=note, shown=PLOTTED)


LATELY = ("last_year", "year_before", "trend", "trend_low", "trend_high")


def _series(panel: Panel | None) -> dict[str, np.ndarray[Any, np.dtype[np.float64]]]:
    found: dict[str, Any] = {}
    for (code, pieces), counts in zip(panel.keys, panel.counts, strict=True) if panel else ():
        found[code] = found.get(code, 0.0) + pieces * counts
    return found


def _lately(series: Any) -> tuple[Cell, ...]:  # noqa: ANN401 - an array or nothing
    if series is None or series.size == 0:
        return (None,) * len(LATELY)
    grown = trend(series)
    years = (int(series[-4:].sum()), int(series[-8:-4].sum()) if series.size > 4 else None)  # noqa: PLR2004 - quarters
    return (*years, grown.value, grown.low, grown.high) if grown else (*years, None, None, None)


def where(placed: pd.DataFrame) -> Table:
    """Return how many installations there are in each country, length, stern and side, off-centre ones together too."""
    whole = placed[placed.kind == cells.WHOLE][["of", "value", "n"]]
    sides = whole[(whole.of == "side") & whole.value.isin(("port", "starboard"))]
    if len(sides):
        off = pd.DataFrame([("side", OFF, sides.n.sum())], columns=["of", "value", "n"])
        whole = pd.concat([whole, off], ignore_index=True)
    said = whole[whole.value != "not said"].copy()
    inside = said[said.value != OFF].groupby("of").n.sum()
    said["total"] = said.of.map(inside).astype(float)
    said["at"] = [ORDER.index(value) if value in ORDER else -1 for value in said.value]
    said["of"] = said.of.map(OF)
    low, high = jeffreys(said.n.to_numpy(float), said.total.to_numpy(float))
    said = said.assign(share=said.n / said.total, low=low, high=high).sort_values(
        ["of", "at", "n", "value"], ascending=[True, True, False, True]
    )
    columns = (
        Column(name="of", heading="by"),
        Column(name="value", heading="which"),
        Column(name="installations", heading="boats", kind="whole"),
        *SHARE,
    )
    chosen = said[["of", "value", "n", "share", "low", "high"]]
    note = f"Shares of the boats of which it is said. {ENDS}"
    return Table(id="places", title="Where and how they stand", columns=columns, rows=rows(chosen), note=note, shown=30)


def by_place(placed: pd.DataFrame, of: str) -> Table:
    """Return what is needed in each country, length, stern or side: the share of its boats that carry each item."""
    mine = placed[(placed.of == of) & (placed.kind != cells.WHOLE)]
    whole = placed[(placed.of == of) & (placed.kind == cells.WHOLE)].set_index("value").n
    total = mine.value.map(whole).astype(float).to_numpy(float)
    low, high = jeffreys(mine.n.to_numpy(float), total)
    found = mine.assign(share=mine.n / total, low=low, high=high).sort_values(
        ["kind", "value", "n", "code"], ascending=[True, True, False, True]
    )
    columns = (
        Column(name=of, heading=OF[of]),
        Column(name="kind", heading="what"),
        Column(name="code", heading="code"),
        Column(name="installations", heading="boats", kind="whole"),
        *SHARE,
    )
    chosen = found[["value", "kind", "code", "n", "share", "low", "high"]]
    note = f"Share of the boats there that carry it. {ENDS}"
    return Table(id=f"by_{of}", title=f"Needed by {OF[of]}", columns=columns, rows=rows(chosen), note=note, shown=0)


def by_year(counted: pd.DataFrame) -> Table:
    """Return the pieces of each item by year."""
    dated = counted[(counted.quarter >= 0) & (counted.kind != cells.WHOLE)]
    each = dated.assign(year=dated.quarter // 4, total=dated.n * dated.pieces)
    found = each.groupby(["kind", "code", "year"], as_index=False).total.sum()
    columns = (
        Column(name="kind", heading="what"),
        Column(name="code", heading="code"),
        Column(name="year", heading="year", kind="whole"),
        Column(name="pieces", heading="pieces", kind="whole"),
    )
    return Table(id="by_year", title="Pieces by year", columns=columns, rows=rows(found), shown=0)


def pairs(counts: Counts) -> Table:
    """Return which brackets, shafts and gears go together more often than chance would have it."""
    each = pd.DataFrame(
        [(*codes, n) for (codes, _), n in counts.by_month.items()], columns=["gear", "lower", "upper", "shaft", "n"]
    ).astype({"n": np.int64})
    whole = int(each.n.sum())
    found = [_pairs(each, one, other, whole) for one, other in PAIRED]
    columns = (
        Column(name="what", heading="what"),
        Column(name="one", heading="one"),
        Column(name="other", heading="goes with"),
        Column(name="together", heading="boats", kind="whole"),
        Column(name="share", heading="of the one", kind="share"),
        Column(name="lift", heading="times chance", kind="number"),
        Column(name="low", heading="from", kind="number"),
        Column(name="high", heading="to", kind="number"),
    )
    every = pd.concat(found, ignore_index=True).sort_values(["n", "one", "other"], ascending=[False, True, True])
    note = (
        f"Pairs seen at least {ALIKE} times. Times chance: the share of boats with the one that have the other, over the "
        "other's share of all boats; 95 % interval (Jeffreys), the other's share taken as known."
    )
    return Table(id="pairs", title="What goes together", columns=columns, rows=rows(every), note=note, shown=15)


PAIRED: Sequence[tuple[str, str]] = (("lower", "upper"), ("lower", "shaft"), ("upper", "shaft"), ("gear", "shaft"))


def _pairs(each: pd.DataFrame, one: str, other: str, whole: int) -> pd.DataFrame:
    both = each.groupby([one, other], as_index=False).n.sum()
    both = both[both.n >= ALIKE]
    mine, others = (both[name].map(each.groupby(name).n.sum()).to_numpy(float) for name in (one, other))
    n = both.n.to_numpy(float)
    value, low, high = lift(n, mine, others, whole)
    renamed = both.rename(columns={one: "one", other: "other"}).assign(what=f"{one} and {other}")
    return renamed.assign(share=n / mine, lift=value, low=low, high=high)[
        ["what", "one", "other", "n", "share", "lift", "low", "high"]
    ]
