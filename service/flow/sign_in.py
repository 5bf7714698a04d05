"""Sign in at the desk, stay signed in, and sign out."""

from __future__ import annotations

import hashlib
import hmac
from dataclasses import dataclass
from datetime import datetime, timedelta

from service.core.password import matches, step_of_code
from service.flow.refusal import Refused
from service.store.unit import Store, UnitOfWork
from service.store.users import Session, User

IDLE, LONGEST = timedelta(hours=12), timedelta(days=7)
"""Who does nothing for so long is signed out; and whoever has been signed in for so long, whatever they do."""
SEEN_EVERY = timedelta(minutes=5)
TRIES, LOCK = 5, timedelta(minutes=15)
"""So many wrong passwords in a row and none is taken for a while."""
WRONG = "That name and password do not go together. After five wrong ones in a row none is taken for 15 minutes"


class CodeWanted(Refused):
    """The password is right, and a second factor is asked for."""


@dataclass(frozen=True)
class Visitor:
    """Somebody signed in. `token` is the cookie, `csrf` what every form that changes something has to carry."""

    user: User
    token: str

    @property
    def csrf(self) -> str:
        """Return the word that forms of this session carry."""
        return hmac.new(self.token.encode(), b"form", hashlib.sha256).hexdigest()

    @property
    def who(self) -> str:
        """Return the name that stands in histories."""
        return self.user.name


def sign_in(store: Store, login: str, password: str, code: str, *, ticket: str) -> Visitor:
    """Sign somebody in with a `ticket` that nobody can guess, and commit; wrong tries are counted.

    CodeWanted where a second factor is asked for and no `code` was given, Refused for whatever does not match; it says
    the same whether the name, the password or the lock was to blame.
    """
    with store.reading() as uow:
        user, now = uow.users.by_login(login.strip().casefold()), uow.now()
    right = matches(user.digest if user else None, password)  # slow on purpose: nobody waits for the database meanwhile
    with store.writing() as uow:
        user = uow.users.get(user.id) if user else None
        if user is None or user.closed is not None or (user.locked is not None and now < user.locked):
            raise Refused(WRONG)
        step = step_of_code(user.secret, code, now, user.step) if user.secret and right and code else None
        if not right or (user.secret and code and step is None):
            _count_wrong(uow, user, now)
            raise Refused(WRONG)
        if user.secret and step is None:
            raise CodeWanted("Give the six figures that your program for one-time codes shows now")
        uow.users.note(user.id, failed=0, locked=None, seen=now, **({} if step is None else {"step": step}))
        uow.sessions.begin(Session(_digest(ticket), user.id, now, now, now + IDLE))
        uow.commit()
    return Visitor(user, ticket)


def visitor(store: Store, token: str) -> Visitor | None:
    """Return who is signed in with that cookie; None where nobody is, or no more."""
    with store.reading() as uow:
        found, now = uow.sessions.get(_digest(token)), uow.now()
    if found is None:
        return None
    session, user = found
    if now >= session.ends or user.closed is not None:
        return None
    if now - session.seen > SEEN_EVERY:
        _stay(store, session, now)
    return Visitor(user, token)


def sign_out(store: Store, token: str) -> None:
    """End a session."""
    with store.writing() as uow:
        uow.sessions.end(digest=_digest(token))
        uow.commit()


def end_others(uow: UnitOfWork, user_id: str, token: str | None) -> None:
    """End every session of somebody but the one of `token`; whoever began the unit of work commits."""
    uow.sessions.end(user_id=user_id, but=None if token is None else _digest(token))


def _count_wrong(uow: UnitOfWork, user: User, now: datetime) -> None:
    failed = user.failed + 1
    locked = now + LOCK if failed >= TRIES else None
    uow.users.note(user.id, failed=0 if locked else failed, locked=locked)
    uow.commit()


def _stay(store: Store, session: Session, now: datetime) -> None:
    with store.writing() as uow:
        uow.sessions.touch(session.digest, now, min(now + IDLE, session.created + LONGEST))
        uow.commit()


def _digest(token: str) -> str:
    return hashlib.sha256(token.encode()).hexdigest()
