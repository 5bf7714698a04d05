"""What is not said and matters, and measurements that contradict each other."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence

from service.core.boat import get, title
from service.core.catalogue import Method
from service.core.measurement import RANK, Measurement, fields, of_field
from service.core.quality.shapes import Finding
from service.core.record import Record

NEEDED = ("boat.stern", "transom.top_height_mm", "transom.rake_deg", "boat.displacement_kg", "main_rudder.hung")
"""What seat, reach and shaft follow from on every boat; the weights of recall say the same."""
BY_STERN = {
    "scoop": ("transom.step_height_mm", "transom.step_depth_mm"),
    "double_ended": ("transom.post_width_mm",),
}
APART = 4.0
"""Two measurements contradict each other where they differ by more than so many of their joint standard uncertainty."""
_SURE = 1


def missing(record: Record) -> Iterator[Finding]:
    """Give one finding for a record that lacks what its gear was chosen by; withdrawn ones need nothing more."""
    if record.status == "withdrawn":
        return
    stern = record.form.boat.stern or ""
    hung = ("main_rudder.trailing_edge_aft_mm",) if record.form.main_rudder.hung == "transom" else ()
    wanted = (*NEEDED, *BY_STERN.get(stern, ()), *hung)
    lacking = [path for path in wanted if get(record.form, path) is None and not _told(record, path)]
    if lacking:
        yield Finding(
            kind="missing",
            record=record.reference,
            field=lacking[0],
            expected=", ".join(title(path) for path in lacking),
            why="brackets, shaft and seat follow from it; as a precedent the record is compared by less",
            mend=f"ask {record.dealer or 'who fitted it'}, then `records measure {record.reference} FORM`",
            grade=float(len(lacking)),
        )


def _told(record: Record, path: str) -> bool:
    return path == "transom.rake_deg" and record.form.transom.profile is not None


def disagreeing(record: Record, rows: Sequence[Measurement], methods: Mapping[str, Method]) -> Iterator[Finding]:
    """Give a finding for what was measured twice on one boat, both times on her or on paper, and does not agree."""
    for path in fields():
        sure = [row for row in of_field(rows, path) if RANK.get(row.method, len(RANK)) <= _SURE]
        if len(sure) < 2:  # noqa: PLR2004 - one thing is not contradicted
            continue
        stands = sure[0]
        worst = max(sure[1:], key=lambda row: _apart(stands, row, methods))
        apart = _apart(stands, worst, methods)
        if apart > APART:
            yield Finding(
                kind="disagreeing",
                record=record.reference,
                field=path,
                value=stands.value,
                expected=f"{worst.text} ({worst.method}, {worst.who}, {worst.taken or worst.at.date()})",
                why=f"{stands.text} stands ({stands.method}, {stands.who}); they differ by {apart:.1f} uncertainties",
                mend=f"measure it a third time, then `records measure {record.reference} FORM`",
                grade=round(apart, 2),
            )


def _apart(one: Measurement, other: Measurement, methods: Mapping[str, Method]) -> float:
    joint = math.hypot(_sd(one, methods), _sd(other, methods))
    return abs(one.value - other.value) / max(joint, 1e-9)


def _sd(row: Measurement, methods: Mapping[str, Method]) -> float:
    if row.uncertainty is not None:
        return row.uncertainty / 3**0.5
    method = methods.get(row.method or "unsaid")
    return float(getattr(method, row.field.rpartition("_")[2])) if method is not None else 0.0
