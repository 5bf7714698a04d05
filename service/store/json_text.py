"""Numbers out of JSON documents that are kept as text, said in each database's own way."""

from __future__ import annotations

from typing import Any

import sqlalchemy as sa
from sqlalchemy.ext.compiler import compiles
from sqlalchemy.sql.compiler import SQLCompiler
from sqlalchemy.sql.functions import FunctionElement


class number_in(FunctionElement[float]):  # noqa: N801 - it is called as a function of the database is
    """A number of a JSON document kept as text, by its place in it; null where it is not there.

    The place is a path of plain names, written into the statement: never anything that came from outside.
    """

    inherit_cache = True
    type = sa.Float()
    name = "number_in"

    def __init__(self, document: sa.ColumnElement[str], path: str) -> None:
        """Name the column and the place, as `placement.offset_mm`."""
        if not path.replace(".", "").replace("_", "").isalpha():
            raise ValueError(f"{path!r} is no path of plain names")
        super().__init__(document, sa.literal_column(f"'{path}'"))


@compiles(number_in, "sqlite")
def _in_sqlite(element: number_in, compiler: SQLCompiler, **kw: Any) -> str:  # noqa: ANN401 - SQLAlchemy's own shape
    document, path = (compiler.process(one, **kw) for one in element.clauses)
    return f"json_extract({document}, '$.' || {path})"


@compiles(number_in, "postgresql")
def _in_postgresql(element: number_in, compiler: SQLCompiler, **kw: Any) -> str:  # noqa: ANN401 - the same
    document, path = (compiler.process(one, **kw) for one in element.clauses)
    return f"CAST(CAST({document} AS json) #>> string_to_array({path}, '.') AS double precision)"
