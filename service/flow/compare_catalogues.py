"""Say what differs between two catalogues, loaded ones or files, and which records carry it."""

from __future__ import annotations

from dataclasses import dataclass

from service.core.catalogue import Catalogue, Configuration
from service.core.catalogue_diff import Carrier, CatalogueDiff, compare
from service.core.words import nearest
from service.files.read.catalogue_file import read_catalogue
from service.flow.refusal import Refused
from service.store.unit import UnitOfWork


@dataclass(frozen=True)
class Side:
    """One of the two: a file's name with its content and how a shell is given it, or the version of a loaded one."""

    name: str
    data: bytes | None = None
    shell: str | None = None


def compare_catalogues(uow: UnitOfWork, before: Side, after: Side, *, references: bool = False) -> CatalogueDiff:
    """Return the differences, with the records that carry what was changed or removed, named with `references`.

    Refused for a version that was never loaded; raises as `read_catalogue` does for a file.
    """
    with uow:
        old, new = _catalogue(uow, before), _catalogue(uow, after)
        carriers = (
            Carrier(reference, Configuration(gear=gear, lower=lower, upper=upper, shaft=shaft))
            for reference, gear, lower, upper, shaft in uow.records.carried.each()
        )
        return compare(old, new, carriers, further=_further(uow, after), references=references)


def _catalogue(uow: UnitOfWork, side: Side) -> Catalogue:
    if side.data is not None:
        return read_catalogue(side.data, side.name)
    found = uow.catalogues.get(side.name)
    if found is not None:
        return found
    known = uow.catalogues.versions()
    near = nearest(side.name, known)
    hint = f"did you mean {near!r}?" if near else f"loaded are {', '.join(map(repr, known)) or 'none'}"
    raise Refused(f"{side.name!r} is no file, and no version of a catalogue that was loaded; {hint}")


def _further(uow: UnitOfWork, after: Side) -> str:
    """Return the command that judges the fleet by what stands after. The one in use needs no file."""
    if after.data is not None:
        return f"transom recheck --catalogue {after.shell or 'FILE'}"
    return "transom recheck" if uow.catalogues.versions()[0] == after.name else "transom recheck --catalogue FILE"
