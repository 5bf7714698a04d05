"""Danish."""

from __future__ import annotations

from service.core.reading.lexis import Numbers, Vocabulary
from service.core.reading.words.da import alike, hull, letter, measures, things

VOCABULARY = Vocabulary(
    language="da",
    common="og er det en et på av for med vi jeg har som til fra at ikke den om kan hej vores jeres hvad hvor også "
    "båden over under skal hvilken altså længere end slags af mit var vil skulle kunne blev eller mod efter uden "
    "der noget meget får ligger jer",
    numbers=Numbers(
        ones="nul en/et/én to tre fire fem seks syv otte ni ti elleve tolv tretten fjorten femten seksten sytten "
        "atten nitten",
        tens="tyve tredive fyrre halvtreds tres halvfjerds firs halvfems",
        joint="{one}og{ten}",
        hundred="hundrede",
        half="halv/halve/halvt",
        and_="og",
        whole="halvanden=1.5 halvandet=1.5 {one}_og_en_halv=+0.5 trekvart=0.75",
    ),
    concepts=measures.WORDS | hull.WORDS | things.WORDS | letter.WORDS,
    alike=alike.ALIKE,
)
