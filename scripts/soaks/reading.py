"""Spoiled mails, one after the other: each is read or refused with a reason, none takes long."""

from __future__ import annotations

import gc
import time
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from service.cli.main import MANY
from service.core.form import FormError
from service.files.read.errors import Unreadable
from service.flow.read import read_file
from tests.support.mutated_mails import LONGEST_LINE, spoiled, whole_mails

ENDLESS_S = 10.0
"""No mail may take longer (s of processor), one of 20 MB included."""
AIM_MEDIAN_MS, AIM_P99_MS = 30.0, 200.0


@dataclass(frozen=True)
class Read:
    """How one mail was read: seconds of processor, bytes, and what went wrong."""

    seed: int
    seconds: float
    size: int
    refused: bool
    fault: str | None


def read_one(seed: int, data: bytes) -> Read:
    """Read one mail; a refusal that says why is no fault."""
    started = time.process_time()
    refused, fault = False, None
    try:
        got = read_file(None, data, "mail")
        wrong = [e.field for e in got.evidence if got.text[e.start : e.end] != e.text]
        fault = f"evidence not in the text: {wrong}" if wrong else None
    except (Unreadable, FormError):
        refused = True
    except Exception as problem:  # noqa: BLE001 - whatever it is, it is a fault
        fault = repr(problem)
    return Read(seed, time.process_time() - started, len(data), refused, fault)


def run(seeds: Sequence[int]) -> bool:
    """Read the mails as they are and one spoiled mail a seed; say what was found, and whether it holds."""
    gc.set_threshold(
        MANY
    )  # as every command has it; else a search through all that is loaded is timed with some letters
    whole = [read_one(-1, mail) for mail in whole_mails() for _ in range(3)]
    rows = [read_one(seed, spoiled(seed)) for seed in seeds]
    giants = [row for row in rows if row.size > LONGEST_LINE // 2]
    usual = [row for row in rows if row.size <= LONGEST_LINE // 2]
    print(f"{'mails':22}{'number':>8}{'refused':>9}{'faults':>8}{'median ms':>11}{'p99 ms':>9}{'longest s':>11}")
    holds = True
    for name, group in (("as they are", whole), ("spoiled", usual), ("spoiled, over 10 MB", giants)):
        if not group:
            continue
        ms = np.array([row.seconds for row in group]) * 1e3
        median, high = float(np.median(ms)), float(np.percentile(ms, 99))
        faults = [row for row in group if row.fault]
        refused = sum(row.refused for row in group)
        print(f"{name:22}{len(group):8}{refused:9}{len(faults):8}{median:11.1f}{high:9.1f}{ms.max() / 1e3:11.2f}")
        for row in faults[:20]:
            print(f"  seed {row.seed}: {row.fault}")
        holds &= not faults and ms.max() < ENDLESS_S * 1e3
        holds &= group is giants or (median < AIM_MEDIAN_MS and high < AIM_P99_MS)
    print("holds" if holds else "does not hold")
    return holds
