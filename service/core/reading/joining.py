"""What a letter and the forms that came along say of each boat -> one form a boat."""

from __future__ import annotations

from dataclasses import dataclass

from service.core.boat import BoatForm
from service.core.reading.assemble import build, weigh
from service.core.reading.boats import Section
from service.core.reading.boxes import Seen
from service.core.reading.claims import Claim, Notes
from service.core.reading.details import read_details
from service.core.reading.enclosed import Told
from service.core.reading.lexis import fold
from service.core.reading.methods import read_methods
from service.core.reading.models import Named
from service.core.reading.obstacles import read_obstacles
from service.core.reading.shape import Doubt, Evidence
from service.core.reading.sheet import Sheet


@dataclass(frozen=True)
class Said:
    """What was said of one boat: claims, sights of obstacles, and doubts."""

    claims: list[Claim]
    obstacles: list[Seen]
    doubts: list[Doubt]

    @property
    def model(self) -> str | None:
        """The hull model it is said to be."""
        return next((str(c.value) for c in self.claims if c.field == "boat.model"), None)


def said_of(sheet: Sheet, part: Section, gathered: tuple[Notes, list[Named]], *, alone: bool) -> Said:
    """Return what the section of one boat says; one that is `alone` has every obstacle of the letter."""
    notes, named = gathered
    mine = [n for n in named if part.start <= n.start < part.end]
    claims = [c for c in notes.claims if part.start <= c.start < part.end]
    claims += [c for c in read_details(sheet, mine) if part.start <= c.start < part.end]
    if part.named is not None:
        n = part.named
        claims.append(Claim("boat.model", n.name, n.start, n.end, n.clause.depth, min(0.95, 0.6 + n.score / 10)))
    seen = read_obstacles(sheet) if alone else read_obstacles(sheet, part.start, part.end)
    return Said(claims, seen, [d for at, d in notes.doubts if part.start <= at < part.end])


def joined(boats: list[Said], told: list[Told]) -> list[Said]:
    """Add each enclosed form to the boat it is of: the one of its model, the only one, or a boat of its own."""
    out = list(boats)
    for one in told:
        same = next((b for b in out if b.model and one.model and fold(b.model) == fold(one.model)), None)
        home = same or (out[0] if len(out) == len(told) == 1 else None)
        if home is None:
            out.append(Said(list(one.claims), list(one.obstacles), []))
            continue
        home.claims.extend(one.claims)
        for thing in one.obstacles:
            known = next((o for o in home.obstacles if o.kind == thing.kind), None)
            if known is None:
                home.obstacles.append(thing)
            else:
                known.said = thing.said | known.said
    return out


def form_of(
    sheet: Sheet, text: str, said: Said, common: list[Claim], index: int
) -> tuple[BoatForm, list[Evidence], list[Doubt]]:
    """Return the form of one boat, its evidence and doubts; `text` is the letter with what was written out below it."""
    kept, contradicted = weigh(said.claims, text)
    stated = {c.field for c in kept}
    written = [c for c in kept if c.end <= len(sheet.text)]
    kept += [c for c in read_methods(sheet, written) if c.field not in stated]
    given = {c.field for c in common}
    taken_back = {d.field for d in said.doubts if d.why == "withdrawn"}
    kept = [c for c in kept if c.field not in given and not (c.depth and c.field in taken_back)]
    form, evidence, refused = build([*kept, *common], said.obstacles, text, index)
    unsaid = [d for d in said.doubts if not any(c.field == d.field for c in kept)]
    return form, evidence, [*contradicted, *refused, *unsaid]
