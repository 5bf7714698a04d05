"""Whatever is sent, nothing falls over, nothing is kept, and the answer says what was wrong."""

from __future__ import annotations

import asyncio
import json
from typing import Any
from urllib.parse import quote

import httpx
import pytest

from service.api.shield import LARGEST
from tests.api.conftest import House, Refusal, told

DEEP = b'{"transom": ' * 50 + b"1" + b"}" * 50
BAD_JSON = {
    "not a number": (b'{"boat": {"loa_mm": NaN}}', 400, "NaN"),
    "without end": (b'{"boat": {"loa_mm": -Infinity}}', 400, "Infinity"),
    "too large a number": (b'{"boat": {"loa_mm": 1e999}}', 400, "too large"),
    "too long a number": (b'{"boat": {"year": ' + b"9" * 5000 + b"}}", 400, "too large"),
    "twice": (b'{"boat": {}, "boat": {}}', 400, "stands twice"),
    "deep": (DEEP, 400, "nested deeper"),
    "very deep": (b"[" * 200_000, 400, "nested deeper"),
    "half a letter": (b'{"notes": "\\ud800"}', 400, "half a letter"),
    "latin-1": ('{"notes": "Böe"}'.encode("latin-1"), 400, "not UTF-8"),
    "utf-16": ('{"notes": "a"}'.encode("utf-16"), 400, "not UTF-8"),
    "no object": (b"[1]", 400, "object"),
    "nothing": (b"", 400, "broken JSON at line 1"),
    "cut off": (b'{"boat": {"model": "Tarn', 400, "broken JSON"),
    "an unknown key": (b'{"boat": {"modell": "Tarnholt 36"}}', 422, "/boat/modell"),
    "out of bounds": (b'{"transom": {"rake_deg": 120}}', 422, "/transom/rake_deg"),
    "text of the wrong kind": (b'{"text": 7}', 422, "/text"),
}


@pytest.mark.parametrize("name", BAD_JSON)
@pytest.mark.parametrize("path", ["/v1/enquiries", "/v1/fits"])
def test_bad_json_is_refused_at_its_place(here: House, refused: Refusal, name: str, path: str) -> None:
    body, status, said = BAD_JSON[name]
    response = here.client.post(path, content=body, headers=here.head("mine", **{"Content-Type": "application/json"}))
    if path == "/v1/fits" and name in (
        "no object",
        "nothing",
        "text of the wrong kind",
        "an unknown key",
        "out of bounds",
    ):
        refused(response, 400 if response.status_code == 400 else 422)
    else:
        assert said in json.dumps(refused(response, status))


@pytest.mark.parametrize("kind", ["", "text/plain", "application/xml", "application/json; charset=utf-16", "x", "é"])
def test_other_media_types_are_refused(here: House, refused: Refusal, kind: str) -> None:
    headers = [*here.head("mine").items(), ("Content-Type", kind)]
    raw = [(name.encode(), value.encode("utf-8")) for name, value in headers]
    refused(here.client.post("/v1/enquiries", content=b"{}", headers=raw), 415)


@pytest.mark.parametrize("honest", [True, False])
def test_ten_megabytes_are_refused(here: House, refused: Refusal, honest: bool) -> None:  # noqa: FBT001 - a parameter of the test
    part = b" " * 1_000_000
    body = part * 10 if honest else (part for _ in range(10))
    headers = here.head("mine", **{"Content-Type": "application/json"})
    refused(here.client.post("/v1/enquiries", content=body, headers=headers), 413)


