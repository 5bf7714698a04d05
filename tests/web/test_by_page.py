"""A refusal on a page names the page that mends it, and no command."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from service.cli.main import COMMANDS
from service.web import by_page as module
from service.web.by_page import by_page
from tests.support.offices import Office, csrf

FLOW = Path(module.__file__).parents[1] / "flow"


@pytest.mark.parametrize(
    ("path", "named"),
    [
        ("/desk/hulls/changes/99999/undo", "Changes to hull models"),
        ("/desk/house/keys/nobody/revoke", "Keys shows them"),
    ],
)
def test_a_refusal_names_the_page(here: Office, path: str, named: str) -> None:
    client = here.client("admin")
    word = csrf(client.get("/desk/hulls").text)
    said = client.post(path, data={"csrf": word, "why": "to see it"}, headers={"Sec-Fetch-Site": "same-origin"})
    assert said.status_code in {404, 409, 422}, said.text[:300]
    assert "transom " not in re.sub(r"<[^>]*>", "", said.text)
    assert named in said.text


def test_places_stand_for_commands_there_are() -> None:
    assert {name.split()[0] for name in module.PLACES} <= set(COMMANDS)


def test_what_use_cases_say_is_known_here() -> None:
    """Every command that a refusal names, but for those of files: of these the desk knows no page."""
    told = {
        one
        for file in FLOW.glob("*.py")
        for one in re.findall(r'f?"[^"\n]*`transom [a-z][^"\n]*"', file.read_text("utf-8"))
    }
    assert told
    left = {one for one in told if "`transom" in by_page(one) and "schema" not in one}
    assert left == set()
