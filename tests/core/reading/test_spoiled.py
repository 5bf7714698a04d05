"""Spoiled mails: a few hundred here, ten thousand by `scripts/soak reading`."""

from __future__ import annotations

import numpy as np
import pytest

from scripts.soaks.reading import read_one
from tests.support.mutated_mails import giant, nested, spoiled, whole_mails


@pytest.mark.parametrize("first", range(0, 300, 100))
def test_a_spoiled_mail_is_read_or_refused_and_none_takes_long(first: int) -> None:
    for seed in range(first, first + 100):
        got = read_one(seed, spoiled(seed))
        assert got.fault is None, seed
        assert got.seconds < 5.0, seed


def test_two_hundred_deep_and_twenty_megabytes_on_one_line() -> None:
    rng = np.random.default_rng(7)
    mail = whole_mails()[0]
    for data in (nested(nested(mail, rng), rng), giant(mail, rng), giant(mail, rng)):
        got = read_one(0, data)
        assert got.fault is None
        assert got.seconds < 5.0
