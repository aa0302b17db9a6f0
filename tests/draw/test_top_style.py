"""Colours that read: WCAG rows, labels on any fabric, accents on the page.

Contrast rows: #777777 on white 4.48 (D. MacDonald, WCAG working group, threshold colours,
2016) and #595959 on white 7.0 (auditbuffet.com, AA contrast); black on white 21 (MathWorks
file exchange quoting WCAG 2.0). AA asks 4.5 of ordinary text.
"""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import Polygon
from shapely.geometry.base import BaseGeometry
from top_figures import BY_KEY, CONTEXT, Element, elements, figure, rings, text_box

from publish.draw.canvas import style
from publish.draw.canvas.letters import (
    Labels,
    text_width,
    wrap,
)
from publish.surd import Surd

COLOURS = st.integers(0, 0xFFFFFF).map(lambda n: f"#{n:06x}")


@pytest.mark.parametrize(("grey", "ratio"), [("#777777", 4.48), ("#595959", 7.0), ("#000000", 21)])
def test_contrast_on_white(grey: str, ratio: float) -> None:
    assert style.contrast(grey, "#ffffff") == pytest.approx(ratio, abs=0.005)
    assert style.contrast("#ffffff", grey) == style.contrast(grey, "#ffffff")


def test_no_rounding_up_to_the_threshold() -> None:
    assert style.contrast("#777777", "#ffffff") < style.READABLE


@given(COLOURS)
def test_a_label_reads_on_any_fabric(fabric: str) -> None:
    assert style.contrast(style.readable_on(fabric), fabric) >= 4.5


@given(st.lists(COLOURS, max_size=6))
def test_accents_read_on_the_page(fabrics: list[str]) -> None:
    palette = style.palette_of(fabrics)
    for colour in (palette.accent, palette.second):
        assert style.contrast(colour, "#ffffff") >= 4.5


@pytest.mark.parametrize("key", sorted(BY_KEY))
def test_words_read_on_what_lies_under_them(key: str) -> None:
    """Each line of text stands on the last filled shape that holds its middle."""
    shapes: list[tuple[BaseGeometry, str]] = []
    for e in elements(figure(key).svg):
        if e.tag == "path" and e.values.get("fill", "none") != "none":
            if "fill-opacity" not in e.values:
                shapes += [(ring, e.values["fill"]) for ring in _solid(e)]
        elif e.tag == "circle" and e.values.get("fill", "none") != "none":
            x, y, r = e.number("cx"), e.number("cy"), e.number("r")
            shapes.append(
                (
                    Polygon([(x - r, y - r), (x + r, y - r), (x + r, y + r), (x - r, y + r)]),
                    e.values["fill"],
                )
            )
        elif e.tag == "text":
            middle = text_box(e).centroid
            under = [colour for ring, colour in shapes if ring.contains(middle)]
            ground = under[-1] if under else "#ffffff"
            assert style.contrast(e.values["fill"], ground) >= 4.5, (e.text, ground)


def _solid(path: Element) -> list[BaseGeometry]:
    from_rings = [Polygon(r) for r in rings(path) if len(r) > 2]
    if not from_rings:
        return []
    whole: BaseGeometry = from_rings[0]
    for ring in from_rings[1:]:
        whole = whole.symmetric_difference(ring)
    return [whole]


def test_the_words_test_sees_fabric() -> None:
    """A dark label on a dark fabric would be found."""
    assert style.contrast(style.INK, CONTEXT.colour("moss")) < 4.5


@pytest.mark.parametrize(
    ("value", "text"),
    [("5/2", "2½"), ("3/8", "⅜"), ("18", "18"), ("0", "0"), ("51/16", "3³⁄₁₆"), ("-1/4", "−¼")],
)
def test_numbers_in_labels(value: str, text: str) -> None:
    assert Labels().number(Fraction(value)) == text


def test_lengths_in_labels() -> None:
    assert Labels().length(Fraction(37, 2)) == "18½ in"
    assert Labels().buy(Fraction(99, 2)) == "1⅜ yd"
    diagonal = Surd(Fraction(0), Fraction(18))  # 18√2 = 25.4558..., to the nearest 1/8: 25 1/2
    assert Labels().length(diagonal) == "about 25½ in"
    assert Labels().size(diagonal, diagonal) == "about 25½ in square"
    assert Labels().size(Fraction(12), Fraction(18)) == "12 × 18 in"
    assert Labels().size(Fraction(37, 2), Fraction(37, 2)) == "18½ in square"


def test_wrapped_lines_are_no_wider_than_asked() -> None:
    lines = wrap("borders, binding and pillow back", 7.5, 80)
    assert len(lines) > 1 and " ".join(lines) == "borders, binding and pillow back"
    assert all(text_width(line, 7.5) <= 80 for line in lines)
