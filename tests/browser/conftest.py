"""A running desk and Debian's chromium to look at it with: with scripts or without, wide or as narrow as a telephone."""

from __future__ import annotations

import shutil
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from threading import Thread

import pytest
import uvicorn
from playwright.sync_api import Browser, BrowserContext, Page, sync_playwright
from starlette.responses import Response
from starlette.types import ASGIApp, Receive, Scope, Send

from service.api.log import configure
from service.web.who import COOKIE
from tests.support.databases import Served
from tests.support.offices import Office, office
from tests.support.seeding import seed

DOOR = "/let-in/"
WIDE, NARROW = {"width": 1280, "height": 900}, {"width": 390, "height": 844}


@dataclass
class Site:
    """A desk that is served at an address, and a browser that looks at it."""

    office: Office
    address: str
    browser: Browser

    @contextmanager
    def visit(
        self, who: str | None = "desk", *, scripts: bool = True, narrow: bool = False, dark: bool = False
    ) -> Iterator[Page]:
        """Yield a page of somebody signed in. What the page says to the console or asks of other hosts fails at the end."""
        context: BrowserContext = self.browser.new_context(
            base_url=self.address,
            java_script_enabled=scripts,
            viewport=NARROW if narrow else WIDE,  # type: ignore[arg-type]
            color_scheme="dark" if dark else "light",
        )
        context.set_default_timeout(15_000)
        page = context.new_page()
        if who is not None:
            page.goto(f"{DOOR}{who}")
        faults: list[str] = []
        page.on("console", lambda said: faults.append(said.text) if said.type == "error" else None)
        page.on("pageerror", lambda error: faults.append(str(error)))
        page.on("request", lambda asked: None if asked.url.startswith(self.address) else faults.append(asked.url))
        yield page
        context.close()
        expected = (
            "the server responded with a status of 4",
            "the server responded with a status of 5",
            "htmx:afterRequest",  # what was still loading when the page was left
            "htmx:sendError",
            "htmx:sendAbort",
        )
        assert [said for said in faults if not any(one in said for one in expected)] == []


def _with_a_door(made: Office) -> ASGIApp:
    """Return the desk with an address that gives out cookies: a cookie bound to its host comes from that host alone."""

    async def door(scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] == "http" and scope["path"].startswith(DOOR):
            token = made.tokens[scope["path"].removeprefix(DOOR)]
            cookie = f"{COOKIE}={token}; Path=/; Secure; HttpOnly; SameSite=Lax"
            await Response("in", headers={"Set-Cookie": cookie})(scope, receive, send)
        else:
            await made.app(scope, receive, send)

    return door


@pytest.fixture(scope="session", autouse=True)
def _quiet() -> None:
    configure()


def settled(page: Page, path: str) -> None:
    """Go to a page and wait for what it loads by itself."""
    page.goto(path, wait_until="load")
    page.wait_for_function("() => !document.querySelector('.htmx-request')")


@pytest.fixture(scope="module")
def browser() -> Iterator[Browser]:
    """Start Debian's chromium, for one module: as long as it runs no other test of this process may have an event loop."""
    found = shutil.which("chromium") or shutil.which("chromium-browser")
    assert found, "chromium is not here; on Debian: apt-get install chromium"
    with sync_playwright() as playwright:
        started = playwright.chromium.launch(executable_path=found, args=["--no-sandbox", "--disable-gpu"])
        yield started
        started.close()


@contextmanager
def served(made: Office, browser: Browser) -> Iterator[Site]:
    """Serve a desk on a free port for as long as it is looked at."""
    server = uvicorn.Server(
        uvicorn.Config(_with_a_door(made), port=0, log_level="warning", access_log=False, lifespan="off")
    )
    thread = Thread(target=server.run, daemon=True)
    thread.start()
    ends = time.monotonic() + 20
    while not server.started and time.monotonic() < ends:
        time.sleep(0.02)
    port = server.servers[0].sockets[0].getsockname()[1]
    yield Site(made, f"http://127.0.0.1:{port}", browser)
    server.should_exit = True
    thread.join(20)


@pytest.fixture(scope="module")
def site(ledger: Path, browser: Browser, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Site]:
    """Return a desk on a copy of the seeded file, for one module."""
    folder = tmp_path_factory.mktemp("desk")
    file = shutil.copy(ledger, folder / "ledger.sqlite")
    with office(f"sqlite:///{file}", folder / "files") as made, served(made, browser) as running:
        yield running


@pytest.fixture(scope="module")
def site_on_a_server(
    served_databases: Served, browser: Browser, tmp_path_factory: pytest.TempPathFactory
) -> Iterator[Site]:
    """Return a desk on PostgreSQL, for one module."""
    url = served_databases.like(seed)
    with office(url, tmp_path_factory.mktemp("files")) as made, served(made, browser) as running:
        yield running


@pytest.fixture(scope="session")
def served_databases(request: pytest.FixtureRequest) -> Served:
    """Return what gives out databases on the PostgreSQL server of this run."""
    found = request.getfixturevalue("served")
    assert isinstance(found, Served)
    return found
