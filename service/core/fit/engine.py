"""One or many configurations fitted to one boat: placement, checks, probability, verdict."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from service.core.catalogue import Configuration
from service.core.fit import settle
from service.core.fit.boats import Boats, allowed_lies
from service.core.fit.describe import Placed, check_ids, describe, outcomes, with_loads
from service.core.fit.kit import Kit, build
from service.core.fit.outcome import scaled, tightest, verdict
from service.core.fit.place import Best, place, polished
from service.core.fit.shapes import Fit, Verdict
from service.core.fit.side_by_side import side_by_side
from service.core.fit.strength import load_document, load_outcomes, strength
from service.core.loads.shapes import Assessment, Result

Array = NDArray[np.float64]
FIRST, WELL_AWAY = 200, 0.5
"""Draws on which the loads are tried first, and the scaled margin that is far enough from a limit."""
SAMPLE = 40
"""Draws on which the whole variance of the smallest margin is taken, beside what each factor brings alone."""


@dataclass(frozen=True)
class Fitted:
    """A fit with which draws passed, for questions that compare fits draw by draw."""

    fit: Fit
    passes: NDArray[np.bool_]


@dataclass(frozen=True)
class Set:
    """A configuration set on the boat: placed and checked at nominal, its probability not yet worked out."""

    fit: Fit
    kit: Kit
    spot: Array


@dataclass(frozen=True)
class Judged:
    """A configuration placed and checked at nominal: verdict, smallest scaled margin, and the check it belongs to in words."""

    verdict: Verdict
    smallest_margin: float
    why: str


def set_many(boats: Boats, configurations: Sequence[Configuration]) -> list[Set]:
    """Place and check each configuration on the nominal boat, in the order given. KeyError names an unknown code.

    A placement with every bolt hole clear of the water is sought first; only where none passes, any at all.
    """
    kits = [build(boats.catalogue, [one]) for one in configurations]
    spots = _spots(boats, kits)
    return [_set(boats, *one) for one in zip(configurations, kits, spots, strict=True)]


def judged(boats: Boats, configuration: Configuration) -> Judged:
    """Return what `set_many` would say of one configuration, and put nothing else into words."""
    kit = build(boats.catalogue, [configuration])
    placed = Placed(boats.nominal, kit, _spots(boats, [kit])[0])
    rows, _ = outcomes(boats.form, boats.catalogue, configuration, boats.unknown, placed)
    loads = _strength(boats, configuration, kit, placed.spot, plates=False)
    every = (*rows, *(load_outcomes(loads) if loads else ()))
    least = tightest(every)
    return Judged(verdict(every, 1.0, 0.0), round(scaled(least), 4), f"tightest: {least.why()}")


def _spots(boats: Boats, kits: Sequence[Kit]) -> list[Array]:
    """Return where each configuration is placed (kits of one entry), dry where it passes so."""
    found = _placed(boats, kits, dry=True, deep=False)
    wet = [n for n, (_, value) in enumerate(found) if value < 0]
    # the best miss matters only where nothing passes: looking for it takes ten times as long
    deep = len(wet) == len(found)
    for n, low in zip(wet, _placed(boats, [kits[n] for n in wet], dry=False, deep=deep), strict=True):
        found[n] = low
    return [spot for spot, _ in found]


def _placed(boats: Boats, kits: Sequence[Kit], *, dry: bool, deep: bool) -> list[tuple[Array, float]]:
    rules, lies = boats.catalogue.rules, allowed_lies(boats.form)

    def one(kit: Kit) -> tuple[Array, float]:
        return _choose(boats, kit, place(boats.nominal, kit, rules, lies=lies, dry=dry), 0, deep=deep)

    return side_by_side(one, kits)


def _set(boats: Boats, configuration: Configuration, kit: Kit, spot: Array) -> Set:
    fit = describe(boats.form, boats.catalogue, configuration, boats.unknown, Placed(boats.nominal, kit, spot))
    fit = with_loads(fit, _strength(boats, configuration, kit, spot, plates=False))
    return Set(fit.model_copy(update={"verdict": verdict(fit.checks, 1.0, 0.0), "filled": boats.filled}), kit, spot)


def _strength(boats: Boats, configuration: Configuration, kit: Kit, spot: Array, *, plates: bool) -> Assessment | None:
    return strength(boats.catalogue, configuration, boats.nominal, kit, spot[None], boats.skins[0], plates=plates)


def _choose(boats: Boats, kit: Kit, best: Best, index: int, *, deep: bool) -> tuple[Array, float]:
    """Return the placement of the lie with the highest aim, and its aim.

    Of those that pass a wished side goes first, and what is to be avoided last.
    """
    aims, wishes = best.aims[index], boats.form.preferences
    passing = [n for n in np.argsort(-aims) if aims[n] >= 0 and best.lies[n] not in (wishes.avoid or ())]
    wished = next((n for n in passing if best.lies[n] == wishes.side), None)
    lie = int(wished if wished is not None else passing[0] if passing else aims.argmax())
    return polished(boats.nominal, kit, boats.catalogue.rules, best, index, lie, deep=deep)


def fit_configuration(boats: Boats, configuration: Configuration) -> Fit:
    """Return the fit of one configuration on this boat."""
    return assured(boats, set_many(boats, [configuration])[0]).fit


def assured(boats: Boats, one: Set) -> Fitted:
    """Work out how sure a fit is: probabilities by draws, first-order beside them, and what the doubt rests on.

    What it takes to back the skin is worked out here too: it costs as much as all load checks, and few fits are shown.
    """
    rules, fit = boats.catalogue.rules, one.fit
    plates = _strength(boats, fit.configuration, one.kit, one.spot, plates=True)
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
            "loads": fit.loads if plates is None else load_document(plates),
            "verdict": verdict(fit.checks, probability, rules["probability_threshold"]),
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


def assured_many(boats: Boats, sets: Sequence[Set]) -> list[Fitted]:
    """Work out how sure each fit is, several at a time."""
    return side_by_side(lambda one: assured(boats, one), sets)


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
