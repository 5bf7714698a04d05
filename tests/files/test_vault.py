"""Files by content: kept whole, found damaged, and told by what they are and not by what they are called."""

from __future__ import annotations

from pathlib import Path

import pytest

from service.files.read.errors import Unreadable
from service.files.read.media import LARGEST, media_type
from service.files.vault import Vault, digest


@pytest.mark.parametrize(
    ("data", "kind"),
    [
        (b"\x89PNG\r\n\x1a\n...", "image/png"),
        (b"\xff\xd8\xff\xe0...", "image/jpeg"),
        (b"RIFF\x00\x00\x00\x00WEBPVP8 ", "image/webp"),
        (b"%PDF-1.7\n", "application/pdf"),
        (b"  0\nSECTION\n  2\nHEADER\n", "image/vnd.dxf"),
        (b"From: Ada <ada@example.com>\nSubject: stern\n\nhello", "message/rfc822"),
        (b"<svg onload='alert(1)'>", "text/plain"),  # never shown as what it says
        (b"<html><script>", "text/plain"),
        ("Höhe 98 cm".encode(), "text/plain"),
    ],
)
def test_the_kind_is_told_by_content(data: bytes, kind: str) -> None:
    assert media_type(data, "photo.jpg") == kind


@pytest.mark.parametrize(
    ("data", "says"),
    [
        (b"", "it is empty"),
        (b"MZ\x90\x00", "a program"),
        (b"\x7fELF\x02", "a program"),
        (b"#!/bin/sh\nrm -rf /", "a script"),
        (b"PK\x03\x04....", "an archive"),
        (b"abc\x00def", "no kind that is kept"),
        (b"\xff\xd8\xff" + bytes(LARGEST), "25.0 MB, more than the 25 MB"),
    ],
)
def test_what_is_not_kept_says_why_and_what_is(data: bytes, says: str) -> None:
    with pytest.raises(Unreadable, match=rf"stern\.jpg: .*{says}"):
        media_type(data, "stern.jpg")


def test_what_is_kept_comes_back_and_stands_once(tmp_path: Path) -> None:
    vault = Vault(tmp_path / "files")
    name = vault.keep(b"one")
    assert name == digest(b"one") == vault.keep(b"one")
    assert vault.read(name) == b"one"
    assert list(vault.names()) == [name]
    assert [p.name for p in (tmp_path / "files").rglob("*") if p.is_file()] == [name]  # nothing half is left


def test_what_is_damaged_or_gone_is_told_and_never_given_out(tmp_path: Path) -> None:
    vault = Vault(tmp_path)
    name, other = vault.keep(b"one"), vault.keep(b"two")
    (tmp_path / name[:2] / name).write_bytes(b"onE")
    (tmp_path / other[:2] / other).unlink()
    assert (vault.health(name), vault.health(other)) == ("damaged", "missing")
    assert vault.read(name) is None
    assert vault.read(other) is None
    vault.keep(b"one")  # brought again, it is mended
    assert vault.health(name) == "sound"


@pytest.mark.parametrize("name", ["../../etc/passwd", "", "A" * 64, "g" * 64, "ab"])
def test_a_name_that_is_no_hash_reaches_no_file(tmp_path: Path, name: str) -> None:
    with pytest.raises(ValueError, match="no SHA-256"):
        Vault(tmp_path).read(name)
