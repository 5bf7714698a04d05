"""Fleet record database and configuration lookup for transom-hung wind-vane self-steering gear."""

import hashlib
import os
import sys
import tempfile
from pathlib import Path

__version__ = "0.1.0"


def _keep_compiled_code() -> None:
    """Give compiled loops a folder of their own for each version of their source, so that none is ever out of date."""
    if "NUMBA_CACHE_DIR" in os.environ:
        return
    digest = hashlib.sha256()
    for source in sorted((Path(__file__).parent / "core").rglob("*.py")):
        text = source.read_bytes()
        if any(word in text for word in (b".compiled import", b"import numba", b"from numba", b"IntEnum")):
            # compiled code, how it is compiled and kept, and the columns that it reads
            digest.update(text)
    root = Path(os.environ.get("XDG_CACHE_HOME") or Path.home() / ".cache")
    folder = root / "transom-ledger" / f"compiled-{digest.hexdigest()[:16]}"
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError:  # nowhere to keep it: a folder of this run's own, for what lies in a shared one may be anybody's
        folder = Path(tempfile.mkdtemp(prefix="transom-ledger-compiled-"))
    os.environ["NUMBA_CACHE_DIR"] = str(folder)
    if "numba" in sys.modules:  # it reads the environment when it is imported, which somebody else has done already
        sys.modules["numba"].config.CACHE_DIR = str(folder)


_keep_compiled_code()
