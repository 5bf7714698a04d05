"""Answers are looked up by the mark on their papers: the beginning of the document's hash."""

from __future__ import annotations

from alembic import op

revision = "0009"
down_revision = "0008"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.create_index(op.f("ix_answers_sha256"), "answers", ["sha256"])


def downgrade() -> None:
    op.drop_index(op.f("ix_answers_sha256"), "answers")
