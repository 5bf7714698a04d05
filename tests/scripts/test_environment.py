"""How the scripts set up what they need, tried with stand-ins for Python's and Debian's parts."""

from __future__ import annotations

import os
import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

TOP = Path(__file__).resolve().parents[2]
SCRIPTS = TOP / "scripts"


def sourced(tools: Path, call: str) -> subprocess.CompletedProcess[str]:
    """Run a function of environment.sh with `tools` before everything else on the PATH."""
    return subprocess.run(  # noqa: S603 - our own script
        ["/bin/bash", "-euo", "pipefail", "-c", f'source "{SCRIPTS / "environment.sh"}"; {call}'],
        env={"PATH": f"{tools}:/usr/bin:/bin"},
        capture_output=True,
        text=True,
        check=False,
    )


@pytest.fixture
def tools(tmp_path: Path) -> Path:
    """Return a folder of stand-ins, with a Python that lacks what makes environments."""
    folder = tmp_path / "tools"
    folder.mkdir()
    stand_in(
        folder,
        "bare-python",
        f'case "$*" in *ensurepip*) exit 1 ;; *) exec "{sys.executable}" "$@" ;; esac',
    )
    return folder


def stand_in(folder: Path, name: str, body: str) -> None:
    (folder / name).write_text(f"#!/bin/sh\n{body}\n", encoding="utf-8")
    (folder / name).chmod(0o755)


def test_without_the_venv_module_and_without_rights_it_says_how(tools: Path) -> None:
    stand_in(tools, "id", "echo 1000")
    ran = sourced(tools, "need_venv_module bare-python")
    assert ran.returncode == 1
    assert "apt-get install python3-venv" in ran.stderr


def test_without_the_venv_module_root_installs_it(tools: Path, tmp_path: Path) -> None:
    stand_in(tools, "id", "echo 0")
    # Fails until it has been told to update, as on a machine that never was.
    body = f'echo "$*" >> "{tmp_path}/asked"; if [ "$1" = install ]; then grep -q update "{tmp_path}/asked"; fi'
    stand_in(tools, "apt-get", body)
    ran = sourced(tools, "need_venv_module bare-python")
    assert ran.returncode == 0, ran.stderr
    package = f"python{sys.version_info.major}.{sys.version_info.minor}-venv"
    asked = (tmp_path / "asked").read_text(encoding="utf-8").splitlines()
    assert asked == [f"install -y -q {package}", "update -q", f"install -y -q {package}"]


def run_for_postgres(tools: Path, uid: int, apt: str) -> subprocess.CompletedProcess[str]:
    """Ask for a server with a Python that finds none until the file `there` is made."""
    stand_in(tools, "id", f"echo {uid}")
    stand_in(tools, "apt-get", apt)
    places = tools.parent / "venv" / "bin"
    places.mkdir(parents=True)
    stand_in(
        places,
        "python",
        f'if [ -e "{tools.parent}/there" ]; then echo /found; else echo "how to get one" >&2; exit 1; fi',
    )
    return sourced(tools, f'venv="{tools.parent}/venv"; need_postgres')


def test_without_a_server_root_installs_one(tools: Path, tmp_path: Path) -> None:
    ran = run_for_postgres(tools, 0, f'echo "$*" >> "{tmp_path}/asked"; touch "{tmp_path}/there"')
    assert ran.returncode == 0, ran.stderr
    assert (tmp_path / "asked").read_text(encoding="utf-8") == "install -y -q postgresql\n"


@pytest.mark.parametrize("uid", [0, 1000])
def test_without_a_server_and_without_a_way_to_one_it_says_how(tools: Path, uid: int) -> None:
    ran = run_for_postgres(tools, uid, "exit 1")
    assert ran.returncode == 1
    assert "how to get one" in ran.stderr


def test_an_old_python_is_not_taken(tools: Path) -> None:
    for name in ("python3.11", "python3", "python3.12", "python3.13", "python3.14"):
        stand_in(tools, name, "exit 1")
    ran = sourced(tools, "find_python")
    assert ran.returncode == 1
    assert "Python 3.11" in ran.stderr


def test_the_stamp_changes_with_the_lock_alone(tools: Path, tmp_path: Path) -> None:
    lock = tmp_path / "lock.txt"
    shutil.copy(SCRIPTS / "lock" / "run.txt", lock)
    (tmp_path / "venv" / "bin").mkdir(parents=True)
    stand_in(tmp_path / "venv" / "bin", "python", f'exec "{sys.executable}" "$@"')
    stamp = f'venv="{tmp_path}/venv"; stamp_of "{lock}"'
    first, again = (sourced(tools, stamp).stdout for _ in range(2))
    assert first == again != ""
    lock.write_text(lock.read_text(encoding="utf-8") + "# changed\n", encoding="utf-8")
    assert sourced(tools, stamp).stdout != first


