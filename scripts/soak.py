"""Slow proofs at full size: what `scripts/soak` runs."""

from __future__ import annotations

import argparse
import sys

from scripts.soaks import api, drawing, geometry, kill, memory, placement, reading, survey

PROOFS = {
    "api": (api.run, 3),
    "drawing": (drawing.run, 200),
    "geometry": (geometry.run, 1000),
    "kill": (kill.run, 12),
    "memory": (memory.run, 20_000),
    "placement": (placement.run, 200),
    "reading": (reading.run, 10_000),
    "survey": (survey.run, 50),
}


def main() -> int:
    """Run one proof; return 0 where it holds."""
    parser = argparse.ArgumentParser(prog="scripts/soak", description=__doc__)
    parser.add_argument("proof", choices=PROOFS)
    parser.add_argument("--boats", type=int, help="how many boats, seeds of api, rounds of kill, requests, mails")
    parser.add_argument("--seed", type=int, default=1, help="seed of the first boat; the next are one higher each")
    asked = parser.parse_args()
    run, usual = PROOFS[asked.proof]
    return 0 if run(range(asked.seed, asked.seed + (asked.boats or usual))) else 1


if __name__ == "__main__":
    sys.exit(main())
