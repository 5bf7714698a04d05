"""The first tables: hull models, boats, records with their history, catalogues, enquiries and answers."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision: str | None = None
branch_labels = None
depends_on = None


TABLES = (
    "catalogues",
    "contacts",
    "hull_models",
    "boats",
    "enquiries",
    "hull_aliases",
    "answers",
    "records",
    "record_revisions",
)


def upgrade() -> None:
    _catalogues()
    _contacts()
    _hull_models()
    _boats()
    _enquiries()
    _hull_aliases()
    _answers()
    _records()
    _record_revisions()


def downgrade() -> None:
    for name in reversed(TABLES):
        op.drop_table(name)


def _catalogues() -> None:
    op.create_table(
        "catalogues",
        sa.Column("version", sa.String, nullable=False),
        sa.Column("name", sa.String, nullable=False),
        sa.Column("document", sa.Text, nullable=False),
        sa.Column("sha256", sa.String, nullable=False),
        sa.Column("loaded_at", sa.DateTime(timezone=True), nullable=False),
        sa.PrimaryKeyConstraint("version", name=op.f("pk_catalogues")),
    )


def _contacts() -> None:
    op.create_table(
        "contacts",
        sa.Column("id", sa.String, nullable=False),
        sa.Column("name", sa.String),
        sa.Column("email", sa.String),
        sa.Column("phone", sa.String),
        sa.Column("role", sa.String),
        sa.Column("created", sa.DateTime(timezone=True), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_contacts")),
    )
    op.create_index(op.f("ix_contacts_email"), "contacts", ["email"])
    op.create_index(op.f("ix_contacts_name"), "contacts", ["name"])
    op.create_index(op.f("ix_contacts_phone"), "contacts", ["phone"])


def _hull_models() -> None:
    op.create_table(
        "hull_models",
        sa.Column("id", sa.String, nullable=False),
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
        sa.Column("created", sa.DateTime(timezone=True), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_hull_models")),
    )


def _boats() -> None:
    op.create_table(
        "boats",
        sa.Column("id", sa.String, nullable=False),
        sa.Column("key", sa.String, nullable=False),
        sa.Column("hull_id", sa.String),
        sa.Column("name", sa.String),
        sa.Column("hull_number", sa.String),
        sa.Column("sail_number", sa.String),
        sa.Column("year", sa.Integer),
        sa.Column("created", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["hull_id"], ["hull_models.id"], name=op.f("fk_boats_hull_id_hull_models")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_boats")),
        sa.UniqueConstraint("key", name=op.f("uq_boats_key")),
    )
    op.create_index(op.f("ix_boats_hull_id"), "boats", ["hull_id"])


def _enquiries() -> None:
    op.create_table(
        "enquiries",
        sa.Column("id", sa.String, nullable=False),
        sa.Column("message_id", sa.String),
        sa.Column("boat", sa.Integer, nullable=False),
        sa.Column("received", sa.DateTime(timezone=True)),
        sa.Column("form", sa.Text, nullable=False),
        sa.Column("source", sa.Text, nullable=False),
        sa.Column("hull_id", sa.String),
        sa.Column("contact_id", sa.String),
        sa.Column("created", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["contact_id"], ["contacts.id"], name=op.f("fk_enquiries_contact_id_contacts")),
        sa.ForeignKeyConstraint(["hull_id"], ["hull_models.id"], name=op.f("fk_enquiries_hull_id_hull_models")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_enquiries")),
        sa.UniqueConstraint("message_id", "boat", name=op.f("uq_enquiries_message_id_boat")),
    )
    op.create_index(op.f("ix_enquiries_contact_id"), "enquiries", ["contact_id"])
    op.create_index(op.f("ix_enquiries_hull_id"), "enquiries", ["hull_id"])
    op.create_index(op.f("ix_enquiries_received"), "enquiries", ["received"])


def _hull_aliases() -> None:
    op.create_table(
        "hull_aliases",
        sa.Column("hull_id", sa.String, nullable=False),
        sa.Column("alias", sa.String, nullable=False),
        sa.Column("who", sa.String, nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("why", sa.String, nullable=False),
        sa.ForeignKeyConstraint(["hull_id"], ["hull_models.id"], name=op.f("fk_hull_aliases_hull_id_hull_models")),
        sa.PrimaryKeyConstraint("hull_id", "alias", name=op.f("pk_hull_aliases")),
    )
    op.create_index(op.f("ix_hull_aliases_alias"), "hull_aliases", ["alias"])


def _answers() -> None:
    op.create_table(
        "answers",
        sa.Column("id", sa.String, nullable=False),
        sa.Column("enquiry_id", sa.String, nullable=False),
        sa.Column("document", sa.Text, nullable=False),
        sa.Column("sha256", sa.String, nullable=False),
        sa.Column("created", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["enquiry_id"], ["enquiries.id"], name=op.f("fk_answers_enquiry_id_enquiries")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_answers")),
    )
    op.create_index(op.f("ix_answers_enquiry_id"), "answers", ["enquiry_id"])


def _records() -> None:
    op.create_table(
        "records",
        sa.Column("id", sa.String, nullable=False),
        sa.Column("reference", sa.String, nullable=False),
        sa.Column("boat_id", sa.String, nullable=False),
        sa.Column("hull_id", sa.String),
        sa.Column("status", sa.String, nullable=False),
        sa.Column("date", sa.Date),
        sa.Column("dealer", sa.String),
        sa.Column("catalogue_version", sa.String),
        sa.Column("head", sa.Integer, nullable=False),
        sa.Column("year", sa.Integer),
        sa.Column("stern", sa.String),
        sa.Column("loa_mm", sa.Float),
        sa.Column("top_height_mm", sa.Float),
        sa.Column("rake_deg", sa.Float),
        sa.Column("gear", sa.String, nullable=False),
        sa.Column("lower", sa.String, nullable=False),
        sa.Column("upper", sa.String, nullable=False),
        sa.Column("shaft", sa.String, nullable=False),
        sa.Column("offset_mm", sa.Float),
        sa.Column("created", sa.DateTime(timezone=True), nullable=False),
        sa.CheckConstraint(
            "status IN ('proposed', 'shipped', 'installed', 'withdrawn')", name=op.f("ck_records_status")
        ),
        sa.CheckConstraint("head >= 1", name=op.f("ck_records_head")),
        sa.ForeignKeyConstraint(["boat_id"], ["boats.id"], name=op.f("fk_records_boat_id_boats")),
        sa.ForeignKeyConstraint(["hull_id"], ["hull_models.id"], name=op.f("fk_records_hull_id_hull_models")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_records")),
        sa.UniqueConstraint("reference", name=op.f("uq_records_reference")),
    )
    op.create_index(op.f("ix_records_boat_id"), "records", ["boat_id"])
    op.create_index(op.f("ix_records_date"), "records", ["date"])
    op.create_index(op.f("ix_records_dealer"), "records", ["dealer"])
    op.create_index(op.f("ix_records_hull_id"), "records", ["hull_id"])
    op.create_index(op.f("ix_records_status"), "records", ["status"])
    op.create_index(op.f("ix_records_stern"), "records", ["stern"])
    op.create_index(op.f("ix_records_year"), "records", ["year"])


def _record_revisions() -> None:
    op.create_table(
        "record_revisions",
        sa.Column("record_id", sa.String, nullable=False),
        sa.Column("number", sa.Integer, autoincrement=False, nullable=False),
        sa.Column("who", sa.String, nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("why", sa.String, nullable=False),
        sa.Column("contact_id", sa.String),
        sa.Column("document", sa.Text, nullable=False),
        sa.ForeignKeyConstraint(["contact_id"], ["contacts.id"], name=op.f("fk_record_revisions_contact_id_contacts")),
        sa.ForeignKeyConstraint(["record_id"], ["records.id"], name=op.f("fk_record_revisions_record_id_records")),
        sa.PrimaryKeyConstraint("record_id", "number", name=op.f("pk_record_revisions")),
    )
    op.create_index(op.f("ix_record_revisions_contact_id"), "record_revisions", ["contact_id"])
