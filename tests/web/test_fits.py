"""The answer at the desk: worked out once, tried otherwise, asked for, sent, taken back and begun again."""

from __future__ import annotations

import email
import email.policy
import re
from itertools import count
from xml.etree import ElementTree as ET

import pytest

from service import bootstrap
from service.core.answer import Answer
from service.flow import known
from service.flow import working_answer as flow
from service.flow.answer import keep_answers, work_out
from service.flow.draw_fit import draw_fit
from service.flow.edit_enquiry import choose_hull
from service.flow.known import gather
from service.flow.offer_papers import offered
from service.flow.papers import papers
from service.flow.working_answer import kept_answer, working_answer
from service.store.enquiries import Enquiry
from service.store.enquiry_steps import Step
from service.store.unit import Store
from service.web.fit_panel import Wanted, filled
from tests.support.hostile import TEXTS
from tests.support.offices import DEALER, Office, send
from tests.support.things import LETTER

NUMBERS = count(1)


def asked(store: Store) -> dict[str, str]:
    """Take the letter in once more, for the desk and for a dealer; return both enquiries and the desk's answer."""
    letter = LETTER.replace(b"letter-1", f"fits-{next(NUMBERS)}".encode())
    worked = work_out(store, letter, "letter.eml", now=bootstrap.clock())
    with store.writing() as uow:
        (ours,) = keep_answers(uow, worked).answers
        (theirs,) = keep_answers(uow, worked, owner=DEALER).answers
        uow.commit()
    return {"enquiry": str(ours.enquiry), "answer": str(ours.id), "theirs": str(theirs.enquiry)}


@pytest.fixture
def things(here: Office) -> dict[str, str]:
    """Return things of its own for each test."""
    return asked(here.store)


def enquiry_of(store: Store, name: str) -> Enquiry:
    with store.reading() as uow:
        found = uow.enquiries.get(name)
    assert found is not None
    return found


def steps_of(store: Store, name: str) -> tuple[Step, ...]:
    with store.reading() as uow:
        return uow.steps.of(name)


def at_of(things: dict[str, str]) -> str:
    return f"/desk/enquiries/{things['enquiry']}"


def field(text: str, name: str) -> str:
    found = re.search(rf'name="{re.escape(name)}"[^>]*value="([^"]*)"', text)
    assert found, name
    return found[1]


def test_the_answer_is_worked_out_once_and_kept_without_who_asked(
    here: Office, things: dict[str, str], monkeypatch: pytest.MonkeyPatch
) -> None:
    client, enquiry = here.client(), enquiry_of(here.store, things["enquiry"])
    with here.store.reading() as uow:
        assert kept_answer(uow, enquiry) is None
    first = client.get(f"{at_of(things)}")
    assert 'hx-trigger="load"' in first.text  # the page of an enquiry waits for nothing
    assert f'<a href="{at_of(things)}/fits">' in first.text
    assert "What fits her" in client.get(f"{at_of(things)}/fits").text
    with here.store.reading() as uow:
        draft = uow.steps.draft(enquiry.id)
        answer = kept_answer(uow, enquiry)
    assert draft is not None
    assert "mara.lindqvist" not in draft.document
    assert answer is not None
    assert answer.form.contact.email == "mara.lindqvist@example.org"

    def never(*_: object, **__: object) -> Answer:
        raise AssertionError("worked out once more")

    monkeypatch.setattr(flow, "compose", never)
    assert '/fits" hx-trigger="load"' in client.get(at_of(things)).text  # the page of the enquiry has it come after it


def test_a_kept_answer_is_shown_without_loading_the_fleet(
    here: Office, things: dict[str, str], monkeypatch: pytest.MonkeyPatch
) -> None:
    enquiry = enquiry_of(here.store, things["enquiry"])
    working_answer(here.store, enquiry)

    def never(_: object) -> object:
        raise AssertionError("the fleet was loaded")

    monkeypatch.setattr(known, "_built", never)
    fresh = bootstrap.open_store(bootstrap.settings(here.url))  # a process that has shown nothing yet
    with fresh.reading() as uow:
        answer = kept_answer(uow, enquiry)
        assert answer is not None
        shown = filled(uow, enquiry, answer, Wanted())
    fresh.close()
    assert shown.outcome is not None
    assert shown.outcome.views is not None


