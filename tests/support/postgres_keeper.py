"""Keeps a PostgreSQL server for as long as somebody holds this process's standard input open.

Started by `postgres.py` beside it with the folder of the server's programs. Prints one line of JSON: the folder of the
socket, or what is wrong. When standard input ends (a test run that ended, failed or was killed: the system closes it)
the server is stopped and its folder removed. A server refuses to run as root; for root it is another user's.
"""

from __future__ import annotations

import contextlib
import grp
import json
import os
import pwd
import shutil
import subprocess
import sys
import tempfile
import time
from pathlib import Path
from typing import Any

PATIENCE = 60
MEMORY = "/dev/shm"  # noqa: S108 - made with mkdtemp
ROOM = 2_000_000_000
"""Bytes that have to be free there; containers often give it far less."""
LONGEST = 80
"""Characters of the folder's path: a socket's has room for 107."""
OWNER = "postgres"
"""The database user that may do anything on this server; nobody but the run that started it can reach it."""
SETTINGS = {
    "listen_addresses": "",  # a socket in a folder that only this user (and root) may enter
    "fsync": "off",  # a test's data need not outlive the machine
    "synchronous_commit": "off",
    "full_page_writes": "off",
    "wal_level": "minimal",
    "max_wal_senders": "0",
    "max_connections": "60",
    "timezone": "Asia/Kathmandu",  # whoever forgets a zone is found out
    "lc_messages": "C",
}
PASSWORDS = "local all keyed scram-sha-256\nlocal all all trust\n"
"""Who must prove who he is: a user `keyed`, for tests of wrong passwords."""


def servant() -> dict[str, Any]:
    """Return how subprocess is told to run the server: as this user, or for root as one without rights."""
    if os.geteuid() != 0:
        return {}
    for name in ("postgres", "nobody"):
        with contextlib.suppress(KeyError):
            user = pwd.getpwnam(name)
            return {"user": user.pw_uid, "group": user.pw_gid, "extra_groups": []}
    raise RuntimeError(
        "a database server does not run as root, and there is neither a user `postgres` nor `nobody` to be"
    )


def in_memory() -> list[str]:
    """Return a folder in memory where there is one with room: a database is copied ten times as fast there.

    A folder named in TMPDIR goes before it.
    """
    with contextlib.suppress(OSError):
        if "TMPDIR" not in os.environ and shutil.disk_usage(MEMORY).free > ROOM:
            return [MEMORY]
    return []


def folder_for(user: dict[str, Any]) -> Path:
    """Return a new folder that belongs to that user and can be entered by him; its path is short, as a socket's is."""
    for base in dict.fromkeys((*in_memory(), tempfile.gettempdir(), "/tmp", "/var/tmp")):  # noqa: S108 - made with mkdtemp, for one
        with contextlib.suppress(OSError):
            made = Path(tempfile.mkdtemp(prefix="transom-pg-", dir=base))
            if user:
                os.chown(made, user["user"], user["group"])
            look = ["/bin/sh", "-c", 'cd "$0"', str(made)]
            there = subprocess.run(look, stderr=subprocess.DEVNULL, check=False, **user)  # noqa: S603 - fixed
            if there.returncode == 0 and len(str(made)) < LONGEST:
                return made
            made.rmdir()
    raise RuntimeError("no temporary folder that the database server may enter; name one in TMPDIR")


def initialise(programs: Path, data: Path, user: dict[str, Any]) -> None:
    """Make the server's data folder, sorting as a people's language does where it can: ours must not depend on it."""
    command = [str(programs / "initdb"), "-D", str(data), "-U", OWNER, "-A", "trust", "--encoding=UTF8", "--no-sync"]
    for locale in (["--locale=C", "--locale-provider=icu", "--icu-locale=en-US"], ["--locale=C"]):
        made = subprocess.run([*command, *locale], capture_output=True, text=True, check=False, cwd="/", **user)  # noqa: S603 - our own words
        if made.returncode == 0:
            (data / "pg_hba.conf").write_text(PASSWORDS, encoding="ascii")
            return
        shutil.rmtree(data, ignore_errors=True)
    raise RuntimeError(f"initdb failed: {made.stderr.strip()}")


def started(programs: Path, folder: Path, user: dict[str, Any]) -> subprocess.Popen[bytes]:
    """Return the server once it answers."""
    data = folder / "data"
    initialise(programs, data, user)
    settings = SETTINGS | {"unix_socket_directories": str(folder)}
    options = [part for key, value in settings.items() for part in ("-c", f"{key}={value}")]
    with (folder / "log").open("wb") as log:
        server = subprocess.Popen(  # noqa: S603 - our own words
            [str(programs / "postgres"), "-D", str(data), *options], stdin=subprocess.DEVNULL, stdout=log, stderr=log,
            cwd="/", **user,
        )  # fmt: skip
    for _ in range(PATIENCE * 20):
        state = (data / "postmaster.pid").read_text("ascii") if (data / "postmaster.pid").exists() else ""
        if state.rstrip().endswith("ready"):
            return server
        if server.poll() is not None:
            break
        time.sleep(0.05)
    server.kill()
    raise RuntimeError(f"the server did not start: {(folder / 'log').read_text('utf-8', 'replace')[-2000:]}")


def keep(programs: Path) -> None:
    """Run a server until standard input ends."""
    folder, server = None, None
    try:
        user = servant()
        folder = folder_for(user)
        server = started(programs, folder, user)
        say({"socket": str(folder), "owner": OWNER, "user": _name(user), "process": server.pid})
        sys.stdin.buffer.read()
    except (RuntimeError, OSError) as error:
        say({"error": str(error)})
    finally:
        if server is not None and server.poll() is None:
            server.send_signal(3)  # SIGQUIT: at once; nothing in it is to be kept
            with contextlib.suppress(subprocess.TimeoutExpired):
                server.wait(PATIENCE)
            server.kill()
        if folder is not None:
            shutil.rmtree(folder, ignore_errors=True)


def say(words: dict[str, object]) -> None:
    """Tell whoever started this."""
    with contextlib.suppress(BrokenPipeError):
        sys.stdout.write(json.dumps(words) + "\n")
        sys.stdout.flush()


def _name(user: dict[str, Any]) -> str:
    uid = user.get("user", os.geteuid())
    with contextlib.suppress(KeyError):
        return f"{pwd.getpwuid(uid).pw_name} of {grp.getgrgid(user.get('group', os.getegid())).gr_name}"
    return str(uid)


if __name__ == "__main__":
    keep(Path(sys.argv[1]))
