"""The canvas: same calls same bytes, exact scale, nothing that can leak or collide."""

from itertools import pairwise
from xml.etree import ElementTree

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import LineString, MultiLineString, Point, Polygon, box
from top_figures import elements, filled, rings, text_box, view_box

from publish.draw.canvas.canvas import Canvas
from publish.draw.canvas.marks import arrow, bend, dimension, disc
from publish.draw.canvas.style import FINISHED, INK, QUILTING, Stroke, wrong_side
from publish.draw.canvas.svg import number
from publish.draw.cloth import batting, fabric, hatch, sheet
from publish.model.words import FigureSpec

SPEC = FigureSpec("sample", "sample", caption="A *sample*.")


def sample() -> Canvas:
    canvas = Canvas(3, 2)
    fabric(canvas, sheet(0.1, 0.1, 1, 1), "#2f6152", "wrong")
    batting(canvas, Point(2, 1).buffer(0.5))
    dimension(canvas, (0.1, 1.2), (1.1, 1.2), "1 in", -9)
    disc(canvas, (2, 1), "4")
    arrow(canvas, bend((0.2, 0.2), (1, 0.4), 0.2))
    return canvas


def test_the_same_calls_give_the_same_bytes() -> None:
    assert sample().svg("alt") == sample().svg("alt")


def test_one_inch_is_72_units() -> None:
    canvas = Canvas(2, 2)
    canvas.rect(0.5, 0.25, 1, 1, INK)
    (square,) = filled(canvas.svg(), INK)
    assert square.bounds == (36, 18, 108, 90)
    root = ElementTree.fromstring(canvas.svg())
    assert root.attrib["width"] == "2.0000in" and root.attrib["viewBox"] == "0 0 144 144"


def test_a_frame_places_scales_turns_and_mirrors() -> None:
    canvas = Canvas(4, 4)
    frame = canvas.frame(1, 1, 0.5, 90)
    assert frame.point((2, 0)) == pytest.approx((72, 144))
    assert frame.point((0, 2)) == pytest.approx((0, 72))
    assert frame.unit == pytest.approx(36)
    mirrored = canvas.frame(1, 1, 0.5, mirror=True)
    assert mirrored.point((1, 1)) == pytest.approx((36, 108))
    inner = frame.frame(2, 0, 2, -90)
    assert inner.point((1, 1)) == pytest.approx((72 + 72, 144 + 72))
    assert frame.page.point((5, 7)) == (5, 7)


@given(st.floats(-0.5, 0.5), st.floats(0.2, 3), st.floats(-360, 360))
def test_geometry_and_points_go_through_a_frame_alike(at: float, scale: float, turn: float) -> None:
    frame = Canvas(4, 4).frame(at, 1, scale, turn)
    moved = frame.to_page(Point(0.7, -0.3))
    assert (moved.x, moved.y) == pytest.approx(frame.point((0.7, -0.3)))


@pytest.mark.parametrize(
    ("value", "text"),
    [(0, "0"), (-0.001, "0"), (1, "1"), (1.5, "1.5"), (2.999, "3"), (10, "10"), (-4.25, "-4.25")],
)
def test_numbers_are_short(value: float, text: str) -> None:
    assert number(value) == text


def _hundredths(point: tuple[float, float]) -> tuple[int, int]:
    return round(point[0] * 100), round(point[1] * 100)


@given(st.lists(st.tuples(st.floats(-400, 400), st.floats(-400, 400)), min_size=3, max_size=30))
def test_a_path_reads_back_within_a_hundredth_of_a_point(points: list) -> None:
    canvas = Canvas(1, 1)
    canvas.page.polyline(points, FINISHED)
    found = [e for e in elements(canvas.svg()) if e.tag == "path"]
    moves = (b for a, b in pairwise(points) if _hundredths(a) != _hundredths(b))
    kept = [points[0], *moves]
    if len(kept) > 1:
        read = rings(found[0])[0]
        assert len(read) == len(kept)
        for (x, y), (u, v) in zip(read, kept, strict=True):
            assert x == pytest.approx(u, abs=0.0051) and y == pytest.approx(v, abs=0.0051)


