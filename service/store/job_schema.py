"""The tables of jobs: the same on every database. What wakes workers on a server stands apart, in `job_queue`."""

from __future__ import annotations

import sqlalchemy as sa

from service.store.metadata import metadata
from service.store.stored import UtcTime

jobs = sa.Table(
    "jobs",
    metadata,
    sa.Column("id", sa.String, primary_key=True),
    sa.Column("kind", sa.String, nullable=False),
    sa.Column("name", sa.String, nullable=False),
    sa.Column("arguments", sa.Text, nullable=False),
    sa.Column("who", sa.String, nullable=False),
    sa.Column("key", sa.String),
    sa.Column("request", sa.String),
    sa.Column("state", sa.String, nullable=False, index=True),
    sa.Column("cancelling", sa.Boolean, nullable=False),
    sa.Column("done", sa.Integer, nullable=False),
    sa.Column("total", sa.Integer),
    sa.Column("asked", UtcTime, nullable=False, index=True),
    sa.Column("started", UtcTime),
    sa.Column("changed", UtcTime, nullable=False),
    sa.Column("ended", UtcTime),
    sa.Column("worker", sa.String),
    sa.Column("turn", sa.Integer, nullable=False),
    sa.Column("beat", sa.Integer, nullable=False),
    sa.Column("stalls", sa.Integer, nullable=False),
    sa.Column("mark", sa.Integer, nullable=False),
    sa.Column("trouble", sa.Text),
    sa.Column("result", sa.Text),
)
"""One row a job; what the columns mean stands at `core.job.Job`."""

job_items = sa.Table(
    "job_items",
    metadata,
    sa.Column("job_id", sa.String, sa.ForeignKey("jobs.id"), primary_key=True),
    sa.Column("thing", sa.String, primary_key=True),
    sa.Column("said", sa.Text, nullable=False),
)
"""What a job found of each thing it looked at, written with its progress: whoever goes on begins behind them."""
