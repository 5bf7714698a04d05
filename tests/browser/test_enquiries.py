"""An enquiry's way at the desk with a real browser: with scripts and without, wide and as narrow as a telephone."""

from __future__ import annotations

import re
from email import message_from_bytes, policy
from itertools import count

import pytest
from playwright.sync_api import Page, expect

from tests.browser.conftest import Site
from tests.support.seeding import FIXTURES

MAILS = FIXTURES / "enquiries"
_NUMBERS = count(1)


def mail(name: str = "demo") -> str:
    """Return a mail as somebody pastes it, with an id of its own."""
    found = message_from_bytes((MAILS / f"{name}.eml").read_bytes(), policy=policy.default)
    body = found.get_body()
    assert body is not None
    head = f"From: {found['From']}\nSubject: {found['Subject']}\nMessage-ID: <browser-{next(_NUMBERS)}@example.net>\n"
    return f"{head}Date: {found['Date']}\n\n{body.get_content()}"


def paste(page: Page, text: str) -> str:
    """Take a mail in by the form of the list, and return the address that it leads to."""
    page.goto("/desk/enquiries")
    page.get_by_label("A mail or a letter, pasted").fill(text)
    page.get_by_role("button", name="Read it").click()
    expect(page.get_by_role("heading", name="Letter", exact=True)).to_be_visible()
    return page.url.partition("#")[0]


@pytest.mark.parametrize(("scripts", "narrow"), [(True, False), (False, False), (True, True)])
def test_from_a_pasted_mail_to_a_form_two_people_agree_on(site: Site, *, scripts: bool, narrow: bool) -> None:
    with site.visit(scripts=scripts, narrow=narrow) as page, site.visit("second", scripts=scripts) as other:
        at = paste(page, mail())
        expect(page.locator("mark", has_text="985 mm")).to_be_visible()
        top = page.get_by_label("Height of the transom's top edge above the water", exact=True)
        expect(top).to_have_value("985")
        other.goto(at)

        top.fill("3 ft 2 1/2 in")
        if scripts:
            expect(page.get_by_text("= 977.9\u202fmm")).to_be_visible()
        page.get_by_label("How was it got: height of the transom's top edge above the water").select_option("laser")
        page.get_by_role("button", name="Save the form").click()
        expect(page.get_by_text("The form is saved")).to_be_visible()
        expect(top).to_have_value("977.9")
        expect(page.get_by_text("written here as “3 ft 2 1/2 in”")).to_be_visible()
        page.get_by_role("button", name="Undo").click()
        expect(page.get_by_text("It is as it was before")).to_be_visible()
        expect(top).to_have_value("985")
        page.get_by_role("button", name="Do it again").click()
        expect(top).to_have_value("977.9")

        other.get_by_label("Height of the transom's top edge above the water", exact=True).fill("99 cm")
        other.get_by_label("Width of the transom at the top", exact=True).fill("1,73 m")
        other.get_by_role("button", name="Save the form").click()
        expect(other.get_by_text("changed this form meanwhile")).to_be_visible()
        expect(other.get_by_text("It was 985\u202fmm.")).to_be_visible()
        other.get_by_role("radio", name="Ada Holm: 977.9\u202fmm").check()
        other.get_by_role("button", name="Save the form").click()
        expect(other.get_by_text("The form is saved")).to_be_visible()
        page.goto(at)
        expect(top).to_have_value("977.9")
        expect(page.get_by_label("Width of the transom at the top", exact=True)).to_have_value("1730")
        if narrow:
            assert page.evaluate("document.documentElement.scrollWidth") <= 390


def test_a_hull_model_is_looked_for_chosen_and_taken_back(site: Site) -> None:
    with site.visit(scripts=False) as page:
        paste(page, mail())
        page.get_by_text("Choose another, and see why").click()
        page.get_by_label("Look for a model").fill("Selmarrow 31")
        page.get_by_role("button", name="Look", exact=True).click()
        page.get_by_role("radio", name=re.compile("^Selmarrow 31 [^M]")).check()
        page.get_by_role("button", name="Take this one").click()
        expect(page.get_by_role("heading", name="Selmarrow 31, 1991")).to_be_visible()
        page.get_by_role("button", name="Undo").click()
        expect(page.get_by_role("heading", name="Tarnholt 36, 1991")).to_be_visible()


@pytest.mark.parametrize("scripts", [True, False])
def test_words_and_fields_lead_to_each_other_by_keyboard(site: Site, *, scripts: bool) -> None:
    with site.visit(scripts=scripts) as page:
        paste(page, mail())
        number = page.locator("#letter").get_by_role("link", name=re.compile("rake of the transom$")).first
        number.focus()
        page.keyboard.press("Enter")
        field = page.get_by_label("Rake of the transom", exact=True)
        expect(field).to_be_focused()
        page.keyboard.press("Shift+Tab")
        page.keyboard.press("Shift+Tab")
        page.keyboard.press("Enter")
        words = page.locator("mark", has_text="23 degrees")
        expect(words).to_be_in_viewport()
        expect(words).to_be_focused()


def test_a_dropped_file_is_read_at_once(site: Site) -> None:
    with site.visit() as page:
        page.goto("/desk/enquiries")
        text = mail("german")
        page.evaluate(
            """text => {
              const carried = new DataTransfer();
              carried.items.add(new File([text], 'brief.eml', {type: 'message/rfc822'}));
              const drop = new DragEvent('drop', {dataTransfer: carried, bubbles: true, cancelable: true});
              document.querySelector('[data-drop]').dispatchEvent(drop);
            }""",
            text,
        )
        expect(page.get_by_role("heading", name="Letter", exact=True)).to_be_visible()
        assert page.locator("mark").count() > 5


def test_a_chosen_file_that_asks_for_nothing_is_taken_in_anyway(site: Site) -> None:
    with site.visit(scripts=False) as page:
        page.goto("/desk/enquiries")
        content = (MAILS / "spares-order.eml").read_bytes()
        page.get_by_label("Or a file, dropped here or chosen").set_input_files(
            {"name": "parts.eml", "mimeType": "message/rfc822", "buffer": content}
        )
        page.get_by_role("button", name="Read it").click()
        expect(page.get_by_text("This reads as an order of parts")).to_be_visible()
        page.get_by_role("button", name="Take it in anyway").click()
        expect(page.get_by_text("Taken in with an empty form")).to_be_visible()
        expect(page.get_by_role("heading", name="Boat not named")).to_be_visible()


def test_on_the_first_day_the_list_says_how_to_begin(site: Site) -> None:
    with site.visit("other") as page:
        page.goto("/desk/enquiries")
        expect(page.get_by_text("Paste the first mail, or drop it as a file")).to_be_visible()
