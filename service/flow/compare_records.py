"""Two records feature by feature: what sets two sister ships apart, and their sterns over each other."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import zip_longest
from typing import Any

from service.core.boat import Obstacle, title
from service.core.catalogue import Catalogue
from service.core.drawing.outline import SternOutline, stern_outline
from service.core.measurement import fields
from service.core.record import HullModel, Record
from service.files.columns import values
from service.flow.edit_record import redirected, unknown
from service.flow.refusal import Refused
from service.store.unit import UnitOfWork

PARTS = {
    "configuration": "What is fitted",
    "placement": "Where it sits",
    "outcome": "How it went",
    "boat": "The boat",
    "transom": "The transom",
    "main_rudder": "Her own rudder",
    "obstacles": "Things on the stern",
    "preferences": "What was wished",
    "record": "The record",
}
LEFT_OUT = ("enquiry", "contact", "proposed", "methods", "uncertainties")
_APART = (*LEFT_OUT, "notes", "other_datum")


@dataclass(frozen=True)
class Row:
    """One feature: `field` as a table names it, what each record says (None: nothing), and how it was got."""

    part: str
    field: str
    label: str
    one: Any
    other: Any
    methods: tuple[str | None, str | None] = (None, None)

    @property
    def same(self) -> bool:
        """Say whether both say the same."""
        return bool(self.one == self.other)

    @property
    def both(self) -> bool:
        """Say whether both say something."""
        return self.one is not None and self.other is not None

    @property
    def apart(self) -> float | None:
        """Return how far the second is from the first, where both are numbers."""
        if (
            isinstance(self.one, bool)
            or not isinstance(self.one, (int, float))
            or not isinstance(self.other, (int, float))
        ):
            return None
        return float(self.other) - float(self.one)


@dataclass(frozen=True)
class Compared:
    """Both records with their hull models, every feature that either says, and both sterns where they can be drawn."""

    one: Record
    other: Record
    hulls: tuple[HullModel | None, HullModel | None]
    rows: tuple[Row, ...]
    outlines: tuple[SternOutline, ...]

    def groups(self, which: str) -> list[tuple[str, list[Row]]]:
        """Return the rows that `differ`, that `one` of them alone says, or that are the `same`, by part."""
        found = defaultdict[str, list[Row]](list)
        for row in self.rows:
            kind = "same" if row.same else "differ" if row.both else "one"
            if kind == which:
                found[row.part].append(row)
        return [(PARTS[part], found[part]) for part in PARTS if part in found]


def two_records(uow: UnitOfWork, one: str, other: str) -> tuple[Record, Record]:
    """Return both records as they stand, merged ones under what they lead to. Refused names one that is not there."""
    with uow:
        names = [redirected(uow, name)[0] for name in (one, other)]
        if names[0] == names[1]:
            raise Refused(f"{one} and {other} are one record; choose two")
        found = uow.records.among(names)
        for name in names:
            if name not in found:
                raise Refused(unknown(uow, name))
    return found[names[0]], found[names[1]]


def compare_records(uow: UnitOfWork, one: Record, other: Record) -> Compared:
    """Return what two records say, feature by feature, as whoever asks may see them."""
    with uow:
        catalogue = uow.catalogues.latest()
        models = uow.hulls.among(name for name in (one.hull, other.hull) if name)
    hulls = models.get(one.hull or ""), models.get(other.hull or "")
    outlines = (
        () if catalogue is None else tuple(_outline(r, h, catalogue) for r, h in zip((one, other), hulls, strict=True))
    )
    return Compared(one, other, hulls, (*_rows(one, other), *_things(one, other)), outlines)


def _outline(record: Record, hull: HullModel | None, catalogue: Catalogue) -> SternOutline:
    return stern_outline(record.form, catalogue, loa_mm=hull.loa_mm if hull else None)


def _rows(one: Record, other: Record) -> Iterator[Row]:
    mine, theirs = values(one), values(other)
    for field in dict.fromkeys((*mine, *theirs)):
        part = field.partition(".")[0]
        if part in _APART or field in {"record.reference", "obstacles", "record.answer"}:
            continue
        ways = (_method(one, field), _method(other, field))
        yield Row(part if part in PARTS else "record", field, title(field), mine.get(field), theirs.get(field), ways)


def _method(record: Record, field: str) -> str | None:
    if field not in fields():
        return None
    methods = record.form.methods
    return methods.get(field, methods.get("*"))


def _things(one: Record, other: Record) -> Iterator[Row]:
    """Give a row a thing on the stern: things of one kind on one side are set beside each other in their order."""
    mine, theirs = _by_kind(one), _by_kind(other)
    for key in dict.fromkeys((*mine, *theirs)):
        some, others = mine.get(key, []), theirs.get(key, [])
        for thing, beside in zip_longest(some, others):
            yield Row("obstacles", "obstacles", key, thing and described(thing), beside and described(beside))


def _by_kind(record: Record) -> dict[str, list[Obstacle]]:
    found = defaultdict[str, list[Obstacle]](list)
    for thing in record.form.obstacles:
        found[f"{thing.kind}{f', {thing.side}' if thing.side else ''}"].append(thing)
    return found


def described(thing: Obstacle) -> str:
    """Return what is known of a thing on the stern, in words; lengths in mm."""
    spans = (("aft", thing.aft_mm), ("to starboard", thing.starboard_mm), ("above the water", thing.height_mm))
    told = [
        "said not to be there" if thing.present is False else "",
        f"{thing.number} of them" if thing.number else "",
        thing.note or "",
        *(f"{_span(span)} {where}" for where, span in spans if span is not None),
        thing.moves or "",
        {True: "may be taken off", False: "cannot be taken off", None: ""}[thing.removable],
        {True: "is to be kept", False: "need not be kept", None: ""}[thing.keep],
    ]
    return "; ".join(word for word in told if word) or "there, its place not said"


def _span(span: tuple[float | None, float | None]) -> str:
    low, high = (None if end is None else f"{end:.0f}".replace("-", "\u2212") for end in span)
    return f"{low if low is not None else 'from anywhere'} to {high if high is not None else 'anywhere'}"
