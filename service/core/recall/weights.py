"""How much each feature of a boat tells about what was installed, and how likeness turns into votes.

These stand for the weights to be learned from installations: whoever has learned better ones builds the fleet with
another `Weights`. Nothing else in this package holds such a number.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from types import MappingProxyType

# Set by hand from what bears on a bracket's reach, seat and the shaft's length; common practice, no source.
_FEATURES = {
    "boat.year": 0.3,
    "boat.loa_mm": 1.0,
    "boat.lwl_mm": 0.4,
    "boat.beam_mm": 0.6,
    "boat.displacement_kg": 1.0,
    "transom.top_height_mm": 2.0,
    "transom.bottom_height_mm": 1.0,
    "transom.rake_deg": 2.0,
    "transom.width_top_mm": 0.6,
    "transom.width_waterline_mm": 0.3,
    "transom.camber_mm": 0.4,
    "transom.thickness_mm": 0.2,
    "transom.step_height_mm": 1.0,
    "transom.step_depth_mm": 1.0,
    "transom.post_width_mm": 0.5,
    "main_rudder.trailing_edge_aft_mm": 1.5,
    "main_rudder.stock_aft_mm": 0.5,
    "boat.stern": 2.0,
    "main_rudder.hung": 1.0,
    "boat.hull_material": 0.3,
    "obstacles": 0.7,
}


@dataclass(frozen=True)
class Weights:
    """Feature weights and the constants of likeness and voting.

    `shrink` (L) draws sparse records towards the median distance; `least_shared` is the weight a record must share
    with the question to be compared at all (half the question's own weight where that is less). A vote weighs
    exp(-(d / bandwidth)^2) times `sister` for a sister ship times the status's weight; `prior` is what the overall
    frequency of configurations weighs beside the votes, in votes.
    """

    features: Mapping[str, float] = field(default_factory=lambda: MappingProxyType(_FEATURES))
    shrink: float = 2.0
    least_shared: float = 3.0
    bandwidth: float = 0.12
    sister: float = 3.0
    voters: int = 60
    prior: float = 0.05
    status: Mapping[str, float] = field(
        default_factory=lambda: MappingProxyType({"installed": 1.0, "shipped": 0.8, "proposed": 0.4, "withdrawn": 0.0})
    )
    withdrawn: float = 0.6  # speaks against the configuration, in votes
    not_as_proposed: float = 0.6
    doubt: float = 1.0  # votes for a configuration that were never cast: one failure alone does not rule it out


WEIGHTS = Weights()
