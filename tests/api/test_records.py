"""Records over HTTP: pages, states, changes, and whose data is shown to whom."""

from __future__ import annotations

import json
from typing import Any

import pytest

from service.api.enquiries import BY_TYPE
from service.api.examples import FORM
from service.store.happening import Actor
from tests.api.conftest import House
from tests.support.waiting import until

NAMED = {**FORM, "contact": {"name": "Ada Strand", "email": "ada@example.com"}, "notes": "ring Ada on Sundays"}


@pytest.fixture(scope="module")
def record(here: House) -> dict[str, Any]:
    """Return a record of the dealer `mine`, of an owner with a name."""
    answer = here.post("/v1/enquiries", NAMED).json()["answers"][0]
    made = here.post("/v1/records", {"answer": answer["id"]})
    assert made.status_code == 201, made.text
    shown: dict[str, Any] = made.json()
    return shown


def test_pages_go_through_every_record_once(here: House) -> None:
    seen: list[str] = []
    path = "/v1/records?limit=200&stern=reverse"
    while path:
        response = here.get(path, "desk")
        seen += [one["reference"] for one in response.json()["records"]]
        assert len(response.json()["records"]) <= 200
        link = response.headers.get("link")
        assert (link is None) == (response.json()["next"] is None)
        path = link.split(">")[0].removeprefix("<") if link else ""
    with here.store.reading() as uow:
        wanted = {record.reference for record in uow.records.all() if record.form.boat.stern == "reverse"}
    assert len(seen) == len(set(seen))
    assert set(seen) == wanted


def test_pages_of_enquiries_go_on_where_they_ended(here: House, record: dict[str, Any]) -> None:
    assert record
    for number in range(3):
        assert here.post("/v1/enquiries", {**FORM, "boat": {**FORM["boat"], "year": 1988 + number}}).status_code == 201
    whole = [one["id"] for one in here.get("/v1/enquiries").json()["enquiries"]]
    seen: list[str] = []
    path = "/v1/enquiries?limit=1"
    while path:
        response = here.get(path)
        seen += [one["id"] for one in response.json()["enquiries"]]
        link = response.headers.get("link")
        path = link.split(">")[0].removeprefix("<") if link else ""
    assert seen == whole
    assert len(seen) >= 4


def test_a_change_names_the_state_it_was_made_of(here: House, record: dict[str, Any]) -> None:
    path = f"/v1/records/{record['reference']}"
    tag = here.get(path).headers["etag"]
    assert here.get(path, **{"If-None-Match": tag}).status_code == 304
    change = {"set": {"boat.year": 1992}, "why": "read off the plate"}
    headers = here.head("mine")
    assert here.client.patch(path, json=change, headers=headers).status_code == 428
    done = here.client.patch(path, json=change, headers={**headers, "If-Match": tag})
    assert done.status_code == 200
    assert done.json()["form"]["boat"]["year"] == 1992
    assert done.headers["etag"] == here.get(path).headers["etag"] != tag
    late = here.client.patch(path, json=change, headers={**headers, "If-Match": tag})
    assert (late.status_code, late.json()["type"]) == (412, "/problems/stale")
    weak = here.client.patch(path, json=change, headers={**headers, "If-Match": f"W/{done.headers['etag']}"})
    assert weak.status_code == 412
    for odd in ("2", "'2'", '"a", b', f"{tag} {tag}"):
        assert here.client.patch(path, json=change, headers={**headers, "If-Match": odd}).status_code == 400
    assert here.get(path, **{"If-None-Match": tag}).status_code == 200


def test_a_record_is_stepped_and_keeps_its_history(here: House, record: dict[str, Any]) -> None:
    path = f"/v1/records/{record['reference']}"
    headers = here.head("mine", **{"If-Match": here.get(path).headers["etag"]})
    stepped = here.client.patch(path, json={"step": {"status": "shipped"}, "why": "left today"}, headers=headers)
    assert stepped.json()["status"] == "shipped"
    headers["If-Match"] = stepped.headers["etag"]
    back = here.client.patch(path, json={"set": {"record.status": "proposed"}, "why": "no"}, headers=headers)
    assert (back.status_code, back.json()["type"]) == (422, "/problems/refused")
    both = here.client.patch(
        path, json={"set": {"boat.year": 1}, "step": {"status": "installed"}, "why": "x"}, headers=headers
    )
    assert (both.status_code, both.json()["errors"][0]["detail"]) == (422, "give either set or step")
    with here.store.reading() as uow:
        history = uow.records.history(record["reference"])
    assert history[-1].record.status == "shipped"
    assert all(one.who == "Hafenladen Ems (mine)" for one in history)


