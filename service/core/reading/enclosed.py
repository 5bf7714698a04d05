"""Boat forms that came along with a letter: written out below its text, so that each of their values has its words."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any

from service.core.boat import BoatForm
from service.core.reading.boxes import Seen
from service.core.reading.claims import Claim

SURE = 0.99


@dataclass(frozen=True)
class Told:
    """What one enclosed form says, with places in the text it was written out in."""

    claims: list[Claim] = field(default_factory=list)
    obstacles: list[Seen] = field(default_factory=list)

    @property
    def model(self) -> str | None:
        """The hull model it names."""
        return next((str(c.value) for c in self.claims if c.field == "boat.model"), None)


def written_out(name: str, form: BoatForm) -> list[str]:
    """Return the form as lines `field: value`, below one with the file's name."""
    return [f"[{name}]", *(f"{path}: {_said(value)}" for path, value in _leaves(form.document()))]


def tell(text: str, start: int, form: BoatForm) -> Told:
    """Return the claims of a form whose lines begin at `start` of `text`, as `written_out` made them."""
    told = Told()
    at = text.index("\n", start) + 1
    for path, value in _leaves(form.document()):
        line = f"{path}: {_said(value)}"
        begin = at + len(path) + 2
        end = at + len(line)
        if path.startswith("obstacles["):
            said = {key: item for key, item in value.items() if key != "kind"}
            told.obstacles.append(Seen(value["kind"], begin, end, 0, said))
        else:
            told.claims.append(Claim(path, value, begin, end, 0, SURE))
        at = end + 1
    return told


def _leaves(document: dict[str, Any]) -> Iterator[tuple[str, Any]]:
    for part, inner in document.items():
        if part == "obstacles":
            yield from ((f"obstacles[{i}]", one) for i, one in enumerate(inner))
        elif isinstance(inner, dict):
            yield from ((f"{part}.{key}", value) for key, value in inner.items())
        elif part != "schema":
            yield part, inner


def _said(value: object) -> str:
    return value if isinstance(value, str) and "\n" not in value else json.dumps(value, ensure_ascii=False)
