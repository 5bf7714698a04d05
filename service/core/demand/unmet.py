"""`report unmet`: boats that nothing fits, what refuses them, and which new metal would serve most: found by solving."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date

import numpy as np

from service.core.answer.compose import Known
from service.core.catalogue import Catalogue, Configuration
from service.core.demand import metal
from service.core.demand.shares import jeffreys
from service.core.demand.solve import Case, bears, best, passes, quick, ready, refusing, room, served
from service.core.fit import Fit
from service.core.fit.names import obstacle_names
from service.core.fit.wording import title
from service.core.report import Cell, Column, LeftOut, Plot, Report, Table

TITLE = "Unmet: boats that nothing fits, and what would"
VERIFIED = 4
"""New pieces of a family that are tried with everything, loads among them; the quick look ranks the others."""


@dataclass(frozen=True)
class Asker:
    """A boat that was asked about or given up: an enquiry's or a withdrawn record's."""

    case: Case
    kind: str
    day: date | None


@dataclass(frozen=True)
class Tried:
    """A boat against the catalogue: the fit that misses by least (None: nothing can be made), and what is quick to pass.

    `quick`: by new piece of metal, the configurations that pass a quick look, the simplest first.
    """

    asker: Asker
    fit: Fit | None
    quick: Mapping[str, tuple[Configuration, ...]]

    @property
    def met(self) -> bool:
        """Say whether something passes by now."""
        return self.fit is not None and passes(self.fit)


def worth_trying(known: Known) -> list[Catalogue]:
    """Return catalogues in which every configuration has a new piece: every length and reach that is worth trying."""
    shafts = [one for length in metal.lengths(known.catalogue) for one in metal.shaft(known.catalogue, length)]
    brackets = metal.reaches(known.catalogue)
    return [*metal.only(known.catalogue, shafts), *metal.only(known.catalogue, brackets=brackets)]


def tried(asker: Asker, known: Known, catalogues: Sequence[Catalogue]) -> Tried:
    """Return a boat against what there is and, where that does not fit, against what there might be."""
    fit = best(asker.case, known)
    found: dict[str, list[Configuration]] = defaultdict(list)
    if fit is None or not passes(fit):
        boats = ready(asker.case, known)
        for catalogue in catalogues:
            for one in quick(boats, catalogue):
                piece = metal.new_in((one.lower, one.upper, one.shaft))
                found[_family(piece or "")].append(one)
    return Tried(asker, fit, {piece: tuple(some) for piece, some in found.items()})


def _family(code: str) -> str:
    """Return a piece's name: a shaft is named by its length, whichever gear it is for."""
    parts = code.removeprefix(f"{metal.NEW}-").split("-")
    return (
        f"shaft {parts[1]} mm"
        if parts[0] == "shaft"
        else f"{'-'.join(parts[:-2])} with reach {parts[-2]} to {parts[-1]} mm"
    )


@dataclass(frozen=True)
class Piece:
    """New metal: how many boats a quick look gives it, which it serves for sure, and the moment it then has to bear (N m)."""

    name: str
    quick: int
    sure: frozenset[str]
    bears_nm: float


def checked(boats: Sequence[Tried], known: Known, catalogues: Sequence[Catalogue]) -> list[Piece]:
    """Return new pieces, those that serve most first. Of shafts and of brackets the few that look best are tried in full."""
    quickly: Counter[str] = Counter()
    for one in boats:
        quickly.update(one.quick.keys())
    found = []
    for shafts in (True, False):
        mine = sorted((p for p in quickly if p.startswith("shaft ") == shafts), key=lambda p: (-quickly[p], p))
        for name in mine[:VERIFIED]:
            fits = {one.asker.case.reference: _serves(one, name, known, catalogues) for one in boats}
            sure = {reference: bears(fit) for reference, fit in fits.items() if fit is not None}
            found.append(Piece(name, quickly[name], frozenset(sure), max(sure.values(), default=0.0)))
    return sorted(found, key=lambda one: (-len(one.sure), -one.quick, one.name))


