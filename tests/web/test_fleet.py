"""The fleet at the desk: found, compared, drawn, amended, and written down as installed."""

from __future__ import annotations

import io
import re
import xml.etree.ElementTree as ET
from html import unescape

import pytest
from PIL import Image

from service.core.boat import get
from service.core.record import Record
from service.flow.answer import keep_answers, work_out
from service.flow.edit_record import correct_record
from service.flow.import_records import import_records
from service.flow.record_history import Shown, show_record
from service.flow.step_record import step_record
from service.store.record_search import ORDERS
from service.web.record import _EMPTY
from tests.support import hostile
from tests.support.offices import DEALER, Office, send
from tests.support.things import LETTER

FLEET = "/desk/fleet"
REFERENCE = re.compile(r'href="/desk/fleet/([^/"?]+)">\1</a></th>')


def text(response: object) -> str:
    """Return what a page says, without tags, runs of space as one."""
    return " ".join(unescape(re.sub(r"<[^>]+>", " ", response.text)).split())  # type: ignore[attr-defined]


def listed(page: str) -> list[str]:
    return REFERENCE.findall(page)


def first(here: Office, status: str, place: int = 0) -> Record:
    with here.store.reading() as uow:
        return [record for record in uow.records.all() if record.status == status][place]


def shown(here: Office, reference: str) -> Shown:
    with here.store.reading() as uow:
        return show_record(uow, reference)


def photo(colour: str = "red") -> bytes:
    out = io.BytesIO()
    Image.new("RGB", (8, 8), colour).save(out, "JPEG")
    return out.getvalue()


# --- finding --------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("asked", "holds"),
    [
        ("q=2003-006", lambda r: "2003-006" in r.reference),
        ("q=wendrake+plumb", lambda r: "oxbarrow" in str(r.hull) and r.form.boat.stern == "plumb"),
        ("q=double-ended", lambda r: r.form.boat.stern == "double_ended"),
        ("q=HINGE-60-170+shipped", lambda r: "hinge-60-170" in str(r.configuration) and r.status == "shipped"),
        ("status=shipped&side=port", lambda r: r.status == "shipped" and r.placement.offset_mm <= -1),
        ("side=centre", lambda r: abs(r.placement.offset_mm) < 1),
        ("bracket=cheek-390-720&gear=gear-860", lambda r: {"cheek-390-720", "gear-860"} <= set(str(r.configuration).split())),
        ("from=1984&to=1986", lambda r: 1984 <= r.form.boat.year <= 1986),
    ],
)  # fmt: skip
def test_what_is_asked_for_is_found_and_nothing_else(here: Office, asked: str, holds: object) -> None:
    with here.store.reading() as uow:
        every = uow.records.all()

    def is_meant(record: Record) -> bool:
        try:
            return bool(holds(record))  # type: ignore[operator]
        except TypeError:  # what is not said is not found
            return False

    client, found, path = here.client(), list[str](), f"{FLEET}?{asked}"
    while path:
        page = client.get(path).text
        found += listed(page)
        more = re.search(r'class="button end" href="([^"]+)"', page)
        path = unescape(more[1]) if more else ""
    assert sorted(found) == sorted(record.reference for record in every if is_meant(record))
    assert found


def test_every_order_shows_every_record_once_on_both_databases(everywhere: Office) -> None:
    client, seen = everywhere.client(), {}
    for order in ORDERS:
        found, path = list[str](), f"{FLEET}?sort={order}&q=double-ended"
        while path:
            page = client.get(path).text
            found += listed(page)
            more = re.search(r'class="button end" href="([^"]+)"', page)
            path = unescape(more[1]) if more else ""
        seen[order] = found
    assert len(seen["newest"]) > 25
    assert {order: sorted(found) for order, found in seen.items()} == dict.fromkeys(ORDERS, sorted(seen["newest"]))
    assert seen["reference"] == sorted(seen["reference"])
    with everywhere.store.reading() as uow:
        offsets = {record.reference: record.placement.offset_mm for record in uow.records.all()}
    said = [offset for name in seen["offset"] if (offset := offsets[name]) is not None]
    assert said == sorted(said)
    drawn = client.get(f"{FLEET}/map?drawn=1")  # numbers out of documents, in each database's own way
    assert "of 125 installed say where" in drawn.text


