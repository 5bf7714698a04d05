"""The fleet in a real browser: found while typing, compared, drawn, amended by two, and written down on a telephone."""

from __future__ import annotations

import io
import re

import pytest
from PIL import Image
from playwright.sync_api import Page, expect

from service.core.record import Record
from service.flow.record_history import show_record
from tests.browser.conftest import Site

DRAWN = "one => one.decode().then(() => one.naturalWidth)"


def first(site: Site, status: str, place: int = 0) -> Record:
    with site.office.store.reading() as uow:
        return [record for record in uow.records.all() if record.status == status][place]


def photo() -> dict[str, object]:
    out = io.BytesIO()
    Image.new("RGB", (40, 30), "red").save(out, "JPEG")
    return {"name": "stern.jpg", "mimeType": "image/jpeg", "buffer": out.getvalue()}


def test_the_list_follows_what_is_typed_and_the_address_with_it(site: Site) -> None:
    with site.visit() as page:
        page.goto("/desk/fleet")
        expect(page.locator(".count")).to_contain_text("600 records")
        page.get_by_label("Search").press_sequentially("tarnholt 36")
        expect(page.locator(".count")).not_to_contain_text("600")
        for row in page.locator("#found tbody tr").all():
            expect(row).to_contain_text("Tarnholt 36")
        expect(page).to_have_url(re.compile(r"q=tarnholt(\+|%20)36"))
        page.get_by_label("Sort by").select_option("year")
        expect(page).to_have_url(re.compile("sort=year"))
        page.reload()
        expect(page.get_by_label("Search")).to_have_value("tarnholt 36")
        page.get_by_label("Search").fill("no such boat")
        expect(page.get_by_text("Nothing found")).to_be_visible()


def test_without_scripts_it_is_found_compared_and_drawn_all_the_same(site: Site) -> None:
    with site.visit(scripts=False) as page:
        page.goto("/desk/fleet")
        page.get_by_label("Search").fill("wendrake 28")
        page.get_by_role("button", name="Find").click()
        expect(page.locator("#found tbody tr").first).to_contain_text("Wendrake 28")
        for place in (0, 1):
            page.locator("input[name=pick]").nth(place).check()
        page.get_by_role("button", name="beside each other").click()
        expect(page.get_by_role("heading", name="What differs")).to_be_visible()
        expect(page.get_by_role("img", name="Both sterns over each other, from aft")).to_be_visible()
        page.goto("/desk/fleet/map")
        page.get_by_role("link", name="Draw it").click()
        expect(page.locator(".multiples figure")).to_have_count(6)
        page.goto("/desk/fleet/2003-006")
        page.get_by_role("link", name="Draw it where it sits").click()
        drawing = page.get_by_role("img", name="Record 2003-006 from the side")
        assert drawing.evaluate(DRAWN) > 0


def test_a_record_draws_itself_and_the_map_too(site: Site) -> None:
    with site.visit() as page:
        page.goto("/desk/fleet/2003-006")
        page.locator("#drawn").scroll_into_view_if_needed()
        drawing = page.get_by_role("img", name="Record 2003-006 from the side")
        assert drawing.evaluate(DRAWN) > 0
        page.goto("/desk/fleet/map")
        expect(page.locator(".multiples figure")).to_have_count(6)
        page.get_by_text("As a table").first.click()
        expect(page.get_by_role("region", name="plumb, as a table")).to_be_visible()


def test_a_correction_by_keyboard_and_its_undo(site: Site) -> None:
    record = first(site, "installed", 11)
    with site.visit() as page:
        page.goto(f"/desk/fleet/{record.reference}")
        page.get_by_role("link", name="Correct").focus()
        page.keyboard.press("Enter")
        page.get_by_label("Boat's name").focus()
        page.keyboard.type("Petrel")
        page.get_by_label("Why", exact=True).focus()
        page.keyboard.type("on her stern")
        page.keyboard.press("Enter")
        expect(page.get_by_role("heading", level=1)).to_contain_text("Petrel")
        page.get_by_role("button", name="Undo").focus()
        page.keyboard.press("Enter")
        expect(page.get_by_role("heading", level=1)).not_to_contain_text("Petrel")


