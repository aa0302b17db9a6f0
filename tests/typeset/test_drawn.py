"""Recorded drawings on the page: they look as their SVG does, and their words can be read."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pypdfium2
from drawn_pages import alike, page, pictured, printed

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.style import CUT, INK, QUILTING, Stroke
from publish.model.drawing import Drawing, Lettering, Path


def drawn(see_through: float = 0.4) -> Drawing:
    """Return a drawing with every kind of primitive, frame and line."""
    canvas = Canvas(4, 3)
    canvas.rect(0.2, 0.2, 3.6, 2.6, "#dfd0b2", Stroke(INK, 1))
    leaning = canvas.frame(2, 1.5, 0.8, turn=30)
    leaning.rect(-1, -0.5, 2, 1, "#2f6152", CUT)
    canvas.circle((1, 1), 30, "#93404a", Stroke("#000000", 2))
    canvas.polyline([(0.5, 2.5), (2, 2.2), (3.5, 2.6)], QUILTING)
    canvas.rect(1.4, 0.6, 1.6, 1.6, "#3f5a3c", opacity=see_through)
    canvas.text((0.4, 0.6), "Reed mace 17½ in", 12, "bold")
    canvas.text((3.4, 1.5), "side to side", 11, "italic", "middle", angle=90)
    canvas.text((2, 2.7), "unfold first", 9, anchor="middle", halo="#ffffff")
    return canvas.drawing((0, 0, 4 * 72, 3 * 72))


def test_a_page_shows_what_the_svg_shows() -> None:
    assert alike(printed(drawn()), pictured(drawn()), 0.02)


def test_a_window_shows_its_part() -> None:
    part = replace(drawn(), window=(36.0, 18.0, 144.0, 108.0))
    assert alike(printed(part), pictured(part), 0.05)


def test_the_comparison_can_fail() -> None:
    page_ = printed(drawn())
    assert not alike(page_, pictured(drawn(0.9)), 0.05)
    bare = replace(drawn(), items=tuple(i for i in drawn().items if not isinstance(i, Path)))
    assert not alike(page_, pictured(bare), 0.05)


def test_lines_of_text_stay_whole() -> None:
    """A reader that searches or copies finds each label in one piece, in its own words."""
    text = pypdfium2.PdfDocument(page(drawn()))[0].get_textpage().get_text_bounded()
    words = {i.text for i in drawn().items if isinstance(i, Lettering)}
    assert words == {"Reed mace 17½ in", "side to side", "unfold first"}
    assert all(w in " ".join(text.split()) for w in words), text


def test_letters_stand_where_they_were_measured() -> None:
    """The box that a label was given room by holds its ink, and no more than its ink."""
    canvas = Canvas(3, 1)
    canvas.text((0.5, 0.5), "AVAWATA 10½", 20)
    left, _, right, _ = canvas.extent
    ink = np.nonzero((printed(canvas.drawing()) < 128).any(axis=(0, 2)))[0] / 4
    assert left <= ink[0] <= left + 2 and right - 3 <= ink[-1] <= right + 0.5
