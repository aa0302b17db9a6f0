"""Its folder is on the import path, so that every test can import `helpers`; property
tests draw the same examples in every run."""

from hypothesis import settings

settings.register_profile("repeatable", derandomize=True, deadline=None)
settings.load_profile("repeatable")
