"""SVG shapes, transforms, fill rules and strokes against areas worked out without us.

References: closed forms (circle, ellipse, Archimedes' parabola), Green's theorem integrated
exactly, fontTools' path parser and area pen, and CairoSVG's picture of the same file.
"""

import io
import math
from itertools import pairwise

import cairosvg
import numpy as np
import pytest
from draft_builders import area_of, codes, read, svg
from fontTools.pens.areaPen import AreaPen
from fontTools.svgLib import parse_path
from hypothesis import given, settings
from hypothesis import strategies as st
from PIL import Image

from publish.draft.curves import arc, bezier
from publish.draft.fill import cloth

TOLERANCE = 1e-4


def path(d: str, more: str = "") -> str:
    return svg(f'<path d="{d}" {more}/>')


def assert_area(found, expected, perimeter=400.0):
    """Flattening moves an outline by at most the tolerance, so an area by that times its
    perimeter."""
    assert abs(found - expected) <= TOLERANCE * perimeter


@pytest.mark.parametrize(
    ("d", "expected"),
    [
        ("M0 0H100V50H0Z", 5000),
        ("m10,10 h20 v20 h-20 z m5,5 v10 h10 v-10 z", 300),
        ("M0 0 10 0 10 10 0 10", 100),  # further pairs are lines, an open path is closed
        ("M0 0L10-5.5.5 20z", 101.375),  # numbers run together
        ("M10 50A40 40 0 1 0 90 50 40 40 0 1 0 10 50Z", math.pi * 1600),
        ("M10 50a40 20 30 1 0 1e-6 0z", math.pi * 800),
        ("M50 10a40 40 0 0180 0a40 40 0 01-80 0", math.pi * 1600),  # flags run together
        ("M0 0Q50 100 100 0Z", 2 / 3 * 100 * 50),  # Archimedes: two thirds of the box
    ],
)
def test_path_commands(tmp_path, d, expected):
    assert_area(area_of(tmp_path, path(d), TOLERANCE).area, expected)


@pytest.mark.parametrize(
    ("short", "long"),
    [
        (
            "M0 0 C10 40 30 40 40 0 S80 -40 90 0 L90 60 L0 60 Z",
            "M0 0 C10 40 30 40 40 0 C50 -40 80 -40 90 0 L90 60 L0 60 Z",
        ),
        ("M0 0 Q10 40 40 0 T80 0 V60 H0 Z", "M0 0 Q10 40 40 0 Q70 -40 80 0 L80 60 L0 60 Z"),
        (
            "M5 5 c10 40 30 40 40 0 s30 -20 40 5 l0 50 -80 0 z",
            "M5 5 C15 45 35 45 45 5 C55 -35 75 -15 85 10 L85 60 L5 60 Z",
        ),
    ],
)
def test_smooth_and_relative_commands(tmp_path, short, long):
    one = area_of(tmp_path, path(short), TOLERANCE)
    two = area_of(tmp_path, path(long), TOLERANCE)
    assert one.symmetric_difference(two).area < 1e-9


@settings(max_examples=30)
@given(st.lists(st.tuples(*[st.integers(0, 100)] * 6), min_size=1, max_size=4))
def test_winding_areas_as_fonttools_measures_them(tmp_path_factory, curves):
    """The area pen adds up signed areas; even-odd and crossings are not its matter, so each
    curve gets a piece of its own, far from the others."""
    folder = tmp_path_factory.mktemp("svg")
    for a, b, c, d, e, f in curves:
        data = f"M0 -200C{a} {b} {c} {d} {e} {f}L300 300L-300 300L-300 -200Z"
        pen = AreaPen()
        parse_path(data, pen)
        drawing, notes = read(folder, path(data))
        assert drawing is not None and not notes
        area, more = cloth(drawing, TOLERANCE)
        if not more:
            assert_area(area.area, abs(pen.value), 2500)


def green(control):
    """Return half the integral of x dy - y dx along a Bezier curve, exactly."""
    control = np.asarray(control, dtype=float)
    degree = len(control) - 1
    t = np.polynomial.Polynomial([0, 1])
    x, y = (
        sum(math.comb(degree, i) * t**i * (1 - t) ** (degree - i) * p for i, p in enumerate(axis))
        for axis in control.T
    )
    whole = (x * y.deriv() - y * x.deriv()).integ()
    return (whole(1) - whole(0)) / 2


