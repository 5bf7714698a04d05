"""Enquiries at the desk: taken in, listed, edited, taken back, and what two people do to one at once."""

from __future__ import annotations

import html
import json
import re
from collections.abc import Iterator
from datetime import UTC, datetime
from io import BytesIO
from itertools import count
from pathlib import Path
from typing import Any

import pytest
import xlsxwriter
from fastapi.testclient import TestClient

from service.core.boat import BoatForm
from service.core.form import FormError, parse_form
from service.core.form_changes import brought_together, form_changes
from service.flow.edit_enquiry import EnquiryMoved, choose_hull, close_enquiry, edit_enquiry, undo_step
from service.flow.refusal import Refused
from service.flow.show_enquiry import show_enquiry
from service.flow.waiting_enquiries import waiting_enquiries
from service.store.enquiries import Enquiry
from service.store.unit import Store
from service.web.boat_fields import groups, row_specs, texts
from service.web.boat_sent import read_fields
from tests.support.offices import DEALER, Office, send
from tests.support.seeding import FIXTURES

AT = "/desk/enquiries"
MAILS = FIXTURES / "enquiries"
T0 = datetime(2026, 3, 1, 9, 0, tzinfo=UTC)
# Exact since 1959 (international yard and pound agreement): 1 ft = 304.8 mm, 1 in = 25.4 mm.
FOOT, INCH = 304.8, 25.4


def mail(name: str) -> str:
    return (MAILS / f"{name}.eml").read_text()


def taken(client: TestClient, text: str = "", files: dict[str, tuple[str, bytes]] | None = None, **more: str) -> str:
    """Take something in and return its enquiry's address."""
    response = send(client, AT, AT, files=files, text=text, **more)
    assert response.status_code == 303, response.text[:3000]
    return str(response.headers["location"])


def fields(text: str) -> dict[str, str]:
    """Return what the boat form of a page would send, by its inputs and selects."""
    form = text.partition('id="boat-form"')[2].partition("</form>")[0]
    found: dict[str, str] = {}
    for name, value in re.findall(r'<input[^>]*? name="([^"]+)"(?:[^>]*? value="([^"]*)")?', form):
        found.setdefault(name, html.unescape(value))
    for name, inner in re.findall(r'<select[^>]*? name="([^"]+)"[^>]*>(.*?)</select>', form, re.DOTALL):
        chosen = re.search(r'value="([^"]*)" selected', inner)
        found[name] = html.unescape(chosen[1]) if chosen else ""
    kept = {
        name: value for name, value in found.items() if not name.endswith(".gone") and not name.startswith("choose.")
    }
    return {name: value for name, value in kept.items() if name not in ("csrf", "preferences.avoid")}


def save(client: TestClient, at: str, said: dict[str, str]) -> Any:  # noqa: ANN401 - a response
    return send(client, at, f"{at}/form", **said)


@pytest.fixture
def demo(here: Office) -> str:
    """Return the address of an enquiry of its own: the demo mail under another id."""
    number = next(_NUMBERS)
    return taken(here.client(), mail("demo").replace("demo-1@", f"demo-own-{number}@"))


_NUMBERS = count(1)


def test_a_pasted_mail_is_read_kept_and_shown_beside_its_form(here: Office) -> None:
    client = here.client()
    at = taken(client, mail("german"))
    text = client.get(at).text
    for mark in re.findall(r'<mark id="w(\d+)"', text):
        assert f'href="#w{mark}"' in text or "who-asks" in text
    assert len(re.findall(r"<mark ", text)) > 5
    listed = client.get(AT).text
    assert at in listed
    assert "not answered" in listed


def test_several_boats_in_one_mail_are_several_enquiries_that_know_of_each_other(here: Office) -> None:
    client = here.client()
    at = taken(client, mail("two-boats"))
    text = client.get(at).text
    assert "The same letter asks about" in text
    other = re.search(rf'asks about <a href="({AT}/[^"]+)"', text)
    assert other
    assert other[1] != at
    assert "Tressick" in client.get(other[1]).text
    assert taken(client, mail("two-boats")) == at  # the same again leads to what there is


@pytest.mark.parametrize("text", ["Do you fit a Tarnholt 36 from 1991? The transom is 985 mm high.", mail("one-liner")])
def test_what_came_before_leads_to_the_enquiry_there_is(here: Office, text: str) -> None:
    client = here.client()
    first = taken(client, text)
    assert taken(client, text) == first
    assert "This came before" in client.get(first).text


