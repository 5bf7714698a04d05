"""What an evaluation says: shares with their intervals, bins of a reliability plot, scores of methods side by side."""

from __future__ import annotations

from typing import Literal

from pydantic import Field

from service.core.boat import Shape


class Estimate(Shape):
    """A figure with the interval that holds it with 95 % confidence."""

    value: float
    low: float
    high: float


class Bin(Shape):
    """Predictions of about one probability: what was said on average, how often it came true, and how many there are."""

    low: float
    high: float
    count: int
    said: float
    came_true: Estimate


class Score(Shape):
    """One method over what was held out.

    `listed` is how often what was installed had a chance at all; `log_loss` is in nats, with the least chance that
    counts stated in the evaluation; `calibration_error` is over ten bins of equal width, `calibration_error_mass` over
    bins of equal numbers; `said` is the mean probability of what was put first.
    """

    method: str
    count: int
    top1: Estimate
    top3: Estimate
    log_loss: Estimate
    listed: float
    said: float
    calibration_error: Estimate
    calibration_error_mass: Estimate


class Holdout(Shape):
    """One way of holding out, with every method's score; `bins` are those of the first method."""

    by: Literal["time", "hull"]
    what: str
    votes: Literal["alone", "with verdicts"]
    trained: int
    scores: tuple[Score, ...]
    bins: tuple[Bin, ...]
    bins_mass: tuple[Bin, ...]
    versions: tuple[str, ...] = ()


class Configurations(Shape):
    """How well the configurations that were installed are foretold."""

    least_chance: float
    holdouts: tuple[Holdout, ...]
    cautions: tuple[str, ...] = ()


class Evaluation(Shape):
    """The service scored against what it was not shown. `names` stands there where names were asked for."""

    schema_: Literal["evaluation/1"] = Field("evaluation/1", alias="schema")
    configurations: Configurations | None = None
    names: dict[str, object] | None = None
