"""Small helpers on words that several rooms need."""

from __future__ import annotations

from collections.abc import Iterable

from rapidfuzz import fuzz, process, utils

NEAR_ENOUGH = 60.0


def nearest(word: str, known: Iterable[str]) -> str | None:
    """Return the known word closest to `word`, or None where nothing is near.

    >>> nearest("top_heigth_mm", ["rake_deg", "top_height_mm"])
    'top_height_mm'
    >>> nearest("zzz", ["rake_deg"]) is None
    True
    """
    found = process.extractOne(
        word, list(known), scorer=fuzz.ratio, processor=utils.default_process, score_cutoff=NEAR_ENOUGH
    )
    return found[0] if found else None
