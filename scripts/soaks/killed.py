"""What `kill` starts and kills: python -m scripts.soaks.killed import FILE URL | resume ID URL | undo ID URL.

Says "begun" when it begins, and after each commit how many rows are acknowledged in all.
"""

from __future__ import annotations

import sys
from pathlib import Path

from service.bootstrap import clock
from service.flow import import_records as imports
from service.flow import undo_import as undoing
from service.flow.resume_import import resume_import
from service.store.ids import random_id
from service.store.unit import Store

CHUNK = 100


def main() -> None:
    """Do one of the three, saying how far it is."""
    what, given, url = sys.argv[1:]
    imports.CHUNK = undoing.CHUNK = CHUNK
    store = Store(url, now=clock, new_id=random_id)
    far = 0

    def acknowledged(rows: int) -> None:
        nonlocal far
        far += rows
        print(far, flush=True)

    print("begun", flush=True)
    if what == "import":
        file = Path(given)
        imports.import_records(store.writing(), file.read_bytes(), file.name, progress=acknowledged)
    elif what == "resume":
        resume_import(store.writing(), given, progress=acknowledged)
    else:
        undoing.undo_import(store.writing(), given, progress=acknowledged)
    store.close()


if __name__ == "__main__":
    main()
