"""`transom evaluate` and `transom recall-weights`: the service scored on what it was not shown, and taught by its fleet."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from service.cli import out
from service.cli.faults import NO, BadInput
from service.cli.options import Db, Json, group, opened, reading, writing
from service.cli.outbox import write_bytes
from service.cli.pages import evaluate as page
from service.cli.progress import bar
from service.cli.sheet import Sheet
from service.core.evaluate.shapes import Configurations
from service.flow.evaluate import evaluate_configurations, evaluate_names, evaluate_with_fit
from service.flow.refit_weights import forget_weights, refit_weights, weights_in_use
from service.store.unit import UnitOfWork

commands = group("The weights of likeness and votes: built in, or learned from the fleet.")
FORMATS = {".svg": "svg", ".png": "png"}
Names = Annotated[bool, typer.Option("--names", help="Score names only.")]
Metal = Annotated[bool, typer.Option("--configurations", help="Score configurations only.")]
WithFit = Annotated[
    int | None,
    typer.Option("--with-fit", metavar="N", min=1, help="Also score whole answers, with verdicts, on N boats a way."),
]
Plot = Annotated[
    Path | None, typer.Option("--plot", metavar="FILE", help="Write the reliability plot there: .svg or .png.")
]


def evaluate(
    names: Names = False,
    configurations: Metal = False,
    with_fit: WithFit = None,
    plot: Plot = None,
    json: Json = False,
    db: Db = None,
) -> None:
    """Score names and configurations against what was held out.

    Records held out by date and by whole hull model, weights learned anew without them, votes alone unless --with-fit;
    names of the registry as people write them. Each beside what anybody could do without this service.
    """
    kind = _kind(plot)
    both = names == configurations
    with reading(db) as uow:
        metal = _metal(uow, with_fit) if configurations or both else None
        named = evaluate_names(uow) if names or both else None
    if plot is not None:
        write_bytes(plot, _drawn(metal, kind))
    if json:
        out.document(
            {
                "schema": "evaluation/1",
                "configurations": metal and metal.model_dump(mode="json"),
                "names": named and {method: scores.model_dump(mode="json") for method, scores in named.items()},
            }
        )
        return
    with out.page() as console:
        sheet = Sheet(console)
        sheet.title("Evaluation", "95 % intervals in brackets")
        page.configurations(sheet, metal)
        page.names(sheet, named)


def _metal(uow: UnitOfWork, with_fit: int | None) -> Configurations:
    with bar("configurations") as advance:
        found = evaluate_configurations(uow, progress=advance)
    if with_fit is None:
        return found
    with bar("answers", 2 * with_fit) as advance:
        more = evaluate_with_fit(uow, with_fit, progress=advance)
    return found.model_copy(update={"holdouts": (*found.holdouts, *more.holdouts)})


def _kind(plot: Path | None) -> str:
    if plot is None:
        return ""
    if plot.suffix.lower() not in FORMATS:
        raise BadInput(f"--plot {plot}: a plot is written as .svg or .png. Name the file so")
    if not plot.absolute().parent.is_dir():
        raise BadInput(f"--plot {plot}: there is no folder {plot.absolute().parent}. Make it, or name another")
    return FORMATS[plot.suffix.lower()]


def _drawn(found: Configurations | None, kind: str) -> bytes:
    from service.files.write.reliability import reliability  # noqa: PLC0415 - it takes a second to load

    alone = [holdout for holdout in found.holdouts if holdout.votes == "alone"] if found else []
    if not alone:
        raise BadInput("--plot: there is nothing to plot. Score configurations, of a fleet with installed records")
    return reliability(alone, "svg" if kind == "svg" else "png")


@commands.command()
def refit(json: Json = False, db: Db = None) -> None:
    """Learn the weights from the fleet, and use them where they foretell better.

    Judged on records held out by time and by whole hull model. Exit status 1 where they do not foretell better:
    nothing is changed then.
    """
    with opened(db) as store, bar("weights") as advance:
        found = refit_weights(store.writing(), progress=advance)
    if json:
        out.document(
            {
                "schema": "refit/1",
                "kept": found.kept.weights.version if found.kept else None,
                "why": found.why,
                "gains": found.gains,
                "evaluation": found.evaluation.model_dump(mode="json"),
            }
        )
    else:
        with out.page() as console:
            page.refit(Sheet(console), found)
    if found.kept is None:
        raise typer.Exit(NO)


@commands.command()
def show(json: Json = False, db: Db = None) -> None:
    """Show the weights in use, with when and from what they were learned."""
    with reading(db) as uow:
        found = weights_in_use(uow)
    if json:
        out.document(
            {
                "schema": "recall-weights/1",
                "gains": found.learned.gains if found.learned else None,
                "at": found.learned.at.isoformat() if found.learned else None,
                "records": found.learned.records if found.learned else None,
                "weights": found.weights.model_dump(mode="json"),
            }
        )
        return
    with out.page() as console:
        page.weights(Sheet(console), found)


@commands.command()
def forget(json: Json = False, db: Db = None) -> None:
    """Take all learned weights away: those built in are used again."""
    with writing(db) as uow:
        gone = forget_weights(uow)
    if json:
        out.document({"schema": "recall-weights-forgotten/1", "forgotten": gone})
    else:
        out.say(f"{gone} sets of learned weights taken away; those built in are used")
