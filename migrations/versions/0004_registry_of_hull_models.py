"""Hull models that turned out to be one, pairs that are two, and the history of the registry."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None


def upgrade() -> None:
    with op.batch_alter_table("hull_models") as table:
        table.add_column(sa.Column("merged_into", sa.String))
        table.add_column(sa.Column("survivor", sa.String))
        table.add_column(sa.Column("retired", sa.Boolean, nullable=False, server_default=sa.false()))
        table.create_foreign_key(op.f("fk_hull_models_merged_into_hull_models"), "hull_models", ["merged_into"], ["id"])
    op.create_index(op.f("ix_hull_models_merged_into"), "hull_models", ["merged_into"])
    op.create_index(op.f("ix_hull_models_survivor"), "hull_models", ["survivor"])
    _distinct()
    _changes()


def downgrade() -> None:
    op.drop_table("hull_change_models")
    op.drop_table("hull_changes")
    op.drop_table("hull_distinct")
    op.drop_index(op.f("ix_hull_models_survivor"), "hull_models")
    op.drop_index(op.f("ix_hull_models_merged_into"), "hull_models")
    with op.batch_alter_table("hull_models") as table:
        table.drop_constraint(op.f("fk_hull_models_merged_into_hull_models"), type_="foreignkey")
        table.drop_column("retired")
        table.drop_column("survivor")
        table.drop_column("merged_into")


def _distinct() -> None:
    op.create_table(
        "hull_distinct",
        sa.Column("one", sa.String, nullable=False),
        sa.Column("other", sa.String, nullable=False),
        sa.Column("who", sa.String, nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("why", sa.String, nullable=False),
        sa.ForeignKeyConstraint(["one"], ["hull_models.id"], name=op.f("fk_hull_distinct_one_hull_models")),
        sa.ForeignKeyConstraint(["other"], ["hull_models.id"], name=op.f("fk_hull_distinct_other_hull_models")),
        sa.PrimaryKeyConstraint("one", "other", name=op.f("pk_hull_distinct")),
    )
    op.create_index(op.f("ix_hull_distinct_other"), "hull_distinct", ["other"])


def _changes() -> None:
    op.create_table(
        "hull_changes",
        sa.Column("number", sa.Integer, autoincrement=False, nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("who", sa.String, nullable=False),
        sa.Column("why", sa.String, nullable=False),
        sa.Column("kind", sa.String, nullable=False),
        sa.Column("undoes", sa.Integer),
        sa.Column("cells", sa.Text, nullable=False),
        sa.ForeignKeyConstraint(["undoes"], ["hull_changes.number"], name=op.f("fk_hull_changes_undoes_hull_changes")),
        sa.PrimaryKeyConstraint("number", name=op.f("pk_hull_changes")),
    )
    op.create_index(op.f("ix_hull_changes_undoes"), "hull_changes", ["undoes"])
    op.create_table(
        "hull_change_models",
        sa.Column("number", sa.Integer, autoincrement=False, nullable=False),
        sa.Column("hull_id", sa.String, nullable=False),
        sa.ForeignKeyConstraint(
            ["number"], ["hull_changes.number"], name=op.f("fk_hull_change_models_number_hull_changes")
        ),
        sa.ForeignKeyConstraint(
            ["hull_id"], ["hull_models.id"], name=op.f("fk_hull_change_models_hull_id_hull_models")
        ),
        sa.PrimaryKeyConstraint("number", "hull_id", name=op.f("pk_hull_change_models")),
    )
    op.create_index(op.f("ix_hull_change_models_hull_id"), "hull_change_models", ["hull_id"])