def test_it_is_worked_out_anew_once_the_form_or_the_fleet_is_another(here: Office, things: dict[str, str]) -> None:
    enquiry = enquiry_of(here.store, things["enquiry"])
    working_answer(here.store, enquiry)
    with here.store.writing() as uow:
        uow.hulls.add_alias("Tarnholt Three Six", "tarnholt-36", who="tests", why="")
        uow.commit()
    with here.store.reading() as uow:
        assert kept_answer(uow, enquiry) is None
    working_answer(here.store, enquiry)
    choose_hull(here.store.writing(), enquiry, "tarnholt-33", who="tests", expect=enquiry.version)
    chosen = enquiry_of(here.store, enquiry.id)
    with here.store.reading() as uow:
        assert kept_answer(uow, chosen) is None
    answer = working_answer(here.store, chosen)
    assert answer.hull is not None
    assert answer.hull.model is not None
    assert answer.hull.model.id == "tarnholt-33"  # a person's choice stands, whatever her name says


def test_suggestions_stand_side_by_side(here: Office, things: dict[str, str]) -> None:
    text = here.client().get(f"{at_of(things)}/fits").text
    answer = working_answer(here.store, enquiry_of(here.store, things["enquiry"]))
    assert 1 < len(answer.suggestions) <= 5
    for one in answer.suggestions:
        assert f"<h3>{one.configuration}</h3>" in text
        assert here.client().get(f"{at_of(things)}/fits/{one.rank}/stern.svg").status_code == 200
    best = answer.suggestions[0]
    for name in best.precedents[:4]:
        assert f'<a href="/desk/fleet/{name}">' in text
    for check in best.fit.checks:
        assert (
            check.source.replace("&", "&amp;").replace("'", "&#39;").replace("<", "&lt;").replace(">", "&gt;") in text
        )
    second = here.client().get(f"{at_of(things)}/fits?look=2").text
    assert f"On the bench: {answer.suggestions[1].configuration}" in second


def test_a_measurement_is_tried_and_nothing_is_kept(here: Office, things: dict[str, str]) -> None:
    client, before = here.client(), enquiry_of(here.store, things["enquiry"])
    tried = send(client, f"{at_of(things)}/fits", f"{at_of(things)}/try", look="1", **{"v.transom.rake_deg": "-30"})
    assert tried.status_code == 200
    assert "Margin before" in tried.text
    assert 'data-kind="tried"' in tried.text
    assert enquiry_of(here.store, before.id) == before
    kept = send(
        client,
        f"{at_of(things)}/fits",
        f"{at_of(things)}/keep",
        version=str(before.version),
        **{"v.transom.rake_deg": "-30°"},
    )
    assert kept.status_code == 303
    after = enquiry_of(here.store, before.id)
    assert after.form.transom.rake_deg == -30
    shown = re.findall(r"shaft (\d+)\u202fmm aft", tried.text.split('class="result"')[1])
    answer = working_answer(here.store, after)
    same = next(s for s in answer.suggestions if str(s.configuration) in tried.text.split("On the bench: ")[1][:80])
    assert same.fit.placement is not None
    assert abs(same.fit.placement.shaft_aft_mm - float(shown[0])) <= 0.5  # as the answer to that form has it


@pytest.mark.parametrize("value", ["a lot", "91", "nan", "12 kg"])
def test_a_value_that_cannot_be_comes_back_with_what_is_wrong(here: Office, things: dict[str, str], value: str) -> None:
    response = send(
        here.client(), f"{at_of(things)}/fits", f"{at_of(things)}/try", look="1", **{"v.transom.rake_deg": value}
    )
    assert response.status_code == 422
    assert response.headers["hx-retarget"] == "#fits"
    assert field(response.text, "v.transom.rake_deg") == value
    assert 'aria-invalid="true"' in response.text


def test_a_place_that_is_none_is_refused(here: Office, things: dict[str, str]) -> None:
    for bad in ("far", "inf", "nan", "1e9"):
        page = f"{at_of(things)}/fits"
        response = send(here.client(), page, f"{at_of(things)}/place", look="1", offset_mm=bad)
        assert response.status_code == 422, bad


