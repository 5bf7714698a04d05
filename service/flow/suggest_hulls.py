"""Hull models whose names go on as somebody has begun to write them."""

from __future__ import annotations

from service.core.record import HullModel
from service.store.unit import UnitOfWork


def suggest_hulls(uow: UnitOfWork, prefix: str, limit: int) -> tuple[HullModel, ...]:
    """Return hull models of which a word begins with `prefix`, those whose name, alias or id does first."""
    wanted = " ".join(prefix.casefold().split())
    with uow:
        named = uow.kept.get("hull names", uow.stamps.fleet(), lambda: _named(uow))
    first = [hull for names, hull in named if any(name.startswith(wanted) for name in names)]
    if len(first) >= limit:
        return tuple(first[:limit])
    seen = {hull.id for hull in first}
    inner = f" {wanted}"
    rest = [hull for names, hull in named if hull.id not in seen and any(inner in name for name in names)]
    return tuple([*first, *rest][:limit])


def _named(uow: UnitOfWork) -> list[tuple[tuple[str, ...], HullModel]]:
    return [
        (tuple(text.casefold() for text in dict.fromkeys((hull.model, str(hull), *hull.aliases, hull.id))), hull)
        for hull in uow.hulls.all()
    ]
