"""Units made several at once: squares, counts, what is trimmed, strip sets.

Sources are named beside each figure; grades and addresses stand in the trade reference
that the figures were copied from.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
from patch_cases import joined, leaf, patch, pieces, planned, size

from publish.model.pattern import PillowSpec
from publish.surd import ROOT_2
from publish.words import english

F = Fraction


def moved(corners, dx, dy):
    return [(F(x) + dx, F(y) + dy) for x, y in corners]


def unit_of(kind, made, shapes, at, number):
    """Return a unit of patches given as (fabric, corners), moved to a place."""
    parts = [
        leaf(patch(f"u{number}p{i}", *moved(corners, *at), fabric=fabric, spec=i))
        for i, (fabric, corners) in enumerate(shapes)
    ]
    return joined(kind, "slant", *parts, made=made)


def row(kind, made, shapes, count, wide):
    """Return a top of `count` such units side by side."""
    units = [unit_of(kind, made, shapes, (F(wide * i), F(0)), i) for i in range(count)]
    return joined("top", "across", *units) if count > 1 else units[0]


def geese(side):
    half = F(side, 2)
    return [
        ("moss", [(0, half), (half, 0), (side, half)]),
        ("linen", [(0, 0), (half, 0), (0, half)]),
        ("linen", [(side, 0), (side, half), (half, 0)]),
    ]


# Fast flying geese size table, Beverly's quilting page: finished size, large square, four
# small squares, four geese.
@pytest.mark.parametrize(
    ("side", "large", "small"),
    [
        (8, F(37, 4), F(39, 8)),
        (6, F(29, 4), F(31, 8)),
        (4, F(21, 4), F(23, 8)),
        (3, F(17, 4), F(19, 8)),
    ],
)
def test_four_geese_at_once(side, large, small):
    plan = planned(row("goose", "geese", geese(side), 4, side))
    found = pieces(plan)
    big, little = found["large square for geese"], found["small square for geese"]
    assert (big.width, big.length, big.count, big.fabric) == (large, large, 1, "moss")
    assert (little.width, little.length, little.count, little.fabric) == (small, small, 4, "linen")
    assert {big.shape, little.shape} == {"oversize"}
    (making,) = plan.makings
    assert (making.method, making.kind, making.batches, making.each_batch) == (
        "geese",
        "goose",
        1,
        4,
    )
    assert dict(zip(making.letters, making.each, strict=True)) == {big.letter: 1, little.letter: 4}
    assert making.trim == (side + F(1, 2), F(side, 2) + F(1, 2))
    assert set(plan.sources.values()) == {big.letter, little.letter}


def test_geese_beyond_a_batch_of_four_take_another():
    plan = planned(row("goose", "geese", geese(4), 5, 4))
    (making,) = plan.makings
    assert (making.count, making.batches, making.batches * making.each_batch) == (5, 2, 8)
    counts = {english(p.called): p.count for p in plan.pieces}
    assert counts == {"large square for geese": 2, "small square for geese": 8}


def test_geese_with_unlike_wings_are_cut_one_by_one():
    shapes = geese(4)
    shapes[2] = ("sandbar", shapes[2][1])
    plan = planned(row("goose", "geese", shapes, 2, 4))
    assert plan.makings == ()
    assert {p.shape for p in plan.pieces} == {"once-cut triangle", "twice-cut triangle"}
    assert len(plan.sources) == 6


# Half square and quarter square triangles, North Hampshire Quilters, block notes hblk402b:
# 3 in finished from 3 7/8 in, trimmed to 3 1/2 in.
def test_two_triangles_at_once():
    shapes = [("linen", [(0, 0), (3, 0), (0, 3)]), ("moss", [(3, 0), (3, 3), (0, 3)])]
    plan = planned(row("half", "triangles", shapes, 5, 3))
    (making,) = plan.makings
    assert (making.batches, making.each_batch, making.count) == (3, 2, 5)
    assert (making.trim, making.each) == ((F(7, 2), F(7, 2)), (1, 1))
    assert {(p.width, p.count, p.shape) for p in plan.pieces} == {(F(31, 8), 3, "oversize")}


# North Hampshire Quilters: a long side of 3 in from 4 1/4 in.
def test_two_hourglasses_at_once():
    mid = (F(3, 2), F(3, 2))
    ring = [(0, 0), (3, 0), (3, 3), (0, 3)]
    shapes = [(("linen", "moss")[i % 2], [ring[i], ring[(i + 1) % 4], mid]) for i in range(4)]
    plan = planned(row("hourglass", "hourglasses", shapes, 2, 3))
    (making,) = plan.makings
    assert (making.batches, making.each_batch, making.trim) == (1, 2, (F(7, 2), F(7, 2)))
    assert {(p.width, p.count) for p in plan.pieces} == {(F(17, 4), 1)}


def test_an_hourglass_with_like_triangles_side_by_side_is_none():
    mid = (F(3, 2), F(3, 2))
    ring = [(0, 0), (3, 0), (3, 3), (0, 3)]
    shapes = [(("linen", "moss")[i // 2], [ring[i], ring[(i + 1) % 4], mid]) for i in range(4)]
    plan = planned(row("hourglass", "hourglasses", shapes, 2, 3))
    assert plan.makings == ()


# Common practice, no source: the square for a flipped corner is its finished leg and two
# seams; the patch that it is sewn to is cut whole.
def test_flipped_corners():
    shapes = [
        ("linen", [(1, 0), (3, 0), (3, 3), (0, 3), (0, 1)]),
        ("moss", [(0, 0), (1, 0), (0, 1)]),
    ]
    plan = planned(row("snow", "corners", shapes, 3, 3))
    (making,) = plan.makings
    assert (making.batches, making.each_batch, making.each) == (3, 1, (1, 1))
    found = {p.fabric: p for p in plan.pieces}
    assert (found["linen"].width, found["linen"].shape) == (F(7, 2), "rectangle")
    assert (found["moss"].width, found["moss"].shape) == (F(3, 2), "oversize")
    assert (found["linen"].count, found["moss"].count) == (3, 3)


def test_a_square_in_a_square_takes_four_flipped_corners():
    shapes = [("linen", [(2, 0), (4, 2), (2, 4), (0, 2)])]
    shapes += [
        ("moss", c)
        for c in (
            [(0, 0), (2, 0), (0, 2)],
            [(2, 0), (4, 0), (4, 2)],
            [(4, 2), (4, 4), (2, 4)],
            [(2, 4), (0, 4), (0, 2)],
        )
    ]
    plan = planned(row("diamond", "corners", shapes, 1, 4))
    (making,) = plan.makings
    assert making.each == (1, 4)
    assert {(p.width, p.count) for p in plan.pieces} == {(F(9, 2), 1), (F(5, 2), 4)}


def segment(number, flip=False):
    """Return two squares of 2 in, one above the other, made from strip sets."""
    x, fabrics = F(2 * number), ("moss", "linen") if flip else ("linen", "moss")
    parts = [
        leaf(
            patch(
                f"s{number}p{i}",
                (x, 2 * i),
                (x + 2, 2 * i),
                (x + 2, 2 * i + 2),
                (x, 2 * i + 2),
                fabric=fabric,
                spec=i,
            )
        )
        for i, fabric in enumerate(fabrics)
    ]
    return joined("pair", "down", *parts, made="strips")


# Segments from one strip set: the usable width, less 1/2 in for squaring its end, by the
# segment's cut width: common practice, no source. 39 1/2 / 2 1/2 in = 15 whole segments.
@pytest.mark.parametrize(
    ("count", "sets", "each"), [(6, 1, 6), (15, 1, 15), (16, 2, 8), (40, 3, 14)]
)
def test_strip_sets(count, sets, each):
    whole = joined("top", "across", *(segment(i, i % 2 == 1) for i in range(count)))
    plan = planned(whole)
    (making,) = plan.makings
    assert (making.method, making.segment, making.trim) == ("strips", F(5, 2), (F(5, 2), F(9, 2)))
    assert (making.batches, making.each_batch, making.count) == (sets, each, count)
    found = {p.fabric: p for p in plan.pieces}
    for piece in found.values():
        assert {piece.width, piece.length} == {F(5, 2), each * F(5, 2) + F(1, 2)}
        assert (piece.count, english(piece.called)) == (sets, "strip for strip sets")
    assert max(found["linen"].width, found["linen"].length) <= 40
    letters = [plan.sources[f"s{i}p0"] for i in range(2)]
    assert letters == [found["linen"].letter, found["moss"].letter]


def test_a_strip_that_comes_twice_in_a_set_is_counted_twice():
    parts = [
        leaf(patch(f"p{i}", (0, i), (3, i), (3, i + 1), (0, i + 1), fabric=fabric, spec=i))
        for i, fabric in enumerate(("linen", "moss", "linen"))
    ]
    plan = planned(joined("rails", "down", *parts, made="strips"))
    (making,) = plan.makings
    assert sorted(making.each) == [1, 2]
    assert {p.fabric: p.count for p in plan.pieces} == {"linen": 2, "moss": 1}


def test_a_unit_on_a_pillows_edge_is_cut_one_by_one():
    """The pillow's own seam is wider on some sides: no oversize square gives that."""
    spec = PillowSpec(F(7), "envelope", "linen", F(2), F(1), F(1, 2))
    shapes = [("linen", [(0, 0), (3, 0), (0, 3)]), ("moss", [(3, 0), (3, 3), (0, 3)])]
    whole = row("half", "triangles", shapes, 2, 3)
    of = replace(size(6), height=F(3), inner_height=F(3), pillow=spec)
    plan = planned(whole, of=of)
    assert plan.makings == ()
    # Both legs on the edge, or one of them, as on the other block.
    exact = {p.exact_width for p in plan.pieces if p.shape == "once-cut triangle"}
    assert exact == {3 + F(1, 2) + F(1, 2) + ROOT_2 / 4, 3 + F(1, 2) + F(1, 4) + ROOT_2 / 4}


