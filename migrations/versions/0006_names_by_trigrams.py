"""How every hull model is written, for candidates by letter groups where the registry is too large for memory."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

from service.store import dialect

revision = "0006"
down_revision = "0005"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.create_table(
        "hull_surfaces",
        sa.Column("hull_id", sa.String, nullable=False),
        sa.Column("place", sa.Integer, nullable=False, autoincrement=False),
        sa.Column("words", sa.String, nullable=False),
        sa.Column("number", sa.String),
        sa.Column("digits", sa.String),
        sa.Column("bare_digits", sa.String),
        sa.ForeignKeyConstraint(["hull_id"], ["hull_models.id"], name=op.f("fk_hull_surfaces_hull_id_hull_models")),
        sa.PrimaryKeyConstraint("hull_id", "place", name=op.f("pk_hull_surfaces")),
    )
    for column in ("number", "digits", "bare_digits"):
        op.create_index(op.f(f"ix_hull_surfaces_{column}"), "hull_surfaces", [column])
    op.create_table(
        "hull_forms",
        sa.Column("form", sa.String, nullable=False),
        sa.Column("hull_id", sa.String, nullable=False),
        sa.ForeignKeyConstraint(["hull_id"], ["hull_models.id"], name=op.f("fk_hull_forms_hull_id_hull_models")),
        sa.PrimaryKeyConstraint("form", "hull_id", name=op.f("pk_hull_forms")),
    )
    op.create_index(op.f("ix_hull_forms_hull_id"), "hull_forms", ["hull_id"])
    # Where a server's owner does not allow the extension, the registry stays in memory; a file has no use for the index.
    if dialect.take_trigrams(op.get_bind()) or op.get_bind().dialect.name == "sqlite":
        op.create_index(
            op.f("ix_hull_surfaces_words"),
            "hull_surfaces",
            ["words"],
            postgresql_using="gin",
            postgresql_ops={"words": "gin_trgm_ops"},
        )


def downgrade() -> None:
    op.drop_table("hull_forms")
    op.drop_table("hull_surfaces")
