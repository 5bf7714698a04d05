"""Templates into pages, or into the part of a page that a script asked for."""

from __future__ import annotations

import base64
import hashlib
import json
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, datetime
from functools import cache
from importlib import resources
from typing import Any
from urllib.parse import urlsplit

from fastapi import Request
from jinja2 import Environment, PackageLoader, StrictUndefined, pass_context
from jinja2.runtime import Context
from starlette.responses import HTMLResponse, Response

from service import __version__

NOTICE = "desk-notice"
ROOT = "/desk"
CONTENT = resources.files("service.web").joinpath("static")


@dataclass(frozen=True)
class Notice:
    """What is said once on the next page; `undo` is where taking it back is posted to."""

    text: str
    undo: str | None = None
    label: str = "Undo"


def page(
    request: Request,
    template: str,
    *,
    status: int = 200,
    part: str | None = None,
    **context: Any,  # noqa: ANN401 - of any template
) -> Response:
    """Return a page; where a script asks and there is a `part`, that template alone, made from the same values."""
    asked = in_part(request)
    name = part if part is not None and asked else template
    seen = getattr(request.state, "visitor", None)
    notice = None if asked and part else _notice(request)
    text = (
        _environment()
        .get_template(name)
        .render(
            visitor=seen,
            session_word=seen.csrf if seen else "",
            here=request.url.path,
            notice=notice,
            **context,
        )
    )
    response = HTMLResponse(text, status, headers={"Vary": "HX-Request"})
    if notice is not None:
        response.delete_cookie(NOTICE, path=ROOT)
    return response


def in_part(request: Request) -> bool:
    """Say whether a script asks, which takes a part of a page."""
    return request.headers.get("hx-request") == "true" and request.headers.get("hx-boosted") != "true"


def redirect(request: Request, to: str, notice: Notice | str | None = None) -> Response:
    """Return what sends the browser on after a form was taken, with something to say on the next page."""
    if request.headers.get("hx-request") == "true":
        response = Response(status_code=204, headers={"HX-Redirect": to})
    else:
        response = Response(status_code=303, headers={"Location": to})
    if notice is not None:
        said = notice if isinstance(notice, Notice) else Notice(notice)
        packed = base64.urlsafe_b64encode(json.dumps(vars(said)).encode()).decode()
        response.set_cookie(NOTICE, packed, max_age=60, path=ROOT, httponly=True, samesite="lax")
    return response


def within(path: str) -> str:
    """Return a path of the desk to go on to; the desk's first page where somebody made up another.

    >>> within("/desk/fleet?q=a"), within("https://elsewhere.example.com/desk/"), within("//elsewhere.example.com")
    ('/desk/fleet?q=a', '/desk/', '/desk/')
    """
    parts = urlsplit(path)
    inside = not parts.scheme and not parts.netloc and parts.path.startswith(f"{ROOT}/") and "\\" not in path
    return path if inside else f"{ROOT}/"


def _notice(request: Request) -> Notice | None:
    packed = request.cookies.get(NOTICE)
    try:
        said = json.loads(base64.urlsafe_b64decode(packed)) if packed else None
        found = Notice(str(said["text"]), said.get("undo"), str(said.get("label", "Undo"))) if said else None
    except (ValueError, KeyError, TypeError, AttributeError):
        return None
    if found is not None and found.undo is not None and within(str(found.undo)) != found.undo:
        return None
    return found


@cache
def _environment() -> Environment:
    made = Environment(
        loader=PackageLoader("service.web"),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
    )
    made.globals |= {"asset": asset, "version": __version__, "root": ROOT, "current": current}
    made.filters |= {"number": number, "percent": percent, "day": day, "moment": moment}
    return made


@cache
def asset(name: str) -> str:
    """Return the address of a file that pages load; another one when its content is another."""
    return f"{ROOT}/static/{name}?v={hashlib.sha256(CONTENT.joinpath(name).read_bytes()).hexdigest()[:10]}"


@pass_context
def current(context: Context, path: str) -> Mapping[str, str] | str:
    """Return the attribute that marks the link to where one is."""
    here = str(context["here"])
    return 'aria-current="page"' if here == path or here.startswith(f"{path}/") else ""


def number(value: float | None, digits: int = 0, unit: str = "") -> str:
    """Return a number for people, with a real minus and a narrow space before its unit.

    >>> number(-12.34, 1, "mm"), number(None)
    ('\u221212.3\u202fmm', '\u2013')
    """
    if value is None:
        return "\u2013"
    text = f"{value:.{digits}f}"
    text = text.removeprefix("-") if float(text) == 0 else text.replace("-", "\u2212")
    return f"{text}\u202f{unit}" if unit else text


def percent(value: float | None) -> str:
    """Return a share of 1 as a percentage, never as certain as 0 or 100 unless it is.

    >>> percent(0.997), percent(1.0), percent(0.004), percent(0.42)
    ('> 99\u202f%', '100\u202f%', '< 1\u202f%', '42\u202f%')
    """
    if value is None:
        return "\u2013"
    if 0 < value < 0.01 or 0.99 < value < 1:  # noqa: PLR2004 - a hundredth
        return f"{'<' if value < 0.5 else '>'} {1 if value < 0.5 else 99}\u202f%"  # noqa: PLR2004 - half
    return f"{100 * value:.0f}\u202f%"


def day(value: date | datetime | None) -> str:
    """Return a date as ISO 8601 writes it."""
    return "" if value is None else f"{value:%Y-%m-%d}"


def moment(value: datetime | None) -> str:
    """Return a time to the minute, in UTC."""
    return "" if value is None else f"{value:%Y-%m-%d %H:%M} UTC"
