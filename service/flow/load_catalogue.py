"""Take a catalogue into use."""

from __future__ import annotations

from dataclasses import dataclass

from service.core.catalogue import Catalogue
from service.files.read.catalogue_file import read_catalogue
from service.store.unit import UnitOfWork


@dataclass(frozen=True)
class Loaded:
    """The catalogue, and whether it is new: exactly the same version may have been loaded before."""

    catalogue: Catalogue
    fresh: bool


def load_catalogue(uow: UnitOfWork, data: bytes, name: str) -> Loaded:
    """Keep the catalogue in a TOML file, and commit; what is answered from now on is made with it.

    Unreadable or FormError for what is no catalogue; Conflict where its version is loaded with other content.
    """
    catalogue = read_catalogue(data, name)
    with uow:
        fresh = uow.catalogues.add(catalogue)
        uow.commit()
    return Loaded(catalogue, fresh)
