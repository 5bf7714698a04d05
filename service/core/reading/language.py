"""Which language a letter is written in: by its common words."""

from __future__ import annotations

from collections.abc import Mapping

from service.core.reading.lexis import Matcher, Word

LEAST = 2
FALLBACK = "en"


def language_of(words: list[Word], matchers: Mapping[str, Matcher]) -> str | None:
    """Return the language whose common words (and terms) are most frequent; None where too few of any stand there."""
    if not words:
        return None
    scores = {code: sum(word.fold in matcher.common for word in words) for code, matcher in matchers.items()}
    best = max(scores, key=lambda code: scores[code])
    return best if scores[best] >= LEAST else None
