"""What must be said with every answer, and what this boat asks to be said besides."""

from __future__ import annotations

from collections.abc import Sequence

from service.core.answer.shapes import Suggestion
from service.core.answer.speech import Said, mm, said
from service.core.boat import BoatForm
from service.core.catalogue import Catalogue
from service.core.fit.names import of_hull

ALWAYS = (said("caution-confirm"), said("caution-holes"), said("caution-plumb"))


def for_boat(form: BoatForm, catalogue: Catalogue, suggestions: Sequence[Suggestion]) -> tuple[Said, ...]:
    """Return the cautions for an answer, the general ones first."""
    found = list(ALWAYS)
    if form.boat.hull_material == "frp_cored" or form.transom.core_mm:
        found.append(said("caution-cored"))
    if form.boat.hull_material in ("aluminium", "steel"):
        found.append(said("caution-metal"))
    if any(o.moves in ("folds", "swings", "slides") and o.swept_to is None for o in form.obstacles):
        found.append(said("caution-moves"))
    return (*found, *_of_fit(catalogue, suggestions))


def _of_fit(catalogue: Catalogue, suggestions: Sequence[Suggestion]) -> list[Said]:
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
            found.append(said("caution-low-hole", height=mm(lowest)))
    failed = {c.id for c in best.fit.checks if c.status == "fail" and not c.binds}
    if any(of_hull(id_) for id_ in failed):
        found.append(said("caution-weak-skin"))
    if "load.shaft_shaking" in failed:
        found.append(said("caution-shaking"))
    if best.fit.verdict == "tight":
        found.append(said("caution-tight"))
    return found
