"""What a published fit speaks of by id or by name, for all who put it into words: nothing here is worked out."""

from __future__ import annotations

from service.core.boat import BoatForm

OWN_TUBE = "a straight tube of the shaft's diameter to plumb with before drilling"
NEAREST_INCH = {"M6": "1/4", "M8": "5/16", "M10": "3/8", "M12": "1/2"}


def obstacle_names(form: BoatForm) -> dict[str, str]:
    """Return what each obstacle check speaks of: `obstacle[0]` -> `folding ladder to port`."""
    moving = {"folds": "folding ", "swings": "swinging ", "slides": "sliding ", "fixed": "fixed "}
    sides = {"port": " to port", "starboard": " to starboard", "centre": " amidships"}
    return {
        f"obstacle[{i}]": f"{moving.get(o.moves or '', '')}{o.kind}{sides.get(o.side or '', '')}"
        for i, o in enumerate(form.obstacles)
    }


def of_hull(id_: str) -> bool:
    """Say whether a load check is of the boat's own skin and not of the maker's metal.

    Skin can be built up where it is weak, and what it bears is seldom known: such a check is a trade with a caution,
    and the builder or a surveyor decides.
    """
    return id_.startswith("load.") and (".skin_" in id_ or id_.endswith(".core"))
