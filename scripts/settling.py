"""Which measurement settles most: on boats of the demo fleet, how often telling one thing changes what is put forward.

`python -m scripts.settling` prints the table that `service/core/reading/settles.py` holds. Each boat is answered as if the
letter named its hull model alone, the record itself left out of the fleet, and once more for each thing with that told as
well. Counted is whether another configuration comes first. One seed, one processor: some minutes.
"""

from __future__ import annotations

from collections.abc import Iterator

from scripts.bench_fleet import FIXTURES, demo_fleet
from service.core import boat
from service.core.answer.compose import Known, compose
from service.core.boat import BoatForm
from service.core.catalogue import Configuration
from service.core.hulls import HullDecision
from service.core.reading.settles import SETTLES
from service.core.recall.fleet import Fleet
from service.core.record import Record
from service.files.read.catalogue_file import read_catalogue
from service.files.read.messages import speak

BOATS = 60
WHOLE = (
    "transom.top_height_mm", "transom.bottom_height_mm", "transom.rake_deg", "main_rudder.hung",
    "main_rudder.trailing_edge_aft_mm", "boat.displacement_kg",
)  # fmt: skip
"""What a record must say to be taken: of a boat of which little is known, little can be told."""


def told(form: BoatForm, field: str | None) -> BoatForm:
    """Return what a letter tells that names the hull model and one thing more; a profile and sections go with the rake."""
    named = {"builder": form.boat.builder, "model": form.boat.model}
    base = BoatForm(enquiry=form.enquiry, boat=form.boat.__class__(**named))
    if field is None or field == "boat.model":
        return base
    if field == "obstacles":
        return base.model_copy(update={"obstacles": form.obstacles})
    part, name = field.split(".")
    more = {name, "profile", "sections"} if field == "transom.rake_deg" else {name}
    said = {one: getattr(getattr(form, part), one) for one in more}
    return base.model_copy(update={part: getattr(base, part).model_copy(update=said)})


def boats(fleet: Fleet) -> Iterator[tuple[Record, Known]]:
    """Yield records that say much, spread over the fleet, each with what is known without it."""
    catalogue = read_catalogue((FIXTURES / "catalogue.toml").read_bytes(), "catalogue.toml")
    able = [r for r in fleet.records if r.status == "installed" and all(boat.get(r.form, f) is not None for f in WHOLE)]
    for record in able[:: max(1, len(able) // BOATS)][:BOATS]:
        others = [one for one in fleet.records if one.reference != record.reference]
        rest = Fleet.build(others, fleet.hulls, makes=lambda one: catalogue.misfit(one) is None)
        yield record, Known(catalogue, rest, "settling", speak)


def first(form: BoatForm, hull: HullDecision | None, known: Known) -> Configuration | None:
    """Return what comes first in the answer."""
    answer = compose(form, hull, known)
    return answer.suggestions[0].configuration if answer.suggestions else None


def main() -> None:
    """Print for each thing on how many boats it was told, and on which share of them that changed what came first."""
    fleet = demo_fleet()
    asked, changed = dict.fromkeys(SETTLES, 0), dict.fromkeys(SETTLES, 0)
    for record, known in boats(fleet):
        hull = fleet.hulls[record.hull] if record.hull else None
        decision = (
            HullDecision(status="matched", model=hull, probability=1.0, alternatives=(), why="its record")
            if hull
            else None
        )
        before = first(told(record.form, None), decision, known)
        for field in SETTLES:
            if boat.get(record.form, field) in (None, ()):
                continue
            asked[field] += 1
            if field == "boat.model":
                changed[field] += first(BoatForm(enquiry=record.form.enquiry), None, known) != before
            else:
                changed[field] += first(told(record.form, field), decision, known) != before
    rows = [(changed[f] / max(1, asked[f]), asked[f], f) for f in SETTLES]
    for share, number, field in sorted(rows, key=lambda row: -row[0]):
        print(f'    "{field}": {share:.3f},  # of {number}', flush=True)


if __name__ == "__main__":
    main()
