"""Imports at the desk: what columns are, what would be done, doing it, mending what was not taken, undoing it."""

from __future__ import annotations

import io
import re
from datetime import timedelta

import pytest

from service import bootstrap
from service.files.waiting import LONGEST, Waiting
from service.files.write.grids import Sheet, put_xlsx
from service.flow.go_on_import import go_on_import
from service.flow.import_job import start_import
from service.flow.refusal import Refused
from service.store.happening import Actor
from tests.support.notices import undo_in
from tests.support.offices import Office, send

HERE = "/desk/imports"
HEAD = "Ref;Model;Yard;Year;LOA (m);Status;Gear;Lower;Upper;Shaft;Remark <i>\n"
KIT = "installed;gear-720;hinge-270-420;hinge-60-170;shaft-1350"


def table(*rows: str) -> bytes:
    return (HEAD + "\n".join(rows) + "\n").encode()


def fields_of(text: str) -> dict[str, str]:
    """Return what the form of a page holds, as a browser would send it."""
    form = text.partition('action="/desk/imports/preview"')[2].partition("</form>")[0]
    found = dict(re.findall(r'<input[^>]*? name="([^"]+)" value="([^"]*)"', form))
    found |= dict(re.findall(r'<input type="hidden" name="([^"]+)" value="([^"]*)"', form))
    mapping = re.search(r'<textarea id="mapping"[^>]*>(.*?)</textarea>', form, re.DOTALL)
    if mapping:
        found["mapping"] = mapping[1]
    return {
        key: value.replace("&lt;", "<").replace("&gt;", ">").replace("&#34;", '"').replace("&amp;", "&")
        for key, value in found.items()
        if key != "csrf"
    }


def waiting(here: Office, data: bytes, name: str) -> tuple[str, str]:
    """Send a file; return where it is looked at, and that page."""
    client = here.client()
    sent = send(client, HERE, HERE, files={"file": (name, data)})
    assert sent.status_code == 303, sent.text
    at = sent.headers["location"]
    shown = client.get(at)
    assert shown.status_code == 200, shown.text
    return at, shown.text


def test_a_table_of_ones_own_is_guessed_previewed_taken_and_undone(everywhere: Office) -> None:
    client = everywhere.client()
    data = table(
        f"N-1;Selmarrow 31;Selmarrow;1975;9,42;{KIT};<script>alert(1)</script>",
        f"N-2;Selmarrow 31;Selmarrow;soon;9,42;{KIT};",
    )
    at, text = waiting(everywhere, data, "own <b>.csv")
    fields = fields_of(text)
    assert fields["to.5"] == "boat.loa_mm"
    assert fields["unit.5"] == "m"
    assert "<script>alert" not in text
    assert "<i>" not in text
    preview = text.split('id="would"')[1]
    assert re.search(r"<dt>Added</dt><dd>1</dd>", preview)
    assert re.search(r'class="number">3</th><td>Year</td>', preview)  # the fault names row and column
    with everywhere.store.reading() as uow:
        assert uow.records.get("N-1") is None
        before = uow.records.count()
    done = send(client, at, f"{HERE}/run", **fields)
    assert done.status_code == 303, done.text
    shown = client.get(done.headers["location"]).text
    with everywhere.store.reading() as uow:
        taken = uow.records.get("N-1")
        assert uow.records.count() == before + 1
    assert taken is not None
    assert taken.form.boat.loa_mm == 9420
    faults = client.get(f"{done.headers['location']}/faults")
    assert faults.headers["content-disposition"].startswith("attachment")
    assert b"soon" in faults.content
    assert b"N-1" not in faults.content
    assert send(client, HERE, undo_in(shown)).status_code == 303
    with everywhere.store.reading() as uow:
        assert uow.records.get("N-1") is None
        assert uow.records.count() == before
    assert "undone" in client.get(done.headers["location"]).text