def test_the_shaft_is_put_where_somebody_wants_it(here: Office, things: dict[str, str]) -> None:
    client = here.client()
    text = client.get(f"{at_of(things)}/fits").text
    said = {
        name: field(text, name) for name in ("lower_height_mm", "upper_height_mm", "shaft_bottom_mm", "shaft_aft_mm")
    }
    there = send(client, f"{at_of(things)}/fits", f"{at_of(things)}/place", look="1", offset_mm="-900", **said)
    assert there.status_code == 200
    assert "900\u202fmm to port" in there.text
    assert "Fails there" in there.text
    assert "Back to the best place" in there.text


def test_questions_and_answers_go_out_are_taken_back_and_begun_again_from(everywhere: Office) -> None:
    things = asked(everywhere.store)
    client, at, name = everywhere.client(), at_of(things), things["enquiry"]
    text = client.get(f"{at}/fits?ask=transom.thickness_mm&language=de").text
    assert "Guten Tag" in text or "Liebe" in text or "Hallo" in text
    said = {"version": "0", "language": "de", "subject": "Fragen", "text": "Wie dick ist die Haut?\n\nGruß"}
    assert send(client, f"{at}/fits", f"{at}/ask", **said).status_code == 303
    (step,) = steps_of(everywhere.store, name)
    assert (step.did, step.who, step.said) == ("asked", "Ada Holm", "Fragen\n\nWie dick ist die Haut?\n\nGruß")
    assert enquiry_of(everywhere.store, name).waits == "them"
    assert send(client, f"{at}/fits", f"{at}/letters/1/undo").status_code == 303
    assert enquiry_of(everywhere.store, name).waits == "us"
    assert send(client, f"{at}/fits", f"{at}/letters/1/undo").status_code == 422  # once
    frozen_and_begun_again(everywhere, asked(everywhere.store))


def frozen_and_begun_again(everywhere: Office, things: dict[str, str]) -> None:
    client, at, name = everywhere.client(), at_of(things), things["enquiry"]
    text = client.get(f"{at}/fits").text
    fleet = field(text, "fleet")
    said = {
        "version": "0",
        "fleet": fleet,
        "language": "en",
        "subject": "Your gear",
        "text": f"Dear Mara,\n\n{TEXTS[0]}",
    }
    sent = send(client, f"{at}/fits", f"{at}/send", **said)
    assert sent.status_code == 303
    where = sent.headers["location"]
    (step,) = steps_of(everywhere.store, name)
    assert (step.did, step.said) == ("sent", f"Your gear\n\nDear Mara,\n\n{TEXTS[0]}")
    with everywhere.store.reading() as uow:
        document, mark = uow.answers.get(str(step.answer)), uow.answers.hash_of(str(step.answer))
    assert document is not None
    frozen = Answer.model_validate_json(document)
    assert (frozen.id, frozen.enquiry) == (step.answer, name)
    shown = client.get(where).text
    assert str(mark)[:12] in shown
    assert "&lt;script&gt;window.hurt=1" in shown
    late = send(client, f"{at}/fits", f"{at}/send", **said)
    assert late.status_code == 409  # the enquiry has moved on; the letter is still there
    assert "Dear Mara," in late.text
    keep = {"v.transom.rake_deg": "-20", "version": str(enquiry_of(everywhere.store, name).version)}
    assert send(client, f"{at}/fits", f"{at}/keep", **keep).status_code == 303
    assert send(client, f"{at}/fits", f"{where}/copy").status_code == 303
    again = enquiry_of(everywhere.store, name)
    assert (again.form.transom.rake_deg, again.waits) == (frozen.form.transom.rake_deg, "us")
    assert again.form.contact == frozen.form.contact
    assert client.get(where).status_code == 200
    with everywhere.store.reading() as uow:
        assert uow.answers.get(str(step.answer)) == document


def test_a_frozen_answer_that_did_not_go_out_stays_as_it_is(here: Office, things: dict[str, str]) -> None:
    client, at = here.client(), at_of(things)
    fleet = field(client.get(f"{at}/fits").text, "fleet")
    said = {"version": "0", "fleet": fleet, "language": "en", "subject": "Your gear", "text": "Dear Mara"}
    where = send(client, f"{at}/fits", f"{at}/send", **said).headers["location"]
    assert send(client, where, f"{at}/letters/1/undo").status_code == 303
    assert "it did not go out" in client.get(where).text
    assert enquiry_of(here.store, things["enquiry"]).waits == "us"


