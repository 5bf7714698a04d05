"""Single thoughts in nine languages: what is taken from each, and nothing else about the boat."""

from __future__ import annotations

import tomllib
from pathlib import Path
from typing import Any

import pytest

from service.core.reading import Letter
from service.core.reading.reader import read

FILES = (
    "sentences",
    "sentences_more",
    "sentences_places",
    "sentences_doing",
    "sentences_slips",
    "sentences_told",
    "sentences_scaled",
)
TABLES = [tomllib.loads(Path(__file__).with_name(f"{name}.toml").read_text(encoding="utf-8")) for name in FILES]
TABLE = TABLES[0]
SAID = [case for table in TABLES for case in table["said"]]
CASES = [(lang, case[lang], case["says"]) for case in SAID for lang in case if lang != "says"]
ABOUT = {"boat.model": "Corvane 33"}


def flat(form: dict[str, Any]) -> dict[str, Any]:
    """Return what a form says of the boat, its things by kind, movement, side, and whether they stay or go."""
    out: dict[str, Any] = {}
    for part in ("boat", "transom", "main_rudder", "preferences"):
        out |= {f"{part}.{key}": value for key, value in form.get(part, {}).items()}
    out |= {f"uncertainties.{key}": value for key, value in form.get("uncertainties", {}).items()}
    things = [
        " ".join([o["kind"], *([o["moves"]] if "moves" in o else []), *([o["side"]] if "side" in o else [])]
                 + [key for key in ("keep", "removable") if o.get(key)])
        for o in form.get("obstacles", [])
    ]  # fmt: skip
    return out | ({"obstacles": things} if things else {})


def boxes(form: dict[str, Any]) -> list[str]:
    """Return the stretches that things are said to take up."""
    ways = ("aft_mm", "starboard_mm", "height_mm")
    return [
        f"{o['kind']} " + " ".join(f"{way} {o[way][0]:g} {o[way][1]:g}" for way in ways if way in o)
        for o in form.get("obstacles", [])
        if any(way in o for way in ways)
    ]


@pytest.mark.parametrize(("language", "words", "says"), CASES, ids=[f"{c[0]}-{c[1][:40]}" for c in CASES])
def test_a_thought_says_this_and_nothing_else(language: str, words: str, says: dict[str, Any]) -> None:
    got = read(Letter(body=TABLE["about"][language] + words))
    assert got.form is not None
    assert got.language == language
    found = flat(got.form.document())
    if "boxes" in says:
        found["boxes"] = boxes(got.form.document())
    assert found == {
        name: pytest.approx(value, abs=0.06) if isinstance(value, (int, float)) else value
        for name, value in (ABOUT | says).items()
    }
    for one in got.evidence:
        assert got.text[one.start : one.end] == one.text