def test_a_reply_goes_on_from_the_enquiry_it_replies_to(here: Office) -> None:
    client = here.client()
    first = taken(client, mail("demo").replace("demo-1@", "thread-1@"))
    with here.store.writing() as uow:
        uow.steps.add(first.rpartition("/")[2], "asked", who="Ada Holm", said="How thick is the skin?", waits="them")
        uow.commit()
    assert "asked 1 question, no reply yet" in client.get(f"{AT}?waits=them").text
    head = "From: imogen@example.org\nSubject: Re: Self-steering for our Tarnholt 36\nDate: Sat, 24 Jan 2026 10:00:00 +0000\n"
    ids = (
        "Message-ID: <thread-2@example.net>\nIn-Reply-To: <thread-1@example.net>\nReferences: <thread-1@example.net>\n"
    )
    second = taken(client, f"{head}{ids}\nThe skin is 14 mm thick, through all of it.\n\nImogen Rathwick\n")
    assert second != first
    form = fields(client.get(second).text)
    assert (form["transom.thickness_mm"], form["transom.top_height_mm"]) == ("14", "985")  # the earlier letter's too
    assert f'<a href="{first}">an earlier enquiry</a>' in client.get(second).text
    assert f'<a href="{second}">a newer enquiry</a>' in client.get(first).text
    assert "they replied, not answered" in client.get(AT).text
    assert "it goes on in a newer one" in client.get(f"{AT}?waits=nobody").text


def test_what_asks_for_nothing_is_said_and_taken_only_when_told_so(here: Office) -> None:
    client = here.client()
    refused = send(client, AT, AT, files={"file": ("spares.eml", mail("spares-order").encode())})
    assert refused.status_code == 422
    assert "an order of parts" in refused.text
    assert "collar bushes" in refused.text
    raw = re.search(r'name="raw" value="([^"]+)"', refused.text)
    assert raw
    at = taken(client, "", anyway="1", raw=raw[1])
    text = client.get(at).text
    assert "Graham Pellingford" in text
    assert fields(text)["boat.model"] == ""


def test_what_cannot_be_read_comes_back_with_why_and_all_that_was_typed(here: Office) -> None:
    client = here.client()
    for said in ("", "   "):
        assert "it is empty" in send(client, AT, AT, text=said).text
    picture = send(client, AT, AT, text="Dear all", files={"file": ("a.png", b"\x89PNG\r\n\x1a\n" + bytes(99))})
    assert picture.status_code == 422
    assert "PNG picture" in picture.text
    assert "Dear all" in picture.text
    broken = send(client, AT, AT, text='{"boat": {"modell": "A"}}')
    assert broken.status_code == 422
    assert "did you mean" in html.unescape(broken.text)
    table = b"boat.model,transom.rake_deg,boat.year\nTarnholt 36,steep,1991\n"
    wrong = send(client, AT, AT, files={"file": ("form.csv", table)})
    assert wrong.status_code == 422
    assert "transom.rake_deg" in wrong.text


def workbook() -> bytes:
    out = BytesIO()
    with xlsxwriter.Workbook(out, {"in_memory": True}) as book:
        sheet = book.add_worksheet()
        for row, pair in enumerate(
            [("boat.model", "Tarnholt 36"), ("boat.year", "1992"), ("transom.rake_deg", "-22°")]
        ):
            sheet.write_row(row, 0, pair)
    return out.getvalue()


@pytest.mark.parametrize(
    ("name", "content"),
    [
        (
            "form.json",
            json.dumps({"boat": {"model": "Tarnholt 36", "year": 1992}, "transom": {"rake_deg": -22}}).encode(),
        ),
        ("form.csv", "boat.model;boat.year;transom.rake_deg\nTarnholt 36;1992;-22°\n".encode()),
        ("form.xlsx", workbook()),
    ],
)
def test_boat_forms_are_taken_in_as_files(here: Office, name: str, content: bytes) -> None:
    client = here.client()
    form = fields(client.get(taken(client, files={"file": (name, content)})).text)
    assert (form["boat.model"], form["boat.year"], form["transom.rake_deg"]) == ("Tarnholt 36", "1992", "-22")


