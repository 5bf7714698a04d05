"""The kinds of jobs, and what does each. A kind is added by one line here."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from service.flow.backup_job import KIND as BACKUP
from service.flow.backup_job import work_backup
from service.flow.import_job import KIND as IMPORT
from service.flow.import_job import work_import
from service.flow.job_task import Task
from service.flow.recheck_job import KIND as RECHECK
from service.flow.recheck_job import work_recheck

Work = Callable[[Task], Mapping[str, Any] | None]
"""Does a job and returns what it came to (JSON). It begins at the first thing that is not acknowledged, writes through
`task.writing()`, and calls `task.advance` or `task.see` at least each second."""

KINDS: dict[str, Work] = {
    BACKUP: work_backup,
    IMPORT: work_import,
    RECHECK: work_recheck,
}
