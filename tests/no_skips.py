"""A plugin of scripts/test: where CI=true a skipped test fails the run. What is not tried there is tried nowhere."""

from __future__ import annotations

import os

import pytest


@pytest.hookimpl(trylast=True)
def pytest_sessionfinish(session: pytest.Session) -> None:
    if os.environ.get("CI", "").lower() != "true":
        return
    reporter = session.config.pluginmanager.get_plugin("terminalreporter")
    skipped = len(reporter.stats.get("skipped", ())) if reporter else 0
    if skipped and session.exitstatus == pytest.ExitCode.OK:
        session.exitstatus = pytest.ExitCode.TESTS_FAILED
        session.config.stash[SKIPPED] = skipped


def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter, config: pytest.Config) -> None:
    skipped = config.stash.get(SKIPPED, 0)
    if skipped:
        terminalreporter.write_line(f"CI: {skipped} skipped, which fails the run", red=True)


SKIPPED = pytest.StashKey[int]()