def test_feet_and_inches_become_mm_and_stand_beside_what_was_typed(here: Office, demo: str) -> None:
    client = here.client()
    said = fields(client.get(demo).text)
    said |= {
        "transom.top_height_mm": "3 ft 2 1/2 in",
        "transom.thickness_mm": "1,3 cm",
        "methods.transom.top_height_mm": "laser",
    }
    assert save(client, demo, said).status_code == 303
    page = client.get(demo).text
    now = fields(page)
    assert float(now["transom.top_height_mm"]) == pytest.approx(3 * FOOT + 2.5 * INCH, abs=0.05)
    assert (now["transom.thickness_mm"], now["methods.transom.top_height_mm"]) == ("13", "laser")
    assert "written here as “3 ft 2 1/2 in”" in page
    assert re.search(r"height of the transom&#39;s top edge above the water: 985.mm → 977.9.mm", page)
    assert fields(page)["version"] == "2"  # as it came, then as edited
    assert save(client, demo, now).headers["location"].startswith(demo)
    assert fields(client.get(demo).text) == now  # nothing touched, nothing changed, however the text was rounded


def test_an_undo_brings_back_what_was_and_can_be_taken_back_itself(here: Office, demo: str) -> None:
    client = here.client()
    before = fields(client.get(demo).text)
    save(client, demo, before | {"transom.rake_deg": "17 deg", "boat.model": "Selmarrow 31"})
    page = client.get(demo).text
    undo = re.search(r'action="([^"]+/undo\?step=2)"', page)
    assert undo
    assert "<h1>Selmarrow 31" in page
    assert send(client, demo, undo[1]).status_code == 303
    page = client.get(demo).text
    assert fields(page) | {"version": "0"} == before
    assert "<h1>Tarnholt 36" in page
    again = re.search(r'action="([^"]+/undo\?step=3)"', page)
    assert again
    send(client, demo, again[1])
    assert fields(client.get(demo).text)["transom.rake_deg"] == "17"
    late = send(client, demo, undo[1])
    assert late.status_code == 422  # something was done since
    assert "cannot be taken back any more" in late.text


def test_faults_stand_beside_their_fields_and_nothing_typed_is_lost(here: Office, demo: str) -> None:
    client = here.client()
    said = fields(client.get(demo).text)
    said |= {
        "transom.rake_deg": "steepish", "transom.bottom_height_mm": "2 m", "obstacles[0].starboard_mm[0]": "300",
        "obstacles[1].height_mm[1]": "tall", "boat.name": "Plover's Errand",
    }  # fmt: skip
    response = save(client, demo, said)
    assert response.status_code == 422
    now = fields(response.text)
    assert {key: now[key] for key in said} == said
    for name in ("f-transom-rake_deg", "f-obstacles-1-height_mm-1"):
        assert f'id="{name}-said"' in response.text
        assert re.search(rf'id="{name}"[^>]*aria-invalid="true"', response.text)
    assert "write the smaller first" in response.text
    assert fields(client.get(demo).text)["boat.name"] == ""


def test_a_fault_of_a_whole_part_stands_at_its_head(here: Office, demo: str) -> None:
    client = here.client()
    response = save(client, demo, fields(client.get(demo).text) | {"transom.bottom_height_mm": "2 m"})
    assert response.status_code == 422
    assert "bottom_height_mm must be less than top_height_mm" in response.text


def test_what_two_people_changed_is_brought_together_or_chosen(here: Office, demo: str) -> None:
    ada, bo = here.client(), here.client("second")
    mine, theirs = fields(ada.get(demo).text), fields(bo.get(demo).text)
    save(bo, demo, theirs | {"transom.rake_deg": "-21", "boat.year": "1990", "transom.width_top_mm": "1,7 m"})
    clash = save(ada, demo, mine | {"transom.rake_deg": "-25", "boat.name": "Sprat", "transom.width_top_mm": "1 m 75"})
    assert clash.status_code == 409
    assert "Bo Lind changed this form meanwhile" in clash.text
    assert clash.text.count('name="choose.') == 4  # two fields, two values each
    again = fields(clash.text)
    assert (again["boat.year"], again["boat.name"], again["transom.rake_deg"]) == ("1990", "Sprat", "-25")
    assert again["transom.width_top_mm"] == "1 m 75"
    chosen = again | {"choose.transom.rake_deg": "theirs", "choose.transom.width_top_mm": "yours"}
    assert save(ada, demo, chosen).status_code == 303
    now = fields(ada.get(demo).text)
    kept = [now[name] for name in ("boat.year", "boat.name", "transom.rake_deg", "transom.width_top_mm")]
    assert kept == ["1990", "Sprat", "-21", "1750"]


