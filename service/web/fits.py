"""What fits an enquiry's boat, suggestions side by side."""

from __future__ import annotations

from typing import Annotated

from fastapi import APIRouter, Query, Request
from starlette.responses import Response

from service.flow.draw_fit import catalogue_of, draw_stern
from service.flow.working_answer import working_answer
from service.web.desk import Here
from service.web.faults import NotFound
from service.web.fit_panel import Wanted, mine, shown, worked
from service.web.who import Selling

routes = APIRouter(prefix="/enquiries")


@routes.get("/{enquiry_id}/fits")
def show_fits(
    request: Request,
    here: Here,
    by: Selling,
    enquiry_id: str,
    look: Annotated[int, Query(ge=1, le=99)] = 1,
    language: Annotated[str | None, Query(max_length=40)] = None,
    ask: Annotated[list[str] | None, Query(max_length=100)] = None,
) -> Response:
    """Show what there would be to answer, worked out where it has to be."""
    wanted = Wanted(look=look, language=language, ask=tuple(ask) if ask is not None else None)
    return shown(request, worked(here, mine(here, by, enquiry_id), wanted))


@routes.get("/{enquiry_id}/fits/{rank}/stern.svg")
def stern_view(here: Here, by: Selling, enquiry_id: str, rank: int) -> Response:
    """Return a suggestion seen from aft, as a picture."""
    answer = working_answer(here.store, mine(here, by, enquiry_id))
    found = next((one for one in answer.suggestions if one.rank == rank), None)
    with here.store.reading() as uow:
        catalogue = catalogue_of(uow, answer)
        drawn = draw_stern(answer.form, found.fit, catalogue) if found and catalogue else None
    if drawn is None:
        raise NotFound("There is no such drawing.")
    return Response(drawn.svg, media_type="image/svg+xml")
