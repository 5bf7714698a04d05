"""The name that answers, reports and backups carry."""

from __future__ import annotations

from service import __version__

SOFTWARE = f"transom-ledger {__version__}"
