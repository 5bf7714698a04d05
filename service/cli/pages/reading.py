"""What was read in a message, as a page."""

from __future__ import annotations

from rich.console import RenderableType
from rich.text import Text

from service.cli.pages.boat import WHOLE, bullets, called
from service.cli.plain import plain
from service.cli.sheet import Sheet, said, share, table, words
from service.core.boat import title
from service.core.reading import Reading
from service.core.reading.highlight import pieces, witnesses


def show(sheet: Sheet, reading: Reading, name: str) -> None:
    """Print the page of one reading; `name` is what was read."""
    boats = f"{reading.boats} boat{'' if reading.boats == 1 else 's'}"
    sheet.title(name, f"{reading.kind}, {boats}" if reading.is_enquiry else f"{reading.kind}: asks for no fit")
    for index, form in enumerate(reading.forms):
        rows = [(called(form, path), said(path, value)) for path, value in _leaves(form.document()) if path != "schema"]
        label = "form" if len(reading.forms) == 1 else f"form {index + 1}"
        sheet.part(label, table(("field", "said"), rows) if rows else words("nothing was said of the boat"))
    if reading.evidence:
        sheet.part("letter", _letter(reading))
    sheet.part("evidence", *_evidence(reading))
    doubts = [
        (title(d.field), d.why.replace("_", " "), ", ".join(said(d.field, v) for v in d.values), d.text)
        for d in reading.doubts
    ]
    if doubts:
        sheet.part("doubts", table(("field", "why", "could be", "words"), doubts, wraps=(0, 1, 2, 3)))
    missing = [(title(m.field), m.why.removeprefix(f"{title(m.field)}: ")) for m in reading.missing]
    if missing:
        sheet.part("missing", table(("field", "why it matters"), missing, wraps=(0, 1)))
    sheet.part("questions", *bullets(reading.questions, numbered=True))
    files = [
        (a.name or "unnamed", a.type, f"{a.bytes} bytes", "read" if a.read else "not read") for a in reading.attachments
    ]
    if files:
        sheet.part("attachments", table(("name", "type", ">size", ""), files, wraps=()))


def _evidence(reading: Reading) -> list[RenderableType]:
    """Return what was taken from which words; what a mail's own header says needs no witness."""
    several = reading.boats > 1
    numbers = {(one.start, one.end): str(one.number) for one in witnesses(reading)}
    rows = [
        (
            numbers[e.start, e.end],
            (f"{e.boat + 1}: " if several else "") + _called(reading, e.boat, e.field),
            said(e.field, e.value),
            share(e.confidence),
            " ".join(e.text.split()) + (" (quoted)" if e.quoted else ""),
        )
        for e in reading.evidence
        if e.text
    ]
    return [table((">", "field", "read as", ">sure", "from the words"), rows, wraps=(1, 2, 4))] if rows else []


def _letter(reading: Reading) -> Text:
    """Return the letter with the words that gave values in brackets, each with its number in the evidence."""
    letter = Text()
    inside: tuple[int, ...] = ()
    for piece in pieces(reading.text, witnesses(reading)):
        opened = "[" * len([n for n in piece.numbers if n not in inside])
        closed = "".join(f"]{n}" for n in piece.ends)
        letter.append(opened, "bold").append(plain(piece.text), "bold" if piece.numbers else "").append(closed, "bold")
        inside = piece.numbers
    return letter


def _called(reading: Reading, boat: int, field: str) -> str:
    if boat >= len(reading.forms):
        return title(field)
    return called(reading.forms[boat], field).removesuffix(f": {WHOLE}")


def _leaves(value: object, path: str = "") -> list[tuple[str, object]]:
    """Return every value of a document with its path, in order."""
    if isinstance(value, dict):
        return [leaf for key, item in value.items() for leaf in _leaves(item, f"{path}.{key}" if path else str(key))]
    if isinstance(value, list) and not (path.endswith("_mm") or not value):
        return [leaf for index, item in enumerate(value) for leaf in _leaves(item, f"{path}[{index}]")]
    return [(path, value)]
