"""Arcs between exact corners, against the circle of radius 5 and its whole points."""

from __future__ import annotations

import math
from fractions import Fraction
from itertools import pairwise

import pytest

from publish.arcs import CHORD, arc_length, circle_through, drawn_out, outline, swept


def at(x: int, y: int) -> tuple[Fraction, Fraction]:
    return Fraction(x), Fraction(y)


EAST, SOUTH_EAST, SOUTH, WEST = at(5, 0), at(3, 4), at(0, 5), at(-5, 0)


def test_the_circle_is_exact() -> None:
    assert circle_through(EAST, SOUTH_EAST, SOUTH) == (0, 0, 25)


def test_points_lie_on_the_circle_and_lines_between_them_near_it() -> None:
    points = [*drawn_out((EAST, SOUTH, SOUTH_EAST)), (0.0, 5.0)]
    assert all(math.hypot(x, y) == pytest.approx(5) for x, y in points)
    for (ax, ay), (bx, by) in pairwise(points):
        assert 5 - math.hypot((ax + bx) / 2, (ay + by) / 2) <= CHORD


def test_both_sides_are_given_the_same_points() -> None:
    one = drawn_out((EAST, SOUTH, SOUTH_EAST))[1:]
    other = drawn_out((SOUTH, EAST, SOUTH_EAST))[1:]
    assert one == other[::-1]


@pytest.mark.parametrize(("through", "quarters"), [(SOUTH_EAST, 1), (WEST, -3)])
def test_an_arc_runs_through_its_point(through: tuple[Fraction, Fraction], quarters: int) -> None:
    assert swept(EAST, through, SOUTH)[4] == pytest.approx(quarters * math.pi / 2)
    assert arc_length(EAST, through, SOUTH) == pytest.approx(5 * abs(quarters) * math.pi / 2)


def test_a_quarter_disc_has_its_area() -> None:
    disc = outline((at(0, 0), EAST, SOUTH), ((1, SOUTH_EAST),))
    assert disc.area == pytest.approx(25 * math.pi / 4, rel=1e-3)
