"""`transom schema`: the published shapes, as JSON Schema."""

from __future__ import annotations

from typing import Annotated

import typer
from pydantic import BaseModel

from service.cli import out
from service.cli.faults import BadInput
from service.cli.options import Db, Json
from service.cli.sheet import Sheet, table
from service.core.answer import Answer, Answers
from service.core.boat import BoatForm
from service.core.catalogue import Catalogue
from service.core.catalogue_diff import CatalogueDiff
from service.core.fit import Fit
from service.core.hulls import HullDecision
from service.core.installed import AsInstalled
from service.core.mapping import Mapping
from service.core.measurement import Measurement
from service.core.quality import Quality
from service.core.reading import Reading
from service.core.record import HullModel, Record
from service.core.report import Report
from service.core.words import nearest
from service.files.table_schema import records_table

SHAPES: dict[str, type[BaseModel]] = {
    "boat-form": BoatForm,
    "reading": Reading,
    "answers": Answers,
    "answer": Answer,
    "fit": Fit,
    "record": Record,
    "as-installed": AsInstalled,
    "measurement": Measurement,
    "quality": Quality,
    "report": Report,
    "hull": HullModel,
    "hull-decision": HullDecision,
    "catalogue": Catalogue,
    "catalogue-diff": CatalogueDiff,
    "mapping": Mapping,
}
TABLE = "records"
Which = Annotated[
    str | None, typer.Argument(metavar="NAME", help=f"One of {', '.join([*SHAPES, TABLE])}; none lists them.")
]
DIALECT = "https://json-schema.org/draft/2020-12/schema"


def schema(name: Which = None, json: Json = False, db: Db = None) -> None:
    """Print a published shape as JSON Schema.

    Always JSON; without NAME, the shapes are listed.
    """
    del db  # every command takes it; a shape needs none
    if name is None:
        _list(json)
        return
    key = name.removesuffix("/1").replace("_", "-").lower()
    if key == TABLE:
        out.document(records_table())
        return
    if key not in SHAPES:
        near = nearest(key, [*SHAPES, TABLE])
        hint = f"Did you mean {near!r}?" if near else f"Known: {', '.join([*SHAPES, TABLE])}"
        raise BadInput(f"there is no schema {name!r}. {hint}")
    out.document({"$schema": DIALECT, **SHAPES[key].model_json_schema(by_alias=True)})


def _list(json: bool) -> None:
    rows = [(key, (shape.__doc__ or "").split("\n")[0]) for key, shape in SHAPES.items()]
    rows.append((TABLE, "The records as a table: a Table Schema (Frictionless)."))
    if json:
        out.document(dict(rows))
        return
    with out.page() as console:
        Sheet(console).part("schemas", table(("name", "what it is"), rows))
