"""A whole day at the desk: a mail comes in, an answer goes out, metal is shipped and fitted, and the list has learned."""

from __future__ import annotations

import re

import pytest
from playwright.sync_api import Page, expect

from tests.browser.conftest import Site
from tests.browser.test_enquiries import mail, paste

DESKS = [("site", True, False), ("site", False, False), ("site", True, True), ("site_on_a_server", True, False)]
NAMES = ["SQLite", "without scripts", "390 pixels", "PostgreSQL"]


def read_and_mend(page: Page, *, scripts: bool) -> str:
    """Take a mail in, mend a measurement in feet and inches, and return the address of the enquiry."""
    at = paste(page, mail())
    page.get_by_label("Height of the transom's top edge above the water", exact=True).fill("3 ft 3 in")
    page.get_by_role("button", name="Save the form").click()
    expect(page.get_by_text("The form is saved")).to_be_visible()
    if scripts:  # it comes by itself, and a page that is left meanwhile says that it did not
        expect(page.get_by_role("heading", name="What fits her")).to_be_visible()
    return at


def ask_and_answer(page: Page, at: str) -> None:
    """Ask the question that settles most, try what the answer brings, and freeze the reply."""
    page.goto(f"{at}/fits")
    expect(page.get_by_role("heading", name="What fits her")).to_be_visible()
    page.get_by_role("button", name="Mark as asked").click()
    expect(page.get_by_text("written down as asked")).to_be_visible()
    page.goto("/desk/enquiries?waits=them")
    expect(page.locator("main")).to_contain_text("Tarnholt 36")
    page.goto(f"{at}/fits")
    page.get_by_label("Offset to starboard, mm").fill("60")
    page.get_by_role("button", name="See the margins there").click()
    expect(page.locator("[data-kind=placed]")).to_contain_text("to starboard")
    page.get_by_role("button", name="Freeze as sent").click()
    expect(page.get_by_text("Frozen as sent; it is their move")).to_be_visible()


def propose_and_ship(page: Page) -> str:
    """Make a record of the frozen answer and ship it; return its reference."""
    page.get_by_role("link", name=re.compile("record", re.IGNORECASE)).first.click()
    page.get_by_role("button", name="Propose it").first.click()
    expect(page.get_by_role("heading", name="What is fitted, and where")).to_be_visible()
    reference = page.url.rpartition("/")[2].partition("?")[0].partition("#")[0]
    page.get_by_label("It is now").select_option("shipped")
    page.get_by_role("button", name="Write it down").click()
    expect(page.locator("main .stamp").first).to_contain_text("shipped")
    return reference


@pytest.mark.parametrize(("which", "scripts", "narrow"), DESKS, ids=NAMES)
def test_from_mail_to_what_was_fitted(
    request: pytest.FixtureRequest, which: str, *, scripts: bool, narrow: bool
) -> None:
    site: Site = request.getfixturevalue(which)
    with site.visit(scripts=scripts, narrow=narrow) as page:
        at = read_and_mend(page, scripts=scripts)
        ask_and_answer(page, at)
        reference = propose_and_ship(page)
    with site.visit("fitter", scripts=scripts, narrow=True) as page:
        page.goto(f"/desk/fleet/{reference}/installed")
        page.get_by_label("Lower collar above the water").fill("14 cm")
        page.get_by_label("yes", exact=True).check()
        page.get_by_role("button", name="Write it down").click()
        expect(page.get_by_text("is written down as installed")).to_be_visible()
    with site.visit(scripts=scripts, narrow=narrow) as page:
        page.goto(f"/desk/fleet/{reference}")
        expect(page.locator("main .stamp").first).to_contain_text("installed")
        expect(page.locator("main")).to_contain_text("140 mm")
        expect(page.get_by_text("Eva Sund").first).to_be_visible()
    with site.visit("admin", scripts=scripts, narrow=narrow) as page:
        page.goto("/desk/house/audit")
        expect(page.locator("main")).to_contain_text("Eva Sund")
    with site.visit("other", scripts=scripts, narrow=narrow) as page:
        assert page.goto(at).status == 404  # type: ignore[union-attr] # it goes somewhere


def test_the_main_job_by_keyboard_alone(site: Site) -> None:
    with site.visit() as page:
        page.goto("/desk/enquiries")
        reach(page, "A mail or a letter, pasted")
        page.keyboard.insert_text(mail())
        press(page, "Read it")
        expect(page.get_by_role("heading", name="Letter", exact=True)).to_be_visible()
        reach(page, "Height of the transom's top edge above the water")
        page.keyboard.press("Control+A")
        page.keyboard.type("99 cm")
        press(page, "Save the form")
        expect(page.get_by_text("The form is saved")).to_be_visible()
        expect(page.get_by_role("heading", name="What fits her")).to_be_visible()
        page.goto(page.url.partition("#")[0] + "/fits")
        press(page, "Freeze as sent")
        expect(page.get_by_text("Frozen as sent; it is their move")).to_be_visible()


def reach(page: Page, name: str, most: int = 400) -> None:
    """Press Tab until what has this name has the focus, as whoever has no mouse does."""
    said = (
        "() => { const one = document.activeElement; return one.labels?.length"
        " ? one.labels[0].innerText.trim() : one.getAttribute('aria-label') ?? one.innerText?.trim() ?? '' }"
    )
    for _ in range(most):
        page.keyboard.press("Tab")
        if page.evaluate(said) == name:
            ring = page.evaluate("getComputedStyle(document.activeElement).outlineStyle")
            assert ring != "none", f"{name} has the focus and does not show it"
            return
    raise AssertionError(f"{name} was not reached by {most} presses of Tab")


def press(page: Page, name: str) -> None:
    """Reach a button and press it."""
    reach(page, name)
    page.keyboard.press("Enter")