def test_holes_stay_open() -> None:
    ring = Point(1, 1).buffer(0.8).difference(Point(1, 1).buffer(0.4))
    canvas = Canvas(2, 2)
    canvas.shape(ring, INK, smooth=0)
    (path,) = [e for e in elements(canvas.svg()) if e.tag == "path"]
    outer, inner = (Polygon(r) for r in rings(path))
    assert path.values["fill-rule"] == "evenodd"
    assert (outer.area - inner.area) / 72**2 == pytest.approx(ring.area, abs=1e-3)


def test_curves_are_thinned_to_a_tenth_of_a_point() -> None:
    wheel = Point(0, 0).buffer(0.9, quad_segs=400)
    canvas = Canvas(2, 2)
    frame = canvas.frame(1, 1)
    frame.shape(wheel, INK)
    (drawn,) = filled(canvas.svg(), INK)
    assert len(drawn.exterior.coords) < 120
    assert drawn.exterior.hausdorff_distance(frame.to_page(wheel).exterior) < 0.11


def test_a_hatch_keeps_to_its_shape() -> None:
    shape = Polygon([(0.2, 0.2), (1.8, 0.3), (0.9, 1.7)]).difference(box(0.8, 0.6, 1, 0.8))
    canvas = Canvas(2, 2)
    hatch(canvas, shape, Stroke(INK, 0.3), 3.0)
    (path,) = [e for e in elements(canvas.svg()) if e.tag == "path"]
    page = canvas.to_page(shape).buffer(0.02)
    lines = MultiLineString([LineString(r) for r in rings(path)])
    assert page.contains(lines) and len(rings(path)) > 20


def test_a_wrong_side_is_lighter_and_hatched() -> None:
    canvas = Canvas(2, 2)
    fabric(canvas, sheet(0.2, 0.2, 1, 1), "#93404a", "wrong")
    fills = [e.values["fill"] for e in elements(canvas.svg())]
    assert fills[0] == wrong_side("#93404a") and "#93404a" not in fills
    assert len(fills) == 3


def test_a_quilting_line_is_dotted_without_relying_on_colour() -> None:
    canvas = Canvas(2, 2)
    canvas.line((0, 0), (1, 1), QUILTING)
    (line,) = elements(canvas.svg())
    assert line.values["stroke-dasharray"] == "0.1 1.5"
    assert line.values["stroke-linecap"] == "round"


def test_text_below_seven_points_is_refused() -> None:
    with pytest.raises(ValueError, match="at least 7"):
        Canvas(1, 1).text((0, 0), "too small", 6.9)


@pytest.mark.parametrize("anchor", ["start", "middle", "end"])
@pytest.mark.parametrize("level", ["base", "middle", "top"])
def test_text_is_anchored_where_it_says(anchor: str, level: str) -> None:
    canvas = Canvas(3, 3)
    canvas.text((1.5, 1.5), "12½ in", 9, "semibold", anchor, level)
    (element,) = elements(canvas.svg())
    left, top, right, _ = text_box(element).bounds
    x = {"start": left, "middle": (left + right) / 2, "end": right}[anchor]
    base = element.number("y")
    y = {"base": base, "middle": (base + top) / 2, "top": top}[level]
    assert (x, y) == pytest.approx((108, 108), abs=0.15)


def test_words_are_escaped() -> None:
    canvas = Canvas(2, 2)
    canvas.text((0, 1), "A < B & C")
    root = ElementTree.fromstring(canvas.svg('a "quoted" <alt> & more'))
    assert root.attrib["aria-label"] == 'a "quoted" <alt> & more'
    assert [e.text for e in elements(canvas.svg())] == ["A < B & C"]


def test_a_trimmed_figure_holds_what_was_drawn() -> None:
    canvas = Canvas(2, 9)
    canvas.rect(0.5, 3, 1, 1, INK)
    figure = canvas.figure(SPEC, "alt")
    assert view_box(figure.svg) == pytest.approx((0, 214, 144, 290))
    assert figure.width == 2 and figure.height == pytest.approx(76 / 72)
    assert figure.caption == SPEC.caption and figure.alt == "alt"


def test_neighbours_share_their_attributes() -> None:
    canvas = Canvas(2, 2)
    for i in range(5):
        canvas.line((0, i / 5), (1, i / 5), FINISHED)
    svg = canvas.svg()
    assert svg.count("stroke-width") == 1 and svg.count("<path") == 5
