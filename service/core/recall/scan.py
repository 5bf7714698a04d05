"""The pass over the whole fleet: the distance of every boat from one, in compiled code.

Everything compiled stands in this one file, because numba notices a change of the file that holds a function and not
of a file that holds what it calls. What is unknown is not a number, which alone differs from itself.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from service.core.compiled import compiled

Floats = NDArray[np.float64]
NUMBER, CLASS, STERNS_APART, KINDS = 0, 1, 2, 3
"""How two values are compared: by |a - b|, by being the same, by a table of sterns, by the share of kinds in common."""
BLOCK = 2048
"""Boats at a time, so that what is added up stays in the processor's nearest cache."""
BINS = 4096
"""Into so many equal parts the distances 0..1 are counted, so that the nearest few are found without sorting."""


@compiled
def _bits(word: np.uint32) -> np.uint32:
    """Count the bits that are set (H. S. Warren, Hacker's Delight, 2nd ed., figure 5-2)."""
    word -= (word >> np.uint32(1)) & np.uint32(0x55555555)
    word = (word & np.uint32(0x33333333)) + ((word >> np.uint32(2)) & np.uint32(0x33333333))
    word = (word + (word >> np.uint32(4))) & np.uint32(0x0F0F0F0F)
    return np.uint32(word * np.uint32(0x01010101)) >> np.uint32(24)


@compiled
def _add_number(theirs: NDArray[np.float32], ours: np.float32, weight: float, far: Floats, shared: Floats) -> None:
    here = np.float64(ours)
    for n in range(theirs.size):
        apart = min(abs(np.float64(theirs[n]) - here), 1.0)
        known = theirs[n] == theirs[n]
        far[n] += weight * apart if known else 0.0
        shared[n] += weight if known else 0.0


@compiled
def _add_class(theirs: NDArray[np.float32], ours: np.float32, weight: float, far: Floats, shared: Floats) -> None:
    for n in range(theirs.size):
        known = theirs[n] == theirs[n]
        far[n] += weight if known and theirs[n] != ours else 0.0
        shared[n] += weight if known else 0.0


@compiled
def _add_stern(theirs: NDArray[np.float32], apart: Floats, weight: float, far: Floats, shared: Floats) -> None:
    for stern in range(apart.size):
        more, which = weight * apart[stern], np.float32(stern)
        for n in range(theirs.size):
            same = theirs[n] == which
            far[n] += more if same else 0.0
            shared[n] += weight if same else 0.0


@compiled
def _add_kinds(
    said: NDArray[np.float32],
    theirs: NDArray[np.uint32],
    ours: np.uint32,
    weight: float,
    far: Floats,
    shared: Floats,
) -> None:
    for n in range(theirs.size):
        either = _bits(theirs[n] | ours)
        both = _bits(theirs[n] & ours)
        known = said[n] == said[n]
        far[n] += weight * (either - both) / max(either, np.uint32(1)) if known else 0.0
        shared[n] += weight if known else 0.0


@compiled
def _add(
    theirs: NDArray[np.float32],
    kinds: NDArray[np.uint32],
    ours: np.float32,
    our_kinds: np.uint32,
    sort: int,
    sterns: Floats,
    weight: float,
    far: Floats,
    shared: Floats,
) -> None:
    if sort == NUMBER:
        _add_number(theirs, ours, weight, far, shared)
    elif sort == CLASS:
        _add_class(theirs, ours, weight, far, shared)
    elif sort == STERNS_APART:
        _add_stern(theirs, sterns, weight, far, shared)
    else:
        _add_kinds(theirs, kinds, our_kinds, weight, far, shared)


@compiled
def _distances(pull: Floats, shared: Floats, shrink: float, middle: float, far: Floats) -> None:
    for n in range(pull.size):
        whole = shared[n] + shrink
        far[n] = (pull[n] + shrink * middle) / whole if whole > 0.0 else 0.0


@compiled
def _able(
    shared: Floats,
    sterns: NDArray[np.float32],
    mixes: NDArray[np.bool_],
    least: float,
    hulls: NDArray[np.int64],
    hull: int,
    comparable: NDArray[np.bool_],
    sister: NDArray[np.bool_],
) -> None:
    for n in range(shared.size):
        sister[n] = hulls[n] == hull
        comparable[n] = sister[n] | ((shared[n] >= least) & (shared[n] > 0.0))
    for stern in range(mixes.size):
        if not mixes[stern]:
            which = np.float32(stern)
            for n in range(shared.size):
                comparable[n] &= sterns[n] != which
                sister[n] &= sterns[n] != which


@compiled
def _count(far: Floats, comparable: NDArray[np.bool_], bins: NDArray[np.int64]) -> None:
    for n in range(far.size):
        bins[min(int(far[n] * BINS), BINS - 1)] += comparable[n]


@compiled
def scan(
    values: NDArray[np.float32],
    kinds: NDArray[np.uint32],
    ours: NDArray[np.float32],
    our_kinds: np.uint32,
    sorts: NDArray[np.int64],
    weights: Floats,
    sterns: Floats,
    mixes: NDArray[np.bool_],
    stern_place: int,
    shrink: float,
    middle: float,
    hulls: NDArray[np.int64],
    hull: int,
    least: float,
    far: Floats,
    comparable: NDArray[np.bool_],
    sister: NDArray[np.bool_],
    bins: NDArray[np.int64],
) -> None:
    """Write what one boat sees of the fleet into `far`, `comparable`, `sister` and `bins`.

    `values` has features down and boats across, not a number where unknown; `sterns` and `mixes` are the rows of the
    tables of sterns that belong to the one boat. Where nothing is shared and nothing shrinks, the distance is 0.
    `bins` counts the boats that can be compared by their distance.
    """
    pull, shared = np.empty(BLOCK), np.empty(BLOCK)
    for start in range(0, kinds.size, BLOCK):
        size = min(BLOCK, kinds.size - start)
        pull[:] = 0.0
        shared[:] = 0.0
        for k in range(sorts.size):
            if weights[k] > 0.0 and ours[k] == ours[k]:
                block = values[k, start : start + size]
                _add(
                    block, kinds[start : start + size], ours[k], our_kinds, sorts[k], sterns, weights[k],
                    pull[:size], shared[:size],
                )  # fmt: skip
        end = start + size
        _distances(pull[:size], shared[:size], shrink, middle, far[start:end])
        _able(
            shared[:size],
            values[stern_place, start:end],
            mixes,
            least,
            hulls[start:end],
            hull,
            comparable[start:end],
            sister[start:end],
        )
        _count(far[start:end], comparable[start:end], bins)
