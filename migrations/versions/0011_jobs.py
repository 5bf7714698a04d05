"""Work longer than a request: jobs, and what they found of each thing."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

from service.store import job_queue

revision = "0011"
down_revision = "0010"
branch_labels = None
depends_on = None

TIME = sa.DateTime(timezone=True)


def upgrade() -> None:
    op.create_table(
        "jobs",
        sa.Column("id", sa.String, nullable=False),
        sa.Column("kind", sa.String, nullable=False),
        sa.Column("name", sa.String, nullable=False),
        sa.Column("arguments", sa.Text, nullable=False),
        sa.Column("who", sa.String, nullable=False),
        sa.Column("key", sa.String),
        sa.Column("request", sa.String),
        sa.Column("state", sa.String, nullable=False),
        sa.Column("cancelling", sa.Boolean, nullable=False),
        sa.Column("done", sa.Integer, nullable=False),
        sa.Column("total", sa.Integer),
        sa.Column("asked", TIME, nullable=False),
        sa.Column("started", TIME),
        sa.Column("changed", TIME, nullable=False),
        sa.Column("ended", TIME),
        sa.Column("worker", sa.String),
        sa.Column("turn", sa.Integer, nullable=False),
        sa.Column("beat", sa.Integer, nullable=False),
        sa.Column("stalls", sa.Integer, nullable=False),
        sa.Column("mark", sa.Integer, nullable=False),
        sa.Column("trouble", sa.Text),
        sa.Column("result", sa.Text),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_jobs")),
    )
    op.create_index(op.f("ix_jobs_state"), "jobs", ["state"])
    op.create_index(op.f("ix_jobs_asked"), "jobs", ["asked"])
    op.create_table(
        "job_items",
        sa.Column("job_id", sa.String, nullable=False),
        sa.Column("thing", sa.String, nullable=False),
        sa.Column("said", sa.Text, nullable=False),
        sa.ForeignKeyConstraint(["job_id"], ["jobs.id"], name=op.f("fk_job_items_job_id_jobs")),
        sa.PrimaryKeyConstraint("job_id", "thing", name=op.f("pk_job_items")),
    )


def downgrade() -> None:
    job_queue.remove(op.get_bind())
    op.drop_table("job_items")
    op.drop_table("jobs")
