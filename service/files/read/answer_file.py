"""Answers that were sent, from JSON: `answers/1` or one `answer/1`."""

from __future__ import annotations

import json

from service.core.form import parse_shape
from service.core.proposal import SentAnswer, SentAnswers
from service.files.read.errors import Unreadable


def read_answers(data: bytes | str, name: str) -> tuple[SentAnswer, ...]:
    """Return the answers in a file, one a boat. Unreadable for what is no answer; FormError names what it lacks."""
    try:
        document = json.loads(data)
    except (ValueError, RecursionError) as problem:
        mend = "give the JSON of `transom answer --json`, or an answer's id"
        raise Unreadable(f"{name}: this is no answer: {problem}; {mend}") from None
    schema = document.get("schema") if isinstance(document, dict) else None
    if schema == "answers/1":
        return parse_shape(SentAnswers, document).answers
    if schema == "answer/1":
        return (parse_shape(SentAnswer, document),)
    raise Unreadable(f"{name}: its schema is {schema!r}; give an answers/1 or answer/1 document, or an answer's id")
