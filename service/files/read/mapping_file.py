"""A mapping file (TOML) -> the mapping, with faults at their place."""

from __future__ import annotations

import tomllib

from service.core.form import parse_shape
from service.core.mapping import IGNORE, KEEP, Mapping
from service.core.words import nearest
from service.files.columns import by_name
from service.files.read.errors import Unreadable

LARGEST = 4_000_000


def read_mapping(data: bytes, name: str) -> Mapping:
    """Return the mapping in a TOML file. Unreadable for what is no TOML or names no column; FormError as forms have."""
    if len(data) > LARGEST:
        raise Unreadable(f"{name}: {len(data) / 1e6:.0f} MB are no mapping file")
    try:
        said = tomllib.loads(data.decode("utf-8-sig"))
    except UnicodeDecodeError:
        raise Unreadable(f"{name}: this is not UTF-8; save the mapping file as UTF-8 text") from None
    except (tomllib.TOMLDecodeError, RecursionError) as error:
        raise Unreadable(f"{name}: this is no TOML: {error}; mend that line") from None
    mapping = parse_shape(Mapping, said)
    targets = (KEEP, IGNORE, *by_name())
    named = [(f"column {rule.heading!r}", rule.to) for rule in mapping.column]
    for place, to in [*named, *(("[always]", to) for to in mapping.always)]:
        if to not in targets or (place == "[always]" and to in (KEEP, IGNORE)):
            near = nearest(to, targets)
            hint = f"; did you mean {near!r}?" if near else "; `transom schema records` lists the columns"
            raise Unreadable(f"{name}, {place}: {to!r} is no column of records{hint}")
    return mapping
