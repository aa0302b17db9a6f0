"""Its folder is on the import path, so that every test can import `helpers`; property
tests draw the same examples in every run; nothing is kept from one run to the next."""

import os

import pytest
import shared
import times
from hypothesis import settings

settings.register_profile("repeatable", derandomize=True, deadline=None, max_examples=40)
settings.register_profile("thorough", derandomize=True, deadline=None, max_examples=100)
settings.load_profile("repeatable")

LONGEST = ("test_book.py", "test_printed.py", "test_seeded.py", "test_preflight.py")
"""Files that two processes would wait for at the end, if they were not begun with."""


@pytest.hookimpl(tryfirst=True)  # before they are chosen by their marks
def pytest_collection_modifyitems(items):
    left = times.long()
    for item in items:
        if item.nodeid in left:
            item.add_marker(pytest.mark.thorough)
    items.sort(key=lambda item: item.path.name not in LONGEST)


def pytest_configure(config):
    if config.option.markexpr != "not thorough":
        settings.load_profile("thorough")
    if not hasattr(config, "workerinput"):  # the workers of a run inherit its folder
        shared.begin()
        # Nothing of an earlier run is taken for a test's own.
        os.environ["FOLDWORK_CACHE"] = str(shared.folder() / "kept")


def pytest_unconfigure(config):
    if not hasattr(config, "workerinput"):
        shared.end()
