"""Tell whoever wants to be told: take what is due, send it, write down what it came to."""

from __future__ import annotations

from collections.abc import Callable
from datetime import timedelta

from service.store.outbox import Letter
from service.store.unit import Store

LEASE = timedelta(seconds=60)
GIVEN_UP = timedelta(days=1)
FIRST, SLOWEST = timedelta(seconds=5), timedelta(hours=3)
GONE = 410
GOOD = range(200, 300)

Send = Callable[[Letter], int | str]
"""Sends a letter; returns the status that was answered, or what went wrong."""


def deliver(store: Store, send: Send, jitter: Callable[[], float]) -> int:
    """Send what is due once, and return how many letters that were. `jitter` gives numbers from 0 to 1.

    What is not taken is tried again, less and less often, for a day; 410 stops the webhook. A letter may come twice
    where this breaks off half way: its webhook-id is the same then.
    """
    with store.writing() as uow:
        letters = uow.outbox.take(uow.now() + LEASE)
        if letters:
            uow.commit()
    for letter in letters:
        told = send(letter)
        with store.writing() as uow:
            if told == GONE:
                uow.webhooks.stop(letter.webhook, "its address answered 410 (gone)")
            elif isinstance(told, int) and told in GOOD:
                uow.outbox.note(letter.id, str(told), None)
            else:
                due = uow.now() + wait(letter.attempts, jitter())
                over = due > letter.created + GIVEN_UP
                uow.outbox.note(letter.id, f"given up: {told}" if over else str(told), None if over else due)
            uow.commit()
    return len(letters)


def wait(attempts: int, chance: float) -> timedelta:
    """Return how long to wait after so many attempts before this one: twice as long each time, half of it by chance.

    >>> wait(0, 0.0), wait(0, 1.0), wait(20, 1.0)
    (datetime.timedelta(seconds=2, microseconds=500000), datetime.timedelta(seconds=5), datetime.timedelta(seconds=10800))
    """
    longest: timedelta = min(FIRST * (1 << min(attempts, 16)), SLOWEST)
    return longest * (0.5 + 0.5 * chance)
