"""Files that belong to a record: kept by content, listed, looked after, given out."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import PurePosixPath, PureWindowsPath

from service.files.read.media import ENDINGS, media_type
from service.files.vault import Health, Vault, digest
from service.flow.edit_record import redirected, unknown
from service.flow.refusal import Refused
from service.store.attachments import Attachment
from service.store.unit import UnitOfWork

MOST = 200
LONGEST_NAME = 120


@dataclass(frozen=True)
class Checked:
    """How the files are: each that is not sound with the record it belongs to, and what no record speaks of."""

    sound: int
    faults: tuple[tuple[Attachment, Health], ...]
    strays: tuple[str, ...]


def attach(
    uow: UnitOfWork,
    vault: Vault,
    reference: str,
    files: Sequence[tuple[str, bytes]],
    *,
    who: str,
    note: str | None = None,
) -> tuple[Attachment, ...]:
    """Keep files (name and content) with a record and commit; return those that were not there yet.

    The content is on the disk before the database speaks of it. Unreadable for a kind that is not kept or what is too
    large, and then none of them is kept; Refused for no such record or too many.
    """
    kinds = [media_type(data, name) for name, data in files]
    with uow:
        reference, _ = redirected(uow, reference)
        if uow.records.head(reference, lock=True) is None:
            raise Refused(unknown(uow, reference))
        there = uow.records.attachments.of([reference])
        known, fresh = {one.sha256 for one in there}, list[Attachment]()
        for (name, data), kind in zip(files, kinds, strict=True):
            if digest(data) in known:
                continue
            known.add(digest(data))
            number = len(there) + len(fresh) + 1
            if number > MOST:
                raise Refused(f"record {reference} has {MOST} files already, and no more are taken")
            kept = vault.keep(data)
            one = Attachment(reference, number, kept, plain_name(name), kind, len(data), who, uow.now(), note)
            uow.records.attachments.add(one)
            fresh.append(one)
        uow.commit()
    return tuple(fresh)


def plain_name(name: str) -> str:
    r"""Return a file's own name, without folders and without what steers a terminal or hides an ending.

    >>> plain_name("../../etc/stern.jpg"), plain_name("C:\\photos\\a\u202egpj.exe"), plain_name("..")
    ('stern.jpg', 'a_gpj.exe', 'file')
    """
    last = PureWindowsPath(PurePosixPath(name).name).name
    clean = re.sub(r"[\x00-\x1f\x7f-\x9f\u2028\u2029\u202a-\u202e\u2066-\u2069/\\:*?\"<>|]", "_", last).strip(". ")
    return clean[-LONGEST_NAME:] or "file"


def attached(uow: UnitOfWork, reference: str) -> tuple[Attachment, ...]:
    """Return what belongs to a record and to what was merged into it. Refused for no such record."""
    with uow:
        reference, _ = redirected(uow, reference)
        if uow.records.head(reference) is None:
            raise Refused(unknown(uow, reference))
        return uow.records.attachments.of([reference, *uow.records.merges.into(reference)])


def exported(uow: UnitOfWork, vault: Vault, reference: str) -> Iterator[tuple[str, bytes]]:
    """Give each file of a record under a name that says its record, number and true kind. Refused where one is gone."""
    for one in attached(uow, reference):
        data = vault.read(one.sha256)
        if data is None:
            health = vault.health(one.sha256)
            raise Refused(f"{one.name} of record {one.reference} is {health}; restore {one.sha256} from a backup")
        stem = one.name.rpartition(".")[0] or one.name
        yield f"{plain_name(one.reference)}-{one.number:03d}-{stem}.{ENDINGS[one.type]}", data


def check_files(uow: UnitOfWork, vault: Vault) -> Checked:
    """Return how every file is: read again from end to end."""
    with uow:
        every = uow.records.attachments.all()
    state = {name: vault.health(name) for name in {one.sha256 for one in every}}
    faults = tuple((one, state[one.sha256]) for one in every if state[one.sha256] != "sound")
    strays = tuple(name for name in vault.names() if name not in state)
    return Checked(sum(health == "sound" for health in state.values()), faults, strays)
