"""Suggestions with their fits, what is missing, and cautions, as one frozen value; and the reply made from it."""

from service.core.answer.letter import Draft, as_text
from service.core.answer.shapes import Answer, Answers, Contrast, Missing, Provenance, Suggestion

__all__ = [
    "Answer",
    "Answers",
    "Contrast",
    "Draft",
    "Missing",
    "Provenance",
    "Suggestion",
    "as_text",
]
