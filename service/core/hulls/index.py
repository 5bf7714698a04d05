"""The hull models in memory: what candidates a name has. Never changed, so threads share it; changes make a new one.

A large part stays as it was built, a small one holds what came since, and models that left are passed over. The
answers are those of an index built anew: letter groups are as rare as all living families together make them, and
equals are told apart by their text and id, not by where they stand.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Self

import numpy as np

from service.core.hulls.look import Look
from service.core.hulls.ngrams import Codes, grams
from service.core.hulls.parse import ParsedName
from service.core.hulls.part import Part
from service.core.hulls.segment import Segment
from service.core.hulls.surface import Surface
from service.core.record import HullModel

_ROOM = 200
_SHARE = 0.02
"""How many changes never make it worth building everything anew, and the share of the models from which they do."""


@dataclass(frozen=True, eq=False)
class HullIndex:
    """Hull models for looking up by name. Build it once; `updated` gives the next."""

    parts: tuple[Part, ...]
    texts: int  # different texts of families that are still there
    twice: dict[int, int]  # letter group -> how often the parts count it for a text that is gone or stands in both

    @classmethod
    def build(cls, models: Iterable[HullModel]) -> Self:
        """Return the index of `models`; time and memory grow in line with their number. Ids must differ."""
        return cls._of(Part(Segment.build(models)), None)

    @classmethod
    def _of(cls, base: Part, recent: Part | None) -> Self:
        """Put two parts together so that every text counts once."""
        if recent is None and base.text_lives is None:
            return cls((base,), len(base.segment.texts), {})
        added = recent.segment.texts if recent else {}
        lives = base.text_lives
        again = [text for text, at in base.segment.texts.items() if text in added or not (lives is None or lives[at])]
        document, codes = grams(again)
        pairs = np.unique(np.stack((document, codes)), axis=1)
        twice, counts = np.unique(pairs[1], return_counts=True)
        size = len(base.segment.texts) + len(added) - len(again)
        return cls((base, recent) if recent else (base,), size, dict(zip(twice.tolist(), counts.tolist(), strict=True)))

    def __len__(self) -> int:
        return sum(sum(1 for _ in part.places()) for part in self.parts)

    def models(self) -> Iterator[HullModel]:
        """Return every model that is still there."""
        return (part.segment.models.shaped(place) for part in self.parts for place in part.places())

    def updated(self, put: Iterable[HullModel] = (), drop: Iterable[str] = ()) -> HullIndex:
        """Return the index with models added, replaced (by id) and dropped; ids that are not there are passed over.

        It answers as one built anew would, and costs little while few models changed since the last whole building.
        """
        fresh = {model.id: model for model in put}
        gone = {*fresh, *drop}
        base, *later = self.parts
        recent = [
            m for part in later for m in (part.segment.models.shaped(p) for p in part.places()) if m.id not in gone
        ]
        recent += fresh.values()
        places = base.segment.place_of
        dead = {places[hull_id] for hull_id in gone if hull_id in places}
        if base.model_lives is not None:
            dead |= set(np.flatnonzero(~base.model_lives).tolist())
        if len(recent) + len(dead) > max(_ROOM, _SHARE * len(base.segment.models)):
            kept = (base.segment.models.shaped(p) for p in base.places() if p not in dead)
            return HullIndex.build([*kept, *recent])
        return HullIndex._of(Part.without(base.segment, dead), Part(Segment.build(recent)) if recent else None)

    def candidates(self, name: ParsedName, extra: tuple[str, ...], folded: frozenset[str]) -> list[Surface]:
        """Return the surfaces worth weighing: known aliases, exact forms, alike with the same number, then others."""
        return [*self._aliased(folded), *Look(self.parts, self.texts, self._seen, name, extra).surfaces()]

    def _aliased(self, folded: frozenset[str]) -> Iterator[Surface]:
        for part in self.parts:
            for text in folded:
                yield from part.aliased(text)

    def _seen(self, wanted: Codes) -> Codes:
        """Return in how many different texts each letter group stands."""
        seen = np.sum([part.segment.grams.frequency(wanted) for part in self.parts], axis=0, dtype=np.int64)
        if self.twice:
            seen = seen - np.array([self.twice.get(code, 0) for code in wanted.tolist()], np.int64)
        return np.asarray(seen)
