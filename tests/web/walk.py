"""Every route of the desk: who may come in, and an address to try it at. No route is left out."""

from __future__ import annotations

from tests.web.walk_house import HOUSE
from tests.web.walk_shape import ADMIN, ANYONE, DESK, FITTING, NOBODY, SELLING, Walk

__all__ = ["ADMIN", "ANYONE", "DESK", "FITTING", "NOBODY", "SELLING", "WALKS", "Walk"]

WALKS: dict[tuple[str, str], Walk] = {
    **HOUSE,
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
    ("GET", "/help/value/{sort}"): Walk(ANYONE, "/desk/help/value/mm?text=1,27+m"),
    ("GET", "/help/{field}"): Walk(ANYONE, "/desk/help/transom.rake_deg"),
    ("GET", "/help/{field}/picture.svg"): Walk(ANYONE, "/desk/help/transom.rake_deg/picture.svg"),
    ("GET", "/enquiries/{enquiry_id}/fits"): Walk(SELLING, "/desk/enquiries/{enquiry}/fits", other=True),
    ("GET", "/enquiries/{enquiry_id}/fits/{rank}/stern.svg"): Walk(
        SELLING, "/desk/enquiries/{enquiry}/fits/1/stern.svg", other=True
    ),
    ("POST", "/enquiries/{enquiry_id}/try"): Walk(SELLING, "/desk/enquiries/{enquiry}/try", other=True),
    ("POST", "/enquiries/{enquiry_id}/keep"): Walk(SELLING, "/desk/enquiries/{enquiry}/keep", other=True),
    ("POST", "/enquiries/{enquiry_id}/place"): Walk(SELLING, "/desk/enquiries/{enquiry}/place", other=True),
    ("POST", "/enquiries/{enquiry_id}/ask"): Walk(SELLING, "/desk/enquiries/{enquiry}/ask", other=True),
    ("POST", "/enquiries/{enquiry_id}/send"): Walk(SELLING, "/desk/enquiries/{enquiry}/send", other=True),
    ("POST", "/enquiries/{enquiry_id}/reply.eml"): Walk(SELLING, "/desk/enquiries/{enquiry}/reply.eml", other=True),
    ("POST", "/enquiries/{enquiry_id}/letters/{step}/undo"): Walk(
        SELLING, "/desk/enquiries/{enquiry}/letters/1/undo", other=True
    ),
    ("GET", "/enquiries/{enquiry_id}/papers/{name}"): Walk(
        SELLING, "/desk/enquiries/{enquiry}/papers/stern.svg", other=True
    ),
    ("GET", "/enquiries/{enquiry_id}/answers/{answer_id}"): Walk(
        SELLING, "/desk/enquiries/{enquiry}/answers/{answer}", other=True
    ),
    ("GET", "/enquiries/{enquiry_id}/answers/{answer_id}/papers/{name}"): Walk(
        SELLING, "/desk/enquiries/{enquiry}/answers/{answer}/papers/stern.svg", other=True
    ),
    ("POST", "/enquiries/{enquiry_id}/answers/{answer_id}/copy"): Walk(
        SELLING, "/desk/enquiries/{enquiry}/answers/{answer}/copy", other=True
    ),
    ("GET", "/fleet"): Walk(ANYONE, "/desk/fleet"),
    ("GET", "/fleet/compare"): Walk(ANYONE, "/desk/fleet/compare?a={record}&b={second}"),
    ("GET", "/fleet/map"): Walk(ANYONE, "/desk/fleet/map?drawn=1"),
    ("GET", "/fleet/new"): Walk(SELLING, "/desk/fleet/new?answer={answer}", other=True),
    ("POST", "/fleet"): Walk(SELLING, "/desk/fleet", other=True),
    ("GET", "/fleet/{reference}"): Walk(ANYONE, "/desk/fleet/{record}"),
    ("GET", "/fleet/{reference}/drawing.svg"): Walk(ANYONE, "/desk/fleet/{record}/drawing.svg"),
    ("GET", "/fleet/{reference}/checked"): Walk(ANYONE, "/desk/fleet/{record}/checked"),
    ("POST", "/fleet/{reference}/files"): Walk(FITTING, "/desk/fleet/{record}/files"),
    ("GET", "/fleet/{reference}/files/{number}"): Walk(ANYONE, "/desk/fleet/{record}/files/1", other=True),
    ("POST", "/fleet/{reference}/back/{revision}"): Walk(FITTING, "/desk/fleet/{record}/back/1"),
    ("POST", "/fleet/{reference}/step"): Walk(DESK, "/desk/fleet/{record}/step"),
    ("GET", "/fleet/{reference}/merge"): Walk(DESK, "/desk/fleet/{record}/merge?other={second}"),
    ("POST", "/fleet/{reference}/merge"): Walk(DESK, "/desk/fleet/{record}/merge"),
    ("POST", "/fleet/{reference}/unmerge/{other}"): Walk(DESK, "/desk/fleet/{record}/unmerge/{second}"),
    ("GET", "/fleet/{reference}/edit"): Walk(DESK, "/desk/fleet/{record}/edit"),
    ("POST", "/fleet/{reference}/edit"): Walk(DESK, "/desk/fleet/{record}/edit"),
    ("GET", "/fleet/{reference}/measure"): Walk(FITTING, "/desk/fleet/{record}/measure"),
    ("POST", "/fleet/{reference}/measure"): Walk(FITTING, "/desk/fleet/{record}/measure"),
    ("GET", "/fleet/{reference}/installed"): Walk(FITTING, "/desk/fleet/{record}/installed"),
    ("POST", "/fleet/{reference}/installed"): Walk(FITTING, "/desk/fleet/{record}/installed"),
}
