"""Texts that do harm where a page forgets what they are, and where they may stand: in a mail, in a record, in a name.

Common practice, no source: tags, quotes that end attributes, addresses that are scripts, template marks.
"""

from __future__ import annotations

import json
from email.message import EmailMessage
from typing import Any

TEXTS = (
    "<script>window.hurt=1</script>",
    '"><img src=x onerror="window.hurt=1">',
    "' onmouseover='window.hurt=1",
    "javascript:window.hurt=1",
    "</textarea><svg onload=window.hurt=1>",
    "{{ 7 * 191 }}${7*191}<%= 7*191 %>",
    "</title></style><b id=hurt>",
    "\u202egnp.exe\u202c\u0000\ufeff",
)
"""What none of them may do: make an element, an attribute or a number 1337."""
SIGN = "window.hurt"


def mail(number: int = 1) -> bytes:
    """Return an enquiry whose every part holds one of them."""
    message = EmailMessage()
    message["Subject"] = f"Tarnholt 36 {TEXTS[0]} {TEXTS[1]}"
    message["From"] = f"Quell {TEXTS[0]} <ada.quell{number}@example.org>".replace("<script>", "(script)")
    message["To"] = "desk@example.com"
    message["Message-ID"] = f"<hostile-{number}@example.org>"
    message["Date"] = "Mon, 02 Mar 2026 10:00:00 +0000"
    said = "\n".join(f"Note: {text.replace(chr(0), '')}" for text in TEXTS)
    message.set_content(
        f'Hello,\n\nwe have a Tarnholt 36 of 1991 named "Heron{TEXTS[1]}". The transom is raked 18 degrees, its top is\n'
        f"1.02 m above the water. There is a ladder {TEXTS[0]} to port.\n{said}\n\nKind regards\nAda {TEXTS[4]}\n"
    )
    message.add_attachment(b"hello", maintype="image", subtype="svg+xml", filename=f"a{TEXTS[1]}.svg")
    return message.as_bytes()


def record(reference: str = "H-1") -> dict[str, Any]:
    """Return a record whose every text is one of them, as a line of an import."""
    kit = {"gear": "gear-720", "lower": "outrigger-250", "upper": "hinged-100", "shaft": "shaft-1350"}
    texts = [text.replace("\0", "") for text in TEXTS]
    form = {
        "boat": {
            "model": f"Tarnholt 36 {texts[0]}",
            "year": 1991,
            "stern": "reverse",
            "name": texts[1],
            "builder": texts[5],
        },
        "transom": {"top_height_mm": 985, "rake_deg": -23.5},
        "contact": {"name": texts[4], "email": "ada.quell@example.org", "role": "owner"},
        "obstacles": [{"kind": "ladder", "side": "port", "note": texts[2]}],
        "enquiry": {"dealer": texts[6], "country": "SE"},
        "notes": "\n".join(texts),
        "methods": {"*": "tape"},
    }
    return {
        "reference": reference,
        "status": "installed",
        "form": form,
        "configuration": kit,
        "outcome": {"note": "\n".join(texts)},
    }


def line(reference: str = "H-1") -> bytes:
    """Return such a record as a line of a JSON lines file."""
    return json.dumps(record(reference)).encode() + b"\n"
