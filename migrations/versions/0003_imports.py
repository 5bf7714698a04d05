"""Imports as batches: the file, and what became of every row."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.create_table(
        "kept_files",
        sa.Column("sha256", sa.String, nullable=False),
        sa.Column("bytes", sa.Integer, nullable=False),
        sa.Column("created", sa.DateTime(timezone=True), nullable=False),
        sa.PrimaryKeyConstraint("sha256", name=op.f("pk_kept_files")),
    )
    op.create_table(
        "kept_file_parts",
        sa.Column("sha256", sa.String, nullable=False),
        sa.Column("number", sa.Integer, autoincrement=False, nullable=False),
        sa.Column("data", sa.LargeBinary, nullable=False),
        sa.ForeignKeyConstraint(["sha256"], ["kept_files.sha256"], name=op.f("fk_kept_file_parts_sha256_kept_files")),
        sa.PrimaryKeyConstraint("sha256", "number", name=op.f("pk_kept_file_parts")),
    )
    _imports()
    _import_rows()


def _imports() -> None:
    op.create_table(
        "imports",
        sa.Column("id", sa.String, nullable=False),
        sa.Column("name", sa.String, nullable=False),
        sa.Column("sha256", sa.String, nullable=False),
        sa.Column("mapping", sa.Text),
        sa.Column("who", sa.String, nullable=False),
        sa.Column("started", sa.DateTime(timezone=True), nullable=False),
        sa.Column("changed", sa.DateTime(timezone=True), nullable=False),
        sa.Column("state", sa.String, nullable=False),
        sa.Column("rows", sa.Integer, nullable=False),
        sa.Column("done", sa.Integer, nullable=False),
        sa.Column("created", sa.Integer, nullable=False),
        sa.Column("updated", sa.Integer, nullable=False),
        sa.Column("unchanged", sa.Integer, nullable=False),
        sa.Column("rejected", sa.Integer, nullable=False),
        sa.ForeignKeyConstraint(["sha256"], ["kept_files.sha256"], name=op.f("fk_imports_sha256_kept_files")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_imports")),
    )
    op.create_index(op.f("ix_imports_sha256"), "imports", ["sha256"])
    op.create_index(op.f("ix_imports_started"), "imports", ["started"])


def _import_rows() -> None:
    op.create_table(
        "import_rows",
        sa.Column("import_id", sa.String, nullable=False),
        sa.Column("number", sa.Integer, autoincrement=False, nullable=False),
        sa.Column("sheet", sa.String),
        sa.Column("row", sa.Integer, nullable=False),
        sa.Column("outcome", sa.String, nullable=False),
        sa.Column("reference", sa.String),
        sa.Column("before", sa.Integer, nullable=False),
        sa.Column("after", sa.Integer, nullable=False),
        sa.Column("detail", sa.Text),
        sa.Column("undo", sa.String),
        sa.Column("why", sa.String),
        sa.ForeignKeyConstraint(["import_id"], ["imports.id"], name=op.f("fk_import_rows_import_id_imports")),
        sa.PrimaryKeyConstraint("import_id", "number", name=op.f("pk_import_rows")),
    )


def downgrade() -> None:
    for name in ("import_rows", "imports", "kept_file_parts", "kept_files"):
        op.drop_table(name)
