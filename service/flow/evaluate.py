"""Score the service against what it was not shown: configurations on held-out records, names on the registry's own."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from service.core.answer.chances import chances
from service.core.answer.compose import Known, candidates_of
from service.core.catalogue import Catalogue, Configuration
from service.core.evaluate.configurations import Ledger, evaluate, evaluate_answered
from service.core.evaluate.names import Guesser, NameQuery, NameScores, by_resolve, by_wratio, score_names
from service.core.evaluate.shapes import Configurations
from service.core.evaluate.variants import bare, of_absent, of_known
from service.core.hulls import HullIndex
from service.core.recall.fleet import Fleet
from service.core.record import HullModel, Record
from service.files.read.messages import speak
from service.flow.known import NoCatalogueError, remembered
from service.flow.software import SOFTWARE
from service.store.unit import UnitOfWork

Progress = Callable[[int], None]
OURS, FLOOR = "this service", "WRatio"


def ledger_of(uow: UnitOfWork) -> Ledger:
    """Return the records to be split, with the registry and what the catalogue, if there is one, can make."""
    memory = remembered(uow)
    catalogue = memory.catalogue
    makes = None if catalogue is None else (lambda one: catalogue.misfit(one) is None)
    return Ledger(memory.fleet.records, memory.fleet.hulls, makes)


def evaluate_configurations(uow: UnitOfWork, *, progress: Progress = lambda _done: None) -> Configurations:
    """Return how well votes alone foretell what was installed; no fit is run."""
    return evaluate(ledger_of(uow), progress=progress)


def evaluate_with_fit(uow: UnitOfWork, count: int, *, progress: Progress = lambda _done: None) -> Configurations:
    """Return how well votes with the solver's verdicts foretell, on `count` boats a way. NoCatalogueError without one."""
    catalogue = remembered(uow).catalogue
    if catalogue is None:
        raise NoCatalogueError("no catalogue is loaded; load one with `transom catalogue load FILE`")
    return evaluate_answered(
        ledger_of(uow), lambda fleet, record: _answered(catalogue, fleet, record), count, progress=progress
    )


def _answered(catalogue: Catalogue, fleet: Fleet, record: Record) -> Mapping[Configuration, float]:
    votes, candidates = candidates_of(record.form, record.hull, Known(catalogue, fleet, SOFTWARE, speak))
    verdicts = {c.fit.configuration: str(c.fit.verdict) for c in candidates}
    return chances(votes, verdicts, fleet.weights.refuted)


def evaluate_names(uow: UnitOfWork) -> dict[str, NameScores]:
    """Return how well names are resolved on the registry's own: written other ways, under aliases, or taken out."""
    models = remembered(uow).fleet.hulls.values()
    return {
        OURS: _named(list(models), lambda known: by_resolve(HullIndex.build(known))),
        FLOOR: _named(list(models), by_wratio),
    }


def _named(models: list[HullModel], guesser: Callable[[list[HullModel]], Guesser]) -> NameScores:
    everything = guesser(bare(models))
    guesses: dict[int, Guesser] = {}
    queries: list[NameQuery] = []
    for query in of_known(models):
        guesses[id(query)] = everything
        queries.append(query)
    for kept, asked in of_absent(models):
        guess = guesser(kept)
        for query in asked:
            guesses[id(query)] = guess
            queries.append(query)
    return score_names(queries, lambda query: guesses[id(query)](query))
