"""The fit sheet: what a fitter has in hand on the pontoon, two to four pages, A4 or Letter."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from reportlab.lib.units import mm
from reportlab.platypus import CondPageBreak, Flowable, PageBreak

from service.core.answer import Answer, Suggestion
from service.core.answer.speech import Speech
from service.core.answer.steps import after_fitting, before_drilling
from service.core.catalogue import Catalogue
from service.core.drawing import View
from service.core.drawing.lay import SERIES, Manner, lay
from service.files.write import fonts, sheet_metal, sheet_tables
from service.files.write.paper import LEAD, TITLE, Foot, build, gap, items, room, section, text
from service.files.write.pdf_view import draw_view

VERDICT = {
    "fits": "Fits",
    "tight": "Fits, but only just",
    "undecided": "Cannot be decided yet",
    "does_not_fit": "Does not fit: do not drill from this sheet",
}
SPELLED = Manner(fonts.written)
HEADING = 8.0
"""What the heading of the drawing page takes (mm)."""
SMALLEST = 100.0
"""Smaller than 1:100 three views on one page are of no use to a fitter."""
METAL_ROOM = 60 * mm
"""Room that pads, bolts and plates take together: they are read side by side."""
LONG_NAME = 60


@dataclass(frozen=True)
class Sheet:
    """What a fit sheet is made from: the answer, its best suggestion and catalogue, its mark, its views."""

    answer: Answer
    best: Suggestion
    catalogue: Catalogue
    mark: str
    boat: str
    views: tuple[View, ...]
    english: Speech
    letter: bool = False

    @property
    def fits(self) -> bool:
        """Say whether it may be fitted."""
        return self.best.fit.verdict != "does_not_fit"


def write_sheet(sheet: Sheet) -> bytes:
    """Return the PDF."""
    made = sheet.answer.provenance
    origin = f"{made.software}, catalogue {made.catalogue}, seed {made.seed}. Answer {sheet.mark}"
    foot = Foot("fit sheet", f"{sheet.boat}: {sheet.best.configuration}", origin)
    return build([*_first(sheet), *_drawings(sheet), *_rest(sheet)], foot, letter=sheet.letter)


def _first(sheet: Sheet) -> Iterator[Flowable]:
    answer, best = sheet.answer, sheet.best
    yield text(sheet.boat, TITLE if len(sheet.boat) <= LONG_NAME else LEAD)
    yield from _owner(sheet)
    yield gap(2)
    yield text(_verdict(best), LEAD)
    yield text(best.fit.why[:1].upper() + best.fit.why[1:] + ".")
    if not sheet.fits:
        yield from _in_the_way(sheet)
    yield section("What is fitted, and where" if sheet.fits else "What comes nearest, and where")
    yield sheet_tables.configuration(best, sheet.catalogue)
    yield gap()
    if best.fit.placement is not None:
        yield sheet_tables.placement(best.fit.placement)
    asked = tuple(map(sheet.english.sentence, answer.asked)) or answer.questions
    if asked:
        yield section("To be measured before anything is shipped")
        yield from items(asked, numbered=True)
    yield section("Cautions")
    yield from items(sheet.answer.cautions)
    yield section("The boat as measured")
    yield from sheet_tables.measured(answer.form, best.fit, sheet.catalogue, sheet.english)
    if best.fit.trades:
        yield section("What it asks of the boat")
        yield from items([one[:1].upper() + one[1:] for one in best.fit.trades], boxes=True)


def _owner(sheet: Sheet) -> Iterator[Flowable]:
    form = sheet.answer.form
    said = [
        ("for", form.contact.name), ("dealer", form.enquiry.dealer), ("their reference", form.enquiry.reference),
        ("built", form.boat.year), ("hull number", form.boat.hull_number), ("sail number", form.boat.sail_number),
        ("", sheet.answer.enquiry),
    ]  # fmt: skip
    line = "; ".join(f"{name} {value}".strip() for name, value in said if value)
    yield text(line or "No name was given.")
    if any(fonts.lacking(str(value)) for _, value in said if value) or fonts.lacking(sheet.boat):
        yield text(fonts.FALLBACK)


def _verdict(best: Suggestion) -> str:
    fit = best.fit
    chance = "" if fit.probability is None else f" Chance that every check passes: {_percent(fit.probability)}."
    return f"{VERDICT[fit.verdict]}.{chance}"


def _percent(share: float) -> str:
    return "over 99 %" if share > 0.99 else "under 1 %" if share < 0.01 else f"{100 * share:.0f} %"  # noqa: PLR2004 - never quite certain


def _in_the_way(sheet: Sheet) -> Iterator[Flowable]:
    failed = [c for c in sheet.best.fit.checks if c.status == "fail" and c.binds]
    failed.sort(key=lambda c: (c.margin or 0.0) / (c.scale or 1.0))
    yield section("What is in the way, the worst first")
    yield from items([c.why[:1].upper() + c.why[1:] for c in failed])
    yield section("What would cure it: tried, and it would pass")
    cures = sheet.best.fit.cures
    none = "Nothing single: no one thing taken off and no one part changed makes it pass."
    yield from items([one[:1].upper() + one[1:] for one in cures] or [none])


class _Views(Flowable):  # type: ignore[misc]  # the library has no types
    """Views under each other to one scale, on all the room a page has left."""

    def __init__(self, views: Sequence[View], one_to: float | None) -> None:
        super().__init__()
        self.views, self.one_to = list(views), one_to

    def wrap(self, wide: float, high: float) -> tuple[float, float]:
        """Take all the room there is."""
        self.width, self.height = wide, high - 1
        return self.width, self.height

    def draw(self) -> None:
        """Draw each view in a share of the page as tall as it needs beside the others."""
        if self.one_to is None:
            draw_view(self.canv, self.views[0], (0, 0, self.width, self.height))
            return
        tall = [lay(view, 1.0 / self.one_to, SPELLED).size[1] for view in self.views]
        top = self.height
        for view, share in zip(self.views, tall, strict=True):
            room = self.height * share / sum(tall)
            draw_view(self.canv, view, (0, top - room, self.width, room), scale=self.one_to)
            top -= room


def together(views: Sequence[View], wide: float, high: float) -> float | None:
    """Return the N of the largest scale 1:N at which the views have room under each other (mm); None where none is of use."""
    tall = sum(view.box[3] - view.box[2] for view in views)
    for one_to in SERIES:
        if one_to <= SMALLEST and tall / one_to <= high:
            sizes = [lay(view, 1.0 / one_to, SPELLED).size for view in views]
            if sum(size[1] for size in sizes) <= high and max(size[0] for size in sizes) <= wide:
                return one_to
    return None


def _drawings(sheet: Sheet) -> Iterator[Flowable]:
    """Draw the three views on one page, or each on its own where there is too much to write beside them."""
    views = sheet.views[:3]
    if not views:
        return
    wide, high = room(letter=sheet.letter)
    one_to = together(views, wide / mm, high / mm - HEADING)
    pages = [views] if one_to else [(view,) for view in views]
    for number, shown in enumerate(pages):
        yield PageBreak()
        if number == 0:
            yield section("Views from starboard, from aft and from above: mm, to scale, heights from the water")
        yield _Views(shown, one_to)


def _rest(sheet: Sheet) -> Iterator[Flowable]:
    fit, form = sheet.best.fit, sheet.answer.form
    yield PageBreak()
    letters = sheet_tables.case_letters(fit)
    if fit.loads:
        yield section("Loads on the blade")
        yield from sheet_tables.loads(fit, letters)
    yield section("Checks: value, limit, and what is left")
    yield sheet_tables.checks(fit, letters)
    yield section("Where this comes from")
    yield sheet_tables.provenance(sheet.answer, sheet.mark)
    if sheet.fits:
        yield CondPageBreak(METAL_ROOM)
        yield section("Pads, bolts, backing plates, struts")
        yield from sheet_metal.metal(sheet.best, sheet.catalogue)
        yield section("Before drilling: set it up dry, and plumb")
        yield from items(before_drilling(form, fit, sheet.catalogue), numbered=True)
        yield section("After fitting: tick each, and look again after the first sail")
        yield from items(after_fitting(form, fit), boxes=True)
        yield from sheet_metal.parts(fit.parts)
        yield section("What the owner supplies")
        yield from items(sheet_metal.owner_buys(fit), boxes=True)
