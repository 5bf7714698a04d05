"""One boat: precedents and solver put configurations forward, the fit checks them, the best go into the answer."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from service.core.answer import cautions, contrast, questions
from service.core.answer.backing import backing
from service.core.answer.chances import chances
from service.core.answer.shapes import Answer, Provenance, Suggestion
from service.core.answer.speech import Speak
from service.core.boat import BoatForm
from service.core.catalogue import Catalogue, Configuration
from service.core.fit import Fit
from service.core.fit.boats import DRAWS, Boats, allowed_lies, prepare
from service.core.fit.cures import cures
from service.core.fit.engine import Fitted, Set, assured_many, set_many
from service.core.fit.survey import promising, simplicity
from service.core.hulls import HullDecision
from service.core.reading.shape import Doubt
from service.core.recall import Vote
from service.core.recall.filling import fills
from service.core.recall.fleet import Fleet
from service.core.recall.precedents import recall

BY_PRECEDENT, BY_SOLVER, SHOWN = 5, 3, 5
LEAST_VOTE = 0.01
"""A configuration less likely than this to be installed is not worth fitting for its precedents."""
ORDER = {"fits": 0, "tight": 1, "undecided": 2, "does_not_fit": 3}


@dataclass(frozen=True)
class Known:
    """What is at hand when an enquiry is answered."""

    catalogue: Catalogue
    fleet: Fleet
    software: str
    speak: Speak
    """Who puts questions and cautions into words."""


def compose(
    form: BoatForm, hull: HullDecision | None, known: Known, *, doubts: tuple[Doubt, ...] = (), seed: int = 1
) -> Answer:
    """Return the answer for one boat. `doubts`: what reading the message has left open."""
    hull_id = hull.model.id if hull and hull.model else None
    remembered = recall(known.fleet, form, hull=hull_id)
    boats = ready(form, known, hull, seed)
    votes = _makeable(remembered.votes, known)
    candidates = _candidates(boats, known.catalogue, votes)
    chance = chances(votes, {c.fit.configuration: c.fit.verdict for c in candidates}, known.fleet.weights.refuted)
    fitted = _best(boats, known.catalogue, candidates, chance)
    suggestions = _suggestions(fitted, votes, chance)
    missing = questions.missing(boats, fitted, hull)
    asked = questions.ask(form, missing, hull, doubts)
    warned = (
        *cautions.for_boat(form, known.catalogue, suggestions),
        *backing(hull, remembered, suggestions, records=len(known.fleet.records)),
    )
    theirs, english = known.speak(form.enquiry.language, form.enquiry.country), known.speak()
    return Answer(
        form=form,
        hull=hull,
        precedents=remembered.precedents,
        sisters=remembered.sisters,
        contrasts=contrast.with_sisters(boats, suggestions, remembered, known.fleet),
        suggestions=suggestions,
        missing=missing,
        questions=tuple(map(theirs.sentence, asked)),
        cautions=tuple(map(english.sentence, warned)),
        asked=asked,
        warned=warned,
        provenance=Provenance(
            catalogue=known.catalogue.version,
            records=len(known.fleet.records),
            software=known.software,
            seed=seed,
            weights=known.fleet.weights.version,
        ),
    )


def ready(form: BoatForm, known: Known, hull: HullDecision | None, seed: int) -> Boats:
    """Return the boat ready for fitting, with what nobody stated filled from sister ships and neighbours."""
    return prepared(form, known, hull.model.id if hull and hull.model else None, seed)


def prepared(form: BoatForm, known: Known, hull: str | None, seed: int, draws: int = DRAWS) -> Boats:
    """Return the boat ready for fitting, of a hull model given by its id."""
    given = fills(known.fleet, form, hull=hull, wanted=WANTED)
    loa = given.get("boat.loa_mm")
    length = float(loa.values[0]) if loa and loa.values else None
    return prepare(form, known.catalogue, given, loa_mm=length, seed=seed, draws=draws)


WANTED = (
    "boat.stern", "main_rudder.hung", "boat.hull_material", "boat.loa_mm", "boat.lwl_mm", "boat.displacement_kg", "transom.top_height_mm",
    "transom.bottom_height_mm", "transom.rake_deg", "transom.width_top_mm", "transom.width_waterline_mm",
    "transom.camber_mm", "transom.thickness_mm", "transom.step_height_mm", "transom.step_depth_mm",
    "transom.step_width_mm", "transom.lower_rake_deg", "transom.post_width_mm", "main_rudder.stock_aft_mm",
    "main_rudder.leading_edge_aft_mm", "main_rudder.trailing_edge_aft_mm", "main_rudder.top_height_mm",
    "main_rudder.bottom_height_mm", "main_rudder.max_deflection_deg",
)  # fmt: skip


def candidates_of(form: BoatForm, hull: str | None, known: Known, seed: int = 1) -> tuple[list[Vote], list[Set]]:
    """Return the votes for a boat of a hull model given by its id, and what was set on it, as an answer would."""
    votes = _makeable(recall(known.fleet, form, hull=hull).votes, known)
    return votes, _candidates(prepared(form, known, hull, seed, draws=1), known.catalogue, votes)


def _makeable(votes: Sequence[Vote], known: Known) -> list[Vote]:
    return [vote for vote in votes if known.catalogue.misfit(vote.configuration) is None]


def _candidates(boats: Boats, catalogue: Catalogue, votes: Sequence[Vote]) -> list[Set]:
    """Set what precedents put forward on the boat, then what the solver finds, each configuration once."""
    likely = [v.configuration for v in votes if v.probability >= LEAST_VOTE][:BY_PRECEDENT]
    lies = allowed_lies(boats.form)
    return set_many(boats, [*likely, *promising(boats.nominal, catalogue, lies=lies, keep=BY_SOLVER, beside=likely)])


def _best(
    boats: Boats, catalogue: Catalogue, candidates: Sequence[Set], chance: Mapping[Configuration, float]
) -> list[Fitted]:
    """Return the best few, assured: by verdict, then by what fitters would install, then by simplicity.

    What the fit refutes is left out, unless nothing else is there: then the least misses, with what would cure them.
    """

    def key(fit: Fit) -> tuple[float, ...]:
        miss = -(fit.smallest_margin or 0.0) if fit.verdict == "does_not_fit" else 0.0
        return ORDER[fit.verdict], round(miss, 2), -round(chance[fit.configuration], 3), *simplicity(catalogue, fit)

    able = [c for c in candidates if c.fit.verdict != "does_not_fit"]
    first = sorted(able or candidates, key=lambda c: key(c.fit))[:SHOWN]
    best = sorted(assured_many(boats, first), key=lambda f: key(f.fit))
    if able:
        best = [one for one in best if one.fit.verdict != "does_not_fit"] or best
    if not able and best:
        best[0] = replace(best[0], fit=best[0].fit.model_copy(update={"cures": cures(boats, best[0].fit)}))
    return best


def _suggestions(
    best: Sequence[Fitted], votes: Sequence[Vote], chance: Mapping[Configuration, float]
) -> tuple[Suggestion, ...]:
    speakers = {v.configuration: v.precedents for v in votes}
    return tuple(
        Suggestion(
            rank=rank,
            configuration=one.fit.configuration,
            probability=round(chance[one.fit.configuration], 3),
            origin="precedent" if one.fit.configuration in speakers else "solver",
            precedents=speakers.get(one.fit.configuration, ()),
            fit=one.fit,
        )
        for rank, one in enumerate(best, start=1)
    )
