"""How alembic reaches the database: a connection handed in by the store, or TRANSOM_DB for a developer's command."""

from __future__ import annotations

import os

import sqlalchemy as sa
from alembic import context

from service.store import dialect
from service.store.schema import VERSION_TABLE, metadata


def run_on(connection: sa.Connection) -> None:
    """Run what was asked on an open connection; whoever opened it commits."""
    context.configure(
        connection=connection,
        target_metadata=metadata,
        version_table=VERSION_TABLE,
        render_as_batch=True,
        compare_type=True,
        user_module_prefix="",
    )
    with context.begin_transaction():
        context.run_migrations()


def run() -> None:
    """Use the connection or engine in the configuration's attributes, else the address in TRANSOM_DB."""
    given = context.config.attributes.get("connection")
    if isinstance(given, sa.Connection):
        run_on(given)
        return
    engine = given if isinstance(given, sa.Engine) else dialect.connect(dialect.address(os.environ["TRANSOM_DB"]))
    with dialect.rebuilding(engine) as connection:
        run_on(connection)


run()
