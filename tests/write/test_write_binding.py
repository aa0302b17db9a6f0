"""Binding that a maker can follow on any quilt, from a mug rug to a bed.

The room that the steps need is added up by hand here; that a strip is joined only to
another strip needs no source.
"""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st
from small_books import booklet, plain

from publish.sew.binding_start import start_of

SIDES = st.integers(8, 400).map(lambda n: Fraction(n, 4))


@given(SIDES, SIDES)
def test_first_stitch_opening_and_corner_have_room_on_one_side(width, height):
    found = start_of(width, height)
    side = max(width, height) if found.longer else min(width, height)
    assert 0 < found.before < side
    if found.ends == "joined":
        after_last_corner = side - found.before - found.opening
        assert found.before >= 2, "stitches before the next corner"
        assert after_last_corner >= 2, "stitches after the last corner"
        assert found.opening >= found.tail, "the tail does not reach round the last corner"
    else:
        assert max(width, height) < 10
        assert found.inside <= found.tail < found.before, "the end stays inside the unsewn part"


@pytest.mark.parametrize(
    ("side", "where", "opening"),
    [
        ("4 in", "tucked", ""),
        ("9 in", "tucked", ""),
        ("10 in", "corner ahead", "6 in"),
        ("12 in", "corner ahead", "8 in"),
        ("20 in", "corner ahead", "10 in"),
        ("24 in", "middle of a side", "10 in"),
    ],
)
def test_the_words_follow_the_room(side, where, opening):
    said = plain(
        booklet(f"a: {{block: plain, block_size: {side}}}", blocks="plain: {ground: oat}").text(
            "binding"
        )
    )
    assert where in said
    assert f"stop {opening} before the first stitch" in said if opening else "overlap" not in said


def test_a_single_strip_is_joined_to_nothing():
    small = booklet("a: {block: nine, block_size: 6 in}").text("binding")
    assert "Take the one binding strip" in small
    assert "two strips" not in small and "Join" not in small and "each join" not in small
    large = booklet("a: {block: nine, block_size: 9 in, columns: 3, rows: 3}").text("binding")
    assert "Join them all in this way" in large and "the one binding strip" not in large


def test_sizes_that_begin_differently_are_told_apart():
    said = plain(
        booklet(
            "a: {title: Rug, block: nine, block_size: 8 in}",
            "b: {title: Lap, block: nine, block_size: 9 in, columns: 4, rows: 4}",
        ).text("binding")
    )
    assert "Rug only: The sides are too short" in said
    assert "Lap only: Turn the last corner and stop 10 in" in said
