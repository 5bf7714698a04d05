"""Signing in and out: who gets in, who does not, and what another site cannot do in their name."""

from __future__ import annotations

import base64
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from itertools import count

import pytest
from pyotp import TOTP

from service.core.password import STEP_S, hashed, matches, step_of_code, weakness
from service.flow.manage_users import GIVEN_BYTES, ROLES, add_user, change_user
from service.flow.refusal import Refused
from service.flow.sign_in import IDLE, LOCK, LONGEST, TRIES, WRONG, sign_in, sign_out, visitor
from service.store.unit import Store
from tests.support.offices import SITE, Office, csrf, send

SAME = {"Sec-Fetch-Site": "same-origin"}
T0 = datetime(2026, 3, 1, 9, 0, tzinfo=UTC)


class Clock:
    """A clock that stands where it is put."""

    def __init__(self) -> None:
        self.now = T0

    def __call__(self) -> datetime:
        return self.now


@pytest.fixture
def clock() -> Clock:
    return Clock()


@pytest.fixture
def store(url: str, clock: Clock) -> Iterator[Store]:
    """Return a ledger whose clock stands still."""
    numbers = count(1)
    made = Store(url, now=clock, new_id=lambda kind: f"{kind}-{next(numbers)}")
    yield made
    made.close()


def given(store: Store, role: str = "desk") -> str:
    random = bytes(range(GIVEN_BYTES))
    return add_user(store.writing(), "Ada@Example.com ", name="Ada Holm", role=role, random=random).password


def test_the_password_opens_a_session_and_signing_out_ends_it(store: Store) -> None:
    password = given(store)
    assert sign_in(store, "ada@example.com", password, "", ticket="t1").user.name == "Ada Holm"
    assert visitor(store, "t1") is not None
    assert visitor(store, "t2") is None
    sign_out(store, "t1")
    assert visitor(store, "t1") is None


def test_five_wrong_passwords_in_a_row_lock_for_a_quarter_of_an_hour(store: Store, clock: Clock) -> None:
    password = given(store)
    for _ in range(TRIES):
        with pytest.raises(Refused, match="do not go together"):
            sign_in(store, "ada@example.com", "wrong", "", ticket="t")
    with pytest.raises(Refused) as locked:
        sign_in(store, "ada@example.com", password, "", ticket="t")
    assert str(locked.value) == WRONG  # the same words, so nobody learns that this one was right
    clock.now += LOCK + timedelta(seconds=1)
    assert sign_in(store, "ada@example.com", password, "", ticket="t").user.failed >= 0


def test_a_session_ends_when_nobody_is_there_and_at_last_in_any_case(store: Store, clock: Clock) -> None:
    password = given(store)
    sign_in(store, "ada@example.com", password, "", ticket="t")
    clock.now += IDLE + timedelta(seconds=1)
    assert visitor(store, "t") is None
    sign_in(store, "ada@example.com", password, "", ticket="u")
    ends = clock.now + LONGEST
    while clock.now < ends:
        assert visitor(store, "u") is not None
        clock.now += IDLE / 2
    assert visitor(store, "u") is None


def test_who_is_closed_is_out_at_once_and_comes_back_when_opened(store: Store) -> None:
    password = given(store)
    sign_in(store, "ada@example.com", password, "", ticket="t")
    change_user(store.writing(), "ada@example.com", closed=True)
    assert visitor(store, "t") is None
    with pytest.raises(Refused):
        sign_in(store, "ada@example.com", password, "", ticket="t")
    change_user(store.writing(), "ada@example.com", closed=False)
    assert sign_in(store, "ada@example.com", password, "", ticket="t")


@pytest.mark.parametrize(
    ("login", "name", "role", "dealer", "why"),
    [
        ("ada", "Ada", "desk", None, "mail address"),
        ("ada@example.com", " ", "desk", None, "name"),
        ("ada@example.com", "Ada", "captain", None, "role"),
        ("ada@example.com", "Ada", "dealer", None, "dealer"),
        ("ada@example.com", "Ada", "desk", "Quayside", "dealer"),
    ],
)
def test_what_is_wrong_with_somebody_new_is_said(
    store: Store, login: str, name: str, role: str, dealer: str | None, why: str
) -> None:
    with pytest.raises(Refused, match=why):
        add_user(store.writing(), login, name=name, role=role, dealer=dealer, random=bytes(GIVEN_BYTES))


def test_the_roles_are_those_the_database_takes(store: Store) -> None:
    for role in ROLES:
        dealer = "Quayside" if role == "dealer" else None
        add_user(store.writing(), f"{role}@example.com", name="A", role=role, dealer=dealer, random=bytes(GIVEN_BYTES))
    with store.reading() as uow:
        assert {user.role for user in uow.users.all()} == set(ROLES)


# RFC 6238, appendix B, SHA-1, read from memory and computed again with oathtool's algorithm by pyotp: the eight-figure
# codes there end in these six. The secret is the ASCII text 12345678901234567890.
RFC_SECRET = base64.b32encode(b"12345678901234567890").decode()


