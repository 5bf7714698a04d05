"""A letter that only asks: what is missing, one question a measurement, in the words of a `Speech`."""

from __future__ import annotations

from collections.abc import Collection

from service.core.answer.letter import Block, Draft
from service.core.answer.questions import question
from service.core.answer.reply import called, closing, greeting
from service.core.answer.shapes import Answer
from service.core.answer.speech import Said, Speech, said


def asking(answer: Answer, speech: Speech, fields: Collection[str] | None = None) -> Draft:
    """Return the letter. `fields` chooses what is asked of what is missing; None asks what the answer would."""
    asked = answer.asked if fields is None else tuple(one for name, one in askable(answer).items() if name in fields)
    boat = called(answer)
    thanks = speech.say("reply-thanks", boat=boat, whose="owner") if boat else speech.say("reply-thanks-bare")
    questions = tuple(map(speech.sentence, asked))
    blocks = (
        Block(paragraphs=(thanks,)),
        Block(speech.say("heading-ask"), lists=(("", questions),) if questions else (), numbered=True),
    )
    subject = speech.say("reply-subject", boat=boat) if boat else speech.say("reply-subject-bare")
    full = tuple(block for block in blocks if block.paragraphs or block.lists)
    return Draft(speech.language, subject, greeting(answer, speech), full, closing(speech))


def askable(answer: Answer) -> dict[str, Said]:
    """Return the question for each thing that is missing, what settles most first."""
    named = {one.field for one in answer.missing}
    ask = {name: question(answer.form, name) for name in (m.field for m in answer.missing) if name != "boat.model"}
    return {"boat.model": said("ask-boat-model"), **ask} if "boat.model" in named else ask
