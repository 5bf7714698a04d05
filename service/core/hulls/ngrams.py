"""A character-trigram index in arrays: which texts share rare letter groups with a query.

Built by sliding over one byte buffer, so building is linear in the letters and holds no Python object a text. How rare
a letter group is comes with the question, not from the index: several indexes can so be asked as if they were one.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Self

import numpy as np
from numpy.typing import NDArray

_N = 3
_BREAK = ord("\n")
Codes = NDArray[np.int64]


def grams(texts: Sequence[str]) -> tuple[Codes, Codes]:
    """Return (text's place, trigram code) of every trigram; a text is padded by a space on both sides."""
    joined = "\n".join(f" {t} " for t in (text.replace("\n", " ") for text in texts)) + "\n"
    raw = np.frombuffer(joined.encode(errors="replace"), dtype=np.uint8).astype(np.int64)
    if raw.size < _N:
        return np.empty(0, np.int64), np.empty(0, np.int64)
    ends = raw == _BREAK
    document = np.cumsum(ends) - ends
    codes = raw[:-2] * 65536 + raw[1:-1] * 256 + raw[2:]
    whole = ~(ends[:-2] | ends[1:-1] | ends[2:])
    return document[:-2][whole], codes[whole]


@dataclass(frozen=True, eq=False)
class Trigrams:
    """Postings by trigram: `codes` ascending, texts with code k in `postings[starts[k]:starts[k + 1]]`."""

    size: int
    codes: Codes
    starts: Codes
    postings: NDArray[np.int32]
    length: NDArray[np.float32]  # square root of the number of different trigrams

    @classmethod
    def build(cls, texts: Sequence[str]) -> Self:
        """Return the index of `texts`; the text's place in the sequence is its number."""
        size = max(len(texts), 1)
        document, code = grams(texts)
        pair = np.unique(code * size + document)
        code, document = np.divmod(pair, size)
        codes, starts = np.unique(code, return_index=True)
        count = np.bincount(document, minlength=len(texts))
        length = np.sqrt(np.maximum(count, 1)).astype(np.float32)
        return cls(len(texts), codes, np.append(starts, code.size), document.astype(np.int32), length)

    def _places(self, wanted: Codes) -> Codes:
        """Return where each wanted code stands, -1 for one that no text has."""
        if not self.codes.size:
            return np.full(wanted.size, -1)
        at = np.minimum(np.searchsorted(self.codes, wanted), self.codes.size - 1)
        return np.where(self.codes[at] == wanted, at, -1)

    def frequency(self, wanted: Codes) -> Codes:
        """Return how many texts have each of the wanted codes."""
        at = self._places(wanted)
        if not self.codes.size:
            return np.zeros(wanted.size, np.int64)
        return np.where(at >= 0, self.starts[at + 1] - self.starts[at], 0)

    def likeness(self, wanted: Codes, rarity: NDArray[np.float64]) -> NDArray[np.float64]:
        """Return for every text the rarity of what it shares with `wanted`, over the square root of its own size."""
        at = self._places(wanted)
        there = np.flatnonzero(at >= 0)
        if not there.size:
            return np.zeros(self.size)
        at = at[there]
        counts = self.starts[at + 1] - self.starts[at]
        hits = np.concatenate([self.postings[self.starts[k] : self.starts[k + 1]] for k in at])
        found = np.bincount(hits, weights=np.repeat(rarity[there], counts), minlength=self.size)
        return np.asarray(found / self.length)
