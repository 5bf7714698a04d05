"""Write tests/api/openapi.json anew: .venv/bin/python -m tests.api.write_openapi. What breaks programs is named first."""

from __future__ import annotations

import json
import sys
from datetime import UTC, datetime
from pathlib import Path
from typing import cast

from service.api.app import create_app
from service.settings import Serving
from service.store.unit import Store
from tests.api.breaking import breaks, without_examples

COPY = Path(__file__).parent / "openapi.json"


def main() -> None:
    """Write the document as the service describes itself now."""
    app = create_app(cast("Store", None), Serving(), clock=lambda: datetime.now(UTC), random=bytes)  # noqa: TID251 - nothing is asked
    document = app.openapi()
    if COPY.exists():
        for line in breaks(json.loads(COPY.read_text("utf-8")), document):
            sys.stderr.write(f"breaks programs: {line}\n")
    COPY.write_text(
        json.dumps(without_examples(document), indent=1, ensure_ascii=False, sort_keys=True) + "\n", "utf-8"
    )


if __name__ == "__main__":
    main()
