"""How long fitting takes: one configuration, the whole catalogue, draws, the fleet, and how cost grows."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from itertools import pairwise

from service.core.answer.compose import ready
from service.core.answer.recheck import recheck
from service.core.boat import BoatForm
from service.core.catalogue import Configuration
from service.core.fit.boats import Boats, prepare
from service.core.fit.engine import assured, assured_many, set_many
from service.core.fit.survey import promising
from service.flow.hull_index import hull_index
from service.flow.known import gather
from service.flow.recheck import recheck_fleet
from service.flow.resolve import hull_of
from service.store.unit import Store

Timed = Callable[[Callable[[], object], int], float]
Row = tuple[str, str, float, str, float | None]
ONE_S, CATALOGUE_S, FIVE_S, BOAT_S = 0.005, 0.150, 0.250, 0.010
DRAWS = 2000


def fit_lines(store: Store, form: BoatForm, median: Timed, *, quick: bool) -> list[Row]:
    """Return rows of what, size, seconds for one, what it is held against, and its seconds."""
    with store.reading() as uow:
        known, hull = gather(uow), hull_of(hull_index(uow), form)
    boats = ready(form, known, hull, 1)
    every = known.catalogue.configurations()
    found = promising(boats.nominal, known.catalogue)
    five = found[:5]
    many = prepare(boats.form, known.catalogue, boats.given, loa_mm=boats.loa_mm, draws=DRAWS)
    set_five = set_many(many, five)

    def whole() -> object:
        return set_many(boats, promising(boats.nominal, known.catalogue))

    rows: list[Row] = [
        ("place and check", "1 configuration, 3 lies", median(lambda: set_many(boats, five[:1]), 21), "target", ONE_S),
        ("the whole catalogue", f"{len(every)} configurations, 3 lies", median(whole, 7), "target", CATALOGUE_S),
        (
            "how sure",
            f"5 fits, {DRAWS} draws",
            median(lambda: assured_many(many, set_five), 5),
            "target",
            FIVE_S,
        ),
    ]
    if quick:
        return rows
    boats_a_run = [r for r in known.fleet.records if r.status != "withdrawn"]
    with store.reading() as uow:
        fleet = median(lambda: recheck_fleet(uow, None, ""), 1)
    one = median(lambda: [recheck(r, known) for r in boats_a_run[:40]], 1) / 40
    rows.append(("recheck, a boat", f"{len(boats_a_run)} boats, threads", fleet / len(boats_a_run), "target", BOAT_S))
    rows.append(("recheck, a boat", "40 boats, one thread", one, "target", BOAT_S))
    return rows + _growth(boats, found, median)


def _growth(boats: Boats, found: list[Configuration], median: Timed) -> list[Row]:
    """Return how cost grows with configurations and with draws: each row beside the one before, per item."""
    rows: list[Row] = []
    sizes = [n for n in (3, 6, 12) if n <= len(found)]
    by_configuration = [median(partial(set_many, boats, found[:n]), 7) / n for n in sizes]
    for (a, b), (n, m) in zip(pairwise(by_configuration), pairwise(sizes), strict=True):
        rows.append(("a configuration of", f"{m}", b, f"of {n}", a))
    draws = (500, 1000, 2000, 4000)
    sets = []
    for n in draws:
        drawn = prepare(boats.form, boats.catalogue, boats.given, loa_mm=boats.loa_mm, draws=n)
        one = set_many(drawn, found[:1])[0]
        sets.append(median(partial(assured, drawn, one), 5) / n)
    for (a, b), (n, m) in zip(pairwise(sets), pairwise(draws), strict=True):
        rows.append(("a draw of", f"{m}", b, f"of {n}", a))
    return rows
