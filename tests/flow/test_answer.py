"""A mail in, an answer out and kept: on a database made from nothing and loaded with the demo maker's files."""

from __future__ import annotations

import json
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest
import sqlalchemy as sa

from service.core.answer import Answer, Answers
from service.core.form import FormError
from service.files.read.errors import Unreadable
from service.flow.answer import answer_file
from service.flow.known import NoCatalogueError
from service.store.schema import metadata
from service.store.unit import Store

NOW = datetime(2026, 1, 20, 12, 0, tzinfo=UTC)


def answered(store: Store, file: Path, **more: Any) -> Answers:  # noqa: ANN401 - handed on
    return answer_file(store, file.read_bytes(), file.name, now=NOW, **more)


def rows(store: Store, table: str) -> int:
    with store._engine.connect() as connection:
        return connection.execute(sa.select(sa.func.count()).select_from(metadata.tables[table])).scalar_one()


def bare(answers: Answers) -> list[dict[str, Any]]:
    """Return the answers' JSON without the ids they were kept under."""
    found = [json.loads(one.model_dump_json(by_alias=True)) for one in answers.answers]
    return [{key: item for key, item in one.items() if key not in ("id", "enquiry")} for one in found]


@pytest.fixture
def demo(seeded: Store, mails: Path) -> Answer:
    return answered(seeded, mails / "demo.eml").answers[0]


# --- the mail that ships with the project -----------------------------------------------------------------


def test_the_demo_mail_is_read_as_its_writer_meant(demo: Answer) -> None:
    form = demo.form
    assert (form.boat.model, form.boat.year, form.boat.loa_mm, form.boat.displacement_kg) == (
        "Tarnholt 36",
        1991,
        10_980,
        7100,
    )
    assert (form.transom.top_height_mm, form.transom.rake_deg, form.transom.width_top_mm) == (985, -23, 1720)
    assert form.main_rudder.hung == "inboard"
    assert form.contact.name == "Imogen Rathwick"
    ladder = next(o for o in form.obstacles if o.kind == "ladder")
    assert (ladder.side, ladder.moves, ladder.keep) == ("port", "folds", True)


def test_the_demo_boat_is_known_and_her_sisters_are_brought_up(demo: Answer) -> None:
    assert demo.hull is not None
    assert demo.hull.status == "matched"
    assert demo.hull.model is not None
    assert demo.hull.model.model == "Tarnholt 36"
    assert any(p.sister for p in demo.precedents)
    assert len({p.record for p in demo.precedents}) == len(demo.precedents)


def test_the_demo_boat_gets_ranked_suggestions_with_fits(demo: Answer) -> None:
    assert [s.rank for s in demo.suggestions] == list(range(1, len(demo.suggestions) + 1))
    order = {"fits": 0, "tight": 1, "undecided": 2, "does_not_fit": 3}
    verdicts = [order[s.fit.verdict] for s in demo.suggestions]
    assert verdicts == sorted(verdicts)
    assert demo.fits
    best = demo.suggestions[0].fit
    assert best.placement is not None
    assert best.probability is not None
    assert 0 < best.probability <= 1
    assert sum(s.probability or 0 for s in demo.suggestions) <= 1 + 1e-9
    assert all(s.fit.configuration == s.configuration for s in demo.suggestions)
    assert sum(d.share for d in best.doubt) == pytest.approx(1, abs=0.02)


def test_a_suggestion_that_passes_passes_every_check_that_binds(demo: Answer) -> None:
    for one in demo.suggestions:
        if one.fit.verdict in ("fits", "tight"):
            assert all(c.status == "pass" for c in one.fit.checks if c.binds)


def test_what_the_demo_mail_lacks_is_filled_and_said(demo: Answer) -> None:
    filled = {f.field for f in demo.suggestions[0].fit.filled}
    assert {"transom.bottom_height_mm", "main_rudder.trailing_edge_aft_mm", "transom.thickness_mm"} <= filled
    assert not filled & {"transom.top_height_mm", "transom.rake_deg", "boat.displacement_kg"}
    assert {m.field for m in demo.missing} >= {"transom.bottom_height_mm", "main_rudder.trailing_edge_aft_mm"}
    settles = [m.settles for m in demo.missing if m.settles is not None]
    assert settles == sorted(settles, reverse=True)
    assert 1 <= len(demo.questions) <= 3


