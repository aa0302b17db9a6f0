"""Pages for a print shop: drawings made opaque, and pages that break as the booklet's do.

What an opaque drawing must look like is said by cairo, which draws the see-through one by
alpha compositing and the opaque one by clips and plain colours.
"""

from __future__ import annotations

import io
import re

import cairosvg
import numpy as np
import numpy.typing as npt
import pytest
from PIL import Image
from pressed import VEIL, pressed

from publish.draw.canvas import Canvas
from publish.draw.style import INK, Stroke
from publish.model.book import A4, LETTER
from publish.typeset.for_press import bleed_of, opaque


def seen(svg: str) -> npt.NDArray[np.int_]:
    """Return a drawing on white paper, dot by dot."""
    png = cairosvg.svg2png(svg.encode(), output_width=460, background_color="#ffffff")
    return np.array(Image.open(io.BytesIO(png)).convert("RGB")).astype(int)


def alike(one: str, other: str) -> bool:
    """Return whether two drawings differ nowhere but in the softness of edges."""
    apart = np.abs(seen(one) - seen(other)).max(axis=2)
    return bool((apart > 3).mean() < 0.01 and np.median(apart) == 0)


def canvas(*veils: tuple[str, float]) -> str:
    """Return a drawing of our own vocabulary with areas seen through, one on another."""
    drawn = Canvas(3, 2)
    drawn.rect(0, 0, 3, 2, "#dfd0b2")
    drawn.circle((0.8, 1), 40, "#2f6152", Stroke(INK, 2))
    drawn.line((0, 0), (3, 2), Stroke("#93404a", 3))
    for step, (colour, share) in enumerate(veils):
        x = 0.3 + 0.4 * step
        drawn.rect(x, x, 2, 1.2, colour, Stroke(INK, 1), share)
    drawn.rect(2.6, 0.1, 0.3, 0.3, "#93404a")
    return drawn.svg()


@pytest.mark.parametrize(
    "svg",
    [VEIL, canvas(("#ffffff", 0.72)), canvas(("#ffffff", 0.94), ("#b9c7c6", 0.5))],
    ids=["a frame with a hole", "one area", "two areas on each other"],
)
def test_an_opaque_drawing_looks_the_same(svg: str) -> None:
    made = opaque(svg)
    assert "fill-opacity" in svg and "fill-opacity" not in made
    assert alike(svg, made)


def test_the_comparison_can_fail() -> None:
    assert not alike(VEIL, re.sub(r'fill-opacity="[\d.]+"', "", VEIL))
    assert not alike(VEIL, re.sub(r'fill-opacity="[\d.]+"', 'fill-opacity="0.5"', VEIL))


def test_an_opaque_drawing_is_left_alone() -> None:
    assert opaque(canvas()) == canvas()


def test_lines_and_groups_of_a_veil_stay() -> None:
    group = (
        '<svg xmlns="http://www.w3.org/2000/svg" width="60" height="60" viewBox="0 0 60 60">'
        '<g fill="#2f6152"><path d="M0 0l60 0l0 60l-60 0Z"/></g>'
        '<g fill="#ffffff" fill-opacity="0.5" stroke="#000000" stroke-width="4">'
        '<path d="M10 10l40 0l0 15l-40 0Z"/><path d="M10 35l40 0l0 15l-40 0Z"/></g></svg>'
    )
    assert alike(group, opaque(group))
    assert opaque(group).count('stroke="#000000"') >= 2


def test_bleed_is_the_trades() -> None:
    """1/8 in is 9 pt, 3 mm is 8.504 pt: common practice, no source."""
    assert bleed_of(LETTER) == 9.0
    assert bleed_of(A4) == pytest.approx(8.504, abs=0.001)


def test_press_pages_are_the_booklets_pages() -> None:
    made = pressed("letter")
    assert made.typeset.name == "press-letter"
    assert made.typeset.sheet_pages == made.booklet.sheet_pages
    assert made.typeset.html == made.booklet.html
