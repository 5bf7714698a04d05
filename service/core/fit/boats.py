"""One boat made ready for fitting: nominal, one factor off at a time, and as draws of everything that is not known exactly."""

from __future__ import annotations

import math
from collections.abc import Callable, Collection, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from service.core.boat import BoatForm
from service.core.catalogue import Catalogue
from service.core.fit import assemble, factors
from service.core.fit.place import LIES, Lie
from service.core.fit.shapes import Filled
from service.core.fit.site import Site
from service.core.fit.strength import Skin, skin_of
from service.core.recall import Fill

Array = NDArray[np.float64]
Hung = Literal["inboard", "transom"]
DRAWS = 1000
HUNG, MATERIAL = "main_rudder.hung", "boat.hull_material"


@dataclass(frozen=True)
class Boats:
    """One boat as nominal, as star points one standard deviation off in each factor, and as draws of all of them."""

    form: BoatForm
    catalogue: Catalogue
    factors: tuple[factors.Factor, ...]
    unknown: tuple[str, ...]
    filled: tuple[Filled, ...]
    nominal: Site
    drawn: Mapping[str, Array]
    """Values of every factor on each draw, and below at each star point."""
    starred: Mapping[str, Array]
    site_of: Callable[[Mapping[str, Array]], Site]
    skins: tuple[Skin, Skin]
    """What the loads need besides: nominal, and draws."""
    given: Mapping[str, Fill]
    loa_mm: float | None
    seed: int

    @cached_property
    def star(self) -> Site:
        """Return two rows a factor, one standard deviation off: made when somebody asks how sure a fit is."""
        return self.site_of(self.starred)

    @cached_property
    def draws(self) -> Site:
        """Return a row a draw."""
        return self.site_of(self.drawn)


def prepare(
    form: BoatForm,
    catalogue: Catalogue,
    given: Mapping[str, Fill] | None = None,
    *,
    loa_mm: float | None = None,
    seed: int = 1,
    draws: int = DRAWS,
) -> Boats:
    """Return the boat ready for fitting. `given`: values of sister ships or neighbours for fields nobody stated.

    What has neither a value nor a prior is named in `unknown`; checks that need it come out as unknown.
    """
    given = dict(given or {})
    stern, stern_filled = _category(form.boat.stern, given.get("boat.stern"), "boat.stern")
    hung, hung_filled = _category(form.main_rudder.hung, given.get(HUNG), HUNG)
    own: Hung | None = "transom" if hung == "transom" else "inboard" if hung == "inboard" else None
    material, hull_filled = _category(form.boat.hull_material, given.get(MATERIAL), MATERIAL)
    loa = form.boat.loa_mm or loa_mm
    found, unknown = factors.build(form, catalogue, given, stern=stern, hung=own, loa_mm=loa)
    shifts, placeless = assemble.obstacle_factors(form, catalogue)
    every = [*found, *factors.curve_factors(form, catalogue), *shifts]
    rng = np.random.default_rng(seed)
    nominal = {f.field: np.array([f.nominal]) for f in every}
    drawn = {f.field: f.draw(rng, draws) for f in every}
    star = _star(every)
    if own is not None and form.main_rudder.hung is None:
        other: Hung = "inboard" if own == "transom" else "transom"
        turned, _ = factors.build(form, catalogue, given, stern=stern, hung=other, loa_mm=loa)
        doubtful = hung_filled[0].spread or 0.0
        every.append(_hang(own, doubtful, every, turned, (nominal, drawn, star), rng))

    def site(values: Mapping[str, Array]) -> Site:
        return assemble.assemble(form, catalogue, values, stern=stern, hung=own)

    missing = [*unknown, *placeless, *([HUNG] if own is None else [])]
    return Boats(
        form, catalogue, tuple(every), tuple(missing), (*stern_filled, *hung_filled, *hull_filled, *_filled(every)),
        site(nominal), drawn, star, site,
        (skin_of(form, nominal, material), skin_of(form, drawn, material)), given, loa_mm, seed,
    )  # fmt: skip


