"""What stands in a database comes through every migration, forward and back: tried with a row in every table."""

from __future__ import annotations

from datetime import UTC, date, datetime
from typing import Any

import pytest
import sqlalchemy as sa

from service.store import dialect, migrate, schema

SPECIAL = {"status": "installed", "head": 1, "role": "admin"}
"""Values that a constraint asks for, by column."""


def reflected(url: str) -> sa.MetaData:
    """Return the tables as they stand in the database now."""
    engine, found = dialect.connect(dialect.address(url)), sa.MetaData()
    found.reflect(engine)
    engine.dispose()
    return found


def value(column: sa.Column[Any]) -> object:
    """Return something that may stand in the column; a reference finds the row of the table it points to."""
    if column.name in SPECIAL:
        return SPECIAL[column.name]
    for key in column.foreign_keys:
        return value(key.column)
    plain: dict[type, object] = {
        int: 7,
        float: 0.1,
        bool: True,
        bytes: b"\0\xff",
        datetime: datetime(2024, 5, 1, tzinfo=UTC),
        date: date(2024, 5, 1),
    }
    kind = column.type.python_type
    return plain.get(kind, f"the {column.name} of {column.table.name} \u00f8")


def fill(url: str, tables: sa.MetaData) -> None:
    """Put a row into every one of the tables that has none."""
    engine = dialect.connect(dialect.address(url))
    with dialect.rebuilding(engine) as connection:
        for table in tables.sorted_tables:
            if table.name != schema.VERSION_TABLE and connection.execute(sa.select(table)).first() is None:
                connection.execute(table.insert().values({c.name: value(c) for c in table.columns}))
    engine.dispose()


def rows(url: str, tables: sa.MetaData) -> dict[str, list[dict[str, Any]]]:
    """Return every row of every one of the tables."""
    engine = dialect.connect(dialect.address(url))
    with engine.connect() as connection:
        found = {
            t.name: [dict(row) for row in connection.execute(sa.select(t)).mappings()] for t in tables.sorted_tables
        }
    engine.dispose()
    return {name: found[name] for name in found if name != schema.VERSION_TABLE}


def still_there(before: dict[str, list[dict[str, Any]]], after: dict[str, list[dict[str, Any]]]) -> bool:
    """Say whether every row stands there with every value, as far as its table and columns do."""
    for name in before.keys() & after.keys():
        columns = before[name][0].keys() & after[name][0].keys() if before[name] and after[name] else set()
        was, became = ([{c: row[c] for c in columns} for row in side[name]] for side in (before, after))
        if not columns or any(row not in became for row in was):
            return False
    return True


def test_what_is_lost_would_be_noticed() -> None:
    one, other = {"a": [{"x": 1, "y": 2}]}, {"a": [{"x": 1, "z": 3}], "b": []}
    assert still_there(one, other)
    assert not still_there(one, {"a": [{"x": 2}]})
    assert not still_there(one, {"a": []})


@pytest.mark.parametrize("revision", schema.KNOWN)
def test_data_comes_through_an_upgrade_and_back(url: str, revision: str) -> None:
    migrate.upgrade(url, revision)
    tables = reflected(url)
    fill(url, tables)
    before = rows(url, tables)
    assert all(before.values())
    migrate.upgrade(url)
    tables = reflected(url)
    after = rows(url, tables)
    assert before.keys() <= after.keys() == set(schema.metadata.tables)
    assert still_there(before, after)
    fill(url, tables)
    migrate.downgrade(url, revision)
    back = rows(url, reflected(url))
    assert back.keys() == before.keys()
    assert still_there(before, back)
    migrate.upgrade(url)
    assert still_there(before, rows(url, reflected(url)))
