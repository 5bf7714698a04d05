"""The published shape `reading/1`: what was read in a letter, and from which words."""

from __future__ import annotations

from typing import Any, Literal

from pydantic import ConfigDict, Field

from service.core.boat import BoatForm, Shape

Kind = Literal["enquiry", "reply", "spares", "thanks", "other"]
Why = Literal["contradictory", "withdrawn", "sign_unknown", "unit_unknown", "other_boat", "other_datum", "ambiguous"]


class Words(Shape):
    """A shape that keeps white space: positions in the text must hold."""

    model_config = ConfigDict(str_strip_whitespace=False)


class Evidence(Words):
    """The words a value was taken from: text[start:end]. Empty at 0..0 where a mail header said it."""

    field: str
    boat: int = 0
    value: Any
    text: str
    start: int
    end: int
    quoted: bool = False
    confidence: float = Field(ge=0, le=1)


class Doubt(Words):
    """Something said that stays out of the form, why, and the values it could be."""

    field: str
    why: Why
    values: tuple[Any, ...] = ()
    text: str = ""


class Missing(Shape):
    """A field that matters and was not said; `settles` is filled once the fit has been tried."""

    field: str
    why: str
    settles: float | None = None


class Enclosed(Shape):
    name: str | None
    type: str
    bytes: int
    sha256: str
    read: bool = False


class Reading(Words):
    """What a careful reader takes from one letter; forms hold only what the writer said."""

    schema_: Literal["reading/1"] = Field("reading/1", alias="schema")
    is_enquiry: bool
    kind: Kind
    language: str | None
    thread: tuple[str, ...] = ()
    text: str
    boats: int
    form: BoatForm | None
    forms: tuple[BoatForm, ...]
    evidence: tuple[Evidence, ...] = ()
    doubts: tuple[Doubt, ...] = ()
    missing: tuple[Missing, ...] = ()
    questions: tuple[str, ...] = ()
    """In the writer's language; `asks` names the field of each."""
    asks: tuple[str, ...] = ()
    attachments: tuple[Enclosed, ...] = ()

    def document(self) -> dict[str, Any]:
        """Return the reading as JSON values; the forms without what nobody said."""
        data = self.model_dump(mode="json", by_alias=True, exclude={"form", "forms"})
        forms = [form.document() for form in self.forms]
        return {**data, "form": forms[0] if forms else None, "forms": forms}
