"""The tables of the sales desk: who may sign in, who is signed in, and how an enquiry went."""

from __future__ import annotations

import sqlalchemy as sa

from service.store.metadata import metadata
from service.store.stored import UtcTime

users = sa.Table(
    "users",
    metadata,
    sa.Column("id", sa.String, primary_key=True),
    sa.Column("login", sa.String, nullable=False, unique=True),
    sa.Column("name", sa.String, nullable=False),
    sa.Column("role", sa.String, nullable=False),
    sa.Column("dealer", sa.String),
    sa.Column("digest", sa.String, nullable=False),
    sa.Column("fresh", sa.Boolean, nullable=False),
    sa.Column("secret", sa.String),
    sa.Column("step", sa.Integer),
    sa.Column("failed", sa.Integer, nullable=False),
    sa.Column("locked", UtcTime),
    sa.Column("created", UtcTime, nullable=False),
    sa.Column("seen", UtcTime),
    sa.Column("closed", UtcTime),
    sa.CheckConstraint("role IN ('desk', 'dealer', 'fitter', 'admin')", name="role"),
)
"""Who works with the program in a browser. `digest` is the password's argon2 hash, `fresh` says that it was given out and
is to be replaced; `secret` is the second factor's, `step` the last of its codes that was used; `failed` counts wrong
passwords in a row, `locked` says until when none is taken. A closed one signs in no more."""

sessions = sa.Table(
    "sessions",
    metadata,
    sa.Column("digest", sa.String, primary_key=True),
    sa.Column("user_id", sa.String, sa.ForeignKey("users.id"), nullable=False, index=True),
    sa.Column("created", UtcTime, nullable=False),
    sa.Column("seen", UtcTime, nullable=False),
    sa.Column("ends", UtcTime, nullable=False, index=True),
)
"""Who is signed in. `digest` is the SHA-256 of the cookie."""

enquiry_steps = sa.Table(
    "enquiry_steps",
    metadata,
    sa.Column("enquiry_id", sa.String, sa.ForeignKey("enquiries.id"), primary_key=True),
    sa.Column("number", sa.Integer, primary_key=True, autoincrement=False),
    sa.Column("did", sa.String, nullable=False),
    sa.Column("who", sa.String, nullable=False),
    sa.Column("at", UtcTime, nullable=False),
    sa.Column("form", sa.Text),
    sa.Column("hull", sa.String),
    sa.Column("answer", sa.String),
    sa.Column("said", sa.Text),
)
"""What was done with an enquiry at the desk, step by step. `form` is the boat form after a step that changed it, `answer`
the answer that went out, `said` the words of it. Rows are added, never changed."""

working_answers = sa.Table(
    "working_answers",
    metadata,
    sa.Column("enquiry_id", sa.String, sa.ForeignKey("enquiries.id"), primary_key=True),
    sa.Column("version", sa.Integer, nullable=False),
    sa.Column("stamp", sa.String, nullable=False),
    sa.Column("document", sa.Text, nullable=False),
)
"""What there would be to answer to an enquiry as its form stands, not sent: worked out anew whenever `version` or `stamp`
is no longer the enquiry's and the fleet's. May be lost at any time."""
