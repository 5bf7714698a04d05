"""Weights learned from the fleet, and a stamp on what answers are made from."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0005"
down_revision = "0004"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.create_table(
        "recall_weights",
        sa.Column("number", sa.Integer, nullable=False, autoincrement=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("records", sa.Integer, nullable=False),
        sa.Column("gains", sa.Text, nullable=False),
        sa.Column("document", sa.Text, nullable=False),
        sa.PrimaryKeyConstraint("number", name=op.f("pk_recall_weights")),
    )
    stamps = op.create_table(
        "stamps",
        sa.Column("name", sa.String, nullable=False),
        sa.Column("stamp", sa.String, nullable=False),
        sa.PrimaryKeyConstraint("name", name=op.f("pk_stamps")),
    )
    op.bulk_insert(stamps, [{"name": "fleet", "stamp": "0 made by revision 0005"}])


def downgrade() -> None:
    op.drop_table("stamps")
    op.drop_table("recall_weights")
