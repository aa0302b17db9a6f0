"""Bobbins in the thread table."""

from fractions import Fraction

import pytest

from publish.write.threads import bobbins

YARD = 36


@pytest.mark.parametrize(
    ("yards", "count"), [("1", 1), ("127", 1), ("128", 1), ("257/2", 2), ("256", 2), ("257", 3)]
)
def test_half_of_the_thread_is_wound_on_bobbins_of_64_yards(yards, count):
    """64 yd of 50 wt thread on a class 15 bobbin, and needle and bobbin alike: common
    practice, no source."""
    assert bobbins(Fraction(yards) * YARD) == count
