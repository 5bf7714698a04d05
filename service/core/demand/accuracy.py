"""`report accuracy`: what was proposed against what was installed, by time and place, how true the chances were, where it goes wrong."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Literal

import numpy as np

from service.core.demand.shares import jeffreys
from service.core.evaluate.calibration import binned, width_places
from service.core.evaluate.shapes import Bin
from service.core.record import Record
from service.core.report import Cell, Column, LeftOut, Plot, Report, Table

TITLE = "Accuracy: what was proposed, and what was installed"
ROLES = ("gear", "lower", "upper", "shaft")
PLACED = ("offset_mm", "shaft_aft_mm", "lower_height_mm", "upper_height_mm", "shaft_bottom_mm")
LEAST = 5
"""Boats of one place that are listed at least."""
SOURCES = ("intervals: Jeffreys (Brown, Cai, DasGupta 2001), by statsmodels; of calibration: Wilson 1927",)


@dataclass(frozen=True)
class Said:
    """What an answer had put forward: configurations with their chance, best first, and where each was to sit."""

    configurations: tuple[str, ...]
    chances: tuple[float, ...]
    placements: tuple[dict[str, float] | None, ...]


@dataclass(frozen=True)
class Pair:
    """An installed record with what its answer had said, where it was kept."""

    record: Record
    said: Said | None = None

    @property
    def as_proposed(self) -> bool | None:
        """Say whether what was proposed was installed; None where nobody said."""
        if self.record.replaced is not None:
            return self.record.replaced == self.record.configuration
        return self.record.outcome.fitted_as_proposed


@dataclass(frozen=True)
class Days:
    """The day of the report and the period."""

    as_of: date
    first: date | None = None
    last: date | None = None

    def within(self, day: date | None) -> bool:
        """Say whether a record of that day counts; one without does where nothing bounds the period."""
        if day is None:
            return self.first is None
        return (self.first is None or day >= self.first) and day <= min(self.last or self.as_of, self.as_of)


def compose(
    pairs: Sequence[Pair],
    days: Days,
    left_out: Sequence[LeftOut],
    held_out: Sequence[Bin],
    about: tuple[str | None, str],
) -> Report:
    """Return the report. `held_out`: bins of a hold-out test, where one was run; `about`: catalogue and software."""
    known = [pair for pair in pairs if pair.as_proposed is not None]
    silent = len(pairs) - len(known)
    more = [
        LeftOut(
            what="records that do not say", count=silent, why="nobody wrote down whether they were fitted as proposed"
        )
    ]
    found = [
        _by_year(pairs), _wrong(known), _changes(pairs), _calibration(_bins(pairs), "calibration", "kept answers"),
        _ranks(pairs), _moved(pairs), _calibration(held_out, "held_out", "a hold-out test by time"),
    ]  # fmt: skip
    return Report(
        name="accuracy",
        title=TITLE,
        as_of=days.as_of,
        first=days.first,
        last=days.last,
        filters={"status": "installed"},
        counts={
            "boats installed": len(pairs),
            "of which it is known": len(known),
            "with the answer kept": sum(pair.said is not None for pair in pairs),
        },
        left_out=(*left_out, *(more if silent else ())),
        findings=tuple(_findings(pairs, known, found)),
        tables=tuple(found),
        plots=tuple(plot for plot in PLOTS if any(table.id == plot.table and table.rows for table in found)),
        sources=SOURCES,
        catalogue=about[0],
        software=about[1],
    )


INSTALLED, ONSITE = "share that was installed", "share changed on site"


def _plot(table: str, title: str, form: Literal["bars", "calibration"], label: str, axis: str, most: int = 40) -> Plot:
    return Plot(
        id=table, table=table, title=title, form=form, label=label, value="share", low="low", high="high", axis=axis,
        most=most,
    )  # fmt: skip


PLOTS = (
    _plot("by_year", "Fitted as proposed", "bars", "year", "share fitted as proposed"),
    _plot("wrong", "Where proposals were changed", "bars", "which", ONSITE, 15),
    _plot("calibration", "Chances said, and what came true", "calibration", "said", INSTALLED),
    _plot("held_out", "Chances said of boats held out", "calibration", "said", INSTALLED),
)


def _rated(rows: Sequence[tuple[tuple[Cell, ...], int, int]]) -> tuple[tuple[Cell, ...], ...]:
    """Return rows with hits, count, share and its interval behind what names them."""
    hits, counts = (np.array([row[n] for row in rows], float) for n in (1, 2))
    low, high = jeffreys(hits, counts)
    return tuple(
        (*names, hit, n, round(hit / n, 6) if n else None, round(float(low[at]), 6), round(float(high[at]), 6))
        for at, (names, hit, n) in enumerate(rows)
    )


def _share(first: tuple[Column, ...], hits: str) -> tuple[Column, ...]:
    return (
        *first,
        Column(name="hits", heading=hits, kind="whole"),
        Column(name="known", heading="of", kind="whole"),
        Column(name="share", heading="share", kind="share"),
        Column(name="low", heading="from", kind="share"),
        Column(name="high", heading="to", kind="share"),
    )


def _by_year(pairs: Sequence[Pair]) -> Table:
    years: dict[str, list[Pair]] = defaultdict(list)
    for pair in pairs:
        years[str(pair.record.date.year) if pair.record.date else "undated"].append(pair)
    rows = [
        ((year,), sum(one.as_proposed is True for one in some), sum(one.as_proposed is not None for one in some))
        for year, some in sorted(years.items())
    ]
    columns = _share((Column(name="year", heading="year"),), "as proposed")
    kept = [row for row in rows if row[2]]
    return Table(id="by_year", title="Fitted as proposed, by year", columns=columns, rows=_rated(kept), shown=40)


PLACES: dict[str, Callable[[Record], str | None]] = {
    "stern": lambda r: r.form.boat.stern,
    "country": lambda r: r.form.enquiry.country,
    "dealer": lambda r: r.dealer,
    "hull model": lambda r: r.hull,
    "main rudder": lambda r: r.form.main_rudder.hung,
    "gear": lambda r: _proposed(r, "gear"),
    "lower bracket": lambda r: _proposed(r, "lower"),
    "upper bracket": lambda r: _proposed(r, "upper"),
    "shaft": lambda r: _proposed(r, "shaft"),
}
"""What a boat is looked at by; of metal, what had been proposed, where that is known."""


def _proposed(record: Record, role: str) -> str | None:
    if record.replaced is None and record.outcome.fitted_as_proposed is False:
        return None
    return str(getattr(record.replaced or record.configuration, role))


def _wrong(known: Sequence[Pair]) -> Table:
    """Return where proposals were changed more often than elsewhere, the surest first."""
    changed = sum(pair.as_proposed is False for pair in known)
    rows: list[tuple[tuple[Cell, ...], int, int]] = []
    for of, place in PLACES.items():
        here: dict[str, list[Pair]] = defaultdict(list)
        for pair in known:
            value = place(pair.record)
            if value is not None:
                here[value].append(pair)
        rows += [
            ((of, value), sum(one.as_proposed is False for one in some), len(some))
            for value, some in here.items()
            if len(some) >= LEAST
        ]
    usual = changed / max(len(known), 1)
    rated = [row for row in _rated(rows) if float(row[4] or 0) > usual]
    rated.sort(key=lambda row: (-float(row[5] or 0), str(row[0]), str(row[1])))
    columns = _share((Column(name="of", heading="by"), Column(name="which", heading="which")), "changed")
    note = (
        f"Places with at least {LEAST} boats where more were changed than the {100 * usual:.0f} % of all. One in twenty would "
        "stand far off by chance alone: ask before believing the last ones."
    )
    return Table(
        id="wrong", title="Where proposals were changed", columns=columns, rows=tuple(rated), note=note, shown=15
    )


def _changes(pairs: Sequence[Pair]) -> Table:
    """Return what was changed for what, as far as it was written down."""
    found: Counter[tuple[str, str, str]] = Counter()
    for pair in pairs:
        was, now = pair.record.replaced, pair.record.configuration
        if was is not None:
            found.update(
                (role, getattr(was, role), getattr(now, role))
                for role in ROLES
                if getattr(was, role) != getattr(now, role)
            )
    rows: tuple[tuple[Cell, ...], ...] = tuple(
        (*key, count) for key, count in sorted(found.items(), key=lambda item: (-item[1], item[0]))
    )
    columns = (
        Column(name="role", heading="what"),
        Column(name="proposed", heading="proposed"),
        Column(name="installed", heading="installed"),
        Column(name="boats", heading="boats", kind="whole"),
    )
    note = "Of records that keep what had been proposed beside what was installed."
    return Table(id="changes", title="What was changed for what", columns=columns, rows=rows, note=note)


def _bins(pairs: Sequence[Pair]) -> tuple[Bin, ...]:
    said = [
        (chance, name == str(pair.record.configuration))
        for pair in pairs
        if pair.said
        for name, chance in zip(pair.said.configurations, pair.said.chances, strict=True)
    ]
    if not said:
        return ()
    chances, true = np.array([x for x, _ in said]), np.array([x for _, x in said])
    return binned(chances, true, width_places(chances), 0.1)


def _calibration(bins: Sequence[Bin], id_: str, of: str) -> Table:
    rows: list[tuple[Cell, ...]] = []
    for one in bins:
        figures = (one.said, one.came_true.value, one.came_true.low, one.came_true.high)
        rows.append((f"{100 * one.low:.0f} to {100 * one.high:.0f} %", one.count, *(round(x, 6) for x in figures)))
    columns = (
        Column(name="bin", heading="chance"),
        Column(name="count", heading="suggestions", kind="whole"),
        Column(name="said", heading="said on average", kind="share"),
        Column(name="share", heading="installed", kind="share"),
        Column(name="low", heading="from", kind="share"),
        Column(name="high", heading="to", kind="share"),
    )
    title = f"How true chances were: {of}"
    return Table(
        id=id_, title=title, columns=columns, rows=tuple(rows), note="95 % intervals (Wilson)." if rows else ""
    )


def _ranks(pairs: Sequence[Pair]) -> Table:
    """Return at which place of its answer what was installed stood."""
    places = Counter(_rank(pair) for pair in pairs if pair.said)
    whole = places.total()
    rows = [
        ((name,), places[name], whole) for name in sorted(places, key=lambda name: (name == "not among them", name))
    ]
    columns = _share((Column(name="rank", heading="suggestion"),), "installed")
    return Table(id="ranks", title="Which suggestion was installed", columns=columns, rows=_rated(rows))


def _rank(pair: Pair) -> str:
    names = pair.said.configurations if pair.said else ()
    own = str(pair.record.configuration)
    return str(names.index(own) + 1) if own in names else "not among them"


def _moved(pairs: Sequence[Pair]) -> Table:
    """Return how far what was installed sits from where its answer had placed the same configuration."""
    away: dict[str, list[float]] = defaultdict(list)
    for pair in pairs:
        own = str(pair.record.configuration)
        if pair.said and own in pair.said.configurations:
            placed = pair.said.placements[pair.said.configurations.index(own)] or {}
            for name in PLACED:
                now = getattr(pair.record.placement, name)
                if now is not None and name in placed:
                    away[name].append(now - placed[name])
    rows: tuple[tuple[Cell, ...], ...] = tuple(
        (name, len(some), *(round(float(x), 1) for x in np.percentile(some, (10, 50, 90))))
        for name, some in away.items()
    )
    columns = (
        Column(name="what", heading="what"),
        Column(name="boats", heading="boats", kind="whole"),
        *(Column(name=f"p{n}", heading=f"{n} % below", kind="number", unit="mm") for n in (10, 50, 90)),
    )
    return Table(id="moved", title="Installed less placed, of the same configuration", columns=columns, rows=rows)


def _findings(pairs: Sequence[Pair], known: Sequence[Pair], found: Sequence[Table]) -> Iterator[str]:
    if not pairs:
        yield "no record is installed in this period, so there is nothing to compare"
        return
    right = sum(pair.as_proposed is True for pair in known)
    if known:
        low, high = (float(end[0]) for end in jeffreys(np.array([float(right)]), np.array([float(len(known))])))
        yield (
            f"{right} of {len(known)} boats were fitted as proposed "
            f"({100 * right / len(known):.0f} %, {100 * low:.0f} to {100 * high:.0f} %)"
        )
        years = [row for row in found[0].rows if int(row[2] or 0) >= LEAST]
        if len(years) > 1:
            worst = min(years, key=lambda row: float(row[3] or 0))
            yield f"the worst year was {worst[0]}: {worst[1]} of {worst[2]} as proposed"
    else:
        yield "no record says whether it was fitted as proposed; tell with `transom records outcome`"
    if found[1].rows:
        of, which, changed, n = found[1].rows[0][:4]
        yield f"changed most surely more often than elsewhere: {of} {which}, {changed} of {n}"
    if not any(pair.said for pair in pairs):
        yield "no answer is kept of any of them, so chances are not compared; --held-out tests them on records held out"
