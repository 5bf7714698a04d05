"""Swedish."""

from __future__ import annotations

from service.core.reading.lexis import Numbers, Vocabulary
from service.core.reading.words.sv import alike, hull, letter, measures, things

VOCABULARY = Vocabulary(
    language="sv",
    common="och är det en ett på av för med vi jag har som till från att inte den om kan hej vår ert er måtten här "
    "vilket hur båten sitter över under också var vill ska skulle hans hon mot efter utan där eller mycket måste "
    "får ligger",
    numbers=Numbers(
        ones="noll en/ett två tre fyra fem sex sju åtta nio tio elva tolv tretton fjorton femton sexton sjutton arton "
        "nitton",
        tens="tjugo trettio fyrtio femtio sextio sjuttio åttio nittio",
        joint="{ten}{one}",
        hundred="hundra",
        half="halv/halva/halvt",
        and_="och",
        whole="halvannan=1.5 en_och_en_halv=1.5 ett_och_ett_halvt=1.5 {one}_och_en_halv=+0.5 trekvarts=0.75",
    ),
    concepts=measures.WORDS | hull.WORDS | things.WORDS | letter.WORDS,
    alike=alike.ALIKE,
)
