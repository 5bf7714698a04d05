"""Somebody wants to be told."""

from __future__ import annotations

import base64
from urllib.parse import urlsplit

from service.flow.refusal import Refused
from service.store.outbox import EVENTS
from service.store.unit import UnitOfWork
from service.store.webhooks import Webhook

MOST = 10
SECRET_BYTES = 32
HTTPS = 443


def add_webhook(
    uow: UnitOfWork, owner: str, url: str, events: tuple[str, ...], *, random: bytes, insecure: bool = False
) -> Webhook:
    """Keep a webhook and commit; its secret is to be shown this once.

    Refused for an address that cannot be told in safety (`insecure` lets http through, for tests), or too many of them.
    Where the address leads is looked at whenever something is sent.
    """
    see_address(url, insecure=insecure)
    with uow:
        if len(uow.webhooks.of(owner)) >= MOST:
            raise Refused(f"there are {MOST} webhooks already; remove one that is not needed")
        secret = "whsec_" + base64.b64encode(random[:SECRET_BYTES]).decode()
        made = uow.webhooks.add(owner, url, sorted(set(events) or set(EVENTS.values())), secret)
        uow.commit()
    return made


def see_address(url: str, *, insecure: bool) -> None:
    """Return where an address may be told by its looks; else Refused says what is wrong with it."""
    if any(ord(letter) <= ord(" ") or ord(letter) > ord("~") for letter in url):
        raise Refused("the address holds a blank or a letter that no address may hold; write it percent-encoded")
    try:
        parts = urlsplit(url)
        port = parts.port
    except ValueError as problem:
        raise Refused(f"this is no address: {problem}") from None
    if parts.scheme != "https" and not (insecure and parts.scheme == "http"):
        raise Refused("a webhook's address begins with https://: what is told must not be read on the way")
    if not parts.hostname or "@" in parts.netloc or parts.fragment:
        raise Refused("give a host, and neither a user nor a fragment, in the address")
    if port not in (None, HTTPS) and not insecure:
        raise Refused(f"port {port}: webhooks are told on port {HTTPS} alone")
