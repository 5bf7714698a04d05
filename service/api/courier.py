"""Carries webhook messages: signed by Standard Webhooks, to https addresses of the open internet, never further."""

from __future__ import annotations

import secrets
import socket
import ssl
from collections.abc import Callable
from datetime import datetime
from threading import Event, Thread
from urllib.parse import urlsplit, urlunsplit

import httpx
from standardwebhooks import Webhook

from service.api.log import log
from service.flow.add_webhook import open_to_all, see_address
from service.flow.deliver import GOOD, deliver
from service.flow.refusal import Refused
from service.store.errors import StoreError
from service.store.outbox import Letter
from service.store.unit import Store

TIMEOUT_S = 10.0
BEAT_S = 2.0
MOST_READ = 65_536


class Courier:
    """Sends letters. `insecure` lets them go anywhere, for tests; `trust` is whom to believe, else the system's."""

    def __init__(
        self, clock: Callable[[], datetime], *, insecure: bool = False, trust: ssl.SSLContext | None = None
    ) -> None:
        """Keep how to send; nothing is sent yet."""
        self._clock, self._insecure = clock, insecure
        self._client = httpx.Client(
            timeout=TIMEOUT_S, follow_redirects=False, trust_env=False, verify=trust or ssl.create_default_context()
        )

    def send(self, letter: Letter) -> int | str:
        """Send one letter and return the status that was answered, or what went wrong, which is logged."""
        told = self._sent(letter)
        if not isinstance(told, int) or told not in GOOD:
            log("warning", "webhook not taken", webhook=letter.webhook, message=letter.message, told=told)
        return told

    def _sent(self, letter: Letter) -> int | str:
        try:
            see_address(letter.url, insecure=self._insecure)
            url, host = self._placed(letter.url)
        except (Refused, OSError) as error:
            return f"not sent: {error}"
        now = self._clock()
        headers = {
            "Host": host,
            "Content-Type": "application/json",
            "User-Agent": "transom-webhooks",
            "webhook-id": letter.message,
            "webhook-timestamp": str(int(now.timestamp())),
            "webhook-signature": Webhook(letter.secret).sign(letter.message, now, letter.body),
        }
        name = host.partition(":")[0]
        try:
            with self._client.stream(
                "POST", url, content=letter.body.encode(), headers=headers, extensions={"sni_hostname": name}
            ) as reply:
                return reply.status_code
        except httpx.HTTPError as error:
            return f"not sent: {type(error).__name__}"

    def _placed(self, url: str) -> tuple[str, str]:
        """Return the address with a number in the place of its name, and the name: what was looked at is what is used."""
        parts = urlsplit(url)
        name, port = parts.hostname or "", parts.port
        found = sorted({str(info[4][0]) for info in socket.getaddrinfo(name, port or 443, type=socket.SOCK_STREAM)})
        if not self._insecure:
            for number in found:
                if not open_to_all(number):
                    raise Refused("its name leads to a private, local or reserved address")
        number = f"[{found[0]}]" if ":" in found[0] else found[0]
        at = number if port is None else f"{number}:{port}"
        return urlunsplit((parts.scheme, at, parts.path or "/", parts.query, "")), parts.netloc

    def close(self) -> None:
        """Let go of connections."""
        self._client.close()


def _chance() -> float:
    return secrets.randbelow(1000) / 1000


class Rounds:
    """The thread in which a service sends what is due, as long as it runs."""

    def __init__(self, store: Store, courier: Courier) -> None:
        """Keep what to send and how."""
        self._store, self._courier, self._end = store, courier, Event()
        self._thread = Thread(target=self._go, name="courier", daemon=True)

    def start(self) -> None:
        """Begin."""
        self._thread.start()

    def stop(self) -> None:
        """End after the letter that is being sent."""
        self._end.set()
        self._thread.join(TIMEOUT_S + 1)
        self._courier.close()

    def _go(self) -> None:
        while not self._end.wait(BEAT_S):
            try:
                while self._waiting() and deliver(self._store, self._courier.send, _chance):
                    if self._end.is_set():
                        return
            except StoreError as error:
                log("warning", "courier waits", error=type(error).__name__)
            except Exception as error:  # noqa: BLE001 - the rounds go on, whatever befell one letter
                log("error", "courier stumbled", error=type(error).__name__)

    def _waiting(self) -> bool:
        with self._store.reading() as uow:  # a look costs nobody a turn at writing
            return uow.outbox.due()
