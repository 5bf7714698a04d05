"""What belongs to a record: photos, drawings, mails; and an index by which long lists are paged through."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0007"
down_revision = "0006"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.create_table(
        "attachments",
        sa.Column("record_id", sa.String, nullable=False),
        sa.Column("number", sa.Integer, nullable=False, autoincrement=False),
        sa.Column("sha256", sa.String, nullable=False),
        sa.Column("name", sa.String, nullable=False),
        sa.Column("type", sa.String, nullable=False),
        sa.Column("bytes", sa.Integer, nullable=False),
        sa.Column("who", sa.String, nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("note", sa.String),
        sa.ForeignKeyConstraint(["record_id"], ["records.id"], name=op.f("fk_attachments_record_id_records")),
        sa.PrimaryKeyConstraint("record_id", "number", name=op.f("pk_attachments")),
    )
    op.create_index(op.f("ix_attachments_sha256"), "attachments", ["sha256"])
    op.drop_index(op.f("ix_records_date"), "records")
    op.create_index("ix_records_date_reference", "records", ["date", "reference"])


def downgrade() -> None:
    op.drop_index("ix_records_date_reference", "records")
    op.create_index(op.f("ix_records_date"), "records", ["date"])
    op.drop_table("attachments")
