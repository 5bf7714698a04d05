"""Measurements as rows, references that are given once, records merged into others, the answer a record came from."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("records", sa.Column("answer", sa.String))
    op.create_index(op.f("ix_records_answer"), "records", ["answer"])
    op.create_table(
        "record_merges",
        sa.Column("record_id", sa.String, nullable=False),
        sa.Column("into_id", sa.String, nullable=False),
        sa.Column("number", sa.Integer, nullable=False),
        sa.ForeignKeyConstraint(["record_id"], ["records.id"], name=op.f("fk_record_merges_record_id_records")),
        sa.ForeignKeyConstraint(["into_id"], ["records.id"], name=op.f("fk_record_merges_into_id_records")),
        sa.PrimaryKeyConstraint("record_id", name=op.f("pk_record_merges")),
    )
    op.create_index(op.f("ix_record_merges_into_id"), "record_merges", ["into_id"])
    op.create_table(
        "record_series",
        sa.Column("series", sa.String, nullable=False),
        sa.Column("last", sa.Integer, nullable=False),
        sa.PrimaryKeyConstraint("series", name=op.f("pk_record_series")),
    )
    op.create_table(
        "measurements",
        sa.Column("record_id", sa.String, nullable=False),
        sa.Column("number", sa.Integer, nullable=False, autoincrement=False),
        sa.Column("field", sa.String, nullable=False),
        sa.Column("text", sa.String, nullable=False),
        sa.Column("unit", sa.String, nullable=False),
        sa.Column("value", sa.Float, nullable=False),
        sa.Column("method", sa.String),
        sa.Column("uncertainty", sa.Float),
        sa.Column("who", sa.String, nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("taken", sa.Date),
        sa.Column("source", sa.String),
        sa.ForeignKeyConstraint(["record_id"], ["records.id"], name=op.f("fk_measurements_record_id_records")),
        sa.PrimaryKeyConstraint("record_id", "number", name=op.f("pk_measurements")),
    )


def downgrade() -> None:
    op.drop_table("measurements")
    op.drop_table("record_series")
    op.drop_table("record_merges")
    op.drop_index(op.f("ix_records_answer"), "records")
    op.drop_column("records", "answer")