@pytest.mark.parametrize("scripts", [True, False])
def test_the_second_of_two_sees_both_values_and_chooses(site: Site, *, scripts: bool) -> None:
    record = first(site, "installed", 12 + scripts)
    at = f"/desk/fleet/{record.reference}/edit"
    with site.visit("desk", scripts=scripts) as ada, site.visit("second", scripts=scripts) as bo:
        for page, year in ((ada, "1983"), (bo, "1984")):
            page.goto(at)
            page.get_by_label("Year built").fill(year)
            page.get_by_label("Why", exact=True).fill(f"{year} is on the plate")
        ada.get_by_role("button", name="Correct it").click()
        expect(ada.get_by_text("is corrected")).to_be_visible()
        bo.get_by_role("button", name="Correct it").click()
        expect(bo.get_by_role("heading", name="Somebody else was quicker")).to_be_visible()
        bo.get_by_label("1984").check()
        bo.get_by_role("button", name="Write down what I chose").click()
        expect(bo.get_by_text("is corrected")).to_be_visible()
    with site.office.store.reading() as uow:
        assert show_record(uow, record.reference).record.form.boat.year == 1984


def fill_in(page: Page, record: Record) -> None:
    page.goto("/desk/fleet")
    page.get_by_role("link", name=record.reference).click()
    page.get_by_label("Or choose some").set_input_files(photo())  # type: ignore[arg-type] # playwright's own shape
    page.get_by_label("cm", exact=True).check()
    page.get_by_label("Lower collar above the water").fill("41,5")
    page.get_by_label("Height of the transom's top edge above the water", exact=True).fill("3 ft 4 in")
    page.get_by_label("no", exact=True).check()
    page.get_by_label("What was different, and why").fill("a locker in the way")


@pytest.mark.parametrize("scripts", [True, False])
def test_a_fitter_fills_in_the_form_on_a_telephone_with_a_photo(site: Site, *, scripts: bool) -> None:
    record = first(site, "shipped")
    with site.visit("fitter", scripts=scripts, narrow=True, dark=scripts) as page:
        fill_in(page, record)
        assert page.evaluate("document.documentElement.scrollWidth") <= 390 if scripts else True
        page.get_by_label("Rake of the transom", exact=True).fill("steep")  # a slip first: nothing typed is lost by it
        page.get_by_role("button", name="Write it down").click()
        expect(page.get_by_text("1 photo is kept already")).to_be_visible()
        expect(page.get_by_label("Lower collar above the water")).to_have_value("41,5")
        page.get_by_label("Rake of the transom", exact=True).fill("")
        page.get_by_role("button", name="Write it down").click()
        expect(page.get_by_text("is written down as installed")).to_be_visible()
    with site.office.store.reading() as uow:
        now = show_record(uow, record.reference)
    assert now.record.status == "installed"
    assert now.record.placement.lower_height_mm == 415
    assert now.record.form.transom.top_height_mm == pytest.approx(40 * 25.4)  # an inch is 25.4 mm (ISO 31-1)
    assert [one.name for one in now.attached] == ["stern.jpg"]


def test_what_was_typed_is_there_again_after_the_connection_was_lost(site: Site) -> None:
    record = first(site, "shipped")
    with site.visit("fitter", narrow=True) as page:
        fill_in(page, record)
        page.goto("/desk/fleet")  # as if the telephone had closed the page
        page.get_by_role("link", name=record.reference).click()
        expect(page.get_by_label("Lower collar above the water")).to_have_value("41,5")
        expect(page.get_by_label("cm", exact=True)).to_be_checked()
        expect(page.get_by_label("What was different, and why")).to_have_value("a locker in the way")


def test_targets_of_the_fitters_form_are_large(site: Site) -> None:
    record = first(site, "shipped")
    with site.visit("fitter", narrow=True) as page:
        page.goto(f"/desk/fleet/{record.reference}/installed")
        small = page.evaluate(
            "[...document.querySelectorAll('.site form input:not([type=hidden]), .site form select, .site form button')]"
            ".map(one => (one.type === 'radio' ? one.closest('label') : one).getBoundingClientRect())"
            ".filter(box => box.height < 44).length"
        )
        assert small == 0
