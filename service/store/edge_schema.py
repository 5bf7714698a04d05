"""The tables of the service over HTTP: who may ask, what was asked already, who is told, who looked at what."""

from __future__ import annotations

import sqlalchemy as sa

from service.store.metadata import metadata
from service.store.stored import UtcTime

api_keys = sa.Table(
    "api_keys",
    metadata,
    sa.Column("id", sa.String, primary_key=True),
    sa.Column("digest", sa.String, nullable=False),
    sa.Column("name", sa.String, nullable=False),
    sa.Column("dealer", sa.String),
    sa.Column("scopes", sa.String, nullable=False),
    sa.Column("who", sa.String, nullable=False),
    sa.Column("created", UtcTime, nullable=False),
    sa.Column("expires", UtcTime),
    sa.Column("used", UtcTime),
    sa.Column("revoked", UtcTime),
    sa.Column("replaces", sa.String),
)
"""Keys, without what is secret of them: `digest` is the SHA-256 of the whole. `dealer` is None for the maker's own desk."""

idempotency = sa.Table(
    "idempotency",
    metadata,
    sa.Column("owner", sa.String, primary_key=True),
    sa.Column("key", sa.String, primary_key=True),
    sa.Column("operation", sa.String, nullable=False),
    sa.Column("fingerprint", sa.String, nullable=False),
    sa.Column("token", sa.String, nullable=False),
    sa.Column("started", UtcTime, nullable=False, index=True),
    sa.Column("answered", sa.Integer),
    sa.Column("headers", sa.Text),
    sa.Column("body", sa.Text),
)
"""Requests that create something. The row stands before the work begins; `answered` is there once it is done, and was
written with what it made. `token` names the one that works on it."""

webhooks = sa.Table(
    "webhooks",
    metadata,
    sa.Column("id", sa.String, primary_key=True),
    sa.Column("owner", sa.String, nullable=False, index=True),
    sa.Column("url", sa.String, nullable=False),
    sa.Column("events", sa.String, nullable=False),
    sa.Column("secret", sa.String, nullable=False),
    sa.Column("created", UtcTime, nullable=False),
    sa.Column("stopped", UtcTime),
    sa.Column("why", sa.String),
)
"""Who wants to be told. `secret` signs what is sent, so it cannot be a hash; it is never shown again."""

outbox = sa.Table(
    "outbox",
    metadata,
    sa.Column("id", sa.String, primary_key=True),
    sa.Column("webhook_id", sa.String, sa.ForeignKey("webhooks.id"), nullable=False, index=True),
    sa.Column("message", sa.String, nullable=False),
    sa.Column("body", sa.Text, nullable=False),
    sa.Column("created", UtcTime, nullable=False),
    sa.Column("due", UtcTime, index=True),
    sa.Column("attempts", sa.Integer, nullable=False),
    sa.Column("told", sa.String),
)
"""What is to be told to whom, written with the thing itself. `due` is None once it was sent or given up; `told` is what
the last attempt came to."""

audit = sa.Table(
    "audit",
    metadata,
    sa.Column("id", sa.String, primary_key=True),
    sa.Column("at", UtcTime, nullable=False, index=True),
    sa.Column("who", sa.String, nullable=False),
    sa.Column("key", sa.String, index=True),
    sa.Column("request", sa.String),
    sa.Column("action", sa.String, nullable=False),
    sa.Column("kind", sa.String, nullable=False),
    sa.Column("thing", sa.String, nullable=False, index=True),
)
"""Who wrote what, and who read what of people. Rows are added, never changed."""
