"""The answer at the desk: worked out, tried otherwise, asked for, sent and begun again."""

from __future__ import annotations

from tests.support.offices import Office


def test_the_answer_is_worked_out_once_and_then_kept(here: Office, things: dict[str, str]) -> None:
    client, at = here.client(), f"/desk/enquiries/{things['enquiry']}/fits"
    text = client.get(at).text
    assert "What fits her" in text
