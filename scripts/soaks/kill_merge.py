"""Merging records, and hull models, pair after pair, killed: each pair is one or two, and no pair is half merged."""

from __future__ import annotations

from scripts.soaks.kill_round import Round, need, opened, see_sound
from service.store.unit import Store

KILLS = 3


def records(mine: Round, url: str) -> None:
    """Merge each record of the first half of the fleet with one of the second."""
    store = opened(url)
    with store.reading() as uow:
        names = sorted(record.reference for record in uow.records.all())
    half = len(names) // 2
    pairs = dict(zip(names[half : 2 * half], names[:half], strict=True))
    merged = set[str]()
    for _ in range(KILLS):
        said = len(merged) + mine.killed("merge", _written(pairs, merged), url)
        merged = _merged(store, pairs)
        see_sound(url)
        need(said <= len(merged) <= said + 1, f"{said} merges were acknowledged, {len(merged)} are there")
    mine.whole("merge", _written(pairs, merged), url)
    need(_merged(store, pairs) == set(pairs), "not every pair is merged")
    see_sound(url)
    store.close()


def _merged(store: Store, pairs: dict[str, str]) -> set[str]:
    """Return which records were taken in. BrokenError where history and redirect tell different stories."""
    with store.reading() as uow:
        merges = uow.records.merges.all()
        histories = uow.records.histories_among(pairs.values())
    for other, into in pairs.items():
        told = [step.number for step in histories[into] if f"took in {other}," in (step.why or "")]
        merge = merges.get(other)
        if merge is None:
            need(not told, f"{into} says it took in {other}, and it did not")
        else:
            need(merge.into == into, f"{other} leads to {merge.into}")
            need(told == ([merge.number] if merge.number else []), f"{into} says nothing of {other}")
    return set(merges)


def hulls(mine: Round, url: str) -> None:
    """Merge each hull model of the first half of the registry with one of the second."""
    store = opened(url)
    with store.reading() as uow:
        names = sorted(hull.id for hull in uow.hulls.all())
    half = len(names) // 2
    pairs = dict(zip(names[half : 2 * half], names[:half], strict=True))
    merged = set[str]()
    for _ in range(KILLS):
        said = len(merged) + mine.killed("merge hulls", _written(pairs, merged), url)
        merged = _merged_hulls(store, pairs)
        need(said <= len(merged) <= said + 1, f"{said} merges were acknowledged, {len(merged)} are there")
    mine.whole("merge hulls", _written(pairs, merged), url)
    need(_merged_hulls(store, pairs) == set(pairs), "not every pair is merged")
    see_sound(url)
    store.close()


def _merged_hulls(store: Store, pairs: dict[str, str]) -> set[str]:
    with store.reading() as uow:
        leads = uow.hulls.merged_into([*pairs.values()])
        survivors = uow.hulls.survivors()
        merges = [change for change in uow.hulls.log.latest(100_000) if change.kind == "merge"]
    told = {cell.key[0] for change in merges for cell in change.cells if cell.key[-1] == "merged_into"}
    need(len(told) == len(merges), "a merge is written down without its redirect, or twice")
    need(set(leads) == told, "the registry's history and what it leads to are not the same")
    for other, into in leads.items():
        need(into == pairs[other] == survivors.get(other), f"{other} leads to {into} and {survivors.get(other)}")
    return set(leads)


def _written(pairs: dict[str, str], without: set[str]) -> str:
    return " ".join(f"{into}<{other}" for other, into in pairs.items() if other not in without)