def test_a_slow_body_ends_in_time(here: House, refused: Refusal, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("service.api.shield.WHOLE_BODY_S", 0.2)

    async def slow() -> Any:  # noqa: ANN401 - an iterator of bytes
        yield b"{"
        await asyncio.sleep(30)
        yield b"}"

    async def ask() -> httpx.Response:
        transport = httpx.ASGITransport(app=here.app)
        async with httpx.AsyncClient(transport=transport, base_url="http://test") as client:
            headers = here.head("mine", **{"Content-Type": "application/json"})
            return await client.post("/v1/enquiries", content=slow(), headers=headers)

    refused(asyncio.run(ask()), 408)


def test_a_request_id_is_taken_over_only_where_it_is_plain(here: House) -> None:
    assert here.get("/health/live", **{"X-Request-ID": "a-b.c_1"}).headers["x-request-id"] == "a-b.c_1"
    for odd in ("a b", "x" * 65, "a\u00e9", '"'):
        got = here.client.get("/health/live", headers=[(b"X-Request-ID", odd.encode("latin-1"))])
        assert got.headers["x-request-id"] != odd
        assert len(got.headers["x-request-id"]) == 32


@pytest.mark.parametrize(
    "path",
    [
        "/v1/catalogues/..%2f..%2fetc%2fpasswd", "/v1/answers/%00", "/docs/../service/settings.py", "/docs/%2e%2e/x",
        "/v1/records/%F0%9F%9B%A5", "/problems/..%5c..", "//v1/enquiries", "/v1/enquiries/", "/v1/reports/%2e%2e",
        "/v1/enquiries/x/drawing.svg%00.json",
    ],
)  # fmt: skip
def test_tricks_with_paths_find_nothing(here: House, refused: Refusal, path: str) -> None:
    refused(here.get(path, "desk"), 404)


def test_other_methods_are_told_which_are_there(here: House) -> None:
    response = here.client.put("/v1/enquiries", headers=here.head("mine"))
    told(response, 405)
    assert set(response.headers["allow"].replace(" ", "").split(",")) == {"GET", "POST"}


def test_names_of_files_hold_no_folders(here: House, refused: Refusal) -> None:
    for name in ("../a.csv", "a\nb", "a/b.csv", "c:\\x.csv"):
        response = here.client.post(
            "/v1/imports",
            params={"name": name},
            content=b"x",
            headers=here.head("desk", **{"Content-Type": "text/csv"}),
        )
        refused(response, 422)


def test_a_file_that_is_no_table_is_refused_and_not_kept(here: House, refused: Refusal) -> None:
    headers = here.head("desk", **{"Content-Type": "text/csv"})
    for content in (b"", b"\0\1\2", b"PK\x03\x04 no zip", b"a,b\n1,2\n"):
        refused(here.client.post("/v1/imports?name=a.csv", content=content, headers=headers), 422)


@pytest.mark.parametrize("number", ["1e308", "-1e308", "99999999999999999", "-1", "1e999"])
@pytest.mark.parametrize("field", ["loa_mm", "displacement_kg", "year"])
def test_numbers_no_boat_has_are_refused(here: House, refused: Refusal, field: str, number: str) -> None:
    body = f'{{"boat": {{"{field}": {number}}}}}'.encode()
    headers = here.head("mine", **{"Content-Type": "application/json"})
    refused(here.client.post("/v1/enquiries", content=body, headers=headers), 400 if number == "1e999" else 422)


@pytest.mark.parametrize("trick", ["a\r\nX-Evil: 1", "a\nSet-Cookie: b", "\r\n\r\n<script>"])
def test_what_is_sent_back_in_headers_cannot_end_them(here: House, refused: Refusal, trick: str) -> None:
    """What a client names itself comes back in headers: ids of requests, cursors, names of files."""
    head = here.head("desk")
    for method, path, more, status in (
        ("GET", "/v1/records/x", {"headers": {**head, "X-Request-ID": trick}}, 404),
        ("GET", "/v1/records", {"headers": head, "params": {"after": trick}}, 400),
        ("GET", f"/v1/answers/{quote(trick, safe='')}", {"headers": head}, 404),
        ("POST", "/v1/imports", {"headers": head, "params": {"name": trick}, "content": b"x"}, 422),
    ):
        response = here.client.request(method, path, **more)
        refused(response, status)
        assert not {"x-evil", "set-cookie"} & set(response.headers)
        assert not any("\n" in value or "<script>" in value for value in response.headers.values())


def test_a_mail_may_be_larger_than_a_form(here: House) -> None:
    mail = b"From: a@example.com\r\nTo: b@example.org\r\nSubject: thanks\r\n\r\nThank you!\r\n" + b" " * (LARGEST + 10)
    headers = here.head("mine", **{"Content-Type": "message/rfc822"})
    response = here.client.post("/v1/enquiries", content=mail, headers=headers)
    assert response.status_code in (200, 201), response.text


@pytest.mark.parametrize("cursor", ["x", "%00", "W10", "WyJhIiwiYiJd", "é", "a" * 599])
def test_cursors_of_another_making_are_refused(here: House, cursor: str) -> None:
    for path in ("/v1/records", "/v1/enquiries"):
        response = here.client.get(path, params={"after": cursor}, headers=here.head("mine"))
        assert told(response, 400)["type"] == "/problems/bad-cursor"


def test_a_cursor_belongs_to_its_list(here: House) -> None:
    first = here.get("/v1/records?limit=3&stern=scoop").json()
    response = here.client.get("/v1/records", params={"after": first["next"]}, headers=here.head("mine"))
    assert told(response, 400)["type"] == "/problems/bad-cursor"
    assert here.client.get(
        "/v1/records", params={"after": first["next"], "stern": "scoop"}, headers=here.head("mine")
    ).is_success


def test_a_mail_of_the_same_id_from_two_dealers_stays_two(here: House) -> None:
    mail = (
        b"From: ada@example.com\r\nTo: desk@example.org\r\nMessage-ID: <one@example.com>\r\nSubject: gear for Tarnholt 36\r\n"
        b"\r\nWhat fits my Tarnholt 36? The transom is reverse, 985 mm high.\r\n"
    )
    found = [
        here.client.post(
            "/v1/enquiries", content=mail, headers=here.head(who, **{"Content-Type": "message/rfc822"})
        ).json()["answers"][0]
        for who in ("mine", "other")
    ]
    assert found[0]["enquiry"] != found[1]["enquiry"]
    assert here.get(f"/v1/enquiries/{found[0]['enquiry']}").json()["owner"] == "Hafenladen Ems"
