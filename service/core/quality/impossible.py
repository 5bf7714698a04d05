"""Values that no boat has, whatever her sisters are like: against the rest of her own form and her hull model.

The bounds are wide on purpose, drawn from common practice for sailing yachts of 5 to 30 m; no published source. A value
outside is not merely rare: it is of another unit, of another sign or of another thing.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from service.core.boat import BoatForm, get, title
from service.core.quality.shapes import Finding
from service.core.quality.slips import meant
from service.core.record import HullModel, Record


@dataclass(frozen=True)
class Bound:
    """A field lies between two multiples of another one (of 1 where there is none)."""

    field: str
    low: float
    high: float
    of: str | None = None
    why: str = ""


BOUNDS = (
    Bound("boat.loa_mm", 4500, 35_000, why="the boats this metal is made for"),
    Bound("boat.lwl_mm", 0.6, 1.01, "boat.loa_mm", "a waterline is no longer than the boat"),
    Bound("boat.beam_mm", 0.18, 0.60, "boat.loa_mm", "a single hull's beam"),
    Bound("boat.draft_mm", 0.03, 0.35, "boat.loa_mm", "a draft"),
    Bound("transom.top_height_mm", 250, 3000, why="a transom above the water"),
    Bound("transom.bottom_height_mm", -800, 1500, why="a transom's lower edge"),
    Bound("transom.width_top_mm", 0.12, 1.05, "boat.beam_mm", "a transom is no wider than the boat"),
    Bound("transom.width_top_mm", 250, 6000, why="a transom"),
    Bound("transom.width_waterline_mm", 0.0, 1.15, "transom.width_top_mm", "a transom narrows downwards"),
    Bound("transom.thickness_mm", 2, 150, why="a skin"),
    Bound("transom.step_height_mm", -100, 1500, why="a step above the water"),
    Bound("transom.step_depth_mm", 80, 2500, why="a step"),
    Bound("main_rudder.stock_aft_mm", -6000, 1500, why="a rudder stock"),
    Bound("main_rudder.trailing_edge_aft_mm", -5500, 2500, why="a rudder's trailing edge"),
)
# Displacement in kg over the cube of the length in m: from an unladen racer to a heavy double-ender.
LIGHTEST, HEAVIEST = 1.5, 30.0
RAKE = {"raked": (0.0, 60.0), "reverse": (-70.0, 0.0), "plumb": (-15.0, 15.0)}
"""What the word says of the sign: a raked top stands aft, a reverse one forward, a plumb one neither."""
SLACK_DEG = 2.0


def impossible(record: Record, hull: HullModel | None) -> Iterator[Finding]:
    """Give a finding for every value of a record that cannot be true, once a field."""
    seen = set[str]()
    for finding in (*_bounded(record, hull), *_weight(record, hull), *_rake(record), *_dates(record)):
        if finding.field not in seen:
            seen.add(finding.field or "")
            yield finding


def _bounded(record: Record, hull: HullModel | None) -> Iterator[Finding]:
    wrong = set[str]()
    for bound in BOUNDS:
        value = get(record.form, bound.field)
        unit = 1.0 if bound.of is None else _known(record.form, bound.of, hull)
        if value is None or unit is None or bound.of in wrong:
            continue
        low, high = bound.low * unit, bound.high * unit
        if not low <= value <= high:
            wrong.add(bound.field)
            share = f"{bound.why}: {bound.low:g} to {bound.high:g} of the {title(bound.of)}" if bound.of else ""
            yield found(record, bound.field, value, low, high, share or f"{bound.why} lies between these")


def _known(form: BoatForm, path: str, hull: HullModel | None) -> float | None:
    """Return a measure to hold others against: the hull model's, for a form's own may be the one that is wrong."""
    of_hull = getattr(hull, path.partition(".")[2], None) if hull and path.startswith("boat.") else None
    value = get(form, path) if of_hull is None else of_hull
    return None if value is None else float(value)


def _weight(record: Record, hull: HullModel | None) -> Iterator[Finding]:
    mass, length = record.form.boat.displacement_kg, _known(record.form, "boat.loa_mm", hull)
    if mass is None or length is None:
        return
    cube = (length / 1000) ** 3
    if not LIGHTEST * cube <= mass <= HEAVIEST * cube:
        why = f"a boat of {length / 1000:.1f} m weighs between these"
        yield found(record, "boat.displacement_kg", mass, LIGHTEST * cube, HEAVIEST * cube, why)


def _rake(record: Record) -> Iterator[Finding]:
    rake, stern = record.form.transom.rake_deg, record.form.boat.stern
    if rake is None or stern not in RAKE:
        return
    low, high = RAKE[stern]
    if not low - SLACK_DEG <= rake <= high + SLACK_DEG:
        yield found(record, "transom.rake_deg", rake, low, high, f"a {stern} stern's rake lies between these")


def _dates(record: Record) -> Iterator[Finding]:
    year = record.form.boat.year
    if year is not None and record.date is not None and year > record.date.year + 1:
        yield Finding(
            kind="impossible",
            record=record.reference,
            field="boat.year",
            value=float(year),
            expected=f"{record.date.year} or before",
            why=f"she was fitted out on {record.date}, before she was built",
            mend="look up the year; then `records correct`",
            grade=float(year - record.date.year),
        )


def found(record: Record, field: str, value: float, low: float, high: float, why: str) -> Finding:
    """Return the finding for a value outside [low, high], with the slip that would explain it as its mend."""
    guess = meant(field, value, low, high)
    unit = field.rpartition("_")[2]
    mend = f"measure it anew, then `records measure {record.reference} FORM`"
    command = None
    if guess is not None:
        mend = f"most likely {guess[0]:g} {unit}, {guess[1]}; look at the papers, then"
        command = f"transom records correct {record.reference} {field}={guess[0]:g} --why 'was {guess[1]}'"
    off = (low - value if value < low else value - high) / max(high - low, 1e-9)
    return Finding(
        kind="impossible",
        record=record.reference,
        field=field,
        value=value,
        expected=f"{low:.0f} to {high:.0f} {unit}",
        why=why,
        mend=mend,
        command=command,
        grade=round(off, 3),
    )
