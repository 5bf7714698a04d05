from __future__ import annotations

import hashlib
import sqlite3
import subprocess
import sys
from pathlib import Path

import pytest
import sqlalchemy as sa
from alembic import op
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from alembic.script import ScriptDirectory
from pytest_alembic import tests as usual
from pytest_alembic.runner import MigrationContext as Runner

from service.store import dialect, migrate, schema
from service.store.check import require, state_of
from service.store.errors import NeedsUpgrade, NewerSchema, NotOurs, StoreAway
from tests.support.databases import file_of, fingerprint


def digest(path: Path) -> str:
    return hashlib.sha256(path.read_bytes()).hexdigest()


def test_usual_expectations_of_a_history(alembic_runner: Runner) -> None:
    usual.test_single_head_revision(alembic_runner)
    usual.test_upgrade(alembic_runner)
    usual.test_up_down_consistency(alembic_runner)


def test_constants_name_the_head_and_the_whole_history() -> None:
    script = ScriptDirectory.from_config(migrate.configuration())
    assert migrate.current_head() == schema.HEAD
    assert {revision.revision for revision in script.walk_revisions()} == set(schema.KNOWN)


def test_migrated_tables_are_the_declared_ones(url: str) -> None:
    migrate.upgrade(url)
    engine = dialect.connect(dialect.address(url))
    with engine.connect() as connection:
        context = MigrationContext.configure(
            connection, opts={"compare_type": True, "version_table": schema.VERSION_TABLE}
        )
        assert compare_metadata(context, schema.metadata) == []
        found = sa.MetaData()
        found.reflect(connection)
        checks = {c.name for t in found.tables.values() for c in t.constraints if isinstance(c, sa.CheckConstraint)}
        assert checks == {"ck_records_status", "ck_records_head", "ck_users_role"}
    engine.dispose()


def test_every_constraint_has_a_name(file_url: str) -> None:
    migrate.upgrade(file_url)
    raw = sqlite3.connect(file_of(file_url))
    written = "".join(sql for (sql,) in raw.execute("SELECT sql FROM sqlite_master WHERE type = 'table'"))
    raw.close()
    written = written.replace("ledger_version_pkc", "pk_")  # alembic's own table has its own habit
    for kind, prefix in (("PRIMARY KEY", "pk_"), ("FOREIGN KEY", "fk_"), ("UNIQUE", "uq_"), ("CHECK", "ck_")):
        assert written.count(f" {kind}") == written.count(f"CONSTRAINT {prefix}") > 0, kind


def test_up_down_up_with_data_between(url: str) -> None:
    migrate.upgrade(url)
    engine = dialect.connect(dialect.address(url))
    hull = {"id": "hull-1", "model": "Tern 31", "created": sa.func.current_timestamp()}
    for _ in range(2):
        with engine.connect().execution_options(writes=True) as connection, connection.begin():
            connection.execute(schema.hull_models.insert().values(**hull))
            connection.execute(
                schema.hull_aliases.insert().values(
                    hull_id="hull-1", alias="T31", who="a", why="b", at=sa.func.current_timestamp()
                )
            )
        migrate.downgrade(url)
        with engine.connect() as connection:
            assert set(sa.inspect(connection).get_table_names()) == {schema.VERSION_TABLE}
        assert state_of(engine.url) == "old"
        migrate.upgrade(url)
        with engine.connect() as connection:
            assert connection.execute(sa.select(sa.func.count()).select_from(schema.hull_models)).scalar() == 0
        assert state_of(engine.url) == "ok"
    engine.dispose()


def test_upgrading_again_changes_nothing(url: str) -> None:
    migrate.upgrade(url)
    engine = dialect.connect(dialect.address(url))
    with engine.connect().execution_options(writes=True) as connection, connection.begin():
        connection.execute(
            schema.hull_models.insert().values(id="h", model="Tern 31", created=sa.func.current_timestamp())
        )
    assert migrate.upgrade(url) == schema.HEAD
    with engine.connect() as connection:
        assert connection.execute(sa.select(schema.hull_models.c.model)).scalars().all() == ["Tern 31"]
    engine.dispose()


