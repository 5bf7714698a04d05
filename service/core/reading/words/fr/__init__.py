"""French."""

from __future__ import annotations

from service.core.reading.lexis import Numbers, Vocabulary
from service.core.reading.words.fr import alike, hull, letter, measures, things

VOCABULARY = Vocabulary(
    language="fr",
    common="le la les de des du et est un une je nous vous avec mon pour que qui dans sur au aux en pas ne votre notre "
    "j'ai bonjour peut pouvez merci son sa ce il elle plus cette ces par mes ses ont sommes êtes leur nos vos "
    "dont où cela bien si",
    numbers=Numbers(
        ones="zéro un/une deux trois quatre cinq six sept huit neuf dix onze douze treize quatorze quinze seize "
        "dix-sept dix-huit dix-neuf",
        tens="vingt trente quarante cinquante soixante soixante-dix quatre-vingt quatre-vingt-dix",
        joint="{ten} {one}|{ten} et {one}",
        hundred="cent",
        half="demi/demie",
        and_="et",
        whole="trois_quarts_de=0.75 dizaine_de=10 quinzaine_de=15 vingtaine_de=20 trentaine_de=30 quarantaine_de=40",
    ),
    concepts=measures.WORDS | hull.WORDS | things.WORDS | letter.WORDS,
    alike=alike.ALIKE,
)
