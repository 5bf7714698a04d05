"""A segment of the index less the models that have left it since it was built."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Self

import numpy as np
from numpy.typing import NDArray

from service.core.hulls.segment import Places, Segment
from service.core.hulls.surface import Surface


@dataclass(frozen=True, eq=False)
class Part:
    """A segment, and which of its models, pairs and texts are still there (None: all)."""

    segment: Segment
    model_lives: NDArray[np.bool_] | None = None
    pair_lives: NDArray[np.bool_] | None = None
    text_lives: NDArray[np.bool_] | None = None

    @classmethod
    def without(cls, segment: Segment, gone: Iterable[int]) -> Self:
        """Return the part without the models at these places."""
        model_lives = np.ones(len(segment.models), bool)
        model_lives[list(gone)] = False
        if model_lives.all():
            return cls(segment)
        # reduceat needs at least one surface; without a model nothing can be gone
        pair_lives = np.logical_or.reduceat(model_lives[segment.model], segment.starts[:-1])
        text_lives = np.zeros(len(segment.texts), bool)
        text_lives[segment.text[pair_lives]] = True
        return cls(segment, model_lives, pair_lives, text_lives)

    def alive(self, place: int) -> bool:
        """Say whether the model at this place is still there."""
        return self.model_lives is None or bool(self.model_lives[place])

    def living(self, pairs: Places) -> Places:
        """Return those of the pairs that still hold a model."""
        return pairs if self.pair_lives is None else pairs[self.pair_lives[pairs]]

    def surfaces(self, pair: int) -> Iterator[Surface]:
        """Return what is written as this pair."""
        segment = self.segment
        for place in range(int(segment.starts[pair]), int(segment.starts[pair + 1])):
            if self.alive(int(segment.model[place])):
                yield segment.surface(place, pair)

    def aliased(self, text: str) -> Iterator[Surface]:
        """Return what has this folded alias."""
        segment = self.segment
        for place in segment.aliases.get(text).tolist():
            if self.alive(int(segment.model[place])):
                yield segment.surface(place, int(np.searchsorted(segment.starts, place, "right")) - 1)

    def places(self) -> Iterator[int]:
        """Return where the models stand that are still there."""
        return (place for place in range(len(self.segment.models)) if self.alive(place))
