"""Which papers an answer has, without making any of them."""

from __future__ import annotations

from service.core.answer import Answer

WORDS = {
    "sheet.pdf": "fit sheet", "template.pdf": "drilling template", "drawing.svg": "drawing", "drawing.dxf": "drawing for CAD",
    "side.svg": "view from starboard", "stern.svg": "view from aft", "plan.svg": "view from above",
    "lower-plate.svg": "lower bracket's holes", "upper-plate.svg": "upper bracket's holes",
    "lower-pad.stl": "lower pad, solid", "upper-pad.stl": "upper pad, solid", "packing.pdf": "packing list",
    "packing.csv": "packing list, table", "packing.xlsx": "packing list, workbook", "picking.csv": "picking list",
    "prices.csv": "prices",
}  # fmt: skip
_LISTS = ("packing.pdf", "packing.csv", "packing.xlsx", "picking.csv", "prices.csv")


def offered(answer: Answer) -> tuple[tuple[str, str], ...]:
    """Return the names of an answer's papers with what each is, but for the reply itself; none where nothing is suggested."""
    if not answer.suggestions:
        return ()
    fit = answer.suggestions[0].fit
    without = set(_LISTS) if fit.verdict == "does_not_fit" else set()
    without |= {f"{role}-pad.stl" for role in ("lower", "upper")} - {f"{pad.role}-pad.stl" for pad in fit.pads}
    if fit.placement is None:
        without |= set(WORDS) - set(_LISTS) - {"sheet.pdf"}
    return tuple((name, words) for name, words in WORDS.items() if name not in without)
