"""Several templates on one sheet: apart, inside, upright or turned by quarters, and few sheets.

That outlines are apart is measured on the outlines themselves, not on the raster on which
they were laid.
"""

from __future__ import annotations

import math
import random
from itertools import combinations

import pytest
from shapely.affinity import rotate
from shapely.geometry import Polygon, box
from shapely.ops import unary_union

from publish.draw.sheets.packing import Outline, Piece, outlines, pack, repeated, windows_of
from publish.draw.sheets.raster import APART

WINDOW = (7.75, 8.75)


def piece(name, shape, rows=1, columns=1):
    ways = tuple(Outline(rotate(shape, turn, origin=(0, 0))) for turn in (0, 90, 180, 270))
    return Piece(name, ways, rows, columns)


def rough(rng):
    """Return a shape with up to nine corners round its middle."""
    corners = sorted(rng.uniform(0, 2 * math.pi) for _ in range(rng.randint(3, 9)))
    reach = rng.uniform(0.4, 2.6)
    shape = Polygon(
        [(reach * math.cos(a) * rng.uniform(0.4, 1), reach * math.sin(a)) for a in corners]
    )
    return shape.buffer(0.1)


def proved(nests, pieces):
    """Assert that every piece lies once, inside its sheets, and apart from all others."""
    assert sorted(p.name for nest in nests for p in nest.places) == [p.name for p in pieces]
    for nest in nests:
        laid = outlines(nest, pieces)
        windows = windows_of(nest.rows, nest.columns, WINDOW)
        sheets = unary_union([w.area for w in windows]).buffer(1e-6)
        for place, shape in zip(nest.places, laid, strict=True):
            assert sheets.covers(shape)
            if not pieces[place.name].joined:
                assert any(w.area.buffer(1e-6).covers(shape) for w in windows)
        for one, other in combinations(laid, 2):
            assert one.distance(other) >= APART - 1e-6


@pytest.mark.parametrize("seed", range(12))
def test_shapes_of_any_outline_lie_apart_and_inside(seed):
    rng = random.Random(seed)
    pieces = [piece(n, rough(rng)) for n in range(rng.randint(2, 9))]
    nests = pack(pieces, WINDOW)
    proved(nests, pieces)
    assert nests == pack(pieces, WINDOW)


@pytest.mark.parametrize(
    ("sides", "sheets"),
    [
        ([(3.7, 4.2)] * 4, 1),  # two by two: 7.4 and 8.4 in, 0.15 in between them
        ([(3.7, 4.2)] * 5, 2),
        ([(7.5, 2.7)] * 3, 1),
        ([(2.7, 7.5)] * 3, 1),  # only if they are turned
        ([(7.7, 8.7), (1, 1)], 2),
    ],
)
def test_rectangles_take_as_few_sheets_as_can_be(sides, sheets):
    pieces = [piece(n, box(0, 0, w, h)) for n, (w, h) in enumerate(sides)]
    nests = pack(pieces, WINDOW)
    proved(nests, pieces)
    assert len(nests) == sheets


def test_two_triangles_share_a_sheet_that_their_boxes_would_not():
    """Right triangles of 7 in: each half of a square, so that two of their boxes need two."""
    shape = Polygon([(0, 0), (7, 0), (0, 7)])
    pieces = [piece(n, shape) for n in range(2)]
    nests = pack(pieces, WINDOW)
    proved(nests, pieces)
    assert len(nests) == 1


def test_a_small_piece_lies_beside_a_long_one_and_crosses_no_join():
    """13 in take two sheets of 8 3/4 in, joined; what lies beside is on one of them."""
    pieces = [
        piece(0, box(0, 0, 3, 13), 2, 1),
        piece(1, box(0, 0, 4, 6)),
        piece(2, box(0, 0, 4, 6)),
    ]
    nests = pack(pieces, WINDOW)
    proved(nests, pieces)
    assert len(nests) == 1 and (nests[0].rows, nests[0].columns) == (2, 1)


def test_a_piece_as_large_as_its_sheet_lies_alone_in_the_middle():
    pieces = [piece(0, box(0, 0, 7.75, 8.75))]
    (nest,) = pack(pieces, WINDOW)
    proved([nest], pieces)


def test_words_beside_a_piece_are_not_cut_by_a_join():
    words = box(3.2, 8.3, 5.2, 8.6)
    area = unary_union([box(0, 0, 3, 13), words])
    long = Piece(0, (Outline(area, words),), 2, 1)
    (nest,) = pack([long, piece(1, box(0, 0, 1, 1))], WINDOW)
    place = next(p for p in nest.places if p.name == 0)
    windows = windows_of(2, 1, WINDOW)
    bottom, top = 8.6 + place.y, 8.3 + place.y
    assert bottom <= windows[1].box[1] or top >= windows[0].box[3]


def test_a_sheet_is_filled_with_copies_up_to_what_is_needed():
    pieces = [piece(0, box(0, 0, 3.4, 2.5))]
    (nest,) = pack(pieces, WINDOW)
    for most, held in ((2, 2), (40, 6)):  # 2 x 3 of them fit
        filled = repeated(nest, pieces, WINDOW, most)
        assert len(filled.places) == held
        for one, other in combinations(outlines(filled, pieces), 2):
            assert one.distance(other) >= APART - 1e-6
