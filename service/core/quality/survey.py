"""The whole fleet looked through."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence

from service.core.answer.recheck import Rechecked
from service.core.catalogue import Method
from service.core.measurement import Measurement
from service.core.quality.duplicates import duplicates
from service.core.quality.gaps import disagreeing, missing
from service.core.quality.impossible import impossible
from service.core.quality.outliers import outliers
from service.core.quality.shapes import KINDS, Finding, Quality
from service.core.record import HullModel, Record

_WORDS = {"fails": "fails its own fit", "cannot_be_made": "cannot be made from the catalogue"}


def survey(
    records: Sequence[Record],
    hulls: Mapping[str, HullModel],
    *,
    methods: Mapping[str, Method],
    measured: Mapping[str, Sequence[Measurement]],
    rechecked: Sequence[Rechecked] = (),
    catalogue: str | None = None,
) -> Quality:
    """Return what is likely wrong with the records, worst kinds first, farthest out first.

    `rechecked` is how a catalogue judges them, `measured` what was measured by reference. A value that is impossible is
    not told once more as an outlier, nor does a record whose figures cannot be true fail its fit as well.
    """
    found = [one for record in records for one in impossible(record, hulls.get(record.hull or ""))]
    told = {(one.record, one.field) for one in found}
    found += [one for one in outliers(records, methods) if (one.record, one.field) not in told]
    found += duplicates(records)
    wrong = {one.record for one in found if one.kind in ("impossible", "outlier")}
    found += [_unfit(one) for one in rechecked if one.found in _WORDS and one.record not in wrong]
    for record in records:
        found += disagreeing(record, measured.get(record.reference, ()), methods)
        found += missing(record)
    found.sort(key=lambda one: (KINDS.index(one.kind), -one.grade, one.record, one.field or ""))
    unsound = {one.record for one in found if one.kind != "missing"}
    return Quality(
        records=len(records),
        sound=len(records) - len(unsound),
        catalogue=catalogue,
        counts={kind: count for kind in KINDS if (count := Counter(one.kind for one in found)[kind])},
        findings=tuple(found),
    )


def _unfit(one: Rechecked) -> Finding:
    return Finding(
        kind="fails_fit",
        record=one.record,
        value=str(one.configuration),
        expected="a configuration that passes on its own boat",
        why=f"{_WORDS[one.found]}: {one.why}",
        mend=f"see what was really installed (`records step {one.record} installed --as-installed FORM`) and measured",
        grade=-(one.margin or 0.0),
    )
