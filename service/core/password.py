"""Passwords and second factors: what is kept of them, and whether what somebody types is right."""

from __future__ import annotations

import base64
from datetime import datetime, timedelta

from argon2 import PasswordHasher
from argon2.exceptions import InvalidHashError, VerificationError
from pyotp import TOTP

SHORTEST, LONGEST = 12, 200
"""How many characters a password has. NIST SP 800-63B-4, 3.1.1.2, asks for 15 where nothing else is asked for and 8
beside a second factor; read from memory."""
SALT_BYTES, SECRET_BYTES, TOKEN_BYTES = 16, 20, 32
STEP_S = 30
_HASHER = PasswordHasher()  # Argon2id with the parameters of RFC 9106, second recommended option
_NOBODY = _HASHER.hash("nobody signs in by this", salt=bytes(SALT_BYTES))
_COMMON = ("password", "passwort", "motdepasse", "contrasena", "wachtwoord", "qwerty", "123456", "letmein", "windvane")


def hashed(password: str, salt: bytes) -> str:
    """Return the Argon2id hash (RFC 9106) of a password, in PHC form. `salt` is SALT_BYTES that nobody used before."""
    return _HASHER.hash(password, salt=salt)


def matches(kept: str | None, password: str) -> bool:
    """Say whether a password is the one that was hashed. None (there is nobody) takes as long as a wrong one.

    >>> matches(hashed("a long enough one", bytes(16)), "a long enough one"), matches(None, "a long enough one")
    (True, False)
    """
    try:
        right = _HASHER.verify(kept or _NOBODY, password)
    except (VerificationError, InvalidHashError):
        return False
    return bool(right) and kept is not None


def outdated(kept: str) -> bool:
    """Say whether a hash was made with weaker parameters than are used now."""
    return _HASHER.check_needs_rehash(kept)


def weakness(password: str, login: str) -> str | None:
    """Return why a password is not to be taken, None where it is.

    >>> weakness("password1234", "ada@example.com")
    'it begins with a word that everybody tries first; think of four words that do not belong together'
    """
    low = password.casefold()
    if len(password) < SHORTEST:
        return f"it has {len(password)} characters; take at least {SHORTEST}, such as four words"
    if len(password) > LONGEST:
        return f"it has {len(password)} characters; {LONGEST} at most"
    if len(set(password)) < SHORTEST // 3:
        return "it is the same few characters again and again"
    if low.startswith(_COMMON):
        return "it begins with a word that everybody tries first; think of four words that do not belong together"
    if login.partition("@")[0].casefold() in low:
        return "the name you sign in by is in it"
    return None


def secret_of(random: bytes) -> str:
    """Return the secret of a second factor, made from SECRET_BYTES that nobody can guess, in base32 (RFC 4648)."""
    return base64.b32encode(random).decode().rstrip("=")


def enrolment(secret: str, login: str) -> str:
    """Return the address from which a program for one-time codes takes the secret."""
    return TOTP(secret).provisioning_uri(name=login, issuer_name="Transom ledger")


def step_of_code(secret: str, code: str, now: datetime, used: int | None) -> int | None:
    """Return which half minute a one-time code (RFC 6238) belongs to: this one, the last or the next; None for none.

    A code of `used` or before it is taken no more.
    """
    given = code.replace(" ", "")
    totp = TOTP(secret)
    for offset in (0, -1, 1):
        at = now + timedelta(seconds=STEP_S * offset)
        step = int(at.timestamp()) // STEP_S
        if totp.verify(given, for_time=at, valid_window=0) and (used is None or step > used):
            return step
    return None
