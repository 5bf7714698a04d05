"""How long the parts take: medians over repeats in one run, each beside the plainest thing that does the same.

Everything is made here from the demo maker's fixtures; nothing is kept. `--quick` leaves the two large sizes out.
"""

from __future__ import annotations

import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from bench_fit import fit_lines
from rapidfuzz import fuzz, process
from rich.console import Console

from service import bootstrap
from service.cli.sheet import RIGHT, table
from service.core.boat import BoatForm, get
from service.core.catalogue import Configuration
from service.core.hulls import HullIndex, resolve
from service.core.recall.fleet import Fleet
from service.core.recall.precedents import recall
from service.core.record import HullModel, Record
from service.flow.answer import answer_file
from service.flow.fit import fit_form
from service.flow.import_hulls import import_hulls
from service.flow.import_records import import_records
from service.flow.load_catalogue import load_catalogue
from service.flow.read import read_file
from service.settings import Settings
from service.store.unit import Store

FIXTURES = Path(__file__).resolve().parent.parent / "seed_fixtures"
MAIL = FIXTURES / "enquiries" / "demo.eml"
MANY_HULLS, MANY_RECORDS = 10_000, 100_000
TARGET_S, COMMAND_S = 0.5, 2.0
COMMAND = "from service.cli.main import run; run()"
"""What the installed `transom` runs."""
ASKED = ("Tarnholt 36", "selmarrow 31 mk 2", "Quervenec 10,50", "Beltranza 40 Sport", "Some Other Boat 33")
LIKE = ("boat.loa_mm", "boat.beam_mm", "boat.displacement_kg", "transom.top_height_mm", "transom.rake_deg")


@dataclass(frozen=True)
class Line:
    """What was timed, how many, seconds for one, and the floor: what it is and its seconds."""

    what: str
    size: str
    seconds: float
    floor: str = "-"
    floor_seconds: float | None = None


def median(work: Callable[[], object], repeats: int) -> float:
    """Return the median time of one call, in seconds, after one that warms up."""
    work()
    times = []
    for _ in range(repeats):
        start = time.perf_counter()
        work()
        times.append(time.perf_counter() - start)
    return statistics.median(times)


def grown_hulls(known: Sequence[HullModel], size: int) -> list[HullModel]:
    """Return the known hull models and invented ones, up to `size`: other words before the same numbers."""
    dice = np.random.default_rng(7)
    beginnings = ("Bruv", "Clom", "Dwen", "Flun", "Grex", "Hlom", "Krev", "Lumb", "Mrov", "Skev", "Thrun", "Vlim")
    endings = ("dane", "fin", "gard", "holm", "lin", "mere", "rick", "sund", "vik")
    grown = list(known)
    while len(grown) < size:
        word = str(dice.choice(beginnings)) + str(dice.choice(endings))
        number, mark = int(dice.integers(20, 60)), ("", " Mk II", " CC")[int(dice.integers(3))]
        length = 304.8 * number * float(dice.uniform(0.97, 1.03))
        grown.append(
            HullModel(id=f"grown-{len(grown)}", builder=f"{word} Yachts", model=f"{word} {number}{mark}", loa_mm=length)
        )
    return grown[:size]


def grown_fleet(known: Sequence[Record], size: int) -> list[Record]:
    """Return the known records over and over, up to `size`, each under a reference of its own."""
    return [
        known[i % len(known)].model_copy(update={"reference": f"{known[i % len(known)].reference}-{i}"})
        for i in range(size)
    ]


def time_resolve(hulls: Sequence[HullModel], repeats: int) -> Line:
    """Time one name against an index, beside rapidfuzz's WRatio over the same names."""
    index = HullIndex.build(hulls)
    names = [str(hull) for hull in hulls]
    ours = median(lambda: [resolve(index, name) for name in ASKED], repeats)
    plain = median(lambda: [process.extractOne(name, names, scorer=fuzz.WRatio) for name in ASKED], repeats)
    return Line("resolve a name", f"{len(hulls)} models", ours / len(ASKED), "WRatio over all", plain / len(ASKED))


