from __future__ import annotations

import json
from pathlib import Path

import pytest

from service.files.read.errors import Unreadable
from service.files.vault import Vault, digest
from service.flow.attach import attach, attached, check_files, exported
from service.flow.export_records import export_records
from service.flow.import_records import import_records
from service.flow.merge_records import merge_records
from service.flow.record_history import show_record
from service.flow.refusal import Refused
from service.store.unit import Store

JPEG, MAIL = b"\xff\xd8\xff photo", b"From: ada@example.com\nSubject: stern\n\nhello"


@pytest.fixture
def vault(tmp_path: Path) -> Vault:
    return Vault(tmp_path / "files")


def test_files_are_kept_listed_and_given_out_under_safe_names(store: Store, vault: Vault) -> None:
    files = [("../../stern.exe", JPEG), ("again.jpg", JPEG), ("letter", MAIL)]
    fresh = attach(store.writing(), vault, "2025-001", files, who="bo", note="from the yard")
    assert [(one.number, one.name, one.type, one.bytes) for one in fresh] == [
        (1, "stern.exe", "image/jpeg", len(JPEG)),
        (2, "letter", "message/rfc822", len(MAIL)),
    ]
    assert attach(store.writing(), vault, "2025-001", files, who="bo") == ()
    assert attached(store.reading(), "2025-001") == fresh
    given = dict(exported(store.reading(), vault, "2025-001"))
    assert given == {"2025-001-001-stern.jpg": JPEG, "2025-001-002-letter.eml": MAIL}


def test_one_bad_file_keeps_all_of_them_out(store: Store, vault: Vault) -> None:
    with pytest.raises(Unreadable, match=r"run\.sh: it is a script"):
        attach(store.writing(), vault, "2025-001", [("a.jpg", JPEG), ("run.sh", b"#!/bin/sh")], who="bo")
    assert attached(store.reading(), "2025-001") == ()
    assert list(vault.names()) == []
    with pytest.raises(Refused, match="no record '2026-9'"):
        attach(store.writing(), vault, "2026-9", [("a.jpg", JPEG)], who="bo")


def test_what_is_damaged_missing_or_stray_is_found(store: Store, vault: Vault) -> None:
    attach(store.writing(), vault, "2025-001", [("a.jpg", JPEG), ("b.eml", MAIL)], who="bo")
    stray = vault.keep(b"nobody speaks of it")
    assert check_files(store.reading(), vault).faults == ()
    (vault.folder / digest(JPEG)[:2] / digest(JPEG)).write_bytes(b"x")
    (vault.folder / digest(MAIL)[:2] / digest(MAIL)).unlink()
    found = check_files(store.reading(), vault)
    assert [(one.name, health) for one, health in found.faults] == [("a.jpg", "damaged"), ("b.eml", "missing")]
    assert (found.sound, found.strays) == (0, (stray,))
    with pytest.raises(Refused, match=r"a\.jpg of record 2025-001 is damaged"):
        dict(exported(store.reading(), vault, "2025-001"))


def test_a_merged_records_files_are_listed_with_what_it_went_into(store: Store, vault: Vault) -> None:
    attach(store.writing(), vault, "2025-002", [("a.jpg", JPEG)], who="bo")
    merge_records(store.writing(), "2025-001", "2025-002", who="bo")
    assert [one.reference for one in attached(store.reading(), "2025-001")] == ["2025-002"]
    assert [one.name for one in show_record(store.reading(), "2025-001").attached] == ["a.jpg"]


def test_a_records_files_are_named_where_it_is_shown_and_in_json_lines(store: Store, vault: Vault) -> None:
    attach(store.writing(), vault, "2025-001", [("a.jpg", JPEG)], who="bo")
    (shown,) = show_record(store.reading(), "2025-001").attached
    assert (shown.name, shown.sha256) == ("a.jpg", digest(JPEG))
    data = export_records(store.reading(), "jsonl")
    lines = {line["record.reference"]: line for line in map(json.loads, data.splitlines())}
    told = {"sha256": digest(JPEG), "name": "a.jpg", "type": "image/jpeg", "bytes": len(JPEG)}
    assert lines["2025-001"]["record.attachments"] == [told]
    assert "record.attachments" not in lines["2025-002"]
    again = import_records(store.writing(), data, "again.jsonl")
    assert (again.rejected, [*again.unchanged]) == ((), ["2025-001", "2025-002"])
