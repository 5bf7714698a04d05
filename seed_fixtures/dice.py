"""Drawing lots, so that odds read as words."""

from __future__ import annotations

import numpy as np

Rng = np.random.Generator


def happens(rng: Rng, share: float) -> bool:
    """Return whether something that happens in `share` of all cases happens now."""
    return bool(rng.random() < share)
