"""`report demand` from what was counted: pure, the same bytes for the same counts and day."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date

import pandas as pd

from service.core.catalogue import Catalogue, Coded
from service.core.demand import cells, outlook, tables
from service.core.demand.backtest import Panel
from service.core.demand.ledger import Asked, Ledger
from service.core.demand.outlook import Ahead
from service.core.report import Cell, Column, LeftOut, Plot, Report, Table

TITLE = "Demand: what is needed, and what will be"
LONGEST = 400
"""Quarters looked back at most: a date from the dark ages would make a series of nothing."""
SOURCES = (
    "intervals of shares: Jeffreys (Brown, Cai, DasGupta 2001), by statsmodels",
    "growth: quasi-Poisson regression (McCullagh, Nelder 1989), by statsmodels",
    "levels: gamma-Poisson with forgetting (Smith 1979; Harvey, Fernandes 1989)",
    "rare demand: Croston 1972; Syntetos, Boylan 2005; Teunter, Syntetos, Babai 2011",
    "true chances: randomised probability integral transform (Czado, Gneiting, Held 2009)",
    "reorder point: least stock that lasts the lead time with the wished chance (Hopp, Spearman, Factory Physics, ch. 2)",
)


def compose(asked: Asked, ledger: Ledger, software: str, more: Sequence[Table] = ()) -> Report:
    """Return the report. `more` are tables of what-ifs, put behind the others."""
    counts, catalogue = ledger.counts, ledger.catalogue
    needs = cells.goods([codes for codes, _ in (*counts.by_month, *counts.by_place)], catalogue)
    counted, placed = cells.by_quarter(counts, needs), cells.by_place(counts, needs)
    until = cells.whole_quarters(asked.end)
    panels = _panels(counted, until, asked.first)
    ahead = outlook.looked_ahead(panels, until, asked.stocking, _codes(catalogue), asked.seed)
    whole = int(counted[counted.kind == cells.WHOLE].n.sum())
    found = [
        _quarters(panels[cells.WHOLE], ahead),
        *(tables.items(counted, panels, kind) for kind in (*cells.METAL, cells.CONFIGURATION)),
        tables.where(placed),
        *(tables.by_place(placed, of) for of in cells.PLACES),
        tables.by_year(counted),
        tables.pairs(counts),
        outlook.parts(ahead, _names(catalogue), lambda code: _so_far(counted, code)),
        outlook.expected(ahead),
        outlook.reorder(ahead),
        outlook.methods(ahead),
        outlook.transforms(ahead),
        *more,
    ]
    return Report(
        name="demand",
        title=TITLE,
        as_of=asked.as_of,
        first=asked.first,
        last=asked.last,
        filters=_filters(asked),
        counts={
            "records": sum(ledger.statuses.values()),
            "boats counted": whole,
            "configurations": len(set(needs["at"])),
        },
        left_out=tuple(_left_out(asked, ledger, needs, ahead)),
        findings=tuple(_findings(whole, sum(ledger.statuses.values()), found, ahead)),
        tables=tuple(found),
        plots=tuple(plot for plot in PLOTS if _has(found, plot)),
        sources=SOURCES,
        catalogue=catalogue.version if catalogue else None,
        software=software,
    )


def _panels(counted: pd.DataFrame, until: int, first: date | None) -> dict[str, Panel]:
    dated = counted[(counted.quarter >= 0) & (counted.quarter < until)].quarter
    begin = int(dated.min()) if len(dated) else until
    if first is not None:
        whole = cells.quarter_of(first)
        begin = max(begin, whole if first == date(whole // 4, 3 * (whole % 4) + 1, 1) else whole + 1)
    begin = max(begin, until - LONGEST)
    return {kind: cells.panel(counted, kind, begin, until) for kind in (cells.WHOLE, *cells.KINDS)}


def _codes(catalogue: Catalogue | None) -> frozenset[str] | None:
    if catalogue is None:
        return None
    every: tuple[tuple[Coded, ...], ...] = (catalogue.gears, catalogue.shafts, catalogue.brackets, catalogue.parts)
    return frozenset(one.code for some in every for one in some)


def _names(catalogue: Catalogue | None) -> dict[str, tuple[str, bool]]:
    return {part.code: (part.name, part.small) for part in catalogue.parts} if catalogue else {}


def _so_far(counted: pd.DataFrame, code: str) -> int:
    mine = counted[(counted.kind == cells.PART) & (counted.code == code)]
    return int((mine.n * mine.pieces).sum())


def _quarters(panel: Panel, ahead: Ahead) -> Table:
    """Return all installations by quarter, and those expected next."""
    found: list[tuple[Cell, ...]] = []
    totals = panel.counts.sum(axis=0) if panel.keys else []
    found += [(cells.quarter_name(panel.first + n), int(count), None, None, None) for n, count in enumerate(totals)]
    mine = ahead.outlooks.get(cells.WHOLE)
    for n in range(ahead.stocking.quarters if mine else 0):
        one = mine.expected("all", n, n) if mine else None
        if one:
            found.append((cells.quarter_name(ahead.until + n), None, round(one.mean, 4), *one.in_95))
    columns = (
        Column(name="quarter", heading="quarter"),
        Column(name="counted", heading="boats", kind="whole"),
        Column(name="expected", heading="expected", kind="number"),
        Column(name="low", heading="95 % from", kind="whole"),
        Column(name="high", heading="to", kind="whole"),
    )
    note = "Whole quarters alone are counted; a quarter that is not over is foretold as a whole."
    return Table(id="quarters", title="Boats by quarter", columns=columns, rows=tuple(found), note=note, shown=0)


def _filters(asked: Asked) -> dict[str, str]:
    return {
        "statuses": ", ".join(asked.statuses),
        "quarters ahead": str(asked.stocking.quarters),
        "lead time": f"{asked.stocking.lead_weeks:g} weeks",
        "service level": f"{100 * asked.stocking.service:g} %",
    }


def _left_out(asked: Asked, ledger: Ledger, needs: pd.DataFrame, ahead: Ahead) -> Iterator[LeftOut]:
    why = {
        "withdrawn": "withdrawn: no metal stayed on a boat",
        "proposed": "only proposed; --proposals counts them too",
    }
    for status, reason in why.items():
        count = sum(n for (one, _), n in ledger.statuses.items() if one == status)
        if count and status not in asked.statuses:
            yield LeftOut(what=f"{status} records", count=count, why=reason)
    dates = {
        "after": ("records dated later", f"dated after {asked.end}"),
        "before": ("records dated earlier", f"dated before {asked.first}"),
        "undated": (
            "undated records",
            "they have no date" + ("" if asked.first else ": in no quarter, and in no forecast"),
        ),
    }
    for when, (what, reason) in dates.items():
        count = sum(n for (one, date_), n in ledger.statuses.items() if date_ == when and one in asked.statuses)
        if count:
            yield LeftOut(what=what, count=count, why=reason)
    if ledger.merged:
        yield LeftOut(what="merged records", count=ledger.merged, why="written down twice; the other one counts")
    made = set(needs[needs.kind == cells.PART]["at"])
    bare = len(set(needs["at"])) - len(made)
    if bare:
        reason = "no catalogue is loaded" if ledger.catalogue is None else "a code of theirs is not in the catalogue"
        yield LeftOut(what="configurations without loose parts", count=bare, why=reason)
    codes = ahead.codes
    gone = [code for kind in cells.METAL for code in (ahead.outlooks[kind].rows if kind in ahead.outlooks else ())]
    old = sum(codes is not None and code not in codes for code in gone)
    if old:
        yield LeftOut(what="codes without forecast", count=old, why="no longer in the catalogue")


def _findings(whole: int, records: int, found: Sequence[Table], ahead: Ahead) -> Iterator[str]:
    if not records:
        yield "no record is kept yet, so there is nothing to tell"
        return
    if not whole:
        yield "no record counts, so there is nothing to tell; see what was left out"
        return
    for kind in (*cells.METAL, cells.CONFIGURATION):
        table = next(one for one in found if one.id == f"{kind}s")
        code, boats, _, share, low, high = table.rows[0][:6]
        yield f"most needed {kind}: {code}, on {boats} of {whole} boats ({_per_cent(share)} %, {_per_cent(low)} to {_per_cent(high)} %)"
    if not ahead.outlooks:
        yield "no forecast: no dated record lies in a quarter that is over"
        return
    yield from outlook.said(ahead)


def _per_cent(share: Cell) -> str:
    return f"{100 * float(share or 0):.0f}"


def _has(found: Sequence[Table], plot: Plot) -> bool:
    return any(table.id == plot.table and table.rows for table in found)


def _bars(table: str, title: str, label: str = "code", most: int = tables.PLOTTED) -> Plot:
    return Plot(
        id=table, table=table, title=title, form="bars", label=label, value="share", low="low", high="high",
        axis="share of boats that carry it" if label == "code" else "share of boats", most=most,
    )  # fmt: skip


PLOTS = (
    Plot(
        id="quarters", table="quarters", title="Boats by quarter, and expected", form="series", label="quarter",
        value="counted", low="low", high="high", axis="boats",
    ),
    *(_bars(f"{kind}s", title) for kind, title in tables.TITLES.items()),
    _bars("places", "Where and how they stand", "value", 40),
    Plot(
        id="transforms", table="transforms", title="Were the chances true?", form="histogram", label="bin", value="share",
        level=0.1, axis="share of quarters of series",
    ),
)  # fmt: skip
"""Plots of the report; one of a table without rows is left out."""
