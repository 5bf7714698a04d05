from __future__ import annotations

import json
import re
import tomllib
from datetime import UTC, datetime
from pathlib import Path

import pytest
import sqlalchemy as sa

from service.core.catalogue import Catalogue
from service.core.catalogue_check import parse_catalogue
from service.core.form import parse_form
from service.core.record import HullModel
from service.store import schema
from service.store.errors import Conflict
from service.store.hulls import Put
from service.store.unit import Store

CATALOGUE = Path(__file__).parents[2] / "seed_fixtures" / "catalogue.toml"


def catalogue(version: str) -> Catalogue:
    return parse_catalogue(tomllib.loads(CATALOGUE.read_text("utf-8"))).model_copy(update={"version": version})


TERN = HullModel(
    id="tern-31", builder="Ostrel Yard", model="Tern 31", aliases=("Tern31", "T 31"), loa_mm=9450, stern="raked"
)


def test_hulls_put_adds_changes_and_leaves(store: Store) -> None:
    other = HullModel(id="kittar", model="Kittar 28")
    with store.writing() as uow:
        preview = uow.hulls.put([TERN], who="test", why="first", preview=True)
        assert preview.created == ("tern-31",)
        assert uow.hulls.all() == ()
        uow.hulls.put([TERN, other], who="test", why="first")
        longer = TERN.model_copy(update={"loa_mm": 9500.0, "aliases": ("Tern XXXI",)})
        assert uow.hulls.put([longer, other], who="test", why="second") == Put((), ("tern-31",), ("kittar",))
        got = uow.hulls.get("tern-31")
    assert got is not None
    assert got.loa_mm == 9500
    assert set(got.aliases) == {"Tern31", "T 31", "Tern XXXI"}  # what people decided is never taken away


def test_loading_hulls_takes_three_statements_however_many(store: Store, statements: list[str]) -> None:
    counts = []
    for size in (5, 500):
        with store.writing() as uow:
            many = [HullModel(id=f"{size}-{n}", model="x", aliases=(f"a{n}", f"b{n}")) for n in range(size)]
            uow.hulls.put(many, who="test", why="test")
            uow.commit()
        statements.clear()
        with store.reading() as uow:
            uow.hulls.all()
        counts.append(len([s for s in statements if not s.startswith("BEGIN")]))
    assert counts == [3, 3]  # aliases, what was merged, what stands for itself


def test_aliases(store: Store) -> None:
    with store.writing() as uow:
        uow.hulls.put([TERN], who="test", why="first")
        assert uow.hulls.add_alias("Ostrel 31", "tern-31", who="ada", why="the owner said so")
        assert not uow.hulls.add_alias("Ostrel 31", "tern-31", who="ada", why="again")
        with pytest.raises(Conflict, match=r"no such hull model: 'nowhere'"):
            uow.hulls.add_alias("x", "nowhere", who="ada", why="?")
        uow.commit()
    with store._engine.connect() as raw:
        c = schema.hull_aliases.c
        row = raw.execute(sa.select(c.who, c.why).where(c.alias == "Ostrel 31")).one()
    assert tuple(row) == ("ada", "the owner said so")


def test_catalogues_keep_every_version(store: Store) -> None:
    first, second = catalogue("1"), catalogue("2")
    with store.writing() as uow:
        assert uow.catalogues.latest() is None
        assert uow.catalogues.add(first)
        assert uow.catalogues.add(second)
        assert not uow.catalogues.add(first)
        uow.commit()
    with store.reading() as uow:
        assert uow.catalogues.latest() == second
        assert uow.catalogues.get("1") == first
        assert uow.catalogues.get("3") is None
        assert uow.catalogues.versions() == ("2", "1")


def test_a_version_never_changes_its_content(store: Store) -> None:
    with store.writing() as uow:
        uow.catalogues.add(catalogue("1"))
        changed = catalogue("1").model_copy(update={"currency": "NOK"})
        with pytest.raises(Conflict, match=r"version '1'.*version of its own"):
            uow.catalogues.add(changed)
        assert uow.catalogues.get("1") == catalogue("1")


def test_enquiries_and_threads(store: Store) -> None:
    form = parse_form({"contact": {"name": "Ada Holm"}, "boat": {"model": "Tern 31"}})
    late, early = datetime(2024, 3, 2, tzinfo=UTC), datetime(2024, 3, 1, tzinfo=UTC)
    with store.writing() as uow:
        second = uow.enquiries.add(form, source="two", received=late, message_id="<2@example.com>")
        first = uow.enquiries.add(form, source="one", received=early, message_id="<1@example.com>", boat=1)
        loose = uow.enquiries.add(form, source="form")
        assert uow.enquiries.add(form, source="form") != loose
        uow.commit()
    with store.reading() as uow:
        thread = uow.enquiries.in_thread(["<2@example.com>", "<1@example.com>", "<0@example.com>"])
        kept = uow.enquiries.get(second)
        assert uow.enquiries.get("nowhere") is None
    assert [one.id for one in thread] == [first, second]
    assert kept is not None
    assert (kept.form, kept.source, kept.received, kept.message_id, kept.boat) == (
        form,
        "two",
        late,
        "<2@example.com>",
        0,
    )


def test_reading_a_mail_again_keeps_its_id_and_the_better_reading(store: Store) -> None:
    better = parse_form({"boat": {"model": "Tern 31"}})
    with store.writing() as uow:
        first = uow.enquiries.add(parse_form({}), source="one", message_id="<1@example.com>")
        assert uow.enquiries.add(better, source="one", message_id="<1@example.com>") == first
        kept = uow.enquiries.get(first)
        assert uow.enquiries.add(better, source="one", message_id="") != first
    assert kept is not None
    assert kept.form == better


def test_answers_come_back_byte_for_byte(store: Store) -> None:
    with store.writing() as uow:
        enquiry = uow.enquiries.add(parse_form({}), source="one")
        document = json.dumps(
            {"schema": "answer/1", "enquiry": enquiry, "note": "øre\u0000", "n": 0.1}, ensure_ascii=False
        )
        mine = uow.answers.new_id()
        assert uow.answers.add(enquiry, document, answer_id=mine) == mine
        second = uow.answers.add(enquiry, "{}")
        with pytest.raises(Conflict, match="no such enquiry"):
            uow.answers.add("nowhere", "{}")
        uow.commit()
    with store.reading() as uow:
        assert uow.answers.get(mine) == document
        assert uow.answers.of(enquiry) == (mine, second)
        assert uow.answers.get("nowhere") is None


def test_a_tampered_answer_is_not_given_out(store: Store) -> None:
    with store.writing() as uow:
        one = uow.answers.add(uow.enquiries.add(parse_form({}), source="one"), '{"verdict": "does_not_fit"}')
        uow.commit()
    with store._engine.connect().execution_options(writes=True) as raw, raw.begin():
        raw.execute(schema.answers.update().values(document='{"verdict": "fits"}'))
    with store.reading() as uow, pytest.raises(Conflict, match="no longer what was sent"):
        uow.answers.get(one)


def test_only_the_unit_of_work_commits() -> None:
    root = Path(__file__).parents[2] / "service"
    found: dict[str, set[str]] = {}
    for path in root.rglob("*.py"):
        calls = re.findall(r"(\S*)\.commit\(", path.read_text("utf-8"))
        found |= {path.relative_to(root).as_posix(): set(calls)} if calls else {}
    assert found.pop("store/unit.py") == {"connection", "uow"}
    assert all(callers == {"uow"} for callers in found.values()), found  # elsewhere only the unit is asked to
