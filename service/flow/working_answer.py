"""What there would be to answer to an enquiry as its form stands: kept until the form or the fleet is another."""

from __future__ import annotations

from service.core.answer import Answer
from service.core.answer.compose import compose
from service.flow.hull_index import hull_index
from service.flow.known import gather
from service.flow.show_enquiry import hull_decided
from service.flow.software import SOFTWARE
from service.store.enquiries import Enquiry
from service.store.enquiry_steps import Draft
from service.store.persons import without_contact
from service.store.unit import Store, UnitOfWork


def kept_answer(uow: UnitOfWork, enquiry: Enquiry) -> Answer | None:
    """Return the answer that was worked out for this version and fleet, None where that has to be done."""
    with uow:
        draft = uow.steps.draft(enquiry.id)
        if draft is None or (draft.version, draft.stamp) != (enquiry.version, _stamp(uow)):
            return None
        return _with_asker(Answer.model_validate_json(draft.document), enquiry)


def working_answer(store: Store, enquiry: Enquiry) -> Answer:
    """Return what there would be to answer; worked out, where it has to be, while others may write, and then kept.

    NoCatalogueError where there is no catalogue to fit anything from.
    """
    with store.reading() as uow:
        kept = kept_answer(uow, enquiry)
        if kept is not None:
            return kept
        stamp, known = _stamp(uow), gather(uow)
        chosen = uow.hulls.among([enquiry.hull]).get(enquiry.hull) if enquiry.hull else None
        hull = hull_decided(hull_index(uow), enquiry, uow.steps.of(enquiry.id), chosen)
        answer = compose(enquiry.form, hull, known)
    answer = answer.model_copy(update={"enquiry": enquiry.id})
    bare = answer.model_copy(update={"form": without_contact(answer.form)})
    with store.writing() as uow:
        if uow.steps.version(enquiry.id) == enquiry.version:
            uow.steps.keep_draft(enquiry.id, Draft(enquiry.version, stamp, bare.model_dump_json(by_alias=True)))
            uow.commit()
    return answer


def _with_asker(answer: Answer, enquiry: Enquiry) -> Answer:
    form = answer.form.model_copy(update={"contact": enquiry.form.contact})
    return answer.model_copy(update={"form": form})


def _stamp(uow: UnitOfWork) -> str:
    return f"{uow.stamps.fleet()} {SOFTWARE}"
