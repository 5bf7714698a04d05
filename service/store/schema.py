"""The tables. Documents are JSON text, so that what was written is given back byte for byte."""

from __future__ import annotations

import sqlalchemy as sa

from service.store import desk_schema as _desk  # noqa: F401 - declares its tables
from service.store import edge_schema as _edge  # noqa: F401 - the same
from service.store import job_schema as _jobs  # noqa: F401 - the same
from service.store.metadata import metadata as _declared
from service.store.stored import UtcTime

HEAD = "0012"
"""The newest revision in `migrations`."""
KNOWN = ("0001", "0002", "0003", "0004", "0005", "0006", "0007", "0008", "0009", "0010", "0011", HEAD)
"""Every revision this program can upgrade from, and the newest."""
VERSION_TABLE = "ledger_version"
"""Where a database says which revision it is at; its name marks the database as ours."""

metadata = _declared
"""Every table, those of `desk_schema`, `edge_schema` and `job_schema` among them."""


def _hull(*, index: bool = True) -> sa.Column[str]:
    return sa.Column("hull_id", sa.String, sa.ForeignKey("hull_models.id"), index=index)


def _contact() -> sa.Column[str]:
    return sa.Column("contact_id", sa.String, sa.ForeignKey("contacts.id"), index=True)


hull_models = sa.Table(
    "hull_models",
    metadata,
    sa.Column("id", sa.String, primary_key=True),
    sa.Column("builder", sa.String),
    sa.Column("model", sa.String, nullable=False),
    sa.Column("first_year", sa.Integer),
    sa.Column("last_year", sa.Integer),
    sa.Column("loa_mm", sa.Float),
    sa.Column("lwl_mm", sa.Float),
    sa.Column("beam_mm", sa.Float),
    sa.Column("draft_mm", sa.Float),
    sa.Column("displacement_kg", sa.Float),
    sa.Column("stern", sa.String),
    sa.Column("created", UtcTime, nullable=False),
    sa.Column("merged_into", sa.String, sa.ForeignKey("hull_models.id"), index=True),
    sa.Column("survivor", sa.String, index=True),
    sa.Column("retired", sa.Boolean, nullable=False, server_default=sa.false()),
)
"""Rows stay for ever, for ids do. `merged_into` is what was decided, `survivor` what stands for it in the end; a retired
one was added by a change that was taken back."""

hull_aliases = sa.Table(
    "hull_aliases",
    metadata,
    sa.Column("hull_id", sa.String, sa.ForeignKey("hull_models.id"), primary_key=True),
    sa.Column("alias", sa.String, primary_key=True, index=True),
    sa.Column("who", sa.String, nullable=False),
    sa.Column("at", UtcTime, nullable=False),
    sa.Column("why", sa.String, nullable=False),
)

contacts = sa.Table(
    "contacts",
    metadata,
    sa.Column("id", sa.String, primary_key=True),
    sa.Column("name", sa.String, index=True),
    sa.Column("email", sa.String, index=True),
    sa.Column("phone", sa.String, index=True),
    sa.Column("role", sa.String),
    sa.Column("created", UtcTime, nullable=False),
)
"""People's data, here and nowhere else but in the mails as they came and the answers as they went."""

boats = sa.Table(
    "boats",
    metadata,
    sa.Column("id", sa.String, primary_key=True),
    sa.Column("key", sa.String, nullable=False, unique=True),
    _hull(),
    sa.Column("name", sa.String),
    sa.Column("hull_number", sa.String),
    sa.Column("sail_number", sa.String),
    sa.Column("year", sa.Integer),
    sa.Column("created", UtcTime, nullable=False),
)
"""Individual boats; `key` is what tells one from another: hull model and hull number, else the record it came with."""

