"""Boats, catalogues and spots that many tests need: plain values, every one invented."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np

from service.core.boat import BoatForm
from service.core.catalogue import Catalogue, Configuration
from service.core.fit import Fit
from service.core.fit.boats import Boats, prepare
from service.core.fit.describe import Placed, describe
from service.core.fit.kit import build
from service.core.form import parse_form
from service.files.read.catalogue_file import read_catalogue

HERE = Path(__file__).resolve().parent
FIXTURES = HERE.parents[1] / "seed_fixtures"


@cache
def bench() -> Catalogue:
    """Return the catalogue in round numbers, without priors."""
    return read_catalogue((HERE / "bench.toml").read_bytes(), "bench.toml")


@cache
def demo() -> Catalogue:
    """Return the demo maker's catalogue."""
    return read_catalogue((FIXTURES / "catalogue.toml").read_bytes(), "catalogue.toml")


def ruled(catalogue: Catalogue, **values: float) -> Catalogue:
    """Return the catalogue with other values of some rules."""
    rule = {
        name: one.model_copy(update={"value": values[name]}) if name in values else one
        for name, one in catalogue.rules.rule.items()
    }
    assert set(values) <= set(rule)
    return catalogue.model_copy(update={"rules": catalogue.rules.model_copy(update={"rule": rule})})


PLUMB: dict[str, Any] = {
    "boat": {"stern": "plumb", "loa_mm": 10_000, "lwl_mm": 9000, "displacement_kg": 5000},
    "transom": {
        "top_height_mm": 1000, "bottom_height_mm": 0, "rake_deg": 0, "width_top_mm": 2000, "width_waterline_mm": 1600,
        "camber_mm": 0, "thickness_mm": 12,
    },
    "main_rudder": {
        "hung": "inboard", "stock_aft_mm": -900, "leading_edge_aft_mm": -1000, "trailing_edge_aft_mm": -500,
        "top_height_mm": -200, "bottom_height_mm": -1500, "max_deflection_deg": 35,
    },
    "methods": {"*": "laser"},
}  # fmt: skip
"""A flat, upright transom 1 m high and 2 m wide at the top, everything measured."""


def joined(base: Mapping[str, Any], changes: Mapping[str, Any]) -> dict[str, Any]:
    """Return the document with parts changed, level by level; a value of None takes a key away."""
    out = dict(base)
    for key, value in changes.items():
        if isinstance(value, Mapping) and isinstance(out.get(key), Mapping):
            out[key] = joined(out[key], value)
        elif value is None:
            out.pop(key, None)
        else:
            out[key] = value
    return out


def boat(*, base: Mapping[str, Any] = PLUMB, **changes: Any) -> BoatForm:  # noqa: ANN401 - JSON is any
    """Return the plumb boat (or another) with parts changed: `boat(transom={"rake_deg": 20})`."""
    return parse_form(joined(base, changes))


def metal(lower: str = "hinge", upper: str = "hinge", shaft: str = "shaft-1300", gear: str = "gear") -> Configuration:
    """Return a configuration of the bench catalogue."""
    return Configuration(gear=gear, lower=lower, upper=upper, shaft=shaft)


def ready(form: BoatForm, catalogue: Catalogue | None = None, draws: int = 1) -> Boats:
    """Return the boat ready for fitting."""
    return prepare(form, catalogue or bench(), draws=draws)


def at(
    form: BoatForm,
    configuration: Configuration,
    *,
    y: float = 0.0,
    x: float = 150.0,
    lower: float = 300.0,
    upper: float = 800.0,
    bottom: float = 0.0,
    catalogue: Catalogue | None = None,
) -> Fit:
    """Return every check of a configuration at a chosen spot, on the nominal boat."""
    boats = ready(form, catalogue)
    kit = build(boats.catalogue, [configuration])
    spot = np.array([y, x, lower, upper, bottom])
    return describe(form, boats.catalogue, configuration, boats.unknown, Placed(boats.nominal, kit, spot))


def margin(fit: Fit, id_: str) -> float:
    """Return the margin of a check that was made."""
    found = fit.check(id_).margin
    assert found is not None
    return found


def value(fit: Fit, id_: str) -> float:
    """Return the value of a check that was made."""
    found = fit.check(id_).value
    assert found is not None
    return found


def ids(fit: Fit) -> set[str]:
    """Return the ids of the checks that were made."""
    return {check.id for check in fit.checks}
