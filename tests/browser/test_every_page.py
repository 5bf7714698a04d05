"""Every page of the desk, looked at by a real browser: axe's rules, its width, its weight, and hostile texts."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Browser, Page

from tests.browser.conftest import NARROW, WIDE, Site, served, settled
from tests.support import hostile
from tests.support.offices import office
from tests.support.things import made
from tests.web.walk import NOBODY, WALKS

TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"]
HEAVIEST = 300_000
"""What a page may weigh with all it loads (bytes)."""
LOADED = (
    "performance.getEntriesByType('navigation').concat(performance.getEntriesByType('resource'))"
    ".map(one => one.decodedBodySize)"
)
PAGES = [walk for (method, _), walk in WALKS.items() if method == "GET"]


@pytest.fixture(scope="module")
def things(site: Site) -> dict[str, str]:
    return made(site.office.store)


@pytest.fixture(scope="module")
def bad(
    ledger: Path, browser: Browser, tmp_path_factory: pytest.TempPathFactory
) -> Iterator[tuple[Site, dict[str, str]]]:
    """Return a desk in which every text that came from outside is hostile."""
    folder = tmp_path_factory.mktemp("bad")
    file = shutil.copy(ledger, folder / "ledger.sqlite")
    with office(f"sqlite:///{file}", folder / "files") as opened, served(opened, browser) as running:
        yield running, made(opened.store, bad=True)


def shown(page: Page, path: str) -> bool:
    """Go to a page; say whether it is one (and no file to keep, nor a way to another)."""
    response = page.request.get(path, max_redirects=0)
    if response.status in {303, 307} or "attachment" in response.headers.get("content-disposition", ""):
        return False
    assert response.status == 200, (path, response.status, response.text()[:400])
    if not response.headers["content-type"].startswith("text/html"):
        return False
    settled(page, path)
    return True


def role(roles: tuple[str, ...]) -> str | None:
    return None if roles == NOBODY else "admin" if "admin" in roles else roles[0]


def against_the_rules(page: Page) -> dict[str, list[str]]:
    """Return what axe finds on the page as it is shown now: by its rule, the beginnings of the first few places."""
    said = Axe().run(page, options={"runOnly": {"type": "tag", "values": TAGS}}).response
    return {rule["id"]: [node["html"][:160] for node in rule["nodes"]][:4] for rule in said["violations"]}


def look(page: Page, *, narrow: bool) -> None:
    """Show the page as it is on a wide screen by day, or on a telephone by night."""
    page.set_viewport_size(NARROW if narrow else WIDE)  # type: ignore[arg-type]
    page.emulate_media(color_scheme="dark" if narrow else "light")
    page.evaluate("document.getAnimations().forEach(one => one.finish())")


@pytest.mark.parametrize("who", [None, "admin"], ids=["nobody", "admin"])
def test_axe_finds_nothing_and_pages_are_neither_wide_nor_heavy(
    site: Site, things: dict[str, str], who: str | None
) -> None:
    """Each page is loaded once, wide and light, and looked at again narrow and dark."""
    found = dict[str, Any]()
    with site.visit(who) as page:
        for walk in (one for one in PAGES if role(one.roles) == who):
            path = walk.path.format(**things)
            look(page, narrow=False)
            if not shown(page, path):
                continue
            for narrow in (False, True):
                look(page, narrow=narrow)
                found |= {f"{path} {rule} {narrow=}": places for rule, places in against_the_rules(page).items()}
            width, weight = page.evaluate("document.documentElement.scrollWidth"), sum(page.evaluate(LOADED))
            if width > NARROW["width"]:
                found[f"{path} is wide"] = width
            if weight > HEAVIEST:
                found[f"{path} is heavy"] = weight
    assert found == {}


def test_hostile_texts_stay_texts_on_every_page(bad: tuple[Site, dict[str, str]]) -> None:
    site, things = bad
    hurt: dict[str, str] = {}
    with site.visit("admin") as page:
        for walk in (one for one in PAGES if role(one.roles) == "admin"):
            path = walk.path.format(**things)
            if not shown(page, path):
                continue
            said = page.evaluate("[window.hurt, document.querySelectorAll('#hurt, img[src=x]').length]")
            handlers = page.evaluate(
                "[...document.querySelectorAll('*')].filter(one => [...one.attributes].some(a =>"
                " a.name.startsWith('on') || /^\\\\s*javascript:/i.test(a.value) && /href|src|action/.test(a.name))).length"
            )
            if said != [None, 0] or handlers or "1337" in page.inner_text("body"):
                hurt[path] = f"{said} {handlers}"
    assert hurt == {}


def test_the_hostile_texts_are_on_the_pages_that_were_looked_at(bad: tuple[Site, dict[str, str]]) -> None:
    """Else the sweep above would show nothing."""
    site, things = bad
    with site.visit("admin") as page:
        for place in (f"/desk/enquiries/{things['enquiry']}", f"/desk/fleet/{things['record']}"):
            assert page.request.get(place).text().count(hostile.SIGN) > 0, place