def test_what_is_made_is_not_made_again_until_the_lock_changes(tools: Path, tmp_path: Path) -> None:
    places = tmp_path / "venv" / "bin"
    places.mkdir(parents=True)
    for name in ("python", "transom"):
        stand_in(places, name, f'exec "{sys.executable}" "$@"')
    call = f'venv="{tmp_path}/venv"; is_made_for run && echo yes || echo no'
    assert sourced(tools, call).stdout == "no\n"
    stamp = f'venv="{tmp_path}/venv"; stamp_of "$top/scripts/lock/run.txt" > "$venv/.made-for-run"'
    assert sourced(tools, stamp).returncode == 0
    assert sourced(tools, call).stdout == "yes\n"
    (tmp_path / "venv" / ".made-for-run").write_text("of another lock\n", encoding="utf-8")
    assert sourced(tools, call).stdout == "no\n"


def test_modules_are_compiled_ahead_even_where_python_is_told_to_write_no_bytecode(tools: Path, tmp_path: Path) -> None:
    places, module = tmp_path / "venv" / "bin", tmp_path / "service" / "one.py"
    places.mkdir(parents=True)
    stand_in(places, "python", f'PYTHONDONTWRITEBYTECODE=1 exec "{sys.executable}" "$@"')
    module.parent.mkdir()
    module.write_text("pass\n", encoding="utf-8")
    ran = sourced(tools, f'venv="{tmp_path}/venv"; top="{tmp_path}"; compile_ahead')
    assert ran.returncode == 0, "that there is no folder of migrations stops nothing"
    assert [*(module.parent / "__pycache__").glob("one.*.pyc")]


def test_no_script_and_no_lock_names_an_index_and_every_pin_has_a_hash() -> None:
    for file in [*SCRIPTS.glob("*"), *(SCRIPTS / "lock").iterdir(), TOP / ".ci" / "run"]:
        if file.is_file():
            text = file.read_text(encoding="utf-8")
            assert not re.search(r"https?://|--(extra-)?index-url|--find-links|-i ", text), file.name
    for lock in (SCRIPTS / "lock").glob("*.txt"):
        pins = re.split(r"\n(?=\S)", lock.read_text(encoding="utf-8").strip())
        assert all("==" in pin and "--hash=sha256:" in pin for pin in pins), lock.name


def test_what_tests_need_holds_all_that_running_needs() -> None:
    def pins(name: str) -> set[str]:
        return set(re.findall(r"^\S+==\S+", (SCRIPTS / "lock" / name).read_text(encoding="utf-8"), re.MULTILINE))

    assert pins("run.txt") <= pins("test.txt")


def test_the_checked_run_is_the_tests_and_nothing_else() -> None:
    lines = [line for line in (TOP / ".ci" / "run").read_text(encoding="utf-8").splitlines() if line and line[0] != "#"]
    assert lines[-1].startswith("exec ")
    assert lines[-1].endswith('/../scripts/test"')
    assert len(lines) == 3
    for script in ("demo", "test", "bench"):
        assert os.access(SCRIPTS / script, os.X_OK)


@pytest.mark.parametrize(("ci", "status"), [("true", 1), ("", 0)])
def test_a_skipped_test_fails_a_checked_run(ci: str, status: int, tmp_path: Path) -> None:
    shutil.copy(TOP / "tests" / "no_skips.py", tmp_path)
    (tmp_path / "test_it.py").write_text(
        "import pytest\n\ndef test_good(): pass\n\n@pytest.mark.skip(reason='no')\ndef test_skipped(): pass\n",
        encoding="utf-8",
    )
    ran = subprocess.run(  # noqa: S603 - this very Python
        [
            sys.executable,
            "-m",
            "pytest",
            "-q",
            "-p",
            "no_skips",
            "-p",
            "no:cacheprovider",
            "--rootdir",
            str(tmp_path),
            str(tmp_path),
        ],
        env={**os.environ, "CI": ci, "PYTEST_ADDOPTS": ""},
        cwd=tmp_path,
        capture_output=True,
        text=True,
        check=False,
    )
    assert ran.returncode == status, ran.stdout
    assert ("which fails the run" in ran.stdout) is bool(status)
    assert "1 passed, 1 skipped" in ran.stdout.splitlines()[-1]
