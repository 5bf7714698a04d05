"""Every constant that turns what was seen of a name into a probability. Nothing else in this package holds one.

A model's score is the sum of its evidence in natural log odds, START included. Against "none of these models" (odds 1)
and the other candidates its probability is the logistic

    p_i = exp(score_i) / (1 + sum_j exp(score_j))

Set by hand on invented names: words and number alike, nothing else known, gives 0.97; the same without an agreeing
suffix, 0.7; one letter wrong in eight, 0.95. To be replaced by values learned from people's decisions.
"""

from __future__ import annotations

from bisect import bisect_right

Curve = tuple[tuple[float, float], ...]

START = -4.0
MATCHED = 0.80  # at or above: taken
SEVERAL = 0.35  # all candidates together at or above: asked about
LISTED = 0.02  # below this an alternative is not worth a person's time
VETO = -12.0

ALIAS = 9.0  # a person decided it before
NUMBER_SAME = 1.0
NUMBER_NONE = 0.5  # neither has one
NUMBER_UNSAID = -2.5
NUMBER_EXTRA = -4.0  # the name has one, the model none
NUMBER_IS_LENGTH = -2.0  # the name has one, which is the model's length in feet or metres
NUMBER_POINT = -2.5  # 1050 for 10.50: the point forgotten, or another boat
NUMBER_POINT_MOVED = -6.0  # 105 for 10.50
OTHERS_DIFFER = -2.0

GENERATION_SAME = 1.5
GENERATION_NONE = 0.5
GENERATION_DIFFERS = -7.0
GENERATION_UNSAID = -2.3
GENERATION_EXTRA = -5.0
FIRST_UNSAID = -0.5  # the first of a series is seldom called so

SUFFIX_SAME = 1.5
SUFFIX_SHORT = 0.8  # said by its first letters
SUFFIX_UNSAID = -2.5
SUFFIX_KEPT_UNSAID = -1.8  # of keel, rig or rule
SUFFIX_MOST = 2  # further suffixes weigh nothing: one decision, said in two words
WORDS_PARTLY = 2.7  # some words just so, others not said, none left over
WORDS_UNSAID = 0.5  # the builder and the number only
STRAY_WORD = -4.0  # it may name a sister design that is not known here
STRAY_TRIM = -2.3  # most often the same hull
STRAY_KEPT = -0.8  # of keel, rig or rule: the models are not told apart by it
STRAY_MOST = 2
TWO_NAMES = -3.7  # the text names another model too

BUILDER_SAME = 1.5
BUILDER_LEAST = 0.3  # where the words leave no doubt: it cannot tell one of a yard's models from the next
BUILDER_DIFFERS = -3.0

# Likeness of the words, 0..1 -> log odds.
WORDS: Curve = ((0.0, -9.0), (0.6, -5.0), (0.75, 0.8), (0.8, 2.1), (0.85, 3.2), (0.92, 5.0), (1.0, 6.0))
# |ln(given / published)|: half of published lengths lie within 0.3 % of the measured, one in twenty beyond 4 %
# (measured on certificates, see the design notes); past 20 % it may be another unit, so it stops there.
LENGTH: Curve = ((0.0, 1.0), (0.01, 1.0), (0.04, 0.3), (0.06, -0.7), (0.10, -2.5), (0.20, -4.0))
BEAM: Curve = ((0.0, 0.5), (0.02, 0.5), (0.05, 0.0), (0.15, -2.0))
# Years before the first and after the last one built; a last hull is often sold and launched a year late.
YEAR_INSIDE = 0.7
YEAR_BEFORE: Curve = ((0.0, 0.7), (1.0, -1.0), (3.0, -4.0))
YEAR_AFTER: Curve = ((0.0, 0.7), (1.0, -0.5), (3.0, -2.5), (6.0, -3.5))

WORD_ALIKE = 0.79  # two words at least this alike are one word written twice
WORD_USABLE = 0.7  # below this a word is another word
SHORTEST_ABBREVIATION = 3
FUZZY_FROM = 4  # shorter words have to be equal
ABBREVIATION = 0.82
CUT_SHORT = 0.8  # by a letter or two
INITIALS = 0.87
YARD_FOR_INITIALS = 0.92  # the model is called by its yard's initials, and the yard is said in full
SOUNDS_ALIKE = 0.93
LIGHTEST_WORD = 3  # letters: a word of one letter tells a model as much


def on(curve: Curve, x: float) -> float:
    """Return the curve's value at x, straight between its points and level beyond them.

    >>> on(((0.0, 1.0), (2.0, 3.0)), 1.0), on(((0.0, 1.0), (2.0, 3.0)), 9.0)
    (2.0, 3.0)
    """
    if x <= curve[0][0]:
        return curve[0][1]
    if x >= curve[-1][0]:
        return curve[-1][1]
    at = bisect_right(curve, (x, float("inf")))
    (x0, y0), (x1, y1) = curve[at - 1], curve[at]
    return y0 + (y1 - y0) * (x - x0) / (x1 - x0)
