"""What a fitter does with a fit sheet in hand: before drilling, and after fitting. Common practice, no source."""

from __future__ import annotations

from service.core.boat import BoatForm
from service.core.catalogue import Catalogue
from service.core.fit import Fit


def before_drilling(form: BoatForm, fit: Fit, catalogue: Catalogue) -> tuple[str, ...]:
    """Return the steps that set the gear plumb and find what is wrong while nothing is drilled yet."""
    c, at = fit.configuration, fit.placement
    gear, lower, upper = catalogue.gear(c.gear), catalogue.bracket(c.lower), catalogue.bracket(c.upper)
    heights = (
        f"their collars' middles {at.lower_height_mm:.0f} and {at.upper_height_mm:.0f} mm above the water"
        if at
        else "as drawn"
    )
    side = _side(at.offset_mm) if at else "as drawn"
    steps = [
        (
            "Float her as she cruises, in a flat calm. Measure again everything in the table of measurements. Where something is "
            "off by more than twice the ± beside it, stop, and have the fit worked out anew."
        ),
        (
            "Trim her upright: a level across the cockpit must stand true athwartships all the while, or every plumb line is "
            "wrong by her list."
        ),
        (
            "Strike the centreline on the stern from equal distances to both sides, at the top and near the water; "
            f"then the line of the shaft, {side}."
        ),
        (
            "Look and feel inside first: no frame, stringer, wire, hose, tank or steering gear behind any hole or under a "
            "backing plate."
        ),
        f"Hold the lower bracket ({lower.name}) in place with its pad, then the upper ({upper.name}): {heights}.",
        (
            f"Put the dummy tube, {gear.tube.outside_mm:g} mm outside, through both collars. Plumb it fore and aft and plumb it "
            "athwartships, each at two heights. It must slide and turn by its own weight: if it binds, the pads are not right yet."
        ),
        (
            f"With the tube plumb, turn a lath as long as the blade is wide ({gear.blade.chord_mm:g} mm) {gear.blade.max_angle_deg:g}° "
            "each way, put the main rudder hard over each way, and move everything on the stern that moves. Nothing may touch."
        ),
        "Compare the gaps you see with the table of checks, the tightest first.",
        "Only now mark the holes: from the template after its bar measured 100 mm, or through the flanges themselves.",
        "Drill one hole small and right through, look where it comes out, then go on. Square to the flange, not to the skin.",
    ]
    if form.boat.hull_material == "frp_cored" or form.transom.core_mm or form.boat.hull_material is None:
        steps.append(
            "Through a core: cut it out round every hole and fill with epoxy, or sleeve it, before the bolts go in."
        )
    if any(b.kind == "step" for b in (lower, upper)):
        steps.append("On the step: bed the base on its gasket; water must run off it, not under it.")
    return tuple(steps)


def _side(offset_mm: float) -> str:
    if abs(offset_mm) < 0.5:  # noqa: PLR2004 - half a millimetre is the centreline
        return "on the centreline"
    return f"{abs(offset_mm):.0f} mm to {'starboard' if offset_mm > 0 else 'port'} of it"


def after_fitting(form: BoatForm, fit: Fit) -> tuple[str, ...]:
    """Return what is looked at once it is fitted, and again after the first sail."""
    struts = any(cut.get("part") == "strut" for cut in fit.cuts)
    metal = form.boat.hull_material in ("aluminium", "steel")
    return (
        "Shaft plumb both ways, measured anew on the real shaft; it turns from stop to stop by two fingers.",
        "Every bolt: washer and nut on, at least two threads proud, locked; sealant squeezed out all round.",
        "Backing plates lie on the skin over their whole face; no corner bears alone.",
        *(("Struts straight and unstrained; pins and rings in both ends.",) if struts else ()),
        *(("No stainless metal touches the hull: measured with a meter, dry.",) if metal else ()),
        "Grub screws of both collars tight; hinge pins with their lock bolts in.",
        "Blade up, down and out: its pins with rings go in and come out by hand.",
        "Vane free all round; head, tiller and lines clear of rail, stay and everything that moves.",
        "Main rudder hard over each way with the blade hard over each way: clear.",
        "Afloat for an hour: every hole dry inside. Look again after a night.",
        (
            "After the first sail and after the first hard blow: nuts, pins, skin round the flanges (cracks, crazing, weeping), and "
            "whether the shaft trembled at any speed."
        ),
    )
