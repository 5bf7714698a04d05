"""What was found on site, from JSON or TOML: `as-installed/1`, or a boat form alone."""

from __future__ import annotations

import json
import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from service.core.form import parse_shape
from service.core.installed import AsInstalled
from service.files.read.decode import text_of
from service.files.read.errors import Unreadable

_OWN = frozenset(AsInstalled.model_fields) - {"schema_"}
FORM_SCHEMA = "boat-form/1"


@dataclass(frozen=True)
class FromSite:
    """What the file says, and the form in it as it was written, with its own units."""

    site: AsInstalled
    written: Mapping[str, Any]


def read_installed(data: bytes, name: str) -> FromSite:
    """Return what a file says of an installation. Unreadable for what is neither JSON nor TOML; FormError for faults."""
    document = _document(data, name)
    if document.get("schema") == FORM_SCHEMA or not (_OWN & set(document) or "schema" in document):
        document = {"form": document}
    written = document.get("form")
    return FromSite(parse_shape(AsInstalled, document), written if isinstance(written, Mapping) else {})


def _document(data: bytes, name: str) -> dict[str, Any]:
    if b"\0" in data:
        raise Unreadable(f"{name}: it is binary; give what was found on site as JSON or TOML")
    text = text_of(data, None)
    try:
        found = json.loads(text) if text.lstrip().startswith("{") else tomllib.loads(text)
    except json.JSONDecodeError as problem:
        where = f"line {problem.lineno}, column {problem.colno}"
        raise Unreadable(f"{name}: broken JSON at {where}: {problem.msg}; mend it there") from None
    except tomllib.TOMLDecodeError as problem:
        raise Unreadable(
            f"{name}: broken TOML: {problem}; give JSON or TOML, see `transom schema as-installed`"
        ) from None
    except RecursionError:
        raise Unreadable(f"{name}: nested too deep; see `transom schema as-installed`") from None
    if not isinstance(found, dict):
        raise Unreadable(f"{name}: expected one object; see `transom schema as-installed`")
    return found
