"""The mark on a fit sheet finds the answer it was made from, for whoever may see that answer."""

from __future__ import annotations

import hashlib
from typing import Any

from tests.api.conftest import House


def test_the_mark_on_a_paper_finds_the_answer(here: House, asked: dict[str, Any]) -> None:
    sent = here.get(f"/v1/answers/{asked['id']}")
    mark = hashlib.sha256(sent.content).hexdigest()
    for length in (8, 12, 64):
        found = here.get(f"/v1/answers/{mark[:length]}")
        assert found.status_code == 200
        assert found.content == sent.content


def test_a_mark_too_short_of_nobody_or_of_another_dealer_finds_nothing(here: House, asked: dict[str, Any]) -> None:
    mark = hashlib.sha256(here.get(f"/v1/answers/{asked['id']}").content).hexdigest()
    assert here.get(f"/v1/answers/{mark[:7]}").status_code == 404
    assert here.get(f"/v1/answers/{mark[:8]}ffff").status_code == 404
    assert here.get(f"/v1/answers/{mark[:12].upper()}").status_code == 404
    assert here.get(f"/v1/answers/{mark[:12]}", "other").status_code == 404
    assert here.get(f"/v1/answers/{mark[:12]}", "desk").status_code == 200
