"""The Bulrush booklet, set once for each layout and whole paper, and on half-size paper."""

from __future__ import annotations

import pytest
from finished import Book, made

WHOLE = ("tideline-letter", "tideline-a4", "washland-letter", "washland-a4")
HALF = ("tideline-half-letter", "tideline-a5", "washland-half-letter", "washland-a5")


@pytest.fixture(scope="session", params=WHOLE)
def book(request: pytest.FixtureRequest) -> Book:
    return made(request.param)


@pytest.fixture(scope="session", params=HALF)
def small(request: pytest.FixtureRequest) -> Book:
    return made(request.param)