def test_rows_are_added_and_taken_off_and_keep_how_they_were_got(here: Office, demo: str) -> None:
    client = here.client()
    said = fields(client.get(demo).text)
    many = int(said["rows.obstacles"]) - 1
    roomier = send(client, demo, f"{demo}/form", **said, more="obstacles")
    assert roomier.status_code == 200
    assert fields(roomier.text)["rows.obstacles"] == str(many + 2)
    new = f"obstacles[{many}]"
    said |= {"obstacles[0].gone": "1", f"{new}.kind": "davits", f"{new}.height_mm[0]": "4 ft", f"methods.{new}": "tape"}
    assert save(client, demo, said).status_code == 303
    now = fields(client.get(demo).text)
    kinds = [now[f"obstacles[{n}].kind"] for n in range(many)]
    assert "ladder" not in kinds
    assert kinds[-1] == "davits"
    assert float(now[f"obstacles[{many - 1}].height_mm[0]"]) == pytest.approx(4 * FOOT, abs=0.05)
    assert now[f"methods.obstacles[{many - 1}]"] == "tape"


def test_a_hull_model_is_chosen_with_reasons_and_taken_back(here: Office, demo: str) -> None:
    client = here.client()
    page = client.get(f"{demo}?hull=Selmarrow+31").text
    assert "Selmarrow 31" in page
    hull = re.search(r'name="hull" value="(selmarrow-31)"', page)
    assert hull
    assert re.search(r'class="(for|against)"', page)
    assert send(client, demo, f"{demo}/hull", hull=hull[1], version="0").status_code == 303
    page = client.get(demo).text
    assert "<h1>Selmarrow 31" in page
    assert "chosen by Ada Holm" in page
    assert fields(page)["boat.model"] == "Tarnholt 36"  # her owner's words stay
    stale = send(client, demo, f"{demo}/hull", hull="", version="0")
    assert stale.status_code == 409
    send(client, demo, f"{demo}/undo?step=2")
    assert "<h1>Tarnholt 36" in client.get(demo).text
    missing = send(client, demo, f"{demo}/hull", hull="no-such", version="3")
    assert missing.status_code == 409
    assert "no such hull model" in missing.text


def test_closing_notes_and_who_asks_stand_in_the_history(here: Office, demo: str) -> None:
    client = here.client()
    send(client, demo, f"{demo}/close")
    assert f'href="{demo}"' not in client.get(f"{AT}?waits=us").text
    assert demo in client.get(f"{AT}?waits=nobody").text
    send(client, demo, f"{demo}/undo?step=1")
    assert demo in client.get(f"{AT}?waits=us").text
    send(client, demo, f"{demo}/close")
    send(client, demo, f"{demo}/reopen")
    send(client, demo, f"{demo}/note", note="Rang her: <b>tape</b> is hers")
    page = client.get(demo).text
    assert "Rang her: &lt;b&gt;tape&lt;/b&gt; is hers" in page
    assert [said for said in ("closed it", "opened it again", "took that back", "noted") if said not in page] == []
    empty = send(client, demo, f"{demo}/note", note=" ")
    assert empty.status_code == 422
    wrong = send(client, demo, f"{demo}/asker", **{"contact.name": "I. Rathwick", "contact.role": "captain"})
    assert wrong.status_code == 422
    assert 'value="I. Rathwick"' in wrong.text
    send(client, demo, f"{demo}/asker", **{"contact.name": "I. Rathwick", "contact.email": "ir@example.org"})
    page = client.get(demo).text
    assert 'value="ir@example.org"' in page
    assert "imogen@example.org" not in page  # no history holds it


def test_an_earlier_state_is_brought_back(here: Office, demo: str) -> None:
    client = here.client()
    for angle in ("-20", "-21"):
        save(client, demo, fields(client.get(demo).text) | {"transom.rake_deg": angle})
    back = send(client, demo, f"{demo}/back", step="1", version="3")
    assert back.status_code == 303
    assert fields(client.get(demo).text)["transom.rake_deg"] == "-23"
    assert send(client, demo, f"{demo}/back", step="1", version="3").status_code == 422


