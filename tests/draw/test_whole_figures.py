"""Nothing in a figure is cut off: no ink lies beyond what is printed of it.

Each figure of the demos is drawn once more by CairoSVG with room around it. Half an inch is
more than any stroke or letter that stands at an edge; a pixel in which ink covers less than a
tenth is the softened edge of what lies inside.
"""

from __future__ import annotations

import io
import re

import cairosvg
import numpy as np
import pytest
from demos import demo
from PIL import Image

from publish import draw
from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.style import Stroke
from publish.model.book import LETTER
from publish.model.words import FigureSpec

ROOM = 36.0
"""Points around a figure."""
BOX = re.compile(
    r'width="[\d.]+(?:in|mm)" height="[\d.]+(?:in|mm)" '
    r'viewBox="([-\d.]+) ([-\d.]+) ([\d.]+) ([\d.]+)"'
)


def beyond(svg: str) -> int:
    """Return how many pixels with ink lie outside an SVG's own view box, at 72 to the inch."""
    found = BOX.search(svg)
    assert found is not None
    left, top, wide, high = map(float, found.groups())
    sides = wide + 2 * ROOM, high + 2 * ROOM
    larger = f'width="{sides[0]}" height="{sides[1]}" '
    larger += f'viewBox="{left - ROOM} {top - ROOM} {sides[0]} {sides[1]}"'
    plain = re.sub(r"<(image|text)[^>]*?(/>|>[^<]*</text>)", "", svg.replace(found[0], larger, 1))
    image = Image.open(io.BytesIO(cairosvg.svg2png(plain.encode())))
    ink = np.asarray(image)[:, :, 3] > 25
    ink[int(ROOM) : int(np.ceil(ROOM + high)), int(ROOM) : int(np.ceil(ROOM + wide))] = False
    return int(ink.sum())


MORE = pytest.mark.thorough


@pytest.mark.parametrize(
    "name",
    [
        "samphire",
        "heronry",
        pytest.param("towpath", marks=MORE),
        pytest.param("millrace", marks=MORE),
        pytest.param("lantern", marks=MORE),
    ],
)
def test_no_figure_of_a_demo_is_cut_off(name: str) -> None:
    work = demo(name)
    assert work.manual is not None
    made = (work.pattern, work.sizes, work.drafts, work.plans, work.manual)
    artwork, notes = draw.draw(*made, LETTER)
    assert notes == ()
    found = {key: beyond(f.svg) for key, f in artwork.figures.items()}
    assert len(found) > 10
    assert {key: pixels for key, pixels in found.items() if pixels} == {}


def test_a_line_at_the_edge_is_printed_with_all_of_its_stroke() -> None:
    canvas = Canvas(1, 1)
    canvas.rect(0, 0, 1, 1, None, Stroke("#000000", 6.0))
    figure = canvas.figure(FigureSpec("edge", "edge", None), "An edge")
    assert beyond(figure.svg) == 0
    assert figure.width == pytest.approx(1 + 6 / 72)
    assert beyond(canvas.svg("An edge", (0, 0, 72, 72))) > 100
