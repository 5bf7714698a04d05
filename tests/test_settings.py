from __future__ import annotations

from pathlib import Path

import pytest

from service.settings import Settings, settings_from


def test_the_command_line_goes_before_the_environment_and_that_before_the_default() -> None:
    environment = {"TRANSOM_DB": "sqlite:////b.db", "HOME": "/home/ada"}
    assert settings_from(environment, database="sqlite:////a.db") == Settings(
        "sqlite:////a.db", files=Path("/a.db.files")
    )
    assert settings_from(environment) == Settings("sqlite:////b.db", files=Path("/b.db.files"))
    assert settings_from({"HOME": "/home/ada", "TRANSOM_DB": " "}, platform="linux").folder == Path(
        "/home/ada/.local/share/transom"
    )


@pytest.mark.parametrize(
    ("platform", "environment", "folder"),
    [  # XDG Base Directory Specification: absolute paths only; the others: common practice, no source
        ("linux", {"HOME": "/h", "XDG_DATA_HOME": "/data"}, "/data/transom"),
        ("linux", {"HOME": "/h", "XDG_DATA_HOME": "data"}, "/h/.local/share/transom"),
        ("darwin", {"HOME": "/h"}, "/h/Library/Application Support/transom"),
        ("win32", {"USERPROFILE": "/h"}, "/h/AppData/Local/transom"),
        ("win32", {"USERPROFILE": "/h", "LOCALAPPDATA": "/l"}, "/l/transom"),
    ],
)
def test_where_data_belong(platform: str, environment: dict[str, str], folder: str) -> None:
    found = settings_from(environment, platform=platform)
    assert found == Settings(f"sqlite:///{folder}/ledger.db", Path(folder), Path(f"{folder}/ledger.db.files"))


def test_attachments_stand_where_they_are_told_to() -> None:
    served = {"TRANSOM_DB": "postgresql://db.example.net/ledger", "HOME": "/h"}
    assert settings_from(served, platform="linux").files == Path("/h/.local/share/transom/files")
    assert settings_from({**served, "TRANSOM_FILES": "/srv/files"}).files == Path("/srv/files")


def test_nothing_is_made_by_asking(tmp_path: Path) -> None:
    found = settings_from({"HOME": str(tmp_path)}, platform="linux")
    assert found.folder is not None
    assert not found.folder.exists()