@settings(max_examples=60)
@given(st.lists(st.tuples(st.floats(-9, 9), st.floats(-9, 9)), min_size=3, max_size=4))
def test_bezier_area_by_greens_theorem_and_chord_error(control):
    control = np.array(control)
    points = np.vstack([control[:1], bezier(control, 1e-3)])
    found = sum(x * v - u * y for (x, y), (u, v) in pairwise(points)) / 2
    length = np.hypot(*np.diff(control, axis=0).T).sum()
    assert abs(found - green(control)) <= 1e-3 * length + 1e-9
    dense = np.vstack([control[:1], bezier(control, 1e-6)])
    near = [distance_to(p, points) for p in dense[:: max(1, len(dense) // 50)]]
    assert max(near) <= 1.001e-3


def distance_to(point, line):
    """Return how far a point is from a polyline."""
    a, b = line[:-1], line[1:]
    side = b - a
    square = np.maximum((side**2).sum(axis=1), 1e-300)
    share = np.clip(((point - a) * side).sum(axis=1) / square, 0, 1)
    return np.hypot(*(a + share[:, None] * side - point).T).min()


def test_arc_chord_error():
    for radius in (0.01, 1.0, 70.0):
        made = arc(np.zeros(2), np.array([radius, 0]), np.array([0, radius]), 0, math.tau, 0.002)
        chords = np.vstack([made, made[:1]])
        middles = (chords[1:] + chords[:-1]) / 2
        assert (radius - np.hypot(*middles.T)).max() <= 0.002 + 1e-12


SHAPES = {
    "rect": ('<rect x="10" y="10" width="40" height="30"/>', 1200),
    "rounded": ('<rect x="10" y="10" width="40" height="30" rx="5"/>', 1200 - (4 - math.pi) * 25),
    "rx-too-large": ('<rect width="40" height="30" rx="99" ry="99"/>', math.pi * 20 * 15),
    "circle": ('<circle cx="50" cy="50" r="20"/>', math.pi * 400),
    "ellipse": ('<ellipse cx="50" cy="50" rx="20" ry="10"/>', math.pi * 200),
    "polygon": ('<polygon points="0,0 10,0 10,10"/>', 50),
    "polyline": ('<polyline points="0 0 10 0 10 10"/>', 50),
    "line": ('<line x1="10" y1="10" x2="60" y2="10" stroke="red" stroke-width="4"/>', 200),
    "percent": ('<rect width="50%" height="10%"/>', 500),
    "units": ('<rect width="1in" height="25.4mm"/>', 96 * 96),
    "points-and-picas": ('<rect width="72pt" height="6pc"/>', 96 * 96),
    "hidden": (
        '<g display="none"><rect width="90" height="90"/></g><rect width="3" height="3"/>',
        9,
    ),
    "invisible": (
        '<rect width="90" height="90" visibility="hidden"/><rect width="3" height="3"/>',
        9,
    ),
    "no-fill": ('<rect width="90" height="90" fill="none"/><rect width="3" height="3"/>', 9),
    "overlap": ('<rect width="20" height="20"/><rect x="10" width="20" height="20"/>', 600),
    "stroke": ('<path d="M10 10H60" fill="none" stroke="#000" stroke-width="4"/>', 200),
    "square-cap": (
        '<path d="M10 10H60" fill="none" stroke="#000" stroke-width="4" stroke-linecap="square"/>',
        216,
    ),
    "round-cap": (
        '<path d="M10 10H60" fill="none" stroke="#000" stroke-width="4" stroke-linecap="round"/>',
        200 + math.pi * 4,
    ),
    "mitre": (
        '<rect x="10" y="10" width="40" height="30" fill="none" stroke="red" stroke-width="2"/>',
        42 * 32 - 38 * 28,
    ),
    "bevel": (
        '<rect x="10" y="10" width="40" height="30" fill="none" stroke="red" '
        'stroke-width="2" stroke-linejoin="bevel"/>',
        42 * 32 - 38 * 28 - 2,
    ),
    "stretched-stroke": (
        '<path transform="scale(1 3)" d="M10 10H60" fill="none" stroke="red" stroke-width="4"/>',
        600,
    ),
    "filled-and-stroked": ('<rect width="10" height="10" stroke="red" stroke-width="9"/>', 100),
}


@pytest.mark.parametrize("name", SHAPES)
def test_basic_shapes(tmp_path, name):
    text, expected = SHAPES[name]
    assert_area(area_of(tmp_path, svg(text), TOLERANCE).area, expected)


@pytest.mark.parametrize(("rule", "expected"), [("nonzero", 400), ("evenodd", 300)])
def test_fill_rules(tmp_path, rule, expected):
    same_way = "M0 0H20V20H0Z M5 5H15V15H5Z"
    text = path(same_way, f'fill-rule="{rule}"')
    assert_area(area_of(tmp_path, text).area, expected)
    assert_area(area_of(tmp_path, path(same_way, f'style="fill-rule:{rule}"')).area, expected)


def test_nonzero_hole_by_direction(tmp_path):
    assert_area(area_of(tmp_path, path("M0 0H20V20H0Z M5 5V15H15V5Z")).area, 300)


@pytest.mark.parametrize("rule", ["nonzero", "evenodd"])
def test_self_crossing_is_repaired_and_said(tmp_path, rule):
    """A pentagram winds once round its points and twice round its middle, a pentagon."""
    at = [
        (50 + 40 * math.sin(k * 0.8 * math.pi), 50 - 40 * math.cos(k * 0.8 * math.pi))
        for k in range(5)
    ]
    star = "M" + "L".join(f"{x},{y}" for x, y in at) + "Z"
    drawing, _ = read(tmp_path, path(star, f'fill-rule="{rule}"'))
    area, notes = cloth(drawing, TOLERANCE)
    assert codes(notes) == ["D311"] and area.is_valid
    inner = 40 * math.cos(math.radians(72)) / math.cos(math.radians(36))
    whole = 5 * 40 * inner * math.sin(math.radians(36))
    middle = 5 / 2 * inner**2 * math.sin(math.radians(72))
    assert area.area == pytest.approx(whole if rule == "nonzero" else whole - middle)


def picture_area(text: str, side: int = 1200) -> float:
    """Return the painted share of CairoSVG's picture."""
    png = cairosvg.svg2png(bytestring=text.encode(), output_width=side, output_height=side)
    alpha = np.asarray(Image.open(io.BytesIO(png)))[:, :, 3]
    return float(alpha.sum()) / 255 / side**2


PICTURES = {
    "nested-transforms": '<g transform="translate(50 50) rotate(30)"><g transform="scale(.5 .8)">'
    '<rect x="-30" y="-20" width="60" height="40" transform="skewX(20)"/></g></g>',
    "matrix": '<path transform="matrix(.5 .1 -.2 .7 40 20)" d="M0 0C40 0 60 20 50 60S0 90 0 0"/>',
    "use": '<defs><g id="leaf"><ellipse cx="10" cy="5" rx="9" ry="4"/></g></defs>'
    '<use href="#leaf" x="10" y="10"/><use xlink:href="#leaf" transform="translate(60 40) '
    'rotate(50)"/>',
    "symbol": '<symbol id="s" viewBox="0 0 10 10"><circle cx="5" cy="5" r="5"/></symbol>'
    '<use href="#s" x="10" y="20" width="40" height="40"/>',
    "nested-svg": '<svg x="10" y="10" width="60" height="60" viewBox="0 0 20 20">'
    '<rect x="2" y="2" width="10" height="10"/></svg>',
    "nested-meet": '<svg x="10" y="10" width="80" height="40" viewBox="0 0 20 20">'
    '<circle cx="10" cy="10" r="8"/></svg>',
    "stylesheet": "<style>.gone{fill:none} rect.here{fill:#123} #last{display:none}</style>"
    '<rect class="gone" width="90" height="90"/><rect class="here" width="30" height="30"/>'
    '<circle id="last" cx="70" cy="70" r="20"/>',
    "evenodd-star": '<path fill-rule="evenodd" d="M50 5L79 95L3 39H97L21 95Z"/>',
    "nonzero-star": '<path d="M50 5L79 95L3 39H97L21 95Z"/>',
    "arcs": '<path d="M30 40A20 10 40 0 1 70 40A30 20 -20 1 1 30 40"/>',
    "round-join": '<path d="M20 20L80 30L25 70" fill="none" stroke="red" stroke-width="12" '
    'stroke-linejoin="round" stroke-linecap="round"/>',
    "mitres": '<path d="M20 20L80 30L40 70L70 80V95" fill="none" stroke="red" stroke-width="9"/>',
    "mitre-limit": '<path d="M20 20L80 25L20 32" fill="none" stroke="red" stroke-width="6"/>',
    "curve-stroke": '<path d="M15 80C20 10 80 10 85 80" fill="none" stroke="red" '
    'stroke-width="8"/>',
}


@pytest.mark.parametrize("name", PICTURES)
def test_areas_as_cairosvg_paints_them(tmp_path, name):
    text = svg(PICTURES[name], 'viewBox="0 0 100 100" width="100" height="100"')
    drawing, _ = read(tmp_path, text)
    area, _ = cloth(drawing, 1e-3)
    assert area.area / 1e4 == pytest.approx(picture_area(text), abs=3e-4)


def test_stretched_view_box(tmp_path):
    view = 'viewBox="0 0 10 10" width="200" height="100" preserveAspectRatio="none"'
    text = svg('<circle cx="5" cy="5" r="5"/>', view)
    assert_area(area_of(tmp_path, text).area, math.pi * 25 / 2)


def test_element_by_id_and_by_layer_label(tmp_path):
    text = svg(
        '<g xmlns:ink="urn:any" ink:label="Motif" transform="scale(2)"><rect id="small" width="2" '
        'height="2"/></g><rect id="large" width="50" height="50"/>'
    )
    assert area_of(tmp_path, text, element="small").area == pytest.approx(16)
    assert area_of(tmp_path, text, element="Motif").area == pytest.approx(16)
    assert area_of(tmp_path, text, element="large").area == pytest.approx(2500)
    _, notes = read(tmp_path, text, "leaf")
    assert codes(notes) == ["D306"] and "small" in notes[0].expected
