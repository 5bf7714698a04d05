"""Lengths -> measures of a step moulded into the stern."""

from __future__ import annotations

from service.core.reading.rudders import Decision
from service.core.reading.view import View


def read_step(seen: View) -> Decision:
    """Return the step's measure that a length is; None where it is none."""
    if "DOWNWARD" in seen.whole:
        return None  # the slope below it
    if {"TRANSOM", "HEIGHT"} <= seen.near and "WATER" not in seen.near:
        return None  # how high the riser is above it
    if seen.near & {"DEPTH"}:
        return "transom.step_depth_mm", 1.0
    if seen.near & {"WIDTH"}:
        return "transom.step_width_mm", 1.0
    return ("transom.step_height_mm", 1.0) if seen.near & {"WATER", "HEIGHT"} else None