def time_recall(records: Sequence[Record], hulls: Sequence[HullModel], form: BoatForm, repeats: int) -> Line:
    """Time recall for one form, beside a plain loop over five numbers of every record."""
    fleet = Fleet.build(records, {hull.id: hull for hull in hulls})
    mine = [get(form, path) for path in LIKE]
    rows = [[get(record.form, path) for path in LIKE] for record in records]

    def loop() -> object:
        return sorted(
            sum(
                abs(a - b) / (abs(b) + 1) if a is not None and b is not None else 1
                for a, b in zip(row, mine, strict=True)
            )
            for row in rows
        )[:8]

    ours = median(lambda: recall(fleet, form, hull=None), repeats)
    return Line(
        "recall precedents", f"{len(records)} records", ours, "loop over 5 numbers", median(loop, min(repeats, 5))
    )


def made(folder: Path) -> Store:
    """Return a database with the demo maker's catalogue, hull models and fleet."""
    chosen = Settings(f"sqlite:///{folder / 'bench.sqlite'}")
    bootstrap.upgrade(chosen)
    store = bootstrap.open_store(chosen)
    load_catalogue(store.writing(), (FIXTURES / "catalogue.toml").read_bytes(), "catalogue.toml")
    import_hulls(store.writing(), (FIXTURES / "hulls.csv").read_bytes(), "hulls.csv")
    import_records(store.writing(), (FIXTURES / "fleet.jsonl").read_bytes(), "fleet.jsonl")
    return store


def time_all(store: Store, *, quick: bool) -> list[Line]:
    """Return every line of the table."""
    with store.reading() as uow:
        hulls, records = uow.hulls.all(), uow.records.all()
        form = read_file(uow, MAIL.read_bytes(), MAIL.name).form or BoatForm()
    suggested = answer_file(store, MAIL.read_bytes(), MAIL.name, now=bootstrap.clock(), keep=False).answers[0]
    lines = [time_resolve(hulls, 21)]
    if not quick:
        lines.append(time_resolve(grown_hulls(hulls, MANY_HULLS), 5))
    lines.append(time_recall(records, hulls, form, 21))
    if not quick:
        lines.append(time_recall(grown_fleet(records, MANY_RECORDS), hulls, form, 5))
    lines += time_answers(store, form, suggested.suggestions[0].configuration)
    return lines + [Line(*row) for row in fit_lines(store, form, median, quick=quick)]


def time_answers(store: Store, form: BoatForm, configuration: Configuration) -> list[Line]:
    """Time one fit and the whole answer, from the file to the answer kept, each with all it reads of the database."""
    mail = MAIL.read_bytes()

    def fit() -> object:
        with store.reading() as uow:
            return fit_form(uow, form, configuration)

    def answer(*, keep: bool) -> object:
        return answer_file(store, mail, MAIL.name, now=bootstrap.clock(), keep=keep)

    return [
        Line("one fit", "1 configuration", median(fit, 7)),
        Line("the whole answer", "demo.eml", median(lambda: answer(keep=False), 7), "target", TARGET_S),
        Line("the same, kept", "demo.eml", median(lambda: answer(keep=True), 7), "target", TARGET_S),
    ]


def time_commands(folder: Path) -> list[Line]:
    """Time the command in a process of its own, with all that it loads, beside a Python that does nothing."""
    answer = [sys.executable, "-c", COMMAND, "answer", str(MAIL), "--db", f"sqlite:///{folder / 'bench.sqlite'}"]

    def run(*command: str) -> Callable[[], object]:
        return lambda: subprocess.run(command, check=True, capture_output=True)  # noqa: S603 - our own program

    nothing = median(run(sys.executable, "-c", "pass"), 5)
    with_papers = [*answer, "--out", str(folder / "papers")]
    return [
        Line("transom answer", "demo.eml", median(run(*answer), 7), "python alone", nothing),
        Line("transom answer --out", "19 papers", median(run(*with_papers), 7), "target", COMMAND_S),
    ]


def main() -> None:
    """Print the table."""
    quick = "--quick" in sys.argv[1:]
    with tempfile.TemporaryDirectory() as folder:
        store = made(Path(folder))
        lines = time_all(store, quick=quick)
        store.close()
        lines += time_commands(Path(folder))
    rows = [
        (
            line.what,
            line.size,
            f"{1000 * line.seconds:.2f} ms",
            line.floor,
            "-" if line.floor_seconds is None else f"{1000 * line.floor_seconds:.2f} ms",
        )
        for line in lines
    ]
    heads = ("", "with", f"{RIGHT}median of one", "beside", f"{RIGHT}its median")
    Console(width=100, no_color=True, highlight=False).print(table(heads, rows, wraps=()))


if __name__ == "__main__":
    main()
