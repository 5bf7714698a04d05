"""A backup from anywhere: what it must not hold is refused, and nothing is written outside of any folder."""

from __future__ import annotations

import hashlib
import json
import stat
import zipfile
from datetime import UTC
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from service.core.archive import Kind, read, written
from service.files.read.archive import opened
from service.files.read.errors import Unreadable

ROWS = b'["a",1]\n["b",2]\n'
COLUMNS = [{"name": "id", "kind": "text"}, {"name": "n", "kind": "integer"}]


def _table(data: bytes = ROWS, **changed: object) -> dict[str, Any]:
    sha256 = hashlib.sha256(data).hexdigest()
    return {"name": "t", "columns": COLUMNS, "rows": 2, "bytes": len(data), "sha256": sha256, **changed}


def _manifest(**changed: object) -> dict[str, Any]:
    base = {"schema": "backup/1", "software": "x", "head": "0001", "taken": "2026-03-01T09:00:00Z"}
    return {**base, "tables": [_table()], "files": [], "lost": [], **changed}


def _pack(
    path: Path,
    manifest: object,
    *,
    rows: bytes = ROWS,
    more: tuple[zipfile.ZipInfo | str, ...] = (),
    data: bytes = b"x",
) -> Path:
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as pack:
        pack.writestr("tables/t.jsonl", rows)
        for one in more:
            pack.writestr(one, data)
        pack.writestr("manifest.json", json.dumps(manifest))
    return path


def _read(path: Path) -> list[str]:
    with opened(path) as archive:
        return [f"{fault.where}: {fault.what}" for fault in archive.faults(lambda _: None)]


def test_one_that_is_sound_is_read(tmp_path: Path) -> None:
    with opened(_pack(tmp_path / "b.zip", _manifest())) as archive:
        assert [row for row, _ in archive.rows(archive.manifest.tables[0])] == [["a", 1], ["b", 2]]
        assert archive.faults(lambda _: None) == []


def _link() -> zipfile.ZipInfo:
    info = zipfile.ZipInfo("files/link")
    info.external_attr = (stat.S_IFLNK | 0o777) << 16
    return info


@pytest.mark.parametrize(
    "more",
    [
        "../../outside",
        "/etc/outside",
        "C:\\outside",
        "files/../x",
        "tables/other.jsonl",
        "readme.txt",
        "folder/",
        _link(),
    ],
    ids=str,
)
def test_what_a_backup_does_not_hold_is_refused(more: zipfile.ZipInfo | str, tmp_path: Path) -> None:
    bad = _pack(tmp_path / "b.zip", _manifest(), more=(more,))
    with pytest.raises(Unreadable, match="holds nothing else"):
        _read(bad)
    assert list(tmp_path.iterdir()) == [bad]


@pytest.mark.parametrize(
    ("changed", "said"),
    [
        ({"schema": "backup/2"}, "newer transom"),
        ({"schema": "other/1"}, "schema"),
        ({"tables": [_table(name="../t")]}, "name"),
        ({"files": [{"sha256": "../../../etc/passwd", "bytes": 1}]}, "sha256"),
        ({"files": [{"sha256": "0" * 64, "bytes": 1}]}, "it is not there"),
        ({"tables": [_table(), _table()]}, "twice"),
        ({"tables": [_table(bytes=5)]}, "5 were written"),
        ({"tables": [_table(bytes=-1)]}, "bytes"),
        ({"extra": 1}, "extra"),
    ],
)
def test_a_manifest_that_does_not_fit_is_refused(changed: dict[str, Any], said: str, tmp_path: Path) -> None:
    with pytest.raises(Unreadable, match=said):
        _read(_pack(tmp_path / "b.zip", _manifest(**changed)))


@pytest.mark.parametrize(
    ("rows", "changed", "said"),
    [
        (ROWS, {"rows": 3}, "2 rows, and 3"),
        (ROWS, {"sha256": "0" * 64}, "SHA-256"),
        (b'["a","1"]\n["b",2]\n', {}, "row 1: '1' is no integer"),
        (b'["a",1]\n["b"]\n', {}, "row 2: this is no list of 2"),
        (b'["a",1]\n["b",2]', {}, "row 2 is longer than it may be, or has no end"),
        (b'["a",true]\n["b",2]\n', {}, "row 1"),
        (b"[" * 100_000 + b"\n", {}, "row 1"),
    ],
)
def test_what_is_wrong_is_told_with_its_place(rows: bytes, changed: dict[str, Any], said: str, tmp_path: Path) -> None:
    bad = _pack(tmp_path / "b.zip", _manifest(tables=[_table(rows, **changed)]), rows=rows)
    (fault,) = _read(bad)
    assert fault.startswith("tables/t.jsonl: ")
    assert said in fault


def test_one_that_unpacks_to_more_than_any_backup_is_refused_unread(tmp_path: Path) -> None:
    size = 300_000_000
    info = zipfile.ZipInfo("tables/t.jsonl")
    info.compress_type = zipfile.ZIP_DEFLATED
    with zipfile.ZipFile(tmp_path / "b.zip", "w", zipfile.ZIP_DEFLATED, compresslevel=1) as pack:
        with pack.open(info, "w", force_zip64=True) as stream:
            for _ in range(size // 10_000_000):
                stream.write(bytes(10_000_000))
        pack.writestr("manifest.json", json.dumps(_manifest(tables=[_table(bytes=size)])))
    with pytest.raises(Unreadable, match="unpack to more"):
        _read(tmp_path / "b.zip")


VALUES: dict[Kind, st.SearchStrategy[Any]] = {
    "text": st.text(),
    "integer": st.integers(-(2**63), 2**63 - 1),
    "real": st.floats(),
    "boolean": st.booleans(),
    "time": st.datetimes(timezones=st.just(UTC)).map(lambda at: at.replace(fold=0)),  # there is no second hour in UTC
    "date": st.dates(),
    "bytes": st.binary(max_size=40),
}


@given(st.lists(st.one_of(*(st.tuples(st.just(kind), st.none() | values) for kind, values in VALUES.items()))))
@settings(deadline=None, derandomize=True, max_examples=150)
def test_a_row_comes_back_as_it_was(cells: list[tuple[Kind, Any]]) -> None:
    kinds, row = [kind for kind, _ in cells], [value for _, value in cells]
    line = written(row, kinds)
    assert line.count(b"\n") == 1
    assert repr(read(line, kinds)) == repr(row)  # repr: nan is nan, 1 is not 1.0, -0.0 not 0.0
