"""Every route of the desk: who may come in, and an address to try it at. No route is left out."""

from __future__ import annotations

from dataclasses import dataclass

DESK, SELLING, FITTING = ("desk", "admin"), ("desk", "admin", "dealer"), ("desk", "admin", "fitter")
ANYONE, ADMIN, NOBODY = ("desk", "dealer", "fitter", "admin"), ("admin",), ()


@dataclass(frozen=True)
class Walk:
    """Which roles a route lets in (NOBODY: it asks for none), and a path.

    {enquiry} and so on in it stand for what `tests.support.things.made` made. `other` says that another dealer's people find nothing there.
    """

    roles: tuple[str, ...]
    path: str
    other: bool = False


WALKS: dict[tuple[str, str], Walk] = {
    ("GET", "/"): Walk(ANYONE, "/desk/"),
    ("GET", "/sign-in"): Walk(NOBODY, "/desk/sign-in"),
    ("POST", "/sign-in"): Walk(NOBODY, "/desk/sign-in"),
    ("POST", "/sign-out"): Walk(ANYONE, "/desk/sign-out"),
    ("GET", "/account"): Walk(ANYONE, "/desk/account"),
    ("POST", "/account/password"): Walk(ANYONE, "/desk/account/password"),
    ("POST", "/account/factor"): Walk(ANYONE, "/desk/account/factor"),
    ("GET", "/enquiries"): Walk(SELLING, "/desk/enquiries"),
    ("POST", "/enquiries"): Walk(SELLING, "/desk/enquiries"),
    ("GET", "/enquiries/{enquiry_id}"): Walk(SELLING, "/desk/enquiries/{enquiry}", other=True),
    **{
        ("POST", f"/enquiries/{{enquiry_id}}/{what}"): Walk(SELLING, f"/desk/enquiries/{{enquiry}}/{what}", other=True)
        for what in ("form", "hull", "undo", "back", "close", "reopen", "note", "asker")
    },
    ("GET", "/help/{field}"): Walk(ANYONE, "/desk/help/transom.rake_deg"),
}
