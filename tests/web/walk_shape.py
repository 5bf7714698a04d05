"""What is known of a route that is walked through."""

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
