"""What is shipped, as the warehouse needs it: by carton to pack, by code to pick, with prices; CSV, workbook and PDF.

On paper each has a page of its own: what lies in the carton need not tell what was paid for it.
"""

from __future__ import annotations

import io
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from reportlab.platypus import Flowable, PageBreak

from service.core.catalogue import Catalogue, Configuration
from service.core.fit.shapes import PartLine
from service.files.columns import Cell
from service.files.write.grids import Sheet, put_csv, put_xlsx
from service.files.write.paper import LEAD, TITLE, Foot, build, gap, items, section, table, text

PACKED = ("carton", "code", "what it is", "number", "loose small part", "mass, kg")
PICKED = ("code", "what it is", "number", "cartons")
PRICED = ("code", "what it is", "number", "price", "amount", "currency")
TICK = "\N{BALLOT BOX}"
SIGN_ROOM = 18
"""Room for a hand to sign in (points)."""
NO_TAX = "Prices as in the catalogue, without tax, freight or duty. What has no price of its own goes with the gear and brackets."


@dataclass(frozen=True)
class Packing:
    """What a configuration is shipped as, from the catalogue it was worked out with.

    `going_to` says to whom; `not_shipped` is what belongs to the job and is in no carton.
    """

    configuration: Configuration
    lines: tuple[PartLine, ...]
    catalogue: Catalogue
    subject: str
    origin: str
    going_to: str = ""
    not_shipped: tuple[str, ...] = ()
    letter: bool = False

    def packed(self) -> list[tuple[Cell, ...]]:
        """Return what goes into each carton, the loose small parts of a carton behind the rest."""
        masses = self._of("mass_kg")
        ordered = sorted(self.lines, key=lambda line: (line.carton, line.small, line.code))
        return [
            (line.carton, line.code, line.name, line.quantity, line.small, _times(masses.get(line.code), line.quantity))
            for line in ordered
        ]

    def picked(self) -> list[tuple[Cell, ...]]:
        """Return what is taken from the shelves: each code once, in order, and where it goes."""
        found: dict[str, tuple[str, int, list[str]]] = {}
        for line in self.lines:
            name, number, cartons = found.get(line.code, (line.name, 0, []))
            found[line.code] = (name, number + line.quantity, [*cartons, line.carton])
        return [
            (code, name, number, ", ".join(dict.fromkeys(cartons)))
            for code, (name, number, cartons) in sorted(found.items())
        ]

    def priced(self) -> list[tuple[Cell, ...]]:
        """Return what has a price in the catalogue, with amounts and their sum."""
        prices, currency = self._of("price"), self.catalogue.currency
        rows: list[tuple[Cell, ...]] = [
            (code, name, number, prices[code], round(prices[code] * number, 2), currency)
            for code, name, number, _ in self.picked()
            if isinstance(code, str) and isinstance(number, int) and code in prices
        ]
        total = round(sum(row[4] for row in rows if isinstance(row[4], float)), 2)
        return [*rows, ("total", "", None, None, total, currency)]

    def _of(self, what: str) -> dict[str, float]:
        """Return a figure of the gear, the shaft and the brackets by code."""
        c, catalogue = self.configuration, self.catalogue
        chosen = (
            catalogue.gear(c.gear),
            catalogue.shaft(c.shaft),
            catalogue.bracket(c.lower),
            catalogue.bracket(c.upper),
        )
        return {one.code: float(getattr(one, what)) for one in chosen}


def _times(value: float | None, number: int) -> float | None:
    return None if value is None else round(value * number, 3)


def packing_csv(packing: Packing) -> bytes:
    """Return the packing list as CSV."""
    return _csv(Sheet("packing", PACKED, packing.packed()))


def picking_csv(packing: Packing) -> bytes:
    """Return the pick list as CSV."""
    return _csv(Sheet("picking", PICKED, packing.picked()))


def prices_csv(packing: Packing) -> bytes:
    """Return the priced list as CSV."""
    return _csv(Sheet("prices", PRICED, packing.priced()))


def _csv(sheet: Sheet) -> bytes:
    out = io.BytesIO()
    put_csv(out, sheet)
    return out.getvalue()


