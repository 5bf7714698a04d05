"""One check over rows, before it is put into words."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from service.core.catalogue import Rules

Array = NDArray[np.float64]


@dataclass(frozen=True)
class Entry:
    """A check over rows. `constant`: no placement changes it. `binds`: it can refuse; else it is advice or a trade."""

    id: str
    value: Array
    limit: Array
    margin: Array
    scale: float
    unit: str = "mm"
    rule: str = ""
    case: str = "at rest"
    binds: bool = True
    constant: bool = False

    @classmethod
    def least(
        cls, id_: str, value: Array, rules: Rules, rule: str, *, unit: str = "mm", case: str = "at rest"
    ) -> Entry:
        """Return a check that the value is at least the rule."""
        limit = rules[rule]
        return cls(id_, value, np.asarray(limit), value - limit, _scale(id_, rules), unit, rule, case)

    @classmethod
    def most(cls, id_: str, value: Array, rules: Rules, rule: str, *, unit: str = "mm", case: str = "at rest") -> Entry:
        """Return a check that the value is at most the rule."""
        limit = rules[rule]
        return cls(id_, value, np.asarray(limit), limit - value, _scale(id_, rules), unit, rule, case)


def _scale(id_: str, rules: Rules) -> float:
    return rules.scale.get(id_) or rules.scale_of(id_.split(".")[0])
