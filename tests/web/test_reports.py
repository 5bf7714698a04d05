"""Reports at the desk: the page at once, the report after it, plots without styles, files as attachments."""

from __future__ import annotations

import io
import json
import re
import zipfile

import pytest

from service.flow.make_report import FORMATS, NAMES
from service.web.pages import CONTENT
from tests.support.offices import Office

HERE = "/desk/reports"
FILES = ("desk.css", "house.css", "desk.js", "htmx-2.0.11.min.js", "mark.svg")
LOADED = sum(len(CONTENT.joinpath(name).read_bytes()) for name in FILES)
"""What such a page loads besides (bytes)."""
SIGNS = {"xlsx": b"PK\x03\x04", "pdf": b"%PDF", "csv": b"PK\x03\x04", "parquet": b"PK\x03\x04", "json": b"{"}


@pytest.mark.parametrize("name", NAMES)
def test_the_page_comes_without_the_report_and_the_report_after_it(here: Office, name: str) -> None:
    client = here.client()
    page = client.get(f"{HERE}/{name}").text
    assert f'hx-get="/desk/reports/{name}?made=1"' in page
    assert f'href="/desk/reports/{name}?made=1"' in page  # for a browser without script
    assert 'id="made"' not in page
    late = (
        "&from=2025-01-01" if name == "unmet" else ""
    )  # every boat that nothing fits is tried with new metal: few will do
    made = client.get(f"{HERE}/{name}?made=1{late}", headers={"HX-Request": "true"}).text
    assert made.lstrip().startswith('<div id="made"')
    assert "<table" in made
    assert not re.search(r"\sstyle=|<style", made)
    assert len(page.encode()) + len(made.encode()) + LOADED < 300_000
    plots = made.count("<svg")
    assert (plots > 0) == (name in {"demand", "accuracy"}) or name == "unmet"


def test_filters_count_and_come_back_where_they_cannot_be_read(here: Office) -> None:
    client = here.client()
    every = client.get(f"{HERE}/demand?made=1").text
    late = client.get(f"{HERE}/demand?made=1&from=2020-01-01").text
    counted = [int(re.search(r"<dt>boats counted</dt><dd>(\d+)</dd>", text)[1]) for text in (every, late)]  # type: ignore[index]
    assert 0 < counted[1] < counted[0]
    assert "format=csv" in late
    assert "from=2020-01-01&amp;format=csv" in late
    for asked, field in (("from=soon", "from"), ("quarters=99", "quarters"), ("from=2024-02-01&to=2023-01-01", "to")):
        refused = client.get(f"{HERE}/demand?made=1&{asked}")
        assert refused.status_code == 422
        assert f'aria-describedby="{field}-said" aria-invalid="true"' in refused.text
    assert client.get(f"{HERE}/weather").status_code == 404


@pytest.mark.parametrize("format_", FORMATS["accuracy"])
def test_each_format_is_an_attachment(here: Office, format_: str) -> None:
    answer = here.client().get(f"{HERE}/accuracy/file?format={format_}")
    assert answer.status_code == 200
    assert answer.headers["content-disposition"].startswith("attachment; filename=")
    assert answer.headers["x-content-type-options"] == "nosniff"
    assert answer.content.startswith(SIGNS[format_])
    if format_ == "csv":
        with zipfile.ZipFile(io.BytesIO(answer.content)) as archive:
            assert {name.rpartition(".")[2] for name in archive.namelist()} == {"csv"}
            assert len(archive.namelist()) > 1


def test_findings_of_one_kind_are_those_of_the_file(here: Office) -> None:
    client = here.client()
    found = json.loads(client.get(f"{HERE}/quality/file?format=json").content)
    wanted = [one for one in found["findings"] if one["kind"] == "impossible"]
    assert wanted
    text = client.get(f"{HERE}/quality?made=1&kind=impossible").text
    assert text.count("cannot be true</td>") == len(wanted)
    assert client.get(f"{HERE}/quality/file?format=pdf").status_code == 422
