"""Its folder is on the import path, so that every test can import `helpers`; property
tests draw the same examples in every run; nothing is kept from one run to the next."""

import os

import shared
from hypothesis import settings

settings.register_profile("repeatable", derandomize=True, deadline=None)
settings.load_profile("repeatable")


def pytest_configure(config):
    if not hasattr(config, "workerinput"):  # the workers of a run inherit its folder
        shared.begin()
        # Nothing of an earlier run is taken for a test's own.
        os.environ["FOLDWORK_CACHE"] = str(shared.folder() / "kept")


def pytest_unconfigure(config):
    if not hasattr(config, "workerinput"):
        shared.end()
