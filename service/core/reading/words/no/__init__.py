"""Norwegian."""

from __future__ import annotations

from service.core.reading.lexis import Numbers, Vocabulary
from service.core.reading.words.no import alike, hull, letter, measures, things

VOCABULARY = Vocabulary(
    language="no",
    common="og er det en et på av for med vi jeg har som til fra at ikke den om kan hei vår deres hva hvor trenger også "
    "båten over under må hvilken altså lenger enn slags var vil skal kunne ble eller mot etter uten der noe mye "
    "får ligger dere",
    numbers=Numbers(
        ones="null en/ett/et/én/ei/én to tre fire fem seks sju/syv åtte ni ti elleve tolv tretten fjorten femten seksten "
        "sytten atten nitten",
        tens="tjue tretti førti femti seksti sytti åtti nitti",
        joint="{ten}{one}|{one}og{ten}",
        hundred="hundre",
        half="halv/halve/halvt",
        and_="og",
        whole="halvannen=1.5 halvannet=1.5 {one}_og_en_halv=+0.5 trekvart=0.75",
    ),
    concepts=measures.WORDS | hull.WORDS | things.WORDS | letter.WORDS,
    alike=alike.ALIKE,
)