def packing_xlsx(packing: Packing) -> bytes:
    """Return a workbook with the three lists."""
    out = io.BytesIO()
    put_xlsx(
        out,
        [
            Sheet("packing", PACKED, packing.packed()),
            Sheet("picking", PICKED, packing.picked()),
            Sheet("prices", PRICED, packing.priced()),
        ],
    )
    return out.getvalue()


def packing_pdf(packing: Packing) -> bytes:
    """Return the three lists on paper, each line with a box to tick."""
    return build(list(_story(packing)), Foot("packing list", packing.subject, packing.origin), letter=packing.letter)


def _story(packing: Packing) -> Iterator[Flowable]:
    yield from _packing(packing)
    yield PageBreak()
    yield from _picking(packing)
    yield PageBreak()
    yield from _prices(packing)


def _headed(packing: Packing, title: str) -> Iterator[Flowable]:
    """Yield what every list begins with: what it is, of which boat, to whom it goes, which metal it is."""
    one = packing.configuration
    yield text(title, TITLE)
    yield text(packing.subject, LEAD)
    if packing.going_to:
        yield text(f"for {packing.going_to}")
    yield text(f"{one.gear}, lower bracket {one.lower}, upper bracket {one.upper}, {one.shaft}")


def _packing(packing: Packing) -> Iterator[Flowable]:
    yield from _headed(packing, "Packing list")
    packed = packing.packed()
    cartons = list(dict.fromkeys(row[0] for row in packed))
    yield text(f"{len(cartons)} cartons, {_pieces(packed)} pieces, {_heavy(packed)}.", LEAD)
    for n, carton in enumerate(cartons):
        inside = [row for row in packed if row[0] == carton]
        yield section(f"Carton {carton}: {_heavy(inside)}")
        yield table(
            ("", ">number", "code", "what it is", "small"),
            [(TICK, _cell(r[3]), _cell(r[1]), _cell(r[2]), "LOOSE" if r[4] else "") for r in inside],
            (0.04, 0.08, 0.28, 0.48, 0.12),
            [n for n, row in enumerate(inside) if row[4]],
            headed=n == 0,
        )
    loose = [row for row in packed if row[4]]
    if loose:
        yield gap()
        yield text(
            f"{_pieces(loose)} loose small parts of {len(loose)} kinds: count them twice, they are what is missed at sea."
        )
    if packing.not_shipped:
        yield section("In no carton: the owner buys")
        yield from items(packing.not_shipped)
    yield gap(10)
    yield table(("packed by", "counted again by", "date"), [(gap(SIGN_ROOM), "", "")], (0.4, 0.4, 0.2))


def _picking(packing: Packing) -> Iterator[Flowable]:
    yield from _headed(packing, "Pick list, by code")
    yield gap()
    yield table(
        ("", ">number", "code", "what it is", "into carton"),
        [(TICK, _cell(number), _cell(code), _cell(name), _cell(into)) for code, name, number, into in packing.picked()],
        (0.04, 0.08, 0.28, 0.43, 0.17),
    )


def _prices(packing: Packing) -> Iterator[Flowable]:
    priced = packing.priced()
    yield from _headed(packing, "Prices")
    yield gap()
    yield table(
        ("code", "what it is", ">number", ">price", ">amount", "currency"),
        [tuple(map(_money, row)) for row in priced],
        (0.28, 0.32, 0.09, 0.11, 0.11, 0.09),
        [len(priced) - 1],
    )
    yield gap()
    yield text(NO_TAX)


def _pieces(rows: Iterable[tuple[Cell, ...]]) -> int:
    return sum(row[3] for row in rows if isinstance(row[3], int))


def _heavy(rows: Iterable[tuple[Cell, ...]]) -> str:
    """Return what some lines weigh together, as far as the catalogue tells."""
    masses = [row[5] for row in rows]
    known = [mass for mass in masses if isinstance(mass, float)]
    if not known:
        return "mass not in the catalogue"
    return f"{'at least ' if len(known) < len(masses) else ''}{sum(known):.1f} kg"


def _cell(value: Cell) -> str:
    return "" if value is None else str(value)


def _money(value: Cell) -> str:
    return f"{value:,.2f}" if isinstance(value, float) else _cell(value)