records = sa.Table(
    "records",
    metadata,
    sa.Column("id", sa.String, primary_key=True),
    sa.Column("reference", sa.String, nullable=False, unique=True),
    sa.Column("boat_id", sa.String, sa.ForeignKey("boats.id"), nullable=False, index=True),
    _hull(),
    sa.Column("status", sa.String, nullable=False, index=True),
    sa.Column("date", sa.Date),
    sa.Column("dealer", sa.String, index=True),
    sa.Column("catalogue_version", sa.String),
    sa.Column("head", sa.Integer, nullable=False),
    sa.Column("year", sa.Integer, index=True),
    sa.Column("stern", sa.String, index=True),
    sa.Column("loa_mm", sa.Float),
    sa.Column("top_height_mm", sa.Float),
    sa.Column("rake_deg", sa.Float),
    sa.Column("gear", sa.String, nullable=False),
    sa.Column("lower", sa.String, nullable=False),
    sa.Column("upper", sa.String, nullable=False),
    sa.Column("shaft", sa.String, nullable=False),
    sa.Column("offset_mm", sa.Float),
    sa.Column("created", UtcTime, nullable=False),
    sa.Column("answer", sa.String, index=True),
    sa.Column("country", sa.String),
    sa.CheckConstraint("status IN ('proposed', 'shipped', 'installed', 'withdrawn')", name="status"),
    sa.CheckConstraint("head >= 1", name="head"),
    sa.Index("ix_records_date_reference", "date", "reference"),
    sa.Index(
        "ix_records_counted",
        "gear",
        "lower",
        "upper",
        "shaft",
        "date",
        "country",
        "stern",
        "status",
        "loa_mm",
        "offset_mm",
    ),
)
"""Installations as they stand: what is searched for, and the number of the revision that is current."""

record_revisions = sa.Table(
    "record_revisions",
    metadata,
    sa.Column("record_id", sa.String, sa.ForeignKey("records.id"), primary_key=True),
    sa.Column("number", sa.Integer, primary_key=True, autoincrement=False),
    sa.Column("who", sa.String, nullable=False),
    sa.Column("at", UtcTime, nullable=False),
    sa.Column("why", sa.String, nullable=False),
    _contact(),
    sa.Column("document", sa.Text, nullable=False),
)
"""Every state a record was in. Rows are added, never changed."""

record_merges = sa.Table(
    "record_merges",
    metadata,
    sa.Column("record_id", sa.String, sa.ForeignKey("records.id"), primary_key=True),
    sa.Column("into_id", sa.String, sa.ForeignKey("records.id"), nullable=False, index=True),
    sa.Column("number", sa.Integer, nullable=False),
)
"""Records that turned out to be another one written down twice; `number` is the other's revision that took them in."""

record_series = sa.Table(
    "record_series",
    metadata,
    sa.Column("series", sa.String, primary_key=True),
    sa.Column("last", sa.Integer, nullable=False),
)
"""The last number given out in each series of references: none is given twice, whatever became of its record."""

measurements = sa.Table(
    "measurements",
    metadata,
    sa.Column("record_id", sa.String, sa.ForeignKey("records.id"), primary_key=True),
    sa.Column("number", sa.Integer, primary_key=True, autoincrement=False),
    sa.Column("field", sa.String, nullable=False),
    sa.Column("text", sa.String, nullable=False),
    sa.Column("unit", sa.String, nullable=False),
    sa.Column("value", sa.Float, nullable=False),
    sa.Column("method", sa.String),
    sa.Column("uncertainty", sa.Float),
    sa.Column("who", sa.String, nullable=False),
    sa.Column("at", UtcTime, nullable=False),
    sa.Column("taken", sa.Date),
    sa.Column("source", sa.String),
)
"""What was measured, as written and in the field's unit. Rows are added, never changed; two may disagree."""

catalogues = sa.Table(
    "catalogues",
    metadata,
    sa.Column("version", sa.String, primary_key=True),
    sa.Column("name", sa.String, nullable=False),
    sa.Column("document", sa.Text, nullable=False),
    sa.Column("sha256", sa.String, nullable=False),
    sa.Column("loaded_at", UtcTime, nullable=False),
)