def test_a_script_gets_the_list_alone(here: Office) -> None:
    part = here.client().get(f"{FLEET}?q=tarnholt", headers={"HX-Request": "true"}).text
    assert "<html" not in part
    assert part.lstrip().startswith('<section id="found"')


def test_what_cannot_be_read_is_said_beside_its_field(here: Office) -> None:
    response = here.client().get(f"{FLEET}?from=19x4&q=tarnholt&loa=ten")
    assert response.status_code == 422
    assert 'value="19x4"' in response.text
    assert 'value="tarnholt"' in response.text
    assert "four figures" in response.text


def test_boats_like_one_are_found_by_measurements_in_any_unit(here: Office) -> None:
    client = here.client()
    metric = listed(client.get(f"{FLEET}?loa=10.5+m&top=95+cm&stern=raked").text)
    other = listed(client.get(f"{FLEET}?loa=10500&top=0.95+m&stern=raked").text)
    assert metric == other
    assert metric
    like = client.get(f"{FLEET}?like=2003-006").text
    assert listed(like)
    assert "2003-006" not in listed(like)


def test_a_dealers_people_learn_no_other_dealers_records_by_searching(here: Office) -> None:
    with here.store.reading() as uow:
        other = next(r for r in uow.records.all() if r.dealer and r.dealer != DEALER and r.form.boat.model)
    word = other.dealer.split()[0] if other.dealer else ""
    assert listed(here.client().get(f"{FLEET}?q={word}").text)
    assert other.reference not in listed(here.client("dealer").get(f"{FLEET}?q={word}").text)
    page = here.client("dealer").get(f"{FLEET}/{other.reference}").text
    assert str(other.dealer) not in page
    assert "How it came to be so" not in page


def test_of_very_many_words_the_first_count(here: Office) -> None:
    many = "+".join(["tarnholt"] * 8 + ["zzz"] * 20)
    assert listed(here.client().get(f"{FLEET}?q={many}").text)


# --- one record -----------------------------------------------------------------------------------------


def test_people_are_noted_as_seen_and_fitters_see_them_while_they_wait(here: Office) -> None:
    waits, done = first(here, "shipped"), first(here, "installed")
    for record in (waits, done):
        values = {"contact.name": "Runa Falk", "contact.phone": "+46 1 23"}
        correct_record(here.store.writing(), record.reference, values, who="Ada", why="who it is")
    assert "Runa Falk" in here.client().get(f"{FLEET}/{done.reference}").text
    assert "Runa Falk" in here.client("fitter").get(f"{FLEET}/{waits.reference}").text
    for who in ("fitter", "dealer", "other"):
        assert "Runa Falk" not in here.client(who).get(f"{FLEET}/{done.reference}").text
    with here.store.reading() as uow:
        noted = [
            (one.who, one.thing)
            for record in (waits, done)
            for one in uow.audit.of(record.reference)
            if one.action == "read"
        ]
    assert ("Ada Holm", done.reference) in noted
    assert ("Eva Sund", waits.reference) in noted
    assert ("Eva Sund", done.reference) not in noted