def test_an_empty_letter_is_refused(here: Office, things: dict[str, str]) -> None:
    for to in ("ask", "send", "reply.eml"):
        said = {"version": "0", "language": "en", "subject": "Your gear", "text": "  "}
        assert send(here.client(), f"{at_of(things)}/fits", f"{at_of(things)}/{to}", **said).status_code == 422


def test_the_mail_holds_the_words_as_they_were_changed(here: Office, things: dict[str, str]) -> None:
    """Read back with the standard library's own parser."""
    said = {"language": "sv", "subject": "Ditt\u00a0roder", "text": "Hej!\n\n- ett\n- två <b>\n\nHälsningar"}
    response = send(here.client(), f"{at_of(things)}/fits", f"{at_of(things)}/reply.eml", **said)
    assert "attachment" in response.headers["content-disposition"]
    mail = email.message_from_bytes(response.content, policy=email.policy.default)
    plain, html = mail.get_body(("plain",)), mail.get_body(("html",))
    assert plain is not None
    assert html is not None
    assert plain.get_content().replace("\r\n", "\n").strip() == said["text"]
    assert "två &lt;b&gt;" in html.get_content()
    assert mail["To"] == "Mara Lindqvist <mara.lindqvist@example.org>"
    assert re.fullmatch(r"<fits-\d+@example.org>", mail["In-Reply-To"])
    assert mail["Subject"] == "Re: Steering gear for our Tarnholt 36"


def test_what_is_offered_is_what_can_be_made(here: Office, things: dict[str, str]) -> None:
    answer = working_answer(here.store, enquiry_of(here.store, things["enquiry"]))
    last = answer.model_copy(update={"suggestions": answer.suggestions[-1:]})
    best = answer.suggestions[0]
    refused = best.fit.model_copy(update={"verdict": "does_not_fit"})
    none = answer.model_copy(update={"suggestions": (best.model_copy(update={"fit": refused}),)})
    nowhere = best.fit.model_copy(update={"placement": None, "pads": ()})
    bare = answer.model_copy(update={"suggestions": ()})
    for one in (
        answer,
        last,
        none,
        answer.model_copy(update={"suggestions": (best.model_copy(update={"fit": nowhere}),)}),
        bare,
    ):
        with here.store.reading() as uow:
            able = {paper.name for paper in papers(uow, one)}
        assert {name for name, _ in offered(one)} == {name for name in able if not name.startswith("reply.")}


def test_a_drawing_within_a_page_has_no_style_and_keeps_texts_as_texts(here: Office, things: dict[str, str]) -> None:
    answer = working_answer(here.store, enquiry_of(here.store, things["enquiry"]))
    thing = answer.form.obstacles[0].model_copy(update={"kind": "other", "note": 'class="hull" <b class="hull">'})
    form = answer.form.model_copy(update={"obstacles": (thing,)})
    with here.store.reading() as uow:
        views = draw_fit(form, answer.suggestions[0].fit, gather(uow).catalogue)
    assert views is not None
    for view in (views.stern, views.side):
        tree = ET.fromstring(view.svg)  # noqa: S314 - what was drawn here
        tags = {one.tag.rpartition("}")[2] for one in tree.iter()}
        assert not tags & {"style", "script", "foreignObject", "b"}
        assert not any(
            name in ("style", "class") or name.startswith("on") for one in tree.iter() for name in one.attrib
        )
        outlines = [one for one in tree.iter() if one.tag.endswith(("polygon", "polyline", "path"))]
        assert all(one.get("stroke") or one.get("fill") for one in outlines)
    told = [one.text or "" for one in ET.fromstring(views.stern.svg).iter()]  # noqa: S314 - the same
    assert 'class="hull" <b class="hull">' in " ".join(told)


def test_a_dealers_people_answer_their_own(here: Office, things: dict[str, str]) -> None:
    client, at = here.client("dealer"), f"/desk/enquiries/{things['theirs']}"
    assert "What fits her" in client.get(f"{at}/fits").text
    assert client.get(f"{at}/papers/stern.svg").headers["content-disposition"].startswith("attachment")
    assert client.get(f"{at}/answers/{things['answer']}").status_code == 404  # that one answers another enquiry
    assert client.get(f"{at_of(things)}/fits").status_code == 404
    assert client.get(f"{at}/papers/nothing.pdf").status_code == 404