def test_a_downgrade_that_fails_half_way_undoes_the_first_half(url: str, monkeypatch: pytest.MonkeyPatch) -> None:
    migrate.upgrade(url)
    drop, dropped = op.drop_table, list[str]()

    def fail(name: str) -> None:
        if dropped:
            raise RuntimeError("half way")
        drop(name)
        dropped.append(name)

    monkeypatch.setattr(op, "drop_table", fail)
    with pytest.raises(RuntimeError):
        migrate.downgrade(url)
    engine = dialect.connect(dialect.address(url))
    with engine.connect() as connection:
        assert dropped[0] in sa.inspect(connection).get_table_names()
    engine.dispose()
    assert state_of(engine.url) == "ok"


def test_an_upgrade_that_fails_half_way_leaves_no_tables(url: str, monkeypatch: pytest.MonkeyPatch) -> None:
    def fail(*_: object, **__: object) -> None:
        raise RuntimeError("half way")

    monkeypatch.setattr(op, "create_index", fail)
    with pytest.raises(RuntimeError):
        migrate.upgrade(url)
    assert state_of(dialect.address(url)) == "new"


def test_runs_from_any_folder_and_prints_nothing(url: str, tmp_path: Path) -> None:
    code = f"from service.store import migrate; migrate.upgrade({url!r})"
    ran = subprocess.run(  # noqa: S603 - our own interpreter and a fixed text
        [sys.executable, "-c", code], cwd=tmp_path, capture_output=True, text=True, check=False
    )
    assert (ran.returncode, ran.stdout, ran.stderr) == (0, "", "")
    assert state_of(dialect.address(url)) == "ok"


def test_a_newer_database_is_refused_untouched(url: str) -> None:
    migrate.upgrade(url)
    engine = dialect.connect(dialect.address(url))
    with dialect.rebuilding(engine) as raw:
        raw.exec_driver_sql(f"UPDATE {schema.VERSION_TABLE} SET version_num = '9999'")  # noqa: S608 - a constant
    before = fingerprint(url)
    for attempt in (migrate.upgrade, migrate.downgrade):
        with pytest.raises(NewerSchema, match=r"newer version.*Update the program"):
            attempt(url)
    with pytest.raises(NewerSchema):
        require(dialect.address(url))
    assert fingerprint(url) == before
    with engine.connect() as raw:
        assert raw.exec_driver_sql(f"SELECT version_num FROM {schema.VERSION_TABLE}").scalars().all() == ["9999"]  # noqa: S608 - the same
    engine.dispose()


@pytest.mark.parametrize("content", ["png", "other"])
def test_what_is_not_ours_is_refused_untouched(file_url: str, content: str) -> None:
    path = file_of(file_url)
    if content == "png":
        path.write_bytes(b"\x89PNG\r\n\x1a\n" + bytes(5000))
    else:
        raw = sqlite3.connect(path)
        raw.execute("CREATE TABLE letters (id INTEGER)")
        raw.commit()
        raw.close()
    before = digest(path)
    with pytest.raises(NotOurs, match="another program"):
        migrate.upgrade(file_url)
    assert digest(path) == before
    assert list(path.parent.iterdir()) == [path]


def test_looking_at_an_absent_database_does_not_make_one(file_url: str) -> None:
    with pytest.raises(NeedsUpgrade, match=r"no database yet.*db upgrade"):
        require(dialect.address(file_url))
    assert not file_of(file_url).exists()


def test_an_absent_folder_is_named(tmp_path: Path) -> None:
    with pytest.raises(StoreAway, match=r"no such folder.*absent"):
        migrate.upgrade(f"sqlite:///{tmp_path}/absent/ledger.db")


def test_odd_characters_in_the_path(tmp_path: Path) -> None:
    folder = tmp_path / "50% ? öl #1"
    folder.mkdir()
    url = sa.URL.create("sqlite", database=str(folder / "a b.db")).render_as_string()
    migrate.upgrade(url)
    assert (folder / "a b.db").exists()
    assert state_of(dialect.address(url)) == "ok"