def test_the_drawing_shows_it_where_the_record_says_and_holds_no_style_attribute(here: Office) -> None:
    with here.store.reading() as uow:
        record = next(r for r in uow.records.all() if r.placement.lower_height_mm and r.placement.offset_mm == 0)
    response = here.client().get(f"{FLEET}/{record.reference}/drawing.svg")
    assert response.headers["content-type"].startswith("image/svg+xml")
    assert "sha256-" in response.headers["content-security-policy"]
    assert "unsafe" not in response.headers["content-security-policy"]
    root = ET.fromstring(response.text)  # noqa: S314 - our own drawing
    assert not [one for one in root.iter() if "style" in one.attrib]
    words = " ".join(root.itertext())
    assert f"{record.placement.lower_height_mm:.0f}" in words
    assert "as the record says" in words
    ET.fromstring(_EMPTY)  # noqa: S314 - our own drawing


def test_a_correction_is_kept_undone_and_done_again(here: Office) -> None:
    record, client = first(here, "installed", 3), here.client()
    at = f"{FLEET}/{record.reference}"
    head = shown(here, record.reference).head
    done = send(
        client, f"{at}/edit", f"{at}/edit", **{"expect": str(head), "f.boat.year": "1987", "why": "builder's plate"}
    )
    assert done.status_code == 303, text(done)
    assert shown(here, record.reference).record.form.boat.year == 1987
    page = client.get(at).text
    undo = re.search(r'action="([^"]+/back/\d+\?expect=\d+)"', page)
    assert undo
    back = send(client, at, unescape(undo[1]))
    assert back.status_code == 303
    assert shown(here, record.reference).record == record
    history = client.get(at)
    assert "correction: builder's plate" in text(history)
    assert f"back to revision {head}: undone" in text(history)


def test_nothing_typed_is_lost_where_something_cannot_be_taken(here: Office) -> None:
    record, client = first(here, "installed", 4), here.client()
    at = f"{FLEET}/{record.reference}/edit"
    head = str(shown(here, record.reference).head)
    wrong = send(client, at, at, **{"expect": head, "f.boat.year": "19xx", "f.boat.name": "Skua", "why": "seen"})
    assert wrong.status_code == 422
    for typed in ('value="19xx"', 'value="Skua"', 'value="seen"', 'aria-invalid="true"'):
        assert typed in wrong.text
    silent = send(client, at, at, **{"expect": head, "f.boat.name": "Skua", "why": ""})
    assert silent.status_code == 422
    assert shown(here, record.reference).record == record


def test_of_two_people_the_second_chooses_field_by_field(here: Office) -> None:
    record = first(here, "installed", 5)
    at = f"{FLEET}/{record.reference}"
    head = str(shown(here, record.reference).head)
    ada, bo = here.client(), here.client("second")
    send(ada, f"{at}/edit", f"{at}/edit", **{"expect": head, "f.boat.year": "1981", "f.dealer": "", "why": "a"})
    late = {"expect": head, "f.boat.year": "1982", "f.boat.name": "Tern", "why": "b"}
    page = send(bo, f"{at}/edit", f"{at}/edit", **late)
    assert page.status_code == 409
    said = text(page)
    assert "1981 as Ada Holm made it" in said
    assert "1982 yours" in said
    assert "Tern" in said
    now = re.search(r'name="expect" value="(\d+)"', page.text)
    assert now
    mine = {"expect": now[1], "mine.boat.year": "1982", "pick.boat.year": "mine", "f.boat.name": "Tern", "why": "b"}
    assert send(bo, f"{at}/edit", f"{at}/edit", **mine).status_code == 303
    boat = shown(here, record.reference).record.form.boat
    assert (boat.year, boat.name) == (1982, "Tern")
    theirs = {**mine, "expect": now[1], "pick.boat.year": "theirs"}
    assert send(bo, f"{at}/edit", f"{at}/edit", **theirs).status_code == 409  # it moved again, by this very choice


