"""Words of the trade that stand in boat names without telling one model from another, and ways to write a variant.

From memory of how boats are listed and sold; no source.
"""

from __future__ import annotations

import re


def _words(text: str) -> frozenset[str]:
    return frozenset(text.split())


# A vessel's prefix or the plain word for what it is: says nothing about which model.
NOISE = _words("""
    a the sy yacht yachts segelyacht segelboot seilbat segelbat zeiljacht voilier velero barca sailing sailboat boat
    sail vessel model modell modele modelo type typ class klasse loa
""")

# A rig tells variants apart where the models are called by it, and says little where they are not.
RIGS = _words("sloop cutter kutter ketch ketsch yawl schooner slup bermudan")

# What a yard calls itself beside its name.
YARD = _words("""
    yard yards yachts yacht boat boats boatbuilders boatyard boatworks works marine mouldings sons brothers bros ltd
    inc co company gmbh ag bv ab as sa srl spa oy industries group craft bat baat bater varv verft mek baad bade
    jachtbouw jachten werft bootswerft chantier chantiers naval navals cantiere cantieri astilleros astillero nautica
    stocznia jachtowa yachting and und et og och en y e de du van
""")

UNITS = _words("ft feet foot fot fots fuss fus pieds pies piedi voet stop")
METRES = _words("m mtr mtrs mt meter metre meters metres metri metros")

# One spelling for each way of writing a variant that changes the boat under the gear.
_VARIANTS = (
    (r"\b(?:centre|center|central|mid(?:ship)?) ?cockpit\b", "cc"),
    (r"\b(?:aft|after) ?cockpit\b", "ac"),
    (r"\bdec(?:k|ks) ?sal(?:oon|on|ong)\b|\bdekks? ?salong\b|\bdackssalong\b", "ds"),
    (r"\bpilot ?(?:house|haus|hus|huis)\b|\bph\b", "pilothouse"),
    (r"\bmotor ?sail(?:e|o)r\b|\bmotor ?segler\b|\bmotorseiler\b|(?<=\d )ms\b", "motorsailer"),
    (r"\b(?:spiss|spits|spitz|spids|spets)gatt(?:e?r|are|et)?\b|\bdouble ?ender\b", "spissgatter"),
    (r"\bshoal ?(?:keel|draft|draught)\b", "shoal"),
    (r"\b(?:wing ?keel)\b", "wing"),
    (r"\bcentre ?board\b|\bcenter ?board\b", "cb"),
    (r"\btall ?(?:rig|mast)\b", "tall"),
)
VARIANTS = tuple((re.compile(pattern), short) for pattern, short in _VARIANTS)
CODES = frozenset(short for _, short in _VARIANTS)

ROMAN = {"i": 1, "ii": 2, "iii": 3, "iv": 4, "v": 5, "vi": 6, "vii": 7, "viii": 8, "ix": 9}