def _serves(one: Tried, name: str, known: Known, catalogues: Sequence[Catalogue]) -> Fit | None:
    some = one.quick.get(name, ())
    if not some:
        return None
    boats = ready(one.asker.case, known)
    for catalogue in catalogues:
        fit = served(boats, catalogue, [c for c in some if catalogue.misfit(c) is None])
        if fit is not None:
            return fit
    return None


@dataclass(frozen=True)
class Found:
    """Everything the report is made of. `solved` says whether new metal was looked for; `asked` enquiries were answered."""

    boats: Sequence[Tried]
    new: Sequence[Piece]
    asked: int
    solved: bool
    left_out: Sequence[LeftOut]


def compose(found: Found, days: tuple[date, date | None, date | None], catalogue: str | None, software: str) -> Report:
    """Return the report; `days`: what it is as of, and the ends of the period."""
    unmet = [one for one in found.boats if not one.met]
    tables = [_checks(unmet), _new(found.new, unmet), _boats(unmet)]
    return Report(
        name="unmet",
        title=TITLE,
        as_of=days[0],
        first=days[1],
        last=days[2],
        filters={"new metal": "looked for" if found.solved else "not looked for"},
        counts={
            "boats answered": found.asked,
            "boats looked at again": len(found.boats),
            "that something fits by now": len(found.boats) - len(unmet),
            "that nothing fits": len(unmet),
        },
        left_out=tuple(found.left_out),
        findings=tuple(_findings(found, unmet, tables)),
        tables=tuple(tables),
        plots=tuple(plot for plot in PLOTS if any(table.id == plot.table and table.rows for table in tables)),
        sources=(
            "fit: the checks of the service, each with its own source",
            "intervals of shares: Jeffreys, by statsmodels",
        ),
        catalogue=catalogue,
        software=software,
    )


def _bars(table: str, title_: str, label: str) -> Plot:
    axis = "share of boats that nothing fits"
    return Plot(
        id=table, table=table, title=title_, form="bars", label=label, value="share", low="low", high="high", axis=axis
    )


PLOTS = (_bars("checks", "What refuses boats", "title"), _bars("new_metal", "What new metal would serve", "piece"))


def _findings(found: Found, unmet: Sequence[Tried], tables: Sequence[Table]) -> list[str]:
    if not unmet:
        return [
            "something fits every boat that was looked at" if found.boats else "no boat was found that nothing fits"
        ]
    said = [f"nothing fits {_boats_said(len(unmet))}"]
    if tables[0].rows:
        check, _, boats, alone = tables[0].rows[0][:4]
        said.append(
            f"most often refused by {tables[0].rows[0][1]} ({check}): {_boats_said(boats)}, {alone} of them by nothing else"
        )
    if found.new and found.new[0].sure:
        said.append(
            f"{found.new[0].name} would serve most: {len(found.new[0].sure)} of {len(unmet)}, every check passed at nominal"
        )
    elif found.solved:
        said.append("no shaft or bracket that was tried would serve any of them")
    return said


def _boats_said(count: Cell) -> str:
    return "1 boat" if count == 1 else f"{count} boats"


