"""Every figure can be read at its printed size: nothing clipped, too small or overlaid.

Text boxes are measured with Source Sans Pro's own advance widths, apart from the code
under test. The floor of 7 pt is this project's own rule.
"""

import re
from xml.etree import ElementTree

import pytest
from top_figures import BY_KEY, figure, illegible, texts, view_box

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.style import FINISHED

KEYS = sorted(BY_KEY)


@pytest.mark.parametrize("key", KEYS)
def test_nothing_is_clipped_or_overlaid(key: str) -> None:
    assert illegible(figure(key).svg) == []


def test_what_is_clipped_or_overlaid_is_found() -> None:
    canvas = Canvas(1, 1)
    canvas.text((0.9, 0.5), "runs out")
    canvas.text((0.1, 0.2), "first")
    canvas.text((0.2, 0.2), "second")
    canvas.line((0.5, 0.9), (0.5, 1.1), FINISHED)
    faults = illegible(canvas.svg())
    assert [f.split(":")[0] for f in faults] == ["text clipped", "shape clipped", "words overlap"]


@pytest.mark.parametrize("key", KEYS)
def test_no_text_is_below_seven_points(key: str) -> None:
    sizes = [e.number("font-size") for e in texts(figure(key).svg)]
    assert all(size >= 7 for size in sizes), sizes
    families = {e.values["font-family"] for e in texts(figure(key).svg)}
    assert families <= {"Source Sans Pro"}


@pytest.mark.parametrize("key", KEYS)
def test_printed_width_fits_the_text_column(key: str) -> None:
    drawn = figure(key)
    left, top, right, bottom = view_box(drawn.svg)
    assert (right - left) / 72 == pytest.approx(drawn.width, abs=1e-3)
    assert (bottom - top) / 72 == pytest.approx(drawn.height, abs=1e-3)
    assert drawn.width <= 6.5 and drawn.height <= 8.0


@pytest.mark.parametrize("key", KEYS)
def test_figures_can_stand_in_one_document(key: str) -> None:
    """No ids to collide, no styles or classes to leak, nothing fetched."""
    svg = figure(key).svg
    for node in ElementTree.fromstring(svg).iter():
        names = set(node.attrib)
        assert not names & {"id", "class", "style", "clip-path", "mask", "filter", "href"}, names
    assert "url(" not in svg and "<style" not in svg
    assert not re.search(r"\d\.\d{3}", svg.split(">", 1)[1]), "coordinates finer than 1/100 pt"


@pytest.mark.parametrize("key", KEYS)
def test_a_figure_is_small(key: str) -> None:
    assert len(figure(key).svg) < 120_000


@pytest.mark.parametrize("key", KEYS)
def test_the_caption_is_the_manuals(key: str) -> None:
    assert figure(key).caption == BY_KEY[key].caption
    assert figure(key).key == key
