"""Which boat it was taken for, and which boats are like it."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence

from rich.console import RenderableType

from service.cli.sheet import hanging, listed, said, share, table, words
from service.core.boat import BoatForm, title
from service.core.hulls import HullDecision
from service.core.recall import Difference, Precedent, Vote

MOST_NAMED = 3
MOST_SHOWN = 6
WHOLE = "where it is"
AXES = {"aft_mm": "fore and aft", "starboard_mm": "athwartships", "height_mm": "height"}
TAKEN = {"matched": "matched", "several": "could be several", "unknown": "not known"}


def hull(decision: HullDecision | None) -> list[RenderableType]:
    """Return which hull model was decided on, how surely and why, and what else it could be."""
    if decision is None:
        return [words("not said: no hull model was named")]
    sure = (
        f"{TAKEN[decision.status]}, {share(decision.probability)} sure" if decision.status != "unknown" else "not known"
    )
    body: list[RenderableType] = [words(f"{decision.model}  ({sure})" if decision.model else sure, "bold")]
    body.append(words(decision.why))
    others = [a for a in decision.alternatives if decision.model is None or a.model.id != decision.model.id]
    if others:
        rows = [(share(a.probability), str(a.model), "; ".join(e.why for e in a.saw if e.score < 0)) for a in others]
        body.append(table((">chance", "could be", "but"), rows))
    return body


def named(differences: Iterable[Difference]) -> str:
    """Write the differences that count most: theirs, ours."""
    most = sorted(differences, key=lambda d: -d.share)[:MOST_NAMED]
    return "; ".join(f"{title(d.field)} {said(d.field, d.theirs)} (here {said(d.field, d.ours)})" for d in most)


def precedents(found: Sequence[Precedent]) -> list[RenderableType]:
    """Return the records brought up, each with its likeness, what it carries and how its boat differs."""
    if not found:
        return [words("none: the fleet has no record of a boat like this")]
    rows: list[tuple[str, str | RenderableType]] = [(share(p.likeness), _precedent(p)) for p in found[:MOST_SHOWN]]
    if len(found) > MOST_SHOWN:
        rows.append(("", f"{len(found) - MOST_SHOWN} more are less alike; --json lists all"))
    return [table((">alike", "record"), rows)]


def _precedent(one: Precedent) -> RenderableType:
    boat = f"{one.hull_name or one.hull or 'hull not known'}{f', {one.year}' if one.year else ''}"
    kin = "sister ship" if one.sister else "other hull"
    differs = [f"differs: {named(one.differences)}"] if one.differences else []
    return hanging(f"{one.record}  {boat}  ({kin}, {one.status})", f"carries {one.configuration}", *differs)


def votes(found: Sequence[Vote]) -> list[RenderableType]:
    """Return what fitters would install, likeliest first."""
    if not found:
        return [words("none")]
    rows = [(share(v.probability), str(v.configuration), ", ".join(v.precedents)) for v in found]
    return [table((">chance", "configuration", "spoken for by"), rows)]


def called(form: BoatForm, path: str) -> str:
    """Return what people call a field; a field of an obstacle by the obstacle's own name."""
    inside = re.match(r"obstacles\[(\d+)\]\.?(.*)", path)
    if inside is None or int(inside[1]) >= len(form.obstacles):
        return title(path)
    one = form.obstacles[int(inside[1])]
    name = one.kind + (f" ({one.side})" if one.side else "")
    part = AXES.get(inside[2], inside[2])
    return f"{name}: {part}" if part else f"{name}: {WHOLE}"


def bullets(lines: Sequence[str], *, numbered: bool = False) -> list[RenderableType]:
    """Return the lines as a list, nothing where there are none."""
    return [listed(lines, numbered=numbered)] if lines else []


def seen(decision: HullDecision) -> list[RenderableType]:
    """Return what spoke for and against the model decided on, with its weight in log odds."""
    rows = [(f"{e.score:+.1f}", e.about, e.why) for e in decision.saw]
    return [table((">weight", "about", "seen"), rows)] if rows else []