def test_a_dealers_people_take_in_and_see_their_own(here: Office) -> None:
    cleo = here.client("dealer")
    at = taken(cleo, mail("french"))
    assert at in cleo.get(AT).text
    assert f'href="{at}"' not in here.client("other").get(f"{AT}?waits=all").text
    assert f"through {DEALER}" in here.client().get(AT).text
    assert here.client("other").get(at).status_code == 404
    mine = taken(here.client("other"), mail("french"))  # another's mail is not known to them
    assert mine != at


def test_every_measurement_with_a_picture_or_words_has_a_sheet(here: Office) -> None:
    client = here.client("fitter")
    first = client.get("/desk/help/transom.rake_deg").text
    assert "<svg" in first
    assert "style=" not in first
    sheets = set(re.findall(r'href="(/desk/help/[^"]+)"', first))
    assert len(sheets) > 15
    for sheet in sorted(sheets):
        assert client.get(sheet).status_code == 200
    assert client.get("/desk/help/boat.colour").status_code == 404


@pytest.mark.parametrize(
    ("sort", "text", "said", "wrong"),
    [
        ("mm", "4 ft 2 1/2 in", f"= {4 * FOOT + 2.5 * INCH:.1f}\u202fmm", False),
        ("mm", "1,27 m", "= 1270\u202fmm", False),
        ("deg", "-12°30'", "= \u221212.5°", False),
        ("kg", "7.1 t", "= 7100\u202fkg", False),
        ("mm", "steep", "unreadable", True),
    ],
)
def test_what_is_being_written_is_read_back(here: Office, sort: str, text: str, said: str, *, wrong: bool) -> None:
    got = here.client().get(f"/desk/help/value/{sort}", params={"text": text}).json()
    assert got["said"].startswith(said)
    assert got["wrong"] is wrong


def test_places_in_the_list_that_were_never_given_are_not_found(here: Office) -> None:
    assert here.client().get(f"{AT}?after=yesterday").status_code == 404


def test_what_is_empty_says_what_to_do(here: Office) -> None:
    taken(here.client("dealer"), mail("scoop"))
    said = here.client("dealer").get(f"{AT}?waits=them").text
    assert "Nobody is being waited for" in said
    assert "stands here until they write again" in said


# --- without a page ---------------------------------------------------------------------------------------


def test_fields_of_a_page_give_back_the_form_they_were_made_of() -> None:
    for line in Path(FIXTURES / "fleet.jsonl").read_text().splitlines()[:120]:
        form = parse_form(json.loads(line)["form"])
        assert read_fields(texts(form), form) == form
        blank = dict.fromkeys(texts(form), "") | {
            f"rows.{p}": "0" for p in ("obstacles", "transom.profile", "other_datum")
        }
        bare = read_fields(blank, form).document()
        left = {"schema", "enquiry", "contact", "uncertainties", "methods"}
        assert set(bare) - left <= {"transom"}  # sections have no fields, and stay
        assert set(bare.get("transom", {})) <= {"sections"}


def test_every_field_of_the_form_is_on_the_page_or_known_to_stand_elsewhere() -> None:
    plain = {spec.path for _, _, specs in groups() for spec in specs}
    rows = {
        f"{path}[].{re.sub(r'.[01].$', '', s.path)}"
        for path in ("obstacles", "transom.profile", "other_datum")
        for s in row_specs(path)
    }
    schema = set(_leaves(BoatForm.model_json_schema()))
    elsewhere = {"schema", "enquiry.received", "enquiry.channel", "enquiry.dealer", "enquiry.reference"}
    missing = {
        p
        for p in schema - plain - rows - elsewhere
        if not p.startswith(("contact.", "methods", "uncertainties", "transom.sections"))
    }
    assert missing == set()


def _leaves(schema: dict[str, Any], at: dict[str, Any] | None = None, stem: str = "") -> Iterator[str]:
    """Yield the paths of a JSON Schema's single values, read from the published schema rather than from the shapes."""
    node = at if at is not None else schema
    for one in [node, *node.get("anyOf", [])]:
        if "$ref" in one:
            yield from _leaves(schema, schema["$defs"][one["$ref"].rpartition("/")[2]], stem)
            return
        if one.get("type") == "array" and "$ref" in json.dumps(one):
            yield from _leaves(schema, one["items"], f"{stem}[]")
            return
        if "properties" in one:
            for name, inner in one["properties"].items():
                yield from _leaves(schema, inner, f"{stem}.{name}" if stem else name)
            return
    yield stem


