"""Whether patches fill a grid, decided exactly: against shapely, and against itself.

Outside this project: shapely (GEOS) for unions, validity and distances of outlines.
"""

from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely import union_all
from shapely.geometry import LineString, Point, Polygon

from publish.read.cover import misfits
from publish.read.crossing import crossing
from publish.read.curves import Edge, area, cross, edges, leaves

F = Fraction
WIDE, HIGH = 6, 4


@st.composite
def cut_rectangles(draw):
    """Return a grid cut by straight lines into convex pieces, clockwise, exactly."""
    pieces = [((F(0), F(0)), (F(WIDE), F(0)), (F(WIDE), F(HIGH)), (F(0), F(HIGH)))]
    for _ in range(draw(st.integers(0, 5))):
        piece = pieces.pop(draw(st.integers(0, len(pieces) - 1)))
        sides = draw(st.lists(st.integers(0, len(piece) - 1), min_size=2, max_size=2, unique=True))
        one, two = sorted(sides)
        share = draw(st.fractions(F(1, 8), F(7, 8), max_denominator=12))
        ring = [*piece, piece[0]]
        cuts = [
            tuple(a + (b - a) * share for a, b in zip(ring[n], ring[n + 1], strict=True))
            for n in (one, two)
        ]
        pieces.append((*piece[: one + 1], cuts[0], cuts[1], *piece[two + 1 :]))
        pieces.append((cuts[0], *piece[one + 1 : two + 1], cuts[1]))
    return pieces


@given(cut_rectangles())
def test_a_rectangle_that_is_cut_up_fits_together(pieces):
    assert misfits([edges(p, ()) for p in pieces], WIDE, HIGH) == []
    assert all(crossing(edges(p, ())) is None for p in pieces)
    assert sum(area(edges(p, ())) for p in pieces) == WIDE * HIGH


@given(cut_rectangles(), st.data())
def test_the_slightest_shift_of_a_corner_is_seen(pieces, data):
    number = data.draw(st.integers(0, len(pieces) - 1))
    ring = list(pieces[number])
    corner = data.draw(st.integers(0, len(ring) - 1))
    x, y = ring[corner]
    ring[corner] = (x + F(1, 10**12), y + F(1, 10**13))
    before, after = ring[corner - 1], ring[(corner + 1) % len(ring)]
    assume(cross(before, after, (x, y)) != 0)
    pieces = [*pieces[:number], tuple(ring), *pieces[number + 1 :]]
    assert misfits([edges(p, ()) for p in pieces], WIDE, HIGH) != []


@given(cut_rectangles(), st.data())
def test_a_patch_too_few_or_too_many_is_seen(pieces, data):
    number = data.draw(st.integers(0, len(pieces) - 1))
    around = [edges(p, ()) for p in pieces]
    assert misfits([*around[:number], *around[number + 1 :]], WIDE, HIGH) != []
    assert misfits([*around, around[number]], WIDE, HIGH) != []


def turn(t):
    """Return a point of the unit circle for any rational number (half-angle formulas)."""
    return (1 - t * t) / (1 + t * t), 2 * t / (1 + t * t)


def on_circle(t, radius=3, centre=(3, 3)):
    x, y = turn(t)
    return centre[0] + radius * x, centre[1] + radius * y


steps = st.lists(st.fractions(-5, 5, max_denominator=9), min_size=6, max_size=6, unique=True)


@given(steps)
def test_arcs_cancel_however_they_are_divided(found):
    # Anticlockwise in t on a page with y downwards is clockwise on the page.
    a, b, c, d, e, f = (on_circle(t) for t in sorted(found))
    disc = [Edge(a, c, b), Edge(c, e, d), Edge(e, a, f)]
    outer = [Edge(a, e, f), Edge(e, d), Edge(d, c), Edge(c, a, b)]
    outer[1:3] = [
        Edge(e, d, on_circle(middle(found, 3, 4))),
        Edge(d, c, on_circle(middle(found, 2, 3))),
    ]
    # The disc inside a hole in the plane: what is left over is nothing.
    assert misfits_alone([disc, outer]) == set()
    assert area(disc) == pytest.approx(-area(outer))


def middle(found, one, two):
    values = sorted(found)
    return (values[one] + values[two]) / 2


def misfits_alone(patches):
    """Return the points that do not cancel, a 6 x 6 square's own outline aside."""
    square = [
        Edge(*e)
        for e in pairwise([(F(0), F(0)), (F(6), F(0)), (F(6), F(6)), (F(0), F(6)), (F(0), F(0))])
    ]
    return set(misfits([*patches, square], 6, 6))


