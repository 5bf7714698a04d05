"""What the page of one enquiry shows: the letter in pieces, the form in fields, the hull models it could be, the history."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import groupby
from typing import Any

from service.core.boat import METHODS, get, how_to_measure, is_path
from service.core.fit.shapes import Filled
from service.core.form import Defect
from service.core.reading.gaps import gaps
from service.core.reading.highlight import Piece, Witness, pieces, witnesses
from service.core.reading.pictures import Picture, picture_of
from service.core.reading.shape import Evidence
from service.flow.show_enquiry import ShownEnquiry
from service.web.boat_fields import LISTS, UNITS, Spec, groups, named, row_specs, texts
from service.web.enquiry_words import candidates, doubt_said, facts, history, written, years
from service.web.pages import number

SPARE_ROWS = 1
_RARE = ("swept_to", "size_mm", "note", "number", "present")
FROM = {"sister_ships": "sister ships", "neighbours": "similar boats", "prior": "what is usual"}


@dataclass(frozen=True)
class Entry:
    """One field on the page. `numbers` are the places in the letter it came from, `from_letter` their words."""

    spec: Spec
    name: str
    value: str
    numbers: tuple[int, ...] = ()
    words: str | None = None
    typed: str | None = None
    method: str | None = None
    missing: str | None = None
    filled: str | None = None
    trouble: str | None = None

    @property
    def id(self) -> str:
        """Return what links on the page point at."""
        return id_of(self.name)

    @property
    def unit(self) -> str:
        """Return the unit that a bare number is taken in; empty where it has none."""
        return UNITS.get(self.spec.sort, "")

    @property
    def stands(self) -> bool:
        """Say whether something of it is known, missing or wrong."""
        return bool(self.value or self.missing or self.filled or self.trouble)

    @property
    def help(self) -> str | None:
        """Return how it is measured."""
        return how_to_measure(self.name) if is_path(self.name) else None

    @property
    def picture(self) -> Picture | None:
        """Return the picture of how it is measured."""
        return picture_of(self.name) if "[" not in self.name else None


@dataclass(frozen=True)
class Row:
    """One row of a list; `fresh` says that it is not in the form yet."""

    index: int
    entries: tuple[Entry, ...]
    title: str
    fresh: bool
    numbers: tuple[int, ...]
    method: str
    trouble: str | None

    @property
    def cells(self) -> tuple[tuple[Entry, ...], ...]:
        """Return what is asked of nearly every row: single fields, and the two ends of a span together."""
        return self._cells(rare=False)

    @property
    def rare(self) -> tuple[tuple[Entry, ...], ...]:
        """Return what is seldom said."""
        return self._cells(rare=True)

    @property
    def rare_said(self) -> bool:
        """Say whether any of that was said."""
        return any(entry.value or entry.trouble for cell in self.rare for entry in cell)

    @property
    def said(self) -> bool:
        """Say whether anything of it was."""
        return any(entry.value or entry.trouble for entry in self.entries)

    def _cells(self, *, rare: bool) -> tuple[tuple[Entry, ...], ...]:
        wanted = [entry for entry in self.entries if entry.spec.path.startswith(_RARE) == rare]
        spans = groupby(wanted, key=lambda entry: entry.name.removesuffix("[0]").removesuffix("[1]"))
        return tuple(tuple(ends) for _, ends in spans)


@dataclass(frozen=True)
class Group:
    """A part of the form; `open` says that something in it is known, missing or wrong."""

    key: str
    title: str
    entries: tuple[Entry, ...]
    trouble: str | None
    lists: tuple[tuple[str, tuple[Row, ...]], ...] = ()
    missing: str | None = None

    @property
    def first(self) -> tuple[Entry, ...]:
        """Return the fields of which something is known, missing or wrong."""
        return tuple(entry for entry in self.entries if entry.stands)

    @property
    def further(self) -> tuple[Entry, ...]:
        """Return the other fields."""
        return tuple(entry for entry in self.entries if not entry.stands)

    @property
    def told(self) -> str:
        """Return how much of it is known and missing."""
        known = sum(bool(e.value) for e in self.entries) + sum(not row.fresh for _, rows in self.lists for row in rows)
        missing = sum(bool(e.missing) for e in self.entries) + bool(self.missing)
        return f"{known} said" + (f", {missing} missing" if missing else "")

    @property
    def open(self) -> bool:
        """Say whether there is something in it to be seen."""
        rows = any(not row.fresh for _, rows in self.lists for row in rows)
        return bool(self.trouble or rows) or any(e.value or e.missing or e.trouble for e in self.entries)


def view(
    got: ShownEnquiry,
    *,
    sent: Mapping[str, str] | None = None,
    version: int | None = None,
    defects: Sequence[Defect] = (),
    **more: Any,  # noqa: ANN401 - handed on to the template
) -> dict[str, Any]:
    """Return all that the template needs. `sent` is what somebody typed, where it could not be taken yet."""
    enquiry = got.enquiry
    seen = _of_boat(witnesses(got.reading), enquiry.boat)
    fields = texts(enquiry.form) | dict(sent or {})
    model = got.hull.model if got.hull else None
    usual = {
        "got": got, "enquiry": enquiry, "form": enquiry.form, "methods": METHODS,
        "version": enquiry.version if version is None else version,
        "letter": _letter(got.reading.text, seen), "places": seen, "doubts": [d for d in got.reading.doubts if d.text],
        "groups": _groups(got, fields, seen, defects),
        "troubles": [(_place(d.field), named(d.field), d.problem) for d in defects], "clashes": (), "moved": None,
        "history": history(got.steps), "note": "", "note_trouble": None,
        "candidates": candidates(got.hull, model, more.get("found")), "choosing": False, "hull_query": "", "hull_trouble": None,
        "asker": {key: value or "" for key, value in enquiry.form.contact.model_dump().items()}, "asker_trouble": defaultdict(str),
        "named": named, "written": written, "facts": facts, "years": years, "doubt_said": doubt_said, "id_of": id_of,
        "typing": sent is not None,
    }  # fmt: skip
    return usual | more


def _place(field: str) -> str:
    """Return the id of where a defect is told: its field, else the part of the form that it is in."""
    plain = {spec.path for _, _, specs in groups() for spec in specs}
    bare = (
        field.removeprefix("methods.").removeprefix("methods[").removesuffix("]")
        if field.startswith("methods")
        else field
    )
    if bare in plain or "[" in bare:
        return id_of(bare)
    part = bare.partition(".")[0]
    return f"g-{part}" if part in {key for key, _, _ in groups()} | {"obstacles"} else "form"


def id_of(name: str) -> str:
    """Return the id of a field on the page.

    >>> id_of("obstacles[0].aft_mm[1]")
    'f-obstacles-0-aft_mm-1'
    """
    return "f-" + name.replace("[", "-").replace("]", "").replace(".", "-")


def _of_boat(seen: Sequence[Witness], boat: int) -> tuple[Witness, ...]:
    own = [(w.start, w.end, tuple(e for e in w.values if e.boat == boat)) for w in seen]
    return tuple(Witness(n, *one) for n, one in enumerate((one for one in own if one[2]), start=1))


@dataclass(frozen=True)
class Mark:
    """A stretch of the letter; `opens` are the places that begin here, `to` where the number of each that ends leads."""

    piece: Piece
    opens: tuple[int, ...]
    ends: tuple[tuple[int, str, str], ...]
    quoted: bool


def _letter(text: str, seen: Sequence[Witness]) -> tuple[Mark, ...]:
    by_number, opened = {one.number: one for one in seen}, set[int]()
    marks = []
    for piece in pieces(text, seen):
        fresh = tuple(n for n in piece.numbers if n not in opened)
        opened.update(fresh)
        ends = tuple((n, _target(by_number[n].values), _told(by_number[n].values)) for n in piece.ends)
        quoted = bool(piece.numbers) and all(e.quoted for n in piece.numbers for e in by_number[n].values)
        marks.append(Mark(piece, fresh, ends, quoted))
    return tuple(marks)


def _target(values: Sequence[Evidence]) -> str:
    """Return the id of the field that words lead to: the first of theirs that the page has."""
    known = [name for name in (field_name(one.field) for one in values) if name]
    return id_of(known[0]) if known else "who-asks"


def field_name(field: str) -> str | None:
    """Return the name of the field on the page that holds a field of the form; None where it has none."""
    bare = field.removeprefix("methods.")
    plain = {spec.path for _, _, specs in groups() for spec in specs}
    if bare in plain or bare.startswith(LISTS):
        return bare.partition(".")[0] if bare.startswith("obstacles[") else bare
    return None


def _told(values: Sequence[Evidence]) -> str:
    return "; ".join(dict.fromkeys(named(one.field) for one in values))


def _filled(one: Filled, spec: Spec) -> str:
    value = (
        number(one.value, unit=UNITS.get(spec.sort, ""))
        if isinstance(one.value, float)
        else one.value.replace("_", " ")
    )
    return f"{value} taken from {FROM[one.from_]}"


# --- the form --------------------------------------------------------------------------------------------


def _groups(
    got: ShownEnquiry, written: Mapping[str, str], seen: Sequence[Witness], defects: Sequence[Defect]
) -> tuple[Group, ...]:
    made = _Maker(got, written, seen, defects)
    lists = {"transom": ("transom.profile",), "preferences": ("other_datum",)}
    found = [
        Group(key, title, tuple(map(made.entry, specs)), made.trouble_of(key), made.lists(lists.get(key, ())))
        for key, title, specs in groups()
    ]
    things = Group(
        "obstacles", "What stands on the stern", (), made.trouble_of("obstacles"), made.lists(("obstacles",))
    )
    return (*found[:3], things, *found[3:])


class _Maker:
    """Makes fields out of all that is known of them."""

    def __init__(
        self, got: ShownEnquiry, written: Mapping[str, str], seen: Sequence[Witness], defects: Sequence[Defect]
    ) -> None:
        self._got, self._written, self._form = got, written, got.enquiry.form
        self._missing = {one.field: one.why.partition(": ")[2] for one in gaps(self._form)}
        self._filled = {one.field: one for one in got.filled}
        self._wrong: dict[str, str] = {}
        for defect in defects:
            self._wrong.setdefault(defect.field, defect.problem + (f" (got {defect.value})" if defect.value else ""))
        self._numbers: dict[str, list[int]] = {}
        self._words: dict[str, Evidence] = {}
        for one in seen:
            for evidence in one.values:
                self._numbers.setdefault(evidence.field.removeprefix("methods."), []).append(one.number)
                self._words.setdefault(evidence.field, evidence)

    def entry(self, spec: Spec, name: str | None = None) -> Entry:
        at = name or spec.path
        said, filled = self._words.get(at), self._filled.get(at)
        value = self._written.get(at, "")
        stands = said is not None and is_path(at) and said.value == get(self._form, at)
        return Entry(
            spec, at, value, tuple(dict.fromkeys(self._numbers.get(at, ()))),
            " ".join(said.text.split())[:80] if said and stands else None,
            self._got.typed.get(at),
            self._written.get(f"methods.{at}", "") if spec.measured and name is None else None,
            self._missing.get(at) if not value else None,
            _filled(filled, spec) if filled and not value else None,
            self._wrong.get(at) or self._wrong.get(f"methods.{at}"),
        )  # fmt: skip

    def missing(self, name: str) -> str | None:
        return self._missing.get(name)

    def lists(self, wanted: Sequence[str]) -> tuple[tuple[str, tuple[Row, ...]], ...]:
        return tuple((path, tuple(self._rows(path))) for path in wanted)

    def _rows(self, path: str) -> list[Row]:
        had = len(get(self._form, path) or ())
        sent = self._written.get(f"rows.{path}", "0")
        many = min(int(sent) if sent.isdecimal() else 0, 100)
        return [self._row(path, n, fresh=n >= had) for n in range(max(many, had + SPARE_ROWS))]

    def _row(self, path: str, index: int, *, fresh: bool) -> Row:
        stem = f"{path}[{index}]"
        entries = tuple(self.entry(spec, f"{stem}.{spec.path}") for spec in row_specs(path))
        seen = [n for field, numbers in self._numbers.items() if field.startswith(stem) for n in numbers]
        first = next((e.value for e in entries if e.value), "") if path == "obstacles" else f"point {index + 1}"
        spans = {bare: problem for bare, problem in self._wrong.items() if bare.startswith(stem)}
        own = {entry.name for entry in entries}
        trouble = next((problem for bare, problem in spans.items() if bare not in own), None)
        return Row(
            index, entries, first, fresh, tuple(sorted(set(seen))), self._written.get(f"methods.{stem}", ""), trouble
        )

    def trouble_of(self, key: str) -> str | None:
        """Return what is wrong with a part as a whole: what no field of the page is named for."""
        plain = {spec.path for _, _, specs in groups() for spec in specs}
        found = [
            problem for field, problem in self._wrong.items()
            if field.partition(".")[0].partition("[")[0] == key and field not in plain and "[" not in field
        ]  # fmt: skip
        return "; ".join(found) or None
