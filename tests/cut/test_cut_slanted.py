"""Shapes with slanting ends, cut from strips across the fabric.

Rotary cutting part 7, Chris and Barbara quilts, 2015: 45 degree diamonds from a strip of
their height and two seams. Equilateral diamonds thread, quiltingboard: the advance along
the strip is the distance between two cuts over the sine of the angle.
"""

from __future__ import annotations

from fractions import Fraction
from math import sqrt

import pytest
from patch_cases import joined, leaf, patch, planned

from publish.words import english

F = Fraction
HEIGHT = F(2)


def row(count, top, slant):
    """Return parallelograms with level sides `top` long, their right ends `slant` lower in
    all, in a row."""
    shapes = [
        patch(
            f"d{i}",
            (top * i, 0),
            (top * i + top, 0),
            (top * i + top + slant, HEIGHT),
            (top * i + slant, HEIGHT),
            spec=0,
        )
        for i in range(count)
    ]
    return joined("row", "slant", *map(leaf, shapes))


@pytest.mark.parametrize(("count", "strips", "each"), [(1, 1, 1), (10, 1, 10), (11, 2, 6)])
def test_parallelograms_of_45_degrees_share_the_slant_of_a_strip(count, strips, each):
    plan = planned(row(count, F(3), HEIGHT))
    (piece,) = plan.pieces
    # 3 / √2 + 1/2 = 2.621, up to 2 5/8 in apart, 3.712 in along the strip.
    assert (piece.shape, piece.angle, piece.apart) == ("parallelogram", 45, F(21, 8))
    assert (piece.count, piece.yields) == (strips, each)
    needed = each * 2.625 * sqrt(2) + 2.5
    assert piece.length == F(5, 2)
    assert needed <= piece.width < needed + 0.125
    assert piece.width <= 40
    assert english(piece.note).startswith(f"cut into {each} at 45°, 2 5/8 in (6.7 cm) apart")
    assert piece.finished_width is None


def test_parallelograms_that_lean_both_ways_are_two_pieces():
    left = patch("a", (0, 0), (3, 0), (5, 2), (2, 2), spec=0)
    right = patch("b", (5, 2), (8, 2), (6, 4), (3, 4), spec=1)
    plan = planned(joined("row", "slant", leaf(left), leaf(right)))
    assert sorted(english(p.called) for p in plan.pieces) == [
        "parallelogram leaning left",
        "parallelogram leaning right",
    ]


def test_equilateral_triangles_alternate_along_a_strip():
    """3 in high: strips of 3 3/4 in; each triangle takes half its cut base of 4.330 in."""
    half = F(1732051, 10**6)
    shapes = []
    for i in range(9):
        x, up = half * i, i % 2 == 0
        low, high = (F(3), F(0)) if up else (F(0), F(3))
        ring = [(x, low), (x + half, high), (x + 2 * half, low)]
        shapes.append(patch(f"t{i}", *(ring if up else ring[::-1]), spec=i))
    plan = planned(joined("row", "slant", *map(leaf, shapes)))
    (piece,) = plan.pieces
    assert (piece.shape, piece.count, piece.yields) == ("equilateral triangle", 1, 9)
    assert piece.length == F(15, 4)
    needed = (9 + 1) * 3.75 / sqrt(3)
    assert needed <= piece.width < needed + 0.125
    assert "less than 0.005 in" in english(piece.note)
