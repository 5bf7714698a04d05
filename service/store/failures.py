"""How databases fail, told in words: what went wrong, where, and how to mend it. `dialect` uses it for all of them."""

from __future__ import annotations

import sqlite3

from sqlalchemy.exc import DataError, DBAPIError, IntegrityError

from service.store.errors import Conflict, NotOurs, StoreAway, StoreError

_LOCKED = ("the database is locked by another program", "Wait until that one has finished, then try again")
_FULL = ("the disk is full", "Make room and try again; what was begun is undone")
_AWAY = ("the database went away", "See that the server runs, then try again; what was begun is undone")
_CROSSED = ("another program changed the same things meanwhile", "Try again; what was begun is undone")
_NO_ENTRY = ("the database's server lets nobody in by this name or password", "Give the right user and password")
_SILENT = ("the database's server does not answer", "See that it runs, and that the address is right")
_CROWDED = ("the server has no connection left", "Try again later, or let it take more (max_connections)")
_FAILURES = {
    "SQLITE_BUSY": _LOCKED,
    "SQLITE_LOCKED": _LOCKED,
    "SQLITE_FULL": _FULL,
    "SQLITE_CANTOPEN": ("the database cannot be opened", "See that its folder exists and may be written to"),
    "SQLITE_READONLY": ("the database may only be read", "Allow writing to the file and to its folder"),
    "SQLITE_PERM": ("the database may not be touched", "Allow reading and writing of the file and of its folder"),
    "SQLITE_CORRUPT": ("the database's file is damaged", "Restore it from a backup"),
    "SQLITE_IOERR": ("the disk cannot be read or written", "See to the disk, then try again"),
    # SQLSTATE, PostgreSQL's manual, appendix A; and words of errors that come before there is a server to give one
    "55P03": _LOCKED,
    "40": _CROSSED,
    "25P03": ("this desk kept others waiting too long", "Try again; what was begun is undone"),
    "25006": ("the database may only be read", "Give the address of the server that takes changes"),
    "28": _NO_ENTRY,
    "3D000": ("there is no such database on the server", "Make it there (createdb), or give another name"),
    "42501": ("the database's user may not do this", "Let its owner GRANT the right, or give another user"),
    "53100": _FULL,
    "53300": _CROWDED,
    "53": ("the server has not enough of something it needs", "See to the server, then try again"),
    "57P": _AWAY,
    "08": _AWAY,
    "58": ("the server's disk cannot be read or written", "See to the server's disk, then try again"),
    "XX": ("the database is damaged", "See the server's log; restore it from a backup"),
    "password authentication failed": _NO_ENTRY,
    "no password supplied": _NO_ENTRY,
    "no pg_hba.conf entry": _NO_ENTRY,
    '" does not exist': ("there is no such user or database on the server", "Make it there, or give another name"),
    "too many clients": _CROWDED,
    "connection failed": _SILENT,
    "connection is bad": _SILENT,
    "connection timeout": _SILENT,
    "failed to resolve host": _SILENT,
    "server closed the connection": _AWAY,
    "connection is lost": _AWAY,
    "is closed": _AWAY,
}
"""Beginnings of codes, and words said where there is no code -> what it is, and how to mend it. The first one counts."""


def told_of(error: DBAPIError | sqlite3.Error, where: str) -> StoreError:
    """Return the store's error for a driver's one; `where` is the database's address for people."""
    cause = error.orig if isinstance(error, DBAPIError) else error
    if isinstance(error, (IntegrityError, sqlite3.IntegrityError)):
        return Conflict("the database refuses what contradicts it", where, f"Nothing was written ({_line(cause)})")
    if isinstance(error, DataError):
        return Conflict("the database cannot hold a value", where, f"Nothing was written ({_line(cause)})")
    code = getattr(cause, "sqlite_errorname", None) or getattr(cause, "sqlstate", None) or _line(cause)
    if code.startswith("SQLITE_NOTADB"):
        return NotOurs("this file is no database of this program", where, "Give the right file; it was left as it was")
    for start, (what, mend) in _FAILURES.items():
        if code.startswith(start) or (" " in start and start in code):
            return StoreAway(what, where, mend)
    return StoreAway("the database does not work", where, f"It said: {_line(cause)}")


def _line(cause: object) -> str:
    return " ".join(str(cause).split())
