"""Dutch."""

from __future__ import annotations

from service.core.reading.lexis import Numbers, Vocabulary
from service.core.reading.words.nl import alike, hull, letter, measures, things

VOCABULARY = Vocabulary(
    language="nl",
    common="de het een en van is voor met op aan wij ik uw onze mijn naar niet dat die graag ook goedemorgen boven "
    "onder in te zijn heeft hebben dan bij wat welke klant kunt wordt als er mij jullie zou kan moet uit om tot "
    "deze",
    numbers=Numbers(
        ones="nul een/één twee drie vier vijf zes zeven acht negen tien elf twaalf dertien veertien vijftien zestien "
        "zeventien achttien negentien",
        tens="twintig dertig veertig vijftig zestig zeventig tachtig negentig",
        joint="{one}en{ten}|{one}ën{ten}",
        hundred="honderd",
        half="half/halve",
        and_="en",
        whole="anderhalve=1.5 anderhalf=1.5 tweeënhalve=2.5 tweeënhalf=2.5 drieënhalf=3.5 drieënhalve=3.5 "
        "{one}eneenhalf=+0.5 {one}eneenhalve=+0.5 {one}ënhalf=+0.5 driekwart=0.75",
    ),
    concepts=measures.WORDS | hull.WORDS | things.WORDS | letter.WORDS,
    alike=alike.ALIKE,
)
