"""The Bulrush booklet, set once for each paper."""

from __future__ import annotations

import bulrush
import bulrush_drawn
import pytest
from finished import Book, read_back

from publish.model.book import PAPERS
from publish.typeset import typeset


@pytest.fixture(scope="session", params=sorted(PAPERS))
def book(request: pytest.FixtureRequest) -> Book:
    paper = PAPERS[request.param]
    edition, notes = typeset(
        bulrush.pattern(), bulrush.manual(), bulrush_drawn.artwork(paper), paper
    )
    assert notes == ()
    assert edition is not None
    return read_back(edition)
