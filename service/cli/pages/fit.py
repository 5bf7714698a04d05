"""A fit: verdict, placement, the checks that bind, what was filled in, and what to order."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from rich.console import RenderableType

from service.cli.pages.boat import called
from service.cli.sheet import Sheet, listed, number, said, share, table, words
from service.core.boat import BoatForm
from service.core.fit.shapes import Check, Filled, Fit, Placement

MOST_BINDING = 6
VERDICT = {"fits": "fits", "tight": "tight", "undecided": "undecided", "does_not_fit": "does not fit"}
STATUS = {"fail": "fails", "unknown": "unknown"}
FROM = {"sister_ships": "sister ships", "neighbours": "boats like her", "prior": "what is usual"}
NO_EDGE = 1.0


def place(at: Placement | None) -> str:
    """Write where the configuration sits, in mm; heights from the water."""
    if at is None:
        return "no place found"
    y = at.offset_mm
    side = "on the centreline" if abs(y) < NO_EDGE else f"{abs(y):.0f} to {'starboard' if y > 0 else 'port'}"
    x = at.shaft_aft_mm
    fore = f"{abs(x):.0f} {'aft' if x >= 0 else 'forward'} of the top edge"
    return (
        f"shaft {side}, {fore}, from {at.shaft_bottom_mm:.0f} up to {at.shaft_top_mm:.0f}; "
        f"collars at {at.lower_height_mm:.0f} and {at.upper_height_mm:.0f} (mm, heights above water)"
    )


def binding(checks: Iterable[Check]) -> list[Check]:
    """Return the checks that can refuse a fit, failing and tightest first, then those that could not be made.

    How tight a check is, is its margin over its scale: margins of different kinds compare by that.
    """
    may_refuse = [c for c in checks if c.binds]
    made = [c for c in may_refuse if c.margin is not None and c.status != "unknown"]
    made.sort(key=lambda c: (c.margin or 0.0) / (c.scale or 1.0))
    return made + [c for c in may_refuse if c not in made]


def tightest(fit: Fit, most: int = MOST_BINDING) -> list[RenderableType]:
    """Return the checks that bind most, every failing and unknown one among them, and how many more pass."""
    ordered = binding(fit.checks)
    shown = [c for place, c in enumerate(ordered) if place < most or c.status != "pass"]
    more = len(ordered) - len(shown)
    body: list[RenderableType] = [_table(shown)]
    if more:
        body.append(words(f"{more} more pass with more room; --json lists them", "dim"))
    return body


def every(fit: Fit) -> list[RenderableType]:
    """Return all checks, those that only advise last."""
    return [_table([*binding(fit.checks), *(c for c in fit.checks if not c.binds)])]


def _table(checks: Iterable[Check]) -> RenderableType:
    rows = [
        (
            "" if c.status == "pass" else (STATUS[c.status] if c.binds else "note"),
            c.id,
            number(c.value, c.unit),
            number(c.limit, c.unit),
            number(c.margin, c.unit),
            share(c.probability),
        )
        for c in checks
    ]
    return table(("", "check", ">value", ">limit", ">margin", ">passes"), rows, wraps=())


def filled(form: BoatForm, values: Sequence[Filled]) -> list[RenderableType]:
    """Return what nobody said and was taken from elsewhere."""
    rows = [
        (
            called(form, f.field),
            said(f.field, f.value) + (f" ± {f.spread:.0f}" if f.spread else ""),
            FROM[f.from_],
        )
        for f in values
    ]
    return [table(("nobody said", ">taken as", "from"), rows)] if rows else []


def order(fit: Fit) -> list[RenderableType]:
    """Return bolts and pads, as far as they are known."""
    body: list[RenderableType] = []
    bolts = [
        (
            f.role,
            f"{f.count} of {f.size}",
            f"{f.grip_mm:.0f} mm",
            f"{f.length_mm:.0f} mm" if f.length_mm else "-",
            f.note,
        )
        for f in fit.fasteners
    ]
    if bolts:
        body.append(table(("bracket", "bolts", ">grip", ">length", "note"), bolts))
    pads = [
        (
            p.role,
            f"{p.width_mm:.0f} by {p.height_mm:.0f} mm",
            f"{p.centre_mm:.0f} mm",
            f"{p.rake_bevel_deg:.1f}°, {p.plan_bevel_deg:.1f}°",
            f"{p.blank_mm:.0f} mm",
        )
        for p in fit.pads
    ]
    if pads:
        body.append(table(("pad", "face", ">middle", ">bevels in rake, plan", ">blank"), pads, wraps=()))
    return body


def show(sheet: Sheet, fit: Fit, form: BoatForm, name: str) -> None:
    """Print the page of one fit; `form` is what it was tried on and `name` where that stood."""
    sheet.title(name, str(fit.configuration))
    sheet.part(
        "verdict",
        words(f"{VERDICT[fit.verdict]}: chance that every check passes {share(fit.probability)}", "bold"),
        words(fit.why),
    )
    sheet.part("placement", words(place(fit.placement)))
    sheet.part("checks", *every(fit))
    sheet.part("metal", *order(fit))
    if fit.doubt:
        rows = [(share(d.share), called(form, d.field)) for d in fit.doubt]
        sheet.part("doubt", table((">share", "rests on"), rows))
    sheet.part("filled in", *filled(form, fit.filled))
    help_ = [f"take it or leave it: {trade}" for trade in fit.trades] + [f"cure: {cure}" for cure in fit.cures]
    if help_:
        sheet.part("mending", listed(help_))
