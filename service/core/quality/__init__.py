"""What is likely wrong with the fleet's records, each finding with its grounds and a proposed mend."""

from service.core.quality.shapes import Finding, Kind, Quality
from service.core.quality.survey import survey

__all__ = ["Finding", "Kind", "Quality", "survey"]