@pytest.fixture
def store(url: str) -> Iterator[Store]:
    numbers = count(1)
    made = Store(url, now=lambda: T0, new_id=lambda kind: f"{kind}-{next(numbers)}")
    yield made
    made.close()


def kept(store: Store) -> Enquiry:
    form = parse_form({"boat": {"model": "A", "year": 1990}, "transom": {"rake_deg": 10}, "contact": {"name": "Ada"}})
    with store.writing() as uow:
        name = uow.enquiries.add(form, source="hello", owner="")
        uow.commit()
    return now(store, name)


def now(store: Store, name: str) -> Enquiry:
    with store.reading() as uow:
        found = uow.enquiries.get(name)
    assert found
    return found


def turned(angle: float) -> Any:  # noqa: ANN401 - what makes a form of a form
    return lambda form: parse_form({**form.document(), "transom": {"rake_deg": angle}})


def test_edits_on_both_databases(store: Store) -> None:
    one = kept(store)
    done = edit_enquiry(store.writing(), one, turned(12), who="Ada", expect=0, typed={"transom.rake_deg": "12 deg"})
    assert (done.version, done.step) == (2, 2)
    with pytest.raises(EnquiryMoved) as moved:
        edit_enquiry(store.writing(), one, turned(14), who="Bo", expect=0)
    assert [(c.field, c.was, c.theirs, c.yours) for c in moved.value.clashes] == [("transom.rake_deg", 10, 12, 14)]
    assert now(store, one.id).form.transom.rake_deg == 12
    assert now(store, one.id).form.contact.name == "Ada"
    with store.reading() as uow:
        got = show_enquiry(uow, now(store, one.id))
    assert got.typed == {"transom.rake_deg": "12 deg"}
    assert [step.did for step in got.steps] == ["opened", "edited"]
    assert all(step.form is None or step.form.contact.name is None for step in got.steps)
    undo_step(store.writing(), one, 2, who="Ada")
    assert now(store, one.id).form == one.form
    with pytest.raises(FormError):
        edit_enquiry(store.writing(), one, lambda _: parse_form({"boat": {"year": "old"}}), who="Ada", expect=3)
    with pytest.raises(Refused):
        edit_enquiry(store.writing(), one, turned(1), who="Ada", expect=9)
    with pytest.raises(Refused, match="no such hull model"):
        choose_hull(store.writing(), one, "none-such", who="Ada", expect=3)
    assert edit_enquiry(store.writing(), one, lambda form: form, who="Ada", expect=3).step is None
    close_enquiry(store.writing(), one, who="Ada")
    with store.reading() as uow:
        board = waiting_enquiries(uow, None, waits="nobody", after=None, limit=10)
    assert [line.enquiry.id for line in board.lines] == [one.id]
    assert board.counts == {"us": 0, "them": 0, "nobody": 1}
    assert board.lines[0].why == "closed by Ada"


def test_pages_of_the_list_miss_nothing_and_show_nothing_twice(store: Store) -> None:
    names = [kept(store).id for _ in range(7)]
    seen: list[str] = []
    after: str | None = None
    while True:
        with store.reading() as uow:
            board = waiting_enquiries(uow, None, waits="us", after=after, limit=3)
        seen += [line.enquiry.id for line in board.lines]
        after = board.following
        if after is None:
            break
    assert sorted(seen) == sorted(names)


def test_forms_are_brought_together_field_by_field() -> None:
    base = parse_form({"boat": {"year": 1990, "model": "A"}, "transom": {"rake_deg": 10}})
    theirs = parse_form({"boat": {"year": 1991, "model": "A"}, "transom": {"rake_deg": 10}, "notes": "n"})
    yours = parse_form({"boat": {"year": 1992, "model": "A"}})
    both, clashes = brought_together(base, theirs, yours)
    assert both.document() == {"schema": "boat-form/1", "boat": {"year": 1992, "model": "A"}, "notes": "n"}
    assert [(c.field, c.was, c.theirs, c.yours) for c in clashes] == [("boat.year", 1990, 1991, 1992)]
    assert [change.field for change in form_changes(base, theirs)] == ["boat.year", "notes"]
