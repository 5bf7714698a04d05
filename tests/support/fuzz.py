"""Runs schemathesis, a public tool, against a running service: whatever its document allows and forbids is sent."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from collections import Counter
from dataclasses import dataclass
from pathlib import Path
from typing import Any

SETTINGS = Path(__file__).resolve().parents[1] / "api" / "fuzz"
LONGEST_LINE = 300


@dataclass(frozen=True)
class Fuzzed:
    """What a run found: nothing wrong where `well`; how often each check held."""

    well: bool
    told: str
    checks: Counter[str]
    answers: dict[str, Counter[int]]
    """How often each operation answered by which status."""

    @property
    def requests(self) -> int:
        """Return how many requests were made."""
        return sum(sum(each.values()) for each in self.answers.values())

    @property
    def statuses(self) -> Counter[int]:
        """Return how often the service answered by which status."""
        return sum(self.answers.values(), Counter())


def fuzz(base: str, key: str, folder: Path, seed: int, *more: str, settings: str = "schemathesis.toml") -> Fuzzed:
    """Run every check against the service at `base`; `more` are arguments of the tool's own."""
    report = folder / f"fuzz-{seed}.ndjson"
    command = [
        sys.executable, "-m", "schemathesis.cli", "--config-file", str(SETTINGS / settings), "run",
        f"{base}/openapi.json", "--header", f"X-API-Key: {key}", "--seed", str(seed), "--checks", "all",
        "--continue-on-failure", "--no-color", "--request-timeout", "60", "--report", "ndjson", "--report-ndjson-path", str(report), *more,
    ]  # fmt: skip
    environment = {**os.environ, "SCHEMATHESIS_HOOKS": "hooks", "PYTHONPATH": str(SETTINGS)}
    ran = subprocess.run(command, cwd=folder, env=environment, capture_output=True, text=True, check=False)  # noqa: S603 - the tool
    told = "\n".join(line[:LONGEST_LINE] for line in ran.stdout.splitlines())
    events = [json.loads(line) for line in report.read_text("utf-8").splitlines()] if report.exists() else []
    return Fuzzed(ran.returncode == 0, f"seed {seed}\n{told}{ran.stderr[-2000:]}", *counted(events))


def counted(events: list[dict[str, Any]]) -> tuple[Counter[str], dict[str, Counter[int]]]:
    """Return how often each check held, and how often each operation answered by which status, from the tool's report."""
    checks: Counter[str] = Counter()
    answers: dict[str, Counter[int]] = {}
    for event in events:
        seen = event.get("ScenarioFinished", {}).get("recorder") or {}
        for held in seen.get("checks", {}).values():
            checks.update(one["name"] for one in held if one["status"] == "success")
        for case, one in seen.get("interactions", {}).items():
            status = (one.get("response") or {}).get("status_code", 0)
            answers.setdefault(_operation(seen, case), Counter())[status] += 1
    return checks, answers


def _operation(seen: dict[str, Any], case: str) -> str:
    """Return the operation of a request; one that a check made itself counts to the operation it checked."""
    sent = seen["cases"].get(case, {}).get("value", {})
    return f"{sent['method']} {sent['path']}" if sent else str(seen["label"])
