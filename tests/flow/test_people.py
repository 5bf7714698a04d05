"""One person's data, given out and taken away, on both databases: everything of them goes, and nothing else."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest
import sqlalchemy as sa

from service.core.boat import BoatForm
from service.core.record import Record
from service.files.vault import Vault
from service.files.waiting import Waiting
from service.flow.attach import attach, check_files
from service.flow.export_records import export_records
from service.flow.import_records import import_records
from service.flow.people_erase import Erased, erase_person
from service.flow.people_export import export_person
from service.flow.people_find import find_people, somebody
from service.flow.people_retention import apply_retention, past_retention
from service.flow.refusal import Refused
from service.store import dialect, schema
from service.store.enquiry_steps import Draft
from service.store.happening import Actor
from service.store.unit import Store
from tests.flow.conftest import opened

NAME, MAIL, PHONE = "Ada Quell", "ada.quell@example.org", "+44 20 7946 0000"
NEEDLES = ("quell", "ada.q", "7946")
ADA = {"name": NAME, "email": MAIL, "phone": PHONE, "role": "owner"}
LETTER = f"From: {NAME} <{MAIL}>\nSubject: our ketch\n\nThe transom is 1 m high. {NAME}, {PHONE}\n"
OLD, NEW = datetime(2019, 3, 1, tzinfo=UTC), datetime(2024, 4, 1, tzinfo=UTC)
WHY = "asked for by letter"


def form(contact: dict[str, str], notes: str | None) -> BoatForm:
    said: dict[str, Any] = {
        "contact": contact,
        "boat": {"model": "Tarnholt 36", "year": 1991, "stern": "reverse", "name": "Heron"},
        "transom": {"top_height_mm": 985, "rake_deg": -23.5},
        "obstacles": [{"kind": "ladder", "side": "port", "note": notes}],
        "notes": notes,
        "methods": {"*": "tape"},
    }
    return BoatForm.model_validate(said)


def record(reference: str, contact: dict[str, str], status: str = "proposed", notes: str | None = None) -> Record:
    made = {"gear": "gear-720", "lower": "outrigger-250", "upper": "hinged-100", "shaft": "shaft-1350"}
    said = {"reference": reference, "status": status, "form": form(contact, notes), "configuration": made}
    return Record.model_validate({**said, "outcome": {"note": f"{notes} rang twice" if notes else None}})


@dataclass(frozen=True)
class Desk:
    url: str
    store: Store
    vault: Vault
    enquiry: str
    answer: str

    def cells(self) -> Iterator[tuple[str, str]]:
        """Yield every text of every table as the database holds it, with its column."""
        engine = dialect.connect(dialect.address(self.url))
        with engine.connect() as connection:
            for table in schema.metadata.sorted_tables:
                texts = [c for c in table.columns if isinstance(c.type, sa.String)]
                for row in connection.execute(sa.select(*texts)) if texts else ():
                    yield from ((f"{table.name}.{c.name}", text) for c, text in zip(texts, row, strict=True) if text)
        engine.dispose()

    def lines(self) -> str:
        return export_records(self.store.reading(), "jsonl").decode()

    def traces(self) -> list[str]:
        return [where for where, text in self.cells() if any(one in text.casefold() for one in NEEDLES)]


@pytest.fixture
def desk(url: str, tmp_path: Path) -> Iterator[Desk]:
    """Return a desk at which somebody is everywhere, beside somebody else of whom all must stay."""
    store, vault = opened(url), Vault(tmp_path / "files")
    other = {"name": "Bo Tarn", "email": "bo@example.net"}
    with store.writing() as uow:
        enquiry = uow.enquiries.add(form(ADA, f"call {NAME}"), source=LETTER, received=OLD, message_id=f"<1.{MAIL}>")
        uow.enquiries.add(form(other, "shaft is long"), source=f"{NAME} next berth told me", received=NEW)
        sent: dict[str, Any] = {
            "schema": "answer/1",
            "form": form(ADA, f"call {NAME}").model_dump(mode="json", exclude_none=True),
        }
        sent |= {"questions": [f"How high, {NAME}?"], "suggestions": [{"rank": 1, "shaft_mm": 1350.5}]}
        answer = uow.answers.add(enquiry, json.dumps(sent))
        uow.steps.add(enquiry, "edited", who="desk", form=form(ADA, f"ask {NAME} again"), waits="us")
        uow.steps.add(enquiry, "sent", who="desk", answer=answer, said=f"Dear {NAME}", waits="them")
        uow.steps.keep_draft(enquiry, Draft(2, "stamp", json.dumps(sent)))
        uow.records.add(record("r-1", ADA, notes=f"call {NAME}"), who="desk", why="answered")
        uow.records.revise(record("r-1", ADA, "shipped", f"call {NAME}"), who="desk", why=f"{MAIL} paid")
        uow.records.add(record("r-2", other, "installed"), who="desk", why="first")
        uow.commit()
    lines = record("r-3", ADA, "installed").model_dump_json(by_alias=True, exclude_none=True)
    assert import_records(store.writing(), lines.encode(), f"{NAME}.jsonl").created == ("r-3",)
    mail = f"Received: by mx.example.org\r\nFrom: {MAIL}\r\nDate: Mon, 4 Mar 2019 10:00:00 +0000\r\n\r\nHello\r\n"
    attach(store.writing(), vault, "r-1", [(f"{NAME}.eml", mail.encode())], who="desk", note=f"from {NAME}")
    yield Desk(url, store, vault, enquiry, answer)
    store.close()


def erase(desk: Desk, who: str = MAIL, **how: Any) -> Erased:  # noqa: ANN401 - what the use case takes
    return erase_person(desk.store.writing(Actor("desk")), desk.vault, who, why=WHY, **how)


def bare(one: Record) -> dict[str, Any]:
    said = one.model_dump(mode="json")
    said["form"].pop("contact")
    said["form"]["notes"] = said["outcome"]["note"] = None
    for thing in said["form"]["obstacles"]:
        thing["note"] = None
    return said


def test_nothing_of_a_person_is_left_and_all_else_is(desk: Desk) -> None:
    assert len(set(desk.traces())) > 10  # or there is nothing to show
    before = {where: text for where, text in desk.cells() if where.startswith("records.")}
    with desk.store.reading() as uow:
        was = {reference: [bare(r.record) for r in history] for reference, history in uow.records.histories().items()}
        technical = uow.enquiries.get(desk.enquiry)
    done = erase(desk)
    assert (done.enquiries, done.answers, done.records) == ((desk.enquiry,), (desk.answer,), ("r-1", "r-3"))
    assert done.left == {}
    assert desk.traces() == []
    with desk.store.reading() as uow:
        histories = uow.records.histories()
        assert {key: [bare(r.record) for r in history] for key, history in histories.items()} == was
        assert all(r.record.form.contact.name is None for r in histories["r-1"])
        assert histories["r-2"][0].record.form.contact.name == "Bo Tarn"
        now, sent = uow.enquiries.get(desk.enquiry), json.loads(uow.answers.get(desk.answer) or "")
        audit = uow.audit.of(done.contacts[0])
    assert technical is not None
    assert now is not None
    assert (now.form.boat, now.form.transom, now.form.methods) == (
        technical.form.boat,
        technical.form.transom,
        technical.form.methods,
    )
    assert (now.form.notes, now.form.obstacles[0].note, now.form.obstacles[0].side) == (None, None, "port")
    with desk.store.reading() as uow:
        edited, told = uow.steps.of(desk.enquiry)
        assert edited.form is not None
        assert (edited.form.notes, edited.form.transom) == (None, technical.form.transom)
        assert (told.answer, told.said) == (desk.answer, f"erased on 2024-05-01: {WHY}")
        assert uow.steps.draft(desk.enquiry) is None
    assert now.source.startswith(f"erased on 2024-05-01: {WHY}; sha256 ")
    assert sent["suggestions"] == [{"rank": 1, "shaft_mm": 1350.5}]
    assert [(one.action, one.kind, one.who) for one in audit] == [("removed", "contact", "desk")]
    assert {where: text for where, text in desk.cells() if where.startswith("records.")} == before
    assert not any(one in desk.lines().casefold() for one in NEEDLES)


def test_a_preview_changes_nothing_and_names_the_mails(desk: Desk) -> None:
    before = sorted(desk.cells())
    shown = erase(desk, preview=True)
    assert sorted(desk.cells()) == before
    assert (shown.preview, shown.revisions, [m.reference for m in shown.mails]) == (True, 3, ["r-1"])
    done = erase(desk)
    assert (shown.contacts, shown.enquiries, shown.records) == (done.contacts, done.enquiries, done.records)
    assert desk.vault.read(done.mails[0].sha256) is not None  # for somebody to decide


def test_what_waits_to_be_taken_in_goes_whoever_is_in_it(desk: Desk) -> None:
    waiting = Waiting(desk.vault.folder)
    name = waiting.put(f"owner\n{NAME}\n".encode(), datetime(2024, 5, 1, tzinfo=UTC))
    assert erase(desk, preview=True).waiting == 1
    assert waiting.get(name) is not None, "a preview takes nothing away"
    assert erase(desk).waiting == 1
    assert waiting.get(name) is None


def test_a_second_time_there_is_nobody(desk: Desk) -> None:
    erase(desk)
    before = sorted(desk.cells())
    with pytest.raises(Refused, match="nobody is held"):
        erase(desk)
    assert sorted(desk.cells()) == before


def test_attached_mails_give_way_to_a_note_where_that_is_said(desk: Desk) -> None:
    done = erase(desk, attachments=True)
    checked = check_files(desk.store.reading(), desk.vault)
    assert (checked.sound, checked.faults, checked.strays) == (1, (), ())
    with desk.store.reading() as uow:
        (left,) = uow.records.attachments.of(["r-1"])
    assert (left.number, left.name) == (1, "erased.txt")
    assert done.mails[0].sha256 in (desk.vault.read(left.sha256) or b"").decode()
    assert desk.vault.read(done.mails[0].sha256) is None


def test_the_imported_file_is_kept_without_them_and_a_failure_leaves_all(
    desk: Desk, monkeypatch: pytest.MonkeyPatch
) -> None:
    with desk.store.reading() as uow:
        (batch,) = uow.imports.all()
        was = uow.imports.files.get(batch.sha256)
    before = sorted(desk.cells())
    with monkeypatch.context() as patched:
        patched.setattr("service.store.people.People.sweep", _full)
        with pytest.raises(OSError, match="disk"):
            erase(desk)
    assert sorted(desk.cells()) == before  # one transaction: all of it or nothing
    (file,) = erase(desk).files
    assert file.found
    with desk.store.reading() as uow:
        (batch,) = uow.imports.all()
        now = uow.imports.files.get(batch.sha256)
    assert MAIL.encode() in was
    assert not any(one in now.decode().casefold() for one in NEEDLES)
    assert json.loads(now)["form"]["transom"] == json.loads(was)["form"]["transom"]


def _full(*_: object, **__: object) -> None:
    raise OSError("the disk is full")


def test_everything_is_given_out_with_what_could_not_be_seen(desk: Desk) -> None:
    found = export_person(desk.store.writing(Actor("desk")), NAME)
    assert [one["email"] for one in found["contacts"]] == [MAIL]
    (asked,) = found["enquiries"]
    assert asked["mail"] == LETTER
    assert asked["answers"][0]["document"]["questions"] == [f"How high, {NAME}?"]
    assert [(one["reference"], one["revisions"]) for one in found["records"]] == [("r-1", [1, 2]), ("r-3", [1])]
    assert [one["names_them"] for one in found["imports"]] == [True]
    assert found["named_in"]["record_revisions.why"] == 2  # who paid, and the name of the imported file
    assert found["not_looked_into"]
    with desk.store.reading() as uow:
        assert [one.action for one in uow.audit.of(found["contacts"][0]["id"])] == ["read"]


def test_people_are_found_by_parts_and_meant_by_wholes(desk: Desk) -> None:
    reading = desk.store.reading()
    assert [one.email for one in find_people(reading, "quell")] == [MAIL]
    assert [one.email for one in find_people(reading, "7946 00")] == [MAIL]
    assert find_people(reading, "nobody here") == ()
    assert somebody(reading, "0044 20 7946 0000".replace("00", "", 1)).said[0].name == NAME
    with pytest.raises(Refused, match="nobody is held by 'quell'"):
        somebody(reading, "quell")
    with pytest.raises(Refused, match="names the person"):
        erase_person(desk.store.writing(), desk.vault, MAIL, why=f"{NAME} asked")


def test_a_namesake_is_told_apart_and_loses_nothing(desk: Desk) -> None:
    with desk.store.writing() as uow:
        same = {"name": NAME, "email": "other@example.com"}
        theirs = uow.enquiries.add(form(same, None), source=f"I am {NAME} too", received=NEW)
        uow.commit()
    with pytest.raises(Refused, match="more than one person"):
        erase(desk, NAME)
    done = erase(desk, MAIL)
    assert len(done.namesakes) == 1
    with desk.store.reading() as uow:
        kept = uow.enquiries.get(theirs)
    assert kept is not None
    assert (kept.source, kept.form.contact.name) == (f"I am {NAME} too", NAME)
    assert not any(MAIL in text or "7946" in text for _, text in desk.cells())


def test_those_not_heard_of_go_unless_a_boat_carries_something_of_ours(desk: Desk) -> None:
    with desk.store.writing() as uow:
        gone = {"name": "Cy Marl", "email": "cy@example.com"}
        uow.enquiries.add(form(gone, None), source="hello from Cy Marl", received=OLD)
        uow.records.add(record("r-9", gone), who="desk", why="answered")
        again = {"name": "Di Holm", "email": "di@example.com"}
        for at in (OLD, NEW):
            uow.enquiries.add(form(again, None), source="hello", received=at)
        withdrawn = {"name": "Ed Vann", "email": "ed@example.com"}
        uow.enquiries.add(form(withdrawn, None), source="hello", received=OLD)
        for status in ("shipped", "withdrawn"):
            one = record("r-10", withdrawn, status)
            uow.records.add(one, who="desk", why="x") if status == "shipped" else uow.records.revise(
                one, who="d", why="x"
            )
        uow.commit()
    limit = datetime(2022, 1, 1, tzinfo=UTC)
    (due,) = past_retention(desk.store.reading(), limit)
    assert (due.who.said[0].name, due.heard) == ("Cy Marl", OLD)
    assert past_retention(desk.store.reading(), OLD) == ()
    done = apply_retention(desk.store.writing(), desk.vault, limit, why="held longer than set")
    assert done is not None
    assert done.records == ("r-9",)
    assert not any("Cy Marl" in text or "cy@example" in text for _, text in desk.cells())
    assert {one.name for one in find_people(desk.store.reading(), "")} == {NAME, "Bo Tarn", "Di Holm", "Ed Vann"}
    assert apply_retention(desk.store.writing(), desk.vault, limit, why="again") is None
