"""One configuration, asked for by code, on one boat of the demo maker's fleet."""

from __future__ import annotations

import pytest

from service.core.catalogue import Configuration
from service.core.form import parse_form
from service.flow.fit import NotInCatalogueError, fit_form
from service.flow.recall import recall_form
from service.store.unit import Store

FORM = parse_form(
    {
        "boat": {"model": "Tarnholt 36", "year": 1991, "displacement_kg": 7100, "stern": "reverse"},
        "transom": {"top_height_mm": 985, "rake_deg": -23, "width_top_mm": 1720},
        "main_rudder": {"hung": "inboard"},
        "methods": {"*": "tape"},
    }
)


def kit(lower: str, upper: str, shaft: str = "shaft-1470", gear: str = "gear-720") -> Configuration:
    return Configuration(gear=gear, lower=lower, upper=upper, shaft=shaft)


def test_what_fitters_put_on_her_sisters_fits_her(seeded: Store) -> None:
    with seeded.reading() as uow:
        votes = recall_form(uow, FORM).recall.votes
        fit = fit_form(uow, FORM, votes[0].configuration)
    assert fit.configuration == votes[0].configuration
    assert fit.verdict in ("fits", "tight")
    assert fit.cures == ()
    assert {f.from_ for f in fit.filled} <= {"sister_ships", "neighbours", "prior"}


def test_a_miss_says_by_how_much_and_what_would_cure_it(seeded: Store) -> None:
    short = kit("hinge-60-170", "hinge-60-170", "shaft-1110")
    with seeded.reading() as uow:
        fit = fit_form(uow, FORM, short)
        assert fit.verdict == "does_not_fit"
        failed = [c for c in fit.checks if c.binds and c.status == "fail"]
        assert failed
        assert all("lack" in c.why or "beyond" in c.why for c in failed)
        assert fit.smallest_margin is not None
        assert fit.smallest_margin < 0
        promised = [cure.split() for cure in fit.cures if " bracket " in cure]  # with upper bracket CODE it would pass
        for _, role, _, code, *_ in promised[:2]:  # found by trying: what it promises holds
            other = short.model_copy(update={role: code})
            assert fit_form(uow, FORM, other).verdict in ("fits", "tight", "undecided")


@pytest.mark.parametrize(
    ("configuration", "said"),
    [
        (kit("hinge-60-17", "hinge-60-170"), "did you mean 'hinge-60-170'"),
        (kit("riser-70-210", "hinge-60-170"), "not made for the lower role"),
        (kit("hinge-60-170", "hinge-60-170", "shaft-1900"), "does not take gear 'gear-720'"),
    ],
)
def test_codes_that_do_not_go_together(configuration: Configuration, said: str, seeded: Store) -> None:
    with seeded.reading() as uow, pytest.raises(NotInCatalogueError, match=said):
        fit_form(uow, FORM, configuration)


def test_the_seed_moves_only_the_draws(seeded: Store) -> None:
    one = kit("outrigger-fore-380-600", "hinge-150-290")
    with seeded.reading() as uow:
        first, same, other = (fit_form(uow, FORM, one, seed=s) for s in (1, 1, 2))
    assert first == same
    assert first.placement == other.placement
    assert first.probability == pytest.approx(other.probability, abs=0.06)
