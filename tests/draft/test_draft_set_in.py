"""Set-in seams: no more than the shapes ask for, and said where no seam helps.

Numbers are argued from the shapes beside them; what is sewn when is common practice, no
source.
"""

from fractions import Fraction

import pytest
from draft_builders import codes
from draft_tops import assert_sewn, every, library, rectangle, set_in, top, tree
from hypothesis import given, settings
from hypothesis import strategies as st

from publish.draft.assembly import assemble
from publish.draft.topmap import top_patches
from publish.model.pattern import Block, PatchSpec
from publish.surd import turned

F = Fraction
SET_IN = {
    # Two sills that meet in a mitre below a window's corner: whichever seam comes last
    # pivots there.
    "attic windows": 1,
    # Lid, side and front meet in one point, three seams that do not run through it.
    "pandora's box": 1,
    # Four trapezoids round a square. Two go on straight; each of the others then lies
    # against three patches at once, and no other order leaves fewer such.
    "spool": 2,
}


@pytest.mark.parametrize("name", library())
def test_every_block_is_sewn_with_as_few_set_in_seams_as_can_be(name):
    unit = tree(library()[name])
    assert_sewn(unit)
    assert set_in(unit) == SET_IN.get(name, 0)
    assert all((u.join == "set in") == (u.set_in > 0) for u in every(unit))


def spun(a, b, mirror=False):
    """Four rectangles round a square: no seam runs through."""
    found = [
        rectangle(0, 0, 12 - a, b),
        rectangle(12 - a, 0, 12, 12 - b),
        rectangle(a, 12 - b, 12, 12),
        rectangle(0, b, a, 12),
        rectangle(a, b, 12 - a, 12 - b, "moss"),
    ]
    if mirror:
        found = [PatchSpec(tuple((12 - x, y) for x, y in p.ring[::-1]), p.fabric) for p in found]
    return Block("spun" + ("-mirrored" if mirror else ""), 12, 12, tuple(found))


@settings(max_examples=15)
@given(st.integers(1, 5), st.integers(1, 5))
def test_patches_spun_round_a_middle_need_one_set_in_seam(a, b):
    """The last of the four pivots at the corner of the middle; the others go on straight."""
    unit = tree(spun(a, b))
    assert_sewn(unit)
    assert set_in(unit) == 1 and unit.join == "set in"
    assert len(unit.parts) == 2 and unit.parts[1].patch is not None


def test_an_eight_pointed_star_is_set_in_round_its_points():
    """Diamonds as parallelograms on whole numbers. The star has eight inside corners, each to
    be pivoted at once: one seam for each, but for the last, which joins two halves and
    pivots at two of them."""
    made = []
    for quarter in range(4):
        for fabric, ring in (
            ("moss", [(12, 12), (12, 5), (17, 0), (17, 7)]),
            ("sand", [(12, 12), (17, 7), (24, 7), (19, 12)]),
            ("linen", [(7, 0), (17, 0), (12, 5)]),
            ("linen", [(17, 0), (24, 0), (24, 7), (17, 7)]),
        ):
            points = [(F(x) - 12, F(y) - 12) for x, y in ring]
            around = [turned(p, 90 * quarter) for p in points]
            made.append(PatchSpec(tuple((x + 12, y + 12) for x, y in around), fabric))
    unit = tree(Block("star", 24, 24, tuple(made)))
    assert_sewn(unit)
    assert set_in(unit) == 7


def test_mirror_images_are_told_apart():
    unit = tree(spun(2, 3), spun(2, 3, mirror=True), columns=2)
    found = {u.kind for u in every(unit) if u.name == "unit"}
    assert any(f"{kind}, mirrored" in found for kind in found)
    symmetric = tree(library()["sawtooth star"])
    assert not any("mirrored" in u.kind for u in every(symmetric))


def test_a_patch_closed_in_by_others_is_a_finding():
    """A leaf with a saw's edge between two half frames: eight corners on either side."""
    right = [(F(7 + y % 2), F(y)) for y in range(3, 10)]
    left = [(12 - x, y) for x, y in right]
    leaf = [(F(6), F(2)), *right, (F(6), F(10)), *left[::-1]]
    east = [
        (F(6), F(0)),
        (F(12), F(0)),
        (F(12), F(12)),
        (F(6), F(12)),
        (F(6), F(10)),
        *right[::-1],
        (F(6), F(2)),
    ]
    west = [(12 - x, y) for x, y in east][::-1]
    made = tuple(PatchSpec(tuple(ring), "linen") for ring in (leaf, east, west))
    pat, one = top(Block("pool", 12, 12, made))
    patches, notes = top_patches(pat, one)
    assert not notes
    assert codes(assemble(pat, one, patches)[1]) == ["D340"]