def test_two_measurements_may_disagree_and_both_are_shown(here: Office) -> None:
    record, client = first(here, "installed", 6), here.client()
    at, field = f"{FLEET}/{record.reference}", "transom.top_height_mm"
    for value, method in (("3 ft 2 in", "tape"), ("1.30 m", "photo")):
        done = send(client, f"{at}/measure", f"{at}/measure", field=field, value=value, method=method)
        assert done.status_code == 303, text(done)
    said = text(client.get(at))
    assert "3 ft 2 in" in said
    assert "1.30 m" in said
    assert get(shown(here, record.reference).record.form, field) == pytest.approx(
        38 * 25.4
    )  # an inch is 25.4 mm (ISO 31-1)
    wrong = send(client, f"{at}/measure", f"{at}/measure", field=field, value="about so", method="tape")
    assert wrong.status_code == 422
    assert 'value="about so"' in wrong.text


def test_files_are_given_as_files_alone(here: Office) -> None:
    record, client = first(here, "installed", 7), here.client()
    at = f"{FLEET}/{record.reference}"
    page = b"<html><script>window.hurt=1</script>"
    kept = send(client, at, f"{at}/files", files=[("files", ("../a\u202egpj.html", page, "text/html"))])
    assert kept.status_code == 303
    again = send(client, at, f"{at}/files", files=[("files", ("b.html", page, "text/html"))])
    assert again.status_code == 303
    assert len(shown(here, record.reference).attached) == 1
    got = client.get(f"{at}/files/1")
    assert got.content == page
    assert got.headers["content-type"].startswith("text/plain")
    assert got.headers["content-disposition"].startswith("attachment")
    assert "sandbox" in got.headers["content-security-policy"]
    assert client.get(f"{at}/files/9").status_code == 303
    refused = send(client, at, f"{at}/files", files=[("files", ("a.exe", b"MZ\x90\x00", "image/png"))])
    assert refused.status_code == 422
    assert "program" in refused.text
    assert here.client("dealer").get(f"{at}/files/1").status_code == 404


def test_a_step_and_a_merge_are_undone_by_their_notices(here: Office) -> None:
    record, client = first(here, "proposed"), here.client()
    at = f"{FLEET}/{record.reference}"
    head = str(shown(here, record.reference).head)
    assert send(client, at, f"{at}/step", status="shipped", expect=head).status_code == 303
    undo = re.search(r'action="([^"]+/back/[^"]+)"', client.get(at).text)
    assert undo
    send(client, at, unescape(undo[1]))
    assert shown(here, record.reference).record.status == "proposed"
    unreasoned = send(client, at, f"{at}/step", status="installed", expect=str(int(head) + 2))
    assert unreasoned.status_code == 422
    other = first(here, "proposed", 1).reference
    assert "Not taken over" in client.get(f"{at}/merge?other={other}").text
    assert send(client, at, f"{at}/merge", other=other).status_code == 303
    assert client.get(f"{FLEET}/{other}").headers["location"] == at
    assert send(client, at, f"{at}/unmerge/{other}").status_code == 303
    assert client.get(f"{FLEET}/{other}").status_code == 200


# --- two beside each other, and the map -----------------------------------------------------------------


def test_two_are_compared_with_differences_first_and_both_sterns(here: Office) -> None:
    page = here.client().get(f"{FLEET}/compare?pick=2001-002&pick=2003-015")
    said = text(page)
    assert said.index("What differs") < said.index("Said of one alone") < said.index("What is the same")
    assert "Ladder, port" in said
    assert "Draft 1500 mm tape 1840 mm tape +340 mm" in said
    assert "Year built 1979 1984 +5" in said  # nobody took a tape to that
    drawing = page.text[page.text.index("<svg") : page.text.index("</svg>") + 6]
    root = ET.fromstring(drawing)  # noqa: S314 - our own drawing
    assert len([one for one in root.iter("path") if "skin" in one.attrib["class"]]) == 2
    assert "style=" not in drawing
    for asked in ("a=2001-002&b=nope", "a=2001-002&b=2001-002", "pick=2001-002&pick=2001-003&pick=2001-004"):
        assert here.client().get(f"{FLEET}/compare?{asked}").status_code == 422


