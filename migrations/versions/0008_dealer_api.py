"""Keys, requests that were answered, webhooks with their outbox, the audit; and whose an enquiry is."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0008"
down_revision = "0007"
branch_labels = None
depends_on = None

TIME = sa.DateTime(timezone=True)


def upgrade() -> None:
    _keys()
    _idempotency()
    _webhooks()
    _audit()
    with op.batch_alter_table("enquiries") as table:
        table.add_column(sa.Column("owner", sa.String, nullable=False, server_default=""))
        table.drop_constraint(op.f("uq_enquiries_message_id_boat"), type_="unique")
        table.create_unique_constraint(op.f("uq_enquiries_message_id_boat_owner"), ["message_id", "boat", "owner"])
    op.create_index("ix_enquiries_owner_created_id", "enquiries", ["owner", "created", "id"])


def _keys() -> None:
    op.create_table(
        "api_keys",
        sa.Column("id", sa.String, nullable=False),
        sa.Column("digest", sa.String, nullable=False),
        sa.Column("name", sa.String, nullable=False),
        sa.Column("dealer", sa.String),
        sa.Column("scopes", sa.String, nullable=False),
        sa.Column("who", sa.String, nullable=False),
        sa.Column("created", TIME, nullable=False),
        sa.Column("expires", TIME),
        sa.Column("used", TIME),
        sa.Column("revoked", TIME),
        sa.Column("replaces", sa.String),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_api_keys")),
    )


def _idempotency() -> None:
    op.create_table(
        "idempotency",
        sa.Column("owner", sa.String, nullable=False),
        sa.Column("key", sa.String, nullable=False),
        sa.Column("operation", sa.String, nullable=False),
        sa.Column("fingerprint", sa.String, nullable=False),
        sa.Column("token", sa.String, nullable=False),
        sa.Column("started", TIME, nullable=False),
        sa.Column("answered", sa.Integer),
        sa.Column("headers", sa.Text),
        sa.Column("body", sa.Text),
        sa.PrimaryKeyConstraint("owner", "key", name=op.f("pk_idempotency")),
    )
    op.create_index(op.f("ix_idempotency_started"), "idempotency", ["started"])


def _webhooks() -> None:
    op.create_table(
        "webhooks",
        sa.Column("id", sa.String, nullable=False),
        sa.Column("owner", sa.String, nullable=False),
        sa.Column("url", sa.String, nullable=False),
        sa.Column("events", sa.String, nullable=False),
        sa.Column("secret", sa.String, nullable=False),
        sa.Column("created", TIME, nullable=False),
        sa.Column("stopped", TIME),
        sa.Column("why", sa.String),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_webhooks")),
    )
    op.create_index(op.f("ix_webhooks_owner"), "webhooks", ["owner"])
    op.create_table(
        "outbox",
        sa.Column("id", sa.String, nullable=False),
        sa.Column("webhook_id", sa.String, nullable=False),
        sa.Column("message", sa.String, nullable=False),
        sa.Column("body", sa.Text, nullable=False),
        sa.Column("created", TIME, nullable=False),
        sa.Column("due", TIME),
        sa.Column("attempts", sa.Integer, nullable=False),
        sa.Column("told", sa.String),
        sa.ForeignKeyConstraint(["webhook_id"], ["webhooks.id"], name=op.f("fk_outbox_webhook_id_webhooks")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_outbox")),
    )
    op.create_index(op.f("ix_outbox_webhook_id"), "outbox", ["webhook_id"])
    op.create_index(op.f("ix_outbox_due"), "outbox", ["due"])


def _audit() -> None:
    op.create_table(
        "audit",
        sa.Column("id", sa.String, nullable=False),
        sa.Column("at", TIME, nullable=False),
        sa.Column("who", sa.String, nullable=False),
        sa.Column("key", sa.String),
        sa.Column("request", sa.String),
        sa.Column("action", sa.String, nullable=False),
        sa.Column("kind", sa.String, nullable=False),
        sa.Column("thing", sa.String, nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_audit")),
    )
    for column in ("at", "key", "thing"):
        op.create_index(op.f(f"ix_audit_{column}"), "audit", [column])


def downgrade() -> None:
    op.drop_index("ix_enquiries_owner_created_id", "enquiries")
    # One mail may be held by several owners now: what was written twice cannot stand without them.
    op.execute(
        "DELETE FROM answers WHERE enquiry_id IN (SELECT id FROM enquiries e WHERE e.message_id IS NOT NULL AND EXISTS ("
        "SELECT 1 FROM enquiries o WHERE o.message_id = e.message_id AND o.boat = e.boat AND o.id < e.id))"
    )
    op.execute(
        "DELETE FROM enquiries WHERE message_id IS NOT NULL AND EXISTS (SELECT 1 FROM enquiries o "
        "WHERE o.message_id = enquiries.message_id AND o.boat = enquiries.boat AND o.id < enquiries.id)"
    )
    with op.batch_alter_table("enquiries") as table:
        table.drop_constraint(op.f("uq_enquiries_message_id_boat_owner"), type_="unique")
        table.create_unique_constraint(op.f("uq_enquiries_message_id_boat"), ["message_id", "boat"])
        table.drop_column("owner")
    for name in ("audit", "outbox", "webhooks", "idempotency", "api_keys"):
        op.drop_table(name)
