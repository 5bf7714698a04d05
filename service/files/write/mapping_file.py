"""A mapping file for a person to confirm: each heading with the guess, how sure it is, and three cells."""

from __future__ import annotations

import json
from collections.abc import Iterable, Sequence

from service.core.mapping import KEEP, Guess, Mapping, Seen
from service.core.mapping.decimals import Evidence
from service.files.columns import REQUIRED
from service.files.read.grid import TableFile

SAMPLES = 3
_LONGEST = 40
_HEAD = """\
# How the columns of {name} become records. It is yours to edit; then
#   transom records import {name} --map THIS-FILE --preview
# says row by row what would be done, and without --preview it is done.
#
# to      the column of records a heading stands for (`transom schema records` lists them),
#         "keep" to put its cells into the record's notes, "ignore" not to read it
# unit    of numbers that have none in the cell: mm, cm, m, in, ft, deg, kg, t, lb; a cell with a unit has its own way
# format  of dates: DD.MM.YYYY, MM/DD/YYYY, YYYY-MM-DD, YYYY and the like
# values  what the words in the cells stand for, where they are not the record's own
"""


def write_mapping(
    file: TableFile, sheets: Sequence[str], guesses: Sequence[tuple[Guess, Seen]], marks: Evidence
) -> str:
    """Return the file's text: layout, what is the same for all rows, and a piece for each heading."""
    parts = [_HEAD.format(name=file.name), *_layout(file, sheets, marks)]
    guessed = {guess.to for guess, _ in guesses}
    missing = [name for name in REQUIRED if name not in guessed]
    if "record.reference" in missing:
        parts += [
            "# No heading looks like a reference. Each row gets this and its own number; do not sort the rows afterwards.",
            f"number_rows = {_text('row-')}\n",
        ]
    parts += ["[always]", '# What is the same for every row and stands in no column: "record.dealer" = "..."']
    for name in missing:
        if name == "record.status":
            parts.append(
                f'{_text(name)} = "installed" # no heading looks like it; proposed, shipped, installed or withdrawn'
            )
        elif name != "record.reference":
            parts.append(f'# {_text(name)} = "" # no heading looks like it, and a record cannot do without')
    for guess, seen in guesses:
        parts += ["", *_column(guess, seen)]
    return "\n".join(parts) + "\n"


def _layout(file: TableFile, sheets: Sequence[str], marks: Evidence) -> Iterable[str]:
    layout = file.layout
    if file.book:
        others = [sheet for sheet in sheets if sheet not in (layout.sheets or ())]
        yield f"sheets = [{', '.join(map(_text, layout.sheets or ()))}]" + (
            f" # there is also {', '.join(map(_text, others))}" if others else ""
        )
    if file.kind == "csv":
        yield f"encoding = {_text((layout.encoding or 'utf-8').removesuffix('-sig'))}" + "".join(
            f" # {_one_line(remark)}" for remark in file.remarks
        )
        yield f"separator = {_text(layout.separator or ',')}"
    yield f"heading_row = {layout.heading_row}"
    if marks.sign is not None:
        yield f"decimal = {_text(marks.sign)} # as in {_text(marks.comma or marks.point or '')}"
    else:
        why = f"both {_text(marks.comma)} and {_text(marks.point)} stand there" if marks.comma and marks.point else None
        yield f'# decimal = "," # {why or "nothing in the numbers says which sign is the decimal one"}'
    yield ""


def _column(guess: Guess, seen: Seen) -> Iterable[str]:
    cells = [text for text in seen.samples if text.strip()][:SAMPLES]
    shown = " | ".join(_one_line(cell) for cell in cells) or "(empty)"
    yield "[[column]]"
    yield f"heading = {_text(guess.heading)}"
    if guess.to is None:
        yield f"to = {_text(KEEP)} # nothing is likely: name a column, or leave it to the notes"
    else:
        yield f"to = {_text(guess.to)} # {100 * guess.sure:.0f} % sure"
    yield f"# cells: {shown}"
    if guess.unit is not None:
        yield f"unit = {_text(guess.unit)} # the heading says so"
    elif guess.to is not None and guess.to.endswith(("_mm", "_deg", "_kg")):
        yield f"# unit = {_text(guess.to.rpartition('_')[2])} # the heading names none, so this is taken"
    if guess.formats == ("YYYY-MM-DD",):
        pass
    elif len(guess.formats) == 1:
        yield f"format = {_text(guess.formats[0])}"
    elif guess.formats:
        yield f"# format = {_text(guess.formats[0])} # or {' or '.join(guess.formats[1:])}: the cells fit both, choose"
    yield from _values(guess)


def _values(guess: Guess) -> Iterable[str]:
    if guess.values:
        said = [f"{_text(word)} = {_text(value)}" for word, value in guess.values.items() if value]
        unknown = [word for word, value in guess.values.items() if not value]
        if said:
            yield f"values = {{ {', '.join(said)} }}"
        if unknown:
            yield f"# not known what these stand for: {', '.join(_text(word) for word in unknown)}"


def _text(text: str) -> str:
    """Return a TOML string: JSON's escapes are TOML's, save for one character that JSON lets stand."""
    return json.dumps(text, ensure_ascii=False).replace("\x7f", "\\u007f")


def _one_line(text: str) -> str:
    plain = "".join(c if c.isprintable() else " " for c in text)
    return " ".join(plain.split())[:_LONGEST]


def put_mapping(mapping: Mapping) -> str:
    """Return a mapping as the text of its file, without remarks: read back it is the same.

    >>> from service.core.mapping import ColumnRule
    >>> put_mapping(Mapping(decimal=",", column=(ColumnRule(heading="LOA", to="boat.loa_mm", unit="ft"),))).splitlines()
    ['decimal = ","', 'heading_row = 1', '[[column]]', 'heading = "LOA"', 'to = "boat.loa_mm"', 'unit = "ft"']
    """
    said = mapping.model_dump(exclude_none=True, exclude={"always", "column"})
    lines = [f"{key} = {_value(value)}" for key, value in sorted(said.items())]
    if mapping.always:
        lines += ["[always]", *(f"{_text(key)} = {_text(value)}" for key, value in mapping.always.items())]
    for rule in mapping.column:
        own = {key: value for key, value in rule.model_dump(exclude_none=True).items() if value != {}}
        lines += ["[[column]]", *(f"{key} = {_value(value)}" for key, value in own.items())]
    return "\n".join(lines) + "\n"


def _value(value: object) -> str:
    if isinstance(value, dict):
        return "{ " + ", ".join(f"{_text(key)} = {_text(one)}" for key, one in value.items()) + " }"
    if isinstance(value, (list, tuple)):
        return f"[{', '.join(_text(one) for one in value)}]"
    return str(value) if isinstance(value, int) else _text(str(value))
