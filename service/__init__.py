"""Fleet record database and configuration lookup for transom-hung wind-vane self-steering gear."""

import hashlib
import os
import tempfile
from pathlib import Path

__version__ = "0.1.0"


def _keep_compiled_code() -> None:
    """Give compiled loops a folder of their own for each version of their source, so that none is ever out of date."""
    if "NUMBA_CACHE_DIR" in os.environ:
        return
    digest = hashlib.sha256()
    for source in sorted((Path(__file__).parent / "core" / "fit").glob("*.py")):
        digest.update(source.read_bytes())
    root = Path(os.environ.get("XDG_CACHE_HOME") or Path.home() / ".cache")
    folder = root / "transom-ledger" / f"compiled-{digest.hexdigest()[:16]}"
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError:
        folder = Path(tempfile.gettempdir()) / f"transom-ledger-compiled-{digest.hexdigest()[:16]}"
    os.environ["NUMBA_CACHE_DIR"] = str(folder)


_keep_compiled_code()
