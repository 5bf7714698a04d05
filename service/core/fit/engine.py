"""One boat made ready, then one or many configurations fitted to it: placement, checks, probability, verdict."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from service.core.boat import BoatForm
from service.core.catalogue import Catalogue, Configuration
from service.core.fit import assemble, factors, settle
from service.core.fit.describe import Placed, check_ids, describe, with_loads
from service.core.fit.kit import Kit, build
from service.core.fit.place import LIES, Best, Lie, place, polished
from service.core.fit.shapes import Filled, Fit
from service.core.fit.site import Site
from service.core.fit.strength import Skin, skin_of, strength
from service.core.loads.shapes import Result
from service.core.recall import Fill

Array = NDArray[np.float64]
Hung = Literal["inboard", "transom"]
DRAWS = 1000
HUNG, MATERIAL = "main_rudder.hung", "boat.hull_material"
FIRST, WELL_AWAY = 200, 0.5
"""Draws on which the loads are tried first, and the scaled margin that is far enough from a limit."""
SAMPLE = 40
"""Draws on which the whole variance of the smallest margin is taken, beside what each factor brings alone."""


@dataclass(frozen=True)
class Boats:
    """One boat as nominal, as star points one standard deviation off in each factor, and as draws of all of them."""

    form: BoatForm
    catalogue: Catalogue
    factors: tuple[factors.Factor, ...]
    unknown: tuple[str, ...]
    filled: tuple[Filled, ...]
    nominal: Site
    star: Site
    draws: Site
    drawn: Mapping[str, Array]
    skins: tuple[Skin, Skin]
    """What the loads need besides: nominal, and draws."""
    given: Mapping[str, Fill]
    loa_mm: float | None
    seed: int


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
    every = [*found, *shifts]
    rng = np.random.default_rng(seed)
    nominal = {f.field: np.array([f.nominal]) for f in every}
    drawn = {f.field: f.draw(rng, draws) for f in every}
    star = _star(every)
    if own is not None and form.main_rudder.hung is None:
        other: Hung = "inboard" if own == "transom" else "transom"
        turned, _ = factors.build(form, catalogue, given, stern=stern, hung=other, loa_mm=loa)
        doubtful = hung_filled[0].spread or 0.0
        every.append(_hang(own, doubtful, every, turned, (nominal, drawn, star), rng))
    points = len(form.transom.profile or ())
    noise = None
    if points:
        sd = factors.standard_uncertainty(form, "transom.profile", catalogue)
        noise = rng.normal(0.0, sd, (draws, points))

    def site(values: Mapping[str, Array], curve_noise: Array | None = None) -> Site:
        return assemble.assemble(form, catalogue, values, stern=stern, hung=own, curve_noise=curve_noise)

    missing = [*unknown, *placeless, *([HUNG] if own is None else [])]
    return Boats(
        form, catalogue, tuple(every), tuple(missing), (*stern_filled, *hung_filled, *hull_filled, *_filled(every)),
        site(nominal), site(star), site(drawn, noise), drawn,
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


@dataclass(frozen=True)
class Fitted:
    """A fit with which draws passed, for questions that compare fits draw by draw."""

    fit: Fit
    passes: NDArray[np.bool_]


def allowed_lies(form: BoatForm) -> tuple[Lie, ...]:
    """Return the lies the owner allows: what must be avoided is left out, a mere wish is not."""
    wishes = form.preferences
    if wishes.strength == "wish":
        return LIES
    kept = tuple(lie for lie in LIES if lie not in (wishes.avoid or ()))
    if wishes.side in LIES and wishes.strength == "must":
        kept = tuple(lie for lie in LIES if lie == wishes.side)
    return kept or LIES


@dataclass(frozen=True)
class Set:
    """A configuration set on the boat: placed and checked at nominal, its probability not yet worked out."""

    fit: Fit
    kit: Kit
    spot: Array


def set_many(boats: Boats, configurations: Sequence[Configuration]) -> list[Set]:
    """Place and check each configuration on the nominal boat, in the order given. KeyError names an unknown code.

    A placement with every bolt hole clear of the water is sought first; only where none passes, any at all.
    """
    if not configurations:
        return []
    found = _placed(boats, configurations, dry=True)
    wet = [n for n, (_, value) in enumerate(found) if value < 0]
    for n, low in zip(wet, _placed(boats, [configurations[n] for n in wet], dry=False), strict=True):
        found[n] = low
    return [_set(boats, one, spot) for one, (spot, _) in zip(configurations, found, strict=True)]


def _placed(boats: Boats, configurations: Sequence[Configuration], *, dry: bool) -> list[tuple[Array, float]]:
    if not configurations:
        return []
    kit, rules = build(boats.catalogue, configurations), boats.catalogue.rules
    best = place(boats.nominal, kit, rules, lies=allowed_lies(boats.form), dry=dry)
    return [_choose(boats, kit, best, n) for n in range(len(configurations))]


def _set(boats: Boats, configuration: Configuration, spot: Array) -> Set:
    kit = build(boats.catalogue, [configuration])
    fit = describe(boats.form, boats.catalogue, configuration, boats.unknown, Placed(boats.nominal, kit, spot))
    loaded = strength(boats.catalogue, configuration, boats.nominal, kit, spot[None], boats.skins[0], plates=True)
    fit = with_loads(fit, loaded)
    return Set(fit.model_copy(update={"verdict": _verdict(fit, 1.0, 0.0), "filled": boats.filled}), kit, spot)


def _choose(boats: Boats, kit: Kit, best: Best, index: int) -> tuple[Array, float]:
    """Return the placement of the lie with the highest aim, and its aim.

    Of those that pass a wished side goes first, and what is to be avoided last.
    """
    aims, wishes = best.aims[index], boats.form.preferences
    passing = [n for n in np.argsort(-aims) if aims[n] >= 0 and best.lies[n] not in (wishes.avoid or ())]
    wished = next((n for n in passing if best.lies[n] == wishes.side), None)
    lie = int(wished if wished is not None else passing[0] if passing else aims.argmax())
    return polished(boats.nominal, kit, boats.catalogue.rules, best, index, lie)


def fit_configuration(boats: Boats, configuration: Configuration) -> Fit:
    """Return the fit of one configuration on this boat."""
    return assured(boats, set_many(boats, [configuration])[0]).fit


def assured(boats: Boats, one: Set) -> Fitted:
    """Work out how sure a fit is: probabilities by draws, first-order beside them, and what the doubt rests on."""
    rules, fit = boats.catalogue.rules, one.fit
    margins, _, spots = settle.settle(boats.nominal, boats.draws, one.kit, one.spot, rules)
    held = {id_: column >= 0 for id_, column in zip(check_ids(boats.form), margins.T, strict=True)}
    held |= _loads_hold(boats, one, spots)
    passes = np.all([np.broadcast_to(held[c.id], spots.shape[:1]) for c in fit.checks if c.binds], axis=0)
    weights = np.array([f.weight for f in boats.factors])
    sample = boats.draws._replace(values=boats.draws.values[:SAMPLE], boxes=boats.draws.boxes[:SAMPLE])
    first = settle.first_order(boats.nominal, (boats.star, weights), sample, one.kit, one.spot, rules)
    probability = float(passes.mean())
    fit = fit.model_copy(
        update={
            "verdict": _verdict(fit, probability, rules["probability_threshold"]),
            "probability": round(probability, 3),
            "first_order": round(first.probability, 3),
            "disagrees": abs(first.probability - probability) > settle.DISAGREEMENT,
            "doubt": first.shares([f.field for f in boats.factors]),
            "checks": tuple(
                c.model_copy(
                    update={
                        "probability": round(float(held[c.id].mean()), 3)
                        if c.id in held and c.status != "unknown"
                        else None
                    }
                )
                for c in fit.checks
            ),
        }
    )
    return Fitted(fit, passes)


def _loads_hold(boats: Boats, one: Set, spots: Array) -> dict[str, NDArray[np.bool_]]:
    """Return on which draws each load check holds.

    Loads change little from draw to draw. Where on the first draws every check that binds keeps well away from its
    limit, those stand for all: what binds then holds throughout, and advice has its share from them.
    """
    binding = {c.id for c in one.fit.checks if c.binds}

    def found(rows: slice) -> tuple[Result, ...]:
        site = boats.draws._replace(values=boats.draws.values[rows], boxes=boats.draws.boxes[rows])
        got = strength(
            boats.catalogue, one.fit.configuration, site, one.kit, spots[rows], boats.skins[1].rows(rows), plates=False
        )
        return got.results if got else ()

    first = found(slice(FIRST))
    near = [r for r in first if r.id in binding and float(np.min(r.scaled)) < WELL_AWAY]
    if near:
        return {r.id: np.broadcast_to(r.margin >= 0, spots.shape[:1]) for r in found(slice(None))}
    return {r.id: np.ones(1, bool) if r.id in binding else np.asarray(r.margin >= 0) for r in first}


def _verdict(fit: Fit, probability: float, threshold: float) -> str:
    binding = [c for c in fit.checks if c.binds]
    if any(c.status == "fail" for c in binding):
        return "does_not_fit"
    if any(c.status == "unknown" for c in binding):
        return "undecided"
    return "fits" if probability >= threshold else "tight"


def variant(boats: Boats, form: BoatForm) -> Boats:
    """Return a changed form of the same boat at nominal, the same gaps filled the same way."""
    return prepare(form, boats.catalogue, boats.given, loa_mm=boats.loa_mm, seed=boats.seed, draws=1)


def without_obstacle(form: BoatForm, index: int) -> BoatForm:
    """Return the form with one obstacle taken away."""
    kept = tuple(one for i, one in enumerate(form.obstacles) if i != index)
    return form.model_copy(update={"obstacles": kept})