def test_an_answer_becomes_one_record(here: House, asked: dict[str, Any]) -> None:
    assert here.post("/v1/records", {"answer": asked["id"]}).status_code == 201
    again = here.post("/v1/records", {"answer": asked["id"]})
    assert (again.status_code, again.json()["type"]) == (422, "/problems/refused")


@pytest.mark.parametrize("who", ["other", "clerk"])
def test_owners_are_shown_to_nobody_else(here: House, record: dict[str, Any], who: str) -> None:
    for path in (f"/v1/records/{record['reference']}", "/v1/records?limit=5"):
        shown = here.get(path, who)
        assert shown.status_code == 200
        for word in ("Ada", "ada@example.com", "Sundays", "Hafenladen"):
            assert word not in shown.text
    assert here.get(f"/v1/records/{record['reference']}", who).json()["configuration"] == record["configuration"]
    assert "Ada Strand" in here.get(f"/v1/records/{record['reference']}").text
    assert "Ada Strand" in here.get(f"/v1/records/{record['reference']}", "desk").text


def test_writes_and_looks_at_people_stand_in_the_audit(here: House, record: dict[str, Any]) -> None:
    reference, key = record["reference"], here.keys["desk"].split("_")[1]
    with here.store.reading() as uow:
        before = len(uow.audit.of(reference))
        first = uow.audit.of(reference)[0]
    assert (first.action, first.who) == ("created", "Hafenladen Ems (mine)")
    here.get(f"/v1/records/{reference}", "other")
    response = here.get(f"/v1/records/{reference}", "desk")
    with here.store.reading() as uow:
        entries = uow.audit.of(reference)
    assert len(entries) == before + 1
    assert (entries[-1].action, entries[-1].kind, entries[-1].key) == ("read", "record", key)
    assert entries[-1].request == response.headers["x-request-id"]


def test_looking_at_enquiries_and_answers_stands_in_the_audit(here: House, asked: dict[str, Any]) -> None:
    for path, thing in (
        (f"/v1/enquiries/{asked['enquiry']}", asked["enquiry"]),
        (f"/v1/enquiries/{asked['enquiry']}/reply", asked["enquiry"]),
        (f"/v1/answers/{asked['id']}", asked["id"]),
    ):
        request = here.get(path).headers["x-request-id"]
        with here.store.reading() as uow:
            assert [one.action for one in uow.audit.of(thing) if one.request == request] == ["read"]


def test_an_answer_is_given_as_it_was_sent(here: House, asked: dict[str, Any]) -> None:
    response = here.get(f"/v1/answers/{asked['id']}")
    with here.store.reading() as uow:
        assert response.text == uow.answers.get(asked["id"])
    assert response.json() == asked
    assert here.get(f"/v1/answers/{asked['id']}", **{"If-None-Match": response.headers["etag"]}).status_code == 304


BEGINS = {
    ".txt": b"",
    ".html": b"<!doctype html>",
    ".eml": b"",
    ".svg": b"<svg",
    ".dxf": b"  0",
    ".pdf": b"%PDF-",
    ".stl": b"",
    ".csv": b"",
    ".xlsx": b"PK\x03\x04",
}
"""How each kind of file begins: PDF by ISO 32000, DXF by group code 0, XLSX as a zip archive; others by no fixed sign."""


def test_documents_come_by_link_and_by_content(here: House, asked: dict[str, Any]) -> None:
    path = f"/v1/enquiries/{asked['enquiry']}"
    links = here.get(path).json()["links"]
    assert here.get(links["reply"]).text == here.get(path, Accept="text/plain").text
    assert here.get(links["drawing"]).text == here.get(path, Accept="image/svg+xml, text/plain;q=0.2").text
    assert here.get(path, Accept="image/png").status_code == 406
    for name in set(links) - {"reply", "drawing"}:
        got = here.get(links[name])
        if got.status_code == 404:  # this boat takes no pads
            assert name.endswith(".stl")
            continue
        assert got.status_code == 200, name
        assert got.content.lower().startswith(BEGINS[name[name.rindex(".") :]].lower()), name
        shown = got.headers.get("content-disposition")
        assert shown == (None if name.endswith(".txt") else f'attachment; filename="{name}"')


