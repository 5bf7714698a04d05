"""How well names and configurations are foretold, beside the floors; and the weights in use."""

from __future__ import annotations

from collections.abc import Mapping

from rich.console import RenderableType

from service.cli.sheet import Sheet, table, words
from service.core.boat import title
from service.core.evaluate.names import NameScores, Rate
from service.core.evaluate.shapes import Configurations, Estimate, Holdout
from service.core.recall import FEATURES
from service.core.recall.weights import PARTS
from service.flow.refit_weights import InUse, Refit

WAYS = {"time": "by time", "hull": "by hull model"}
HEADS = ("", ">boats", ">first", ">in three", ">log loss", ">error")
KINDS = {"alone": "votes alone; no fit was run", "with verdicts": "with the solver's verdicts"}


def configurations(sheet: Sheet, found: Configurations | None) -> None:
    """Print every way of holding out; nothing where configurations were not scored."""
    if found is None:
        return
    for holdout in found.holdouts:
        sheet.part(
            WAYS[holdout.by],
            words(f"Held out: {holdout.what}; {KINDS[holdout.votes]}. Learned from {holdout.trained} records."),
            table(HEADS, [_row(holdout, n) for n in range(len(holdout.scores))], wraps=()),
            _bins(holdout),
        )
    loss = f"Log loss in nats; no chance at all counts as {found.least_chance:g}."
    off = "The error is of calibration, over ten bins of equal width; --json has it over bins of equal numbers too."
    notes = [f"{loss} {off}", *found.cautions]
    sheet.part("note", *(words(note) for note in notes))


def _row(holdout: Holdout, place: int) -> tuple[str, ...]:
    one = holdout.scores[place]
    loss = f"{one.log_loss.value:.2f} ({one.log_loss.low:.2f}-{one.log_loss.high:.2f})"
    return one.method, f"{one.count}", _share(one.top1), _share(one.top3), loss, _share(one.calibration_error)


def _share(one: Estimate) -> str:
    return f"{100 * one.value:.0f} % ({100 * one.low:.0f}-{100 * one.high:.0f})"


def _bins(holdout: Holdout) -> RenderableType:
    rows = [
        (f"{100 * b.low:.0f}-{100 * b.high:.0f} %", f"{b.count}", f"{100 * b.said:.0f} %", _share(b.came_true))
        for b in holdout.bins
    ]
    return table((f"{holdout.scores[0].method}: said", ">boats", ">on average", ">was installed"), rows)


def names(sheet: Sheet, found: Mapping[str, NameScores] | None) -> None:
    """Print how names were resolved, method by method; nothing where names were not scored."""
    if found is None:
        return
    rows = [
        (method, _rate(s.top1), _rate(s.top3), _rate(s.asked), _rate(s.absent_accepted), _rate(s.sibling_taken))
        for method, s in found.items()
    ]
    heads = ("", ">first", ">in three", ">asked back", ">absent taken*", ">sibling taken")
    first = next(iter(found.values()))
    families = [(name, _rate(rate), f"{rate.of}") for name, rate in first.families.items()]
    sheet.part(
        "names",
        words("The registry's own names as people write them, aliases as if nobody had said so, models taken out."),
        words("* at the probability that 95 % of what is rightly put first reaches."),
        table(heads, rows, wraps=()),
        table(("written", ">right", ">of"), families, wraps=(0,)),
    )


def _rate(one: Rate) -> str:
    if one.share is None or one.low is None or one.high is None:
        return "-"
    return f"{100 * one.share:.0f} % ({100 * one.low:.0f}-{100 * one.high:.0f})"


def refit(sheet: Sheet, found: Refit) -> None:
    """Print what was learned and whether it is used."""
    sheet.title(
        "Weights learned" if found.kept else "Weights not changed", found.kept.weights.version if found.kept else ""
    )
    sheet.line(f"Judged on what was held out, {found.why}.")
    sheet.line()
    rows = [(WAYS[by], f"{gain:+.3f}") for by, gain in found.gains.items()]
    sheet.part("gain", table(("log likelihood a boat, in nats", ">"), rows, wraps=()))
    configurations(sheet, found.evaluation)


def weights(sheet: Sheet, found: InUse) -> None:
    """Print the weights in use."""
    sheet.title("Weights of likeness and votes", found.weights.version)
    parts = [found.weights.part(part) for part in PARTS]
    rows = [(title(f.path), *(f"{kernel.features.get(f.path, 0.0):.2f}" for kernel in parts)) for f in FEATURES]
    more = [(name, *(f"{getattr(kernel, name):.2f}" for kernel in parts)) for name in ("bandwidth", "sister", "prior")]
    sheet.part("features", table(("", ">likeness", ">brackets", ">gear and shaft"), [*rows, *more], wraps=(0,)))
    w = found.weights
    sheet.part(
        "votes",
        words(
            f"{w.whole_share:.2f} by whole configurations, the rest by parts; sharpened to the power {w.sharpness:.2f} where"
        ),
        words(f"sister ships speak, {w.sharpness_alone:.2f} where none does."),
    )
    if found.learned:
        gains = ", ".join(f"{WAYS[by]} {gain:+.3f}" for by, gain in found.learned.gains.items())
        sheet.part(
            "learned",
            words(f"from {found.learned.records} records; log likelihood a boat on what was held out: {gains}"),
        )
