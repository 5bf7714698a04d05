"""Of a fit sheet: what is cut, bought and packed: pads, bolts, backing plates, struts, parts."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from reportlab.platypus import Flowable

from service.core.answer import Suggestion
from service.core.catalogue import Bracket, Catalogue
from service.core.fit import Fit
from service.core.fit.shapes import Fastener, Pad, PartLine
from service.files.write.paper import gap, section, table, text

DASH, TIMES = "\N{EN DASH}", "\N{MULTIPLICATION SIGN}"


def metal(best: Suggestion, catalogue: Catalogue) -> Iterator[Flowable]:
    """Return pads, bolts, backing plates and strut cuts, each in a table of its own; a sentence where there is none."""
    fit = best.fit
    pads = [
        (
            p.role, f"{p.width_mm:.0f} {TIMES} {p.height_mm:.0f}", f"{p.centre_mm:.1f}", f"{p.blank_mm:.0f}",
            f"{p.rake_bevel_deg:.1f}°", f"{p.plan_bevel_deg:.1f}°",
            _corners(p),
        )
        for p in fit.pads
    ]  # fmt: skip
    heads = (
        "pad",
        "face, mm",
        ">middle",
        ">blank",
        ">rake bevel",
        ">plan bevel",
        "thickness at the corners, mm, seen from aft",
    )
    yield (
        table(heads, pads, (0.08, 0.12, 0.09, 0.08, 0.11, 0.11, 0.41))
        if pads
        else text("No pads: both flanges lie on the skin.")
    )
    yield gap(3)
    rows = [
        (
            f.role, f"{f.count} {TIMES} {f.size}", f"{f.grip_mm:.1f}", f"{f.length_mm:g} mm" if f.length_mm else DASH,
            f"{f.length_inch:g} in" if f.length_inch else DASH,
            "; ".join(f"{name} {mm:.1f}" for name, mm in f.made_of.items() if mm),
        )
        for f in fit.fasteners
    ]  # fmt: skip
    yield table(
        ("bolts", "how many", ">grip, mm", ">length", ">or inch", "what the grip is made of, mm"),
        rows,
        (0.08, 0.13, 0.1, 0.11, 0.11, 0.47),
    )
    for note in dict.fromkeys(f.note for f in fit.fasteners if f.note):
        yield text(f"{note[:1].upper()}{note[1:]}.")
    yield gap(3)
    plates = [
        _plate(role, code, fit, catalogue)
        for role, code in (("lower", best.configuration.lower), ("upper", best.configuration.upper))
    ]
    yield table(("backing plate", "at least, mm", ">thick, mm", "how far"), plates, (0.14, 0.2, 0.12, 0.54))
    if fit.cuts:
        yield gap(3)
        cuts = [
            (c["role"], f"{c['count']} {c['part']}s", f"{c['length_mm']:.0f}", f"{c['spread_mm']:.0f}")
            for c in fit.cuts
        ]
        yield table(("struts", "to cut", ">length, mm", ">feet apart, mm"), cuts, (0.15, 0.25, 0.3, 0.3))


def _corners(pad: Pad) -> str:
    """Return the thickness at each corner, or all over where the pad is a plain block."""
    thick = {name: f"{mm:.1f}" for name, mm in pad.corners_mm.items()}
    if len(set(thick.values())) == 1:
        return f"{next(iter(thick.values()))} all over"
    return "; ".join(f"{name} {mm}" for name, mm in thick.items())


def _plate(role: str, code: str, fit: Fit, catalogue: Catalogue) -> tuple[str, str, str, str]:
    bracket: Bracket = catalogue.bracket(code)
    thick = catalogue.rules.rule.get("backing_thickness")
    reach = fit.loads.get("backing_overlap_mm", {}).get(role, DASH)
    thickness = f"{thick.value:g}" if thick else DASH
    if bracket.kind == "cheek":
        return role, DASH, DASH, "none: the bolts go through both cheeks and the sternpost between them"
    if reach is None:
        return role, DASH, thickness, "no plate that finds room is enough by our figures: ask builder or surveyor"
    if reach == DASH:
        return role, DASH, thickness, "not worked out: the skin is not known well enough"
    across, up = zip(*bracket.bolts.pattern_mm, strict=True)
    size = f"{max(across) - min(across) + 2 * reach:.0f} {TIMES} {max(up) - min(up) + 2 * reach:.0f}"
    return role, size, thickness, f"{reach:.0f} mm beyond the bolts' middles all round"


def bolts(fit: Fit) -> str:
    """Return the bolts as the owner buys them, in one sentence."""
    return "Through-bolts with washers and nuts: " + "; ".join(map(_bolts, fit.fasteners))


def owner_buys(fit: Fit) -> tuple[str, ...]:
    """Return what belongs to the job and is in no carton, the bolts first."""
    return tuple(one[:1].upper() + one[1:] for one in (bolts(fit), *fit.owner_supplies))


def _bolts(one: Fastener) -> str:
    long = f" {TIMES} {one.length_mm:g} mm" if one.length_mm else ", length once the skin has been measured"
    return f"{one.count} {one.size}{long} ({one.role} bracket)"


def parts(lines: Sequence[PartLine]) -> Iterator[Flowable]:
    """Return what is in each carton, then the loose small parts, which get lost, by themselves: each with a box to tick."""
    heads = ("", "carton", "code", "what it is", ">number")
    widths = (0.04, 0.14, 0.27, 0.45, 0.1)
    whole = sorted((line for line in lines if not line.small), key=lambda line: (line.carton, line.code))
    yield section("Parts by carton")
    yield table(heads, [_part(line) for line in whole], widths)
    small = sorted((line for line in lines if line.small), key=lambda line: (line.carton, line.code))
    if small:
        count = sum(line.quantity for line in small)
        yield section(
            f"Loose small parts: {count} pieces of {len(small)} kinds. Count them on a tray before the wrapping goes"
        )
        yield table(heads, [_part(line) for line in small], widths, range(len(small)))


def _part(line: PartLine) -> tuple[str, ...]:
    return "\N{BALLOT BOX}", line.carton, line.code, line.name, str(line.quantity)
