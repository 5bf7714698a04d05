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
    sail vessel loa
""")

# A rig tells variants apart where the models are called by it, and says little where they are not.
RIGS = _words("sloop cutter kutter ketch ketsch yawl schooner slup bermudan")

# What a yard calls itself beside its name.
YARD = _words("""
    yard yards yachts yacht boat boats boatbuilders boatyard boatworks works marine mouldings sons brothers bros ltd
    inc co company gmbh ag bv ab as sa srl spa oy industries group craft bat baat bater varv varvet verft mek baad bade
    jachtbouw jachten werft bootswerft chantier chantiers naval navals cantiere cantieri astilleros astillero nautica
    stocznia jachtowa boot boote bot baden baten baad class klasse klasa type typ model modell modele
    modelo yachting and und et og och en y e de du van
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
    (r"\bone ?design\b", "od"),
)
# Without any of these letters no pattern above or below can be met; one look is cheaper than a dozen.
MAY_VARY = re.compile(r"cockpit|sal(?:oon|on)|pil|ph|motor|ms|gat|ender|keel|dra|board|tall|design|mk")
READ_AS = re.compile(r"(?<=\bmk)(?= ?[il]*l) ?[il]{2,3}\b")  # l read for I: "MklI"
VARIANTS = tuple((re.compile(pattern), short) for pattern, short in _VARIANTS)
CODES = frozenset(short for _, short in _VARIANTS)

_NUMERALS = (
    ("1", "i", "one"), ("2", "ii", "two"), ("3", "iii", "three"), ("4", "iv", "four"), ("5", "v", "five"),
    ("6", "vi"), ("7", "vii"), ("8", "viii"), ("9", "ix"), ("10", "x"),
)  # fmt: skip
NUMERALS = {text: value for value, texts in enumerate(_NUMERALS, 1) for text in texts}

# Rule, keel and rig, written behind a name on certificates and in advertisements: the hull is the same one.
KEPT_HULL = _words("""
    mod modified modif custom std standard od ood ims irc orc orci ior chs one design tm mh mhd frac fractional masthead
    dk lk lr sd dl swing lifting bulb bulbkeel fin finkeel long shoal wing tall cb deep draft draught keel kiel kol lead
    rig mast boom carbon alu aluminium sym asym spin spi ib ob inboard outboard epoxy grp frp diesel tiller wheel
    version edition nr no number reg
""")
# Names of a trim: most often the same hull, sometimes a design of its own.
TRIM = _words("""
    sport sports race racer racing regatta regata r performance perf p cruiser cruising cruise classic club comfort
    competition comp family e plus evolution evo limited le exclusive prestige special sp elegance deluxe luxe de
""")

# Letters before a sail number.
NATIONS = _words("""
    alg and ant arg aru aus aut bah bar bel ber bra bul can chi chn col cro cub cyp cze den ecu egy esa esp est fij fin
    fra gbr ger gre gua hkg hun ina ind irl isl isr isv ita ivb jpn kor kuw lat lib lie ltu lux mas mex mlt mon nam ned
    nor nzl omn par per phi pol por pur qat rou rsa rus sgp slo sri sui svk swe tha tun tur uae ukr uru usa ven
""")
