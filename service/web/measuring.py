"""How each measurement is taken: a sheet for every field of the boat form, with its picture."""

from __future__ import annotations

from typing import Annotated

from fastapi import APIRouter, Query, Request
from starlette.responses import JSONResponse, Response

from service.core import units
from service.core.boat import how_to_measure
from service.core.reading.gaps import KEY_FIELDS
from service.core.reading.pictures import PICTURES, Picture, picture_of
from service.files.write.picture_svg import picture_svg
from service.web.boat_fields import UNITS, Spec, groups, named
from service.web.enquiry_words import written
from service.web.faults import NotFound
from service.web.pages import page
from service.web.who import Anyone

routes = APIRouter(prefix="/help")


def fields() -> dict[str, Spec]:
    """Return the fields that have a sheet, by name: those with words or a picture of how they are measured."""
    every = {spec.path: spec for _, _, specs in groups() for spec in specs}
    every |= {path: Spec(path, "text") for path in PICTURES if path not in every}
    return {path: spec for path, spec in every.items() if how_to_measure(path) or picture_of(path)}


DIMENSIONS: dict[str, units.Dimension] = {"mm": "length", "deg": "angle", "kg": "mass"}


@routes.get("/value/{sort}")
def value(by: Anyone, sort: str, text: Annotated[str, Query(max_length=200)] = "") -> Response:  # noqa: ARG001 - the same
    """Return as JSON what a quantity is read as, for whoever is writing it: `said`, and whether it is `wrong`."""
    dimension = DIMENSIONS.get(sort)
    if dimension is None:
        raise NotFound("Quantities are in mm, deg or kg.")
    got = units.parse(text, dimension, assumed=units.SI_UNIT[dimension])
    if isinstance(got, units.Unread):
        return JSONResponse({"said": f"{got.reason}: {got.why}", "wrong": True})
    return JSONResponse({"said": f"= {written(got.value, f'_{sort}')}", "wrong": False})


@routes.get("/{field}")
def show(request: Request, by: Anyone, field: str) -> Response:  # noqa: ARG001 - whoever is signed in
    """Show how one field is measured."""
    spec = fields().get(field)
    if spec is None:
        raise NotFound("No such measurement is on the boat form.")
    picture, others = picture_of(field), [(path, named(path)) for path in fields() if path != field]
    return page(
        request, "enquiries/help.html", field=field, name=named(field), how=how_to_measure(field), picture=picture,
        drawn=drawn, why=KEY_FIELDS.get(field), unit=UNITS.get(spec.sort), others=others,
    )  # fmt: skip


@routes.get("/{field}/picture.svg")
def picture(by: Anyone, field: str) -> Response:  # noqa: ARG001 - whoever is signed in
    """Return the picture of how one field is measured."""
    found = picture_of(field)
    if found is None:
        raise NotFound("There is no picture of that.")
    return Response(drawn(found), media_type="image/svg+xml", headers={"Cache-Control": "private, max-age=86400"})


def drawn(one: Picture) -> str:
    """Return a picture as SVG; nothing in it comes from outside."""
    return picture_svg(one, one.says, width=220)
