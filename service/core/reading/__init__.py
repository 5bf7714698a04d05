"""Free text and mail -> boat forms with evidence for every value."""

from __future__ import annotations

from service.core.reading.letter import Attachment, Letter
from service.core.reading.shape import Doubt, Enclosed, Evidence, Missing, Reading

__all__ = ["Attachment", "Doubt", "Enclosed", "Evidence", "Letter", "Missing", "Reading"]
