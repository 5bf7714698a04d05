"""Draw the best suggestion of an answer: the sheet, each view, CAD, drilling template, pads as solids."""

from __future__ import annotations

from collections.abc import Callable, Container, Iterator
from dataclasses import dataclass
from functools import partial

from service.core.answer import Answer, Suggestion
from service.core.drawing import Template, View
from service.core.drawing.lengths import in_inches, on_letter
from service.files.write.stl import write_pad
from service.files.write.svg import write_svg, write_view
from service.store.unit import UnitOfWork


@dataclass(frozen=True)
class Drawn:
    """One file of an answer: its name without a number, what it is, and its bytes, the same for the same answer."""

    name: str
    media: str
    content: bytes


@dataclass(frozen=True)
class Drawing:
    """What there is to draw of an answer, before any writer.

    `views` from starboard, from aft and from above, then what is drilled for either bracket; `templates` what of that is
    printed full size, and `before`, what is to be looked at before it is drilled.
    """

    answer: Answer
    best: Suggestion
    views: tuple[View, ...]
    templates: tuple[Template, ...]
    before: tuple[str, ...]

    @property
    def country(self) -> str | None:
        """Return where it was asked from, None where nobody said."""
        return self.answer.form.enquiry.country

    @property
    def boat(self) -> str:
        """Return what the boat is called: her model, and her own name where she has one."""
        hull, said = self.answer.hull, self.answer.form.boat
        model = str(hull.model) if hull and hull.model else said.model or "boat"
        return f"{model}, {said.name}" if said.name else model

    @property
    def heading(self) -> str:
        """Return the boat and what is suggested for her."""
        return f"{self.boat}: {self.best.configuration}"


def drawing_of(uow: UnitOfWork, answer: Answer) -> Drawing | None:
    """Return what there is to draw; None where nothing was suggested or placed, or its catalogue is not kept here."""
    from service.core.drawing.scene import scene  # noqa: PLC0415 - it loads the engine, and writers do without it
    from service.core.drawing.template import before_drilling, templates  # noqa: PLC0415 - the same
    from service.core.drawing.views import views_of  # noqa: PLC0415 - the same

    catalogue = uow.catalogues.get(answer.provenance.catalogue)
    if not answer.suggestions or catalogue is None or answer.suggestions[0].fit.placement is None:
        return None
    best = answer.suggestions[0]
    shown, inches = scene(answer.form, best.fit, catalogue), in_inches(answer.form.enquiry.country)
    return Drawing(
        answer, best, views_of(shown, inches=inches), templates(shown, inches=inches), before_drilling(shown)
    )


def draw_answer(uow: UnitOfWork, answer: Answer) -> str | None:
    """Return the SVG sheet of the best suggestion, None where there is nothing to draw."""
    shown = drawing_of(uow, answer)
    return None if shown is None else _sheet(shown)


def draw_files(uow: UnitOfWork, answer: Answer) -> tuple[Drawn, ...]:
    """Return every drawing of the best suggestion as files, none where there is nothing to draw."""
    shown = drawing_of(uow, answer)
    return () if shown is None else tuple(files_of(shown))


def files_of(shown: Drawing, names: Container[str] | None = None) -> Iterator[Drawn]:
    """Yield every drawing as a file, or those that are named, as it is asked for."""
    for name, (media, make) in _makers(shown).items():
        if names is None or name in names:
            yield Drawn(name, media, make())


def draw_file(uow: UnitOfWork, answer: Answer, name: str) -> Drawn | None:
    """Return one of those files, and make no other; None where this answer has none of that name."""
    shown = drawing_of(uow, answer)
    media, make = _makers(shown).get(name, ("", None)) if shown is not None else ("", None)
    return None if make is None else Drawn(name, media, make())


def _makers(shown: Drawing) -> dict[str, tuple[str, Callable[[], bytes]]]:
    """Return by name what each file is and how it is made."""
    found: dict[str, tuple[str, Callable[[], bytes]]] = {
        "drawing.svg": ("image/svg+xml", lambda: _sheet(shown).encode("utf-8", "replace"))
    }
    for view in shown.views:
        found[f"{view.key.replace('_', '-')}.svg"] = ("image/svg+xml", partial(_view, shown, view))
    found["drawing.dxf"] = ("image/vnd.dxf", partial(_dxf, shown))
    found["template.pdf"] = ("application/pdf", partial(_template, shown))
    for pad in shown.best.fit.pads:
        found[f"{pad.role}-pad.stl"] = ("model/stl", partial(write_pad, pad))
    return found


def _view(shown: Drawing, view: View) -> bytes:
    return write_view(view, f"{shown.heading}. {view.title}").encode("utf-8", "replace")


def _dxf(shown: Drawing) -> bytes:
    from service.files.write.dxf import write_dxf  # noqa: PLC0415 - it takes half a second to load

    return write_dxf(shown.views, shown.heading)


def _template(shown: Drawing) -> bytes:
    from service.files.write.template_pdf import write_template  # noqa: PLC0415 - the PDF writer is large, too

    return write_template(shown.templates, shown.heading, shown.before, letter=on_letter(shown.country))


def _sheet(shown: Drawing) -> str:
    fit = shown.best.fit
    verdict, why = fit.verdict.replace("_", " ").capitalize(), f"{fit.why[:1].upper()}{fit.why[1:]}"
    lines = [
        f"{verdict}; chance that every check passes {100 * (fit.probability or 0):.0f} %. {why}",
        *(view.says for view in shown.views[:3]),
        "Hatched: things on the stern as we were told, or in their usual place. Hatched both ways: what does not pass.",
        "Advice to be confirmed on the boat before anything is drilled.",
    ]
    return write_svg(shown.views, shown.heading, lines)