def test_cautions_defer_to_builder_and_surveyor(demo: Answer) -> None:
    assert any("Confirm every measurement" in c for c in demo.cautions)
    assert any("surveyor" in c for c in demo.cautions)


def test_provenance(demo: Answer) -> None:
    assert (demo.provenance.catalogue, demo.provenance.records, demo.provenance.seed) == ("demo-1", 600, 1)
    assert demo.provenance.software.startswith("transom-ledger ")


# --- kept, or not -----------------------------------------------------------------------------------------


def test_the_answer_kept_is_the_answer_returned_byte_for_byte(seeded: Store, mails: Path) -> None:
    answers = answered(seeded, mails / "two-boats.eml").answers
    with seeded.reading() as uow:
        for one in answers:
            assert one.id is not None
            assert one.enquiry is not None
            assert uow.answers.get(one.id) == one.model_dump_json(by_alias=True)
            assert uow.answers.of(one.enquiry) == (one.id,)
            kept = uow.enquiries.get(one.enquiry)
            assert kept is not None
            assert kept.form == one.form
            assert kept.hull == (one.hull.model.id if one.hull and one.hull.model else None)
            assert Answer.model_validate_json(uow.answers.get(one.id) or "") == one


def test_nothing_is_written_where_nothing_is_to_be_kept(seeded: Store, mails: Path) -> None:
    got = answered(seeded, mails / "one-liner.eml", keep=False)
    assert [(one.id, one.enquiry) for one in got.answers] == [(None, None)]
    assert rows(seeded, "enquiries") == rows(seeded, "answers") == 0
    kept = answered(seeded, mails / "one-liner.eml")
    assert rows(seeded, "enquiries") == rows(seeded, "answers") == 1
    assert bare(kept) == bare(got)


def test_an_enquiry_read_again_keeps_its_id_and_both_answers(seeded: Store, mails: Path) -> None:
    first = answered(seeded, mails / "one-liner.eml").answers[0]
    second = answered(seeded, mails / "one-liner.eml").answers[0]
    assert first.enquiry == second.enquiry
    assert first.id != second.id
    assert first.enquiry is not None
    with seeded.reading() as uow:
        assert uow.answers.of(first.enquiry) == (first.id, second.id)


def test_the_same_input_and_seed_give_the_same_answer(copies: Callable[[], Store], mails: Path) -> None:
    one, other = (bare(answered(copies(), mails / "demo.eml")) for _ in range(2))
    assert one == other
    third = bare(answered(copies(), mails / "demo.eml", seed=2))
    assert third[0]["provenance"]["seed"] == 2
    assert third != one
    best, again = one[0]["suggestions"][0]["fit"], third[0]["suggestions"][0]["fit"]
    assert best["placement"] == again["placement"]  # the nominal boat does not hang on the seed
    assert best["probability"] == pytest.approx(again["probability"], abs=0.06)  # four standard errors of 1000 draws


# --- every sort of mail -----------------------------------------------------------------------------------


def test_a_spares_order_gets_no_answer(seeded: Store, mails: Path) -> None:
    got = answered(seeded, mails / "spares-order.eml")
    assert (got.is_enquiry, got.kind, got.answers) == (False, "spares", ())
    assert rows(seeded, "enquiries") == 0


def test_two_boats_get_two_answers(seeded: Store, mails: Path) -> None:
    got = answered(seeded, mails / "two-boats.eml").answers
    assert [one.form.boat.model for one in got] == ["Selmarrow 31", "Tressick 36 Cutter"]
    assert [one.form.transom.rake_deg for one in got] == [28, -19]
    assert not any(o.present is not False for o in got[0].form.obstacles)  # "no ladder"
    (ladder,) = (o for o in got[1].form.obstacles if o.kind == "ladder")
    assert (ladder.side, ladder.starboard_mm, ladder.removable) == ("starboard", (300, 650), True)
    assert all(one.suggestions for one in got)
    assert len({one.id for one in got}) == 2


EARLIER = b"""From: Aoife Drumquin <aoife@example.org>
To: Enquiries <enquiries@example.com>
Subject: Selmarrow 31 Mk II
Message-ID: <cork-12a@example.net>
Date: Wed, 01 Apr 2026 21:44:00 +0100
Content-Type: text/plain; charset="utf-8"

Hi,

could you tell me what fits a Selmarrow 31 Mk II from 1984? She weighs about 4.9 tonnes.
The top of the transom is 89 cm above the water. The transom is reverse, 18 degrees, the top further forward than the
bottom. It is 1.76 m wide at the top. The skin is 22 mm thick, solid GRP.
"""

