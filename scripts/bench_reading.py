"""The reader beside general libraries on the same mails, in one run: quantities found, and stated though nobody said them.

A quantity counts as found where a library gives one whose value in mm, degrees or kg is that of a field the mail states (of
either sign); as wrong where it gives a length, angle or mass of no field. Libraries do not say what a quantity measures, so
they are spared the question which field it is: the reader's own row is held to the field as well. Run:
`.venv/bin/python -m scripts.bench_reading`.
"""

from __future__ import annotations

import json
import re
import sys
import time
from collections.abc import Callable, Iterable
from pathlib import Path
from typing import Any

from number_parser import parse as in_digits  # type: ignore[import-untyped]
from quantulum3 import classifier as guesser  # type: ignore[import-untyped]
from quantulum3 import parser as quantulum

from service.core.reading.language import FALLBACK, language_of
from service.core.reading.lexis import words_of
from service.core.reading.spoken import merged
from service.core.reading.words import MATCHERS, SPELLERS
from service.core.units import Quantity, scan
from service.flow.read import read_file

FOLDERS = tuple(Path(__file__).parents[1] / f"tests/core/reading/mails/{half}" for half in ("tuned", "apart"))
TO_SI = {
    "millimetre": 1.0, "centimetre": 10.0, "metre": 1000.0, "inch": 25.4, "foot": 304.8, "degree angle": 1.0,
    "kilogram": 1.0, "tonne": 1000.0, "metric ton": 1000.0, "pound-mass": 0.45359237, "ton": 1000.0, "kilometre": 1e6,
    "yard": 914.4, "mile": 1609344.0, "gram": 0.001,
}  # fmt: skip
SPOKEN_TO = {"en": "en", "es": "es"}
"""Languages that the library of numbers in words knows among ours."""


def by_quantulum(text: str, _language: str) -> list[float]:
    """Return the SI values of lengths, angles and masses."""
    found = quantulum.parse(text)
    return [q.value * TO_SI[q.unit.name] for q in found if q.unit.name in TO_SI]


def by_both(text: str, language: str) -> list[float]:
    """Turn numbers in words into digits first."""
    return by_quantulum(in_digits(text, language=SPOKEN_TO.get(language, "en")), language)


def by_scan(text: str, language: str) -> list[float]:
    """Return what the project's own grammar of quantities finds, in digits and words."""
    found = merged(scan(text), SPELLERS[language].found(text, words_of(text)))
    return [f.read.value for f in found if isinstance(f.read, Quantity) and f.dimension != "speed"]


def stated(truth: dict[str, Any]) -> list[tuple[str, float, float]]:
    """Return field, value and tolerance of every number that the truth states in mm, degrees or kg."""
    rows = []
    tolerance = truth.get("tolerance", {})
    for form in [truth["form"], *truth.get("other_forms", [])]:
        for part in ("boat", "transom", "main_rudder"):
            for key, value in form.get(part, {}).items():
                if isinstance(value, (int, float)) and re.search(r"_(mm|deg|kg)$", key):
                    slack = tolerance.get(f"{part}.{key}") or max(0.5, abs(value) * 0.01)
                    rows.append((f"{part}.{key}", float(value), float(slack)))
    return rows


def count(values: Iterable[float], facts: list[tuple[str, float, float]]) -> tuple[int, int]:
    """Return how many facts have a value, and how many values have no fact."""
    given = list(values)
    found = sum(any(abs(abs(v) - abs(want)) <= slack for v in given) for _, want, slack in facts)
    wrong = sum(not any(abs(abs(v) - abs(want)) <= slack for _, want, slack in facts) for v in given)
    return found, wrong


def by_reader(path: Path, facts: list[tuple[str, float, float]]) -> tuple[int, int]:
    """Return how many facts stand in their own field with their sign, and how many fields state something else."""
    got = read_file(None, path.read_bytes(), path.name)
    given: list[tuple[str, float]] = []
    for form in got.forms:
        document = form.document()
        for part in ("boat", "transom", "main_rudder"):
            pairs = document.get(part, {}).items()
            given += [(f"{part}.{k}", v) for k, v in pairs if isinstance(v, float) and re.search(r"_(mm|deg|kg)$", k)]
    found = sum(any(n == name and abs(v - want) <= slack for n, v in given) for name, want, slack in facts)
    wrong = sum(not any(n == name and abs(v - want) <= slack for name, want, slack in facts) for n, v in given)
    return found, wrong


def main() -> int:
    """Print the table."""
    guesser.USE_CLF = False  # the trained model that comes with it does not load beside this scikit-learn; its rules do
    ways: dict[str, Callable[[str, str], list[float]]] = {
        "quantulum3": by_quantulum, "number-parser, then quantulum3": by_both, "own grammar of quantities": by_scan,
    }  # fmt: skip
    totals = {name: [0.0, 0.0, 0.0] for name in (*ways, "the reader: right field and sign")}
    mails = [mail for folder in FOLDERS for mail in sorted(folder.glob("*.eml"))]
    asked = 0
    for mail in mails:
        truth = json.loads(mail.with_name(mail.stem + ".truth.json").read_text(encoding="utf-8"))
        facts = stated(truth)
        asked += len(facts)
        text = read_file(None, mail.read_bytes(), mail.name).text
        language = language_of(words_of(text), MATCHERS) or FALLBACK
        for name, way in ways.items():
            started = time.process_time()
            found, wrong = count(way(text, language), facts)
            for at, more in enumerate((found, wrong, time.process_time() - started)):
                totals[name][at] += more
        started = time.process_time()
        found, wrong = by_reader(mail, facts)
        for at, more in enumerate((found, wrong, time.process_time() - started)):
            totals["the reader: right field and sign"][at] += more
    print(f"{len(mails)} mails that state {asked} lengths, angles and masses\n")
    print(f"{'':36}{'found':>7}{'wrong':>7}{'ms a mail':>11}")
    for name, (right, false, seconds) in totals.items():
        print(f"{name:36}{right:7.0f}{false:7.0f}{1e3 * seconds / len(mails):11.1f}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
