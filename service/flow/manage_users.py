"""Who may sign in at the desk: add, change, close; and what everybody changes of their own."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Any

from service.core.api_key import LETTERS
from service.core.password import SALT_BYTES, hashed, matches, step_of_code, weakness
from service.flow.refusal import Refused
from service.flow.sign_in import end_others
from service.store.unit import UnitOfWork
from service.store.users import User

ROLES = ("desk", "dealer", "fitter", "admin")
GIVEN_LETTERS, GIVEN_BYTES = 20, 20 + SALT_BYTES
"""A password that is given out, and how many random bytes it and its salt are made from."""
_LOGIN = re.compile(r"[^\s@<>\"']{1,64}@[^\s@<>\"']{1,180}")


@dataclass(frozen=True)
class Given:
    """Somebody with a password that was given out; nobody can ever show it again."""

    user: User
    password: str


def add_user(uow: UnitOfWork, login: str, *, name: str, role: str, random: bytes, dealer: str | None = None) -> Given:
    """Let somebody new sign in, and commit. `random` is GIVEN_BYTES. Refused says what is wrong with what was said."""
    login, name, dealer = login.strip().casefold(), name.strip(), (dealer or "").strip() or None
    _see(login, name, role, dealer)
    password, digest = _given(random)
    with uow:
        user = User(uow.new_id("user"), login, name, role, dealer, digest, uow.now())
        uow.users.add(user)
        uow.commit()
    return Given(user, password)


def reset_user(uow: UnitOfWork, login: str, *, random: bytes) -> Given:
    """Give somebody a new password, take their second factor and sign them out, and commit."""
    password, digest = _given(random)
    with uow:
        user = named(uow, login)
        uow.users.set(user.id, digest=digest, fresh=True, secret=None, step=None, failed=0, locked=None)
        end_others(uow, user.id, None)
        uow.commit()
    return Given(user, password)


def change_user(uow: UnitOfWork, login: str, *, by: User | None = None, **values: Any) -> User:  # noqa: ANN401 - columns
    """Change name, role, dealer or whether somebody is `closed`, and commit. Refused for what would lock everybody out."""
    with uow:
        user = named(uow, login)
        if "closed" in values:
            values["closed"] = uow.now() if values["closed"] else None
        after = {**vars(user), **values}
        _see(user.login, after["name"], after["role"], after["dealer"])
        if by is not None and by.id == user.id and (after["closed"] or after["role"] != user.role):
            raise Refused("nobody closes themselves or changes their own role; ask another admin")
        uow.users.set(user.id, **values)
        if after["closed"]:
            end_others(uow, user.id, None)
        uow.commit()
        return named(uow, login)


def change_password(uow: UnitOfWork, user: User, old: str, new: str, *, salt: bytes, token: str) -> None:
    """Take somebody's own new password, sign them out elsewhere, and commit. Refused says why it is not taken."""
    if not matches(user.digest, old):
        raise Refused("the password you gave as the present one is not")
    weak = weakness(new, user.login)
    if weak is not None or new == old:
        raise Refused(f"the new password is not taken: {weak or 'it is the old one'}")
    digest = hashed(new, salt)
    with uow:
        uow.users.set(user.id, digest=digest, fresh=False)
        end_others(uow, user.id, token)
        uow.commit()


def set_second_factor(uow: UnitOfWork, user: User, secret: str | None, code: str) -> None:
    """Take a second factor that its first code proves, or take it away with a code of it, and commit."""
    with uow:
        asked = secret or user.secret
        step = step_of_code(asked, code, uow.now(), None) if asked else None
        if asked is None or step is None:
            raise Refused(
                "that code is not the one of this half minute; look at the clock of the telephone, then try again"
            )
        uow.users.set(user.id, secret=secret, step=step if secret else None)
        uow.commit()


def named(uow: UnitOfWork, login: str) -> User:
    """Return who signs in by that name. Refused where nobody does."""
    found = uow.users.by_login(login.strip().casefold())
    if found is None:
        raise Refused(f"nobody signs in as {login!r}; `transom users list` shows who does")
    return found


def _see(login: str, name: str, role: str, dealer: str | None) -> None:
    if not _LOGIN.fullmatch(login):
        raise Refused(f"{login!r} is no mail address; people sign in by theirs, as in ada@example.com")
    if not name:
        raise Refused("give a name: it stands in the history of whatever they do")
    if role not in ROLES:
        raise Refused(f"there is no role {role!r}; take one of {', '.join(ROLES)}")
    if (role == "dealer") != (dealer is not None):
        raise Refused("a dealer's people need the dealer's name, and nobody else has one")


def _given(random: bytes) -> tuple[str, str]:
    """Return a password to give out, four groups of letters, and its hash."""
    letters = [LETTERS[36 + one % 26] for one in random[:GIVEN_LETTERS]]
    password = "-".join("".join(letters[at : at + 5]) for at in range(0, GIVEN_LETTERS, 5))
    return password, hashed(password, random[GIVEN_LETTERS:])
