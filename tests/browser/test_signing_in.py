"""Signing in with a real browser: its cookie, its forms, its keyboard."""

from __future__ import annotations

import os

import pytest
from playwright.sync_api import expect

from service.flow.manage_users import GIVEN_BYTES, add_user
from tests.browser.conftest import Site


@pytest.mark.parametrize("scripts", [True, False])
def test_somebody_new_signs_in_by_keyboard_and_chooses_a_password(site: Site, *, scripts: bool) -> None:
    login = f"gus{scripts:d}@example.com"
    unit = site.office.store.writing()
    made = add_user(unit, login, name="Gus Arden", role="admin", random=os.urandom(GIVEN_BYTES))
    with site.visit(None, scripts=scripts) as page:
        page.goto("/desk/account")
        page.get_by_label("Your mail address").focus()
        page.keyboard.type(login)
        page.keyboard.press("Tab")
        page.keyboard.type(made.password)
        page.keyboard.press("Enter")
        expect(page.get_by_role("heading", name="Gus Arden")).to_be_visible()
        page.get_by_label("Present password").fill(made.password)
        for label in ("New password", "New password once more"):
            page.get_by_label(label, exact=True).fill("plank barometer onion quay")
        page.get_by_role("button", name="Change it").click()
        expect(page.get_by_text("The new password is taken")).to_be_visible()
        page.get_by_role("button", name="Sign out").click()
        expect(page.get_by_role("heading", name="Sign in")).to_be_visible()
