"""The order of cutting and what is left, spoiled in the case that is worked out by hand."""

import pytest
from reedmace import f
from reedmace_case import Spoil, case, only

from publish.proof.values import cutting_order


def test_small_before_large() -> None:
    """The backing, 28 in square, is cut before the ground, 17 1/2 in square."""
    linen = case().plans["mini"].fabrics["linen"]
    note = only(
        cutting_order.check(Spoil(case()).fabric("linen", strips=linen.strips[::-1])), "P897"
    )
    assert "Pale linen" in note.what


@pytest.mark.parametrize("left", [None, ("12", "28"), ("22 1/2", "28"), ("40", "45 1/2")])
def test_a_piece_left_that_is_not_the_largest_there(left: tuple[str, str] | None) -> None:
    """Beside 28 in are 12 x 28 in left, 336 square inches, and beside 17 1/2 in 22 1/2 x 17 1/2,
    394 square inches; of 49 1/2 in bought, 47 1/4 in by the metre, nothing lies behind."""
    told = None if left is None else tuple(map(f, left))
    note = only(cutting_order.check(Spoil(case()).fabric("linen", left=told)), "P898")
    assert note.expected == "22 1/2 in × 17 1/2 in"
