"""Italian."""

from __future__ import annotations

from service.core.reading.lexis import Numbers, Vocabulary
from service.core.reading.words.it import alike, hull, letter, measures, things

VOCABULARY = Vocabulary(
    language="it",
    common="il la lo i gli le di del della dello e è un una per con che non in al alla mio mia vostro nostro ho abbiamo "
    "vorrei buongiorno si sul sulla sono quale più da anche grazie uno nel nella dal dalla questo questa ha "
    "hanno vi ci mi come cosa suo",
    numbers=Numbers(
        ones="zero un/uno/una due tre quattro cinque sei sette otto nove dieci undici dodici tredici quattordici "
        "quindici sedici diciassette diciotto diciannove",
        tens="venti trenta quaranta cinquanta sessanta settanta ottanta novanta",
        joint="{ten}{one}",
        hundred="cento",
        half="mezzo/mezza",
        and_="e",
        whole="ventuno=21 ventotto=28 trentuno=31 trentotto=38 quarantuno=41 quarantotto=48 tre_quarti_di=0.75 "
        "decina_di=10 quindicina_di=15 ventina_di=20 trentina_di=30 quarantina_di=40",
    ),
    concepts=measures.WORDS | hull.WORDS | things.WORDS | letter.WORDS,
    alike=alike.ALIKE,
)