attachments = sa.Table(
    "attachments",
    metadata,
    sa.Column("record_id", sa.String, sa.ForeignKey("records.id"), primary_key=True),
    sa.Column("number", sa.Integer, primary_key=True, autoincrement=False),
    sa.Column("sha256", sa.String, nullable=False, index=True),
    sa.Column("name", sa.String, nullable=False),
    sa.Column("type", sa.String, nullable=False),
    sa.Column("bytes", sa.Integer, nullable=False),
    sa.Column("who", sa.String, nullable=False),
    sa.Column("at", UtcTime, nullable=False),
    sa.Column("note", sa.String),
)
"""What belongs to a record: photos, drawings, mails. The content stands in the folder of files, named by its hash."""

enquiries = sa.Table(
    "enquiries",
    metadata,
    sa.Column("id", sa.String, primary_key=True),
    sa.Column("message_id", sa.String),
    sa.Column("boat", sa.Integer, nullable=False),
    sa.Column("received", UtcTime, index=True),
    sa.Column("form", sa.Text, nullable=False),
    sa.Column("source", sa.Text, nullable=False),
    _hull(),
    _contact(),
    sa.Column("created", UtcTime, nullable=False),
    sa.Column("owner", sa.String, nullable=False, server_default=""),
    sa.Column("version", sa.Integer, nullable=False, server_default="0"),
    sa.Column("waits", sa.String, nullable=False, server_default="us"),
    sa.UniqueConstraint("message_id", "boat", "owner"),
    sa.Index("ix_enquiries_owner_created_id", "owner", "created", "id"),
    sa.Index("ix_enquiries_waits_created_id", "waits", "created", "id"),
)
"""One row a boat asked about: a mail may speak of several, numbered from 0. `owner` is the dealer whose enquiry it is,
empty for the maker's own desk; two of them may hold the same mail. `version` is the number of its last step, `waits` for
whom it waits: us, them, or nobody."""

answers = sa.Table(
    "answers",
    metadata,
    sa.Column("id", sa.String, primary_key=True),
    sa.Column("enquiry_id", sa.String, sa.ForeignKey("enquiries.id"), nullable=False, index=True),
    sa.Column("document", sa.Text, nullable=False),
    sa.Column("sha256", sa.String, nullable=False, index=True),
    sa.Column("created", UtcTime, nullable=False),
)
"""Answers as sent; frozen."""

kept_files = sa.Table(
    "kept_files",
    metadata,
    sa.Column("sha256", sa.String, primary_key=True),
    sa.Column("bytes", sa.Integer, nullable=False),
    sa.Column("created", UtcTime, nullable=False),
)
"""Files that were imported, each once, named by their content."""

kept_file_parts = sa.Table(
    "kept_file_parts",
    metadata,
    sa.Column("sha256", sa.String, sa.ForeignKey("kept_files.sha256"), primary_key=True),
    sa.Column("number", sa.Integer, primary_key=True, autoincrement=False),
    sa.Column("data", sa.LargeBinary, nullable=False),
)
"""Their content, packed, in parts of a size that every database takes."""

imports = sa.Table(
    "imports",
    metadata,
    sa.Column("id", sa.String, primary_key=True),
    sa.Column("name", sa.String, nullable=False),
    sa.Column("sha256", sa.String, sa.ForeignKey("kept_files.sha256"), nullable=False, index=True),
    sa.Column("mapping", sa.Text),
    sa.Column("who", sa.String, nullable=False),
    sa.Column("started", UtcTime, nullable=False, index=True),
    sa.Column("changed", UtcTime, nullable=False),
    sa.Column("state", sa.String, nullable=False),
    sa.Column("rows", sa.Integer, nullable=False),
    sa.Column("done", sa.Integer, nullable=False),
    sa.Column("created", sa.Integer, nullable=False),
    sa.Column("updated", sa.Integer, nullable=False),
    sa.Column("unchanged", sa.Integer, nullable=False),
    sa.Column("rejected", sa.Integer, nullable=False),
)
"""Imports. `done` rows are acknowledged: what became of them stands in the ledger with this number."""

