"""How often telling one thing more changes what is put forward: the order in which a reading asks.

Printed by `python -m scripts.settling`: 60 boats of the demo fleet that say much, each left out of the fleet in turn, its
letter naming the hull model alone; the share of boats on which another configuration came first once the thing was told (of
so many boats whose records say it), and for the model once it was not. A few boats more or less are chance: the order is
what is used, not the shares. A thickness moves no bracket, but no bolt's length can be given without it.
"""

from __future__ import annotations

SETTLES: dict[str, float] = {
    "boat.model": 1.000,  # of 60
    "obstacles": 0.189,  # of 53
    "transom.step_height_mm": 0.167,  # of 6
    "transom.step_depth_mm": 0.143,  # of 7
    "transom.top_height_mm": 0.117,  # of 60
    "transom.bottom_height_mm": 0.100,  # of 60
    "transom.rake_deg": 0.067,  # of 60
    "boat.displacement_kg": 0.067,  # of 60
    "main_rudder.hung": 0.050,  # of 60
    "main_rudder.trailing_edge_aft_mm": 0.050,  # of 60
    "transom.thickness_mm": 0.000,  # of 28
    "boat.stern": 0.000,  # of 50
}
