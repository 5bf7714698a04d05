"""The sales desk: who may sign in, who is signed in, and how an enquiry went."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0012"
down_revision = "0011"
branch_labels = None
depends_on = None

TIME = sa.DateTime(timezone=True)


def upgrade() -> None:
    _people()
    _steps()
    with op.batch_alter_table("enquiries") as table:
        table.add_column(sa.Column("version", sa.Integer, nullable=False, server_default="0"))
        table.add_column(sa.Column("waits", sa.String, nullable=False, server_default="us"))
    op.create_index("ix_enquiries_waits_created_id", "enquiries", ["waits", "created", "id"])


def _people() -> None:
    op.create_table(
        "users",
        sa.Column("id", sa.String, nullable=False),
        sa.Column("login", sa.String, nullable=False),
        sa.Column("name", sa.String, nullable=False),
        sa.Column("role", sa.String, nullable=False),
        sa.Column("dealer", sa.String),
        sa.Column("digest", sa.String, nullable=False),
        sa.Column("fresh", sa.Boolean, nullable=False),
        sa.Column("secret", sa.String),
        sa.Column("step", sa.Integer),
        sa.Column("failed", sa.Integer, nullable=False),
        sa.Column("locked", TIME),
        sa.Column("created", TIME, nullable=False),
        sa.Column("seen", TIME),
        sa.Column("closed", TIME),
        sa.CheckConstraint("role IN ('desk', 'dealer', 'fitter', 'admin')", name=op.f("ck_users_role")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_users")),
        sa.UniqueConstraint("login", name=op.f("uq_users_login")),
    )
    op.create_table(
        "sessions",
        sa.Column("digest", sa.String, nullable=False),
        sa.Column("user_id", sa.String, nullable=False),
        sa.Column("created", TIME, nullable=False),
        sa.Column("seen", TIME, nullable=False),
        sa.Column("ends", TIME, nullable=False),
        sa.ForeignKeyConstraint(["user_id"], ["users.id"], name=op.f("fk_sessions_user_id_users")),
        sa.PrimaryKeyConstraint("digest", name=op.f("pk_sessions")),
    )
    op.create_index(op.f("ix_sessions_user_id"), "sessions", ["user_id"])
    op.create_index(op.f("ix_sessions_ends"), "sessions", ["ends"])


def _steps() -> None:
    op.create_table(
        "enquiry_steps",
        sa.Column("enquiry_id", sa.String, nullable=False),
        sa.Column("number", sa.Integer, autoincrement=False, nullable=False),
        sa.Column("did", sa.String, nullable=False),
        sa.Column("who", sa.String, nullable=False),
        sa.Column("at", TIME, nullable=False),
        sa.Column("form", sa.Text),
        sa.Column("hull", sa.String),
        sa.Column("answer", sa.String),
        sa.Column("said", sa.Text),
        sa.ForeignKeyConstraint(["enquiry_id"], ["enquiries.id"], name=op.f("fk_enquiry_steps_enquiry_id_enquiries")),
        sa.PrimaryKeyConstraint("enquiry_id", "number", name=op.f("pk_enquiry_steps")),
    )
    op.create_table(
        "working_answers",
        sa.Column("enquiry_id", sa.String, nullable=False),
        sa.Column("version", sa.Integer, nullable=False),
        sa.Column("stamp", sa.String, nullable=False),
        sa.Column("document", sa.Text, nullable=False),
        sa.ForeignKeyConstraint(["enquiry_id"], ["enquiries.id"], name=op.f("fk_working_answers_enquiry_id_enquiries")),
        sa.PrimaryKeyConstraint("enquiry_id", name=op.f("pk_working_answers")),
    )


def downgrade() -> None:
    op.drop_index("ix_enquiries_waits_created_id", "enquiries")
    with op.batch_alter_table("enquiries") as table:
        table.drop_column("waits")
        table.drop_column("version")
    for name in ("working_answers", "enquiry_steps", "sessions", "users"):
        op.drop_table(name)
