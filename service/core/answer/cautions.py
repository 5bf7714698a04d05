"""What must be said with every answer, and what this boat asks to be said besides."""

from __future__ import annotations

from collections.abc import Sequence

from service.core.answer.shapes import Suggestion
from service.core.boat import BoatForm
from service.core.catalogue import Catalogue
from service.core.fit.strength import of_hull

ALWAYS = (
    (
        "This is advice worked out from what we were told. Confirm every measurement on the boat before metal is ordered "
        "or a hole is drilled."
    ),
    (
        "Holes in a hull can sink a boat. Ask the builder or a surveyor whether the skin may be drilled there and how it "
        "must be backed; local rules and class come first."
    ),
    "Set the shaft plumb both ways with a dummy tube before drilling: fit the lower bracket first.",
)


def for_boat(form: BoatForm, catalogue: Catalogue, suggestions: Sequence[Suggestion]) -> tuple[str, ...]:
    """Return the cautions for an answer, the general ones first."""
    found = list(ALWAYS)
    if form.boat.hull_material == "frp_cored" or form.transom.core_mm:
        found.append(
            "The skin is cored: the core must be taken out and filled around every hole, or sleeved, or it will crush and soak."
        )
    if form.boat.hull_material in ("aluminium", "steel"):
        found.append("Stainless metal against a metal hull corrodes the hull: insulate every bolt, flange and plate.")
    if any(o.moves in ("folds", "swings", "slides") and o.swept_to is None for o in form.obstacles):
        found.append(
            "Something on the stern moves and we do not know where to: try it through its whole movement with a dummy shaft in place."
        )
    found += _of_fit(catalogue, suggestions)
    return tuple(found)


def _of_fit(catalogue: Catalogue, suggestions: Sequence[Suggestion]) -> list[str]:
    if not suggestions:
        return []
    best = suggestions[0]
    found = []
    limit = catalogue.rules.rule.get("hole_above_water")
    if limit is not None and best.fit.placement is not None:
        bracket = catalogue.bracket(best.configuration.lower)
        lowest = (
            best.fit.placement.lower_height_mm - bracket.collar.rise_mm + min(z for _, z in bracket.bolts.pattern_mm)
        )
        if lowest < limit.value:
            found.append(
                f"The lowest bolt hole stands {lowest:.0f} mm above the water: have a surveyor agree before drilling there."
            )
    failed = {c.id for c in best.fit.checks if c.status == "fail" and not c.binds}
    if any(of_hull(id_) for id_ in failed):
        found.append(
            "By usual figures the skin behind a bracket is weaker than the loads ask: a builder or surveyor should say how "
            "it is to be built up before anything is drilled."
        )
    if "load.shaft_shaking" in failed:
        found.append(
            "At some speeds eddies may set the shaft trembling: watch for it on the first sail, and have the overhang shortened "
            "if it does."
        )
    if best.fit.verdict == "tight":
        found.append(
            "The fit is tight: it passes on the figures given, but not surely. Measure again what the doubt rests on."
        )
    return found
