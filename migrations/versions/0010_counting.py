"""The country beside the other columns of a record, and an index from which demand is counted without the records."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0010"
down_revision = "0009"
branch_labels = None
depends_on = None

COUNTED = ["gear", "lower", "upper", "shaft", "date", "country", "stern", "status", "loa_mm", "offset_mm"]


def upgrade() -> None:
    op.add_column("records", sa.Column("country", sa.String))
    # What is no document of ours gives no country. An inner quote stands escaped in a text, so the key is found only as one.
    of_server = """substring(r.document from '"country":"([A-Z][A-Z])"')"""
    of_file = "CASE WHEN json_valid(r.document) THEN json_extract(r.document, '$.form.enquiry.country') END"
    country = of_file if op.get_bind().dialect.name == "sqlite" else of_server
    op.execute(
        f"UPDATE records SET country = (SELECT {country} FROM record_revisions r "  # noqa: S608 - one of the two above
        "WHERE r.record_id = records.id AND r.number = records.head)"
    )
    op.create_index("ix_records_counted", "records", COUNTED)


def downgrade() -> None:
    op.drop_index("ix_records_counted", "records")
    op.drop_column("records", "country")
