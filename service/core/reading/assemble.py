"""Claims -> one boat form: newest text first, contradictions out, every value with its evidence."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from typing import Any

from service.core.boat import BoatForm
from service.core.form import FormError, parse_form
from service.core.reading.boxes import Seen
from service.core.reading.claims import Claim
from service.core.reading.hedges import Hedge
from service.core.reading.shape import Doubt, Evidence
from service.core.reading.stern import OUTRANKS

SAME = {"_mm": 3.0, "_deg": 0.5, "_kg": 1.0}
SHARE = 0.01
DERIVED, IMPLIED = 0.8, 0.7


def weigh(claims: Sequence[Claim], text: str) -> tuple[list[Claim], list[Doubt]]:
    """Return one claim a field, and a doubt for each field whose newest claims contradict each other."""
    kept: list[Claim] = []
    doubts: list[Doubt] = []
    by_field: dict[str, list[Claim]] = defaultdict(list)
    for claim in claims:
        by_field[claim.field].append(claim)
    for name, group in by_field.items():
        newest = min(c.depth for c in group)
        rivals = [c for c in group if c.depth == newest]
        if name == "boat.stern":
            best = _stern(rivals)
        else:
            best = _agreed(name, rivals) or _agreed(name, [c for c in rivals if c.confidence > IMPLIED])
        if best is None:
            values = tuple(dict.fromkeys(str(c.value) if isinstance(c.value, list) else c.value for c in rivals))
            doubts.append(Doubt(field=name, why="contradictory", values=values, text=_quote(rivals, text)))
        else:
            kept.append(best)
    return kept, doubts


def _agreed(name: str, rivals: list[Claim]) -> Claim | None:
    return rivals[0] if rivals and all(same(name, rivals[0].value, c.value) for c in rivals) else None


def _stern(rivals: list[Claim]) -> Claim | None:
    """Return the claim of the rarer word: a scoop's riser may be reverse, a double-ender's post raked."""
    if any(c.value == "plumb" for c in rivals):  # "nearly plumb, 4 degrees aft": the word says the sort
        rivals = [c for c in rivals if c.confidence > DERIVED or c.value == "plumb"]
    for sort in OUTRANKS:
        hit = next((c for c in rivals if c.value == sort), None)
        if hit is not None:
            clash = sort in ("reverse", "plumb") and any(
                c.value in ("raked", "plumb") and c.value != sort for c in rivals
            )
            return None if clash else hit
    return None


def _quote(claims: list[Claim], text: str) -> str:
    return " / ".join(text[c.start : c.end] for c in claims)[:500]


def same(name: str, one: object, other: object) -> bool:
    """Say whether two values of a field agree: numbers within the field's slack, words exactly."""
    if isinstance(one, (int, float)) and isinstance(other, (int, float)) and name != "boat.year":
        slack = next((v for k, v in SAME.items() if name.endswith(k)), 0.0)
        return abs(one - other) <= max(slack, SHARE * max(abs(one), abs(other)))
    return bool(one == other)


def build(
    claims: list[Claim], obstacles: list[Seen], text: str, index: int
) -> tuple[BoatForm, list[Evidence], list[Doubt]]:
    """Return the form of what was kept, its evidence, and doubts for values that the form itself refuses."""
    data: dict[str, Any] = {}
    for claim in claims:
        _put(data, claim)
    if obstacles:
        data["obstacles"] = [{"kind": one.kind, **one.said} for one in obstacles]
    doubts: list[Doubt] = []
    form = None
    while form is None:
        try:
            form = parse_form(data)
        except FormError as error:
            refused = _refused(claims, error)
            doubts += [
                Doubt(field=c.field, why="contradictory", values=(c.value,), text=text[c.start : c.end])
                for c in refused
            ]
            claims = [c for c in claims if c not in refused] if refused else []
            data = {"obstacles": data["obstacles"]} if obstacles and refused else {}
            for claim in claims:
                _put(data, claim)
    evidence = [_evidence(c, text, index) for c in claims]
    evidence += [_hedge(c, c.hedge, text, index) for c in claims if c.hedge is not None]
    if form.obstacles:
        evidence += [e for i, one in enumerate(obstacles) for e in _sights(one, f"obstacles[{i}]", text, index)]
    return form, evidence, doubts


def _put(data: dict[str, Any], claim: Claim) -> None:
    stem, _, last = claim.field.rpartition(".")
    for part in ("methods", "uncertainties"):  # their members are named by whole paths
        if claim.field.startswith(f"{part}."):
            stem, last = part, claim.field.removeprefix(f"{part}.")
    (data.setdefault(stem, {}) if stem else data)[last] = claim.value
    if claim.hedge is not None:
        data.setdefault("uncertainties", {})[claim.field] = claim.hedge.value


def _refused(claims: list[Claim], error: FormError) -> list[Claim]:
    """Return the claims a form error speaks of: a part's name speaks of all its members."""
    named = [d.field for d in error.defects]
    exact = [c for c in claims if any(n.startswith(c.field) for n in named)]
    return exact or [c for c in claims if any(c.field.startswith(n.split("[")[0].split(".")[0] + ".") for n in named)]


def _evidence(claim: Claim, text: str, index: int) -> Evidence:
    return Evidence(
        field=claim.field, boat=index, value=claim.value, text=text[claim.start : claim.end], start=claim.start,
        end=claim.end, quoted=claim.depth > 0, confidence=claim.confidence,
    )  # fmt: skip


def _hedge(claim: Claim, hedge: Hedge, text: str, index: int) -> Evidence:
    return Evidence(
        field=f"uncertainties.{claim.field}", boat=index, value=hedge.value, text=text[hedge.start : hedge.end],
        start=hedge.start, end=hedge.end, quoted=claim.depth > 0, confidence=claim.confidence,
    )  # fmt: skip


def _sights(one: Seen, path: str, text: str, index: int) -> list[Evidence]:
    """Return the words that name an obstacle, and those for each thing said of it."""
    places = [(path, {"kind": one.kind, **one.said}, one.start, one.end)]
    places += [(f"{path}.{key}", one.said[key], *place) for key, place in one.places.items() if key in one.said]
    return [
        Evidence(
            field=field, boat=index, value=value, text=text[start:end], start=start, end=end, quoted=one.depth > 0,
            confidence=0.8,
        )
        for field, value, start, end in places
    ]  # fmt: skip
