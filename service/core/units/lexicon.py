"""The units people write, as data: symbol, dimension, factor to SI, and the words for each in ten languages.

Exact by definition: inch 25.4 mm, foot 304.8 mm, pound 0.45359237 kg (international yard and pound, 1959);
long ton 2240 lb, short ton 2000 lb; knot 1852 m an hour; mile 1609.344 m.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Dimension = Literal["length", "angle", "mass", "speed"]
SI_UNIT: dict[Dimension, str] = {"length": "mm", "angle": "deg", "mass": "kg", "speed": "m/s"}

INCH_MM = 25.4
FOOT_MM = 304.8
POUND_KG = 0.45359237
SHORT_TON_KG = 2000 * POUND_KG
LONG_TON_KG = 2240 * POUND_KG
KNOT_M_S = 1852 / 3600
MILE_AN_HOUR_M_S = 1609.344 / 3600


@dataclass(frozen=True)
class Unit:
    """A unit: value in SI = number * factor."""

    symbol: str
    dimension: Dimension
    factor: float
    note: str | None = None


MM = Unit("mm", "length", 1.0)
CM = Unit("cm", "length", 10.0)
DM = Unit("dm", "length", 100.0)
METRE = Unit("m", "length", 1000.0)
INCH = Unit("in", "length", INCH_MM)
FOOT = Unit("ft", "length", FOOT_MM)
DEGREE = Unit("deg", "angle", 1.0)
KG = Unit("kg", "mass", 1.0)
TONNE = Unit("t", "mass", 1000.0)
TON = Unit("ton", "mass", 1000.0, "'tons' taken as metric: long tons would be 1.6 % more, short tons 9 % less")
LONG_TON = Unit("long ton", "mass", LONG_TON_KG)
SHORT_TON = Unit("short ton", "mass", SHORT_TON_KG)
QUINTAL = Unit("q", "mass", 100.0)
POUND = Unit("lb", "mass", POUND_KG)
KNOT = Unit("kn", "speed", KNOT_M_S)
METRE_A_SECOND = Unit("m/s", "speed", 1.0)
KM_AN_HOUR = Unit("km/h", "speed", 1 / 3.6)
MILE_AN_HOUR = Unit("mph", "speed", MILE_AN_HOUR_M_S)


def _words(text: str) -> frozenset[str]:
    return frozenset(text.split())


_WORDS: dict[Unit, str] = {
    MM: "mm mms millimetern millimetre millimetres millimeter millimeters millimètre millimètres milímetro milímetros "
    "millimetro millimetri",
    CM: "cm cms centimetern zentimetern centimetre centimetres centimeter centimeters zentimeter centimètre centimètres centímetro "
    "centímetros centimetro centimetri",
    DM: "dm decimeter decimeters decimetre decimetres dezimeter dezimetern décimètre décimètres decímetro decímetros "
    "decimetro decimetri desimeter",
    METRE: "m mt mtr mtrs mts metre metres meter meters metern mètre mètres metro metros metri",
    INCH: 'in ins inch inches zoll pouce pouces pulgada pulgadas pollice pollici duim tum tomme tommer "',
    FOOT: "ft foot feet fuß fuss pied pieds pie pies piede piedi voet fot fod '",
    DEGREE: "° deg degs degree degrees grad grade grader graders graden gradi grado grados degré degrés",
    KG: "kg kgs kilo kilos kilogram kilograms kilogramme kilogrammes kilogramm kilogramo kilogramos chilo chili "
    "chilogrammo chilogrammi",
    TONNE: "t tonne tonnes tonnen tonn tonelada toneladas tonnellata tonnellate",
    TON: "ton tons",
    QUINTAL: "quintali quintale",
    POUND: "lb lbs pound pounds",
    KNOT: "kn kt kts knot knots knoten nœud nœuds noeud noeuds knoop knopen nudo nudos nodo nodi knop knob",
    KM_AN_HOUR: "kmh kph",
    MILE_AN_HOUR: "mph",
}
UNITS: dict[str, Unit] = {word.casefold(): unit for unit, words in _WORDS.items() for word in words.split()}
BY_SYMBOL: dict[str, Unit] = {
    unit.symbol: unit for unit in (*_WORDS, LONG_TON, SHORT_TON, METRE_A_SECOND, KM_AN_HOUR)
} | {"°": DEGREE}
PHRASES: dict[tuple[str, ...], Unit] = {
    **{("long", word): LONG_TON for word in ("ton", "tons")},
    **{("short", word): SHORT_TON for word in ("ton", "tons")},
    **{("us", word): SHORT_TON for word in ("ton", "tons")},
    **{("metric", word): TONNE for word in ("ton", "tons", "tonne", "tonnes")},
    ("m", "/", "s"): METRE_A_SECOND,
    ("km", "/", "h"): KM_AN_HOUR,
}

# "in" is also a preposition: in running text it is no inch in front of these.
AFTER_PREPOSITION_IN = _words(
    "the a an my our your his her their this that these those it all total front line order case and which fact time "
    "good general der den dem die das des ein einer einem de het een il la le lo i gli un una cui which "
    "legno acciaio alluminio vetroresina ferro holz gfk alu aluminium staal hout steel wood grp"
)
# A bare number in front of these counts something; it is not the rest of "5 ft 2" or "1 m 20".
COUNTED = _words(
    "years year days day people persons boats berths of times jahre jahren ans años anni jaar år hours weeks months "
    "bolts holes"
)
AND = _words("and und et y e en och og")
RANGE_WORDS = _words("to until and bis und tot en à et a al y e ed til till och og hasta")
_COUNTING = "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen"
NUMBER_WORDS = {word: float(value) for value, word in enumerate(_COUNTING.split(), start=1)}
RADIANS = _words("rad rads radian radians radiant radianes radianti radialen")

# What can stand on a boat: beyond it, a second reading of the same digits is no rival.
PLAUSIBLE: dict[Dimension, float] = {"length": 60_000.0, "angle": 360.0, "mass": 500_000.0, "speed": 100.0}
