"""Figures for half-size paper: drawn for its column, their words as large as on whole paper.

Paper sizes are ANSI's and ISO 216's halves; the least type is common practice, no source.
"""

from __future__ import annotations

import re
from functools import cache

import pytest
from demos import demo

from publish import draw
from publish.draw.canvas.style import NARROW_COLUMN, SMALL, TEXT_COLUMN
from publish.model.book import A5, HALF_LETTER, LETTER, Paper
from publish.model.figure import Artwork

LEAST = 6.0
"""Points."""


@cache
def drawn(paper: Paper) -> Artwork:
    work = demo("samphire")
    assert work.manual is not None
    made = (work.pattern, work.sizes, work.drafts, work.plans, work.manual, paper)
    artwork, notes = draw.draw(*made)
    assert notes == ()
    return artwork


def type_of(svg: str) -> list[float]:
    """Return the sizes of the words of a drawing, in its own units."""
    return [float(size) for size in re.findall(r'font-size="([\d.]+)"', svg)]


@pytest.mark.parametrize(
    "paper",
    [HALF_LETTER, pytest.param(A5, marks=pytest.mark.thorough)],
    ids=lambda p: p.key,
)
def test_every_figure_fits_the_narrow_column_and_can_be_read(paper: Paper) -> None:
    artwork = drawn(paper)
    for key, figure in artwork.figures.items():
        if figure.scalable and not key.startswith("quilt-"):  # covers have their own measure
            share = min(1.0, NARROW_COLUMN / figure.width)
            assert min(type_of(figure.svg), default=SMALL) * share >= LEAST, key
    whole = drawn(LETTER)
    assert any(f.width > NARROW_COLUMN + 0.5 for f in whole.figures.values())
    # Strokes and labels at a figure's edge may reach a little past it; it is set that much smaller.
    assert max(f.width for f in whole.figures.values()) <= TEXT_COLUMN + 0.1


def test_template_sheets_stay_on_whole_paper() -> None:
    small, whole = drawn(HALF_LETTER), drawn(LETTER)
    assert small.sheets == whole.sheets and whole.sheets


def test_sizes_without_words_are_the_same_tops() -> None:
    artwork = drawn(LETTER)
    plain = artwork.figures["sizes-no"]
    labelled = next(f for k, f in artwork.figures.items() if k == "sizes")
    assert type_of(plain.svg) == [] and type_of(labelled.svg)
    assert plain.alt == labelled.alt
    assert plain.width <= labelled.width and plain.height < labelled.height