def test_a_circle_walked_twice_does_not_cancel():
    a, b, c, d = (on_circle(F(t)) for t in (-3, 0, 1, 3))
    disc = [Edge(a, c, b), Edge(c, a, d)]
    back = [Edge(a, c, d), Edge(c, a, b)]
    assert misfits_alone([disc, back]) == set()
    assert misfits_alone([disc]) != set()
    assert misfits_alone([disc, disc, back]) != set()


def test_arcs_of_nearly_the_same_circle_are_told_apart():
    corner = edges(((F(0), F(0)), (F(3), F(0)), (F(0), F(3))), ((1, (F(9, 5), F(12, 5))),))
    rest = [(F(3), F(0)), (F(4), F(0)), (F(4), F(4)), (F(0), F(4)), (F(0), F(3))]
    same, other = (F(12, 5), F(9, 5)), (F(12, 5), F(9, 5) + F(1, 10**15))
    assert misfits([corner, edges(tuple(rest), ((4, same),))], 4, 4) == []
    assert misfits([corner, edges(tuple(rest), ((4, other),))], 4, 4) == [(0, 3), (3, 0)]


points = st.tuples(*[st.integers(0, 6).map(F)] * 2)


@given(st.lists(points, min_size=3, max_size=7, unique=True))
def test_crossings_of_polygons_agree_with_shapely(ring):
    around = edges(tuple(ring), ())
    flat = all(cross(ring[0], ring[1], p) == 0 for p in ring)
    valid = not flat and Polygon([(float(x), float(y)) for x, y in ring]).is_valid
    assert (crossing(around) is None) == valid or flat


@given(st.lists(points, min_size=3, max_size=5, unique=True), points)
def test_crossings_of_curved_shapes_agree_with_shapely(ring, through):
    assume(cross(ring[0], through, ring[1]) != 0)
    around = edges(tuple(ring), ((0, through),))
    drawn = Polygon([p for edge in around for p in edge.drawn_out()])
    met = crossing(around)
    if met is None:
        # Drawn out in steps, a shape that all but touches itself may seem to.
        assert drawn.is_valid or drawn.buffer(0).area == pytest.approx(
            abs(float(area(around))), abs=1e-2
        )
        assert drawn.area == pytest.approx(abs(float(area(around))), rel=1e-3, abs=1e-3)
    else:
        lines = [LineString([*e.drawn_out(), tuple(map(float, e.end))]) for e in around]
        assert sum(line.distance(Point(met)) < 1e-3 for line in lines) >= 2, "two edges meet there"


@given(st.lists(points, min_size=2, max_size=2, unique=True), points)
def test_leaving_the_grid_agrees_with_the_drawing(ends, through):
    assume(cross(ends[0], through, ends[1]) != 0)
    edge = Edge(ends[0], ends[1], through)
    drawn = edge.drawn_out()
    out = any(x < -1e-3 or x > 6.001 or y < -1e-3 or y > 6.001 for x, y in drawn)
    inside = all(1e-3 <= x <= 5.999 and 1e-3 <= y <= 5.999 for x, y in drawn[1:])
    if out:
        assert leaves(edge, 6, 6)
    if inside:
        assert not leaves(edge, 6, 6)


@given(st.lists(points, min_size=2, max_size=2, unique=True), points)
def test_every_drawn_point_is_on_the_circle_through_the_three(ends, through):
    assume(cross(ends[0], through, ends[1]) != 0)
    edge = Edge(ends[0], ends[1], through)
    (x, y), square = edge.circle
    for u, v in (edge.start, edge.end, through):
        assert (u - x) ** 2 + (v - y) ** 2 == square
    for u, v in edge.drawn_out():
        assert (u - float(x)) ** 2 + (v - float(y)) ** 2 == pytest.approx(float(square))
    assert edge.holds(through)
    drawn = Polygon([*edge.drawn_out(), (float(edge.end[0]), float(edge.end[1]))])
    assert drawn.exterior.distance(Polygon([through, ends[0], ends[1]]).exterior) < 1e-6


def test_a_union_is_what_the_verdict_says():
    half = F(1, 2)
    left = ((F(0), F(0)), (half, F(0)), (half, F(1)), (F(0), F(1)))
    right = ((half, F(0)), (F(1), F(0)), (F(1), F(1)), (half, F(1)))
    assert misfits([edges(left, ()), edges(right, ())], 1, 1) == []
    assert union_all([Polygon(left), Polygon(right)]).area == 1
