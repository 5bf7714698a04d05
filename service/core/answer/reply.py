"""The reply to whoever asked, in plain English, made from the answer value and nothing else."""

from __future__ import annotations

from service.core.answer.shapes import Answer, Suggestion
from service.core.units import format_length

SURE = {
    "fits": "fits",
    "tight": "fits, but only just",
    "undecided": "cannot be decided yet",
    "does_not_fit": "does not fit",
}


def reply(answer: Answer) -> str:
    """Return the reply as plain text."""
    name = answer.form.contact.name
    lines = [f"Dear {name}," if name else "Hello,", "", *_opening(answer), ""]
    if answer.suggestions and answer.fits:
        lines += [*_suggestion(answer, answer.suggestions[0]), ""]
    elif answer.suggestions:
        lines += [*_nothing(answer.suggestions[0]), ""]
    if answer.questions:
        lines += ["Before we ship, please tell us:", *(f"  {i}. {q}" for i, q in enumerate(answer.questions, 1)), ""]
    lines += ["Please note:", *(f"  - {c}" for c in answer.cautions), ""]
    lines += ["With kind regards,", "the sales desk"]
    return "\n".join(lines)


def _boat(answer: Answer) -> str:
    hull = answer.hull
    if hull is not None and hull.model is not None:
        return f"your {hull.model}"
    return f"your {answer.form.boat.model}" if answer.form.boat.model else "your boat"


def _opening(answer: Answer) -> list[str]:
    sisters = answer.sisters
    seen = "We have no sister ship in our records, so we compared similar boats."
    if sisters:
        seen = f"We have {sisters} sister ship{'s' if sisters != 1 else ''} in our records and looked at those most like her."
    unsure = ""
    if answer.hull is None or answer.hull.status != "matched":
        unsure = " We are not sure which hull model she is."
    return [f"Thank you for asking about {_boat(answer)}. {seen}{unsure}"]


def _suggestion(answer: Answer, best: Suggestion) -> list[str]:
    fit, c = best.fit, best.configuration
    lines = [
        (
            f"We suggest gear {c.gear} on lower bracket {c.lower} and upper bracket {c.upper}, with shaft {c.shaft}. "
            f"On your measurements it {SURE[fit.verdict]}; we put the chance that every check passes on your boat at "
            f"{100 * (fit.probability or 0):.0f} %."
        )
    ]
    if fit.placement is not None:
        p = fit.placement
        side = "on the centreline" if abs(p.offset_mm) < 1 else (
            f"{format_length(abs(p.offset_mm), 'both')} to {'starboard' if p.offset_mm > 0 else 'port'} of the centreline"
        )  # fmt: skip
        lines.append(
            f"She would carry it {side}, the shaft {format_length(p.shaft_aft_mm, 'both')} aft of the top edge, the brackets "
            f"{format_length(p.lower_height_mm, 'both')} and {format_length(p.upper_height_mm, 'both')} above the water."
        )
    lines += [f"  {t.text[0].upper()}{t.text[1:]}." for t in answer.contrasts[:1]]
    lines += [f"It asks you to {trade}." for trade in fit.trades]
    lines.append("You would provide: " + "; ".join(fit.owner_supplies) + ".")
    return lines


def _nothing(nearest: Suggestion) -> list[str]:
    lines = [
        (
            "On the figures we have, nothing we make fits as she is. "
            f"The nearest is {nearest.configuration}: {nearest.fit.why.removeprefix('tightest: ')}."
        )
    ]
    if nearest.fit.cures:
        lines.append("What would help: " + "; ".join(nearest.fit.cures) + ".")
    return lines
