"""Letters about an answer, to be read through and changed: the reply, and the questions alone."""

from __future__ import annotations

from collections.abc import Collection

from service.core.answer import Answer, as_text
from service.core.answer.asking import asking
from service.core.answer.reply import reply
from service.files.read.messages import LANGUAGES, speak
from service.files.write.eml import Recipient, Worded, write_eml, write_words
from service.flow.papers import thread_of
from service.flow.refusal import Refused
from service.store.enquiries import Enquiry

LONGEST = 100_000
"""Characters of a letter."""


def reply_letter(answer: Answer, language: str | None = None) -> Worded:
    """Return the reply; `language` (BCP 47) where it is not to be the asker's own."""
    asked = answer.form.enquiry
    draft = reply(answer, speak(language or asked.language, asked.country))
    return Worded(draft.language, draft.subject, as_text(draft))


def question_letter(answer: Answer, fields: Collection[str] | None = None, language: str | None = None) -> Worded:
    """Return the letter that asks for these fields; for what the reply would ask where None."""
    asked = answer.form.enquiry
    draft = asking(answer, speak(language or asked.language, asked.country), fields)
    return Worded(draft.language, draft.subject, as_text(draft))


def worded(language: str, subject: str, text: str) -> Worded:
    """Return a letter as somebody worded it. Refused where it is empty, too long, or in a language we do not write."""
    if not text.strip() or not subject.strip():
        raise Refused("the letter or its subject is empty; write something, or take the draft again")
    if len(text) > LONGEST or len(subject) > LONGEST:
        raise Refused(f"the letter is longer than {LONGEST:,} characters")
    if language not in LANGUAGES:
        raise Refused(f"letters are not written in {language!r}; choose one of {', '.join(LANGUAGES)}")
    return Worded(language, " ".join(subject.split()), text.strip())


def as_mail(enquiry: Enquiry, answer: Answer, letter: Worded) -> bytes:
    """Return a letter as a mail to whoever asked; one that nobody changed is laid out as the reply is."""
    contact, thread = enquiry.form.contact, thread_of(enquiry)
    to = Recipient(contact.name, contact.email)
    asked = answer.form.enquiry
    draft = reply(answer, speak(letter.language, asked.country))
    same = (draft.subject, as_text(draft).strip()) == (letter.subject, letter.text)
    return write_eml(draft, to, thread) if same else write_words(letter, to, thread)
