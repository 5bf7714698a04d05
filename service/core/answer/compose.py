"""One boat: precedents and solver put configurations forward, the fit checks them, the best go into the answer."""

from __future__ import annotations

from dataclasses import dataclass

from service.core.answer import cautions, contrast, questions
from service.core.answer.shapes import Answer, Provenance, Suggestion
from service.core.boat import BoatForm
from service.core.catalogue import Catalogue, Configuration
from service.core.fit import Boats, cures, fit_many, prepare
from service.core.fit.engine import Fitted
from service.core.fit.survey import promising, simplicity
from service.core.hulls import HullDecision
from service.core.recall import Fleet, Recall, fills, recall

BY_PRECEDENT, BY_SOLVER, SHOWN = 5, 5, 5
LEAST_VOTE = 0.01
"""A configuration less likely than this to be installed is not worth fitting for its precedents."""
ORDER = {"fits": 0, "tight": 1, "undecided": 2, "does_not_fit": 3}


@dataclass(frozen=True)
class Known:
    """What is at hand when an enquiry is answered."""

    catalogue: Catalogue
    fleet: Fleet
    software: str


def compose(
    form: BoatForm, hull: HullDecision | None, known: Known, *, doubts: tuple[str, ...] = (), seed: int = 1
) -> Answer:
    """Return the answer for one boat. `doubts`: questions that reading the message has already raised."""
    hull_id = hull.model.id if hull and hull.model else None
    remembered = recall(known.fleet, form, hull=hull_id)
    boats = ready(form, known, hull, seed)
    votes = {v.configuration: v for v in remembered.votes if known.catalogue.misfit(v.configuration) is None}
    fitted = _candidates(boats, known.catalogue, votes)
    suggestions = _ranked(fitted, remembered, known.catalogue, boats)
    missing = questions.missing(boats, fitted, hull)
    return Answer(
        form=form,
        hull=hull,
        precedents=remembered.precedents,
        contrasts=contrast.with_sisters(boats, suggestions, remembered, known.fleet),
        suggestions=suggestions,
        missing=missing,
        questions=questions.ask(missing, hull, doubts),
        cautions=cautions.for_boat(form, known.catalogue, suggestions),
        provenance=Provenance(
            catalogue=known.catalogue.version, records=len(known.fleet.records), software=known.software, seed=seed
        ),
    )


def ready(form: BoatForm, known: Known, hull: HullDecision | None, seed: int) -> Boats:
    """Return the boat ready for fitting, with what nobody stated filled from sister ships and neighbours."""
    hull_id = hull.model.id if hull and hull.model else None
    given = fills(known.fleet, form, hull=hull_id, wanted=WANTED)
    loa = given.get("boat.loa_mm")
    length = float(loa.values[0]) if loa and loa.values else None
    return prepare(form, known.catalogue, given, loa_mm=length, seed=seed)


WANTED = (
    "boat.stern", "main_rudder.hung", "boat.loa_mm", "boat.lwl_mm", "boat.displacement_kg", "transom.top_height_mm",
    "transom.bottom_height_mm", "transom.rake_deg", "transom.width_top_mm", "transom.width_waterline_mm",
    "transom.camber_mm", "transom.thickness_mm", "transom.step_height_mm", "transom.step_depth_mm",
    "transom.step_width_mm", "transom.lower_rake_deg", "transom.post_width_mm", "main_rudder.stock_aft_mm",
    "main_rudder.leading_edge_aft_mm", "main_rudder.trailing_edge_aft_mm", "main_rudder.top_height_mm",
    "main_rudder.bottom_height_mm", "main_rudder.max_deflection_deg",
)  # fmt: skip


def _candidates(boats: Boats, catalogue: Catalogue, votes: dict[Configuration, object]) -> list[Fitted]:
    """Fit what precedents put forward, then what the solver finds, each configuration once."""
    likely = [c for c, v in votes.items() if v.probability >= LEAST_VOTE][:BY_PRECEDENT]  # type: ignore[attr-defined]
    found = [c for c in promising(boats.nominal, catalogue, keep=BY_SOLVER + len(likely)) if c not in likely]
    return fit_many(boats, [*likely, *found[:BY_SOLVER]])


def _ranked(fitted: list[Fitted], remembered: Recall, catalogue: Catalogue, boats: Boats) -> tuple[Suggestion, ...]:
    """Rank by verdict, then by what fitters would install, then by simplicity; what is refuted only where nothing else is left."""
    votes = {v.configuration: v for v in remembered.votes}
    spare = max(0.0, 1.0 - sum(v.probability for v in remembered.votes))
    newcomers = sum(f.fit.configuration not in votes for f in fitted) or 1

    def chance(one: Fitted) -> float:
        vote = votes.get(one.fit.configuration)
        return vote.probability if vote else spare / newcomers

    def key(one: Fitted) -> tuple[float, ...]:
        miss = -(one.fit.smallest_margin or 0.0) if one.fit.verdict == "does_not_fit" else 0.0
        return (ORDER[one.fit.verdict], round(miss, 2), -round(chance(one), 3), *simplicity(catalogue, one.fit))

    able = [f for f in fitted if f.fit.verdict != "does_not_fit"]
    best = sorted(able or fitted, key=key)[:SHOWN]
    if not able and best:
        best[0] = Fitted(best[0].fit.model_copy(update={"cures": cures(boats, best[0].fit)}), best[0].passes)
    return tuple(
        Suggestion(
            rank=rank,
            configuration=one.fit.configuration,
            probability=round(chance(one), 3),
            origin="precedent" if one.fit.configuration in votes else "solver",
            precedents=votes[one.fit.configuration].precedents if one.fit.configuration in votes else (),
            fit=one.fit,
        )
        for rank, one in enumerate(best, start=1)
    )
