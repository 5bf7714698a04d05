"""Numbers that the loads go by: the catalogue's rules first, and what is usual where it states none.

Each has a value, a unit and an honest source. The unit is fixed: a catalogue that states one in another unit is refused.
"""

from __future__ import annotations

from service.core.catalogue import Rule, Rules

USUAL = "common practice, no source"
OWN = "this program's own choice, no source"
KLAKA = "Klaka, Why yacht rudders break, Trans. RINA IJME 162 A4 (2020), abstract"


def _rules(*rows: tuple[str, float, str, str]) -> dict[str, Rule]:
    return {name: Rule(value=value, unit=unit, source=source) for name, value, unit, source in rows}


STANDARD = _rules(
    ("load_hull_speed_factor", 1.25, "1", f"{KLAKA}: at least 125 % of hull speed"),
    ("load_force_coefficient", 1.3, "1", f"{KLAKA}: at least 1.3; also taken for a blade across the flow"),
    ("load_surf_speed", 6.2, "m/s", f"{USUAL}: 12 knots"),
    ("load_astern_speed", 1.5, "m/s", f"{USUAL}: 3 knots"),
    ("load_broach_speed", 3.1, "m/s", f"{USUAL}: 6 knots sideways"),
    ("load_wave_height", 3.0, "m", f"{USUAL}: a following sea offshore"),
    ("load_wave_period", 8.0, "s", f"{USUAL}: a following sea offshore"),
    ("load_phase_hull_speed", 1.0, "1", "in the trough of a following sea the water comes to meet the boat"),
    ("load_phase_fast", 0.0, "1", f"{OWN}: down the face, and the factor on hull speed already holds the sea's part"),
    ("load_phase_surf", -1.0, "1", "a boat surfs at the crest, where the water goes along with it"),
    ("load_phase_broach", 1.0, "1", f"{OWN}: thrown down into the trough, against the water's way there"),
    ("load_phase_astern", 1.0, "1", f"{OWN}: against the water's way, the worse of the two"),
    ("load_lift_cap", 1.33, "1", "Whicker and Fehlner 1958, greatest of aspect ratios 1 to 3; from memory"),
    ("load_tip_faired", 0.0, "1", f"{OWN}: 0 for a square tip, 1 for a rounded one; square gives more force"),
    ("load_pitch_acceleration", 6.0, "m/s2", f"{USUAL}; of the head, fore and aft"),
    ("load_roll_acceleration", 6.0, "m/s2", f"{USUAL}; of the head, athwartships, heel's part of gravity included"),
    ("load_heave_acceleration", 5.0, "m/s2", f"{USUAL}; of the stern, on top of gravity"),
    ("safety_metal_yield", 1.5, "1", USUAL),
    ("safety_bolt", 2.0, "1", f"{USUAL}; stands for 1.25 on strength times about 1.5 on load"),
    ("safety_skin", 3.0, "1", f"{USUAL}; laminates are rarely known"),
    ("safety_buckling", 2.5, "1", USUAL),
    ("tip_deflection_share", 0.05, "1", f"{OWN}: of the overhang, at the blade's middle"),
    ("shedding_factor", 1.3, "1", f"{OWN}: the shaft's frequency over the eddies' at hull speed"),
    ("shaft_damping", 0.01, "1", "steel structures with bushed joints, share of critical; from memory"),
    ("eddy_push_side", 1.0, "1", "eddies on a tube at resonance, over dynamic pressure; from memory"),
    ("eddy_push_along", 0.2, "1", "the same, fore and aft; from memory"),
    ("shaft_fatigue", 180.0, "MPa", "316L about 184 MPa at ten million turns, read in a summary; 2205 bears more"),
    ("blade_density", 700.0, "kg/m3", f"{OWN}: timber or cored plastic"),
    ("bolt_ultimate", 700.0, "MPa", "ISO 3506-1, A4-70"),
    ("bolt_proof", 450.0, "MPa", "ISO 3506-1, A4-70; from memory"),
    ("bolt_shear_factor", 0.5, "1", "EN 1993-1-4, threads in the shear plane; from memory"),
    ("bolt_preload_share", 0.3, "1", f"{OWN}: of the proof load, firm by hand"),
    ("backing_overlap", 25.0, "mm", f"{USUAL}: a backing plate reaches this far beyond the bolts' centres"),
    ("backing_overlap_most", 120.0, "mm", f"{OWN}: the largest backing plate that still finds room"),
    ("backing_thickness", 6.0, "mm", f"{USUAL}: metal at least half a bolt's diameter"),
    ("skin_panel_radius", 350.0, "mm", f"{OWN}: half of an unsupported panel of a stern"),
    ("skin_glass_share", 0.35, "1", f"{USUAL}: hand-laid mat and roving, glass by mass"),
    ("skin_bearing", 200.0, "MPa", "bearing strength of hand-laid E-glass; from memory"),
    ("core_crush", 1.4, "MPa", "PVC foam of 80 kg/m³; from memory"),
    ("core_plug_crush", 50.0, "MPa", "thickened epoxy; from memory"),
    ("galvanic_gap", 0.2, "V", "beyond 0.2 V the baser metal corrodes: a published chart"),
)
SCALE = "load"
SCALE_SHARE = 0.25
"""The margin that counts as 1 for every load check, as a share of its own limit."""


class Numbers:
    """Values and sources of the rules that the loads read. ValueError names a rule in a unit that is not its own."""

    def __init__(self, rules: Rules | None = None) -> None:
        self._stated = dict(rules.rule) if rules else {}
        self.scale_share = rules.scale.get(SCALE, SCALE_SHARE) if rules else SCALE_SHARE
        for name, standard in STANDARD.items():
            stated = self._stated.get(name)
            if stated and stated.unit != standard.unit:
                raise ValueError(f"rules.{name}.unit is {stated.unit!r}: write the value in {standard.unit!r}")

    def __getitem__(self, name: str) -> float:
        """Return a value; KeyError for a name the loads do not know."""
        return self._rule(name).value

    def source(self, name: str) -> str:
        """Return where a value comes from, and whether the catalogue states it.

        >>> Numbers().source("galvanic_gap")
        'galvanic_gap, not in the catalogue: beyond 0.2 V the baser metal corrodes: a published chart'
        """
        stated = "rule " + name if name in self._stated else f"{name}, not in the catalogue"
        return f"{stated}: {self._rule(name).source}"

    def _rule(self, name: str) -> Rule:
        return self._stated.get(name) or STANDARD[name]
