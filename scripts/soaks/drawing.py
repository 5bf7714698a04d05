"""Words on drawings of random boats with a gear near the stern: none over another, none cut off, by the layout and on paper."""

from __future__ import annotations

import time
from collections.abc import Sequence
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass

import numpy as np

from service.core.drawing import View
from service.core.drawing.lay import fitted
from tests.support.drawn import random_case
from tests.support.words import cut_off, meeting, printed, printed_over

ROOM = 190.0, 270.0
THINGS = 8
"""A boat has up to so many obstacles."""


@dataclass(frozen=True)
class Found:
    """One boat: how many checks fail on it, words set, and what is wrong with them; time to lay out all views (s)."""

    seed: int
    stern: str
    marked: int
    words: int
    flaws: tuple[str, ...]
    took: float


def look(seed: int) -> Found:
    """Draw a gear near the stern of a random boat, in inches too for every third."""
    case = random_case(seed, things=THINGS)
    shown = case.views(inches=seed % 3 == 0)
    started = time.process_time()
    laid = [fitted(view, *ROOM) for view in shown]
    took = time.process_time() - started
    flaws = [f"{one.view.key}: {flaw}" for one in laid for flaw in (*meeting(one), *cut_off(one))]
    flaws += [f"{view.key} on paper: {len(over)} lines" for view, over in _paper(shown) if over]
    words = sum(len(one.texts) + len(one.measures) for one in laid)
    marked = sum(note.urgent for note in shown[0].notes)
    return Found(seed, str(case.form.boat.stern), marked, words, tuple(flaws), took)


def _paper(shown: Sequence[View]) -> list[tuple[View, list[object]]]:
    return [(view, list(printed_over(printed(view, *ROOM)))) for view in shown]


def run(seeds: Sequence[int]) -> bool:
    """Draw all boats; print what was found; say whether no word covers another and none is cut off."""
    print(f"seeds {seeds[0]}..{seeds[-1]}; five views each, on {ROOM[0]:g} x {ROOM[1]:g} mm")
    look(seeds[0])  # compiled first
    with ProcessPoolExecutor(2) as pool:
        found = list(pool.map(look, seeds, chunksize=5))
    sterns, marked = len({f.stern for f in found}), sum(f.marked > 0 for f in found)
    print(f"{len(found)} boats of {sterns} sterns, {marked} where something is marked that does not pass")
    words, flaws = sum(f.words for f in found), sum(len(f.flaws) for f in found)
    print(f"{words} lines of words and figures; {flaws} stand on another or are cut off")
    took = np.array([f.took for f in found])
    print(
        f"laid out in {1000 * np.median(took):.0f} ms median, {1000 * took.max():.0f} ms most (processor, five views)"
    )
    for f in found:
        for flaw in f.flaws:
            print(f"  boat {f.seed}, {f.stern}: {flaw}")
    return not any(f.flaws for f in found)