import_rows = sa.Table(
    "import_rows",
    metadata,
    sa.Column("import_id", sa.String, sa.ForeignKey("imports.id"), primary_key=True),
    sa.Column("number", sa.Integer, primary_key=True, autoincrement=False),
    sa.Column("sheet", sa.String),
    sa.Column("row", sa.Integer, nullable=False),
    sa.Column("outcome", sa.String, nullable=False),
    sa.Column("reference", sa.String),
    sa.Column("before", sa.Integer, nullable=False),
    sa.Column("after", sa.Integer, nullable=False),
    sa.Column("detail", sa.Text),
    sa.Column("undo", sa.String),
    sa.Column("why", sa.String),
)
"""What became of each row, with the record's revision before and after it. A reference, no id: undoing may take the
record away."""

hull_distinct = sa.Table(
    "hull_distinct",
    metadata,
    sa.Column("one", sa.String, sa.ForeignKey("hull_models.id"), primary_key=True),
    sa.Column("other", sa.String, sa.ForeignKey("hull_models.id"), primary_key=True, index=True),
    sa.Column("who", sa.String, nullable=False),
    sa.Column("at", UtcTime, nullable=False),
    sa.Column("why", sa.String, nullable=False),
)
"""Pairs of hull models that look like one and are two, as somebody said."""

hull_changes = sa.Table(
    "hull_changes",
    metadata,
    sa.Column("number", sa.Integer, primary_key=True, autoincrement=False),
    sa.Column("at", UtcTime, nullable=False),
    sa.Column("who", sa.String, nullable=False),
    sa.Column("why", sa.String, nullable=False),
    sa.Column("kind", sa.String, nullable=False),
    sa.Column("undoes", sa.Integer, sa.ForeignKey("hull_changes.number"), index=True),
    sa.Column("cells", sa.Text, nullable=False),
)
"""What was done to the registry of hull models; `cells` hold what stood before and after. The last number is its version."""

hull_change_models = sa.Table(
    "hull_change_models",
    metadata,
    sa.Column("number", sa.Integer, sa.ForeignKey("hull_changes.number"), primary_key=True, autoincrement=False),
    sa.Column("hull_id", sa.String, sa.ForeignKey("hull_models.id"), primary_key=True, index=True),
)
"""Which hull models a change concerned."""

recall_weights = sa.Table(
    "recall_weights",
    metadata,
    sa.Column("number", sa.Integer, primary_key=True, autoincrement=False),
    sa.Column("at", UtcTime, nullable=False),
    sa.Column("records", sa.Integer, nullable=False),
    sa.Column("gains", sa.Text, nullable=False),
    sa.Column("document", sa.Text, nullable=False),
)
"""Weights learned from the fleet; the highest number is in use."""

stamps = sa.Table(
    "stamps",
    metadata,
    sa.Column("name", sa.String, primary_key=True),
    sa.Column("stamp", sa.String, nullable=False),
)
"""Another stamp with every transaction that changes what it stands for."""

hull_surfaces = sa.Table(
    "hull_surfaces",
    metadata,
    sa.Column("hull_id", sa.String, sa.ForeignKey("hull_models.id"), primary_key=True),
    sa.Column("place", sa.Integer, primary_key=True, autoincrement=False),
    sa.Column("words", sa.String, nullable=False),
    sa.Column("number", sa.String, index=True),
    sa.Column("digits", sa.String, index=True),
    sa.Column("bare_digits", sa.String, index=True),
)
"""Derived: every way a hull model is written. `digits` are those of a number written with a point, `bare_digits` without
closing noughts. A server that compares texts by letter groups has an index for it on `words`."""

hull_forms = sa.Table(
    "hull_forms",
    metadata,
    sa.Column("form", sa.String, primary_key=True),
    sa.Column("hull_id", sa.String, sa.ForeignKey("hull_models.id"), primary_key=True, index=True),
)
"""Derived: the texts under which a hull model is met exactly, with the number it has."""

sa.Index(
    "ix_hull_surfaces_words", hull_surfaces.c.words, postgresql_using="gin", postgresql_ops={"words": "gin_trgm_ops"}
)
