"""Who has left a job without a word? Told by what stands still, on one's own stopwatch: no clock is asked."""

from __future__ import annotations

from collections.abc import Iterable

from service.store.jobs import Sign


class Watch:
    """Remembers since when a sign has been the same. Nobody's clock matters: two machines need not agree on any time."""

    def __init__(self, patience_s: float) -> None:
        """Take a worker for gone that gives no sign for so many seconds."""
        self._patience_s = patience_s
        self._since: dict[str, tuple[Sign, float]] = {}

    def still(self, signs: Iterable[Sign], now: float) -> list[Sign]:
        """Return the signs that have not changed for long enough; `now` is in seconds on a stopwatch that never goes back."""
        seen = {}
        for sign in signs:
            before, since = self._since.get(sign.id, (sign, now))
            same = (before.state, before.turn, before.beat) == (sign.state, sign.turn, sign.beat)
            seen[sign.id] = (sign, since if same else now)
        self._since = seen
        return [sign for sign, since in seen.values() if now - since >= self._patience_s]
