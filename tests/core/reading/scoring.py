"""Score readings against what a careful reader took from the same mails: each value right, wrong, missing or invented."""

from __future__ import annotations

import json
import re
import unicodedata
from collections import Counter
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from service.flow.read import read_file

HERE = Path(__file__).parent / "mails"
BOXES = ("aft_mm", "starboard_mm", "height_mm")
SLACK_MM = 25.0
UNSCORED = ("schema", "enquiry.", "methods.", "contact.role", "notes", "uncertainties.", "boat.name", "other_datum")


@dataclass
class Score:
    """Counts of outcomes, and the mails' names and fields that were not right."""

    counts: Counter[str] = field(default_factory=Counter)
    faults: list[str] = field(default_factory=list)

    @property
    def precision(self) -> float:
        """Right among all that was stated."""
        return self.counts["right"] / (self.counts["right"] + self.counts["wrong"] + self.counts["invented"])

    @property
    def recall(self) -> float:
        """Right among all that the mails say."""
        return self.counts["right"] / (self.counts["right"] + self.counts["wrong"] + self.counts["missing"])

    def add(self, where: str, outcome: str, want: object = None, got: object = None) -> None:
        """Count one value."""
        self.counts[outcome] += 1
        if outcome != "right":
            self.faults.append(f"{outcome} {where}: says {want!r}, read {got!r}")


def score(folder: Path) -> Score:
    """Return the score of all mails in a folder, each with its truth beside it."""
    total = Score()
    for mail in sorted(folder.glob("*.eml")):
        truth = json.loads(mail.with_name(mail.stem + ".truth.json").read_text(encoding="utf-8"))
        document = read_file(None, mail.read_bytes(), mail.name).document()
        whole = (
            "right" if (document["is_enquiry"], document["boats"]) == (truth["is_enquiry"], truth["boats"]) else "wrong"
        )
        total.add(f"{mail.name} kind", whole, truth["boats"], document["boats"])
        forms = document["forms"]
        for index, want in enumerate([truth["form"], *truth.get("other_forms", [])] if truth["is_enquiry"] else []):
            _form(total, mail.name, (want, forms[index] if index < len(forms) else {}), truth)
    return total


def _flat(node: dict[str, Any], stem: str = "") -> dict[str, Any]:
    out: dict[str, Any] = {}
    for key, value in node.items():
        if isinstance(value, dict):
            out |= _flat(value, f"{stem}{key}.")
        else:
            out[stem + key] = value
    return {k: v for k, v in out.items() if k == "enquiry.dealer" or not k.startswith(UNSCORED)}


def _form(total: Score, name: str, forms: tuple[dict[str, Any], dict[str, Any]], truth: dict[str, Any]) -> None:
    want, got = map(_flat, forms)
    accept, optional = truth.get("accept", {}), truth.get("optional", {})
    _obstacles(total, name, want.pop("obstacles", []), got.pop("obstacles", []), optional.get("obstacles", {}))
    for path in sorted(want.keys() | got.keys()):
        said, read = want.get(path), got.get(path)
        if path in want:
            fits = any(
                same(path, one, read, truth.get("tolerance", {}).get(path)) for one in [said, *accept.get(path, [])]
            )
            total.add(f"{name} {path}", "missing" if read is None else "right" if fits else "wrong", said, read)
        elif path not in optional:
            total.add(f"{name} {path}", "invented", None, read)
        elif optional[path] is not None:
            options = optional[path] if isinstance(optional[path], list) else [optional[path]]
            if not any(same(path, one, read, None) for one in options):
                total.add(f"{name} {path}", "wrong", options, read)


def same(path: str, said: object, read: object, tolerance: float | None) -> bool:
    """Say whether a value read is the one said: numbers within a tolerance, words without case, accents and signs."""
    if isinstance(said, (int, float)) and isinstance(read, (int, float)):
        slack = (
            max(3.0, abs(said) * 0.01) if path.endswith("_mm") else 0.5 if path.endswith("_deg") else abs(said) * 0.01
        )
        return abs(said - read) <= (tolerance or (0 if path == "boat.year" else slack)) + 1e-6
    if isinstance(said, list):
        return said == read
    if path == "contact.phone":
        return re.sub(r"\D", "", str(said))[-8:] == re.sub(r"\D", "", str(read))[-8:]
    return _plain(said) == _plain(read)


def _plain(value: object) -> str:
    words = re.findall(r"\w+", unicodedata.normalize("NFKC", str(value)).casefold())
    return " ".join(w for w in words if w not in ("dr", "mr", "mrs", "herr", "frau"))


def _obstacles(
    total: Score, name: str, want: list[dict[str, Any]], got: list[dict[str, Any]], spare: dict[str, int]
) -> None:
    left = list(got)
    for thing in want:
        have = next((o for o in left if o["kind"] == thing["kind"]), None)
        total.add(f"{name} obstacle", "missing" if have is None else "right", thing["kind"])
        if have is not None:
            left.remove(have)
        for key in (*BOXES, "moves", "removable", "keep"):
            if key in thing:
                read = (have or {}).get(key)
                fits = _overlaps(thing[key], read) if key in BOXES and read is not None else thing[key] == read
                outcome = "missing" if read is None else "right" if fits else "wrong"
                total.add(f"{name} {thing['kind']}.{key}", outcome, thing[key], read)
    spare = dict(spare)
    for extra in left:
        if spare.get(extra["kind"], 0) > 0:
            spare[extra["kind"]] -= 1
        else:
            total.add(f"{name} obstacle", "invented", None, extra["kind"])


def _overlaps(said: list[float], read: list[float]) -> bool:
    both = min(said[1], read[1]) - max(said[0], read[0]) + 2 * SLACK_MM
    return both >= 0.5 * (max(said[1], read[1]) - min(said[0], read[0]) + 2 * SLACK_MM)