@pytest.mark.parametrize("kind", [kind for kind in BY_TYPE if kind != "text/plain"])
def test_each_type_an_enquiry_can_be_had_as_is_what_it_says(here: House, asked: dict[str, Any], kind: str) -> None:
    got = here.get(f"/v1/enquiries/{asked['enquiry']}", Accept=kind)
    assert got.status_code == 200
    assert got.headers["content-type"].split(";")[0] == kind
    assert got.headers["vary"] == "Accept"


def test_a_reply_comes_in_the_language_that_is_asked_for(here: House, asked: dict[str, Any]) -> None:
    path = f"/v1/enquiries/{asked['enquiry']}/reply"
    texts = {here.get(f"{path}?language={language}").text for language in ("en", "de", "fr")}
    assert len(texts) == 3
    assert here.get(f"{path}?language=a%0Ab").status_code == 422
    assert here.get(f"{path.removesuffix('reply')}drawing.svg?language=3.0").status_code == 422
    assert here.get(f"{path.removesuffix('reply')}nothing.pdf").status_code == 404
    assert here.get(f"{path}.txt", "other").status_code == 404


def test_the_dealer_is_who_the_key_says(here: House) -> None:
    form = {**FORM, "enquiry": {"dealer": "Quayside Rigging"}}
    answer = here.post("/v1/enquiries", form).json()["answers"][0]
    assert answer["form"]["enquiry"]["dealer"] == "Hafenladen Ems"


def test_a_file_is_taken_over_as_a_job(here: House) -> None:
    with here.store.reading() as uow:
        record = uow.records.all()[0]
    good = record.model_copy(update={"reference": "2098-001"}).model_dump(mode="json", by_alias=True, exclude_none=True)
    lines = [good, {**good, "reference": "2098-002", "status": "sunk"}]
    content = "\n".join(json.dumps(line) for line in lines).encode()
    headers = here.head("desk", **{"Content-Type": "application/x-ndjson"})
    begun = here.client.post("/v1/imports?name=two.jsonl", content=content, headers=headers)
    assert begun.status_code == 202
    again = here.client.post("/v1/imports?name=two.jsonl", content=content, headers=headers)
    assert again.json() == begun.json()
    until(here.app.state.running.jobs.idle)
    job = here.get(begun.headers["location"], "desk").json()
    assert (job["work"], job["trouble"]) == ("done", None)
    assert here.get(f"/v1/jobs/{job['import_id']}", "desk").json() == {**job, "id": job["import_id"], "work": None}
    assert (job["state"], job["rows"], job["done"], job["created"], job["rejected"]) == ("done", 2, 2, 1, 1)
    assert [(fault["row"], fault["value"]) for fault in job["faults"]] == [(2, "sunk")]
    assert here.get("/v1/records/2098-001", "desk").status_code == 200


def test_a_recheck_is_asked_about_cancelled_and_gone_on_with(here: House) -> None:
    with here.store.writing() as uow:
        job = uow.jobs.add("recheck", "demo-1", {"catalogue": "demo-1"}, actor=Actor("bo"))
        uow.jobs.cancel(job.id)
        uow.commit()
    path = f"/v1/jobs/{job.id}"
    seen = here.get(path, "desk").json()
    assert (seen["kind"], seen["work"], seen["done"], seen["total"]) == ("recheck", "cancelled", 0, None)
    assert here.post(f"{path}/cancel", None, "desk").json()["type"] == "/problems/refused"
    resumed = here.post(f"{path}/resume", None, "desk")
    assert (resumed.status_code, resumed.json()["work"] in ("waiting", "running")) == (202, True)
    assert here.post(f"{path}/resume", None, "desk").json()["type"] == "/problems/refused"
    assert here.post(f"{path}/cancel", None, "desk").status_code == 202
    until(lambda: here.get(path, "desk").json()["work"] == "cancelled", 60.0)
    for way in ("", "/cancel", "/resume"):
        ask = here.get if not way else lambda at, who: here.post(at, None, who)
        assert ask(f"{path}{way}", "mine").status_code == 404
        assert ask(f"/v1/jobs/job-none{way}", "desk").status_code == 404
    with here.store.reading() as uow:
        assert [entry.action for entry in uow.audit.of(job.id)] == ["changed", "changed"]
