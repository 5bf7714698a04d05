"""Two hundred and eight letters with what a careful reader takes from each.

One hand wrote the rules and all letters but those of `blind`.

`tuned` was used while the rules were made. `apart` was scored unseen first (precision 0.983, recall 0.895) and then mended too,
so neither is unseen any more. `later` came after: its first thirty were written before their writer looked at the rules and
scored unseen (precision 0.971, recall 0.810; the rules were mended), then ten more (0.970, 0.891; mended again). `last` are
sixteen harder ones (0.957, 0.792, five values invented). The rules were mended on its first eight alone; the other eight then
still scored 0.953 and 0.783, and were mended too. Ten more of `last` (17 to 26), of plainer kinds, then scored 0.984 and 0.859
with two invented, eight after those 0.988 and 0.893 with one, and the last six 1.000 and 0.889; all were mended after that. So
each new batch of that hand was read rightly but for about one value in nine that was missed.

`blind` is another hand's, which never saw the rules: letters full of idiom, of dialect, of things said sideways. They came in
three lots of eight; each lot was scored unseen by rules mended on the lots before it: precision 0.901, recall 0.686 (eleven
values wrong, three invented), then 0.961 and 0.705 (four, one), then 0.958 and 0.663 (four, one). Two lots of six more (25 to
36) scored 0.962 and 0.748 (one wrong, three invented) by rules that had seen none of these letters, and 0.947 and 0.805 (four,
two) by rules mended on some of the others. Three lots of six (37 to 54) scored 0.959 and 0.746 (four, none), then 0.966 and
0.819 (two, one) and 1.000 and 0.946 (none), the second and third by rules mended on the first. The last three lots of six (55
to 72) scored 0.989 and 0.861 (one wrong), 0.991 and 0.943 (one) and 0.944 and 0.753 (one, three: one letter of fifteen values
was taken for mere thanks) by rules mended on all before; together 0.978 and 0.862. Two lots of eight after those (73 to 88), as
plain as most letters are, scored 0.993 and 0.965 (none wrong, one invented) and 0.987 and 0.962 (one, one). All but the last
five lots were mended whole after that: what stands below says what is held, not how the next letter is read.
"""

from __future__ import annotations

import pytest

from tests.core.reading.scoring import HERE, score

LETTERS = {"tuned": 20, "apart": 20, "later": 40, "last": 40, "blind": 88}


@pytest.mark.parametrize("part", LETTERS)
def test_what_is_stated_is_right_and_most_is_read(part: str) -> None:
    got = score(HERE / part)
    assert sum(1 for _ in (HERE / part).glob("*.eml")) == LETTERS[part]
    assert got.precision >= 0.97, got.faults
    assert got.recall >= 0.90, got.faults
