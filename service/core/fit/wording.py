"""A check in words, made from its value, limit and rule and from nothing else."""

from __future__ import annotations

from service.core.catalogue import Catalogue, Configuration
from service.core.fit.terms import Kind

TITLES = {
    "reach": "reach of the {role} bracket, flange face to shaft axis",
    "pad": "thickest corner of the {role} pad",
    "seat": "{role} flange on sound skin: room beyond its footprint and edge distance",
    "strut": "longest strut of the {role} bracket",
    "gap": "sternpost width in the {role} cheek bracket",
    "stands": "{role} collar above the step",
    "spacing": "distance between the brackets on the shaft",
    "overhang": "lower bracket to the middle of the blade",
    "head": "shaft above the upper collar's centre",
    "foot": "lower collar's centre above the shaft's end",
    "immersion.rest": "share of the blade under water, upright",
    "immersion.weather": "share of the blade under water, heeled, gear to weather",
    "root_depth.rest": "depth of the blade's top under water, upright",
    "root_depth.leeward": "depth of the blade's top under water, heeled, gear to leeward",
    "root_depth.under_way": "depth of the blade's top under water at hull speed, stern squatting in its wave",
    "main_rudder.blade": "blade to main rudder at the worst pair of angles",
    "main_rudder.shaft": "shaft, arms and struts to the main rudder at its worst angle",
    "hull.blade": "blade to hull",
    "hull.shaft": "shaft to hull",
    "hull.head": "head to hull and deck",
    "hull.tiller": "tiller to hull and deck",
    "hull.vane": "vane to hull and deck",
    "displacement": "displacement against what the gear is made for",
    "wake": "sideways distance from the main rudder's wake",
}


def title(id_: str, obstacle_names: dict[str, str]) -> str:
    """Return what a check looks at, in words."""
    if id_ in obstacle_names:
        return f"nearest part of the gear to the {obstacle_names[id_]}"
    role, _, rest = id_.partition(".")
    if role in ("lower", "upper"):
        return TITLES[rest].format(role=role)
    return TITLES[id_]


def amount(value: float, unit: str) -> str:
    """Write a value with its unit as people read it.

    >>> amount(0.953, "1"), amount(271.4, "mm")
    ('95 %', '271 mm')
    """
    share = unit == "1"
    whole = round(100 * value if share else value)
    return f"{whole} {'%' if share else unit}"


def compared(what: str, value: float, limit: float, margin: float, unit: str) -> str:
    """Return one sentence on a value against its limit."""
    verb = "leaves" if margin >= 0 else "lacks"
    return f"{what}: {amount(value, unit)} against {amount(limit, unit)}; {verb} {amount(abs(margin), unit)}"


def why(id_: str, value: float, limit: float, margin: float, unit: str, names: dict[str, str]) -> str:
    """Return one sentence: what was looked at, its value, its limit and how much is left or lacking."""
    verb = "leaves" if margin >= 0 else "lacks"
    what = f"{title(id_, names)}: {amount(value, unit)}"
    if id_.endswith(".seat"):
        return f"{what}; {'inside' if margin >= 0 else 'beyond'} the skin by {amount(abs(margin), unit)}"
    if id_.endswith(".strut"):
        return f"{what}; its length, and the feet on the skin, {verb[:-1]} {amount(abs(margin), unit)}"
    return f"{what} against {amount(limit, unit)}; {verb} {amount(abs(margin), unit)}"


def source(kind: Kind, catalogue: Catalogue, configuration: Configuration) -> str:
    """Return where the limit comes from: the rule's source, or the catalogue's own part."""
    if kind.rule in catalogue.rules.rule:
        return f"rule {kind.rule}: {catalogue.rules.rule[kind.rule].source}"
    role = kind.id.partition(".")[0]
    code = {"lower": configuration.lower, "upper": configuration.upper}.get(role)
    if code is None:
        code = configuration.lower if kind.id == "foot" else configuration.gear
    return f"catalogue {catalogue.version}: {code}, {kind.rule.partition('.')[2]}"
