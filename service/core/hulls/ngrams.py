"""A character-trigram index in arrays: which names share rare letter groups with a query.

Built by sliding over one byte buffer, so building is linear in the letters and holds no Python object a name.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Self

import numpy as np
from numpy.typing import NDArray

_N = 3
_BREAK = ord("\n")


def _grams(texts: Sequence[str]) -> tuple[NDArray[np.int64], NDArray[np.int64]]:
    """Return (document, trigram code) of every trigram; a text is padded by a space on both sides."""
    raw = np.frombuffer(("\n".join(f" {t} " for t in texts) + "\n").encode(), dtype=np.uint8).astype(np.int64)
    if raw.size < _N:
        return np.empty(0, np.int64), np.empty(0, np.int64)
    ends = raw == _BREAK
    document = np.cumsum(ends) - ends
    codes = raw[:-2] * 65536 + raw[1:-1] * 256 + raw[2:]
    whole = ~(ends[:-2] | ends[1:-1] | ends[2:])
    return document[:-2][whole], codes[whole]


@dataclass(frozen=True, eq=False)
class Trigrams:
    """Postings by trigram: `codes` ascending, documents of code k in `postings[starts[k]:starts[k + 1]]`."""

    size: int
    codes: NDArray[np.int64]
    starts: NDArray[np.int64]
    postings: NDArray[np.int32]
    rarity: NDArray[np.float64]
    length: NDArray[np.float64]

    @classmethod
    def build(cls, texts: Sequence[str]) -> Self:
        """Return the index of `texts`; the text's place in the sequence is its number."""
        document, code = _grams([t.replace("\n", " ") for t in texts])
        pair = np.unique(code * max(len(texts), 1) + document)
        code, document = np.divmod(pair, max(len(texts), 1))
        codes, starts = np.unique(code, return_index=True)
        counts = np.diff(np.append(starts, code.size))
        rarity = np.log1p(len(texts) / np.maximum(counts, 1))
        weight = np.repeat(rarity, counts)
        length = np.sqrt(np.bincount(document, weights=weight**2, minlength=len(texts)))
        return cls(
            len(texts), codes, np.append(starts, code.size), document.astype(np.int32), rarity, np.maximum(length, 1e-9)
        )

    def likeness(self, text: str) -> NDArray[np.float64]:
        """Return the TF-IDF cosine (less the query's own length) of `text` with every text of the index."""
        _, wanted = _grams([text.replace("\n", " ")])
        at = np.flatnonzero(np.isin(self.codes, wanted))
        if not at.size:
            return np.zeros(self.size)
        hits = np.concatenate([self.postings[self.starts[k] : self.starts[k + 1]] for k in at])
        weights = np.repeat(self.rarity[at] ** 2, self.starts[at + 1] - self.starts[at])
        found = np.bincount(hits, weights=weights, minlength=self.size).astype(np.float64)
        return found / self.length