FOLLOW_UP = b"""From: Aoife Drumquin <aoife@example.org>
To: Enquiries <enquiries@example.com>
Subject: Re: Selmarrow 31 Mk II
Message-ID: <cork-12c@example.net>
In-Reply-To: <cork-12a@example.net>
References: <cork-12a@example.net>
Date: Fri, 03 Apr 2026 09:00:00 +0100
Content-Type: text/plain; charset="utf-8"

Sorry, I measured wrong yesterday. The top of the transom is 99 cm above the water.

Aoife
"""


def test_a_follow_up_fills_its_gaps_from_the_earlier_mail(seeded: Store) -> None:
    first = answer_file(seeded, EARLIER, "a.eml", now=NOW).answers[0]
    assert first.form.transom.top_height_mm == 890
    second = answer_file(seeded, FOLLOW_UP, "b.eml", now=NOW).answers[0]
    assert second.form.transom.top_height_mm == 990  # what is newer goes before
    assert (second.form.transom.rake_deg, second.form.transom.width_top_mm) == (-18, 1760)
    assert second.form.boat.model == first.form.boat.model
    assert (first.hull and first.hull.model) == (second.hull and second.hull.model)
    with seeded.reading() as uow:
        before = uow.enquiries.get(first.enquiry or "")
        assert before is not None
        assert before.form.transom.top_height_mm == 890  # the earlier enquiry stays as it came


def test_a_follow_up_to_nothing_stands_alone(seeded: Store) -> None:
    alone = answer_file(seeded, FOLLOW_UP, "b.eml", now=NOW)
    assert all(one.form.transom.rake_deg is None for one in alone.answers)


@pytest.mark.parametrize(
    "name", ["scoop", "open-stern", "double-ender", "transom-hung", "french", "german", "html-table-inches"]
)
def test_every_sort_of_stern_is_answered(name: str, seeded: Store, mails: Path) -> None:
    (one,) = answered(seeded, mails / f"{name}.eml", keep=False).answers
    assert one.suggestions
    assert one.hull is not None
    for suggestion in one.suggestions:
        assert suggestion.fit.probability is not None
        assert all(c.margin is not None or c.status == "unknown" for c in suggestion.fit.checks)
    assert "NaN" not in one.model_dump_json()
    assert "Infinity" not in one.model_dump_json()


def test_a_boat_form_is_answered_as_a_mail_is(seeded: Store) -> None:
    form = {"boat": {"model": "Tarnholt 36", "year": 1991}, "transom": {"top_height_mm": 985, "rake_deg": -23}}
    (one,) = answer_file(seeded, json.dumps(form).encode(), "form.json", now=NOW).answers
    assert one.form.transom.top_height_mm == 985
    assert one.suggestions
    with seeded.reading() as uow:
        kept = uow.enquiries.get(one.enquiry or "")
    assert kept is not None
    assert (kept.received, kept.message_id) == (NOW, None)


def test_a_form_that_says_nothing_is_answered_all_the_same(seeded: Store) -> None:
    (one,) = answer_file(seeded, b'{"schema": "boat-form/1"}', "form.json", now=NOW, keep=False).answers
    assert one.hull is None
    assert one.questions
    assert one.suggestions


# --- what cannot be answered ------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("data", "name", "error"),
    [
        (b"", "empty.eml", Unreadable),
        (b"\x89PNG\r\n\x1a\n" + b"\0" * 500, "photo.eml", Unreadable),
        (b'{"transom": {"top_heigth_mm": 900}}', "form.json", FormError),
        (b'{"transom": {"top_height_mm": -900}}', "form.json", FormError),
        (b'{"transom": {"rake_deg": 95}}', "form.json", FormError),
    ],
)
def test_bad_input_is_named_and_writes_nothing(data: bytes, name: str, error: type[Exception], seeded: Store) -> None:
    with pytest.raises(error):
        answer_file(seeded, data, name, now=NOW)
    assert rows(seeded, "enquiries") == rows(seeded, "answers") == 0


def test_without_a_catalogue_the_way_to_load_one_is_told(store: Store, mails: Path) -> None:
    with pytest.raises(NoCatalogueError, match="transom catalogue load"):
        answered(store, mails / "demo.eml")
    assert rows(store, "enquiries") == 0
