"""What the loads are given and what they return. Everything broadcasts: one boat, draws, a fleet.

Frame of the boat form: x aft, y starboard, z up from the waterline; mm, degrees, kg. Arrays have any shape (...); a
vector has a last axis of three. Case by case arrays carry the cases on a first axis.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import Literal, NamedTuple

import numpy as np

from service.core.loads.validity import Array, Finding, Num

Role = Literal["lower", "upper"]


@dataclass(frozen=True)
class TubeSize:
    """A round tube and its metal's name."""

    outside_mm: float
    wall_mm: float
    material: str


@dataclass(frozen=True)
class GearSize:
    """Blade, tube and masses of a gear and its shaft."""

    tube: TubeSize
    chord_mm: float
    span_mm: float
    balance_mm: float
    max_angle_deg: float
    thickness_share: float
    gear_kg: float
    shaft_kg: float


@dataclass(frozen=True)
class Spot:
    """Heights (...) of both collars, both shaft ends, the blade's top and the middle of the gear's mass."""

    lower_mm: Num
    upper_mm: Num
    shaft_bottom_mm: Num
    shaft_top_mm: Num
    blade_top_mm: Num
    mass_mm: Num


@dataclass(frozen=True)
class StrutSet:
    """Two struts from the collar's centre: `feet_mm` (..., 2, 3) from there to the feet; the bolts of one foot."""

    feet_mm: Array
    tube: TubeSize
    bolt: str
    bolts: int


@dataclass(frozen=True)
class Mount:
    """One bracket as placed.

    `arm_mm` (..., 3): from the flange's centre to the collar's. `axes` (..., 3, 3): rows normal (away from the skin),
    across and up of the flange. `pattern_mm` (n, 2): bolts (across, up). `planes`: shear planes of a bolt.
    """

    kind: Literal["hinged", "outrigger", "strutted", "cheek", "step"]
    arm_mm: Array
    axes: Array
    pattern_mm: Array
    bolt: str
    width_mm: float
    height_mm: float
    along_n: float
    side_n: float
    moment_nm: float
    mass_kg: float
    pad_mm: Num = 0.0
    struts: StrutSet | None = None

    @property
    def planes(self) -> int:
        """Return the shear planes of a bolt: two through a sternpost."""
        return 2 if self.kind == "cheek" else 1


@dataclass(frozen=True)
class Hull:
    """What the loads need of the boat; None where it is not known.

    `thickness_mm` is all of the skin and `core_mm` the core within; `filled`: the core is cut out round every bolt and
    filled, or sleeved. `post_mm`: width of the sternpost. `panel_mm`: radius of the unsupported panel, None for the
    rules' own.
    """

    lwl_mm: Num
    material: str | None = None
    thickness_mm: Num | None = None
    core_mm: Num | None = None
    filled: bool = True
    post_mm: Num | None = None
    panel_mm: Num | None = None


class Wet(NamedTuple):
    """The part of the blade under water: its span and the height of its middle (...), mm."""

    span_mm: Array
    middle_mm: Array


class Spans(NamedTuple):
    """Of the shaft (...), mm: spacing of the collars, overhang to the blade's wet middle, tube in the water."""

    spacing_mm: Array
    overhang_mm: Array
    in_water_mm: Array


@dataclass(frozen=True)
class Inputs:
    """A placed configuration on a boat."""

    gear: GearSize
    spot: Spot
    lower: Mount
    upper: Mount
    hull: Hull

    @cached_property
    def wet(self) -> Wet:
        """Return how much of the blade is under water at rest and the height of its middle (negative)."""
        bottom = np.asarray(self.spot.blade_top_mm, dtype=float) - self.gear.span_mm
        span = np.minimum(np.maximum(-bottom, 0.0), self.gear.span_mm)
        return Wet(np.asarray(span), np.asarray(bottom + span / 2))

    @cached_property
    def spans(self) -> Spans:
        """Return the lengths by which the shaft bends."""
        lower = np.asarray(self.spot.lower_mm, dtype=float)
        in_water = np.maximum(-np.asarray(self.spot.shaft_bottom_mm, dtype=float), 0.0)
        return Spans(
            np.asarray(self.spot.upper_mm - lower), np.asarray(lower - self.wet.middle_mm), np.asarray(in_water)
        )

    def mounts(self) -> tuple[tuple[Role, Mount], ...]:
        """Return both brackets with their roles."""
        return (("lower", self.lower), ("upper", self.upper))


class CaseLoad(NamedTuple):
    """What a case puts on the blade, one entry a case on the first axis; heights (...)."""

    names: tuple[str, ...]
    speed_ms: Array
    angle_deg: Array
    along_n: Array
    side_n: Array
    torque_nm: Array
    formulas: tuple[str, ...]
    sources: tuple[str, ...]


class Result(NamedTuple):
    """One check: arrays (...) but for words. margin >= 0 passes; `case` indexes `cases`, the one that governs.

    `scale` is the margin that counts as 1: a share of the limit that the rules state as scale `load`.
    `binds`: whether it may refuse. `at_least`: the value must not fall below its limit, instead of not above.
    """

    id: str
    title: str
    value: Array
    limit: Array
    margin: Array
    scale: Array
    unit: str
    case: Array
    cases: tuple[str, ...]
    formula: str
    source: str
    binds: bool = True

    @property
    def scaled(self) -> Array:
        """Return margin over scale (...)."""
        return np.asarray(self.margin / self.scale)

    def case_name(self, at: tuple[int, ...] = ()) -> str:
        """Return the governing case at a place of the batch."""
        return self.cases[int(self.case[at])]


@dataclass(frozen=True)
class Assessment:
    """All checks, the cases with their forces, what the reader must know, and the backing plates that would do.

    `backing_overlap_mm` by role: how far beyond the bolts' centres the backing plate must reach (...), never less than
    the rules' least; infinite where none does.
    """

    results: tuple[Result, ...]
    cases: CaseLoad
    findings: tuple[Finding, ...]
    backing_overlap_mm: dict[Role, Array]

    def result(self, id_: str) -> Result:
        """Return the check of that id; StopIteration where there is none."""
        return next(one for one in self.results if one.id == id_)
