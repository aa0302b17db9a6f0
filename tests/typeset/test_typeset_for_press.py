"""Pages for a print shop: drawings made opaque, and pages that break as the booklet's do.

What an opaque drawing must look like is said by cairo, which draws the see-through one by
alpha compositing; PDFium draws the page that holds the opaque one.
"""

from __future__ import annotations

from dataclasses import replace

import pytest
from drawn_pages import alike, pictured, printed
from pressed import VEIL, pressed

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.style import INK, Stroke
from publish.model.book import A4, LETTER
from publish.model.drawing import Drawing, Path, Primitive
from publish.typeset.for_press import bleed_of, opaque


def canvas(*veils: tuple[str, float]) -> Drawing:
    """Return a drawing of our own vocabulary with areas seen through, one on another."""
    drawn = Canvas(3, 2)
    drawn.rect(0, 0, 3, 2, "#dfd0b2")
    drawn.circle((0.8, 1), 40, "#2f6152", Stroke(INK, 2))
    drawn.line((0, 0), (3, 2), Stroke("#93404a", 3))
    drawn.text((0.4, 0.4), "Reed", 20, fill="#93404a")
    for step, (colour, share) in enumerate(veils):
        x = 0.3 + 0.4 * step
        drawn.rect(x, x, 2, 1.2, colour, Stroke(INK, 1), share)
    drawn.rect(2.6, 0.1, 0.3, 0.3, "#93404a")
    return drawn.drawing()


@pytest.mark.parametrize(
    "drawing",
    [VEIL, canvas(("#ffffff", 0.72)), canvas(("#ffffff", 0.94), ("#b9c7c6", 0.5))],
    ids=["a frame with a hole", "one area", "two areas on each other"],
)
def test_an_opaque_drawing_looks_the_same(drawing: Drawing) -> None:
    clear = [item for item in opaque(drawing).items if isinstance(item, Path) and item.opacity < 1]
    assert not clear
    assert alike(printed(opaque(drawing)), pictured(drawing))


def test_the_comparison_can_fail() -> None:
    bare = replace(VEIL, items=tuple(_less(i) for i in VEIL.items))
    assert not alike(printed(opaque(VEIL)), pictured(bare))


def _less(item: Primitive) -> Primitive:
    return replace(item, opacity=0.5) if isinstance(item, Path) and item.opacity < 1 else item


def test_an_opaque_drawing_is_left_alone() -> None:
    assert opaque(canvas()) == canvas()


def test_lines_of_a_veil_stay() -> None:
    drawn = opaque(canvas(("#ffffff", 0.5)))
    edges = [p for p in drawn.items if isinstance(p, Path) and p.stroke == Stroke(INK, 1)]
    assert len(edges) == 1 and edges[0].fill is None


def test_bleed_is_the_trades() -> None:
    """1/8 in is 9 pt, 3 mm is 8.504 pt: common practice, no source."""
    assert bleed_of(LETTER) == 9.0
    assert bleed_of(A4) == pytest.approx(8.504, abs=0.001)


def test_press_pages_are_the_booklets_pages() -> None:
    made = pressed("letter")
    assert made.typeset.name == "press-letter"
    assert made.typeset.sheet_pages == made.booklet.sheet_pages
    assert made.typeset.html == made.booklet.html