def _hang(
    own: Hung,
    doubtful: float,
    every: Sequence[factors.Factor],
    turned: Sequence[factors.Factor],
    values: tuple[dict[str, Array], dict[str, Array], dict[str, Array]],
    rng: np.random.Generator,
) -> factors.Factor:
    """Let the main rudder hang the other way in as many draws as sister ships or neighbours have it so.

    Where it does, what was taken from priors for it is taken from those of the other way. Returns the factor, whose
    star points are as it hangs and the other way, weighed by how likely that is.
    """
    nominal, drawn, star = values
    here = 1.0 if own == "transom" else 0.0
    other = rng.random(next(iter(drawn.values())).size) < doubtful
    for field in (nominal, star):
        for path, column in field.items():
            field[path] = np.append(column, [nominal[path][0]] * 2) if field is star else column
    for factor in turned:
        if factor.source == "prior" and factor.field.startswith("main_rudder."):
            drawn[factor.field] = np.where(other, factor.draw(rng, other.size), drawn[factor.field])
            star[factor.field][-1] = factor.nominal
    nominal[HUNG], drawn[HUNG] = np.array([here]), np.where(other, 1.0 - here, here)
    star[HUNG] = np.full(2 * len(every) + 2, here)
    star[HUNG][-1] = 1.0 - here
    weight = math.sqrt(doubtful * (1.0 - doubtful))
    return factors.Factor(HUNG, "sister_ships", here, here, 1.0 - here, lambda _rng, _n: drawn[HUNG], 2.0 * weight)


def _category(stated: str | None, given: Fill | None, field: str) -> tuple[str | None, list[Filled]]:
    if stated is not None or given is None:
        return stated, []
    weight: dict[str, float] = {}
    for value, w in zip(given.values, given.weights, strict=True):
        weight[str(value)] = weight.get(str(value), 0.0) + w
    best = max(sorted(weight), key=lambda v: weight[v])
    share = weight[best] / sum(weight.values())
    return best, [Filled(field=field, from_=given.source, value=best, spread=round(1 - share, 3))]


def _star(every: Sequence[factors.Factor]) -> dict[str, Array]:
    """Return two rows a factor: everything nominal but that one, at its low and its high point."""
    values = {f.field: np.full(2 * len(every), f.nominal) for f in every}
    for i, f in enumerate(every):
        values[f.field][2 * i : 2 * i + 2] = f.low, f.high
    return values


def _filled(every: Sequence[factors.Factor]) -> list[Filled]:
    return [
        Filled(field=f.field, from_=f.source, value=round(f.nominal, 1), spread=round(f.spread, 1))
        for f in every
        if f.source != "measured" and f.field != HUNG and not f.field.startswith("obstacles[")
    ] + [
        Filled(field=f.field, from_="prior", value="usual place", spread=round(f.spread, 1))
        for f in every
        if f.source == "prior" and f.field.startswith("obstacles[")
    ]


def allowed_lies(form: BoatForm) -> tuple[Lie, ...]:
    """Return the lies the owner allows: what must be avoided is left out, a mere wish is not."""
    wishes = form.preferences
    if wishes.strength == "wish":
        return LIES
    kept = tuple(lie for lie in LIES if lie not in (wishes.avoid or ()))
    if wishes.side in LIES and wishes.strength == "must":
        kept = tuple(lie for lie in LIES if lie == wishes.side)
    return kept or LIES


def variant(boats: Boats, form: BoatForm) -> Boats:
    """Return a changed form of the same boat at nominal, the same gaps filled the same way."""
    return prepare(form, boats.catalogue, boats.given, loa_mm=boats.loa_mm, seed=boats.seed, draws=1)


def without_obstacles(form: BoatForm, places: Collection[int]) -> BoatForm:
    """Return the form with some obstacles taken away."""
    kept = tuple(one for i, one in enumerate(form.obstacles) if i not in places)
    return form.model_copy(update={"obstacles": kept})
