"""Somebody wants to be told."""

from __future__ import annotations

import base64
import ipaddress
from urllib.parse import urlsplit

from service.flow.refusal import Refused
from service.store.outbox import EVENTS
from service.store.unit import UnitOfWork
from service.store.webhooks import Webhook

MOST = 10
SECRET_BYTES = 32
HTTPS = 443
LOCAL = frozenset({"localhost", "localdomain", "local", "internal"})
"""Names under these lead to no machine of the open internet (RFC 6761, RFC 6762; `internal` was set aside by ICANN in 2024)."""


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
    if not insecure:
        _see_host(parts.hostname)


def _see_host(host: str) -> None:
    """Return for a host that may stand for a machine of the open internet; where a name really leads is seen when it is called."""
    last = host.rstrip(".").rpartition(".")[2]
    if ":" in host or last.isdecimal() or last.startswith("0x"):  # then it is a number, whatever it is written like
        try:
            if open_to_all(host):
                return
        except ValueError:
            raise Refused(f"{host!r} is no address of a machine") from None
        raise Refused("a private, local or reserved address is not called")
    if last in LOCAL:
        raise Refused(f"a name under {last!r} is not called: it leads to no machine of the open internet")


def open_to_all(number: str) -> bool:
    """Say whether an address is one of the open internet.

    >>> [open_to_all(n) for n in ("127.0.0.1", "10.0.0.8", "::ffff:127.0.0.1", "fe80::1", "169.254.169.254", "192.0.2.1")]
    [False, False, False, False, False, False]
    >>> open_to_all("2a00:1450:4001:830::200e"), open_to_all("64:ff9b::7f00:1"), open_to_all("2002:7f00:1::")
    (True, False, False)
    """
    address = ipaddress.ip_address(number.partition("%")[0])
    if isinstance(address, ipaddress.IPv6Address):
        inner = address.ipv4_mapped or address.sixtofour or (address.teredo or (None, None))[1]
        wrapped = any(address in ipaddress.ip_network(net) for net in ("64:ff9b::/96", "64:ff9b:1::/48", "::/96"))
        if inner is not None:
            return open_to_all(str(inner))
        if wrapped:
            return False
    return address.is_global and not address.is_multicast and not address.is_reserved
