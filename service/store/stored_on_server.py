"""How columns of text are made on a server; loaded where one is spoken to."""

from __future__ import annotations

from typing import Any

import sqlalchemy as sa
from sqlalchemy.dialects.postgresql.base import PGTypeCompiler


class Types(PGTypeCompiler):
    """Columns of text sort by code points, as SQLite's do, and not as the language does the server was set up for."""

    def visit_VARCHAR(self, type_: sa.String, **kw: Any) -> str:  # noqa: N802, ANN401 - SQLAlchemy's own name and shape
        """Return the type of a column or a cast."""
        return f"{super().visit_VARCHAR(type_, **kw)}{_plain(type_, kw)}"

    def visit_TEXT(self, type_: sa.Text, **kw: Any) -> str:  # noqa: N802, ANN401 - the same
        """Return the type of a column or a cast."""
        return f"{super().visit_TEXT(type_, **kw)}{_plain(type_, kw)}"


def _plain(type_: sa.String, said: dict[str, Any]) -> str:
    of_column = isinstance(said.get("type_expression"), sa.Column) and not type_.collation
    return ' COLLATE "C"' if of_column else ""
