"""Files that a page gives out: always to be kept, never shown in the desk's own name."""

from __future__ import annotations

import re
from pathlib import PurePath

from starlette.responses import Response

TYPES = {
    "csv": "text/csv; charset=utf-8",
    "tsv": "text/tab-separated-values; charset=utf-8",
    "jsonl": "application/x-ndjson",
    "json": "application/json",
    "pdf": "application/pdf",
    "xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
    "ods": "application/vnd.oasis.opendocument.spreadsheet",
    "zip": "application/zip",
}


def attached(data: bytes, name: str) -> Response:
    """Return a file to be kept under a name; its type goes by the ending, and is none that a browser runs."""
    plain = re.sub(r"[^A-Za-z0-9._-]+", "-", name).strip("-.") or "file"
    kind = TYPES.get(PurePath(plain).suffix.removeprefix("."), "application/octet-stream")
    return Response(data, media_type=kind, headers={"Content-Disposition": f'attachment; filename="{plain}"'})
