"""The house with a real browser: merging, importing, somebody new, a report; with scripts and without, wide and narrow."""

from __future__ import annotations

import pytest
from playwright.sync_api import Page, expect

from service.core.record import HullModel
from tests.browser.conftest import Site

TABLE = (
    "Ref;Model;Yard;Year;LOA (m);Status;Gear;Lower;Upper;Shaft\n"
    "{0}-1;Selmarrow 31;Selmarrow;1975;9,42;installed;gear-720;hinge-270-420;hinge-60-170;shaft-1350\n"
    "{0}-2;Selmarrow 31;Selmarrow;soon;9,42;installed;gear-720;hinge-270-420;hinge-60-170;shaft-1350\n"
)
both = pytest.mark.parametrize("scripts", [True, False], ids=["scripts", "plain"])


def fits(page: Page) -> bool:
    """Say whether nothing is wider than the screen."""
    return bool(page.evaluate("document.documentElement.scrollWidth <= window.innerWidth"))


@both
def test_two_hull_models_are_merged_after_a_look_and_parted_again(site: Site, *, scripts: bool) -> None:
    twin = HullModel(
        id=f"twin-{scripts:d}", builder="Selmarrow", model="Selmarow 31", loa_mm=9420, beam_mm=2850, first_year=1971
    )
    with site.office.store.writing() as uow:
        uow.hulls.put([twin], who="test", why="twin")
        uow.commit()
    with site.visit(scripts=scripts) as page:
        page.goto("/desk/hulls/duplicates")
        if not scripts:
            page.get_by_role("link", name="Look for pairs").click()
        pair = (
            page.locator("section.pair")
            .filter(has_text=twin.id)
            .filter(has=page.get_by_text("selmarrow-31", exact=True))
        )
        pair.get_by_role("link", name="One: keep selmarrow-31").click()
        expect(page.get_by_role("heading", name="What would be done")).to_be_visible()
        page.get_by_role("button", name="Merge them").click()
        expect(page.get_by_text("leads to Selmarrow 31 from now on")).to_be_visible()
        expect(page.get_by_role("heading", name="Leading to it")).to_be_visible()
        page.get_by_role("button", name="Undo").click()
        expect(page.get_by_text("is taken back")).to_be_visible()
        expect(page.get_by_role("heading", name="Leading to it")).to_have_count(0)


@both
def test_a_table_is_imported_after_a_look_on_a_narrow_screen_and_undone(site: Site, *, scripts: bool) -> None:
    name = f"B{scripts:d}"
    with site.visit(scripts=scripts, narrow=True) as page:
        page.goto("/desk/imports")
        data = TABLE.format(name).encode()
        page.get_by_label("A file of records").set_input_files(
            {"name": "own.csv", "mimeType": "text/csv", "buffer": data}
        )
        page.get_by_role("button", name="Look at it").click()
        expect(page.get_by_label("LOA (m) becomes")).to_have_value("boat.loa_mm")
        page.get_by_role("button", name="See what would be done").click()
        expect(page.get_by_text("not taken", exact=True)).to_be_visible()
        assert not scripts or fits(page)
        page.get_by_role("button", name="Import it").click()
        expect(page.get_by_text("1 added; 1 not taken")).to_be_visible()
        page.get_by_role("button", name="Undo", exact=True).click()
        expect(page.get_by_text("1 rows of own.csv are undone")).to_be_visible()
    with site.office.store.reading() as uow:
        assert uow.records.get(f"{name}-1") is None


@both
def test_somebody_is_let_in_and_signs_in_with_the_password_shown_once(site: Site, *, scripts: bool) -> None:
    login = f"ines{scripts:d}@example.com"
    with site.visit("admin", scripts=scripts) as page:
        page.goto("/desk/house/users")
        page.get_by_label("Name", exact=True).fill("Ines Torvald")
        page.get_by_label("Mail address").fill(login)
        page.get_by_label("Role").select_option("fitter")
        page.get_by_role("button", name="Let them in").click()
        password = page.locator("code.secret").inner_text()
        page.get_by_role("link", name="All users").click()
        expect(page.get_by_text(login)).to_be_visible()
        expect(page.get_by_text(password)).to_have_count(0)
    with site.visit(None, scripts=scripts) as page:
        page.goto("/desk/sign-in")
        page.get_by_label("Your mail address").fill(login)
        page.get_by_label("Password").fill(password)
        page.get_by_role("button", name="Sign in").click()
        expect(page.get_by_role("heading", name="Ines Torvald")).to_be_visible()


@both
def test_a_report_shows_its_plots_and_is_kept_as_a_file(site: Site, *, scripts: bool) -> None:
    with site.visit(scripts=scripts) as page:
        page.goto("/desk/reports/accuracy")
        if not scripts:
            page.get_by_role("link", name="Make the report").click()
        drawn = page.locator(".plot svg").first
        expect(drawn).to_be_visible(timeout=30_000)
        size = drawn.bounding_box()
        assert size is not None
        assert size["width"] > 300
        assert size["height"] > 100
        with page.expect_download(timeout=30_000) as kept:
            page.get_by_role("link", name="XLSX").click()
        assert kept.value.suggested_filename == "accuracy.xlsx"
