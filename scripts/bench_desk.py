"""How soon pages of the desk show something, with 10,000 records and as many enquiries, on loopback: a real browser's word.

First contentful paint (W3C Paint Timing) of fresh visits, medians and the most, in ms; beside it when the first byte came,
and what the page weighs with all it loads. The floor is the page to sign in with, which asks the database nothing.
"""

from __future__ import annotations

import argparse
import os
import shutil
import statistics
import tempfile
from contextlib import redirect_stdout
from dataclasses import dataclass
from pathlib import Path

from playwright.sync_api import Page, sync_playwright
from rich.console import Console

from service.api.log import configure
from service.cli.sheet import table
from service.flow.import_records import import_records
from service.store.unit import Store
from tests.browser.conftest import Site, served
from tests.support.offices import office
from tests.support.seeding import FIXTURES, seed
from tests.support.things import made
from tests.web.walk import NOBODY, WALKS

RECORDS, VISITS, AIM_MS = 10_000, 5, 300
FILE_MS = 120_000
"""How long a file may take that is asked for to see that it is none of the pages (ms)."""
TIMES = (
    "() => [performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? -1,"
    " performance.getEntriesByType('navigation')[0].responseStart,"
    " performance.getEntriesByType('navigation').concat(performance.getEntriesByType('resource'))"
    ".reduce((sum, one) => sum + one.decodedBodySize, 0)]"
)


@dataclass(frozen=True)
class Seen:
    """One page: its path, paints and first bytes in ms, its weight in bytes."""

    path: str
    paints: list[float]
    firsts: list[float]
    weight: float


def many(store: Store, count: int) -> None:
    """Bring the fleet to `count` records, each a copy of one of the demo's under another reference, and enquire of as many."""
    lines = (FIXTURES / "fleet.jsonl").read_text("utf-8").splitlines()
    copies = -(-count // len(lines)) - 1
    more = [line.replace('"reference":"', f'"reference":"{n}-').replace('"reference": "', f'"reference": "{n}-')
            for n in range(copies) for line in lines]  # fmt: skip
    import_records(store.writing(), "\n".join(more[: count - len(lines)]).encode(), "copies.jsonl")
    with store.reading() as uow:
        forms = [record.form for record, _ in zip(uow.records.all(), range(200), strict=False)]
    with store.writing() as uow:
        for number in range(count):
            uow.enquiries.add(forms[number % len(forms)], source="a letter", message_id=f"<many-{number}@example.org>")
        uow.commit()


def visited(site: Site, path: str) -> Seen | None:
    """Visit a page again and again, each time with nothing kept; None for what is no page."""
    paints, firsts, weight = [], [], 0.0
    with site.visit("admin") as page:
        if not _is_page(page, path):
            return None
    for _ in range(VISITS):
        with site.visit("admin") as page:
            page.goto(path, wait_until="load")
            page.wait_for_timeout(50)
            paint, first, weight = page.evaluate(TIMES)
            paints.append(paint)
            firsts.append(first)
    return Seen(path, paints, firsts, weight)


def _is_page(page: Page, path: str) -> bool:
    said = page.request.get(path, max_redirects=0, timeout=FILE_MS)
    kept = "attachment" in said.headers.get("content-disposition", "")
    return said.status == 200 and not kept and said.headers["content-type"].startswith("text/html")  # noqa: PLR2004 - HTTP's


def main() -> None:
    """Print the table."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--records", type=int, default=RECORDS)
    parser.add_argument("--only", default="", metavar="TEXT", help="pages whose path holds this")
    said = parser.parse_args()
    count = said.records
    configure()
    chromium = shutil.which("chromium") or shutil.which("chromium-browser")
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as playwright:
        url = f"sqlite:///{folder}/ledger.db"
        with Path(os.devnull).open("w", encoding="utf-8") as nowhere, redirect_stdout(nowhere):
            seed(url)
        browser = playwright.chromium.launch(executable_path=chromium, args=["--no-sandbox", "--disable-gpu"])
        with office(url, Path(folder) / "files") as opened, served(opened, browser) as site:
            many(opened.store, count)
            things = made(opened.store)
            walks = [walk for (method, _), walk in WALKS.items() if method == "GET"]
            paths = sorted({walk.path.format(**things) for walk in walks if walk.roles != NOBODY})
            found = [
                seen
                for path in ["/desk/sign-in", *(p for p in paths if said.only in p)]
                if (seen := visited(site, path))
            ]
        browser.close()
    rows = [
        (
            one.path.replace(things["enquiry"], "ENQUIRY").replace(things["answer"], "ANSWER")[:60],
            f"{statistics.median(one.paints):.0f}",
            f"{max(one.paints):.0f}",
            f"{statistics.median(one.firsts):.0f}",
            f"{one.weight / 1000:.0f}",
        )
        for one in found
    ]
    heads = ("page", ">paint ms", ">most", ">first byte ms", ">kB")
    Console(width=110, no_color=True, highlight=False).print(table(heads, rows, wraps=()))
    late = [one.path for one in found if statistics.median(one.paints) > AIM_MS]
    print(f"{count} records and as many enquiries; {len(found)} pages; over {AIM_MS} ms: {', '.join(late) or 'none'}")


if __name__ == "__main__":
    main()