def test_a_column_is_changed_and_what_cannot_be_is_told_with_all_that_was_typed(here: Office) -> None:
    client = here.client()
    at, text = waiting(here, table(f"N-3;Selmarrow 31;Selmarrow;1975;31;{KIT};"), "feet.csv")
    fields = fields_of(text) | {"unit.5": "ft", "to.11": "ignore"}
    shown = send(client, at, f"{HERE}/preview", **fields).text
    assert "Not read" in shown
    assert fields_of(shown)["unit.5"] == "ft"
    again = send(client, at, f"{HERE}/preview", **fields_of(shown))  # what came back, sent again, is the same
    assert fields_of(again.text) == fields_of(shown)
    for wrong in ({"unit.5": "cubits"}, {"to.5": "boat.lenght"}, {"to.5": "boat.model"}):
        refused = send(client, at, f"{HERE}/preview", **{**fields, **wrong})
        assert refused.status_code == 422, wrong
        assert 'role="alert"' in refused.text
    done = send(client, at, f"{HERE}/run", **fields)
    with here.store.reading() as uow:
        taken = uow.records.get("N-3")
    assert done.status_code == 303
    assert taken is not None
    assert taken.form.boat.loa_mm == pytest.approx(
        31 * 304.8
    )  # one foot is 0.3048 m exactly (international yard, 1959)


def test_a_workbook_with_our_own_headings_needs_no_mapping(here: Office) -> None:
    headings = ("record.reference", "record.status", "boat.model", "configuration.gear", "configuration.lower")
    row = ("N-4", "installed", "Selmarrow 31", "gear-720", "hinge-270-420", "hinge-60-170", "shaft-1350")
    out = io.BytesIO()
    put_xlsx(out, [Sheet("fleet", (*headings, "configuration.upper", "configuration.shaft"), [row])])
    _, text = waiting(here, out.getvalue(), "own.xlsx")
    assert "names the columns of records itself" in text
    assert re.search(r"<dt>Added</dt><dd>1</dd>", text)


def test_what_is_no_table_is_told_on_the_page_it_was_sent_from(here: Office) -> None:
    client = here.client()
    sent = send(client, HERE, HERE, files={"file": ("x.pdf", b"%PDF-1.4 no table")})
    refused = client.get(sent.headers["location"])
    assert refused.status_code == 422
    assert "it is a PDF" in refused.text
    assert send(client, HERE, HERE).status_code == 422
    assert client.get(f"{HERE}/new?file={'0' * 64}").status_code == 404
    assert client.get(f"{HERE}/new?file=../../etc").status_code == 404
    assert client.get(f"{HERE}/import-none").status_code == 404
    assert client.get(f"{HERE}/import-none/faults").status_code == 404


def test_an_import_that_broke_off_is_gone_on_with_by_its_job(here: Office) -> None:
    data = b'{"record.reference":1}\n'
    client = here.client()
    with here.store.reading() as uow:
        done = uow.imports.all()[-1].id
    with pytest.raises(Refused, match="nothing to go on with"):
        go_on_import(here.store.writing(), done, actor=Actor("test"))
    job = start_import(here.store.writing(), data, "late.jsonl", actor=Actor("test"))
    at = f"{HERE}/{job.arguments['import']}"
    assert "late.jsonl" in client.get(at).text
    part = client.get(at, headers={"HX-Request": "true"}).text
    assert part.startswith('<div id="progress"')


def test_a_file_waits_for_a_day_and_no_longer(here: Office, tmp_path_factory: pytest.TempPathFactory) -> None:
    del here
    rooms, now = Waiting(tmp_path_factory.mktemp("files")), bootstrap.clock()
    name = rooms.put(b"one", now)
    assert rooms.get(name) == b"one"
    rooms.forget(now + LONGEST - timedelta(minutes=5))
    assert rooms.get(name) == b"one"
    rooms.forget(now + LONGEST + timedelta(minutes=5))
    assert rooms.get(name) is None
    assert rooms.get("../x") is None