def _checks(unmet: Sequence[Tried]) -> Table:
    each = [(one, refusing(one.fit)) for one in unmet if one.fit is not None]
    boats = Counter(id_ for _, ids in each for id_ in ids)
    alone = Counter(ids[0] for _, ids in each if len(ids) == 1)
    misses: dict[str, list[float]] = defaultdict(list)
    units, titles = dict[str, str](), dict[str, str]()
    for one, ids in each:
        for id_ in ids:
            check = one.fit.check(id_)  # type: ignore[union-attr] # there is a fit
            misses[id_].append(-(check.margin or 0.0))
            units[id_], titles[id_] = check.unit, _title(id_, one)
    order = sorted(boats, key=lambda id_: (-boats[id_], id_))
    low, high = jeffreys(np.array([boats[i] for i in order], float), np.full(len(order), float(len(unmet))))
    rows: tuple[tuple[Cell, ...], ...] = tuple(
        (
            id_, titles[id_], boats[id_], alone[id_], round(float(np.median(misses[id_])), 3), units[id_],
            round(boats[id_] / len(unmet), 6), round(float(low[n]), 6), round(float(high[n]), 6),
        )
        for n, id_ in enumerate(order)
    )  # fmt: skip
    columns = (
        Column(name="check", heading="check"),
        Column(name="title", heading="what it looks at"),
        Column(name="boats", heading="boats", kind="whole"),
        Column(name="alone", heading="by it alone", kind="whole"),
        Column(name="median_miss", heading="median miss", kind="number"),
        Column(name="unit", heading="unit"),
        Column(name="share", heading="share", kind="share"),
        Column(name="low", heading="from", kind="share"),
        Column(name="high", heading="to", kind="share"),
    )
    note = "Checks that refuse the configuration which misses by least, over boats that nothing fits. A boat may count in several."
    return Table(id="checks", title="What refuses boats", columns=columns, rows=rows, note=note, shown=20)


def _title(id_: str, one: Tried) -> str:
    try:
        return title(id_, obstacle_names(one.asker.case.form))
    except KeyError:
        return id_.replace(".", " ").replace("_", " ")


def _new(new: Sequence[Piece], unmet: Sequence[Tried]) -> Table:
    whole = max(len(unmet), 1)
    low, high = jeffreys(np.array([len(one.sure) for one in new], float), np.full(len(new), float(whole)))
    rows: list[tuple[Cell, ...]] = []
    left = {one.asker.case.reference for one in unmet}
    for n, one in enumerate(new):
        shares = tuple(round(float(x), 6) for x in (len(one.sure) / whole, low[n], high[n]))
        moment = round(one.bears_nm) if one.bears_nm else None
        rows.append(
            (
                one.name,
                len(one.sure),
                *shares,
                len(one.sure & left),
                moment,
                one.quick,
                " ".join(sorted(one.sure)) or None,
            )
        )
        left -= one.sure
    columns = (
        Column(name="piece", heading="new piece"),
        Column(name="served", heading="serves", kind="whole"),
        Column(name="share", heading="share", kind="share"),
        Column(name="low", heading="from", kind="share"),
        Column(name="high", heading="to", kind="share"),
        Column(name="further", heading="none above serves", kind="whole"),
        Column(name="bears", heading="has to bear", kind="whole", unit="N m"),
        Column(name="quick_look", heading="by a quick look", kind="whole"),
        Column(name="which", heading="which"),
    )
    note = (
        "Every length and reach in steps is tried by a quick look; those that look best are placed and checked in full, at "
        "nominal, loads among the checks. A new piece is as what it is like, but for its length or reach; a new bracket is "
        "taken to bear what it has to, and the greatest moment of all boats is given: have it worked out before it is made."
    )
    return Table(
        id="new_metal", title="What new metal would serve", columns=columns, rows=tuple(rows), note=note, shown=12
    )


def _boats(unmet: Sequence[Tried]) -> Table:
    rows: tuple[tuple[Cell, ...], ...] = tuple(
        (
            one.asker.case.reference, one.asker.kind, one.asker.day.isoformat() if one.asker.day else None, one.asker.case.hull,
            str(one.fit.configuration) if one.fit else None,
            round(room(one.fit), 3) if one.fit else None,
            " ".join(refusing(one.fit)) if one.fit else "nothing can be made",
        )
        for one in sorted(unmet, key=lambda one: (str(one.asker.day or ""), one.asker.case.reference))
    )  # fmt: skip
    columns = (
        Column(name="boat", heading="enquiry or record"),
        Column(name="kind", heading="kind"),
        Column(name="date", heading="date"),
        Column(name="hull", heading="hull model"),
        Column(name="nearest", heading="misses by least"),
        Column(name="margin", heading="smallest margin", kind="number"),
        Column(name="refused_by", heading="refused by"),
    )
    return Table(id="boats", title="The boats", columns=columns, rows=rows, shown=25)
