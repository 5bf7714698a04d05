"""A catalogue from TOML."""

from __future__ import annotations

import tomllib

from service.core.catalogue import Catalogue
from service.core.catalogue_check import parse_catalogue
from service.files.read.errors import Unreadable

LARGEST = 8_000_000


def read_catalogue(data: bytes, name: str) -> Catalogue:
    """Return the catalogue in a TOML file.

    Unreadable names the line that is no TOML or no UTF-8; FormError lists every defect of a catalogue that is TOML.
    """
    if len(data) > LARGEST:
        raise Unreadable(f"{name}: {len(data) / 1e6:.0f} MB is no catalogue; give its TOML file")
    if not data.strip():
        raise Unreadable(f"{name}: it is empty; give a catalogue in TOML")
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        line = data.count(b"\n", 0, error.start) + 1
        raise Unreadable(f"{name}, line {line}: this is not UTF-8 text; a catalogue is a TOML file") from None
    try:
        document = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise Unreadable(f"{name}: this is no TOML: {error}; mend it there") from None
    except RecursionError:
        raise Unreadable(f"{name}: it is nested too deep for a catalogue") from None
    return parse_catalogue(document)
