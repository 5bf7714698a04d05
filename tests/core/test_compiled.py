"""Machine code kept on disk gives what was compiled, is linked into what calls it, and is loaded without what compiles."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

FUNCTIONS = """
import numpy as np
from service.core.compiled import compiled

@compiled
def inner(values):
    total = np.zeros(3)
    for at in range(values.size):
        total[at % 3] += values[at]
    return total

@compiled
def outer(values):
    return inner(values * 2.0).sum()
"""
CALL = """
import sys
import numpy as np
from functions import inner, outer
print(*{"inner": inner, "outer": lambda values: [outer(values)]}[sys.argv[1]](np.arange(7.0)))
print("numba.cpython.unicode" in sys.modules, "numba.np.arrayobj" in sys.modules)
"""


def called(folder: Path, name: str) -> list[str]:
    """Return what the function of that name gives of 0 to 6, in a process of its own, and whether it was compiled."""
    environment = {**os.environ, "NUMBA_CACHE_DIR": str(folder / "kept"), "PYTHONPATH": f"{folder}:{Path.cwd()}"}
    command = [sys.executable, "-c", CALL, name]
    ran = subprocess.run(command, capture_output=True, text=True, check=True, env=environment)  # noqa: S603 - our own
    return ran.stdout.splitlines()


def test_what_is_on_disk_is_loaded_without_the_compiler_and_linked_into_what_calls_it(tmp_path: Path) -> None:
    (tmp_path / "functions.py").write_text(FUNCTIONS, encoding="utf-8")
    assert called(tmp_path, "inner") == ["9.0 5.0 7.0", "True True"], "compiled"
    assert called(tmp_path, "inner") == ["9.0 5.0 7.0", "False False"], "loaded"
    assert called(tmp_path, "outer") == ["42.0", "True True"], "compiled, with the other as it is on disk"
    for kept in (tmp_path / "kept").rglob("*inner*"):
        kept.unlink()
    assert called(tmp_path, "outer") == ["42.0", "False False"], "loaded, and the other is in it"
