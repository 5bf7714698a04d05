"""People's data, for people."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from service.cli.sheet import Sheet, listed, table
from service.flow.people_erase import Erased
from service.flow.people_retention import Due
from service.store.people import Known


def contacts(sheet: Sheet, found: Sequence[Known]) -> None:
    """Print the contacts."""
    sheet.title("People", f"{len(found)} found")
    rows = [(one.id, one.name or "-", one.email or "-", one.phone or "-", f"{one.created:%Y-%m-%d}") for one in found]
    if rows:
        sheet.whole(table(("id", "name", "address", "number", "since"), rows, wraps=(0, 1, 2)))


def exported(sheet: Sheet, found: dict[str, Any], file: str) -> None:
    """Print how much was written, and what could not be looked into."""
    sheet.title("Held about them", file)
    kinds = ("contacts", "enquiries", "records", "attachments", "imports")
    sheet.part("written", table(("", ""), [(kind, f"{len(found[kind])}") for kind in kinds]))
    if found["namesakes"]:
        sheet.part("namesakes", listed([f"{one} has the same name and another address" for one in found["namesakes"]]))
    sheet.part("not seen", listed(found["not_looked_into"]))


def erased(sheet: Sheet, found: Erased) -> None:
    """Print what was, or would be, taken away, and what stays."""
    sheet.title("Erase" if found.preview else "Erased", "preview: nothing was changed" if found.preview else "")
    counts = [
        ("contacts taken away", f"{len(found.contacts)}"),
        ("enquiries left as bare boat forms", f"{len(found.enquiries)}"),
        ("answers without them", f"{len(found.answers)}"),
        ("records without them", f"{len(found.records)} ({found.revisions} revisions)"),
    ]
    sheet.part("people", table(("", ""), counts))
    if found.redacted:
        sheet.part("named in", table(("", ">cells"), [(key, f"{count}") for key, count in found.redacted.items()]))
    if found.left:
        sheet.part("stays", table(("", ">cells"), [(key, f"{count}") for key, count in found.left.items()]))
    if found.mails:
        done = "a note stands in its place" if found.erased_mails else "look at it, or erase it with --with-attachments"
        sheet.part("mails", listed([f"attachment {m.number} of record {m.reference}: {done}" for m in found.mails]))
    files = [_file(file.names, found=file.found, preview=found.preview) for file in found.files]
    if files:
        sheet.part("imports", listed(files))
    if found.waiting:
        sheet.part("waiting", f"{found.waiting} files sent and not taken in yet go too: send them again")
    if found.namesakes:
        sheet.part("namesakes", listed([f"{one} has the same name: it was not looked for" for one in found.namesakes]))
    if found.preview:
        sheet.line("This cannot be undone. What backups hold stays in them.")


def due(sheet: Sheet, months: int | None, found: Sequence[Due], done: Erased | None) -> None:
    """Print who is past the time set."""
    sheet.title("Retention", "no time is set" if months is None else f"{months} months")
    if months is None:
        sheet.line("Nobody is due: set TRANSOM_RETENTION_MONTHS, or give --months.")
        return
    if done is not None:
        erased(sheet, done)
        return
    rows = [(", ".join(one.who.ids), one.who.contacts[0].name or "-", f"{one.heard:%Y-%m-%d}") for one in found]
    sheet.whole(table(("contact", "name", "last heard of"), rows, wraps=(0, 1)))
    sheet.line(f"{len(rows)} due; --apply erases them, and that cannot be undone")


def _file(names: Sequence[str], *, found: bool | None, preview: bool) -> str:
    name = ", ".join(sorted(set(names)))
    if found is None:
        return f"{name} is no text and was not looked into; it stays as it is"
    return f"{name} names them, and {'would be' if preview else 'was'} kept anew without"
