"""German."""

from __future__ import annotations

from service.core.reading.lexis import Numbers, Vocabulary
from service.core.reading.words.de import alike, hull, letter, measures, things

VOCABULARY = Vocabulary(
    language="de",
    common="der die das und ist wir ich sie eine ein mit für von zu nicht auf dem den im an haben wie auch bei oder "
    "mein unser ihre was welche guten tag können möchten bitte liegt über einen einem einer sich als noch nur "
    "unter sind hat habe wird kann des vom zum zur aus nach uns ihnen eure",
    numbers=Numbers(
        ones="null ein/eine/einen/einem/einer/eins zwei/zwo drei vier fünf sechs sieben acht neun zehn elf zwölf "
        "dreizehn vierzehn fünfzehn sechzehn siebzehn achtzehn neunzehn",
        tens="zwanzig dreißig vierzig fünfzig sechzig siebzig achtzig neunzig",
        joint="{one}und{ten}",
        hundred="hundert",
        half="halb/halbe/halber/halben/halbes",
        and_="und",
        whole="anderthalb=1.5 anderthalbe=1.5 eineinhalb=1.5 {one}einhalb=+0.5 eine_dreiviertel=0.75 dreiviertel=0.75",
    ),
    concepts=measures.WORDS | hull.WORDS | things.WORDS | letter.WORDS,
    alike=alike.ALIKE,
)
