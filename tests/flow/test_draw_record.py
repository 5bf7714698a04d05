"""A record drawn and checked where it says it sits; a record without a place, and one that no catalogue makes."""

from __future__ import annotations

from service.core.record import RecordedPlacement
from service.flow.draw_record import check_record, draw_record
from service.store.unit import Store


def test_a_record_is_set_where_it_says_else_where_the_rules_would(seeded: Store) -> None:
    with seeded.reading() as uow:
        records = uow.records.all()
    whole = next(r for r in records if None not in r.placement.model_dump().values())
    found = check_record(seeded.reading(), whole)
    assert found.recorded
    assert found.fit is not None
    assert found.fit.placement is not None
    said = whole.placement.model_dump()
    assert {name: value for name, value in found.fit.placement.model_dump().items() if name in said} == said
    bare = whole.model_copy(update={"placement": RecordedPlacement(offset_mm=0)})
    other = check_record(seeded.reading(), bare)
    assert not other.recorded
    assert other.fit is not None
    assert "where the rules would set it" in (draw_record(seeded.reading(), bare, "Argo") or "")
    lifted = whole.placement.model_copy(update={"shaft_bottom_mm": 3000.0})
    assert check_record(
        seeded.reading(), whole.model_copy(update={"placement": lifted})
    ).fails  # the blade is in the air


def test_what_no_catalogue_makes_is_told_and_not_drawn(seeded: Store) -> None:
    with seeded.reading() as uow:
        record = uow.records.all()[0]
    odd = record.model_copy(update={"configuration": record.configuration.model_copy(update={"shaft": "shaft-none"})})
    found = check_record(seeded.reading(), odd)
    assert found.fit is None
    assert "shaft-none" in found.why
    assert draw_record(seeded.reading(), odd, "Argo") is None
