"""The Bulrush booklet, set once for each layout and whole paper, and on half-size paper.

Each layout and each paper once; the thorough run sets every layout on every paper.
"""

from __future__ import annotations

import pytest
from finished import Book, made


def _each(*names: str, thorough: tuple[str, ...]) -> list[object]:
    return [*names, *(pytest.param(name, marks=pytest.mark.thorough) for name in thorough)]


WHOLE = _each("tideline-letter", "washland-a4", thorough=("tideline-a4", "washland-letter"))
HALF = _each(
    "tideline-half-letter", "washland-a5", thorough=("tideline-a5", "washland-half-letter")
)


@pytest.fixture(scope="session", params=WHOLE)
def book(request: pytest.FixtureRequest) -> Book:
    return made(request.param)


@pytest.fixture(scope="session", params=HALF)
def small(request: pytest.FixtureRequest) -> Book:
    return made(request.param)
