"""Free text and mail -> boat forms with evidence for every value.

`reader` goes through it all in order. Laying out: `lines` whose words (`wrapping`, `signature`), `lexis` words to concepts by the
vocabulary of a language (`words`; `kin` compounds and slips), `spoken` and `and_half` numbers in words, `declared` and `unitless`
units that go without saying, `scaled` lengths on a drawing, `sheet` thoughts, `paired` labels with their numbers, `axes`, `view`
what stands round a quantity, `hedges` how surely it is said.
What is stated, as `claims`: `measures` lengths, `angles`, `rudders`, `stern` words without numbers, `methods`, `details` and
`particulars` beside the boat's name, `overall`, `weights`, `laden`; told another way: `bare`, `answers` below our questions,
`slopes` so much over so much, `lean` which way, `profile`, `plumbed`, `plumb_rows`, `plumb_gap`, `camber`, `laminate`,
`under_step`, `halves`, `another` counted on from the last, `zeros`.
Things on the stern: `obstacles`, `spans` and `boxes` how far they reach, `doing` and `meant` whether they are there, go or stay.
Put right: `breath` in the same breath, `corrections`, `erratum`.
Whose and which: `language`, `kinds` what the letter is, `people`, `models`, `boats`, `joining` a thread, `enclosed` forms that came
along. Then `assemble` one form, `gaps` and `settles` what to ask; for people: `highlight`, `pictures`, `shape` what is published.
"""

from __future__ import annotations

from service.core.reading.letter import Attachment, Letter
from service.core.reading.shape import Doubt, Enclosed, Evidence, Missing, Reading

__all__ = ["Attachment", "Doubt", "Enclosed", "Evidence", "Letter", "Missing", "Reading"]
