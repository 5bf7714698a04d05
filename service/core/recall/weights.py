"""How much each feature of a boat tells about what was installed, and how likeness turns into votes.

Built in are weights set by hand; `learn` finds better ones from a fleet. Nothing else in this package holds such a
number.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Annotated, Literal, Self

from pydantic import Field, field_validator

from service.core.boat import Shape
from service.core.recall.features import FEATURES
from service.core.record import Status
from service.core.words import nearest

Share = Annotated[float, Field(ge=0, le=1)]
Positive = Annotated[float, Field(gt=0)]
AtLeastNothing = Annotated[float, Field(ge=0)]
Part = Literal["whole", "brackets", "shaft"]
PARTS: tuple[Part, ...] = ("whole", "brackets", "shaft")

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
# What bears on where brackets sit, and what on the gear's size and the shaft's length.
_FOR_BRACKETS = _FEATURES | {"transom.rake_deg": 4.0, "boat.stern": 4.0, "obstacles": 1.5}
_FOR_SHAFT = _FEATURES | {"transom.top_height_mm": 5.0, "boat.displacement_kg": 3.0, "transom.rake_deg": 1.0}


class Kernel(Shape):
    """How boats vote for one part of a configuration: exp(-(d / bandwidth)^2), times `sister` for a sister ship.

    `features` weigh the distance d; `prior` is what the overall frequency weighs beside the votes, in votes.
    """

    features: Mapping[str, AtLeastNothing]
    bandwidth: Positive
    sister: Positive
    prior: Positive

    @field_validator("features")
    @classmethod
    def _known(cls, features: Mapping[str, float]) -> Mapping[str, float]:
        known = [feature.path for feature in FEATURES]
        for path in features:
            if path not in known:
                near = nearest(path, known)
                hint = f"did you mean {near!r}?" if near else f"known: {', '.join(known)}"
                raise ValueError(f"no feature {path!r} to weigh; {hint}")
        return features

    def weighing(self, features: Mapping[str, float]) -> Self:
        """Return this kernel with other weights. ValueError names a feature that is none."""
        return type(self)(features=features, bandwidth=self.bandwidth, sister=self.sister, prior=self.prior)


class Weights(Shape):
    """Everything that turns a fleet into likeness and votes.

    `whole` weighs likeness as it is shown and votes for whole configurations; `brackets` votes for the pair of
    brackets, `shaft` for the gear with its shaft. `shrink` (L) draws sparse records towards the median distance;
    `least_shared` is the weight a record must share with the question to be compared at all (half the question's own
    weight where that is less). `whole_share` is how much of a probability comes from whole configurations, the rest
    from parts; `sharpness` is the power it is raised to where sister ships speak, `sharpness_alone` where none does.
    """

    version: str = "built-in"
    whole: Kernel = Kernel(features=_FEATURES, bandwidth=0.12, sister=3.0, prior=0.5)
    brackets: Kernel = Kernel(features=_FOR_BRACKETS, bandwidth=0.12, sister=3.0, prior=0.5)
    shaft: Kernel = Kernel(features=_FOR_SHAFT, bandwidth=0.12, sister=3.0, prior=0.5)
    shrink: AtLeastNothing = 2.0
    least_shared: AtLeastNothing = 3.0
    voters: Annotated[int, Field(ge=1)] = 2000
    whole_share: Share = 0.5
    sharpness: Positive = 1.0
    sharpness_alone: Positive = 1.0
    status: Mapping[Status, AtLeastNothing] = {"installed": 1.0, "shipped": 0.8, "proposed": 0.4, "withdrawn": 0.0}
    withdrawn: AtLeastNothing = 0.3  # speaks against the configuration, in votes
    failed: AtLeastNothing = 0.6
    refuted: Share = 0.3  # what is left of a chance where the fit refutes it: measurements err, and so does a fit
    doubt: Positive = 1.0  # votes never cast: one failure alone does not rule a configuration out

    def part(self, name: Part) -> Kernel:
        """Return the kernel of a part."""
        found: Kernel = getattr(self, name)
        return found

    def weighing(self, features: Mapping[str, float]) -> Self:
        """Return these weights with one set of feature weights for likeness and every part."""
        return self.with_kernels({name: self.part(name).weighing(features) for name in PARTS})

    def with_kernels(self, kernels: Mapping[Part, Kernel]) -> Self:
        """Return these weights with other kernels."""
        return self.model_copy(update={str(part): kernel for part, kernel in kernels.items()})


WEIGHTS = Weights()
