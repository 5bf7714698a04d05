"""The chance that a fitter would install each configuration: what was voted, after the solver has spoken."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from service.core.catalogue import Configuration
from service.core.recall import Vote

Verdicts = Mapping[Configuration, str]
FOUND = 0.5
"""The share of what no vote claims that goes to what the solver found; the rest belongs to what nobody thought of."""


def chances(votes: Sequence[Vote], verdicts: Verdicts, refuted: float) -> dict[Configuration, float]:
    """Return the chance of every configuration that was voted for or checked; they add up to at most one.

    By Bayes' rule with the verdict as evidence: one that the fit refutes keeps `refuted` of its weight beside the
    others (records show such boats: a measurement was wrong), and what is taken from it goes to all others in
    proportion. What the solver found and no vote named shares a part of what the votes leave over.
    """
    prior = {vote.configuration: vote.probability for vote in votes}
    newcomers = [one for one in verdicts if one not in prior]
    spare = max(0.0, 1.0 - sum(prior.values()))
    prior |= dict.fromkeys(newcomers, FOUND * spare / max(len(newcomers), 1))
    weight = {one: p * (refuted if verdicts.get(one) == "does_not_fit" else 1.0) for one, p in prior.items()}
    whole = sum(weight.values()) + max(0.0, 1.0 - sum(prior.values()))
    return {one: w / whole for one, w in weight.items()} if whole > 0 else weight
