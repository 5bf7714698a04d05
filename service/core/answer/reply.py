"""The reply to whoever asked, made from the answer value and nothing else, in the words of a `Speech`."""

from __future__ import annotations

from service.core.answer import reply_parts as parts
from service.core.answer.letter import Block, Draft
from service.core.answer.shapes import Answer
from service.core.answer.speech import Speech


def reply(answer: Answer, speech: Speech) -> Draft:
    """Return the reply. Whoever writes is asked what is missing, and told what we suggest, why, and how sure we are."""
    blocks = [_opening(answer, speech)]
    if answer.suggestions and answer.fits:
        blocks += [
            parts.suggested(answer, speech),
            parts.why(answer, speech),
            parts.sure(answer, speech),
            parts.provided(answer, speech),
        ]
    elif answer.suggestions:
        blocks += [parts.nothing(answer, speech), parts.why(answer, speech), parts.sure(answer, speech)]
    else:
        blocks.append(Block(speech.say("heading-nothing"), (speech.say("reply-none"),)))
    blocks += [_questions(answer, speech), _cautions(answer, speech)]
    full = tuple(block for block in blocks if block.paragraphs or block.lists)
    boat = called(answer)
    subject = speech.say("reply-subject", boat=boat) if boat else speech.say("reply-subject-bare")
    return Draft(speech.language, subject, greeting(answer, speech), full, closing(speech))


def called(answer: Answer) -> str:
    """Return what the boat's model is called, as decided or as written; empty where nobody said."""
    hull = answer.hull
    return str(hull.model) if hull is not None and hull.model is not None else (answer.form.boat.model or "")


def greeting(answer: Answer, speech: Speech) -> str:
    """Return how whoever asked is greeted."""
    name = " ".join((answer.form.contact.name or "").split())
    return speech.say("reply-hello-name", name=name) if name else speech.say("reply-hello")


def closing(speech: Speech) -> tuple[str, ...]:
    """Return the last lines of a letter."""
    return speech.say("reply-regards"), speech.say("reply-desk")


def _opening(answer: Answer, speech: Speech) -> Block:
    boat = called(answer)
    between = answer.form.contact.role in ("dealer", "yard") or answer.form.enquiry.dealer
    whose = "other" if between else "owner"
    lines = [speech.say("reply-thanks", boat=boat, whose=whose) if boat else speech.say("reply-thanks-bare")]
    if answer.hull is None or answer.hull.status != "matched":
        lines.append(speech.say("reply-unsure"))
    return Block(paragraphs=(" ".join(lines),))


def _questions(answer: Answer, speech: Speech) -> Block:
    asked = tuple(map(speech.sentence, answer.asked)) or answer.questions
    return Block(speech.say("heading-ask"), lists=(("", asked),) if asked else (), numbered=True)


def _cautions(answer: Answer, speech: Speech) -> Block:
    told = tuple(speech.sentence(one) for one in answer.warned if not parts.is_backing(one)) or answer.cautions
    return Block(speech.say("heading-care"), lists=(("", told),))