def test_the_map_counts_every_bracket_that_was_placed(here: Office) -> None:
    page = here.client().get(f"{FLEET}/map?drawn=1", headers={"HX-Request": "true"}).text
    counts = re.findall(
        r'<tr><td>(lower|upper)</td>(?:<td class="number">[^<]*</td>){2}<td class="number">(\d+)</td>', page
    )
    with here.store.reading() as uow:
        records = [r for r in uow.records.all() if r.status == "installed" and r.form.boat.stern]
    for role in ("lower", "upper"):
        placed = [r for r in records if getattr(r.placement, f"{role}_height_mm") is not None]
        assert sum(int(count) for name, count in counts if name == role) == len(placed)
    assert page.count("<circle") + page.count("<rect") == len(counts)
    sel = here.client().get(f"{FLEET}/map?drawn=1&hull=selmarrow").text
    assert "Selmarrow 31 Mk II" in sel


# --- from an answer, and as installed -------------------------------------------------------------------


def test_an_answer_becomes_a_record_once_and_is_no_other_dealers(here: Office) -> None:
    worked = work_out(here.store, LETTER.replace(b"letter-1", b"letter-9"), "letter.eml", now=here.store._now())
    with here.store.writing() as uow:
        answer = keep_answers(uow, worked, owner=DEALER).answers[0]
        uow.commit()
    at = f"{FLEET}/new?answer={answer.id}"
    for who in ("other", "fitter"):
        assert here.client(who).get(at).status_code in {403, 404}
    client = here.client("dealer")
    rank = next(str(one.rank) for one in answer.suggestions if one.fit.verdict != "does_not_fit")
    said = {"answer": str(answer.id), "boat": "1", "rank": rank}
    done = send(client, at, FLEET, **said)
    assert done.status_code == 303, text(done)
    reference = done.headers["location"].rpartition("/")[2]
    record = shown(here, reference).record
    assert (record.status, record.answer) == ("proposed", answer.id)
    twice = send(client, at, FLEET, **said)
    assert twice.status_code == 422
    assert reference in twice.text


SITE = {
    "unit": "cm", "offset_side": "port", "offset": "31,5", "lower_height": "40", "bottom": "5", "bottom_side": "under",
    "top": "4 ft 2 1/2 in", "top_method": "tape", "rake": "12", "rake_side": "forward", "rake_method": "phone_level",
    "fitted": "no", "changed": "the ladder stood in the way", "note": "dry inside",
}  # fmt: skip


def test_a_fitter_writes_down_what_was_fitted_with_units_signs_and_photos(everywhere: Office) -> None:
    here = everywhere
    record, client = first(here, "shipped"), here.client("fitter")
    at = f"{FLEET}/{record.reference}/installed"
    assert record.reference in client.get(FLEET).text
    head = str(shown(here, record.reference).head)
    photos = [("camera", ("a.jpg", photo(), "image/jpeg")), ("photos", ("b.jpg", photo("blue"), "image/jpeg"))]
    said = {**SITE, "expect": head, **record.configuration.model_dump()}
    done = send(client, at, at, files=photos, **said)
    assert (done.status_code, done.headers.get("location")) == (303, FLEET), text(done)
    now = shown(here, record.reference)
    spot, form = now.record.placement, now.record.form
    assert now.record.status == "installed"
    assert (spot.offset_mm, spot.lower_height_mm, spot.shaft_bottom_mm) == (-315.0, 400.0, -50.0)
    assert spot.upper_height_mm == record.placement.upper_height_mm
    assert form.transom.top_height_mm == pytest.approx(50.5 * 25.4)  # an inch is 25.4 mm (ISO 31-1)
    assert form.transom.rake_deg == -12
    assert {one.text for one in now.measured} >= {"4 ft 2 1/2 in", "-12 \u00b0"}
    assert now.record.outcome.changed == "the ladder stood in the way"
    assert len(now.attached) == 2
    again = send(client, at, at, files=photos, **said)  # the same once more, as from a slow telephone
    assert again.status_code == 303
    assert shown(here, record.reference).head == now.head
    assert len(shown(here, record.reference).attached) == 2
    undo = f"{FLEET}/{record.reference}/back/{head}?expect={now.head}"
    assert send(client, at, undo).status_code == 303
    assert shown(here, record.reference).record == record


