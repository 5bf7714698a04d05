"""Who works answers out: this process, or a copy of it that loads the engine while this one reads what came in."""

from __future__ import annotations

from contextlib import suppress
from dataclasses import dataclass
from typing import cast

from service.core.answer import Answer
from service.core.boat import BoatForm
from service.core.hulls import HullDecision
from service.core.reading import Doubt
from service.flow.beside import Copy, CopyEndedError
from service.flow.draw import Drawing, drawing_of
from service.store.unit import UnitOfWork


@dataclass(frozen=True)
class Question:
    """One boat to be answered: her form, which hull model she is, what reading left open, what the draws start from."""

    form: BoatForm
    hull: HullDecision | None
    doubts: tuple[Doubt, ...]
    seed: int


class Reckoner:
    """Works an answer out, and what there is to draw of it, with what a unit of work sees.

    `aside` is a copy of this process with a reckoner of its own, which then does it; this one where the copy has ended.
    """

    def __init__(self, uow: UnitOfWork, aside: Copy | None = None) -> None:
        self._uow, self._aside = uow, aside

    def ready(self) -> Reckoner:
        """Return this one once all that it works with is loaded."""
        import service.core.answer.compose  # noqa: PLC0415 - it loads the engine
        import service.core.drawing.template  # noqa: PLC0415 - the same
        import service.core.drawing.views  # noqa: F401, PLC0415 - the same
        from service.flow.known import gather  # noqa: PLC0415 - the same

        gather(self._uow)
        return self

    def compose(self, asked: Question) -> Answer:
        """Return the answer, before it is kept. NoCatalogueError where no catalogue is loaded."""
        if self._aside is not None:
            with suppress(CopyEndedError):
                return cast("Answer", self._aside.do("compose", asked))
        from service.core.answer.compose import compose  # noqa: PLC0415 - it loads the engine
        from service.flow.known import gather  # noqa: PLC0415 - the same

        return compose(asked.form, asked.hull, gather(self._uow), doubts=asked.doubts, seed=asked.seed)

    def draw(self, answer: Answer) -> Drawing | None:
        """Return what there is to draw, None where there is nothing."""
        if self._aside is not None:
            with suppress(CopyEndedError):
                return cast("Drawing | None", self._aside.do("draw", answer))
        return drawing_of(self._uow, answer)
