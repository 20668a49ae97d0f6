"""A test is left out where a program that it needs is not installed, and says so. Where all of them are meant to be there
(CARB_LEAVE_NOTHING_OUT is set, as .ci/run does), that is a failure: nothing may pass because it did not run."""

import os

import pytest


@pytest.hookimpl(hookwrapper=True)
def pytest_runtest_makereport(item, call):
    report = (yield).get_result()
    if report.skipped and os.environ.get("CARB_LEAVE_NOTHING_OUT"):
        report.outcome, report.longrepr = "failed", f"left out: {report.longrepr}"
