"""Unlike metals in sea water. Volts against silver chloride."""

from __future__ import annotations

from service.core.loads.validity import Valid, formula

TABLE = (
    "galvanic series in flowing sea water, Professional BoatBuilder no. 100, read as reposted; passive 316 from memory"
)
POTENTIALS: dict[str, tuple[float, float]] = {
    "zinc": (-1.03, -0.98),
    "aluminium": (-1.00, -0.76),
    "steel": (-0.71, -0.60),
    "304 active": (-0.58, -0.46),
    "316 active": (-0.54, -0.43),
    "aluminium bronze": (-0.42, -0.31),
    "silicon bronze": (-0.29, -0.26),
    "316 passive": (-0.10, 0.00),
}
"""Least and greatest potential."""


@formula(TABLE)
def widest_gap(one: str, other: str) -> float:
    """Return the greatest difference in V between two metals of the series, 0 where one is none (plastic, wood).

    >>> widest_gap("aluminium", "316 passive"), widest_gap("frp_solid", "316 passive")
    (1.0, 0.0)
    """
    if one not in POTENTIALS or other not in POTENTIALS or one == other:
        return 0.0
    (a, b), (c, d) = POTENTIALS[one], POTENTIALS[other]
    return round(max(b - c, d - a), 3)


SERIES = Valid(0, 0.2, "V")
"""Beyond 0.2 V the baser metal corrodes (read in a published chart)."""
