"""What there would be to offer, beside an enquiry."""

from __future__ import annotations

from service.flow.sign_in import Visitor
from service.store.enquiries import Enquiry
from service.web.desk import Desk


def panel(here: Desk, by: Visitor, enquiry: Enquiry) -> dict[str, object]:  # noqa: ARG001 - nothing is shown yet
    """Return what the panel of an enquiry shows."""
    return {}
