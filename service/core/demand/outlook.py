"""Tables of what will be: how the methods did, expected pieces by quarter, and reorder points."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from service.core.demand import cells
from service.core.demand.backtest import SEASONAL_P, Chosen, Panel, choose
from service.core.demand.ledger import Stocking
from service.core.demand.stock import Outlook, reorder_point, summed
from service.core.report import Cell, Column, Table

Floats = NDArray[np.float64]
BINS = 10
JUDGED = (cells.WHOLE, *cells.KINDS)


@dataclass(frozen=True)
class Ahead:
    """The outlook of each kind and what was chosen for it; `codes` are those still to be had, None for all."""

    outlooks: Mapping[str, Outlook]
    chosen: Mapping[str, Chosen]
    until: int
    stocking: Stocking
    codes: frozenset[str] | None

    def each(self) -> Iterator[tuple[str, str, Outlook]]:
        """Yield kind, code and outlook of everything that can still be ordered."""
        for kind, outlook in self.outlooks.items():
            for code in sorted(outlook.rows):
                if self.codes is None or kind == cells.WHOLE or all(one in self.codes for one in code.split(" · ")):
                    yield kind, code, outlook


def looked_ahead(
    panels: Mapping[str, Panel], until: int, stocking: Stocking, codes: frozenset[str] | None, seed: int
) -> Ahead:
    """Choose a method for each kind and run it; kinds without a series are left out."""
    able = {kind: panel for kind, panel in panels.items() if panel.keys and panel.quarters}
    chosen = {kind: choose(panel, seed=seed) for kind, panel in able.items()}
    lead = int(np.ceil(stocking.lead_weeks / 13))
    outlooks = {kind: Outlook(panel, chosen[kind].method, max(stocking.quarters, lead)) for kind, panel in able.items()}
    return Ahead(outlooks, chosen, until, stocking, codes)


def expected(ahead: Ahead) -> Table:
    """Return the pieces expected in each of the next quarters and in all of them, with prediction intervals."""
    quarters = ahead.stocking.quarters
    spans: list[tuple[str, int, int]] = [(cells.quarter_name(ahead.until + n), n, n) for n in range(quarters)]
    spans.append((f"next {quarters} quarters", 0, quarters - 1))
    found: list[tuple[Cell, ...]] = []
    for kind, code, outlook in ahead.each():
        for name, first, last in spans:
            one = outlook.expected(code, first, last)
            found.append((kind, code, name, round(one.mean, 4), *one.in_80, *one.in_95))
    note = (
        "Intervals of 80 and 95 % from the distribution of counts, by the method that foretold its kind best so far. "
        f"{cells.quarter_name(ahead.until)} is the first quarter that was not over."
    )
    columns = (
        Column(name="kind", heading="what"),
        Column(name="code", heading="code"),
        Column(name="quarter", heading="quarter"),
        Column(name="expected", heading="expected", kind="number", unit="pieces"),
        *_ends("80", "80 %"),
        *_ends("95", "95 %"),
    )
    return Table(
        id="expected", title="Expected demand by quarter", columns=columns, rows=tuple(found), note=note, shown=0
    )


def _ends(name: str, heading: str) -> tuple[Column, Column]:
    return (
        Column(name=f"low_{name}", heading=f"{heading} from", kind="whole", unit="pieces"),
        Column(name=f"high_{name}", heading="to", kind="whole", unit="pieces"),
    )


def reorder(ahead: Ahead) -> Table:
    """Return the stock at which to order each piece anew."""
    asked = ahead.stocking
    found: list[tuple[Cell, ...]] = []
    for kind, code, outlook in ahead.each():
        if kind in (*cells.METAL, cells.PART):
            chances = outlook.in_lead_time(code, asked.lead_weeks)
            point, lasts = reorder_point(chances, asked.service)
            year = outlook.expected(code, 0, asked.quarters - 1)
            meanwhile = round(summed(chances).mean, 4)
            found.append((kind, code, round(year.mean, 4), *year.in_95, meanwhile, point, round(lasts, 6)))
    found.sort(key=lambda row: (JUDGED.index(str(row[0])), -float(row[2] or 0), str(row[1])))
    note = (
        f"Order when stock in hand and on order falls to this: it lasts the {asked.lead_weeks:g} weeks until an order comes "
        f"with a chance of at least {100 * asked.service:g} %. Intervals hold 95 %."
    )
    columns = (
        Column(name="kind", heading="what"),
        Column(name="code", heading="code"),
        Column(name="expected", heading=f"next {asked.quarters} quarters", kind="number", unit="pieces"),
        *_ends("95", "95 %"),
        Column(name="in_lead_time", heading=f"in {asked.lead_weeks:g} weeks", kind="number", unit="pieces"),
        Column(name="reorder_at", heading="reorder at", kind="whole", unit="pieces"),
        Column(name="lasts", heading="lasts with", kind="share"),
    )
    title = "Expected demand and reorder points"
    return Table(id="reorder", title=title, columns=columns, rows=tuple(found), note=note, shown=60)


def methods(ahead: Ahead) -> Table:
    """Return how each method did on quarters it had not seen, and which is used."""
    found: list[tuple[Cell, ...]] = [
        (
            kind, one.method, "used" if one.method == chosen.method.name else "", one.asked, round(one.log_score, 4),
            round(one.error, 4), *(round(x, 4) for x in (*one.covered, *one.covered_exactly)),
        )
        for kind, chosen in ahead.chosen.items()
        for one in chosen.scores
    ]  # fmt: skip
    note = (
        "Each method was asked for the last quarters, a quarter ahead, with what was known before. The log score is the "
        "mean log chance given to what came (more is better). Counts cannot meet an interval exactly: counted with the ends "
        "it holds more, and exactly is by the randomised transform."
    )
    columns = (
        Column(name="kind", heading="what"),
        Column(name="method", heading="method"),
        Column(name="used", heading="used"),
        Column(name="asked", heading="asked", kind="whole"),
        Column(name="log_score", heading="log score", kind="number"),
        Column(name="error", heading="mean error", kind="number", unit="pieces"),
        Column(name="in_80", heading="in 80 %", kind="share"),
        Column(name="in_95", heading="in 95 %", kind="share"),
        Column(name="exactly_80", heading="exactly 80 %", kind="share"),
        Column(name="exactly_95", heading="exactly 95 %", kind="share"),
    )
    return Table(id="methods", title="How true forecasts were", columns=columns, rows=tuple(found), note=note, shown=0)


def transforms(ahead: Ahead) -> Table:
    """Return the randomised transforms of gears, brackets, shafts and configurations in ten bins."""
    return histogram(ahead.chosen[kind].pit for kind in (*cells.METAL, cells.CONFIGURATION) if kind in ahead.chosen)


def histogram(some: Iterable[Floats]) -> Table:
    """Return randomised transforms in ten bins, each with its share; all should be a tenth."""
    every = np.concatenate([np.empty(0), *some])
    counts, edges = np.histogram(every, BINS, (0, 1))
    rows = tuple(
        (f"{low:.1f} to {high:.1f}", int(n), round(float(n) / max(every.size, 1), 4))
        for low, high, n in zip(edges, edges[1:], counts, strict=False)
    )
    columns = (
        Column(name="bin", heading="transform"),
        Column(name="asked", heading="quarters of series", kind="whole"),
        Column(name="share", heading="share", kind="share"),
    )
    note = "Randomised probability integral transforms of the methods used: even where what was foretold was true."
    return Table(id="transforms", title="Were the chances true?", columns=columns, rows=rows, note=note, shown=0)


def parts(ahead: Ahead, names: Mapping[str, tuple[str, bool]], so_far: Callable[[str], int]) -> Table:
    """Return what is expected of loose parts. `names`: name and whether it is small, by code; `so_far`: pieces until now."""
    outlook, quarters = ahead.outlooks.get(cells.PART), ahead.stocking.quarters
    found: list[tuple[Cell, ...]] = []
    for code in sorted(outlook.rows) if outlook else ():
        one = outlook.expected(code, 0, quarters - 1) if outlook else None
        name, small = names[code]
        if one:
            found.append((code, name, "small" if small else "", so_far(code), round(one.mean, 4), *one.in_95))
    found.sort(key=lambda row: (-float(row[3] or 0), str(row[0])))
    columns = (
        Column(name="code", heading="code"),
        Column(name="name", heading="name"),
        Column(name="small", heading="small"),
        Column(name="pieces", heading="pieces so far", kind="whole"),
        Column(name="expected", heading=f"next {quarters} quarters", kind="number", unit="pieces"),
        *_ends("95", "95 %"),
    )
    note = (
        "By the parts the catalogue has go with each gear, bracket and shaft; what went out in older days may differ."
    )
    return Table(id="parts", title="Loose parts", columns=columns, rows=tuple(found), note=note, shown=20)


def said(ahead: Ahead) -> Iterator[str]:
    """Say for each kind what is used and why, and whether demand follows the seasons."""
    for kind, chosen in ahead.chosen.items():
        yield f"{kind}s are foretold by {chosen.why}"
    whole = ahead.chosen.get(cells.WHOLE)
    p = whole.season_p if whole else None
    if p is not None and p < SEASONAL_P:
        yield f"demand follows the seasons (p = {p:.2g})"
    elif whole:
        yield "no seasons can be told in the counts" + (f" (p = {p:.2g})" if p is not None else ": too few whole years")
