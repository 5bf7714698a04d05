"""Lengths -> measures of the rudder: how far its stock or trailing edge lies aft, and the heights of its blade."""

from __future__ import annotations

from service.core.reading.shape import Why
from service.core.reading.view import View, is_thing

Decided = tuple[str, float | Why]
Decision = Decided | None
UPRIGHT = frozenset({"WATER", "HEIGHT", "WIDTH", "THICK", "STOCK", "BOTTOM", "BELOW"})
STERN = frozenset({"TRANSOM", "POST"})
MEASURES = frozenset({"WATER", "WIDTH", "THICK", "HEIGHT", "DISPLACEMENT", "LOA", "BEAM", "STOCK", "DEPTH", "LENGTH"})
SAYS = MEASURES | STERN | {"FORWARD", "AFT", "TOP", "BOTTOM", "STICK_OUT", "TRAILING", "STEP", "LEAN"}


def _direction(seen: View) -> float | None:
    """Return +1 aft, -1 forward, by the direction word nearest behind the quantity, else in front of it."""
    own = {"STOCK", "TRAILING"} & set(seen.before[:1])  # "stock 68 cm, trailing edge 35 cm forward"
    listed = seen.later if own and {"STOCK", "TRAILING"} & set(seen.later[:2]) else ()
    for concept in (*seen.after, *seen.before, *listed):
        if concept in ("FORWARD", "AFT"):
            return -1.0 if concept == "FORWARD" else 1.0
    return None


def read_rudder(seen: View) -> Decision:
    """Return the rudder's measure that a length is, and its sign; None where it is none."""
    sign = _direction(seen) or _asked(seen)
    near = seen.near | (
        seen.question if not seen.near & STERN.union({"TOP"}) or seen.near & {"TRAILING"} else frozenset()
    )
    stock = "STOCK" in seen.near or ("STOCK" in seen.left and seen.thing in (None, "RUDDER"))
    stock = stock and not (
        sign is None and {"WATER", "BELOW"} & seen.near
    )  # "the rudder head is 30 cm above the water"
    named = [c for c in seen.before if c in ("STOCK", "TRAILING", "ENDS")]
    if stock and named[:1] not in (["TRAILING"], ["ENDS"]):
        return "main_rudder.stock_aft_mm", sign if sign is not None else "sign_unknown"
    answers = "TRAILING" in seen.question and sign is not None and not seen.near & {"WATER", "HEIGHT"}
    reaches = seen.thing == "RUDDER" and "STICK_OUT" in near | seen.left and not (sign is None and "WATER" in seen.near)
    trailing = "TRAILING" in seen.near or answers or reaches
    if not trailing:
        sticks = {"STICK_OUT", "HUNG_OUT"} & (seen.left | seen.question) and "STICK_OUT" in near | seen.left
        sunk = sign is None and bool({"WATER", "BELOW"} & seen.near)
        trailing = bool(sticks) and "RUDDER" in seen.left | seen.question and not sunk
    if not trailing:  # "the rudder ends 40 cm forward of the transom"
        ends = "ENDS" in seen.near | seen.left and sign is not None and "WATER" not in seen.near
        edge = seen.near & STERN.union({"TOP"}) or "STOCK" in seen.left  # the stock's own reference
        trailing = ends and "RUDDER" in seen.left and bool(edge)
    if not trailing:  # "hung on the transom, 44 cm aft of it"
        hangs = (
            "HUNG_OUT" in seen.left and seen.thing == "RUDDER" and not seen.near & {"WATER", "WIDTH", "HEIGHT", "THICK"}
        )
        trailing = hangs and seen.after[:1] == ("AFT",)
    if not trailing:  # "from the transom's top edge aft the blade reaches 48 cm"
        aimed = seen.thing == "RUDDER" or "RUDDER" in seen.left
        trailing = aimed and sign is not None and bool(seen.near & STERN.union({"TOP"})) and not seen.near & UPRIGHT
    if not trailing:
        return _rudder_height(seen)
    if sign is not None and _turned(seen):
        sign = -sign
    if sign is None and {"STICK_OUT", "HUNG_OUT"} & (near | seen.whole | seen.question):
        sign = 1.0
    return "main_rudder.trailing_edge_aft_mm", sign if sign is not None else "sign_unknown"


def _asked(seen: View) -> float | None:
    """Return the way that our question names, for an answer that is a length and nothing else."""
    ways = seen.question & {"FORWARD", "AFT"}
    if "TRAILING" not in seen.question or len(ways) != 1 or seen.question & MEASURES or seen.near & SAYS:
        return None
    if any(is_thing(c) and c != "RUDDER" for c in seen.whole):
        return None
    return -1.0 if "FORWARD" in ways else 1.0


def _turned(seen: View) -> bool:
    """Say whether the transom is told from the rudder: "the transom top is 40 cm behind the rudder's back edge"."""
    behind = [c for c in seen.after if c in ("AFT", "FORWARD", "TRAILING")]
    return behind[1:2] == ["TRAILING"] and "TRAILING" not in seen.before and bool(STERN & set(seen.before))


def _rudder_height(seen: View) -> Decision:
    """Return top or bottom of the rudder's blade, where the rudder is what stands nearest."""
    implied = "WATER" in seen.left and bool(seen.after) and seen.after[0] in ("BELOW", "BOTTOM")  # "1.05 m below"
    head = seen.before[-1:] == ("STOCK",) or (implied and "STOCK" in seen.left)
    if (seen.thing != "RUDDER" and not head) or not ("WATER" in seen.near or implied) or STERN & set(seen.before):
        return None
    edge = next((c for c in (*seen.before, *seen.after) if c in ("TOP", "BOTTOM")), None)
    below = "BELOW" in seen.near or (implied and edge == "BOTTOM")
    if edge is None and (
        below or head or "BELOW" in seen.whole
    ):  # "from 30 cm above the water to 1.3 m below the surface"
        edge = "BOTTOM" if below else "TOP"
    if edge is None:
        return None
    name = "main_rudder.top_height_mm" if edge == "TOP" else "main_rudder.bottom_height_mm"
    return name, -1.0 if below else 1.0
