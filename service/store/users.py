"""Who may sign in at the desk, and who is signed in."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Any

import sqlalchemy as sa

from service.store.desk import Desk
from service.store.desk_schema import sessions, users
from service.store.errors import Conflict
from service.store.happening import Happening


@dataclass(frozen=True)
class User:
    """Somebody who works with the program in a browser; `dealer` is set for a dealer's people, who see theirs alone.

    `digest` is the password's hash, `secret` the second factor's, `step` the last of its codes that was used.
    """

    id: str
    login: str
    name: str
    role: str
    dealer: str | None
    digest: str
    created: datetime
    fresh: bool = True
    secret: str | None = None
    step: int | None = None
    failed: int = 0
    locked: datetime | None = None
    seen: datetime | None = None
    closed: datetime | None = None


@dataclass(frozen=True)
class Session:
    """Somebody signed in, until `ends`. `digest` is the SHA-256 of the cookie."""

    digest: str
    user_id: str
    created: datetime
    seen: datetime
    ends: datetime


class Users:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def add(self, user: User) -> None:
        """Keep somebody new. Conflict where the name to sign in with is taken."""
        if self.by_login(user.login) is not None:
            raise Conflict("somebody signs in by that name already", repr(user.login), "Take another, or change theirs")
        self._desk.write(users.insert(), [vars(user)])
        self._desk.happened.append(Happening("created", "user", user.id, ""))

    def get(self, user_id: str) -> User | None:
        """Return one, None where there is no such id."""
        return _user(self._desk.one(sa.select(users).where(users.c.id == user_id)))

    def by_login(self, login: str) -> User | None:
        """Return who signs in by that name, None where nobody does."""
        return _user(self._desk.one(sa.select(users).where(users.c.login == login)))

    def all(self) -> tuple[User, ...]:
        """Return everybody, by the name they sign in with; closed ones too."""
        return tuple(User(**row._mapping) for row in self._desk.all(sa.select(users).order_by(users.c.login)))  # noqa: SLF001

    def set(self, user_id: str, **values: Any) -> None:  # noqa: ANN401 - columns differ in type
        """Change what is kept of somebody, and say so in the audit."""
        self.note(user_id, **values)
        self._desk.happened.append(Happening("changed", "user", user_id, ""))

    def note(self, user_id: str, **values: Any) -> None:  # noqa: ANN401 - the same
        """Change what every signing in changes: `failed`, `locked`, `seen`, `step`."""
        self._desk.connection.execute(users.update().where(users.c.id == user_id).values(**values))


class Sessions:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def begin(self, session: Session) -> None:
        """Keep a new one, and forget those that have ended."""
        self._desk.connection.execute(sessions.delete().where(sessions.c.ends <= session.created))
        self._desk.write(sessions.insert(), [vars(session)])
        self._desk.happened.append(Happening("created", "session", session.user_id, ""))

    def get(self, digest: str) -> tuple[Session, User] | None:
        """Return who is signed in with that cookie, None where nobody is."""
        columns = [*(column.label(f"session_{column.name}") for column in sessions.c), *users.c]
        asked = sa.select(*columns).join(users, users.c.id == sessions.c.user_id).where(sessions.c.digest == digest)
        row = self._desk.one(asked)
        if row is None:
            return None
        said = dict(row._mapping)  # noqa: SLF001 - its public name
        own = {name.removeprefix("session_"): said.pop(name) for name in list(said) if name.startswith("session_")}
        return Session(**own), User(**said)

    def touch(self, digest: str, seen: datetime, ends: datetime) -> None:
        """Write down that somebody signed in is still there."""
        self._desk.connection.execute(sessions.update().where(sessions.c.digest == digest).values(seen=seen, ends=ends))

    def end(self, *, digest: str | None = None, user_id: str | None = None, but: str | None = None) -> None:
        """End one, or all of somebody's (`but` one)."""
        chosen = sessions.c.digest == digest if digest is not None else sessions.c.user_id == user_id
        if but is not None:
            chosen = sa.and_(chosen, sessions.c.digest != but)
        self._desk.connection.execute(sessions.delete().where(chosen))


def _user(row: sa.Row[Any] | None) -> User | None:
    return None if row is None else User(**row._mapping)  # noqa: SLF001 - its public name
