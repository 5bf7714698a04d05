"""What sets two boat forms apart, and two people's changes of one form brought together."""

from __future__ import annotations

from typing import Any

from service.core.boat import BoatForm, Contact, Shape
from service.core.form import parse_form
from service.core.revision import Change, Path, flat, named


class FormClash(Shape):
    """A field that two people made different things of."""

    field: str
    was: Any
    theirs: Any
    yours: Any


def form_changes(before: BoatForm | None, after: BoatForm) -> tuple[Change, ...]:
    """Return every field in which two forms differ, in the form's order. Who asks is not among them.

    >>> form_changes(None, BoatForm.model_validate({"boat": {"year": 1987}}))
    (Change(field='boat.year', before=None, after=1987),)
    """
    old, new = said(before) if before else {}, said(after)
    return tuple(
        Change(field=name_of(path), before=old.get(path), after=new.get(path))
        for path in dict.fromkeys((*new, *old))
        if old.get(path) != new.get(path)
    )


def brought_together(base: BoatForm, theirs: BoatForm, yours: BoatForm) -> tuple[BoatForm, tuple[FormClash, ...]]:
    """Return the form with both people's changes of `base`, and what they clash about; there it holds yours.

    A list (the obstacles, a profile) is one thing. FormError where both together contradict each other.
    """
    was, now, mine = said(base), said(theirs), said(yours)
    document = yours.document()
    clashes = []
    for path in dict.fromkeys((*now, *was, *mine)):
        first, second, third = was.get(path), now.get(path), mine.get(path)
        if second in (first, third):
            continue
        if third == first:
            _put(document, path, second)
        else:
            clashes.append(FormClash(field=name_of(path), was=first, theirs=second, yours=third))
    return parse_form(document), tuple(clashes)


def said(form: BoatForm) -> dict[Path, Any]:
    """Return every value of a form by its path, but who asks."""
    return {
        path: value
        for path, value in flat(form.model_copy(update={"contact": Contact()})).items()
        if path != ("schema",)
    }


def name_of(path: Path) -> str:
    """Return a path as people and tables write it.

    >>> name_of(("notes",)), name_of(("methods", "boat.loa_mm"))
    ('notes', 'methods[boat.loa_mm]')
    """
    return path[0] if len(path) == 1 else named(("form", *path))


def _put(document: dict[str, Any], path: Path, value: Any) -> None:  # noqa: ANN401 - JSON is any
    at = document
    for part in path[:-1]:
        at = at.setdefault(part, {})
    if value is None:
        at.pop(path[-1], None)
    else:
        at[path[-1]] = value
