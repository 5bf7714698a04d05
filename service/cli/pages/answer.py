"""The answer for one boat, as a page."""

from __future__ import annotations

from rich.console import RenderableType
from rich.padding import Padding

from service.cli.pages import boat, fit
from service.cli.pages.boat import bullets, called
from service.cli.sheet import Sheet, share, table, words
from service.core.answer import Answer, Suggestion, as_text
from service.core.answer.reply import reply
from service.files.read.messages import speak

NAMED_IN_FULL = 1
NOTICEABLE = 0.01
"""An answer that raises the chance of a fit by less than this is not worth a figure."""


def show(sheet: Sheet, answer: Answer, name: str) -> None:
    """Print the page of one answer; `name` is what was asked with."""
    sheet.title(name, answer.enquiry or "")
    sheet.part("boat", *boat.hull(answer.hull))
    sheet.part("precedents", *boat.precedents(answer.precedents), *_contrasts(answer))
    sheet.part("suggestions", *_suggestions(answer))
    if answer.suggestions:
        best = answer.suggestions[0].fit
        sheet.part("checks of 1", *fit.tightest(best))
        sheet.part("metal of 1", *fit.order(best))
        sheet.part("filled in", *fit.filled(answer.form, best.filled))
    sheet.part("missing", *_missing(answer))
    sheet.part("questions", *bullets(answer.questions, numbered=True))
    sheet.part("cautions", *bullets(answer.cautions))
    asked = answer.form.enquiry
    sheet.part("reply", words(as_text(reply(answer, speak(asked.language, asked.country)))))
    made = answer.provenance
    sheet.part(
        "made with", words(f"catalogue {made.catalogue}, {made.records} records, {made.software}, seed {made.seed}")
    )


def _contrasts(answer: Answer) -> list[RenderableType]:
    return [words(""), *bullets([c.text for c in answer.contrasts])] if answer.contrasts else []


def _suggestions(answer: Answer) -> list[RenderableType]:
    if not answer.suggestions:
        return [words("none: the catalogue makes no configuration that could be tried on this boat")]
    body: list[RenderableType] = []
    if not answer.fits:
        body.append(words("Nothing in the catalogue fits as she is; the nearest misses:", "bold"))
    for one in answer.suggestions:
        body += _suggestion(one)
    return body


def _suggestion(one: Suggestion) -> list[RenderableType]:
    tight = fit.binding(one.fit.checks)
    chances = (
        f"chance that every check passes {share(one.fit.probability)}, "
        f"that a fitter would install it {share(one.probability)}"
    )
    about = [
        f"{fit.VERDICT[one.fit.verdict]}: {chances}",
        _origin(one),
        fit.place(one.fit.placement),
        *(["tightest: " + c.why for c in tight[:1]] if one.rank > NAMED_IN_FULL else []),
        *(f"trade: {trade}" for trade in one.fit.trades),
        *(f"cure: {cure}" for cure in one.fit.cures),
    ]
    if one.fit.disagrees:
        about.append(f"first-order estimate {share(one.fit.first_order)}: the two disagree, take the lower")
    return [words(f"{one.rank}  {one.configuration}", "bold"), *(Padding(words(line), (0, 0, 0, 3)) for line in about)]


def _origin(one: Suggestion) -> str:
    if one.origin == "solver":
        return "found by trying the catalogue; no record of a boat like this carries it"
    return f"as on {', '.join(one.precedents)}"


def _missing(answer: Answer) -> list[RenderableType]:
    rows = answer.missing
    if not rows:
        return [words("nothing that matters")]
    most = max((row.settles or 0.0 for row in rows), default=0.0)
    shown = [
        (
            f"+{share(row.settles)}" if (row.settles or 0.0) >= NOTICEABLE else "-",
            called(answer.form, row.field) + (", settles most" if row.settles == most >= NOTICEABLE else ""),
            row.why,
        )
        for row in rows
    ]
    body: list[RenderableType] = [table((">settles", "not said", "why it matters"), shown, wraps=(1, 2))]
    if most < NOTICEABLE:
        body.append(words("No single answer would raise the chance of a fit noticeably."))
    return body