@pytest.mark.parametrize(("seconds", "code"), [(59, "287082"), (1_111_111_109, "081804"), (1_234_567_890, "005924")])
def test_one_time_codes_are_those_of_the_standard(seconds: int, code: str) -> None:
    now = datetime.fromtimestamp(seconds, UTC)
    assert step_of_code(RFC_SECRET, code, now, None) == seconds // STEP_S
    assert step_of_code(RFC_SECRET, code, now, seconds // STEP_S) is None  # nobody uses one twice
    assert step_of_code(RFC_SECRET, code, now + timedelta(seconds=3 * STEP_S), None) is None


def test_a_hash_is_argon2id_and_says_with_what_it_was_made() -> None:
    kept = hashed("four words that differ", bytes(range(16)))
    assert kept.startswith("$argon2id$v=19$m=65536,t=3,p=4$")  # RFC 9106, section 4, second recommended option
    assert matches(kept, "four words that differ")
    assert not matches(kept, "four words that differ ")


@pytest.mark.parametrize("password", ["short", "aaaaaaaaaaaaaaaa", "Password-of-1234", "the ada of example", "x" * 201])
def test_weak_passwords_are_told_from_others(password: str) -> None:
    assert weakness(password, "ada@example.com")
    assert weakness("four words that differ", "ada@example.com") is None


def test_the_way_in_by_browser(here: Office) -> None:
    random = bytes(range(GIVEN_BYTES))
    made = add_user(here.store.writing(), "gus@example.com", name="Gus Arden", role="desk", random=random)
    client = here.client(None)
    first = client.get("/desk/account")
    assert (first.status_code, first.headers["location"]) == (303, "/desk/sign-in?then=/desk/account")
    wrong = client.post("/desk/sign-in", data={"login": "gus@example.com", "password": "no"}, headers=SAME)
    assert wrong.status_code == 422
    assert "do not go together" in wrong.text
    said = {"login": "gus@example.com", "password": made.password, "then": "https://elsewhere.example.com/"}
    right = client.post("/desk/sign-in", data=said, headers=SAME)
    assert (right.status_code, right.headers["location"]) == (303, "/desk/")
    cookie = right.headers["set-cookie"]
    assert cookie.startswith("__Host-desk=")
    for word in ("HttpOnly", "Secure", "SameSite=lax", "Path=/"):
        assert word in cookie
    assert client.get("/desk/").headers["location"] == "/desk/account"  # its own password first
    new = "plank barometer onion quay"
    done = send(client, "/desk/account", "/desk/account/password", old=made.password, new=new, again=new)
    assert done.status_code == 303
    assert "is taken" in client.get("/desk/account").text
    out = send(client, "/desk/account", "/desk/sign-out")
    assert out.headers["location"] == "/desk/sign-in"
    assert client.get("/desk/account").status_code == 303


def test_a_second_factor_is_asked_for_once_it_is_taken(here: Office) -> None:
    random = bytes(range(1, GIVEN_BYTES + 1))
    made = add_user(here.store.writing(), "ida@example.com", name="Ida Kamp", role="fitter", random=random)
    with here.store.writing() as uow:
        uow.users.set(made.user.id, fresh=False)
        uow.commit()
    client = here.client(None)
    said = {"login": "ida@example.com", "password": made.password}
    client.post("/desk/sign-in", data=said, headers=SAME)
    text = client.get("/desk/account").text
    secret = text.split('name="secret" value="')[1].split('"')[0]
    refused = send(client, "/desk/account", "/desk/account/factor", secret=secret, code="000000")
    assert refused.status_code == 422
    now = here.app.state.running.clock()
    earlier = TOTP(secret).at(now - timedelta(seconds=STEP_S))
    done = send(client, "/desk/account", "/desk/account/factor", secret=secret, code=earlier)
    assert done.status_code == 303, done.text
    fresh = here.client(None)
    asked = fresh.post("/desk/sign-in", data=said, headers=SAME)
    assert asked.status_code == 422
    assert "six figures" in asked.text
    code = TOTP(secret).at(here.app.state.running.clock())
    assert fresh.post("/desk/sign-in", data={**said, "code": code}, headers=SAME).status_code == 303
    again = here.client(None).post("/desk/sign-in", data={**said, "code": code}, headers=SAME)
    assert again.status_code == 422  # the same code twice


@pytest.mark.parametrize(
    "headers",
    [
        {"Sec-Fetch-Site": "cross-site"},
        {"Sec-Fetch-Site": "same-site"},
        {"Origin": "https://elsewhere.example.com"},
        {"Origin": "null"},
    ],
)
def test_what_another_site_sends_is_refused(here: Office, headers: dict[str, str]) -> None:
    client = here.client()
    word = csrf(client.get("/desk/account").text)
    response = client.post("/desk/sign-out", data={"csrf": word}, headers=headers)
    assert response.status_code == 403
    assert client.get("/desk/account").status_code == 200


def test_a_form_without_the_word_of_its_session_is_refused(here: Office) -> None:
    client = here.client()
    for word in ("", csrf(here.client("admin").get("/desk/account").text)):
        response = client.post("/desk/sign-out", data={"csrf": word}, headers={**SAME, "Origin": SITE})
        assert response.status_code == 403
    assert client.get("/desk/account").status_code == 200


def test_headers_forbid_what_pages_do_not_need(here: Office) -> None:
    headers = here.client().get("/desk/account").headers
    policy = headers["content-security-policy"]
    assert "default-src 'none'" in policy
    assert "unsafe" not in policy
    assert "data:" not in policy
    assert headers["x-content-type-options"] == "nosniff"
    assert headers["cache-control"] == "private, no-store"


def test_too_many_tries_from_one_address_have_to_wait(here: Office) -> None:
    client = here.client(None)
    seen = {
        client.post("/desk/sign-in", data={"login": "x@example.com", "password": "no"}, headers=SAME).status_code
        for _ in range(25)
    }
    assert seen == {422, 429}
