"""English."""

from __future__ import annotations

from service.core.reading.lexis import Numbers, Vocabulary
from service.core.reading.words.en import alike, hull, letter, measures, things

VOCABULARY = Vocabulary(
    language="en",
    common="the and is of to in it that we you for with my our have has are was would what which from this on at be not "
    "your please thanks she her they will can could me do does hello hi dear here but if or an there how one am "
    "i these those been as by its into want",
    numbers=Numbers(
        ones="zero one/a/an two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen "
        "sixteen seventeen eighteen nineteen",
        tens="twenty thirty forty fifty sixty seventy eighty ninety",
        joint="{ten} {one}",
        hundred="hundred",
        half="half",
        and_="and",
        whole="three_quarters_of_an=0.75 three_quarters_of_a=0.75 half_an=0.5 half_a=0.5 quarter_of_an=0.25 "
        "a_quarter_of_an=0.25 three_quarter=0.75 one_and_a_half=1.5 {one}_and_a_half=+0.5 a_couple_of=2 "
        "couple_of=2 fourty=40 fourty_one=41 fourty_two=42 fourty_three=43 fourty_four=44 fourty_five=45 "
        "fourty_six=46 fourty_seven=47 fourty_eight=48 fourty_nine=49",
    ),
    concepts=measures.WORDS | hull.WORDS | things.WORDS | letter.WORDS,
    alike=alike.ALIKE,
)
