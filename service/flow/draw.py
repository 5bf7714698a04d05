"""Draw the best suggestion of an answer."""

from __future__ import annotations

from service.core.answer import Answer
from service.core.drawing import views
from service.core.drawing.lengths import in_inches
from service.files.write.svg import write_svg
from service.store.unit import UnitOfWork


def draw_answer(uow: UnitOfWork, answer: Answer) -> str | None:
    """Return the SVG sheet of the best suggestion, None where there is none or its catalogue is not kept here."""
    catalogue = uow.catalogues.get(answer.provenance.catalogue)
    if not answer.suggestions or catalogue is None:
        return None
    best = answer.suggestions[0]
    shown = views(answer.form, best.fit, catalogue, inches=in_inches(answer.form.enquiry.country))
    if not shown:
        return None
    boat = answer.hull.model if answer.hull and answer.hull.model else answer.form.boat.model or "boat"
    verdict = best.fit.verdict.replace("_", " ")
    heading = f"{boat}: {best.configuration}"
    lines = [
        f"{verdict}; chance that every check passes {100 * (best.fit.probability or 0):.0f} %. {best.fit.why}",
        *(view.says for view in shown),
        "Hatched: things on the stern as we were told, or in their usual place.",
        "Advice to be confirmed on the boat before anything is drilled.",
    ]
    return write_svg(shown, heading, lines)
