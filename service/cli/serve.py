"""`transom serve`: the service over HTTP."""

from __future__ import annotations

import os
from dataclasses import replace
from typing import Annotated, Any

import typer

from service import bootstrap
from service.cli import out
from service.cli.faults import BadInput
from service.cli.options import Db, Json

Host = Annotated[
    str | None, typer.Option("--host", metavar="ADDRESS", help="Where to listen; 127.0.0.1 where not said.")
]
Port = Annotated[int | None, typer.Option("--port", min=1, max=65535, help="The port; 8080 where not said.")]
Workers = Annotated[int | None, typer.Option("--workers", min=1, max=64, help="Processes; as many as there are cores.")]
Proxies = Annotated[
    str | None,
    typer.Option(
        "--proxy", metavar="ADDRESSES", help="Reverse proxies whose forwarded headers are believed, by commas."
    ),
]
Public = Annotated[
    str | None, typer.Option("--public", metavar="URL", help="The address people know the service by, behind a proxy.")
]


def serve(
    host: Host = None,
    port: Port = None,
    workers: Workers = None,
    proxy: Proxies = None,
    public: Public = None,
    json: Json = False,
    db: Db = None,
) -> None:
    """Run the service over HTTP until it is told to stop (SIGTERM, Ctrl-C).

    What is being answered is finished first. It does not start on a database that needs `transom db upgrade`.
    """
    try:
        how = bootstrap.serving()
    except ValueError as problem:
        raise BadInput(str(problem)) from None
    said: dict[str, Any] = {"host": host, "port": port, "workers": workers, "proxies": proxy, "public": public}
    how = replace(how, **{name: value for name, value in said.items() if value is not None})
    chosen = bootstrap.settings(db)
    where = f"http://{how.host}:{how.port}"
    if json:
        out.document(
            {"listening": where, "database": bootstrap.shown(chosen), "workers": how.workers, "pid": os.getpid()}
        )
    else:
        out.note(f"transom: {where}/docs, {how.workers} worker(s), on {bootstrap.shown(chosen)}; stop with Ctrl-C")
    bootstrap.serve(chosen, how)