def test_a_form_with_a_fault_comes_back_whole_with_its_photos_kept(here: Office) -> None:
    record, client = first(here, "shipped", 1), here.client("fitter")
    at = f"{FLEET}/{record.reference}/installed"
    said = {**SITE, "offset": "somewhere", "expect": str(shown(here, record.reference).head)}
    photos = [("photos", ("c.jpg", photo("green"), "image/jpeg")), ("photos", ("d.exe", b"MZ\x90", "image/jpeg"))]
    response = send(client, at, at, files=photos, **said)
    assert response.status_code == 422
    for typed in (
        'value="somewhere"',
        'value="4 ft 2 1/2 in"',
        "the ladder stood in the way",
        "1 photo is kept already",
    ):
        assert typed in response.text
    assert "program" in response.text
    assert shown(here, record.reference).record == record


def test_somebody_elses_form_is_told_and_one_chooses(here: Office) -> None:
    record, client = first(here, "shipped", 2), here.client("fitter")
    at = f"{FLEET}/{record.reference}/installed"
    head = str(shown(here, record.reference).head)
    step_record(here.store.writing(), record.reference, "installed", who="Bo Lind")
    response = send(client, at, at, **{**SITE, "expect": head})
    assert response.status_code == 409
    assert "Bo Lind" in response.text
    assert 'value="31,5"' in response.text
    number = re.search(r'name="expect" value="(\d+)"', response.text)
    assert number
    unreasoned = send(client, at, at, **{**SITE, "expect": number[1]})
    assert unreasoned.status_code == 422
    assert send(client, at, at, **{**SITE, "expect": number[1], "why": "I was there"}).status_code == 303
    assert shown(here, record.reference).record.placement.offset_mm == -315.0


def test_a_fitter_takes_back_nobody_elses_work(here: Office) -> None:
    record = first(here, "installed", 9)
    correct_record(here.store.writing(), record.reference, {"boat.year": 1979}, who="Ada Holm", why="x")
    response = send(here.client("fitter"), FLEET, f"{FLEET}/{record.reference}/back/1")
    assert response.status_code == 422
    assert shown(here, record.reference).record.form.boat.year == 1979


def test_metal_that_no_catalogue_makes_needs_a_reason(here: Office) -> None:
    with here.store.reading() as uow:
        catalogue = uow.catalogues.latest()
    assert catalogue is not None
    record, client = first(here, "shipped", 3), here.client("fitter")
    wrong = next(s.code for s in catalogue.shafts if record.configuration.gear not in s.gears)
    at = f"{FLEET}/{record.reference}/installed"
    said = {"shaft": wrong, "expect": str(shown(here, record.reference).head)}
    response = send(client, at, at, **said)
    assert response.status_code == 422
    assert 'name="anyway"' in response.text
    assert send(client, at, at, **said, anyway="cut from stock").status_code == 303
    assert shown(here, record.reference).record.configuration.shaft == wrong


def test_hostile_words_in_the_way_of_a_record_stay_words(here: Office) -> None:
    import_records(here.store.writing(), hostile.line("H-9"), "bad.jsonl", who=hostile.TEXTS[1])
    client = here.client()
    for path in ("", "/edit", "/checked", "/installed", "/drawing.svg", "/merge?other=2001-001"):
        response = client.get(f"{FLEET}/H-9{path}")
        assert response.status_code == 200
        for word in ("<script>window.hurt", "<img src=x", "<svg onload", "<b id=hurt"):
            assert word not in response.text