def test_pieces_alike_of_two_kinds_of_unit_are_one_piece():
    """The corners of two units come from squares of one size: one letter, two makings."""
    first = [
        ("linen", [(1, 0), (3, 0), (3, 3), (0, 3), (0, 1)]),
        ("moss", [(0, 0), (1, 0), (0, 1)]),
    ]
    second = [("sandbar", first[0][1]), first[1]]
    units = [
        unit_of("a", "corners", first, (F(0), F(0)), 0),
        unit_of("b", "corners", second, (F(3), F(0)), 1),
    ]
    plan = planned(joined("top", "across", *units))
    moss = [p for p in plan.pieces if p.fabric == "moss"]
    assert [p.count for p in moss] == [2]
    assert all(moss[0].letter in m.letters for m in plan.makings)
    assert len(plan.makings) == 2


def test_all_units_of_a_kind_are_made_alike():
    """Nine of them as a pillow: one lies off its edge, and is cut as the others are."""
    shapes = [("linen", [(0, 0), (3, 0), (0, 3)]), ("moss", [(3, 0), (3, 3), (0, 3)])]
    rows = [
        joined(
            "row",
            "across",
            *(
                unit_of("half", "triangles", shapes, (F(3 * i), F(3 * j)), 3 * j + i)
                for i in range(3)
            ),
        )
        for j in range(3)
    ]
    whole = joined("top", "down", *rows)
    spec = PillowSpec(F(9), "envelope", "linen", F(2), F(1), F(1, 2))
    assert planned(whole, of=replace(size(9), pillow=spec)).makings == ()
    (making,) = planned(whole, of=size(9)).makings
    assert (making.count, making.batches) == (9, 5)
