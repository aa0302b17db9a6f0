"""Units that a block asks to be made quicker are recognised by their shape alone.

What each method makes is common practice, no source: two triangles in a square, four in a
square, a triangle between two corners in a rectangle of 2 to 1, corners of a larger patch,
rectangles side by side.
"""

from collections import Counter
from dataclasses import replace
from fractions import Fraction

import pytest
from draft_builders import grid
from draft_tops import every, library, tree

from publish.model.block import Block, PatchSpec, Piecing

F = Fraction
ALL = Piecing("two at once", "two at once", "four at once", "flipped", "strip sets")


def made(block, piecing=ALL, **spec):
    unit = tree(replace(block, piecing=piecing), setting_fabric="moss", **spec)
    return [u for u in every(unit) if u.made]


FOUND = {
    "half-square triangle": {"triangles": 1},
    "broken dishes": {"triangles": 16},
    "pinwheel": {"triangles": 4},
    "shoofly": {"triangles": 4},
    "friendship star": {"triangles": 4},
    "bear's paw": {"triangles": 16},
    "card trick": {"triangles": 4},
    "hourglass": {"hourglasses": 1},
    "ohio star": {"hourglasses": 4},
    "flying geese": {"geese": 2},
    "dutchman's puzzle": {"geese": 8},
    "sawtooth star": {"geese": 4},
    "square in a square": {"corners": 1},
    "snowball": {"corners": 1},
    "bow tie": {"corners": 2},
    "economy patch": {"corners": 1},
    "maple leaf": {"triangles": 4, "corners": 1},
    "nine patch": {"strips": 2},
    "four patch": {"strips": 2},
    "checkerboard": {"strips": 8},
    "churn dash": {"triangles": 4, "strips": 4},
    "rail fence": {},
    "log cabin": {},
    "spool": {},
    "drunkard's path": {},
    "roman stripe": {},
    "attic windows": {},
}
"""Counted in the drawings of the blocks. The hourglass in the middle of a card trick has
four fabrics, the corners of its sides three; a rail fence has one row of rails, which is
no set; corners round a middle of two patches are none of one patch."""


@pytest.mark.parametrize("name", FOUND)
def test_what_is_made_quicker(name):
    assert Counter(u.made for u in made(library()[name])) == FOUND[name]


@pytest.mark.parametrize("name", ["sawtooth star", "ohio star", "snowball", "broken dishes"])
def test_turning_changes_nothing(name):
    """On point the sides are multiples of the root of 2 and shapes are still exact."""
    plain = Counter(u.made for u in made(library()[name]))
    for turn in (0, 90):
        turned = made(library()[name], turns=(turn,), setting="on point")
        assert Counter(u.made for u in turned) == plain


def test_nothing_is_made_quicker_unless_asked():
    assert not made(library()["sawtooth star"], Piecing())
    assert not made(library()["sawtooth star"], Piecing(triangles="two at once"))
    # A goose is a rectangle with two corners sewn across it, too.
    flipped = made(library()["sawtooth star"], Piecing(corners="flipped"))
    assert [u.made for u in flipped] == ["corners"] * 4


def test_the_outermost_unit_of_a_construction_says_it():
    (unit,) = made(library()["square in a square"])
    assert unit.name == "block" and len(unit.patches) == 5
    assert not any(u.made for u in every(unit) if u is not unit)
    assert [len(u.patches) for u in made(library()["flying geese"])] == [3, 3]


def test_strips_are_cut_into_two_units_at_least():
    rails = library()["rail fence"]
    assert not made(rails)
    assert len(made(rails, columns=2)) == 2


def test_a_kind_that_one_block_asks_for_is_made_so_everywhere():
    asking = replace(grid("one", [["linen", "sand"]]), piecing=ALL)
    silent = grid("two", [["linen", "sand"], ["moss", "moss"]])
    unit = tree(asking, silent, columns=2)
    pairs = [u for u in every(unit) if [p.fabric for p in u.patches] == ["linen", "sand"]]
    by_kind = {}
    for u in pairs:
        by_kind.setdefault(u.kind, set()).add(u.made)
    assert all(len(ways) == 1 for ways in by_kind.values())


def test_shapes_that_only_look_like_it():
    """A goose that is too high, wings of two fabrics, triangles that are not half squares."""

    def block(*patches):
        return Block(
            "pool",
            4,
            4,
            tuple(
                PatchSpec(tuple((F(x), F(y)) for x, y in ring), fabric) for fabric, ring in patches
            ),
        )

    oblong = block(
        ("linen", [(0, 0), (4, 0), (0, 2)]),
        ("moss", [(4, 0), (4, 2), (0, 2)]),
        ("sand", [(0, 2), (4, 2), (4, 4), (0, 4)]),
    )
    assert not made(oblong)
    unlike = block(
        ("linen", [(0, 0), (4, 0), (2, 2)]),
        ("moss", [(0, 0), (2, 2), (0, 2)]),
        ("sand", [(4, 0), (4, 2), (2, 2)]),
        ("sand", [(0, 2), (4, 2), (4, 4), (0, 4)]),
    )
    assert not made(unlike, Piecing(geese="four at once"))
